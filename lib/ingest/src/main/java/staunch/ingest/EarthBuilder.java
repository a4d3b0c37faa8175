package staunch.ingest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import staunch.earth.EarthModel;
import staunch.earth.EquivalentZero;
import staunch.earth.FormationTop;
import staunch.earth.PressureProfile;
import staunch.earth.Range;
import staunch.earth.Standing;
import staunch.earth.StayOut;
import staunch.earth.StrengthTest;
import staunch.earth.TemperatureProfile;
import staunch.earth.WeakZone;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Source;
import staunch.units.UnitSystem;
import staunch.well.Datum;
import staunch.well.WellPath;

/** Builds the rock of a case. Every depth becomes vertical depth below the datum, every pressure absolute. */
final class EarthBuilder {
    private static final String LIKELY = "likely";
    private static final String LOW = "low";
    private static final String HIGH = "high";
    private static final List<String> ESTIMATES = List.of(LIKELY, LOW, HIGH);

    /** Difference between a profile that is straight in pressure and one in equivalent density, Pa: 0.3 psi. */
    private static final double CHORD = 2000;

    static final String SEA_NEEDED = "mudline needs the density of the sea";
    static final String GIVE_SEA = "give datum: sea_water_density";

    private final Fields earth;
    private final Datum datum;
    private final Optional<WellPath> path;
    private final UnitSystem units;
    private final FaultLog log;

    EarthBuilder(Fields earth, Placed<Datum> datum, Optional<WellPath> path, UnitSystem units, FaultLog log) {
        this(earth, datum.value(), path, units, log);
    }

    EarthBuilder(Fields earth, Datum datum, Optional<WellPath> path, UnitSystem units, FaultLog log) {
        this.earth = earth;
        this.datum = datum;
        this.path = path;
        this.units = units;
        this.log = log;
    }

    EarthModel build() {
        Optional<EquivalentZero> zero = log.attempt(earth.place("equivalent_density_datum"), this::zero);
        Optional<Range> pore = zero.flatMap(z -> range("pore_pressure", z));
        Optional<Range> strength = zero.flatMap(z -> range("strength", z));
        List<StrengthTest> tests = new ArrayList<>();
        List<WeakZone> zones = new ArrayList<>();
        if (zero.isPresent()) {
            for (Fields f : earth.rows("strength_tests")) {
                log.attempt(f.place(), () -> test(f, zero.get())).ifPresent(tests::add);
            }
            for (Fields f : earth.rows("weak_zones")) {
                log.attempt(f.place(), () -> zone(f, zero.get())).ifPresent(zones::add);
            }
        }
        return new EarthModel(pore, strength, tests, zones, temperature(), tops(), stayOuts());
    }

    /** The pore pressure alone. */
    Optional<Range> porePressure() {
        return log.attempt(earth.place("equivalent_density_datum"), this::zero).flatMap(z -> range("pore_pressure", z));
    }

    private EquivalentZero zero() {
        EquivalentZero.Place place = earth.choice("equivalent_density_datum", EquivalentZero.Place.class)
                .orElse(EquivalentZero.Place.DATUM);
        if (place == EquivalentZero.Place.MUDLINE && seaUnknown(datum)) {
            log.add(earth.place("equivalent_density_datum"), "mudline", SEA_NEEDED, GIVE_SEA);
            throw new FaultLog.Incomplete();
        }
        return EquivalentZero.of(place, datum);
    }

    static boolean seaUnknown(Datum datum) {
        return datum.place() instanceof Datum.AtSea sea && sea.seaWaterDensity().isEmpty();
    }

    private double depth(Fields f, String tvd, String tvdss) {
        OptionalDouble below = f.amount(tvd);
        return below.isPresent() ? below.getAsDouble() : f.needAmount(tvdss) + datum.elevation();
    }

    private double depth(Fields f) {
        return depth(f, "tvd", "tvdss");
    }

    private static double pressure(Fields f, String key, double z, EquivalentZero zero) {
        Values.Rock rock = rock(f, key);
        return rock instanceof Values.Equivalent e
                ? zero.pressure(e.density(), z)
                : ((Values.Pressure) rock).absolute();
    }

    private Optional<Range> range(String key, EquivalentZero zero) {
        return earth.nested(key).flatMap(f -> {
            List<Fields> rows = f.has("file") ? f.table("file") : f.rows("points");
            return rows.isEmpty() ? Optional.empty() : log.attempt(f.place(), () -> range(f, rows, zero));
        });
    }

