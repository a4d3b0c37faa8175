package staunch.earth;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** Formation pressures of offset wells, put in order once to be asked at many depths. */
final class MeasuredPressures {
    /** What rounding may move a matched depth by, m: a reading that stands at the edge of the window weighs nothing. */
    private static final double ROUNDING = 1e-3;

    private final OffsetTransfer transfer;
    private final NormalPressure planned;
    private final List<PressureTransfer.Contribution> all = new ArrayList<>();
    private final List<OffsetWell> wells = new ArrayList<>();

    /** Matched depths downwards of the readings that have one, and the place of each in {@link #all}. */
    private final double[] matched;

    private final int[] places;

    MeasuredPressures(OffsetTransfer transfer, NormalPressure planned, List<OffsetWell> offsets) {
        this.transfer = transfer;
        this.planned = planned;
        for (OffsetWell well : OffsetTransfer.sorted(offsets)) {
            well.points().stream()
                    .filter(p -> p.quality() != Quality.REJECTED)
                    .sorted(Comparator.comparingDouble(PressurePoint::verticalDepth)
                            .thenComparing(PressurePoint::name)
                            .thenComparingDouble(PressurePoint::pressure))
                    .forEach(p -> {
                        double excess = well.excessOf(p.verticalDepth(), p.pressure());
                        double below = well.belowGround(p.verticalDepth());
                        all.add(new PressureTransfer.Contribution(well.name(), p, below, excess, 0));
                        wells.add(well);
                    });
        }
        OptionalDouble[] depths = new OptionalDouble[all.size()];
        for (int i = 0; i < depths.length; i++) {
            depths[i] =
                    transfer.matching().matched(wells.get(i), all.get(i).point().verticalDepth(), planned);
        }
        this.places = IntStream.range(0, depths.length)
                .filter(i -> depths[i].isPresent())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> depths[i].getAsDouble()))
                .mapToInt(Integer::intValue)
                .toArray();
        this.matched =
                Arrays.stream(places).mapToDouble(i -> depths[i].getAsDouble()).toArray();
    }

    /** Places of the readings that may weigh at a depth, in order. */
    private int[] near(double z) {
        int from = first(z - transfer.window() - ROUNDING);
        int to = first(z + transfer.window() + ROUNDING);
        int[] near = Arrays.copyOfRange(places, from, to);
        Arrays.sort(near);
        return near;
    }

    /** Number of readings above a depth. */
    private int first(double z) {
        int low = 0;
        int high = matched.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (matched[middle] < z) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Pressure at a depth; the conflicts between the readings near it where asked for. */
    PressureTransfer at(double z, boolean withConflicts) {
        List<PressureTransfer.Contribution> near = new ArrayList<>();
        double total = 0;
        for (int i : near(z)) {
            double weight = transfer.weight(wells.get(i), all.get(i).point().verticalDepth(), planned, z);
            if (weight > 0) {
                near.add(OffsetTransfer.weighted(all.get(i), weight));
                total += weight;
            }
        }
        return near.isEmpty()
                ? new PressureTransfer.NoEvidence(z)
                : transfer.pressureAt(z, planned.at(z), near, total, withConflicts);
    }

    /** 1 − |Δh| / w of the nearest reading; 0 where none is within the window. */
    double nearness(double z) {
        double share = 0;
        for (int i : near(z)) {
            share = Math.max(
                    share, transfer.nearness(wells.get(i), all.get(i).point().verticalDepth(), planned, z));
        }
        return share;
    }
}
