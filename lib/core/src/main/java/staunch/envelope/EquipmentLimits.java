package staunch.envelope;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import staunch.earth.PressureProfile;
import staunch.earth.Range;
import staunch.limit.CasingBurst;
import staunch.limit.FlowLine;
import staunch.limit.PressureRating;
import staunch.limit.StackRating;
import staunch.units.Physics;
import staunch.units.RangeFault;
import staunch.well.BurstBackUp;
import staunch.well.CasingProfile;
import staunch.well.CasingString;
import staunch.well.Datum;

/**
 * The greatest pressure that casing and equipment may see from inside, by depth.
 *
 * <p>Casing: back-up outside + allowed share × burst rating, linear between the ends of every exposed stretch and the
 * points of the pore-pressure profile. Back-up: what the case specifies for the string, or else the lower of low pore
 * pressure and the column of the cement's mix water from ground or seabed; none where either is not known. Equipment: its
 * rating, at surface or at the stack; the sea outside counts only where chosen.
 */
final class EquipmentLimits {
    /** Usual density of the open sea, kg/m³, where the case gives none. */
    private static final double SEAWATER_DENSITY = 1025;

    /** A string that begins deeper than this below ground or seabed is a liner. */
    private static final double LINER_TOP = 50;

    private final SectionInput input;

    EquipmentLimits(SectionInput input) {
        this.input = input;
    }

    /**
     * One component.
     *
     * @param name in the words of the case
     * @param type what may break
     * @param points downwards; empty where not assessed
     * @param measuredDepth its uppermost depth
     * @param notAssessed reason and missing field
     */
    record Component(
            String name,
            SurfaceLimit.Type type,
            List<Point> points,
            double measuredDepth,
            Optional<String> notAssessed) {}

    /** Greatest inside pressure, absolute, at a depth. */
    record Point(double measuredDepth, double verticalDepth, double pressure) {}

    /** Density of the sea: the case's, or that usual of the open sea. */
    static double seawaterDensity(Datum datum) {
        return datum.place() instanceof Datum.AtSea sea
                ? sea.seaWaterDensity().orElse(SEAWATER_DENSITY)
                : SEAWATER_DENSITY;
    }

    /** Every component, the stack as one. */
    List<Component> components() {
        return components(stack());
    }

    /** Every component, the stack by its elements. */
    List<Component> componentsByElement() {
        List<Component> elements = StackRating.exposed(input.equipment().stack()).stream()
                .filter(e -> e.rating().isPresent() || StackRating.mustBeRated(e))
                .map(e -> e.rating().isPresent()
                        ? rated(e.name(), SurfaceLimit.Type.BOP, e.rating(), true)
                        : unknown(
                                e.name(),
                                SurfaceLimit.Type.BOP,
                                input.datum().stackDepth(),
                                "its rating is not known (missing: equipment: " + e.name() + " rating)"))
                .toList();
        return components(elements.isEmpty() ? stack() : elements);
    }

    private List<Component> components(List<Component> stack) {
        List<Component> list = new ArrayList<>();
        List<CasingProfile.Stretch> stretches =
                CasingProfile.of(input.casing()).stretchesBelow(input.datum().stackDepth());
        for (CasingProfile.Stretch stretch : stretches) {
            list.add(casing(stretch));
        }
        for (CasingProfile.Stretch stretch : stretches) {
            CasingString string = stretch.string();
            boolean liner = string.topDepth() > input.datum().groundOrSeabedDepth() + LINER_TOP;
            // A liner's top behind a string run later does not see the annulus.
            if (liner && stretch.from() == string.topDepth()) {
                list.add(linerTop(string));
            }
        }
        boolean subsea = input.datum().stackAtSeabed();
        list.add(rated("wellhead", SurfaceLimit.Type.WELLHEAD, input.equipment().wellhead(), true));
        list.addAll(stack);
        Optional<FlowLine> line = input.equipment().chokeLine();
        if (line.isPresent() || subsea) {
            list.add(rated("choke line", SurfaceLimit.Type.CHOKE_LINE, line.flatMap(FlowLine::rating), subsea));
        }
        list.add(rated(
                "choke manifold",
                SurfaceLimit.Type.CHOKE_MANIFOLD,
                input.equipment().chokeManifold(),
                false));
        return list;
    }

    private Component casing(CasingProfile.Stretch stretch) {
        CasingString string = stretch.string();
        String name =
                string.name() + stretch.interval().grade().map(g -> " " + g).orElse("");
        CasingBurst burst;
        try {
            burst = CasingBurst.of(stretch.interval());
        } catch (RangeFault outside) {
            return unknown(name, SurfaceLimit.Type.CASING, stretch.from(), outside.getMessage());
        }
        if (burst instanceof CasingBurst.NotAssessed not) {
            return unknown(
                    name,
                    SurfaceLimit.Type.CASING,
                    stretch.from(),
                    "its burst rating is not known (missing: " + not.missing() + ")");
        }
        if (string.allowedBurstShare().isEmpty()) {
            return unknown(
                    name,
                    SurfaceLimit.Type.CASING,
                    stretch.from(),
                    "the allowed share of burst is not set (missing: casing string: allowed burst share)");
        }
        double allowed = ((CasingBurst.Rated) burst).pressure()
                * string.allowedBurstShare().getAsDouble();
        return new Component(
                name, SurfaceLimit.Type.CASING, points(stretch, allowed), stretch.from(), Optional.empty());
    }

