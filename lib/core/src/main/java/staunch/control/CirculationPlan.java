package staunch.control;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import staunch.influx.AnnulusGrid;
import staunch.influx.GasColumn;
import staunch.influx.MudColumn;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * What is circulated, and how.
 *
 * @param grid annulus from the bottom of the hole to the choke, choke line included where the stack is on the seabed
 * @param column gas of the influx in the temperature of the well
 * @param mud in the well at shut-in
 * @param method driller's, or wait-and-weight
 * @param pressures that are held
 * @param influxVolume geometric annulus volume the influx fills on bottom at shut-in, m³, above zero
 * @param stringVolume inside volume of the string down to the bit, m³
 * @param pump how fast; empty where only volumes are asked for
 * @param watched measured depths whose pressure is asked for, such as shoe, weak point and stack, m
 * @param limits whose margin is asked for at every moment
 * @param lossAbove friction of the flowing mud in the annulus between a measured depth and its top, Pa; it comes on top of
 *     what the choke holds, so that each depth bears the friction above it
 * @param steps even steps of each circulation, 10 to 5000; breaks of the annulus and watched depths are added
 */
public record CirculationPlan(
        AnnulusGrid grid,
        GasColumn column,
        MudColumn mud,
        CirculationMethod method,
        Pressures pressures,
        @Si("m3") double influxVolume,
        @Si("m3") double stringVolume,
        Pump pump,
        @Si(value = "m", kind = Kind.DEPTH) double[] watched,
        List<LimitLine> limits,
        DoubleUnaryOperator lossAbove,
        int steps) {
    /** Steps that a schedule takes unless told otherwise. */
    public static final int USUAL_STEPS = 160;

    public CirculationPlan {
        Objects.requireNonNull(grid, "grid");
        Objects.requireNonNull(column, "column");
        Objects.requireNonNull(mud, "mud");
        Objects.requireNonNull(method, "method");
        Objects.requireNonNull(pressures, "pressures");
        Objects.requireNonNull(pump, "pump");
        Check.within("influx volume", influxVolume, 1e-6, 1000, Measure.VOLUME);
        Check.within("inside volume of the string", stringVolume, 0, 1000, Measure.VOLUME);
        limits = List.copyOf(limits);
        Objects.requireNonNull(lossAbove, "lossAbove");
        Check.within("steps of the schedule", steps, 10, 5000, Measure.NUMBER);
        watched = watched.clone();
        for (double depth : watched) {
            Check.within("watched depth", depth, grid.top(), grid.bottom(), Measure.DEPTH);
        }
    }

    /** A plan without limits and without friction in the annulus, in the usual number of steps. */
    public CirculationPlan(
            AnnulusGrid grid,
            GasColumn column,
            MudColumn mud,
            CirculationMethod method,
            Pressures pressures,
            @Si("m3") double influxVolume,
            @Si("m3") double stringVolume,
            Pump pump,
            @Si(value = "m", kind = Kind.DEPTH) double[] watched) {
        this(
                grid,
                column,
                mud,
                method,
                pressures,
                influxVolume,
                stringVolume,
                pump,
                watched,
                List.of(),
                d -> 0,
                USUAL_STEPS);
    }

    @Override
    @Si(value = "m", kind = Kind.DEPTH)
    public double[] watched() {
        return watched.clone();
    }

    /**
     * Pressures of the operation.
     *
     * @param formation of the kick zone, Pa absolute
     * @param bottomHole held while circulating, friction in the annulus apart, Pa absolute, at least the formation's
     * @param chokeLineFriction lost between stack and choke while pumping, Pa
     */
    public record Pressures(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double formation,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double bottomHole,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double chokeLineFriction) {
        public Pressures {
            Check.within("formation pressure", formation, 1e5, 4e8, Measure.PRESSURE_ABSOLUTE);
            Check.within("bottom-hole pressure held", bottomHole, formation, 4e8, Measure.PRESSURE_ABSOLUTE);
            Check.within("choke-line friction", chokeLineFriction, 0, 5e7, Measure.PRESSURE_DIFFERENCE);
        }
    }

    /**
     * The pump.
     *
     * @param rate m³/s, above zero
     * @param output volume per stroke, m³, where strokes are asked for
     */
    public record Pump(@Si("m3/s") double rate, @Si("m3") OptionalDouble output) {
        public Pump {
            Check.within("pump rate", rate, 1e-6, 0.5, Measure.FLOW_RATE);
            output.ifPresent(v -> Check.within("pump output per stroke", v, 1e-5, 0.2, Measure.VOLUME));
        }
    }
}
