package staunch.earth;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Si;

/** Which depth of an offset well corresponds to which depth of the planned well. */
public sealed interface DepthMatching {
    /**
     * How far a depth of an offset well, once matched, lies from a depth of the planned well; empty where the two do not
     * correspond.
     *
     * @param well offset well
     * @param offsetDepth vertical depth below its datum, m
     * @param planned datum of the planned well
     * @param plannedDepth vertical depth below that datum, m
     * @return m of the planned well, positive where the matched depth is deeper
     */
    @Si(value = "m", kind = Kind.LENGTH)
    OptionalDouble difference(
            OffsetWell well,
            @Si(value = "m", kind = Kind.DEPTH) double offsetDepth,
            NormalPressure planned,
            @Si(value = "m", kind = Kind.DEPTH) double plannedDepth);

    /**
     * Depth of the planned well that a depth of an offset well corresponds to; empty where none does.
     *
     * @param well offset well
     * @param offsetDepth vertical depth below its datum, m
     * @param planned datum of the planned well
     * @return vertical depth below that datum, m
     */
    @Si(value = "m", kind = Kind.DEPTH)
    OptionalDouble matched(
            OffsetWell well, @Si(value = "m", kind = Kind.DEPTH) double offsetDepth, NormalPressure planned);

    /** Depths of the planned well across which nothing is carried, downwards. */
    @Si(value = "m", kind = Kind.DEPTH)
    double[] boundaries();

    /** Equal depth below mudline or ground. */
    record BelowMudline() implements DepthMatching {
        @Override
        @Si(value = "m", kind = Kind.LENGTH)
        public OptionalDouble difference(
                OffsetWell well,
                @Si(value = "m", kind = Kind.DEPTH) double offsetDepth,
                NormalPressure planned,
                @Si(value = "m", kind = Kind.DEPTH) double plannedDepth) {
            double below = plannedDepth - planned.datum().groundOrSeabedDepth();
            return OptionalDouble.of(well.belowGround(offsetDepth) - below);
        }

        @Override
        @Si(value = "m", kind = Kind.DEPTH)
        public OptionalDouble matched(
                OffsetWell well, @Si(value = "m", kind = Kind.DEPTH) double offsetDepth, NormalPressure planned) {
            return OptionalDouble.of(
                    well.belowGround(offsetDepth) + planned.datum().groundOrSeabedDepth());
        }

        @Override
        @Si(value = "m", kind = Kind.DEPTH)
        public double[] boundaries() {
            return new double[0];
        }
    }

    /**
     * Equal share of the interval between two tops that both wells have. Depths above the first or below the last common
     * top, and in different intervals, do not correspond.
     *
     * @param planned tops of the planned well, downwards
     * @param offsets tops of each offset well by its name, downwards
     */
    record FormationTops(List<FormationTop> planned, Map<String, List<FormationTop>> offsets) implements DepthMatching {
        public FormationTops {
            planned = List.copyOf(planned);
            checkOrder("the planned well", planned);
            Map<String, List<FormationTop>> copy = new HashMap<>();
            for (Map.Entry<String, List<FormationTop>> entry : offsets.entrySet()) {
                List<FormationTop> tops = List.copyOf(entry.getValue());
                checkOrder("offset well " + entry.getKey(), tops);
                checkCommon(entry.getKey(), common(planned, tops));
                copy.put(entry.getKey(), tops);
            }
            offsets = Map.copyOf(copy);
        }

        private record Pair(FormationTop planned, FormationTop offset) {}

        private static void checkOrder(String whose, List<FormationTop> tops) {
            Set<String> names = new HashSet<>();
            for (int i = 0; i < tops.size(); i++) {
                if (!names.add(tops.get(i).name())) {
                    throw new InputFault(
                            "formation tops of " + whose,
                            "name " + tops.get(i).name() + " twice",
                            "keep one, or tell the repeated sections apart by name");
                }
                if (i > 0 && tops.get(i).verticalDepth() <= tops.get(i - 1).verticalDepth()) {
                    throw new InputFault(
                            "formation tops of " + whose,
                            "have " + tops.get(i).name() + " not below "
                                    + tops.get(i - 1).name(),
                            "sort them downwards");
                }
            }
        }

