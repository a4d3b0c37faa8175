package staunch.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import staunch.design.CaseHeader;
import staunch.design.InputFile;
import staunch.design.Sensitivity;
import staunch.design.WellCase;
import staunch.well.Datum;

/**
 * Sensitivities of hole sections, as the machine interface gives it. All numbers are SI.
 *
 * @param format version of the layout; raised when a key changes its meaning or goes
 * @param library version of the library that computed it
 * @param header title block of the case
 * @param inputs files that were read, with their hashes
 * @param datum zero of all depths
 * @param sections asked for, in the order they are drilled
 */
record MachineSensitivity(
        int format,
        String library,
        CaseHeader header,
        List<InputFile> inputs,
        Datum datum,
        List<Sensitivity> sections) {
    private static final int FORMAT = 1;

    MachineSensitivity {
        inputs = List.copyOf(inputs);
        sections = List.copyOf(sections);
    }

    static MachineSensitivity of(WellCase wellCase, List<Sensitivity> sections) {
        return new MachineSensitivity(
                FORMAT, Version.LIBRARY, wellCase.header(), wellCase.files(), wellCase.datum(), sections);
    }

    void write(OutputStream out) throws IOException {
        MachineResults.write(this, "sensitivity", out);
    }
}
