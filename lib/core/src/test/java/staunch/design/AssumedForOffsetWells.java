package staunch.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.control.SlowCirculation;
import staunch.earth.TemperatureProfile;
import staunch.envelope.Criteria;
import staunch.fluid.GasComposition;
import staunch.fluid.MudBase;
import staunch.limit.FlowLine;
import staunch.limit.PressureEquipment;
import staunch.limit.PressureRating;
import staunch.limit.StackElement;
import staunch.units.Physics;
import staunch.units.Source;
import staunch.well.CasingInterval;
import staunch.well.CasingString;
import staunch.well.DrillString;
import staunch.well.StringComponent;
import staunch.well.SurveyStation;
import staunch.well.WellPath;

/**
 * EVERYTHING THAT THE OPEN DATA DO NOT HOLD AND THE TESTS ASSUME, with the reason. Nothing here is known of these wells,
 * and no result that rests on it says anything about them.
 */
final class AssumedForOffsetWells {
    static final double INCH = 0.0254;

    private static final Source SOURCE = new Source("assumed for tests on open data", "");

    /** 1 MPa per 1000 lbf/in². */
    private static final double KSI = 6.894757293168e6;

    private AssumedForOffsetWells() {}

    // --- rules -----------------------------------------------------------------------------------------------------

    /** Kick intensity 0.06 g/cm³ (0.5 ppg), common practice. */
    static final double INTENSITY = 60;

    /** Required influx 4 m³ (25 bbl), common practice, for both scenarios. */
    static final double REQUIRED = 4;

    /** No margins: the tests compare with hand formulas that have none. */
    static Criteria criteria() {
        return new Criteria(
                "assumed rules",
                "tests",
                SOURCE,
                OptionalDouble.of(REQUIRED),
                OptionalDouble.of(REQUIRED),
                OptionalDouble.of(INTENSITY),
                OptionalDouble.of(0),
                OptionalDouble.of(0),
                OptionalDouble.empty());
    }

    // --- earth -----------------------------------------------------------------------------------------------------

    /**
     * Pore pressure of an exposed stretch: the lightest section mud it is exposed to less this, kg/m³ (0.05 g/cm³), as
     * these wells were drilled overbalanced; but never below {@link #SEAWATER}. The drilled kick is then governed by the
     * intensity and not by this guess.
     */
    static final double OVERBALANCE = 50;

    /** Column of seawater from mean sea level: normal pore pressure offshore, kg/m³. */
    static final double SEAWATER = 1025;

    /** North Sea, surface and seabed at 70 to 120 m: about 10 °C and 5 °C. */
    private static final double SEA_SURFACE_TEMPERATURE = Physics.CELSIUS_ZERO + 10;

    private static final double SEABED_TEMPERATURE = Physics.CELSIUS_ZERO + 5;

    /** Where no bottom-hole temperature is reported: 35 K/km, the middle of what the other wells report. */
    private static final double GRADIENT = 0.035;

    /** Linear from the seabed to the reported bottom-hole temperature at total depth, and on by the same gradient. */
    static TemperatureProfile temperature(OffsetWell well, double bottomVertical) {
        double seabed = well.kellyBushing() + well.waterDepth();
        double below = bottomVertical - seabed;
        double gradient = well.bottomHoleTemperature().isPresent()
                ? (well.bottomHoleTemperature().getAsDouble() + Physics.CELSIUS_ZERO - SEABED_TEMPERATURE) / below
                : GRADIENT;
        return TemperatureProfile.of(new double[] {0, well.kellyBushing(), seabed, bottomVertical + 100}, new double[] {
            SEA_SURFACE_TEMPERATURE,
            SEA_SURFACE_TEMPERATURE,
            SEABED_TEMPERATURE,
            SEABED_TEMPERATURE + gradient * (below + 100)
        });
    }

    /** Dry hydrocarbon gas of gravity 0.65, as is usual for kick tolerance. */
    static GasComposition gas() {
        return GasComposition.sweet(0.65);
    }

    // --- path ------------------------------------------------------------------------------------------------------

