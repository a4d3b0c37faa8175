package staunch.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import staunch.units.EquivalentDensity;
import staunch.units.InputFault;
import staunch.units.Physics;
import staunch.well.Datum;

/** Equivalent mud weight is a definition: the hand values below follow from g = 9.80665 m/s² alone. */
class EquivalentZeroTest {
    private static final Datum LAND = new Datum("rotary table", 642 * 0.3048, new Datum.OnLand(25 * 0.3048));
    private static final Datum FLOATER =
            new Datum("rotary table", 25, new Datum.AtSea(1000, true, OptionalDouble.of(1030)));

    @Test
    void fromTheDatumItIsTheEquivalentDensityOfTheUnits() {
        EquivalentZero zero = EquivalentZero.of(EquivalentZero.Place.DATUM, FLOATER);
        assertEquals("rotary table", zero.name());
        assertEquals(EquivalentDensity.of(60e6, 4000), zero.density(60e6, 4000).orElseThrow(), 1e-12);
        assertEquals(EquivalentDensity.pressure(1500, 4000), zero.pressure(1500, 4000), 1e-6);
    }

    @Test
    void fromSeaLevelTheAirGapIsLeftOut() {
        EquivalentZero zero = EquivalentZero.of(EquivalentZero.Place.MEAN_SEA_LEVEL, FLOATER);
        double pressure = EquivalentDensity.pressure(1500, 3000);
        assertEquals(1500 * 3000 / 2975.0, zero.density(pressure, 3000).orElseThrow(), 1e-9);
    }

    @Test
    void fromTheMudlineTheSeaIsTakenOff() {
        EquivalentZero zero = EquivalentZero.of(EquivalentZero.Place.MUDLINE, FLOATER);
        assertEquals(1025, zero.verticalDepth(), 0);
        assertEquals(Physics.ATMOSPHERE + 1030 * 9.80665 * 1000, zero.pressure(), 1e-6);
        // 1500 kg/m³ over 3025 m from the datum, less 1030 kg/m³ over 1000 m of sea, over the 2000 m that are left.
        double pressure = EquivalentDensity.pressure(1500, 3025);
        assertEquals(
                (1500 * 3025 - 1030 * 1000) / 2000.0,
                zero.density(pressure, 3025).orElseThrow(),
                1e-9);
    }

    @Test
    void onLandTheMudlineIsGroundLevelUnderTheAtmosphere() {
        EquivalentZero zero = EquivalentZero.of(EquivalentZero.Place.MUDLINE, LAND);
        assertEquals("ground level", zero.name());
        assertEquals(25 * 0.3048, zero.verticalDepth(), 0);
        assertEquals(Physics.ATMOSPHERE, zero.pressure(), 0);
        double pressure = EquivalentDensity.pressure(1200, 1000 * 0.3048);
        assertEquals(1200 * 1000 / 975.0, zero.density(pressure, 1000 * 0.3048).orElseThrow(), 1e-9);
    }

    @Test
    void thereAndBackIsThePressureItself() {
        for (Datum datum : List.of(LAND, FLOATER)) {
            for (EquivalentZero.Place place : EquivalentZero.Place.values()) {
                EquivalentZero zero = EquivalentZero.of(place, datum);
                for (double z : new double[] {1100, 2500, 6000}) {
                    for (double p : new double[] {15e6, 47.3e6, 120e6}) {
                        double density = zero.density(p, z).orElseThrow();
                        assertEquals(p, zero.pressure(density, z), 1e-7, place + " " + z);
                    }
                }
            }
        }
    }

    @Test
    void thereIsNoneAtItsZeroNorAboveIt() {
        EquivalentZero zero = EquivalentZero.of(EquivalentZero.Place.MUDLINE, FLOATER);
        assertTrue(zero.density(11e6, 1025).isEmpty());
        assertTrue(zero.density(5e6, 500).isEmpty());
    }

    @Test
    void theMudlineUnderASeaOfUnknownDensityIsRefused() {
        Datum unknown = new Datum("rotary table", 25, new Datum.AtSea(1000, true));
        InputFault fault =
                assertThrows(InputFault.class, () -> EquivalentZero.of(EquivalentZero.Place.MUDLINE, unknown));
        assertTrue(fault.getMessage().contains("density of the sea"));
    }
}
