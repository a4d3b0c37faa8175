package staunch.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import staunch.units.InputFault;
import staunch.units.Physics;
import staunch.units.RangeFault;
import staunch.well.Annulus;
import staunch.well.DrillString;
import staunch.well.WellPath;

class KillSheetTest {
    private static final double RATE = 0.008;
    private static final WellPath PATH = WellPath.vertical(3000);

    private record Variant(
            WellPath path,
            Annulus annulus,
            KillSheetInput.ShutIn shutIn,
            double limit,
            Optional<KillSheetInput.Subsea> subsea) {
        private static final Variant LAND = new Variant(
                PATH, KillWells.annulus(3000, 0), new KillSheetInput.ShutIn(3e6, 4.5e6, 3), 4e7, Optional.empty());

        KillSheetInput input() {
            return new KillSheetInput(
                    path,
                    annulus,
                    1250,
                    shutIn,
                    new KillSheetInput.Pump(
                            0.016, 0.8, new SlowCirculation(RATE, OptionalDouble.of(5e6), OptionalDouble.empty())),
                    new KillSheetInput.OpenHoleLimit("shoe", 2000, limit),
                    new KillSheetInput.KillMud(10, 0, 150, 4200),
                    subsea,
                    KillSheetInput.Options.DEFAULT);
        }

        Variant subsea(double loss) {
            LineBore line = new LineBore(800, 0.076);
            SlowCirculation measured = new SlowCirculation(RATE, OptionalDouble.empty(), OptionalDouble.of(loss));
            return new Variant(
                    path,
                    KillWells.annulus(3000, 800),
                    shutIn,
                    limit,
                    Optional.of(new KillSheetInput.Subsea(
                            new ChokeLineLoss.Line(line, List.of(measured), 1250, 1250, Optional.empty()),
                            OptionalDouble.of(1030),
                            120,
                            4)));
        }
    }

    private static boolean warns(KillSheet sheet, String subject) {
        return sheet.warnings().stream().anyMatch(w -> w.subject().equals(subject));
    }

    @Test
    void killMudIsNeverLighterThanTheMudInTheWell() {
        KillSheetInput land = Variant.LAND.input();
        double justAbove = 1250 + 1e-7;
        KillSheet sheet = KillSheet.of(new KillSheetInput(
                land.path(),
                land.annulus(),
                justAbove,
                new KillSheetInput.ShutIn(0, 1e6, 3),
                land.pump(),
                land.weakPoint(),
                land.killMud(),
                land.subsea(),
                land.options()));
        assertEquals(justAbove, sheet.killDensity(), 0);
        assertEquals(0, sheet.weighting().mass(), 1e-6);
    }

    @Test
    void aLandWellByHand() {
        KillSheet sheet = KillSheet.of(Variant.LAND.input());
        assertEquals(3e6 + 1250 * 9.80665 * 3000, sheet.formationPressure(), 1e-6);
        // 1250 + 3e6/(9.80665 · 3000) = 1351.97, up to 1360.
        assertEquals(1351.97, sheet.balancingDensity(), 0.005);
        assertEquals(1360, sheet.killDensity(), 1e-9);
        assertEquals(8e6, sheet.initialCirculatingPressure(), 1e-6);
        assertEquals(5e6 * 1360 / 1250, sheet.finalCirculatingPressure(), 1e-6);
        assertEquals(4e7 - 101_325 - 1250 * 9.80665 * 2000, sheet.weakPoint().maasp(), 1e-6);
        assertEquals(4e7 - 101_325 - 1360 * 9.80665 * 2000, sheet.weakPoint().maaspKilled(), 1e-6);
        assertTrue(sheet.weakPoint().holdsKillMud());
        assertEquals(
                101_325 + 4.5e6 + 1250 * 9.80665 * 2000,
                sheet.weakPoint().shutIn().orElseThrow(),
                1e-6);
        assertTrue(sheet.warnings().isEmpty());
        assertTrue(KillSheet.NOTICE.contains("Not for use on a live well"));
    }

    @Test
    void killMudTooHeavyForTheShoeIsAnOutcome() {
        KillSheet sheet = KillSheet.of(
                new Variant(PATH, Variant.LAND.annulus(), Variant.LAND.shutIn(), 2.6e7, Optional.empty()).input());
        assertFalse(sheet.weakPoint().holdsKillMud());
        assertTrue(sheet.weakPoint().margin() < 0);
        assertEquals(sheet.weakPoint().margin(), sheet.weakPoint().maaspKilled(), 0);
        assertTrue(warns(sheet, "shoe"));
    }

