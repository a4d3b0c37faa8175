package staunch.well;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import staunch.units.InputFault;
import staunch.units.RangeFault;

class AnnulusTest {
    private static final DrillString PIPE = new DrillString(List.of(
            new StringComponent("collars", 100, 0.165, 0.07), new StringComponent("drill pipe", 10, 0.127, 0.1086)));

    @Test
    void aLinerHangsInItsParentAndTheParentCountsAboveIt() {
        CasingString parent = Wells.casing("9 5/8 in", 0, 2000, 0.2445);
        CasingString liner = Wells.casing("7 in liner", 1850, 3000, 0.1778);
        Annulus annulus = Annulus.of(new AnnulusGeometry(
                List.of(liner, parent),
                List.of(new HoleInterval(3000, 3500, 0.1524)),
                new DrillString(List.of(new StringComponent("drill pipe", 10, 0.0889, 0.07))),
                3500,
                0,
                3500));
        assertArrayEquals(new double[] {0, 1850, 3000, 3500}, annulus.breaks());
        assertEquals(0.2205, annulus.holeDiameter(0), 1e-12);
        assertEquals(0.1538, annulus.holeDiameter(1), 1e-12);
        assertEquals(0.1524, annulus.holeDiameter(2), 1e-12);
        List<CasingProfile.Stretch> exposed =
                CasingProfile.of(List.of(parent, liner)).stretches();
        assertEquals(2, exposed.size());
        assertEquals(parent, exposed.get(0).string());
        assertEquals(1850, exposed.get(0).to());
        assertEquals(liner, exposed.get(1).string());
        assertEquals(3000, CasingProfile.of(List.of(parent, liner)).shoeDepth());
        assertEquals(liner, CasingProfile.of(List.of(parent, liner)).shoeString());
    }

    @Test
    void belowTheBitTheFullBoreCounts() {
        Annulus annulus = Wells.annulus(new Wells.Shape(1000, 0, 0.3), PIPE, 1500);
        assertEquals(0, annulus.pipeDiameter(annulus.count() - 1));
        assertEquals(Math.PI / 4 * 0.216 * 0.216, annulus.areaAt(1600), 1e-15);
        assertEquals(Math.PI / 4 * (0.216 * 0.216 - 0.165 * 0.165), annulus.areaAt(1450), 1e-15);
        assertEquals(Math.PI / 4 * (0.2205 * 0.2205 - 0.127 * 0.127), annulus.areaAt(500), 1e-15);
    }

    @Test
    void noPipeIsFullBoreEverywhere() {
        Annulus annulus = Wells.annulus(new Wells.Shape(1000, 0, 0.3), DrillString.NONE, 0);
        assertEquals(0, annulus.stringVolume());
        assertEquals(0, annulus.string().count());
        assertEquals(
                Math.PI / 4 * 0.216 * 0.216 * 900 + Math.PI / 4 * 0.3 * 0.3 * 100,
                annulus.volumeBetween(1000, 2000),
                1e-9);
    }

    @Test
    void theSectionMayEndAboveTheHole() {
        Annulus annulus = Annulus.of(new AnnulusGeometry(
                List.of(Wells.casing("casing", 0, 1000, 0.2445)),
                List.of(new HoleInterval(1000, 2000, 0.216)),
                PIPE,
                1400,
                0,
                1400));
        assertEquals(1400, annulus.bottom());
        // The shoe may be drilled out without any open hole.
        assertEquals(
                1000,
                Annulus.of(new AnnulusGeometry(
                                List.of(Wells.casing("casing", 0, 1000, 0.2445)), List.of(), PIPE, 1000, 0, 1000))
                        .bottom());
    }

    @Test
    void theStringReachesToTheDatumAndIsCutThere() {
        StringGeometry longPipe = StringGeometry.of(PIPE, 3000);
        assertEquals(2, longPipe.count());
        assertEquals(0, longPipe.top(0));
        assertEquals(2900, longPipe.bottom(0));
        assertEquals("drill pipe", longPipe.component(0).name());
        assertEquals(Math.PI / 4 * (0.1086 * 0.1086 * 2900 + 0.07 * 0.07 * 100), longPipe.insideVolume(), 1e-12);
        assertEquals(2950, longPipe.depthReached(longPipe.insideVolume() - Math.PI / 4 * 0.07 * 0.07 * 50), 1e-9);
        StringGeometry collarsOnly = StringGeometry.of(PIPE, 40);
        assertEquals(1, collarsOnly.count());
        assertEquals(0, collarsOnly.top(0));
        assertEquals(40, collarsOnly.bottom(0));
        assertThrows(
                InputFault.class,
                () -> StringGeometry.of(DrillString.NONE, 3000).depthReached(0));
        assertThrows(RangeFault.class, () -> longPipe.depthReached(1000));
    }

