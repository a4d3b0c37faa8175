package staunch.ingest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import staunch.control.SlowCirculation;
import staunch.design.CasingDesign;
import staunch.design.StringPrice;
import staunch.envelope.Criteria;
import staunch.envelope.Drilling;
import staunch.envelope.OperationsPlan;
import staunch.envelope.SectionPlan;
import staunch.fluid.GasComposition;
import staunch.fluid.Mud;
import staunch.fluid.MudBase;
import staunch.fluid.MudExpansion;
import staunch.fluid.RheometerReadings;
import staunch.units.Measure;
import staunch.units.Quantity;
import staunch.well.BurstBackUp;
import staunch.well.CasingInterval;
import staunch.well.CasingString;
import staunch.well.Datum;
import staunch.well.DrillString;
import staunch.well.HoleInterval;
import staunch.well.StringComponent;

/** Builds the casing designs of a case with the keys that strings and sections take from elsewhere. */
final class DesignBuilder {
    private static final Set<String> PER_LENGTH = Set.of("m", "ft");
    private static final Set<String> PIPE_SIZE = Set.of("weight", "wall", "inside_diameter");

    private final Fields root;
    private final Map<String, Criteria> criteria;
    private final Optional<Datum> datum;
    private final Validator validator;
    private final FaultLog log;

    DesignBuilder(
            Fields root, Map<String, Criteria> criteria, Optional<Datum> datum, Validator validator, FaultLog log) {
        this.root = root;
        this.criteria = criteria;
        this.datum = datum;
        this.validator = validator;
        this.log = log;
    }

    /**
     * A design as far as it could be built, its parts with the keys they were built from.
     *
     * @param name of the design
     * @param strings that could be built
     * @param sections that could be built
     * @param wholeStrings whether these are all
     * @param wholeSections whether these are all
     */
    record Built(
            String name,
            List<Placed<CasingString>> strings,
            List<Placed<SectionPlan>> sections,
            boolean wholeStrings,
            boolean wholeSections) {
        CasingDesign design() {
            return new CasingDesign(
                    name,
                    strings.stream().map(Placed::value).toList(),
                    sections.stream().map(Placed::value).toList(),
                    strings.stream().flatMap(s -> price(s).stream()).toList());
        }
    }

    /** Price of a unit of length or weight as price per metre or kilogram. */
    private static Optional<StringPrice> price(Placed<CasingString> string) {
        return string.fields().nested("price").map(f -> {
            String per = f.needText("per");
            double amount = f.needAmount("amount");
            double unit = Quantity.parse("1 " + per).si(PER_LENGTH.contains(per) ? Measure.LENGTH : Measure.MASS);
            return new StringPrice(
                    string.value().name(),
                    f.needText("currency"),
                    amount / unit,
                    PER_LENGTH.contains(per) ? StringPrice.Basis.METRE : StringPrice.Basis.KILOGRAM);
        });
    }