    /** Both ends of every piece with one rule of back-up: two points at a depth where the back-up begins or ends. */
    private List<Point> points(CasingProfile.Stretch stretch, double allowed) {
        CasingString string = stretch.string();
        List<Point> points = new ArrayList<>();
        double above = stretch.from();
        for (double depth : depths(stretch).tailSet(above, false)) {
            double middle = input.path().verticalDepth(0.5 * (above + depth));
            boolean backed = backUp(string, middle) > Physics.ATMOSPHERE;
            for (double end : new double[] {above, depth}) {
                double z = input.path().verticalDepth(end);
                Point point = new Point(end, z, (backed ? backUp(string, z) : Physics.ATMOSPHERE) + allowed);
                if (points.isEmpty() || !points.get(points.size() - 1).equals(point)) {
                    points.add(point);
                }
            }
            above = depth;
        }
        return points;
    }

    private TreeSet<Double> depths(CasingProfile.Stretch stretch) {
        TreeSet<Double> vertical = new TreeSet<>(List.of(input.datum().groundOrSeabedDepth()));
        Optional<PressureProfile> profile = stretch.string().backUp().isPresent()
                ? stretch.string().backUp().flatMap(EquipmentLimits::specified)
                : porePressure();
        profile.map(PressureProfile::depths).stream()
                .flatMapToDouble(Arrays::stream)
                .forEach(vertical::add);
        TreeSet<Double> depths = new TreeSet<>(List.of(stretch.from(), stretch.to()));
        for (double z : vertical) {
            for (double depth : input.path().measuredDepthsAt(z, stretch.from(), stretch.to())) {
                depths.add(depth);
            }
        }
        return depths;
    }

    private Optional<PressureProfile> porePressure() {
        return input.earth().porePressure().map(Range::lowOrLikely);
    }

    private static Optional<PressureProfile> specified(BurstBackUp backUp) {
        return backUp instanceof BurstBackUp.OfPressures given
                ? Optional.of(PressureProfile.of(
                        given.points().stream()
                                .mapToDouble(BurstBackUp.Point::verticalDepth)
                                .toArray(),
                        given.points().stream()
                                .mapToDouble(BurstBackUp.Point::pressure)
                                .toArray()))
                : Optional.empty();
    }

    private double backUp(CasingString string, double z) {
        return string.backUp().map(b -> specified(b, z)).orElseGet(() -> assumed(string, z));
    }

    private double specified(BurstBackUp backUp, double z) {
        if (backUp instanceof BurstBackUp.OfDensity column) {
            double height = Math.max(0, z - input.datum().groundOrSeabedDepth());
            return Physics.ATMOSPHERE + column.density() * Physics.GRAVITY * height;
        }
        return specified(backUp)
                .filter(p -> p.covers(z))
                .map(p -> p.lowestAt(z))
                .orElse(Physics.ATMOSPHERE);
    }

    private double assumed(CasingString string, double z) {
        Optional<PressureProfile> pore = porePressure().filter(p -> p.covers(z));
        double top = input.datum().groundOrSeabedDepth();
        if (pore.isEmpty() || string.mixWaterDensity().isEmpty() || z < top) {
            return Physics.ATMOSPHERE;
        }
        double water = Physics.ATMOSPHERE + string.mixWaterDensity().getAsDouble() * Physics.GRAVITY * (z - top);
        return Math.min(pore.get().lowestAt(z), water);
    }

    private Component linerTop(CasingString string) {
        String name = string.name() + " top";
        double depth = string.topDepth();
        if (string.linerTopRating().isEmpty()) {
            return unknown(
                    name,
                    SurfaceLimit.Type.LINER_TOP,
                    depth,
                    "the rating of packer and lap is not known (missing: casing string: liner-top rating)");
        }
        double z = input.path().verticalDepth(depth);
        Point point =
                new Point(depth, z, backUp(string, z) + string.linerTopRating().getAsDouble());
        return new Component(name, SurfaceLimit.Type.LINER_TOP, List.of(point), depth, Optional.empty());
    }

    /** The lowest rating of the stack; where elements are not rated, the lowest known beside what is missing. */
    private List<Component> stack() {
        StackRating rating = StackRating.of(input.equipment().stack());
        if (rating instanceof StackRating.NotAssessed not) {
            List<Component> components = new ArrayList<>();
            if (not.lowestKnown().isPresent()) {
                components.add(rated("BOP stack", SurfaceLimit.Type.BOP, not.lowestKnown(), true));
            }
            components.add(unknown(
                    "BOP stack",
                    SurfaceLimit.Type.BOP,
                    input.datum().stackDepth(),
                    "its rating is not known (missing: " + not.missing() + ")"));
            return components;
        }
        return List.of(
                rated("BOP stack", SurfaceLimit.Type.BOP, Optional.of(((StackRating.Rated) rating).lowest()), true));
    }

    private Component rated(String name, SurfaceLimit.Type type, Optional<PressureRating> rating, boolean atStack) {
        double depth = atStack ? input.datum().stackDepth() : 0;
        if (rating.isEmpty()) {
            return unknown(name, type, depth, "its rating is not known (missing: equipment: " + name + " rating)");
        }
        double allowed = Physics.ATMOSPHERE + rating.get().pressure();
        boolean credit = input.options().seawaterCredit()
                && (type == SurfaceLimit.Type.WELLHEAD || type == SurfaceLimit.Type.BOP);
        if (depth > 0 && credit && input.datum().place() instanceof Datum.AtSea sea) {
            allowed += seawaterDensity(input.datum()) * Physics.GRAVITY * sea.waterDepth();
        }
        Point point = new Point(depth, input.path().verticalDepth(depth), allowed);
        return new Component(rating.get().equipment(), type, List.of(point), depth, Optional.empty());
    }

    private static Component unknown(String name, SurfaceLimit.Type type, double measuredDepth, String reason) {
        return new Component(name, type, List.of(), measuredDepth, Optional.of(reason));
    }
}
