package staunch.envelope;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import staunch.control.SlowCirculation;
import staunch.fluid.GasComposition;
import staunch.fluid.Mud;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Quantity;
import staunch.units.Si;
import staunch.well.DrillString;
import staunch.well.HoleInterval;

/**
 * One hole section as it will be drilled. What is missing stays empty and makes the results that need it "not assessed".
 *
 * @param name what the programme calls it
 * @param drilling whether it can be shut in
 * @param hole open hole from the shoe above to section TD, top to bottom without gaps, washout included
 * @param bitDiameter nominal hole size, m
 * @param mud in the hole, where given
 * @param string in the hole, where given
 * @param bitOffBottom distance of the bit above bottom when the influx is taken, m
 * @param influxDepth measured depth of the influx in the open hole, m; section TD, or the depth drilled to, where not given
 *     or not yet reached
 * @param gas of the influx, where given
 * @param slowCirculations measured or planned, in any order
 * @param pumpOutput volume per stroke, m³, where given
 * @param activeVolume of the pits, m³, where given
 * @param detectableGain pit gain at which the crew shuts in, m³, where given
 * @param circulatingOverbalance held above the kick-zone pressure while circulating, Pa, where given
 * @param chokeHandlingAllowance for the choke operator, Pa, where given
 * @param criteria the section must meet, where given
 * @param operations how an influx is handled in time
 */
