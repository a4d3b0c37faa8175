package staunch.ingest;

import java.util.Objects;
import java.util.Optional;
import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * How the log of an offset well is written, and what is made of its rows.
 *
 * @param depth index curve, or another curve of depth
 * @param density bulk density
 * @param slowness sonic slowness
 * @param resistivity deep resistivity
 * @param shale which rows are shale; without it all are
 * @param step height of the blocks that rows are averaged over, m, 0.5 to 100
 * @param spikesCount whether readings that stand apart count
 * @param badLeftOut whether readings out of range are left out, up to one in ten; otherwise they refuse the file
 */
record LogColumns(
        DepthColumns depth,
        Optional<TableColumn> density,
        Optional<TableColumn> slowness,
        Optional<TableColumn> resistivity,
        Optional<Shale> shale,
        @Si(value = "m", kind = Kind.LENGTH) double step,
        boolean spikesCount,
        boolean badLeftOut) {
    LogColumns {
        Objects.requireNonNull(depth, "depth");
        Check.within("step of the log", step, 0.5, 100, Measure.LENGTH);
    }

    /**
     * A curve that tells shale.
     *
     * @param curve with the unit it is stated in
     * @param cutOff in that unit
     * @param above whether shale reads at or above it; otherwise at or below
     */
    record Shale(TableColumn curve, @Si("1") double cutOff, boolean above) {
        boolean holds(double reading) {
            return above ? reading >= cutOff : reading <= cutOff;
        }
    }
}
