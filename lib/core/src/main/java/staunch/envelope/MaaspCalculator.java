package staunch.envelope;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import staunch.earth.PressureProfile;
import staunch.earth.Range;
import staunch.earth.TemperatureProfile;
import staunch.fluid.Mud;
import staunch.influx.MudColumn;
import staunch.limit.CasingBurst;
import staunch.limit.FlowLine;
import staunch.limit.PressureRating;
import staunch.limit.StackRating;
import staunch.units.Physics;
import staunch.well.CasingProfile;
import staunch.well.CasingString;
import staunch.well.Datum;

/**
 * Static surface-pressure limits with mud from the choke to the point concerned: p_s = p_limit − column of mud (below the
 * stack) − column of the choke line's fluid (above a subsea stack), as a gauge pressure.
 *
 * <p>Casing: allowed inside pressure = back-up outside + allowed share × burst rating, at both ends of every exposed
 * stretch and at every point of the pore-pressure profile between. Back-up: the lower of pore pressure and the column of
 * the cement's mix water from ground or seabed; none where either is not known.
 */
final class MaaspCalculator {
    private static final double SEAWATER_DENSITY = 1025;
    private static final int MUD_STEPS = 24;
    private static final double MUD_SPREAD = 0.15;

    private final SectionInput input;
    private final Optional<StrengthNodes> strength;
    private final Optional<MudColumn> mudColumn;

    MaaspCalculator(SectionInput input, Optional<StrengthNodes> strength, Optional<MudColumn> mudColumn) {
        this.input = input;
        this.strength = strength;
        this.mudColumn = mudColumn;
    }

    Optional<Maasp> atSectionMud() {
        return mudColumn.map(this::at);
    }

    /** Components over mud densities 15 % to either side of the section's. */
    List<Maasp> againstMud() {
        Optional<Mud> mud = input.plan().mud();
        List<Maasp> list = new ArrayList<>();
        if (mud.isEmpty() || mudColumn.isEmpty()) {
            return list;
        }
        for (int i = 0; i <= MUD_STEPS; i++) {
            double share = 1 - MUD_SPREAD + 2 * MUD_SPREAD * i / MUD_STEPS;
            double density = mud.get().density() * share;
            if (density >= 700 && density <= 2700) {
                Mud other = mud.get().withDensity(density);
                Optional<TemperatureProfile> temperature = input.earth().temperature();
                list.add(at(
                        mudColumn.get().isConstant()
                                ? MudColumn.constant(other)
                                : MudColumn.expanding(other, temperature.orElseThrow())));
            }
        }
        return list;
    }

    private Maasp at(MudColumn mud) {
        List<SurfaceLimit> components = new ArrayList<>();
        components.addAll(formations(mud));
        components.addAll(casings(mud));
        components.addAll(linerTops(mud));
        components.addAll(equipment(mud));
        Optional<SurfaceLimit> formation = lowest(components.stream()
                .filter(c -> c.type() == SurfaceLimit.Type.FORMATION)
                .toList());
        boolean atMost = components.stream().anyMatch(c -> c.pressure().isEmpty());
        return new Maasp(mud.density(), components, formation, lowest(components), atMost);
    }

    private static Optional<SurfaceLimit> lowest(List<SurfaceLimit> components) {
        return components.stream()
                .filter(c -> c.pressure().isPresent())
                .min(Comparator.comparingDouble(c -> c.pressure().getAsDouble()));
    }

