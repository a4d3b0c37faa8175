package staunch.earth;

import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Si;
import staunch.well.Datum;

/**
 * Overburden by integration of bulk density: S = pₐ + ρ_w g d_w + g ∫ ρ dz. Air above the sea or ground weighs nothing, the
 * sea ρ_w d_w, the sediment above the log what {@link Shallow} says; along the log the density is linear between readings,
 * so that the trapezoidal sum is exact. By definition. The spread adds the uncertainties of log and shallow sediment as
 * errors of one sign over the whole interval.
 *
 * @param datum of the well
 * @param seaDensity of the sea, kg/m³, 1000 to 1100; without meaning on land
 * @param shallow sediment between ground or seabed and the first reading
 */
public record Overburden(Datum datum, @Si("kg/m3") double seaDensity, Shallow shallow) {
    /** Step of the points over the shallow sediment, m: where density rises by 1 kg/m³ each metre, straight lines are off by 1 kPa. */
    private static final double STEP = 25;

    public Overburden {
        Objects.requireNonNull(datum, "datum");
        Objects.requireNonNull(shallow, "shallow");
        Check.within("density of the sea", seaDensity, 1000, 1100, Measure.DENSITY);
    }

    /** Weight of the sediment above the first reading of a log, which logs rarely cover. */
    public sealed interface Shallow permits MeanDensity, Compacting {
        /** Stress that it adds down to a depth below ground or seabed. */
        @Si(value = "Pa", kind = Kind.DIFFERENCE)
        double stress(@Si(value = "m", kind = Kind.LENGTH) double depth);

        /** By how much its mean density may be off. */
        @Si(value = "kg/m3", kind = Kind.DIFFERENCE)
        double uncertainty();
    }

    /**
     * One mean density.
     *
     * @param density kg/m³, 1200 to 3300
     * @param uncertainty kg/m³, 0 to 500
     */
    public record MeanDensity(
            @Si("kg/m3") double density,
            @Si(value = "kg/m3", kind = Kind.DIFFERENCE) double uncertainty) implements Shallow {
        public MeanDensity {
            Check.within("mean density of the shallow sediment", density, 1200, 3300, Measure.DENSITY);
            Check.within("uncertainty of the shallow density", uncertainty, 0, 500, Measure.DENSITY_DIFFERENCE);
        }

        @Override
        @Si(value = "Pa", kind = Kind.DIFFERENCE)
        public double stress(@Si(value = "m", kind = Kind.LENGTH) double depth) {
            return density * Physics.GRAVITY * depth;
        }
    }

    /**
     * Sediment that compacts with depth.
     *
     * @param sediment its porosity law
     * @param uncertainty of its mean density, kg/m³, 0 to 500
     */
    public record Compacting(
            RockEstimates.Sediment sediment,
            @Si(value = "kg/m3", kind = Kind.DIFFERENCE) double uncertainty) implements Shallow {
        public Compacting {
            Objects.requireNonNull(sediment, "sediment");
            Check.within("uncertainty of the shallow density", uncertainty, 0, 500, Measure.DENSITY_DIFFERENCE);
        }

        @Override
        @Si(value = "Pa", kind = Kind.DIFFERENCE)
        public double stress(@Si(value = "m", kind = Kind.LENGTH) double depth) {
            return sediment.overburden(depth);
        }
    }

    /** Absolute pressure on the seabed, or the atmosphere's on the ground. */
    @Si(value = "Pa", kind = Kind.ABSOLUTE)
    public double atGroundOrSeabed() {
        return datum.place() instanceof Datum.AtSea sea
                ? Physics.ATMOSPHERE + seaDensity * Physics.GRAVITY * sea.waterDepth()
                : Physics.ATMOSPHERE;
    }

