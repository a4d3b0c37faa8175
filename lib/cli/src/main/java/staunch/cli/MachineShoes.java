package staunch.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import staunch.design.CaseHeader;
import staunch.design.InputFile;
import staunch.design.ShoeSearch;
import staunch.design.WellCase;
import staunch.well.Datum;

/**
 * A search of shoe depths, as the machine interface gives it. All numbers are SI.
 *
 * @param format version of the layout; raised when a key changes its meaning or goes
 * @param library version of the library that computed it
 * @param header title block of the case
 * @param inputs files that were read, with their hashes
 * @param datum zero of all depths
 * @param search where the shoes may stand
 */
record MachineShoes(
        int format, String library, CaseHeader header, List<InputFile> inputs, Datum datum, ShoeSearch search) {
    private static final int FORMAT = 1;

    MachineShoes {
        inputs = List.copyOf(inputs);
    }

    static MachineShoes of(WellCase wellCase, ShoeSearch search) {
        return new MachineShoes(FORMAT, Version.LIBRARY, wellCase.header(), wellCase.files(), wellCase.datum(), search);
    }

    void write(OutputStream out) throws IOException {
        MachineResults.write(this, "shoes", out);
    }
}
