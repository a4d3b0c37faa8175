package staunch.earth;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.RangeFault;
import staunch.units.Si;
import staunch.units.Source;

/**
 * Curves of a well, averaged in blocks of vertical depth.
 *
 * @param blocks downwards, at least one
 * @param source where they come from
 */
public record WellLog(List<Block> blocks, Source source) {
    public WellLog {
        blocks = List.copyOf(blocks);
        Objects.requireNonNull(source, "source");
        if (blocks.isEmpty()) {
            throw new InputFault("log", "has no readings", "leave it out");
        }
        for (int i = 1; i < blocks.size(); i++) {
            if (blocks.get(i).verticalDepth() <= blocks.get(i - 1).verticalDepth()) {
                throw new InputFault(
                        "log",
                        "has vertical depth " + blocks.get(i).verticalDepth() + " m after "
                                + blocks.get(i - 1).verticalDepth() + " m",
                        "sort its blocks downwards");
            }
        }
    }

    /**
     * Mean readings over a stretch of the hole.
     *
     * @param verticalDepth of its middle below the datum of the well, m, 0 to 20 000
     * @param density bulk density, kg/m³, 1200 to 3300; empty where none was read
     * @param slowness sonic slowness of shale, s/m, 1e-4 to 1e-3; empty where none was read
     * @param resistivity resistivity of shale, Ω m, 0.01 to 1e5; empty where none was read
     */
    public record Block(
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            @Si("kg/m3") OptionalDouble density,
            @Si("s/m") OptionalDouble slowness,
            @Si("ohm.m") OptionalDouble resistivity) {
        public Block {
            Check.within("vertical depth of the log", verticalDepth, 0, 20_000, Measure.DEPTH);
            density.ifPresent(d -> Check.within("bulk density of the log", d, 1200, 3300, Measure.DENSITY));
            slowness.ifPresent(y -> check(LogProperty.SLOWNESS, y));
            resistivity.ifPresent(y -> check(LogProperty.RESISTIVITY, y));
        }

        private static void check(LogProperty property, double reading) {
            Check.within(
                    property.title() + " of the log",
                    reading,
                    property.lowest(),
                    property.highest(),
                    property.measure());
        }

        /** The reading of a curve, in SI units of its measure. */
        @Si("1")
        public OptionalDouble reading(LogProperty property) {
            return property == LogProperty.SLOWNESS ? slowness : resistivity;
        }
    }

    /**
     * Its bulk density; empty where it was read in fewer than two blocks.
     *
     * @param uncertainty by which the whole log may be off, kg/m³, 0 to 300
     * @throws RangeFault where the uncertainty is out of range
     */
    public Optional<DensityLog> density(@Si(value = "kg/m3", kind = Kind.DIFFERENCE) double uncertainty) {
        List<Block> read = read(Block::density);
        return read.size() < 2
                ? Optional.empty()
                : Optional.of(DensityLog.of(
                        read.stream().mapToDouble(Block::verticalDepth).toArray(),
                        read.stream()
                                .mapToDouble(b -> b.density().getAsDouble())
                                .toArray(),
                        uncertainty,
                        source));
    }

    /**
     * Reading of a curve in the block that stands at a depth.
     *
     * @param verticalDepth of one of its blocks, m
     * @throws InputFault where there is none
     */
    @Si("1")
    public double reading(LogProperty property, @Si(value = "m", kind = Kind.DEPTH) double verticalDepth) {
        return blocks.stream()
                .filter(b -> b.verticalDepth() == verticalDepth)
                .flatMapToDouble(b -> b.reading(property).stream())
                .findFirst()
                .orElseThrow(() -> new InputFault("log", "has no such block", "ask for the depth of one"));
    }

    /** Blocks in which a curve was read. */
    List<Block> read(Function<Block, OptionalDouble> curve) {
        return blocks.stream().filter(b -> curve.apply(b).isPresent()).toList();
    }
}
