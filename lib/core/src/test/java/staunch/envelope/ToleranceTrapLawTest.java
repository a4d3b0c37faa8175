package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import staunch.earth.TemperatureProfile;
import staunch.envelope.MethodOptions.ToleranceDefinition;
import staunch.fluid.GasComposition;
import staunch.fluid.RealGas;
import staunch.units.Physics;
import staunch.well.HoleInterval;
import staunch.well.StringComponent;
import staunch.well.SurveyStation;
import staunch.well.WellPath;

/** The traps of the subject, each against the brute-force definition and against the naive method that falls into it. */
class ToleranceTrapLawTest {
    private static final double PIPE_AREA = Math.PI / 4 * Wells.PIPE * Wells.PIPE;
    private static final TemperatureProfile TEMPERATURE =
            TemperatureProfile.geothermal(new TemperatureProfile.Point(0, 288.15), 0.03, 9000);

    /** Half a cell of 0.5 m on either end of a bubble of some hundred metres, and the metre steps of its position. */
    private static final double BRUTE_FORCE_TOLERANCE = 4e-3;

    private static double annulus(double hole) {
        return Math.PI / 4 * hole * hole - PIPE_AREA;
    }

    private static BruteForce brute(
            WellPath path, double shoe, double bottom, BruteForce.Profile area, BruteForce.Profile limit, double mud) {
        return new BruteForce(
                path,
                new double[] {shoe, bottom},
                area,
                limit,
                mud,
                RealGas.of(GasComposition.sweet(0.65)),
                TEMPERATURE);
    }

    private static double drilledPressure(double mud, double intensity, double z) {
        return Wells.pressure(mud + intensity, z);
    }

    private static MethodOptions onBottomOnly() {
        return MethodOptions.DEFAULT.withDefinition(ToleranceDefinition.ON_BOTTOM);
    }

    static double mass(Tolerance tolerance) {
        return assertInstanceOf(Tolerance.Finite.class, tolerance).mass();
    }

    static double volume(Tolerance tolerance) {
        return assertInstanceOf(Tolerance.Finite.class, tolerance).volume();
    }

    @Test
    void edgeWhereTheTopReachesTheWeakPointIsMetExactly() {
        WellPath path = WellPath.vertical(9000);
        BruteForce brute = brute(path, 500, 1500, md -> annulus(Wells.HOLE), md -> Wells.pressure(1500, md), 1200);
        double pressure = drilledPressure(1200, 30, 1500);
        double fine = brute.leastMass(pressure, 1);
        double solved = mass(Wells.standard()
                .depths(500, 1500)
                .mud(1200)
                .pore(1000)
                .intensity(30)
                .strength(0, 1500, 9000, 1500)
                .drilled());
        assertEquals(fine, solved, BRUTE_FORCE_TOLERANCE * fine);
        assertTrue(brute.naiveMass(pressure, 5) > 1.05 * solved, "five positions overstate");
    }

    @Test
    void threeOutcomesAndNotOneNumber() {
        assertInstanceOf(
                Tolerance.Unlimited.class,
                Wells.standard().strength(0, 2400, 9000, 2400).drilled());
        Tolerance.FailsOnIntensity fails = assertInstanceOf(
                Tolerance.FailsOnIntensity.class,
                Wells.standard().intensity(210).drilled());
        double shortfall =
                Wells.pressure(Wells.MUD + 210, 4500) - Wells.MUD * Physics.GRAVITY * 1500 - Wells.pressure(1860, 3000);
        assertEquals(shortfall, fails.shortfall(), 1e-6);
        assertInstanceOf(Tolerance.Finite.class, Wells.standard().intensity(190).drilled());
        assertInstanceOf(
                Tolerance.FailsOnIntensity.class,
                Wells.standard().mud(1900).intensity(0).drilled(),
                "mud above strength is an outcome, not a fault");
    }

    @Test
    void washoutBelowTheShoeMakesAPositionOnTheWayTheWorst() {
        // Narrow hole on bottom and below the shoe a washout, then a tight stretch: the worst is in between.
        HoleInterval[] hole = {
            new HoleInterval(3000, 3300, 0.33), new HoleInterval(3300, 3800, 0.2159), new HoleInterval(3800, 4500, 0.30)
        };
        Tolerance tolerance = Wells.standard().hole(hole).drilled();
        BruteForce brute = brute(
                WellPath.vertical(9000),
                3000,
                4500,
                md -> annulus(md < 3300 ? 0.33 : md < 3800 ? 0.2159 : 0.30),
                md -> Wells.pressure(1860, md),
                Wells.MUD);
        double pressure = drilledPressure(Wells.MUD, 60, 4500);
        double fine = brute.leastMass(pressure, 1);
        assertEquals(fine, mass(tolerance), BRUTE_FORCE_TOLERANCE * fine);
        Tolerance.Finite finite = (Tolerance.Finite) tolerance;
        assertEquals(Stage.Moment.RISING, finite.stage().moment());
        double bothEnds = Math.min(brute.massAt(3000, pressure), volumeAtTop(hole));
        assertTrue(bothEnds > 1.05 * finite.mass(), "on bottom and at the shoe alone overstate");
    }

