package staunch.ingest;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import staunch.units.InputFault;
import staunch.units.Warning;

/**
 * A well log in LAS format, as written: values in the units of the file, nothing converted.
 *
 * @param file name of the file
 * @param version of the standard
 * @param encoding of the characters, as found
 * @param wrapped whether a row spans several lines
 * @param delimiter between values
 * @param versionItems items of the version section
 * @param well items of the well section
 * @param parameters items of the parameter section of the log
 * @param other lines of the other section
 * @param curves columns of the log; the first is the index
 * @param tables data sections of LAS 3 other than the log
 * @param warnings what was read although it departs from the standard, and how it was read
 */
public record LasFile(
        String file,
        LasVersion version,
        String encoding,
        boolean wrapped,
        LasDelimiter delimiter,
        List<LasItem> versionItems,
        List<LasItem> well,
        List<LasItem> parameters,
        List<String> other,
        List<LasCurve> curves,
        List<LasTable> tables,
        List<Warning> warnings) {
    public LasFile {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(version, "version");
        Objects.requireNonNull(encoding, "encoding");
        Objects.requireNonNull(delimiter, "delimiter");
        versionItems = List.copyOf(versionItems);
        well = List.copyOf(well);
        parameters = List.copyOf(parameters);
        other = List.copyOf(other);
        curves = List.copyOf(curves);
        tables = List.copyOf(tables);
        warnings = List.copyOf(warnings);
    }

    /** Number of rows of the log. */
    public int rows() {
        return curves.isEmpty() ? 0 : curves.get(0).rows();
    }

    /** The first column of the log, where there is one. */
    public Optional<LasCurve> index() {
        return curves.stream().findFirst();
    }

    /**
     * The curve of that name, capitals or not.
     *
     * @throws InputFault where there is none or several share the mnemonic
     */
    public LasCurve curve(String name) {
        return curve(curves, name, file);
    }

    /**
     * The well-section item of that mnemonic, capitals or not.
     *
     * @throws InputFault where two of them have different values
     */
    public Optional<LasItem> wellItem(String mnemonic) {
        return item(well, mnemonic);
    }

    /**
     * The parameter of that mnemonic, capitals or not.
     *
     * @throws InputFault where two of them have different values
     */
    public Optional<LasItem> parameter(String mnemonic) {
        return item(parameters, mnemonic);
    }

    /** The first table of that name, capitals or not. */
    public Optional<LasTable> table(String name) {
        return tables.stream().filter(t -> t.name().equalsIgnoreCase(name)).findFirst();
    }

    static LasCurve curve(List<LasCurve> curves, String name, String where) {
        return LasCurve.named(curves, name).orElseThrow(() -> {
            boolean shared =
                    curves.stream().anyMatch(c -> c.definition().mnemonic().equalsIgnoreCase(name));
            return new InputFault(
                    "curve " + name,
                    shared ? "stands for several curves of " + where : "is not in " + where,
                    "choose one of " + curves.stream().map(LasCurve::name).collect(Collectors.joining(", ")));
        });
    }

    static Optional<LasItem> item(List<LasItem> items, String mnemonic) {
        List<LasItem> found = items.stream()
                .filter(i -> i.mnemonic().equalsIgnoreCase(mnemonic))
                .toList();
        if (found.stream().map(i -> i.value() + " " + i.unit()).distinct().count() > 1) {
            throw new InputFault(
                    mnemonic,
                    "has different values in lines "
                            + found.stream()
                                    .map(i -> Integer.toString(i.line()))
                                    .collect(Collectors.joining(", ")),
                    "keep one of them");
        }
        return found.stream().findFirst();
    }
}
