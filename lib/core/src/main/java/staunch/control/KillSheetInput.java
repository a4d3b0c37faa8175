package staunch.control;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;
import staunch.well.Annulus;
import staunch.well.WellPath;

/**
 * What a kill sheet is made from.
 *
 * @param path of the hole, down to the bit at least
 * @param annulus with the string in it; it begins at the stack (the datum of a surface stack)
 * @param mudDensity in the well at shut-in, kg/m³, 700 to 2700
 * @param shutIn readings
 * @param pump how it was and will be pumped
 * @param weakPoint what the open hole holds
 * @param killMud how the kill mud is made
 * @param subsea choke line and riser of a subsea stack; empty for a surface stack
 * @param options choices of method
 */
public record KillSheetInput(
        WellPath path,
        Annulus annulus,
        @Si("kg/m3") double mudDensity,
        ShutIn shutIn,
        Pump pump,
        OpenHoleLimit weakPoint,
        KillMud killMud,
        Optional<Subsea> subsea,
        Options options) {
    public KillSheetInput {
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(annulus, "annulus");
        Check.within("mud density", mudDensity, 700, 2700, Measure.DENSITY);
        Objects.requireNonNull(shutIn, "shutIn");
        Objects.requireNonNull(pump, "pump");
        Objects.requireNonNull(weakPoint, "weakPoint");
        Objects.requireNonNull(killMud, "killMud");
        Objects.requireNonNull(subsea, "subsea");
        Objects.requireNonNull(options, "options");
        int parts = annulus.string().count();
        if (parts == 0) {
            throw new InputFault("string", "is not in the hole", "a kill sheet needs the bit in the hole");
        }
        for (int i = 0; i < parts; i++) {
            if (annulus.string().component(i).insideDiameter() == 0) {
                throw new InputFault(
                        "string component \"" + annulus.string().component(i).name() + "\"",
                        "is plugged",
                        "kill mud cannot be pumped through it");
            }
        }
        double bit = annulus.string().bottom(parts - 1);
        if (path.end() < bit) {
            throw new InputFault("survey", "ends above the bit", "extend it to the bit");
        }
        if (weakPoint.measuredDepth() < annulus.top() || weakPoint.measuredDepth() > annulus.bottom()) {
            throw new InputFault(
                    "weak point \"" + weakPoint.name() + "\"",
                    "lies outside the annulus",
                    "give its measured depth between the stack and the bottom of the hole");
        }
    }

    /** Measured depth of the bit. */
    @Si(value = "m", kind = Kind.DEPTH)
    public double bitDepth() {
        return annulus.string().bottom(annulus.string().count() - 1);
    }

    /**
     * Readings at shut-in.
     *
     * @param drillPipePressure Pa gauge, 0 to 150 MPa
     * @param casingPressure at the surface gauge, Pa gauge, 0 to 150 MPa
     * @param gain pit gain, m³, 0 to 500
     */
    public record ShutIn(
            @Si(value = "Pa", kind = Kind.GAUGE) double drillPipePressure,
            @Si(value = "Pa", kind = Kind.GAUGE) double casingPressure,
            @Si("m3") double gain) {
        public ShutIn {
            Check.within("shut-in drill-pipe pressure", drillPipePressure, 0, 1.5e8, Measure.PRESSURE_GAUGE);
            Check.within("shut-in casing pressure", casingPressure, 0, 1.5e8, Measure.PRESSURE_GAUGE);
            Check.within("pit gain", gain, 0, 500, Measure.VOLUME);
        }
    }

    /**
     * Pump and slow circulation.
     *
     * @param strokeVolume output of a stroke, efficiency counted, m³, 1e-4 to 0.2
     * @param surfaceLineVolume from the pump to the top of the string, m³, 0 to 20
     * @param slowCirculation rate, and pressure up the riser or the open annulus, which must be given
     */
    public record Pump(
            @Si("m3") double strokeVolume, @Si("m3") double surfaceLineVolume, SlowCirculation slowCirculation) {
        public Pump {
            Check.within("volume of a pump stroke", strokeVolume, 1e-4, 0.2, Measure.VOLUME);
            Check.within("volume of the surface lines", surfaceLineVolume, 0, 20, Measure.VOLUME);
            Objects.requireNonNull(slowCirculation, "slowCirculation");
            if (slowCirculation.pumpPressure().isEmpty()) {
                throw new InputFault(
                        "slow circulating pressure", "is missing", "measure it; a computed one does not start a kill");
            }
        }
    }

    /**
     * What the weakest exposed point holds.
     *
     * @param name of the point
     * @param measuredDepth m
     * @param pressure it holds there, margin taken off, Pa absolute, 1e5 to 4e8
     */
    public record OpenHoleLimit(
            String name,
            @Si(value = "m", kind = Kind.DEPTH) double measuredDepth,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure) {
        public OpenHoleLimit {
            Check.text("name of the weak point", name);
            Check.within("measured depth of the weak point", measuredDepth, 0, 20_000, Measure.DEPTH);
            Check.within("pressure the weak point holds", pressure, 1e5, 4e8, Measure.PRESSURE_ABSOLUTE);
        }
    }

    /**
     * How the kill mud is made.
     *
     * @param step to which its density is rounded up, kg/m³, 0.1 to 100 (0.1 ppg is 11.98)
     * @param overbalance density beyond balance before rounding, kg/m³, 0 to 300
     * @param volume of mud to weight up, pits and well, m³, 0 to 5000
     * @param material density of the weighting material, kg/m³ (barite 4200)
     */
    public record KillMud(
            @Si(value = "kg/m3", kind = Kind.DIFFERENCE) double step,
            @Si(value = "kg/m3", kind = Kind.DIFFERENCE) double overbalance,
            @Si("m3") double volume,
            @Si("kg/m3") double material) {
        public KillMud {
            Check.within("step of the kill mud density", step, 0.1, 100, Measure.DENSITY_DIFFERENCE);
            Check.within("overbalance of the kill mud", overbalance, 0, 300, Measure.DENSITY_DIFFERENCE);
            Check.within("volume to weight up", volume, 0, 5000, Measure.VOLUME);
            Check.within("density of the weighting material", material, 2600, 7000, Measure.DENSITY);
        }
    }

    /**
     * Lines of a subsea stack.
     *
     * @param chokeLine what is known of its friction, with the mud of shut-in flowing in it
     * @param chokeLineDensity of the fluid that stands in it at shut-in, kg/m³, 500 to 3000; empty for the mud
     * @param riserVolume annulus of the riser, m³, 0 to 1000
     * @param startUpSteps steps in which the pump is brought to kill rate, 1 to 100
     */
    public record Subsea(
            ChokeLineLoss.Line chokeLine,
            @Si("kg/m3") OptionalDouble chokeLineDensity,
            @Si("m3") double riserVolume,
            int startUpSteps) {
        public Subsea {
            Objects.requireNonNull(chokeLine, "chokeLine");
            chokeLineDensity.ifPresent(
                    v -> Check.within("density of the fluid in the choke line", v, 500, 3000, Measure.DENSITY));
            Check.within("volume of the riser annulus", riserVolume, 0, 1000, Measure.VOLUME);
            Check.within("steps of start-up", startUpSteps, 1, 100, Measure.NUMBER);
        }
    }

    /**
     * Choices of method.
     *
     * @param constant gravity, or the rounding of the trade
     * @param friction how friction is shared along the string
     * @param lines of the pressure schedule between surface and bit, 1 to 500
     */
    public record Options(HydrostaticConstant constant, StringFriction friction, int lines) {
        /** Exact gravity, friction by length, ten lines. */
        public static final Options DEFAULT = new Options(HydrostaticConstant.EXACT, StringFriction.BY_LENGTH, 10);

        public Options {
            Objects.requireNonNull(constant, "constant");
            Objects.requireNonNull(friction, "friction");
            Check.within("lines of the schedule", lines, 1, 500, Measure.NUMBER);
        }
    }
}
