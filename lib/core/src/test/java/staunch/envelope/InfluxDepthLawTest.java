package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import staunch.control.CirculationMethod;
import staunch.fluid.GasComposition;
import staunch.fluid.RealGas;
import staunch.units.Physics;
import staunch.units.RangeFault;
import staunch.well.HoleInterval;
import staunch.well.StringComponent;
import staunch.well.WellPath;

/** An influx from above section TD. */
class InfluxDepthLawTest {
    private static final double BRUTE_FORCE_TOLERANCE = 4e-3;
    private static final double INFLUX = 4000;

    @Provide
    Arbitrary<AnySection> sections() {
        return AnySection.any();
    }

    @Property(tries = 60, seed = "1")
    void atSectionTdItIsTheDefault(@ForAll("sections") AnySection section) {
        double bottom = section.bottom();
        assertEquals(
                section.wells().drilled(), section.wells().influxDepth(bottom).drilled());
        assertEquals(
                section.wells().swabbed(), section.wells().influxDepth(bottom).swabbed());
    }

    /** With nothing weak below the influx, a hole that ends there with the same pipe tolerates the same. */
    @Property(tries = 60, seed = "1")
    void theHoleBelowIsFullOfMud(
            @ForAll("sections") AnySection section, @ForAll @DoubleRange(min = 0.5, max = 0.95) double share) {
        double influx = section.shoe() + share * section.length();
        double third = section.shoe() + section.length() / 3;
        HoleInterval[] cut = {
            new HoleInterval(section.shoe(), third, Wells.HOLE + section.washout()),
            new HoleInterval(third, influx, Wells.HOLE)
        };
        double deep = AnySection.allowed(oneString(section).influxDepth(influx).drilled());
        double shallow = AnySection.allowed(
                oneString(section).hole(cut).depths(section.shoe(), influx).drilled());
        assertEquals(shallow, deep, Double.isInfinite(shallow) ? 0 : 1e-6 * shallow);
    }

    private static Wells oneString(AnySection section) {
        double strength = section.mud() + section.window();
        return section.vertical()
                .wells()
                .strength(0, strength, 9000, strength)
                .string(new StringComponent("drill pipe", 10, Wells.PIPE, 0.1086));
    }

    private static Wells tapered(WellPath path) {
        return Wells.standard()
                .path(path)
                .intensity(40)
                .hole(
                        new HoleInterval(3000, 3300, 0.33),
                        new HoleInterval(3300, 4200, 0.2159),
                        new HoleInterval(4200, 4500, 0.30));
    }

    @Example
    void agreesWithBruteForceInATaperedHole() {
        WellPath path = WellPath.of(new AnySection(Wells.SHOE, 1500, Wells.MUD, 300, 0, 60, 50, 60, 0).stations());
        Wells wells = tapered(path).influxDepth(INFLUX);
        BruteForce brute = new BruteForce(
                path,
                new double[] {Wells.SHOE, Wells.BOTTOM},
                md -> {
                    double d = md < 3300 ? 0.33 : md < 4200 ? 0.2159 : 0.30;
                    return Math.PI / 4 * (d * d - Wells.PIPE * Wells.PIPE);
                },
                md -> Wells.pressure(1860, path.verticalDepth(md)),
                Wells.MUD,
                RealGas.of(GasComposition.sweet(0.65)),
                wells.temperature());
        double z = path.verticalDepth(INFLUX);
        double bottom = Wells.pressure(Wells.MUD + 40, z)
                + Wells.MUD * Physics.GRAVITY * (path.verticalDepth(Wells.BOTTOM) - z);
        double expected = brute.leastMassFrom(INFLUX, bottom, 1);
        Tolerance.Finite found = assertInstanceOf(Tolerance.Finite.class, wells.drilled());
        assertEquals(expected, found.mass(), BRUTE_FORCE_TOLERANCE * expected);
        assertTrue(found.stage().gasBottom() <= INFLUX);
        assertEquals(bottom, found.stage().bottomHolePressure(), 1);
        double onBottom = ToleranceTrapLawTest.mass(tapered(path).drilled());
        assertTrue(Math.abs(found.mass() / onBottom - 1) > 0.05, "the depth of the influx matters here");
    }

