package staunch.ingest;

import java.util.List;
import java.util.Objects;
import staunch.units.InputFault;

/**
 * A data section of LAS 3 other than the log: core, tests, tops, survey.
 *
 * @param name of the section without its ending: {@code Core[2]}
 * @param parameters of the parameter section of the same name
 * @param curves columns in file order
 * @param line of the section's title, counted from 1
 */
public record LasTable(String name, List<LasItem> parameters, List<LasCurve> curves, int line) {
    public LasTable {
        Objects.requireNonNull(name, "name");
        parameters = List.copyOf(parameters);
        curves = List.copyOf(curves);
    }

    /** Number of rows. */
    public int rows() {
        return curves.isEmpty() ? 0 : curves.get(0).rows();
    }

    /**
     * The column of that name, capitals or not.
     *
     * @throws InputFault where there is none
     */
    public LasCurve curve(String column) {
        return LasFile.curve(curves, column, "section " + name);
    }
}