    /** Below this greatest inclination a well counts as vertical: cos 10° shortens a depth by 1.5 % at most, degrees. */
    private static final double NEARLY_VERTICAL = 10;

    /** Inclination of a well whose vertical depth is reported but not its inclination, degrees. */
    private static final double UNREPORTED_INCLINATION = 30;

    /** 1 % of length lost to depth; less is rounding of what is reported. */
    private static final double DEVIATED_SHARE = 0.01;

    /** 3° in 30 m, a usual build rate, rad/m. */
    private static final double BUILD = Math.toRadians(3) / 30;

    /**
     * Vertical; or where length and vertical depth differ by more than 1 %, vertical to a kick-off point, built at 3° in
     * 30 m to the reported greatest inclination and held, with the kick-off where the reported vertical depth is met. Where
     * no kick-off below the seabed meets it, vertical.
     */
    static WellPath path(OffsetWell well, double end) {
        WellPath vertical = WellPath.vertical(end + 100);
        if (well.finalVerticalDepth().isEmpty()) {
            return vertical;
        }
        double length = well.totalDepth();
        double depth = well.finalVerticalDepth().getAsDouble();
        double degrees = well.greatestInclination().orElse(UNREPORTED_INCLINATION);
        if (length - depth < DEVIATED_SHARE * length || degrees < NEARLY_VERTICAL) {
            return vertical;
        }
        double inclination = Math.toRadians(degrees);
        double radius = 1 / BUILD;
        // depth = k + R sin i + (length − k − R i) cos i
        double kickOff =
                (depth - radius * Math.sin(inclination) - (length - radius * inclination) * Math.cos(inclination))
                        / (1 - Math.cos(inclination));
        double built = kickOff + radius * inclination;
        if (kickOff < well.kellyBushing() + well.waterDepth() || built > length) {
            return vertical;
        }
        return WellPath.of(List.of(
                new SurveyStation(0, 0, 0),
                new SurveyStation(kickOff, 0, 0),
                new SurveyStation(built, inclination, 0),
                new SurveyStation(end + 100, inclination, 0)));
    }

    // --- steel -----------------------------------------------------------------------------------------------------

    /** Outside diameter to a usual inside diameter, inches; from memory of casing tables, heavier walls of each size. */
    private static final Map<Double, Double> INSIDE = Map.ofEntries(
            Map.entry(30.0, 28.0),
            Map.entry(26.0, 24.0),
            Map.entry(24.0, 22.75),
            Map.entry(20.0, 18.73),
            Map.entry(18.625, 17.755),
            Map.entry(16.0, 14.85),
            Map.entry(14.0, 12.4),
            Map.entry(13.625, 12.375),
            Map.entry(13.375, 12.347),
            Map.entry(11.75, 10.682),
            Map.entry(10.75, 9.66),
            Map.entry(9.875, 8.625),
            Map.entry(9.625, 8.535),
            Map.entry(7.75, 6.56),
            Map.entry(7.625, 6.625),
            Map.entry(7.0, 6.094),
            Map.entry(5.0, 4.276),
            Map.entry(4.5, 3.958));

    /** A liner hangs 100 m above the shoe of the string that carries it. */
    private static final double LAP = 100;

    /**
     * Yield of 110 000 lbf/in² up to 14 in and 55 000 above; 80 % of burst may be used; cement mixed with seawater, whose
     * column is the back-up outside; a liner top that holds 10 000 lbf/in² more than that.
     */
    static CasingString casing(String name, double outside, double top, double shoe) {
        double yield = (outside > 14 ? 55 : 110) * KSI;
        return new CasingString(
                name,
                List.of(new CasingInterval(
                        top,
                        shoe,
                        outside * INCH,
                        INSIDE.get(outside) * INCH,
                        Optional.of("assumed"),
                        OptionalDouble.of(yield),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        0)),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(SEAWATER),
                OptionalDouble.of(0.8),
                OptionalDouble.empty(),
                OptionalDouble.of(10 * KSI));
    }

    static double linerTop(double carryingShoe) {
        return carryingShoe - LAP;
    }