    @Example
    void aWeakDepthBelowTheInfluxIsLoadedByTheMudBelowIt() {
        Wells wells =
                Wells.standard().zone("weak bed", 4200, 4250, Wells.MUD + 30).influxDepth(INFLUX);
        Tolerance.FailsOnIntensity fails = assertInstanceOf(Tolerance.FailsOnIntensity.class, wells.drilled());
        assertEquals("weak bed", fails.weakPoint().name());
        // At the upper end of the bed the kick adds most above what it holds.
        double added = Physics.GRAVITY * (60 * INFLUX - 30 * 4200);
        assertEquals(added, fails.shortfall(), 1);
        assertInstanceOf(Tolerance.Finite.class, wells.swabbed());
    }

    @Example
    void killMudBelowTheInfluxIsHeavier() {
        MethodOptions wait = MethodOptions.DEFAULT.withMethod(CirculationMethod.WAIT_AND_WEIGHT);
        Wells wells = Wells.standard()
                .zone("weak bed", 4400, 4450, Wells.MUD + 60.0 * INFLUX / 4400 + 2)
                .influxDepth(INFLUX);
        assertInstanceOf(Tolerance.Finite.class, wells.drilled());
        Tolerance.FailsOnIntensity fails = assertInstanceOf(
                Tolerance.FailsOnIntensity.class, wells.options(wait).drilled());
        assertEquals(Stage.Moment.KILL_MUD_BELOW_INFLUX, fails.stage().moment());
        assertEquals("weak bed", fails.weakPoint().name());
    }

    @Property(tries = 30, seed = "1")
    void marginOfTheToleratedInfluxIsZero(@ForAll("sections") AnySection section) {
        Wells wells = section.wells().influxDepth(section.shoe() + 0.7 * section.length());
        if (!(wells.drilled() instanceof Tolerance.Finite finite) || finite.volume() < 0.05) {
            return;
        }
        Model model = wells.model();
        InfluxMargin margin = model.margin(
                model.kick(Kick.Scenario.DRILLED, section.bottom()),
                model.hole(section.bottom()),
                finite.volume(),
                "tolerance");
        assertEquals(0, margin.least(), 2000, finite + " " + margin.stage());
    }

    @Example
    void shallowerDepthsOfTheSectionKeepTheirOwnBottom() {
        Model deep = Wells.standard().influxDepth(INFLUX).model();
        assertEquals(3500, deep.kick(Kick.Scenario.DRILLED, 3500).measuredDepth());
        assertEquals(INFLUX, deep.kick(Kick.Scenario.DRILLED, 4200).measuredDepth());
        assertThrows(RangeFault.class, () -> Wells.standard().influxDepth(2900).input());
        assertThrows(RangeFault.class, () -> Wells.standard().influxDepth(4501).input());
    }

    @Example
    void bitOffBottomStandsAboveOrBelowTheInflux() {
        MethodOptions atShutIn = MethodOptions.DEFAULT.withDefinition(MethodOptions.ToleranceDefinition.ON_BOTTOM);
        Wells wells = Wells.standard().influxDepth(INFLUX).options(atShutIn);
        double onBottom = ToleranceTrapLawTest.volume(wells.drilled());
        double below = ToleranceTrapLawTest.volume(wells.bitOffBottom(200).drilled());
        assertEquals(onBottom, below, 1e-9 * onBottom, "gas above the bit does not see where it hangs");
        Tolerance.Finite above = (Tolerance.Finite) wells.bitOffBottom(900).drilled();
        assertEquals(Stage.Moment.SHUT_IN, above.stage().moment(), "stripping into the gas makes it taller");
        // The same gas, lower in the hole where no pipe is: a little more pressure, a little more heat.
        assertEquals(onBottom, above.volume(), 0.01 * onBottom);
    }
}