    /** Mass with the top at the shoe, by the solver's own two-point option. */
    private static double volumeAtTop(HoleInterval[] hole) {
        return mass(Wells.standard()
                .hole(hole)
                .options(MethodOptions.DEFAULT.withDefinition(ToleranceDefinition.TOP_AT_WEAK_POINT))
                .drilled());
    }

    @Test
    void nearHorizontalHoleOnBottomAloneOverstatesTenTimes() {
        WellPath path = horizontal();
        Wells well = Wells.standard().path(path).depths(2000, 4400).strength(0, 1660, 9000, 1660);
        Tolerance whole = well.drilled();
        double onBottom = volume(well.options(onBottomOnly()).drilled());
        BruteForce brute = brute(
                path,
                2000,
                4400,
                md -> annulus(Wells.HOLE),
                md -> Wells.pressure(1660, path.verticalDepth(md)),
                Wells.MUD);
        double fine = brute.leastMass(drilledPressure(Wells.MUD, 60, path.verticalDepth(4400)), 1);
        assertEquals(fine, mass(whole), BRUTE_FORCE_TOLERANCE * fine);
        assertTrue(onBottom > 10 * volume(whole), onBottom + " against " + volume(whole));
    }

    private static WellPath horizontal() {
        List<SurveyStation> stations = new ArrayList<>();
        for (int i = 0; i <= 150; i++) {
            double md = 30.0 * i;
            double inclination = Math.min(89, Math.max(0, (md - 1800) / 30 * 4));
            stations.add(new SurveyStation(md, Math.toRadians(inclination), 1));
        }
        return WellPath.of(stations);
    }

    @Test
    void toeUpWellKeepsToTheDefinition() {
        List<SurveyStation> stations = new ArrayList<>();
        for (int i = 0; i <= 150; i++) {
            double md = 30.0 * i;
            double inclination = Math.min(100, Math.max(0, (md - 1800) / 30 * 4));
            stations.add(new SurveyStation(md, Math.toRadians(inclination), 1));
        }
        WellPath path = WellPath.of(stations);
        assertTrue(path.verticalDepth(4000) > path.verticalDepth(4400), "the toe lies above the heel");
        Wells well = Wells.standard().path(path).depths(2000, 4400).strength(0, 1660, 9000, 1660);
        BruteForce brute = brute(
                path,
                2000,
                4400,
                md -> annulus(Wells.HOLE),
                md -> Wells.pressure(1660, path.verticalDepth(md)),
                Wells.MUD);
        double fine = brute.leastMass(drilledPressure(Wells.MUD, 60, path.verticalDepth(4400)), 1);
        assertEquals(fine, mass(well.drilled()), BRUTE_FORCE_TOLERANCE * fine);
    }

    @Test
    void weakZoneBelowTheShoeGoverns() {
        Wells well = Wells.standard().zone("depleted sand", 3700, 3730, 1700);
        Tolerance.Finite finite = assertInstanceOf(Tolerance.Finite.class, well.drilled());
        assertEquals("depleted sand", finite.weakPoint().name());
        BruteForce brute = brute(
                WellPath.vertical(9000),
                3000,
                4500,
                md -> annulus(Wells.HOLE),
                md -> Wells.pressure(md >= 3700 && md <= 3730 ? 1700 : 1860, md),
                Wells.MUD);
        double fine = brute.leastMass(drilledPressure(Wells.MUD, 60, 4500), 1);
        assertEquals(fine, finite.mass(), BRUTE_FORCE_TOLERANCE * fine);
        assertTrue(finite.volume() < 0.7 * volume(Wells.standard().drilled()), "the shoe alone overstates");
    }

    @Test
    void strengthThatFallsDownwardsIsSeenBetweenItsPoints() {
        Wells well = Wells.standard().strength(0, 1900, 3000, 1900, 4000, 1720, 9000, 1720);
        double[] depths = {0, 3000, 4000, 9000};
        double[] densities = {1900, 1900, 1720, 1720};
        BruteForce brute = brute(
                WellPath.vertical(9000),
                3000,
                4500,
                md -> annulus(Wells.HOLE),
                md -> Wells.profile(depths, densities).lowestAt(md),
                Wells.MUD);
        double fine = brute.leastMass(drilledPressure(Wells.MUD, 60, 4500), 1);
        assertEquals(fine, mass(well.drilled()), BRUTE_FORCE_TOLERANCE * fine);
    }

