package staunch.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import staunch.design.CaseHeader;
import staunch.design.InputFile;
import staunch.design.Rerun;
import staunch.design.RunRecord;
import staunch.design.WellCase;

/**
 * What changed since an earlier run, as the machine interface gives it. All numbers are SI.
 *
 * @param format version of the layout; raised when a key changes its meaning or goes
 * @param library version of the library that computed the later run
 * @param libraryBefore version of the library that computed the earlier run
 * @param header title block of the later case
 * @param inputsBefore files of the earlier run, with their hashes
 * @param inputs files of the later run, with their hashes
 * @param nothingChanged whether neither input, methods, library nor any result is different
 * @param rerun the two runs held against each other
 */
record MachineRerun(
        int format,
        String library,
        String libraryBefore,
        CaseHeader header,
        List<InputFile> inputsBefore,
        List<InputFile> inputs,
        boolean nothingChanged,
        Rerun rerun) {
    private static final int FORMAT = 1;

    MachineRerun {
        inputsBefore = List.copyOf(inputsBefore);
        inputs = List.copyOf(inputs);
    }

    static MachineRerun of(WellCase wellCase, RunRecord before, Rerun rerun) {
        return new MachineRerun(
                FORMAT,
                Version.LIBRARY,
                before.library(),
                wellCase.header(),
                before.files(),
                wellCase.files(),
                rerun.nothingChanged(),
                rerun);
    }

    void write(OutputStream out) throws IOException {
        MachineResults.write(this, "rerun", out);
    }
}