    /** Formation limit with the hole drilled to a depth, at the section's mud. */
    OptionalDouble formation(double drilledTo) {
        if (strength.isEmpty() || mudColumn.isEmpty()) {
            return OptionalDouble.empty();
        }
        StrengthNodes nodes = strength.get();
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < nodes.count() && nodes.measuredDepth(i) <= drilledTo; i++) {
            if (nodes.known(i)) {
                lowest = Math.min(lowest, surface(mudColumn.get(), nodes.verticalDepth(i), nodes.limit(i)));
            }
        }
        double z = input.path().verticalDepth(drilledTo);
        if (nodes.knownAt(drilledTo, z)) {
            lowest = Math.min(lowest, surface(mudColumn.get(), z, nodes.limitAt(drilledTo, z)));
        }
        return Double.isInfinite(lowest) ? OptionalDouble.empty() : OptionalDouble.of(lowest);
    }

    /** The lowest limit of each named place: shoe, tests, weak zones, open hole. */
    private List<SurfaceLimit> formations(MudColumn mud) {
        if (strength.isEmpty()) {
            return List.of(notAssessed(
                    "formation",
                    SurfaceLimit.Type.FORMATION,
                    input.plan().topDepth(),
                    "no strength basis (missing: earth: strength or a strength test at the shoe)"));
        }
        StrengthNodes nodes = strength.get();
        Map<String, SurfaceLimit> lowest = new LinkedHashMap<>();
        for (int i = 0; i < nodes.count(); i++) {
            if (!nodes.known(i)) {
                continue;
            }
            double z = nodes.verticalDepth(i);
            WeakPoint point = nodes.weakPoint(nodes.measuredDepth(i), z, nodes.limit(i));
            SurfaceLimit limit = new SurfaceLimit(
                    point.name(),
                    SurfaceLimit.Type.FORMATION,
                    OptionalDouble.of(surface(mud, z, nodes.limit(i))),
                    point.measuredDepth(),
                    z,
                    Optional.empty());
            lowest.merge(
                    point.name(),
                    limit,
                    (a, b) -> a.pressure().getAsDouble() <= b.pressure().getAsDouble() ? a : b);
        }
        List<SurfaceLimit> list = new ArrayList<>(lowest.values());
        if (!nodes.unknown().isEmpty()) {
            list.add(notAssessed(
                    nodes.unknown(),
                    SurfaceLimit.Type.FORMATION,
                    input.plan().bottomDepth(),
                    "its strength is not known (missing: earth: strength)"));
        }
        return list;
    }

    private double surface(MudColumn mud, double z, double pressure) {
        double stack = input.datum().stackDepth();
        double atStack = mud.pressure(z, pressure, stack);
        return chokeLine(mud).pressure(stack, atStack, 0) - Physics.ATMOSPHERE;
    }

    private MudColumn chokeLine(MudColumn mud) {
        OptionalDouble other =
                input.equipment().chokeLine().map(FlowLine::fluidDensity).orElse(OptionalDouble.empty());
        return other.isPresent() && input.datum().stackAtSeabed() ? MudColumn.constant(other.getAsDouble()) : mud;
    }

    private List<SurfaceLimit> casings(MudColumn mud) {
        if (input.casing().isEmpty()) {
            return List.of();
        }
        List<SurfaceLimit> list = new ArrayList<>();
        for (CasingProfile.Stretch stretch :
                CasingProfile.of(input.casing()).stretchesBelow(input.datum().stackDepth())) {
            list.add(casing(mud, stretch));
        }
        return list;
    }

    private SurfaceLimit casing(MudColumn mud, CasingProfile.Stretch stretch) {
        CasingString string = stretch.string();
        String name =
                string.name() + stretch.interval().grade().map(g -> " " + g).orElse("");
        CasingBurst burst = CasingBurst.of(stretch.interval());
        if (burst instanceof CasingBurst.NotAssessed not) {
            return notAssessed(
                    name,
                    SurfaceLimit.Type.CASING,
                    stretch.from(),
                    "its burst rating is not known (missing: " + not.missing() + ")");
        }
        if (string.allowedBurstShare().isEmpty()) {
            return notAssessed(
                    name,
                    SurfaceLimit.Type.CASING,
                    stretch.from(),
                    "the allowed share of burst is not set (missing: casing string: allowed burst share)");
        }
        double allowed = ((CasingBurst.Rated) burst).pressure()
                * string.allowedBurstShare().getAsDouble();
        double least = Double.POSITIVE_INFINITY;
        double where = stretch.from();
        for (double depth : checkedDepths(stretch)) {
            double z = input.path().verticalDepth(depth);
            double surface = surface(mud, z, backUp(string, z) + allowed);
            if (surface < least) {
                least = surface;
                where = depth;
            }
        }
        return new SurfaceLimit(
                name,
                SurfaceLimit.Type.CASING,
                OptionalDouble.of(least),
                where,
                input.path().verticalDepth(where),
                Optional.empty());
    }

    private TreeSet<Double> checkedDepths(CasingProfile.Stretch stretch) {
        TreeSet<Double> depths = new TreeSet<>();
        depths.add(stretch.from());
        depths.add(stretch.to());
        pore().ifPresent(p -> {
            for (double z : p.depths()) {
                for (double depth : input.path().measuredDepthsAt(z, stretch.from(), stretch.to())) {
                    depths.add(depth);
                }
            }
        });
        return depths;
    }

    private Optional<PressureProfile> pore() {
        return input.earth().porePressure().map(Range::lowOrLikely);
    }

    /** Pressure outside that surely helps: the low pore pressure or the mix-water column, whichever is lower. */
    private double backUp(CasingString string, double z) {
        Optional<PressureProfile> pore = pore().filter(p -> p.covers(z));
        double top = input.datum().groundOrSeabedDepth();
        if (pore.isEmpty() || string.mixWaterDensity().isEmpty() || z < top) {
            return Physics.ATMOSPHERE;
        }
        double water = Physics.ATMOSPHERE + string.mixWaterDensity().getAsDouble() * Physics.GRAVITY * (z - top);
        return Math.min(pore.get().lowestAt(z), water);
    }

    private List<SurfaceLimit> linerTops(MudColumn mud) {
        List<SurfaceLimit> list = new ArrayList<>();
        for (CasingString string : input.casing()) {
            boolean liner = string.topDepth() > input.datum().groundOrSeabedDepth() + 50;
            if (!liner) {
                continue;
            }
            String name = string.name() + " top";
            double z = input.path().verticalDepth(string.topDepth());
            list.add(
                    string.linerTopRating().isEmpty()
                            ? notAssessed(
                                    name,
                                    SurfaceLimit.Type.LINER_TOP,
                                    string.topDepth(),
                                    "the rating of packer and lap is not known (missing: liner-top rating)")
                            : new SurfaceLimit(
                                    name,
                                    SurfaceLimit.Type.LINER_TOP,
                                    OptionalDouble.of(surface(
                                            mud,
                                            z,
                                            backUp(string, z)
                                                    + string.linerTopRating().getAsDouble())),
                                    string.topDepth(),
                                    z,
                                    Optional.empty()));
        }
        return list;
    }

    private List<SurfaceLimit> equipment(MudColumn mud) {
        List<SurfaceLimit> list = new ArrayList<>();
        list.add(rated(
                mud, "wellhead", SurfaceLimit.Type.WELLHEAD, input.equipment().wellhead(), true));
        list.add(stack(mud));
        Optional<FlowLine> line = input.equipment().chokeLine();
        if (line.isPresent() || input.datum().stackAtSeabed()) {
            list.add(rated(
                    mud,
                    "choke line",
                    SurfaceLimit.Type.CHOKE_LINE,
                    line.flatMap(FlowLine::rating),
                    input.datum().stackAtSeabed()));
        }
        list.add(rated(
                mud,
                "choke manifold",
                SurfaceLimit.Type.CHOKE_MANIFOLD,
                input.equipment().chokeManifold(),
                false));
        return list;
    }

    private SurfaceLimit stack(MudColumn mud) {
        if (StackRating.of(input.equipment().stack()) instanceof StackRating.NotAssessed not) {
            return notAssessed(
                    "BOP stack",
                    SurfaceLimit.Type.BOP,
                    input.datum().stackDepth(),
                    "its rating is not known (missing: " + not.missing() + ")");
        }
        StackRating.Rated rated =
                (StackRating.Rated) StackRating.of(input.equipment().stack());
        return rated(mud, "BOP stack", SurfaceLimit.Type.BOP, Optional.of(rated.lowest()), true);
    }

    /** Limit by a rating at the stack or at surface; the column in the choke line loads what sits at the stack. */
    private SurfaceLimit rated(
            MudColumn mud, String name, SurfaceLimit.Type type, Optional<PressureRating> rating, boolean atStack) {
        double depth = atStack ? input.datum().stackDepth() : 0;
        if (rating.isEmpty()) {
            return notAssessed(name, type, depth, "its rating is not known (missing: equipment: " + name + " rating)");
        }
        double allowed = Physics.ATMOSPHERE + rating.get().pressure();
        if (depth > 0 && input.options().seawaterCredit() && input.datum().place() instanceof Datum.AtSea sea) {
            allowed += SEAWATER_DENSITY * Physics.GRAVITY * sea.waterDepth();
        }
        double surface = depth == 0
                ? allowed - Physics.ATMOSPHERE
                : chokeLine(mud).pressure(depth, allowed, 0) - Physics.ATMOSPHERE;
        return new SurfaceLimit(
                rating.get().equipment(), type, OptionalDouble.of(surface), depth, depth, Optional.empty());
    }

    private SurfaceLimit notAssessed(String name, SurfaceLimit.Type type, double measuredDepth, String reason) {
        double z = input.path().verticalDepth(measuredDepth);
        return new SurfaceLimit(name, type, OptionalDouble.empty(), measuredDepth, z, Optional.of(reason));
    }
}
