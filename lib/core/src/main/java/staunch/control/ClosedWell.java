package staunch.control;

import java.util.List;
import java.util.Objects;
import staunch.earth.TemperatureProfile;
import staunch.fluid.Gas;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Si;
import staunch.well.Annulus;
import staunch.well.WellPath;

/**
 * A well that is shut in on a single bubble of gas.
 *
 * @param path of the hole
 * @param annulus from the stack to the bottom of the hole
 * @param gas of the influx
 * @param temperature along the hole; the gas takes it at once
 * @param mud in annulus and string
 * @param influx at shut-in
 * @param yielding of mud and hole
 * @param limits to watch
 */
public record ClosedWell(
        WellPath path,
        Annulus annulus,
        Gas gas,
        TemperatureProfile temperature,
        WellMud mud,
        Influx influx,
        Yielding yielding,
        List<PressureLimit> limits) {
    public ClosedWell {
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(annulus, "annulus");
        Objects.requireNonNull(gas, "gas");
        Objects.requireNonNull(temperature, "temperature");
        Objects.requireNonNull(mud, "mud");
        Objects.requireNonNull(influx, "influx");
        Objects.requireNonNull(yielding, "yielding");
        limits = List.copyOf(limits);
        if (path.end() < annulus.bottom() - 1e-6) {
            throw new InputFault("survey", "ends above the bottom of the annulus", "extend it to the bottom");
        }
        Check.within("influx volume", influx.volume(), 1e-6, annulus.volume(), Measure.VOLUME);
        for (PressureLimit limit : limits) {
            Check.within(
                    "measured depth of " + limit.name(),
                    limit.measuredDepth(),
                    annulus.top(),
                    annulus.bottom(),
                    Measure.DEPTH);
        }
    }

    /**
     * Mud of constant density.
     *
     * @param density kg/m³, 500 to 3000
     * @param viscosity effective, at the shear rates of the rise, Pa·s, 1e-4 to 1000: for slip laws that ask for it
     * @param lineDensity of the fluid between the top of the annulus and surface (choke line), kg/m³, 500 to 3000
     */
    public record WellMud(
            @Si("kg/m3") double density,
            @Si("Pa.s") double viscosity,
            @Si("kg/m3") double lineDensity) {
        public WellMud {
            Check.within("mud density", density, 500, 3000, Measure.DENSITY);
            Check.within("effective viscosity of the mud", viscosity, 1e-4, 1000, Measure.VISCOSITY);
            Check.within("density of the fluid in the choke line", lineDensity, 500, 3000, Measure.DENSITY);
        }
    }

    /**
     * Influx on bottom.
     *
     * @param formationPressure at the bottom of the annulus, Pa absolute, 1e5 to 4e8
     * @param volume of annulus it fills, m³, above zero to the annulus
     */
    public record Influx(
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double formationPressure,
            @Si("m3") double volume) {
        public Influx {
            Check.within("formation pressure", formationPressure, 1e5, 4e8, Measure.PRESSURE_ABSOLUTE);
        }
    }

    /**
     * How much room pressure makes: mud by its pressure, the hole by its pressure above that of the open well at rest.
     *
     * @param mudCompressibility 1/Pa, 0 to 2e-9 (0.4e-9 to 0.6e-9 for water-based muds, from memory)
     * @param holeCompliance growth of the annulus, open hole and casing, per volume and pressure, 1/Pa, 0 to 1e-8
     * @param stringOpen whether the mud in the string is in touch with the annulus; a float closes it off
     * @param filtrateLoss volume lost into the formation per time, m³/s, 0 to 0.01
     */
    public record Yielding(
            @Si("1/Pa") double mudCompressibility,
            @Si("1/Pa") double holeCompliance,
            boolean stringOpen,
            @Si("m3/s") double filtrateLoss) {
        /** Nothing yields: the upper bound of the pressure. */
        public static final Yielding RIGID = new Yielding(0, 0, false, 0);

        public Yielding {
            Check.within("mud compressibility", mudCompressibility, 0, 2e-9, Measure.COMPRESSIBILITY);
            Check.within("compliance of the hole", holeCompliance, 0, 1e-8, Measure.COMPRESSIBILITY);
            Check.within("filtrate loss", filtrateLoss, 0, 0.01, Measure.FLOW_RATE);
        }
    }

    /** The same well with nothing that yields. */
    public ClosedWell rigid() {
        return new ClosedWell(path, annulus, gas, temperature, mud, influx, Yielding.RIGID, limits);
    }

    /** A limit of a surface gauge, taken down the fluid between surface and the top of the annulus. */
    public static PressureLimit surfaceLimit(
            String name, @Si(value = "Pa", kind = Kind.GAUGE) double gauge, ClosedWell well) {
        return new PressureLimit(name, well.annulus.top(), gauge + well.atTopAtRest());
    }

    /** The same well with other limits. */
    public ClosedWell watching(List<PressureLimit> newLimits) {
        return new ClosedWell(path, annulus, gas, temperature, mud, influx, yielding, newLimits);
    }

    /** Pressure at the top of the annulus with the line to surface open. */
    double atTopAtRest() {
        return Physics.ATMOSPHERE + Physics.GRAVITY * mud.lineDensity() * path.verticalDepth(annulus.top());
    }

    /** Pressure of the mud at rest at the bottom of the open well. */
    double atBottomAtRest() {
        double height = path.verticalDepth(annulus.bottom()) - path.verticalDepth(annulus.top());
        return atTopAtRest() + Physics.GRAVITY * mud.density() * height;
    }
}
