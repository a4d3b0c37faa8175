package staunch.ingest;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.earth.EvidenceDoubt;
import staunch.earth.OffsetWell;
import staunch.units.Amount;
import staunch.units.EquivalentDensity;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Quantity;
import staunch.units.Warning;
import staunch.units.Wording;

/**
 * Holds each reading of a table against what is known of its well. One that cannot be true is a bad row; one that is hard to
 * believe counts and is said. Either way the units are named in which the number would be a usual one.
 */
final class RowDoubts {
    private static final int MOST_UNITS = 2;
    private static final List<String> DEPTH_UNITS = List.of("m", "ft");

    private final Map<String, OffsetWell> wells;
    private final EvidenceDoubt.Reading kind;
    private final List<Wording> said = new ArrayList<>();

    /**
     * Doubts of the readings of a table.
     *
     * @param wells what is known of them, by name; readings of others are not judged
     * @param kind what they are
     */
    RowDoubts(Map<String, OffsetWell> wells, EvidenceDoubt.Reading kind) {
        this.wells = wells;
        this.kind = kind;
    }

    /** No doubts, where nothing else is known of the wells. */
    static RowDoubts none() {
        return new RowDoubts(Map.of(), EvidenceDoubt.Reading.MUD);
    }

    /** A reading at its depth, Pa absolute at m below the datum. */
    record Reading(String well, double z, double pressure) {}

    /** A number as the table writes it; the number of the depth is not known of a curve. */
    private record Written(String cited, double number, String unit) {}

    /** What is found: at which column, what, and what to do. */
    private record Found(boolean refused, TableColumn column, Wording problem, Wording advice) {}

    /** Judges a row; throws where it is bad. */
    void judge(MappedTable.Row row, DepthColumns depth, PressureColumns pressure, Reading reading) {
        TableColumn column = pressure.column();
        Optional<Found> found = find(
                reading,
                depth,
                pressure,
                new Written(row.cited(depth.depth()), row.written(depth.depth()), ""),
                new Written(row.cited(column), row.written(column), column.unit()));
        if (found.isPresent() && found.get().refused()) {
            throw row.problem(
                    found.get().column(), found.get().problem(), found.get().advice());
        }
        found.ifPresent(f -> say("line " + row.line() + " of " + reading.well() + ", ", f));
    }

    /**
     * Judges what was picked from a curve.
     *
     * @param test its name
     * @param gauge pressure at the gauge, Pa
     * @return why it cannot be true; empty where it may be
     */
    Optional<Wording> judge(
            String test, DepthColumns depth, PressureColumns.Surface pressure, double gauge, Reading reading) {
        String unit = pressure.pressure().unit();
        double one = Quantity.of(1, unit).si(Measure.PRESSURE_GAUGE);
        double each = Quantity.of(2, unit).si(Measure.PRESSURE_GAUGE) - one;
        String name = reading.well() + ": " + test;
        Optional<Found> found = find(
                reading,
                depth,
                pressure,
                new Written(name, Double.NaN, ""),
                new Written(name, 1 + (gauge - one) / each, unit));
        if (found.isPresent() && found.get().refused()) {
            return Optional.of(
                    Wording.joined(List.of(found.get().problem(), found.get().advice()), "; "));
        }
        found.ifPresent(f -> say("", f));
        return Optional.empty();
    }

    private void say(String where, Found found) {
        said.add(Wording.joined(List.of(found.problem(), found.advice()), "; ").within(where, ". It counts."));
    }

    /** What is hard to believe, row by row. */
    List<Warning> warnings(String shown) {
        return said.stream().map(w -> new Warning(shown, w)).toList();
    }

    private Optional<Found> find(
            Reading reading, DepthColumns depth, PressureColumns pressure, Written deep, Written pressed) {
        OffsetWell well = wells.get(reading.well());
        if (well == null) {
            return Optional.empty();
        }
        return EvidenceDoubt.of(kind, well, reading.z(), reading.pressure())
                .map(d -> d.ofDepth()
                        ? new Found(
                                d.refused(),
                                depth.depth(),
                                d.text().within(deep.cited() + " ", ""),
                                depthAdvice(well, depth, deep.number(), reading.z()))
                        : new Found(
                                d.refused(),
                                pressure.column(),
                                d.text().within(pressed.cited() + " ", ""),
                                pressureAdvice(well, pressure, deep.number(), pressed, reading)));
    }

    private static Wording depthAdvice(OffsetWell well, DepthColumns depth, double number, double z) {
        String unit = depth.depth().unit();
        if (depth.kind() == DepthColumns.Kind.VERTICAL && Double.isFinite(number)) {
            double level = z - Quantity.of(number, unit).si(Measure.DEPTH);
            for (String other : DEPTH_UNITS) {
                double meant = level + Quantity.of(number, other).si(Measure.DEPTH);
                if (!other.equals(unit)
                        && meant > well.normal().datum().groundOrSeabedDepth()
                        && well.porePressure().likely().covers(meant)) {
                    return Wording.of(
                            "in " + other
                                    + " it would be {}: check the unit of the column, and what it is measured from",
                            Amount.of(meant, Measure.DEPTH));
                }
            }
        }
        return MappedTable.plain("check the unit of the column, and what it is measured from");
    }

    private static Wording pressureAdvice(
            OffsetWell well, PressureColumns columns, double depthNumber, Written written, Reading reading) {
        if (written.number() == depthNumber) {
            return MappedTable.plain("it is the number of the depth: check which column is which");
        }
        List<Wording> meant = new ArrayList<>();
        for (Measure measure : List.of(Measure.PRESSURE_GAUGE, Measure.EQUIVALENT_DENSITY)) {
            for (String unit : measure.usualUnits()) {
                OptionalDouble other = inUnit(columns, measure, unit, written, reading);
                if (!unit.equals(written.unit())
                        && meant.size() < MOST_UNITS
                        && other.isPresent()
                        && EvidenceDoubt.isUsual(well, reading.z(), other.getAsDouble())) {
                    meant.add(Wording.of(
                            "in " + unit + " {}", Amount.of(other.getAsDouble(), Measure.PRESSURE_ABSOLUTE)));
                }
            }
        }
        return meant.isEmpty()
                ? MappedTable.plain("check it, its unit and its depth")
                : Wording.joined(meant, ", ").within("it would be ", ": check the unit of the column");
    }

    /** Pressure at the depth, were the number in another unit; a surface pressure can be in one of pressure only. */
    private static OptionalDouble inUnit(
            PressureColumns columns, Measure measure, String unit, Written written, Reading reading) {
        Quantity meant = Quantity.of(written.number(), unit);
        if (measure != Measure.PRESSURE_GAUGE) {
            return columns instanceof PressureColumns.Surface
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(EquivalentDensity.pressure(meant.si(Measure.EQUIVALENT_DENSITY), reading.z()));
        }
        double gauge = meant.si(Measure.PRESSURE_GAUGE);
        return OptionalDouble.of(
                columns instanceof PressureColumns.Surface
                        ? reading.pressure()
                                - Quantity.of(written.number(), written.unit()).si(Measure.PRESSURE_GAUGE)
                                + gauge
                        : gauge + Physics.ATMOSPHERE);
    }
}
