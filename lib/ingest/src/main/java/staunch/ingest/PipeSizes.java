package staunch.ingest;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import staunch.units.Measure;
import staunch.units.UnitSystem;

/** Nominal walls of casing by outside diameter and nominal weight, API Spec 5CT. */
final class PipeSizes {
    private static final double SAME_DIAMETER = 0.02;
    private static final double SAME_WEIGHT = 0.02;

    private static final List<Size> SIZES = read();

    private PipeSizes() {}

    /** One line of the table, in inches and pounds per foot. */
    record Size(double outsideDiameter, double weight, double wall) {}

    static List<Size> all() {
        return SIZES;
    }

    /** Wall of a size, m; empty where the table does not hold it. */
    static OptionalDouble wall(double outsideDiameter, double weight) {
        double inches = UnitSystem.FIELD.fromSi(outsideDiameter, Measure.DIAMETER);
        double pounds = UnitSystem.FIELD.fromSi(weight, Measure.LINEAR_MASS);
        return SIZES.stream()
                .filter(s -> Math.abs(s.outsideDiameter() - inches) < SAME_DIAMETER
                        && Math.abs(s.weight() - pounds) < SAME_WEIGHT * s.weight())
                .mapToDouble(s -> UnitSystem.FIELD.toSi(s.wall(), Measure.DIAMETER))
                .findFirst();
    }

    /** Weights that the table holds for an outside diameter. */
    static String weights(double outsideDiameter) {
        double inches = UnitSystem.FIELD.fromSi(outsideDiameter, Measure.DIAMETER);
        return SIZES.stream()
                .filter(s -> Math.abs(s.outsideDiameter() - inches) < SAME_DIAMETER)
                .map(s -> UnitSystem.FIELD.precise(
                        UnitSystem.FIELD.toSi(s.weight(), Measure.LINEAR_MASS), Measure.LINEAR_MASS))
                .collect(Collectors.joining(", "));
    }

    private static List<Size> read() {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setCommentMarker('#')
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (Reader in = new InputStreamReader(
                Objects.requireNonNull(PipeSizes.class.getResourceAsStream("casing-sizes.csv")),
                StandardCharsets.UTF_8)) {
            List<Size> sizes = new ArrayList<>();
            for (CSVRecord row : format.parse(in)) {
                sizes.add(new Size(
                        Double.parseDouble(row.get(0)),
                        Double.parseDouble(row.get(1)),
                        Double.parseDouble(row.get(2))));
            }
            return List.copyOf(sizes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