    /** Hole below a string where none is reported: the largest usual bit that passes it, inches. */
    static double bitThrough(double outside) {
        double inside = INSIDE.get(outside);
        double[] bits = {26, 17.5, 12.25, 8.5, 6.5, 5.875};
        for (double bit : bits) {
            if (bit <= inside) {
                return bit;
            }
        }
        throw new IllegalStateException("No bit passes " + outside + " in casing");
    }

    /** Hole that a string is usually set in where none is reported, inches: the other 16 in strings have 20 or 22. */
    static double holeFor(double casing) {
        if (casing == 16) {
            return 20;
        }
        throw new IllegalStateException("No hole known for " + casing + " in casing");
    }

    /** One rating of 15 000 lbf/in² for all equipment, so that the formation or the casing governs. */
    static PressureEquipment equipment(OffsetWell well) {
        double working = 15 * KSI;
        PressureRating rating = new PressureRating("assumed equipment", working, Optional.of(SOURCE));
        return new PressureEquipment(
                Optional.of(rating),
                Optional.of(rating),
                Optional.of(new FlowLine(
                        "choke line",
                        well.floater() ? well.waterDepth() : 10,
                        0.0762,
                        Optional.of(rating),
                        OptionalDouble.empty())),
                Optional.empty(),
                Optional.empty(),
                List.of(new StackElement(
                        "pipe ram",
                        StackElement.Type.PIPE_RAM,
                        Optional.of(rating),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty())));
    }

    // --- string and circulation ------------------------------------------------------------------------------------

    /** Length of the collars, m. */
    static final double COLLARS = 150;

    private static final double HEAVY_WEIGHT = 100;

    /** Collars, heavyweight and 5 in drill pipe; 3½ in pipe below 5 in where the hole is smaller than 8 in. */
    static DrillString string(double hole) {
        List<StringComponent> parts = new ArrayList<>();
        if (hole < 8) {
            parts.add(part("drill collars", COLLARS, 4.75, 2.25));
            parts.add(part("drill pipe 3 1/2 in", 1500, 3.5, 2.764));
        } else {
            parts.add(part("drill collars", COLLARS, hole < 12 ? 6.5 : 8, 2.8125));
            parts.add(part("heavyweight", HEAVY_WEIGHT, 5, 3));
        }
        parts.add(part("drill pipe 5 in", 1000, 5, 4.276));
        return new DrillString(parts);
    }

    /** One diameter all the way, for laws that hold in a uniform annulus only. */
    static DrillString uniformString() {
        return new DrillString(List.of(part("drill pipe", 1000, 3.5, 2.764)));
    }

    private static StringComponent part(String name, double length, double outside, double inside) {
        return new StringComponent(name, length, outside * INCH, inside * INCH);
    }

    /**
     * Floaters: 0.1 MPa at 8 l/s through a 3 in line of about 100 m (Fanning factor 0.008, 1.5 g/cm³: 2 f ρ v² L/d). The
     * data say nothing of it.
     */
    static List<SlowCirculation> slowCirculation(OffsetWell well) {
        return well.floater()
                ? List.of(new SlowCirculation(0.008, OptionalDouble.empty(), OptionalDouble.of(1e5)))
                : List.of();
    }

    /** No overbalance and no choke-handling allowance: the tests compare with hand formulas that have none. */
    static final double CIRCULATING_OVERBALANCE = 0;

    /** Weights outside this range, g/cm³, are misprints (0.14, 0.47 and 7.79 occur): no mud is lighter than 0.95 or heavier than 2.6. */
    static boolean misprint(double weight) {
        return weight < 0.95 || weight > 2.6;
    }

    /** Oil based where the name says so; the trade names are from memory. It changes a warning only. */
    static MudBase base(String type) {
        String upper = type.toUpperCase(java.util.Locale.ROOT);
        boolean oil = upper.contains("OIL")
                || upper.contains("OBM")
                || upper.contains("VERSA")
                || upper.contains("WARP")
                || upper.contains("XP-07")
                || upper.contains("PARATHERM")
                || upper.contains("CARBOSEA");
        return oil ? MudBase.OIL : MudBase.WATER;
    }
}
