package staunch.earth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import staunch.units.Physics;
import staunch.well.WellPath;

class ExposedStrengthLawTest {
    private static final PressureProfile PROFILE =
            Rocks.profile(500, 1500, 1800, 1750, 1800, 1650, 2600, 1850, 6000, 1900);

    /** Rounding of the inverse of the path, 1e-8 m, times a gradient below 20 kPa/m. */
    private static final double ROUNDING = 1;

    @Property(tries = 200, seed = "1")
    void strengthIsTheLowestOfProfileAndZonesAtEveryDepth(
            @ForAll @DoubleRange(min = 0, max = 120) double build,
            @ForAll @DoubleRange(min = 0, max = 120) double toe,
            @ForAll @DoubleRange(min = 1500, max = 2500) double zoneTop,
            @ForAll @DoubleRange(min = 1300, max = 1900) double zoneDensity,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
        WellPath path = Rocks.path(0, 0, 1000, 0, 2000, build, 3500, toe);
        WeakZone zone = Rocks.zone("zone", zoneTop, zoneTop + 80, zoneDensity);
        ExposedStrength s = ExposedStrength.of(
                Rocks.earth(Optional.of(Range.of(PROFILE)), List.of(), List.of(zone)),
                path,
                new OpenHole("shoe", 1500, 3500, 0),
                ExposedStrength.Estimate.LOW);
        double md = 1500 + share * 2000;
        double z = path.verticalDepth(md);
        double expected = PROFILE.lowestAt(z);
        if (z >= zoneTop && z <= zoneTop + 80) {
            expected = Math.min(expected, Rocks.pressure(zoneDensity, z));
        }
        assertEquals(expected, s.lowestAt(path, md).orElseThrow().strength(), ROUNDING);
        assertTrue(s.complete());
    }

    @Property(tries = 100, seed = "1")
    void aMarginLowersEveryLimitByItself(@ForAll @DoubleRange(min = 0, max = 3e6) double margin) {
        ExposedStrength s = ExposedStrength.of(
                Rocks.earth(Optional.of(Range.of(PROFILE)), List.of(), List.of()),
                WellPath.vertical(3000),
                new OpenHole("shoe", 1500, 3000, margin),
                ExposedStrength.Estimate.LOW);
        s.nodes().forEach(n -> assertEquals(margin, n.strength() - n.limit(), 1e-6));
    }

    @Property(tries = 100, seed = "1")
    void porePressureAlongHoleIsTheProfileAtItsVerticalDepth(
            @ForAll @DoubleRange(min = 0, max = 120) double build,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
        WellPath path = Rocks.path(0, 0, 1000, 0, 2000, build, 3500, 95);
        PressureAlongHole p = PressureAlongHole.of(PROFILE, path, new OpenHole("shoe", 1500, 3500, 0));
        double md = 1500 + share * 2000;
        assertEquals(
                PROFILE.highestAt(path.verticalDepth(md)), p.highestAt(path, md).orElseThrow(), ROUNDING);
        assertTrue(p.gaps().isEmpty());
    }

    @Property(tries = 50, seed = "1")
    void theEquivalentOfAShoeTestIsKeptUpToTheShoe(@ForAll @DoubleRange(min = 1100, max = 2200) double density) {
        StrengthTest test = Rocks.test("LOT", 2010, density, Standing.LEAK_OFF);
        ExposedStrength s = ExposedStrength.of(
                Rocks.earth(Optional.empty(), List.of(test), List.of()),
                WellPath.vertical(3000),
                new OpenHole("shoe", 2000, 3000, 0),
                ExposedStrength.Estimate.LOW);
        double shoe = s.shoe().orElseThrow().strength();
        assertEquals(density, (shoe - Physics.ATMOSPHERE) / Physics.GRAVITY / 2000, 1e-9 * density);
    }
}