        private static void checkCommon(String well, List<Pair> common) {
            if (common.size() < 2) {
                throw new InputFault(
                        "formation tops of offset well " + well,
                        "have fewer than two in common with the planned well",
                        "leave the well out or match by depth below mudline");
            }
            for (int i = 1; i < common.size(); i++) {
                Pair above = common.get(i - 1);
                Pair below = common.get(i);
                if (below.offset().verticalDepth() < above.offset().verticalDepth()) {
                    throw new InputFault(
                            "formation tops of offset well " + well,
                            "have " + below.offset().name() + " above "
                                    + above.offset().name() + ", other than the planned well",
                            "check the names");
                }
            }
        }

        private static List<Pair> common(List<FormationTop> planned, List<FormationTop> offset) {
            List<Pair> pairs = new ArrayList<>();
            for (FormationTop top : planned) {
                offset.stream()
                        .filter(o -> o.name().equals(top.name()))
                        .findFirst()
                        .ifPresent(o -> pairs.add(new Pair(top, o)));
            }
            return pairs;
        }

        /**
         * {@inheritDoc}
         *
         * @throws InputFault where no tops of the offset well are given
         */
        @Override
        @Si(value = "m", kind = Kind.LENGTH)
        public OptionalDouble difference(
                OffsetWell well,
                @Si(value = "m", kind = Kind.DEPTH) double offsetDepth,
                NormalPressure plannedWell,
                @Si(value = "m", kind = Kind.DEPTH) double plannedDepth) {
            Objects.requireNonNull(plannedWell, "plannedWell");
            List<Pair> pairs = pairs(well);
            for (int i = 1; i < pairs.size(); i++) {
                Pair above = pairs.get(i - 1);
                Pair below = pairs.get(i);
                boolean both = holds(above.offset(), below.offset(), offsetDepth)
                        && holds(above.planned(), below.planned(), plannedDepth);
                if (both) {
                    return OptionalDouble.of(matched(above, below, offsetDepth) - plannedDepth);
                }
            }
            return OptionalDouble.empty();
        }

        private List<Pair> pairs(OffsetWell well) {
            List<FormationTop> tops = offsets.get(well.name());
            if (tops == null) {
                throw new InputFault("offset well " + well.name(), "has no formation tops", "give them");
            }
            return common(planned, tops);
        }

        private static boolean holds(FormationTop top, FormationTop bottom, double depth) {
            return depth >= top.verticalDepth() && depth < bottom.verticalDepth();
        }

        private static double matched(Pair above, Pair below, double offsetDepth) {
            double top = above.offset().verticalDepth();
            double share = (offsetDepth - top) / (below.offset().verticalDepth() - top);
            double plannedTop = above.planned().verticalDepth();
            return plannedTop + share * (below.planned().verticalDepth() - plannedTop);
        }

        /**
         * {@inheritDoc}
         *
         * @throws InputFault where no tops of the offset well are given
         */
        @Override
        @Si(value = "m", kind = Kind.DEPTH)
        public OptionalDouble matched(
                OffsetWell well, @Si(value = "m", kind = Kind.DEPTH) double offsetDepth, NormalPressure plannedWell) {
            Objects.requireNonNull(plannedWell, "plannedWell");
            List<Pair> pairs = pairs(well);
            for (int i = 1; i < pairs.size(); i++) {
                if (holds(pairs.get(i - 1).offset(), pairs.get(i).offset(), offsetDepth)) {
                    return OptionalDouble.of(matched(pairs.get(i - 1), pairs.get(i), offsetDepth));
                }
            }
            return OptionalDouble.empty();
        }

        @Override
        @Si(value = "m", kind = Kind.DEPTH)
        public double[] boundaries() {
            return planned.stream().mapToDouble(FormationTop::verticalDepth).toArray();
        }
    }
}
