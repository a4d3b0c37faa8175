package staunch.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import staunch.design.CaseHeader;
import staunch.design.Comparison;
import staunch.design.InputFile;
import staunch.design.WellCase;
import staunch.well.Datum;

/**
 * A comparison of casing designs, as the machine interface gives it. All numbers are SI.
 *
 * @param format version of the layout; raised when a key changes its meaning or goes
 * @param library version of the library that computed it
 * @param header title block of the case
 * @param inputs files that were read, with their hashes
 * @param datum zero of all depths
 * @param comparison of the casing designs
 */
record MachineComparison(
        int format, String library, CaseHeader header, List<InputFile> inputs, Datum datum, Comparison comparison) {
    private static final int FORMAT = 1;

    MachineComparison {
        inputs = List.copyOf(inputs);
    }

    static MachineComparison of(WellCase wellCase, Comparison comparison) {
        return new MachineComparison(
                FORMAT, Version.LIBRARY, wellCase.header(), wellCase.files(), wellCase.datum(), comparison);
    }

    void write(OutputStream out) throws IOException {
        MachineResults.write(this, "comparison", out);
    }
}
