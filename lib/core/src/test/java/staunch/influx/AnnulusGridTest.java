package staunch.influx;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import staunch.earth.TemperatureProfile;
import staunch.fluid.GasComposition;
import staunch.fluid.RealGas;
import staunch.well.Annulus;
import staunch.well.AnnulusGeometry;
import staunch.well.DrillString;
import staunch.well.HoleInterval;
import staunch.well.SurveyStation;
import staunch.well.WellPath;

class AnnulusGridTest {
    private static final Annulus ANNULUS = Annulus.of(
            new AnnulusGeometry(List.of(), List.of(new HoleInterval(0, 5000, 0.2)), DrillString.NONE, 0, 0, 5000));

    private static WellPath path() {
        return WellPath.of(List.of(
                new SurveyStation(0, 0.5, 1), new SurveyStation(3500, 0.5, 1), new SurveyStation(5000, 0.5, 1)));
    }

    @Test
    void aDepthAskedForStaysANodeWhereAStationLiesARoundingAway() {
        for (double beside : new double[] {-5e-10, 0, 5e-10}) {
            AnnulusGrid grid = AnnulusGrid.of(ANNULUS, path(), new double[] {3500 + beside});
            assertTrue(
                    IntStream.rangeClosed(0, grid.pieces())
                            .anyMatch(i -> Math.abs(grid.measuredDepth(i) - 3500) < 1e-8),
                    "beside by " + beside);
        }
        assertEquals(1, AnnulusGrid.of(ANNULUS, path(), new double[] {}).pieces(), "stations alone join");
    }

    @Test
    void gasFitsUpToTheTopOfTheGridAndNoFarther() {
        AnnulusGrid grid = AnnulusGrid.of(ANNULUS, path(), new double[] {});
        GasColumn column = new GasColumn(RealGas.of(GasComposition.sweet(0.65)), TemperatureProfile.isothermal(350));
        column.start(grid.verticalDepth(grid.pieces()), 5e7);
        double all = grid.mass(column, 0, 5000);
        assertTrue(grid.fits(column, 5000, 0.999 * all));
        assertTrue(!grid.fits(column, 5000, 1.001 * all));
    }
}