    @Test
    void theSubseaAnnulusBeginsAtTheStack() {
        Annulus annulus = Annulus.of(new AnnulusGeometry(
                List.of(Wells.casing("casing", 1012, 2000, 0.2445)),
                List.of(new HoleInterval(2000, 2500, 0.216)),
                PIPE,
                2500,
                1000,
                2500));
        assertEquals(1000, annulus.top());
        assertEquals(0.2205, annulus.holeDiameter(0), 1e-12);
        // The string inside still runs from the datum.
        assertTrue(annulus.stringVolume() > Math.PI / 4 * 0.1086 * 0.1086 * 2400 - 1e-9);
    }

    @Test
    void faultsNameWhatDoesNotFit() {
        assertFault(
                "casing string \"liner\" with outside diameter 0.23 m (9.05512 in) does not fit into \"parent\" with"
                        + " inside diameter 0.2205 m (8.6811 in)",
                List.of(Wells.casing("parent", 0, 2000, 0.2445), Wells.casing("liner", 1900, 2200, 0.23)),
                List.of(new HoleInterval(2200, 2500, 0.2)),
                PIPE);
        assertFault(
                "string component \"collars\" with outside diameter 0.165 m (6.49606 in) does not fit into \"open"
                        + " hole\" of 0.15 m (5.90551 in) at 2450 m",
                List.of(Wells.casing("casing", 0, 2000, 0.2445)),
                List.of(new HoleInterval(2000, 2500, 0.15)),
                PIPE);
        assertFault(
                "open hole begins at 2100 m, below the casing shoe at 2000 m",
                List.of(Wells.casing("casing", 0, 2000, 0.2445)),
                List.of(new HoleInterval(2100, 2500, 0.216)),
                PIPE);
        assertFault(
                "hole ends at 2400 m, above the bottom of the annulus at 2500 m",
                List.of(Wells.casing("casing", 0, 2000, 0.2445)),
                List.of(new HoleInterval(2000, 2400, 0.216)),
                PIPE);
        assertFault(
                "casing between 1000 m and 1100 m is missing",
                List.of(Wells.casing("casing", 0, 1000, 0.3), Wells.casing("liner", 1100, 2000, 0.2445)),
                List.of(new HoleInterval(2000, 2500, 0.216)),
                PIPE);
        assertFault(
                "casing string \"casing\" begins at 60 m, more than 50 m below the top of the annulus at 0 m",
                List.of(Wells.casing("casing", 60, 2000, 0.2445)),
                List.of(new HoleInterval(2000, 2500, 0.216)),
                PIPE);
        assertFault(
                "open hole begins at 2000 m, below the top of the annulus at 0 m",
                List.of(),
                List.of(new HoleInterval(2000, 2500, 0.216)),
                PIPE);
    }

    private static void assertFault(
            String start, List<CasingString> casing, List<HoleInterval> hole, DrillString string) {
        InputFault fault = assertThrows(
                InputFault.class, () -> Annulus.of(new AnnulusGeometry(casing, hole, string, 2500, 0, 2500)));
        assertTrue(fault.getMessage().startsWith(start), fault.getMessage());
    }

    @Test
    void aCasingLargerThanItsHoleIsAFault() {
        CasingString casing = Wells.casing("9 5/8 in", 0, 2000, 0.2445);
        CasingProfile.checkFits(casing, List.of(new HoleInterval(500, 2000, 0.311)));
        InputFault fault = assertThrows(
                InputFault.class, () -> CasingProfile.checkFits(casing, List.of(new HoleInterval(500, 2000, 0.216))));
        assertEquals(
                "casing string \"9 5/8 in\" with outside diameter 0.2445 m (9.62598 in) is larger than the hole of"
                        + " 0.216 m (8.50394 in) between 500 m and 2000 m; check the diameters of casing and hole",
                fault.getMessage());
    }

    @Test
    void aVolumeLargerThanTheAnnulusIsAFault() {
        Annulus annulus = Wells.annulus(new Wells.Shape(1000, 0, 0.3), PIPE, 2000);
        RangeFault fault = assertThrows(RangeFault.class, () -> annulus.topOfVolume(2000, 500));
        assertEquals(annulus.volume(), fault.highest(), 1e-12);
        assertThrows(RangeFault.class, () -> annulus.topOfVolume(2000, Double.NaN));
        assertThrows(RangeFault.class, () -> annulus.bottomOfVolume(1500, 500));
        assertThrows(RangeFault.class, () -> annulus.areaAt(2001));
        assertEquals(annulus.top(), annulus.topOfVolume(2000, annulus.volume()), 1e-9);
    }
}
