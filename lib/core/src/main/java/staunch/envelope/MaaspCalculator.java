package staunch.envelope;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.earth.TemperatureProfile;
import staunch.fluid.Mud;
import staunch.influx.MudColumn;
import staunch.limit.FlowLine;
import staunch.units.Physics;

/**
 * Static surface-pressure limits with mud from the choke to the point concerned: p_s = p_limit − column of mud (below the
 * stack) − column of the choke line's fluid (above a subsea stack), as a gauge pressure.
 */
final class MaaspCalculator {
    private static final int MUD_STEPS = 24;
    private static final double MUD_SPREAD = 0.15;

    private final SectionInput input;
    private final Optional<LimitNodes> strength;
    private final Optional<MudColumn> mudColumn;

    MaaspCalculator(SectionInput input, Optional<LimitNodes> strength, Optional<MudColumn> mudColumn) {
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
        for (EquipmentLimits.Component component : new EquipmentLimits(input).components()) {
            components.add(equipment(mud, component));
        }
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
        LimitNodes nodes = strength.get();
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
        LimitNodes nodes = strength.get();
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
        double stack = Math.min(input.datum().stackDepth(), z);
        double atStack = mud.pressure(z, pressure, stack);
        return chokeLine(mud).pressure(stack, atStack, 0) - Physics.ATMOSPHERE;
    }

    private MudColumn chokeLine(MudColumn mud) {
        OptionalDouble other =
                input.equipment().chokeLine().map(FlowLine::fluidDensity).orElse(OptionalDouble.empty());
        return other.isPresent() && input.datum().stackAtSeabed() ? MudColumn.constant(other.getAsDouble()) : mud;
    }

    private SurfaceLimit equipment(MudColumn mud, EquipmentLimits.Component component) {
        if (component.notAssessed().isPresent()) {
            return notAssessed(
                    component.name(),
                    component.type(),
                    component.measuredDepth(),
                    component.notAssessed().get());
        }
        EquipmentLimits.Point where = null;
        double least = Double.POSITIVE_INFINITY;
        for (EquipmentLimits.Point point : component.points()) {
            double surface = surface(mud, point.verticalDepth(), point.pressure());
            if (surface < least) {
                least = surface;
                where = point;
            }
        }
        return new SurfaceLimit(
                component.name(),
                component.type(),
                OptionalDouble.of(least),
                where.measuredDepth(),
                where.verticalDepth(),
                Optional.empty());
    }

    private SurfaceLimit notAssessed(String name, SurfaceLimit.Type type, double measuredDepth, String reason) {
        double z = input.path().verticalDepth(measuredDepth);
        return new SurfaceLimit(name, type, OptionalDouble.empty(), measuredDepth, z, Optional.of(reason));
    }
}