    @Test
    void taperedStringIsFollowedOnTheWayUp() {
        StringComponent[] string = {
            new StringComponent("collar", 220, 0.1715, 0.0714),
            new StringComponent("heavyweight", 140, 0.127, 0.0762),
            new StringComponent("small pipe", 700, 0.1016, 0.0848),
            new StringComponent("pipe", 10, 0.1397, 0.1214)
        };
        BruteForce brute = brute(
                WellPath.vertical(9000),
                3000,
                4500,
                md -> Math.PI / 4 * (Wells.HOLE * Wells.HOLE - square(4500 - md)),
                md -> Wells.pressure(1860, md),
                Wells.MUD);
        double fine = brute.leastMass(drilledPressure(Wells.MUD, 60, 4500), 1);
        assertEquals(fine, mass(Wells.standard().string(string).drilled()), BRUTE_FORCE_TOLERANCE * fine);
    }

    private static double square(double aboveBit) {
        double d = aboveBit < 220 ? 0.1715 : aboveBit < 360 ? 0.127 : aboveBit < 1060 ? 0.1016 : 0.1397;
        return d * d;
    }

    @Test
    void bitOffBottomTakesTheLesserOfBothStates() {
        StringComponent[] string = {
            new StringComponent("collar", 300, 0.1715, 0.0714), new StringComponent("pipe", 10, 0.127, 0.1086)
        };
        double onBottom = mass(Wells.standard().string(string).drilled());
        Tolerance.Finite off = assertInstanceOf(
                Tolerance.Finite.class,
                Wells.standard().string(string).bitOffBottom(1000).drilled());
        assertEquals(onBottom, off.mass(), 1e-9 * onBottom, "the state after stripping governs");
    }

    @Test
    void noPipeUsesTheFullBore() {
        BruteForce brute = brute(
                WellPath.vertical(9000),
                3000,
                4500,
                md -> Math.PI / 4 * Wells.HOLE * Wells.HOLE,
                md -> Wells.pressure(1860, md),
                Wells.MUD);
        double fine = brute.leastMass(drilledPressure(Wells.MUD, 60, 4500), 1);
        assertEquals(fine, mass(Wells.standard().string().drilled()), BRUTE_FORCE_TOLERANCE * fine);
    }

    @Test
    void influxOfTheToleranceVolumeJustReachesTheLimit() {
        Wells well = Wells.standard().overbalance(7e5);
        Model model = well.model();
        Kick kick = model.kick(Kick.Scenario.DRILLED, Wells.BOTTOM);
        DrilledHole hole = model.hole(Wells.BOTTOM);
        Tolerance.Finite finite = assertInstanceOf(Tolerance.Finite.class, model.tolerance(kick, hole));
        InfluxMargin margin = model.margin(kick, hole, finite.volume(), "tolerance");
        assertEquals(0, margin.least(), 1e-6 * kick.formationPressure());
    }

    @Test
    void thinWeakZoneBetweenTwoPositionsStillSetsTheMargin() {
        // Half a metre thick, and nearly as critical as the shoe: of two cusps the lower one counts.
        for (double top = 3500; top < 3532; top += 5) {
            Wells well = Wells.standard().zone("thin sand", top, top + 0.5, 1810);
            Model model = well.model();
            Kick kick = model.kick(Kick.Scenario.DRILLED, Wells.BOTTOM);
            DrilledHole hole = model.hole(Wells.BOTTOM);
            Tolerance.Finite finite = assertInstanceOf(Tolerance.Finite.class, model.tolerance(kick, hole));
            InfluxMargin margin = model.margin(kick, hole, finite.volume(), "tolerance");
            assertEquals(0, margin.least(), 1e-6 * kick.formationPressure(), "at " + top);
        }
    }

    @Test
    void marginAtTheShoeFromFewPositionsIsThatFromMany() {
        // The margin at the shoe falls steeply to its cusp, where the top of the gas passes it, and from bottom rises
        // first.
        SectionEnvelope section = Wells.standard()
                .depths(2138.7, 3161.1)
                .mud(1571.6)
                .strength(0, 1725.3, 9000, 1673.4)
                .intensity(34.4)
                .required(1.98)
                .chokeLineFriction(2.264e6)
                .evaluate();
        double few = section.alongSection()
                .get(section.alongSection().size() - 1)
                .shoeMargin()
                .orElseThrow();
        assertEquals(section.margins().get(0).leastAtShoe(), few, 20, "some millimetres of mud and gas");
    }

    @Test
    void influxLargerThanTheAnnulusIsAReasonAndNotANumber() {
        SectionEnvelope envelope = Wells.standard().required(199).evaluate();
        assertEquals(Verdict.Outcome.FAILS, envelope.drilled().verdict().outcome());
        assertTrue(envelope.margins().isEmpty());
        assertEquals(
                2,
                envelope.warnings().stream()
                        .filter(w -> w.subject().equals("influx margin"))
                        .count());
    }
}