    @Test
    void anInfluxAboveTheWeakPointLeavesItsShutInLoadNotAssessed() {
        double below = Variant.LAND.annulus().volumeBetween(2000, 3000);
        KillSheetInput.ShutIn large = new KillSheetInput.ShutIn(3e6, 9e6, below + 0.1);
        KillSheet sheet = KillSheet.of(new Variant(PATH, Variant.LAND.annulus(), large, 4e7, Optional.empty()).input());
        assertTrue(sheet.weakPoint().shutIn().isEmpty());
        assertTrue(warns(sheet, "shoe"));
    }

    @Test
    void aSubseaSheetCorrectsForTheChokeLine() {
        KillSheet sheet = KillSheet.of(Variant.LAND.subsea(1e6).input());
        KillSheet.ChokeCorrection choke = sheet.chokeLine().orElseThrow();
        assertEquals(ChokeLineLoss.Basis.MEASURED, choke.basis());
        assertEquals(3.5e6, choke.casingPressure(), 1e-6);
        assertEquals(0, choke.uncompensated(), 0);
        assertEquals(2.5e5, choke.startUpStep(), 1e-6);
        assertEquals(1e6 * 1360 / 1250, choke.lossKilled(), 1e-6);
        // Water of 1030 kg/m³ stands in the choke line at shut-in.
        double column = 9.80665 * (1250 * 1200 + 1030 * 800);
        assertEquals(4e7 - 101_325 - column, sheet.weakPoint().maasp(), 1e-6);
        assertEquals(sheet.weakPoint().maasp() - 1e6, choke.maaspCirculating(), 1e-6);
        assertEquals(
                Physics.ATMOSPHERE + 1360 * 9.80665 * 2000, sheet.weakPoint().killed(), 1e-6);
        KillSheet.Leg line = sheet.legs().get(4);
        assertEquals("choke line", line.name());
        assertEquals(Math.PI / 4 * 0.076 * 0.076 * 800, line.volume(), 1e-12);
        assertEquals(sheet.input().annulus().volume() + line.volume(), sheet.bottomsUpVolume(), 1e-9);
    }

    @Test
    void frictionBeyondTheCasingPressureLoadsTheWell() {
        KillSheet sheet = KillSheet.of(Variant.LAND.subsea(6e6).input());
        KillSheet.ChokeCorrection choke = sheet.chokeLine().orElseThrow();
        assertEquals(0, choke.casingPressure(), 0);
        assertEquals(1.5e6, choke.uncompensated(), 1e-6);
        assertTrue(warns(sheet, "choke line"));
    }

    @Test
    void unknownChokeLineFrictionIsNotAssessed() {
        Variant known = Variant.LAND.subsea(1e6);
        ChokeLineLoss.Line line = known.subsea().orElseThrow().chokeLine();
        KillSheetInput.Subsea unknown = new KillSheetInput.Subsea(
                new ChokeLineLoss.Line(line.line(), List.of(), 1250, 1250, Optional.empty()),
                OptionalDouble.of(1030),
                120,
                4);
        KillSheet sheet =
                KillSheet.of(new Variant(PATH, known.annulus(), known.shutIn(), 4e7, Optional.of(unknown)).input());
        assertTrue(sheet.chokeLine().isEmpty());
        assertTrue(warns(sheet, "choke line"));
    }

    @Test
    void edgesAreFaultsThatNameWhatIsWrong() {
        Function<Variant, String> field =
                v -> assertThrows(InputFault.class, v::input).field();
        KillSheetInput.ShutIn shutIn = Variant.LAND.shutIn();
        assertEquals(
                "string",
                field.apply(new Variant(
                        PATH, KillWells.annulus(DrillString.NONE, 3000, 0, 3000), shutIn, 4e7, Optional.empty())));
        assertEquals(
                "string component \"plugged pipe\"",
                field.apply(new Variant(PATH, KillWells.plugged(), shutIn, 4e7, Optional.empty())));
        assertEquals(
                "survey",
                field.apply(
                        new Variant(WellPath.vertical(2900), Variant.LAND.annulus(), shutIn, 4e7, Optional.empty())));
        assertThrows(
                RangeFault.class,
                () -> KillSheet.of(new Variant(
                                PATH,
                                Variant.LAND.annulus(),
                                new KillSheetInput.ShutIn(6e7, 7e7, 3),
                                4e7,
                                Optional.empty())
                        .input()));
        assertThrows(
                InputFault.class,
                () -> new KillSheetInput.Pump(
                        0.016, 0, new SlowCirculation(RATE, OptionalDouble.empty(), OptionalDouble.empty())));
    }

    @Test
    void theBitOffBottomIsAWarning() {
        KillSheet sheet = KillSheet.of(
                new Variant(PATH, KillWells.annulus(2800, 0), Variant.LAND.shutIn(), 4e7, Optional.empty()).input());
        assertTrue(warns(sheet, "bit"));
    }
}