    private Range range(Fields f, List<Fields> rows, EquivalentZero zero) {
        checkOrder(rows, this::depth, true);
        List<String> given = ESTIMATES.stream()
                .filter(key -> rows.stream().anyMatch(r -> r.has(key)))
                .toList();
        boolean complete = true;
        for (Fields row : rows) {
            for (String key : given) {
                if (!row.has(key) && !key.equals(LIKELY)) {
                    log.add(
                            row.place(),
                            "",
                            key + " is missing here but given at other points",
                            "give it at all or at none");
                    complete = false;
                }
            }
        }
        if (!complete) {
            throw new FaultLog.Incomplete();
        }
        checkSpread(rows, zero);
        Map<String, PressureProfile> profiles = profiles(rows, given, zero);
        return new Range(
                profiles.get(LIKELY),
                Optional.ofNullable(profiles.get(LOW)),
                Optional.ofNullable(profiles.get(HIGH)),
                f.text("source").map(s -> new Source(s, "")));
    }

    /**
     * Profiles of all estimates at the same depths. A profile is straight in pressure between its points; where equivalent
     * densities are given at both ends of a stretch, these are taken as straight, and points are put between until the
     * difference is below {@link #CHORD}.
     */
    private Map<String, PressureProfile> profiles(List<Fields> rows, List<String> estimates, EquivalentZero zero) {
        int[] parts = new int[rows.size()];
        for (int i = 1; i < rows.size(); i++) {
            parts[i] = 1;
            for (String key : estimates) {
                parts[i] = Math.max(parts[i], parts(rows.get(i - 1), rows.get(i), key));
            }
        }
        Map<String, PressureProfile> found = new HashMap<>();
        for (String key : estimates) {
            List<Double> z = new ArrayList<>();
            List<Double> p = new ArrayList<>();
            for (int i = 0; i < rows.size(); i++) {
                for (int k = 1; k < parts[i]; k++) {
                    double share = (double) k / parts[i];
                    double between = depth(rows.get(i - 1)) + share * (depth(rows.get(i)) - depth(rows.get(i - 1)));
                    z.add(between);
                    p.add(between(rows.get(i - 1), rows.get(i), key, share, zero));
                }
                z.add(depth(rows.get(i)));
                p.add(pressure(rows.get(i), key, depth(rows.get(i)), zero));
            }
            found.put(
                    key,
                    PressureProfile.of(
                            z.stream().mapToDouble(Double::doubleValue).toArray(),
                            p.stream().mapToDouble(Double::doubleValue).toArray()));
        }
        return found;
    }

    /** Pressure is quadratic where density is linear: its chord over a length h misses it by ρ' g h²/4 at most. */
    private int parts(Fields above, Fields below, String key) {
        if (!(rock(above, key) instanceof Values.Equivalent a) || !(rock(below, key) instanceof Values.Equivalent b)) {
            return 1;
        }
        double h = depth(below) - depth(above);
        double miss = Math.abs(b.density() - a.density()) * Physics.GRAVITY * h / 4;
        return (int) Math.ceil(Math.sqrt(Math.max(1, miss / CHORD)));
    }

    private double between(Fields above, Fields below, String key, double share, EquivalentZero zero) {
        double z = depth(above) + share * (depth(below) - depth(above));
        if (rock(above, key) instanceof Values.Equivalent a && rock(below, key) instanceof Values.Equivalent b) {
            return zero.pressure(a.density() + share * (b.density() - a.density()), z);
        }
        double top = pressure(above, key, depth(above), zero);
        return top + share * (pressure(below, key, depth(below), zero) - top);
    }

    private static Values.Rock rock(Fields f, String key) {
        return f.rock(key).orElseThrow(FaultLog.Incomplete::new);
    }

    private void checkSpread(List<Fields> rows, EquivalentZero zero) {
        boolean wrong = false;
        for (Fields row : rows) {
            double z = depth(row);
            double likely = pressure(row, LIKELY, z, zero);
            if (row.rock(LOW).isPresent() && pressure(row, LOW, z, zero) > likely) {
                log.add(
                        row.place(LOW),
                        row.written(LOW),
                        row.written(LOW) + " is above the likely " + row.written(LIKELY),
                        "check the columns");
                wrong = true;
            }
            if (row.rock(HIGH).isPresent() && pressure(row, HIGH, z, zero) < likely) {
                log.add(
                        row.place(HIGH),
                        row.written(HIGH),
                        row.written(HIGH) + " is below the likely " + row.written(LIKELY),
                        "check the columns");
                wrong = true;
            }
        }
        if (wrong) {
            throw new FaultLog.Incomplete();
        }
    }

    /** Checks that rows go downwards; where steps are allowed two may stand at one depth. */
    private void checkOrder(List<Fields> rows, ToDoubleFunction<Fields> depth, boolean steps) {
        boolean wrong = false;
        for (int i = 1; i < rows.size(); i++) {
            double above = depth.applyAsDouble(rows.get(i - 1));
            double here = depth.applyAsDouble(rows.get(i));
            boolean twice = here == above;
            boolean step = steps && (i < 2 || depth.applyAsDouble(rows.get(i - 2)) != here);
            if (here < above || (twice && !step)) {
                String key = rows.get(i).has("tvd") ? "tvd" : "tvdss";
                log.add(
                        rows.get(i).place(key),
                        rows.get(i).written(key),
                        text(here) + (twice ? " is given again" : " stands after " + text(above)),
                        twice ? "keep one of them" : "sort the rows downwards");
                wrong = true;
            }
        }
        if (wrong) {
            throw new FaultLog.Incomplete();
        }
    }