    List<Built> build() {
        Map<String, Item.Mapping> strings = named("casing_strings", CaseKeys.CASING_STRING);
        Map<String, Item.Mapping> sections = named("sections", CaseKeys.SECTION);
        List<Built> designs = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Fields f : root.rows("designs")) {
            f.text("name")
                    .filter(n -> !names.add(n))
                    .ifPresent(
                            n -> log.add(f.place("name"), n, "\"" + n + "\" is the name of two designs", "rename one"));
            design(f, strings, sections).ifPresent(designs::add);
        }
        return designs;
    }

    private Map<String, Item.Mapping> named(String key, Block block) {
        Map<String, Item.Mapping> found = new LinkedHashMap<>();
        for (Fields f : root.rows(key)) {
            f.text("name")
                    .ifPresentOrElse(
                            n -> {
                                if (found.put(n, f.mapping()) != null) {
                                    log.add(f.place("name"), n, "\"" + n + "\" is given twice", "rename one");
                                }
                            },
                            () -> {
                                if (!f.has("name")) {
                                    log.add(f.place("name"), "", "is missing", "give it a name to choose it by");
                                }
                            });
        }
        return found;
    }

    private Optional<Built> design(Fields f, Map<String, Item.Mapping> strings, Map<String, Item.Mapping> sections) {
        List<Placed<CasingString>> casing = new ArrayList<>();
        List<Fields> ownStrings = f.rows("strings");
        for (Fields s : ownStrings) {
            if (isMisnamed(s, strings, "shoe", "casing_strings")) {
                continue;
            }
            Item.Mapping whole = s.text("name")
                    .map(strings::get)
                    .map(shared -> pipeOver(s.mapping(), shared))
                    .orElse(s.mapping());
            validator.complete(whole, CaseKeys.CASING_STRING);
            Fields fields = new Fields(whole, CaseKeys.CASING_STRING, validator);
            log.attempt(s.place(), () -> string(fields)).ifPresent(c -> casing.add(new Placed<>(c, fields)));
        }
        List<Placed<SectionPlan>> plans = new ArrayList<>();
        List<Fields> ownSections = f.has("sections") ? f.rows("sections") : root.rows("sections");
        if (ownSections.isEmpty() && !f.has("sections") && !root.has("sections")) {
            log.add(f.place(), "", "has no hole sections", "give sections to the case or to the design");
        }
        for (Fields s : ownSections) {
            if (f.has("sections") && isMisnamed(s, sections, "to", "sections")) {
                continue;
            }
            Fields fields =
                    new Fields(section(s, f.has("sections") ? sections : Map.of()), CaseKeys.SECTION, validator);
            validator.complete(fields.mapping(), CaseKeys.SECTION);
            log.attempt(s.place(), () -> plan(fields)).ifPresent(p -> plans.add(new Placed<>(p, fields)));
        }
        checkNames(plans);
        boolean wholeStrings = casing.size() == ownStrings.size();
        boolean wholeSections = plans.size() == ownSections.size();
        return f.text("name").map(n -> new Built(n, casing, plans, wholeStrings, wholeSections));
    }

    /** Something that names a shared thing that is not there, and is not described here either. */
    private boolean isMisnamed(Fields f, Map<String, Item.Mapping> shared, String mark, String list) {
        Optional<String> name = f.text("name").filter(n -> !f.has(mark) && !shared.isEmpty() && !shared.containsKey(n));
        name.ifPresent(n -> log.add(
                f.place("name"),
                n,
                "\"" + n + "\" is not in " + list + " and has no " + mark + " of its own",
                Words.nearest(n, shared.keySet())
                        .map(k -> "did you mean " + k + "?")
                        .orElse("name one of " + String.join(", ", shared.keySet()) + ", or describe it here")));
        return name.isPresent();
    }

    private void checkNames(List<Placed<SectionPlan>> plans) {
        Set<String> names = new HashSet<>();
        for (Placed<SectionPlan> plan : plans) {
            if (!names.add(plan.value().name())) {
                log.add(
                        plan.fields().place("name"),
                        plan.value().name(),
                        "\"" + plan.value().name() + "\" is given twice",
                        "rename one");
            }
        }
    }

    private Item.Mapping section(Fields s, Map<String, Item.Mapping> sections) {
        Item.Mapping whole =
                s.text("name").map(sections::get).map(s.mapping()::over).orElse(s.mapping());
        return root.nested("section_defaults").map(d -> whole.over(d.mapping())).orElse(whole);
    }

    /**
     * A pipe over a shared one: a size given anew voids the shared size, and either a size or a grade the ratings and the
     * price.
     */
    private static Item.Mapping pipeOver(Item.Mapping own, Item.Mapping shared) {
        Item.Mapping rest = shared;
        boolean size = PIPE_SIZE.stream().anyMatch(own::has);
        if (size) {
            for (String key : PIPE_SIZE) {
                rest = rest.without(key);
            }
        }
        if (own.has("grade")) {
            rest = rest.without("yield_strength");
        }
        if (size || own.has("grade") || own.has("yield_strength") || own.has("outside_diameter")) {
            rest = rest.without("burst_rating").without("connection_rating").without("price");
        }
        return own.over(rest);
    }

    private CasingString string(Fields f) {
        double top = f.needAmount("top");
        double shoe = f.needAmount("shoe");
        List<CasingInterval> intervals = new ArrayList<>();
        if (f.has("intervals")) {
            double from = top;
            double last = top;
            for (Fields own : f.rows("intervals")) {
                double above = from;
                Fields interval = interval(own.mapping(), f.mapping());
                intervals.add(log.attempt(own.place(), () -> interval(interval, above, own.needAmount("to")))
                        .orElseThrow(FaultLog.Incomplete::new));
                from = own.needAmount("to");
                last = from;
            }
            if (Math.abs(last - shoe) > 1e-6) {
                log.add(
                        f.place("intervals"),
                        "",
                        "end at "
                                + f.rows("intervals").get(intervals.size() - 1).written("to") + ", the shoe stands at "
                                + f.written("shoe"),
                        "let the last interval end at the shoe");
                throw new FaultLog.Incomplete();
            }
        } else {
            if (shoe <= top) {
                log.add(
                        f.place("shoe"),
                        f.written("shoe"),
                        f.written("shoe") + " is not below the top of the string at " + f.written("top"),
                        "check both");
                throw new FaultLog.Incomplete();
            }
            intervals.add(interval(interval(new Item.Mapping(f.place(), List.of()), f.mapping()), top, shoe));
        }
        return new CasingString(
                f.needText("name"),
                intervals,
                f.amount("top_of_cement"),
                f.amount("fluid_behind"),
                f.amount("mix_water"),
                f.amount("allowed_burst_share"),
                f.amount("test_pressure"),
                f.amount("liner_top_rating"),
                f.nested("back_up").flatMap(b -> log.attempt(b.place(), () -> backUp(b))));
    }

    private BurstBackUp backUp(Fields f) {
        if (f.has("density")) {
            return new BurstBackUp.OfDensity(f.needAmount("density"));
        }
        return new BurstBackUp.OfPressures(f.rows("points").stream()
                .map(p -> new BurstBackUp.Point(depthBelowDatum(p), p.needAmount("pressure")))
                .toList());
    }

    private double depthBelowDatum(Fields f) {
        OptionalDouble below = f.amount("tvd");
        return below.isPresent()
                ? below.getAsDouble()
                : f.needAmount("tvdss")
                        + datum.orElseThrow(FaultLog.Incomplete::new).elevation();
    }

    /** Keys of a stretch over those of its string. */
    private Fields interval(Item.Mapping own, Item.Mapping string) {
        Item.Mapping pipe = new Item.Mapping(
                string.place(),
                string.entries().stream()
                        .filter(e -> CaseKeys.CASING_INTERVAL.key(e.key()).isPresent()
                                || CaseKeys.CASING_STRING.key(e.key()).isEmpty())
                        .toList());
        return new Fields(pipeOver(own, pipe), CaseKeys.CASING_INTERVAL, validator);
    }

    private CasingInterval interval(Fields f, double from, double to) {
        if (to <= from) {
            log.add(
                    f.place("to"),
                    f.written("to"),
                    f.written("to") + " is not below the top of the stretch",
                    "sort them");
            throw new FaultLog.Incomplete();
        }
        if (!f.has("outside_diameter")) {
            log.add(f.place("outside_diameter"), "", "is missing", "give it to the string or to each interval");
            throw new FaultLog.Incomplete();
        }
        double outside = f.needAmount("outside_diameter");
        double inside = insideDiameter(f, outside);
        return new CasingInterval(
                from,
                to,
                outside,
                inside,
                f.text("grade"),
                f.amount("yield_strength"),
                f.amount("burst_rating"),
                f.amount("connection_rating"),
                f.amount("wear").orElse(0),
                f.amount("weight"));
    }

    private double insideDiameter(Fields f, double outside) {
        List<String> given = PIPE_SIZE.stream().sorted().filter(f::has).toList();
        if (given.isEmpty()) {
            if (!Validator.isMisspelt(f.mapping(), CaseKeys.CASING_INTERVAL, PIPE_SIZE)) {
                log.add(f.place(), "", "has no weight, wall or inside_diameter", "give one of them");
            }
            throw new FaultLog.Incomplete();
        }
        double inside;
        String key;
        if (f.has("inside_diameter")) {
            key = "inside_diameter";
            inside = f.needAmount(key);
        } else if (f.has("wall")) {
            key = "wall";
            inside = outside - 2 * f.needAmount(key);
        } else {
            key = "weight";
            OptionalDouble wall = PipeSizes.wall(outside, f.needAmount(key));
            if (wall.isEmpty()) {
                String weights = PipeSizes.weights(outside);
                log.add(
                        f.place(key),
                        f.written(key),
                        "no " + f.written("outside_diameter") + " casing of " + f.written(key)
                                + " is in the table of sizes",
                        weights.isEmpty() ? "give the wall" : "give the wall, or use " + weights);
                throw new FaultLog.Incomplete();
            }
            inside = outside - 2 * wall.getAsDouble();
        }
        if (inside >= outside || inside < 0.03) {
            log.add(
                    f.place(key),
                    f.written(key),
                    f.written(key) + " leaves no bore in an outside diameter of " + f.written("outside_diameter"),
                    "check both");
            throw new FaultLog.Incomplete();
        }
        return inside;
    }

    private SectionPlan plan(Fields f) {
        List<HoleInterval> hole = hole(f);
        return new SectionPlan(
                f.needText("name"),
                f.needChoice("drilling", Drilling.class),
                hole,
                f.needAmount("bit"),
                f.nested("mud").flatMap(m -> log.attempt(m.place(), () -> mud(m))),
                string(f.written("string"), f),
                f.amount("bit_off_bottom").orElse(0),
                influxDepth(f, hole),
                f.nested("gas").flatMap(g -> log.attempt(g.place(), () -> gas(g))),
                slowCirculation(f),
                f.amount("pump_output"),
                f.amount("active_volume"),
                f.amount("detectable_gain"),
                f.amount("circulating_overbalance"),
                f.amount("choke_handling_allowance"),
                chosen(f),
                f.nested("operations")
                        .flatMap(o -> log.attempt(
                                o.place(), () -> new OperationsBuilder(o, f.amount("pump_output"), log).build()))
                        .orElse(OperationsPlan.NONE));
    }

    private OptionalDouble influxDepth(Fields f, List<HoleInterval> hole) {
        OptionalDouble depth = f.amount("influx_depth");
        double top = hole.get(0).topDepth() + SectionPlan.LEAST_ABOVE_INFLUX;
        double bottom = hole.get(hole.size() - 1).bottomDepth();
        if (depth.isPresent() && (depth.getAsDouble() < top || depth.getAsDouble() > bottom)) {
            log.add(
                    f.place("influx_depth"),
                    f.written("influx_depth"),
                    f.written("influx_depth") + " is not in the open hole from " + f.written("from") + " to "
                            + f.written("to"),
                    "give the measured depth of the influx there");
            return OptionalDouble.empty();
        }
        return depth;
    }

    private Optional<Criteria> chosen(Fields f) {
        Optional<String> name = f.text("criteria");
        name.filter(n -> !criteria.containsKey(n) && !givenCriteria().contains(n))
                .ifPresent(n -> log.add(
                        f.place("criteria"),
                        n,
                        "no criteria are named \"" + n + "\"",
                        criteria.isEmpty()
                                ? "list them under criteria"
                                : Words.hint(n, new TreeMap<>(criteria).keySet())));
        return name.map(criteria::get);
    }

    /** Names of criteria as written, those with a fault of their own too. */
    private Set<String> givenCriteria() {
        Set<String> names = new HashSet<>();
        root.rows("criteria").forEach(c -> c.text("name").ifPresent(names::add));
        return names;
    }

    private List<HoleInterval> hole(Fields f) {
        double from = f.needAmount("from");
        double to = f.needAmount("to");
        double bit = f.needAmount("bit");
        double diameter = f.amount("hole_diameter").orElse(bit);
        if (to <= from) {
            log.add(
                    f.place("to"),
                    f.written("to"),
                    f.written("to") + " is not below " + f.written("from"),
                    "swap them");
            throw new FaultLog.Incomplete();
        }
        if (diameter < bit) {
            log.add(
                    f.place("hole_diameter"),
                    f.written("hole_diameter"),
                    f.written("hole_diameter") + " is less than the bit of " + f.written("bit"),
                    "give the hole as drilled");
            throw new FaultLog.Incomplete();
        }
        List<HoleInterval> hole = new ArrayList<>();
        double at = from;
        for (Fields w : f.rows("washouts")) {
            double top = w.needAmount("from");
            double bottom = w.needAmount("to");
            double wide = w.needAmount("diameter");
            if (bottom <= top || top < at || bottom > to) {
                log.add(
                        w.place(),
                        "",
                        "runs from " + w.written("from") + " to " + w.written("to")
                                + ", outside the section or out of order",
                        "keep it within " + f.written("from") + " to " + f.written("to") + ", sorted downwards");
                throw new FaultLog.Incomplete();
            }
            if (wide < diameter) {
                log.add(
                        w.place("diameter"),
                        w.written("diameter"),
                        w.written("diameter") + " is less than the hole around it",
                        "a washout is wider");
                throw new FaultLog.Incomplete();
            }
            if (top > at) {
                hole.add(new HoleInterval(at, top, diameter));
            }
            hole.add(new HoleInterval(top, bottom, wide));
            at = bottom;
        }
        if (at < to) {
            hole.add(new HoleInterval(at, to, diameter));
        }
        return hole;
    }

    private static Mud mud(Fields f) {
        Optional<RheometerReadings> rheometer = f.nested("rheometer").map(r -> {
            Map<Integer, Double> readings = new HashMap<>();
            for (Key key : CaseKeys.RHEOMETER.keys()) {
                r.amount(key.name()).ifPresent(v -> readings.put(Integer.valueOf(key.name()), v));
            }
            return new RheometerReadings(readings);
        });
        Optional<MudExpansion> expansion = f.nested("expansion")
                .map(e -> new MudExpansion(
                        e.needAmount("compressibility"),
                        e.needAmount("thermal_expansion"),
                        e.needAmount("reference_pressure"),
                        e.needAmount("reference_temperature")));
        return new Mud(
                f.needText("name"), f.needAmount("density"), f.needChoice("base", MudBase.class), rheometer, expansion);
    }

    private Optional<DrillString> string(String word, Fields f) {
        if (!f.has("string")) {
            return Optional.empty();
        }
        if (word.equals(CaseKeys.NO_STRING)) {
            return Optional.of(DrillString.NONE);
        }
        List<StringComponent> components = new ArrayList<>();
        for (Fields c : f.rows("string")) {
            OptionalDouble outside = c.amount("outside_diameter");
            OptionalDouble inside = c.amount("inside_diameter");
            if (outside.isPresent() && inside.isPresent() && inside.getAsDouble() >= outside.getAsDouble()) {
                log.add(
                        c.place("inside_diameter"),
                        c.written("inside_diameter"),
                        c.written("inside_diameter") + " is not less than the outside diameter of "
                                + c.written("outside_diameter"),
                        "check both");
                continue;
            }
            log.attempt(
                            c.place(),
                            () -> new StringComponent(
                                    c.needText("name"),
                                    c.needAmount("length"),
                                    c.needAmount("outside_diameter"),
                                    c.needAmount("inside_diameter")))
                    .ifPresent(components::add);
        }
        return Optional.of(new DrillString(components));
    }

    private static GasComposition gas(Fields f) {
        return new GasComposition(
                f.needAmount("gravity"),
                f.amount("h2s").orElse(0),
                f.amount("co2").orElse(0),
                f.amount("n2").orElse(0));
    }

    private List<SlowCirculation> slowCirculation(Fields f) {
        List<SlowCirculation> found = new ArrayList<>();
        for (Fields s : f.rows("slow_circulation")) {
            if (!s.has("rate") || s.written("rate").isBlank()) {
                continue;
            }
            OptionalDouble rate = OperationsBuilder.rate("rate", s, f.amount("pump_output"), log);
            if (rate.isEmpty()) {
                continue;
            }
            log.attempt(
                            s.place(),
                            () -> new SlowCirculation(
                                    rate.getAsDouble(), s.amount("pump_pressure"), s.amount("choke_line_friction")))
                    .ifPresent(found::add);
        }
        return found;
    }
}
