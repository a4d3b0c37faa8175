package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PipeSizesLawTest {
    /** Steel of 7850 kg/m³: π ρ (D − t) t in lb/ft with D and t in inches. */
    private static final double PLAIN_END = Math.PI * 7850 * 0.0254 * 0.0254 * 0.3048 / 0.45359237;

    /** The nominal weight includes the couplings, which add up to 5 % to a short joint; it is rounded by half a percent. */
    @Test
    void nominalWeightIsThatOfThePlainPipeAndItsCouplings() {
        for (PipeSizes.Size size : PipeSizes.all()) {
            double plain = PLAIN_END * (size.outsideDiameter() - size.wall()) * size.wall();
            double share = size.weight() / plain;
            assertTrue(share > 0.995 && share < 1.05, size + " weighs " + share + " of its plain pipe");
        }
    }

    @Test
    void heavierPipeOfOneSizeHasTheThickerWall() {
        PipeSizes.Size last = null;
        for (PipeSizes.Size size : PipeSizes.all()) {
            if (last != null && last.outsideDiameter() == size.outsideDiameter()) {
                assertTrue(size.weight() > last.weight() && size.wall() > last.wall(), size.toString());
            }
            last = size;
        }
    }
}