    private String text(double depth) {
        return units.precise(depth, Measure.DEPTH) + " below the datum";
    }

    private StrengthTest test(Fields f, EquivalentZero zero) {
        double z =
                f.has("md") ? path.orElseThrow(FaultLog.Incomplete::new).verticalDepth(f.needAmount("md")) : depth(f);
        OptionalDouble mud = f.amount("test_mud");
        double pressure;
        if (f.has("surface_pressure")) {
            if (mud.isEmpty()) {
                if (!f.has("test_mud")) {
                    log.add(f.place("test_mud"), "", "is missing", "surface_pressure needs the mud of the test");
                }
                throw new FaultLog.Incomplete();
            }
            pressure = Physics.ATMOSPHERE + f.needAmount("surface_pressure") + mud.getAsDouble() * Physics.GRAVITY * z;
        } else {
            pressure = pressure(f, "pressure", z, zero);
        }
        return new StrengthTest(
                f.needText("name"), z, pressure, f.needChoice("standing", Standing.class), mud, source(f));
    }

    private static Source source(Fields f) {
        return new Source(f.needText("source"), f.text("place").orElse(""));
    }

    /** A pressure, or a density from elsewhere, becomes an equivalent density from the datum at the zone's top. */
    private WeakZone zone(Fields f, EquivalentZero zero) {
        double top = depth(f, "top_tvd", "top_tvdss");
        double bottom = depth(f, "bottom_tvd", "bottom_tvdss");
        double pressure = pressure(f, "strength", top, zero);
        if (top <= 0) {
            log.add(f.place(), "", "lies at or above the datum", "check its depths and their signs");
            throw new FaultLog.Incomplete();
        }
        double density = (pressure - Physics.ATMOSPHERE) / (Physics.GRAVITY * top);
        return new WeakZone(f.needText("name"), top, bottom, density, source(f));
    }

    private List<StayOut> stayOuts() {
        List<StayOut> found = new ArrayList<>();
        for (Fields f : earth.rows("shoe_stay_outs")) {
            log.attempt(
                            f.place(),
                            () -> new StayOut(
                                    f.needText("name"),
                                    depth(f, "top_tvd", "top_tvdss"),
                                    depth(f, "bottom_tvd", "bottom_tvdss"),
                                    f.needText("reason"),
                                    source(f)))
                    .ifPresent(found::add);
        }
        return found;
    }

    private Optional<TemperatureProfile> temperature() {
        return earth.nested("temperature").flatMap(f -> log.attempt(f.place(), () -> temperature(f)));
    }

    private TemperatureProfile temperature(Fields f) {
        if (f.has("geothermal")) {
            return geothermal(f.needNested("geothermal"));
        }
        List<Fields> rows = f.has("file") ? f.table("file") : f.rows("points");
        if (rows.isEmpty()) {
            throw new FaultLog.Incomplete();
        }
        checkOrder(rows, this::depth, false);
        return TemperatureProfile.of(
                rows.stream().mapToDouble(this::depth).toArray(),
                rows.stream().mapToDouble(r -> r.needAmount("temperature")).toArray());
    }

    /** Linear down to the deepest point of the hole; above ground or seabed linear to the datum. */
    private TemperatureProfile geothermal(Fields f) {
        double ground = datum.groundOrSeabedDepth();
        double atGround = f.needAmount("at_ground");
        double gradient = f.needAmount("gradient");
        double bottom = Math.max(deepest(path.orElseThrow(FaultLog.Incomplete::new)), ground + 1);
        double atSurface = f.amount("at_surface").orElse(atGround);
        double atBottom = atGround + gradient * (bottom - ground);
        return ground == 0
                ? TemperatureProfile.of(new double[] {0, bottom}, new double[] {atGround, atBottom})
                : TemperatureProfile.of(new double[] {0, ground, bottom}, new double[] {atSurface, atGround, atBottom});
    }

    private static double deepest(WellPath path) {
        double deepest = path.verticalDepth(path.end());
        for (double md : path.nodesBetween(0, path.end())) {
            deepest = Math.max(deepest, path.verticalDepth(md));
        }
        return deepest;
    }

    /** The formation tops alone. */
    List<FormationTop> tops() {
        List<Fields> rows = earth.rows("tops");
        List<FormationTop> tops = new ArrayList<>();
        log.attempt(earth.place("tops"), () -> {
            checkOrder(rows, this::depth, false);
            return rows;
        });
        for (Fields f : rows) {
            log.attempt(f.place(), () -> new FormationTop(f.needText("formation"), depth(f)))
                    .ifPresent(tops::add);
        }
        return tops;
    }
}