public record SectionPlan(
        String name,
        Drilling drilling,
        List<HoleInterval> hole,
        @Si(value = "m", kind = Kind.DIAMETER) double bitDiameter,
        Optional<Mud> mud,
        Optional<DrillString> string,
        @Si(value = "m", kind = Kind.LENGTH) double bitOffBottom,
        @Si(value = "m", kind = Kind.DEPTH) OptionalDouble influxDepth,
        Optional<GasComposition> gas,
        List<SlowCirculation> slowCirculations,
        @Si("m3") OptionalDouble pumpOutput,
        @Si("m3") OptionalDouble activeVolume,
        @Si("m3") OptionalDouble detectableGain,
        @Si(value = "Pa", kind = Kind.DIFFERENCE) OptionalDouble circulatingOverbalance,
        @Si(value = "Pa", kind = Kind.DIFFERENCE) OptionalDouble chokeHandlingAllowance,
        Optional<Criteria> criteria,
        OperationsPlan operations) {
    /** Least open hole above the influx, m. */
    @Si(value = "m", kind = Kind.LENGTH)
    public static final double LEAST_ABOVE_INFLUX = 1;

    public SectionPlan {
        Check.text("name of the hole section", name);
        Objects.requireNonNull(drilling, "drilling");
        hole = List.copyOf(hole);
        if (hole.isEmpty()) {
            throw new InputFault(
                    "hole section \"" + name + "\"", "has no hole interval", "give its depths and diameter");
        }
        for (int i = 1; i < hole.size(); i++) {
            if (Math.abs(hole.get(i).topDepth() - hole.get(i - 1).bottomDepth()) > 1e-6) {
                throw new InputFault(
                        "hole section \"" + name + "\"",
                        "has a gap or an overlap between hole interval " + i + " and " + (i + 1),
                        "let each interval begin where the one above it ends");
            }
        }
        Check.within("bit diameter of " + name, bitDiameter, 0.05, 1.5, Measure.DIAMETER);
        Check.within("distance of the bit off bottom in " + name, bitOffBottom, 0, 20_000, Measure.LENGTH);
        double shoe = hole.get(0).topDepth();
        double bottom = hole.get(hole.size() - 1).bottomDepth();
        influxDepth.ifPresent(v -> Check.within(
                "measured depth of the influx in " + name, v, shoe + LEAST_ABOVE_INFLUX, bottom, Measure.DEPTH));
        slowCirculations = List.copyOf(slowCirculations);
        pumpOutput.ifPresent(v -> Check.within("pump output in " + name, v, 1e-4, 0.5, Measure.VOLUME));
        activeVolume.ifPresent(v -> Check.within("active volume in " + name, v, 0.1, 5000, Measure.VOLUME));
        detectableGain.ifPresent(v -> Check.within("detectable gain in " + name, v, 0, 100, Measure.VOLUME));
        circulatingOverbalance.ifPresent(
                v -> Check.within("circulating overbalance in " + name, v, 0, 2e7, Measure.PRESSURE_DIFFERENCE));
        chokeHandlingAllowance.ifPresent(
                v -> Check.within("choke-handling allowance in " + name, v, 0, 2e7, Measure.PRESSURE_DIFFERENCE));
        Objects.requireNonNull(operations, "operations");
    }

    /** A section with its influx at section TD and its operations left to the stated defaults. */
    public SectionPlan(
            String name,
            Drilling drilling,
            List<HoleInterval> hole,
            @Si(value = "m", kind = Kind.DIAMETER) double bitDiameter,
            Optional<Mud> mud,
            Optional<DrillString> string,
            @Si(value = "m", kind = Kind.LENGTH) double bitOffBottom,
            Optional<GasComposition> gas,
            List<SlowCirculation> slowCirculations,
            @Si("m3") OptionalDouble pumpOutput,
            @Si("m3") OptionalDouble activeVolume,
            @Si("m3") OptionalDouble detectableGain,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) OptionalDouble circulatingOverbalance,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) OptionalDouble chokeHandlingAllowance,
            Optional<Criteria> criteria) {
        this(
                name,
                drilling,
                hole,
                bitDiameter,
                mud,
                string,
                bitOffBottom,
                OptionalDouble.empty(),
                gas,
                slowCirculations,
                pumpOutput,
                activeVolume,
                detectableGain,
                circulatingOverbalance,
                chokeHandlingAllowance,
                criteria,
                OperationsPlan.NONE);
    }

    /** A section of which nothing but the hole is known, in units as written. */
    public static SectionPlan of(String name, Drilling drilling, List<HoleInterval> hole, Quantity bitDiameter) {
        return new SectionPlan(
                name,
                drilling,
                hole,
                bitDiameter.si("bit diameter of " + name, Measure.DIAMETER),
                Optional.empty(),
                Optional.empty(),
                0,
                OptionalDouble.empty(),
                Optional.empty(),
                List.of(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                OperationsPlan.NONE);
    }

    /** Measured depth of the top of the open hole: the shoe above. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double topDepth() {
        return hole.get(0).topDepth();
    }

    /** Measured depth of section TD. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double bottomDepth() {
        return hole.get(hole.size() - 1).bottomDepth();
    }

    /** Measured depth of the influx with the section drilled to a depth. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double influxDepth(@Si(value = "m", kind = Kind.DEPTH) double drilledTo) {
        return Math.min(influxDepth.orElse(drilledTo), drilledTo);
    }

    /** The same section with another mud in the hole. */
    public SectionPlan withMud(Mud newMud) {
        return with(parts -> parts.mud = Optional.of(newMud));
    }

    /** The same section with other criteria. */
    public SectionPlan withCriteria(Criteria newCriteria) {
        return with(parts -> parts.criteria = Optional.of(newCriteria));
    }

    /** The same section with other open hole; an influx depth no longer in it gives way to section TD. */
    public SectionPlan withHole(List<HoleInterval> newHole) {
        return with(parts -> {
            parts.hole = newHole;
            parts.influxDepth = inside(newHole);
        });
    }

    /** The same section with other operations. */
    public SectionPlan withOperations(OperationsPlan newOperations) {
        return with(parts -> parts.operations = newOperations);
    }

    /** The same section with other slow circulating rates. */
    public SectionPlan withSlowCirculations(List<SlowCirculation> newRates) {
        return with(parts -> parts.slowCirculations = newRates);
    }

    /** The same section with the bit that far above bottom when the influx is taken. */
    public SectionPlan withBitOffBottom(Quantity distance) {
        return with(
                parts -> parts.bitOffBottom = distance.si("distance of the bit off bottom in " + name, Measure.LENGTH));
    }

    /** The same section with the influx at a measured depth. */
    public SectionPlan withInfluxDepth(Quantity depth) {
        return with(parts -> parts.influxDepth =
                OptionalDouble.of(depth.si("measured depth of the influx in " + name, Measure.DEPTH)));
    }

    /** The same section with what the pump gives in a stroke. */
    public SectionPlan withPumpOutput(Quantity volume) {
        return with(parts -> parts.pumpOutput = OptionalDouble.of(volume.si("pump output in " + name, Measure.VOLUME)));
    }

    /** The same section with the active volume of its pits. */
    public SectionPlan withActiveVolume(Quantity volume) {
        return with(
                parts -> parts.activeVolume = OptionalDouble.of(volume.si("active volume in " + name, Measure.VOLUME)));
    }

    /** The same section with the pit gain at which the crew shuts in. */
    public SectionPlan withDetectableGain(Quantity volume) {
        return with(parts ->
                parts.detectableGain = OptionalDouble.of(volume.si("detectable gain in " + name, Measure.VOLUME)));
    }

    /** The same section with what is held above the kick-zone pressure while circulating. */
    public SectionPlan withCirculatingOverbalance(Quantity pressure) {
        return with(parts -> parts.circulatingOverbalance =
                OptionalDouble.of(pressure.si("circulating overbalance in " + name, Measure.PRESSURE_DIFFERENCE)));
    }

    /** The same section with an allowance for the choke operator. */
    public SectionPlan withChokeHandlingAllowance(Quantity pressure) {
        return with(parts -> parts.chokeHandlingAllowance =
                OptionalDouble.of(pressure.si("choke-handling allowance in " + name, Measure.PRESSURE_DIFFERENCE)));
    }

    /** The same section with a string in the hole. */
    public SectionPlan withString(DrillString newString) {
        return with(parts -> parts.string = Optional.of(newString));
    }

    /** The same section with another gas. */
    public SectionPlan withGas(GasComposition newGas) {
        return with(parts -> parts.gas = Optional.of(newGas));
    }

    private SectionPlan with(Consumer<Parts> change) {
        Parts parts = new Parts(this);
        change.accept(parts);
        return new SectionPlan(
                name,
                drilling,
                parts.hole,
                bitDiameter,
                parts.mud,
                parts.string,
                parts.bitOffBottom,
                parts.influxDepth,
                parts.gas,
                parts.slowCirculations,
                parts.pumpOutput,
                parts.activeVolume,
                parts.detectableGain,
                parts.circulatingOverbalance,
                parts.chokeHandlingAllowance,
                parts.criteria,
                parts.operations);
    }

    /** What may be changed, while one of it is. */
    private static final class Parts {
        private List<HoleInterval> hole;
        private Optional<Mud> mud;
        private Optional<DrillString> string;
        private double bitOffBottom;
        private OptionalDouble influxDepth;
        private Optional<GasComposition> gas;
        private List<SlowCirculation> slowCirculations;
        private OptionalDouble pumpOutput;
        private OptionalDouble activeVolume;
        private OptionalDouble detectableGain;
        private OptionalDouble circulatingOverbalance;
        private OptionalDouble chokeHandlingAllowance;
        private Optional<Criteria> criteria;
        private OperationsPlan operations;

        Parts(SectionPlan from) {
            hole = from.hole;
            mud = from.mud;
            string = from.string;
            bitOffBottom = from.bitOffBottom;
            influxDepth = from.influxDepth;
            gas = from.gas;
            slowCirculations = from.slowCirculations;
            pumpOutput = from.pumpOutput;
            activeVolume = from.activeVolume;
            detectableGain = from.detectableGain;
            circulatingOverbalance = from.circulatingOverbalance;
            chokeHandlingAllowance = from.chokeHandlingAllowance;
            criteria = from.criteria;
            operations = from.operations;
        }
    }

    private OptionalDouble inside(List<HoleInterval> newHole) {
        double shoe = newHole.get(0).topDepth() + LEAST_ABOVE_INFLUX;
        double bottom = newHole.get(newHole.size() - 1).bottomDepth();
        return influxDepth.isPresent() && influxDepth.getAsDouble() >= shoe && influxDepth.getAsDouble() <= bottom
                ? influxDepth
                : OptionalDouble.empty();
    }
}