    /**
     * Overburden from ground or seabed to the last reading.
     *
     * @throws InputFault where the log begins above ground or seabed
     */
    public Range along(DensityLog log) {
        double ground = datum.groundOrSeabedDepth();
        double[] depths = log.depths();
        double[] densities = log.densities();
        double gap = depths[0] - ground;
        if (gap < 0) {
            throw new InputFault(
                    "density log",
                    "begins at " + depths[0] + " m, above ground or seabed at " + ground + " m",
                    "check its datum");
        }
        int above = (int) Math.ceil(gap / STEP);
        double[] z = new double[above + depths.length];
        double[] stress = new double[z.length];
        double[] spread = new double[z.length];
        double base = atGroundOrSeabed();
        for (int i = 0; i < above; i++) {
            double below = gap * i / above;
            z[i] = ground + below;
            stress[i] = base + shallow.stress(below);
            spread[i] = shallow.uncertainty() * Physics.GRAVITY * below;
        }
        double sum = base + shallow.stress(gap);
        double off = shallow.uncertainty() * Physics.GRAVITY * gap;
        for (int i = 0; i < depths.length; i++) {
            if (i > 0) {
                double step = depths[i] - depths[i - 1];
                sum += Physics.GRAVITY * step * (densities[i] + densities[i - 1]) / 2;
                off += Physics.GRAVITY * step * log.uncertainty();
            }
            z[above + i] = depths[i];
            stress[above + i] = sum;
            spread[above + i] = off;
        }
        double[] low = stress.clone();
        double[] high = stress.clone();
        for (int i = 0; i < z.length; i++) {
            low[i] -= spread[i];
            high[i] += spread[i];
        }
        return new Range(
                PressureProfile.of(z, stress),
                Optional.of(PressureProfile.of(z, low)),
                Optional.of(PressureProfile.of(z, high)));
    }

    /**
     * Overburden along a log and on from its last reading, where the shallow sediment's law goes on: the stress grows by as
     * much as the law adds between the two depths.
     *
     * @param bottom vertical depth below the datum, m; above the last reading nothing is added
     * @throws InputFault where the log begins above ground or seabed
     */
    public Range along(DensityLog log, @Si(value = "m", kind = Kind.DEPTH) double bottom) {
        Range logged = along(log);
        double last = logged.likely().bottom();
        if (bottom <= last) {
            return logged;
        }
        double ground = datum.groundOrSeabedDepth();
        int steps = (int) Math.ceil((bottom - last) / STEP);
        double[] below = new double[steps];
        double[] more = new double[steps];
        double[] spread = new double[steps];
        for (int i = 0; i < steps; i++) {
            below[i] = last + (bottom - last) * (i + 1) / steps;
            more[i] = shallow.stress(below[i] - ground) - shallow.stress(last - ground);
            spread[i] = shallow.uncertainty() * Physics.GRAVITY * (below[i] - last);
        }
        return new Range(
                carriedOn(logged.likely(), below, more, spread, 0),
                Optional.of(carriedOn(logged.lowOrLikely(), below, more, spread, -1)),
                Optional.of(carriedOn(logged.highOrLikely(), below, more, spread, 1)));
    }

    private static PressureProfile carriedOn(
            PressureProfile logged, double[] below, double[] more, double[] spread, int sign) {
        double[] depths = logged.depths();
        double[] pressures = logged.pressures();
        double end = pressures[pressures.length - 1];
        double[] z = Arrays.copyOf(depths, depths.length + below.length);
        double[] stress = Arrays.copyOf(pressures, z.length);
        for (int i = 0; i < below.length; i++) {
            z[depths.length + i] = below[i];
            stress[depths.length + i] = end + more[i] + sign * spread[i];
        }
        return PressureProfile.of(z, stress);
    }

    /**
     * Overburden where no density log is at hand: the shallow sediment alone, carried to a depth.
     *
     * @param bottom vertical depth below the datum, m, below ground or seabed
     * @throws staunch.units.RangeFault where the bottom lies above it or below 20 000 m
     */
    public Range withoutLog(@Si(value = "m", kind = Kind.DEPTH) double bottom) {
        double ground = datum.groundOrSeabedDepth();
        Check.within("bottom of the overburden", bottom, ground + 1, 20_000, Measure.DEPTH);
        int steps = (int) Math.ceil((bottom - ground) / STEP);
        double[] z = new double[steps + 1];
        double[] low = new double[steps + 1];
        double[] likely = new double[steps + 1];
        double[] high = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            double below = (bottom - ground) * i / steps;
            double spread = shallow.uncertainty() * Physics.GRAVITY * below;
            z[i] = ground + below;
            likely[i] = atGroundOrSeabed() + shallow.stress(below);
            low[i] = likely[i] - spread;
            high[i] = likely[i] + spread;
        }
        return new Range(
                PressureProfile.of(z, likely),
                Optional.of(PressureProfile.of(z, low)),
                Optional.of(PressureProfile.of(z, high)));
    }
}
