package staunch.control;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import staunch.fluid.FlowModel;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/** Friction in the choke line at a rate. A measurement takes precedence over a calculation. */
public sealed interface ChokeLineLoss {
    /**
     * A loss that can be used.
     *
     * @param pressure Pa
     * @param basis what it rests on
     */
    record Known(@Si(value = "Pa", kind = Kind.DIFFERENCE) double pressure, Basis basis) implements ChokeLineLoss {
        public Known {
            Check.within("choke-line friction", pressure, 0, 1e8, Measure.PRESSURE_DIFFERENCE);
            Objects.requireNonNull(basis, "basis");
        }
    }

    /**
     * Neither measured nor computable.
     *
     * @param missing what would be needed
     */
    record NotAssessed(String missing) implements ChokeLineLoss {
        public NotAssessed {
            Check.text("what is missing", missing);
        }
    }

    /** What a choke-line loss rests on. */
    enum Basis {
        MEASURED("measured at that rate, in proportion to density"),
        MEASURED_AT_ANOTHER_RATE("measured at another rate, carried over in proportion to the computed loss"),
        COMPUTED("computed by API RP 13D");

        private final String title;

        Basis(String title) {
            this.title = title;
        }

        /** In plain words. */
        public String title() {
            return title;
        }
    }

    /**
     * What is known of a choke line.
     *
     * @param line from the stack to surface
     * @param measurements slow-circulating rates, some with a choke-line loss
     * @param measuredDensity density of the mud they were taken with, kg/m³, 500 to 3000
     * @param flowingDensity density of the mud that flows now, kg/m³, 500 to 3000
     * @param flow model of that mud, where the case gives it
     */
    record Line(
            LineBore line,
            List<SlowCirculation> measurements,
            @Si("kg/m3") double measuredDensity,
            @Si("kg/m3") double flowingDensity,
            Optional<FlowModel> flow) {
        /** Rates that differ by less, relatively, are one rate. */
        private static final double SAME_RATE = 1e-6;

        public Line {
            Objects.requireNonNull(line, "line");
            measurements = List.copyOf(measurements);
            Check.within("density of the mud of the measurement", measuredDensity, 500, 3000, Measure.DENSITY);
            Check.within("density of the mud in the choke line", flowingDensity, 500, 3000, Measure.DENSITY);
            Objects.requireNonNull(flow, "flow");
        }

        /**
         * The same line with another mud in it, of the same flow model.
         *
         * @param density kg/m³, 500 to 3000
         */
        public Line flowing(@Si("kg/m3") double density) {
            return new Line(line, measurements, measuredDensity, density, flow);
        }

        /**
         * Loss at a rate: the measured one at that rate times the ratio of densities; else the measured one at the nearest
         * rate times the ratio of computed losses, which takes in the change of density; else the computed one.
         *
         * @param rate m³/s, 1e-6 to 0.5
         */
        public ChokeLineLoss at(@Si("m3/s") double rate) {
            Check.within("flow rate", rate, 1e-6, 0.5, Measure.FLOW_RATE);
            Optional<SlowCirculation> nearest = measurements.stream()
                    .filter(m -> m.chokeLineFriction().isPresent())
                    .min(Comparator.comparingDouble(m -> Math.abs(Math.log(m.rate() / rate))));
            if (nearest.isPresent()) {
                double measured = nearest.get().chokeLineFriction().getAsDouble();
                double measuredRate = nearest.get().rate();
                if (Math.abs(measuredRate / rate - 1) <= SAME_RATE) {
                    return new Known(
                            SubseaFormulas.lossAfterMudChange(measured, measuredDensity, flowingDensity),
                            Basis.MEASURED);
                }
                return flow.<ChokeLineLoss>map(r -> new Known(
                                measured
                                        * Hydraulics.lineLoss(line, new FlowingMud(flowingDensity, r), rate)
                                        / Hydraulics.lineLoss(line, new FlowingMud(measuredDensity, r), measuredRate),
                                Basis.MEASURED_AT_ANOTHER_RATE))
                        .orElseGet(() ->
                                new NotAssessed("choke-line friction measured at this rate, or rheometer readings"));
            }
            return flow.<ChokeLineLoss>map(r -> new Known(
                            Hydraulics.lineLoss(line, new FlowingMud(flowingDensity, r), rate), Basis.COMPUTED))
                    .orElseGet(
                            () -> new NotAssessed("measured choke-line friction, or rheometer readings to compute it"));
        }
    }
}
