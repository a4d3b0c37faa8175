package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import staunch.envelope.MethodOptions.AnnularFriction;
import staunch.envelope.MethodOptions.ToleranceDefinition;
import staunch.fluid.GasComposition;
import staunch.fluid.RealGas;
import staunch.units.Physics;
import staunch.well.StringComponent;
import staunch.well.WellPath;

/** Friction in the annulus, counted and neglected. */
class AnnularFrictionLawTest {
    private static final double RATE = 0.02;
    private static final double FIFTY_PSI = 50 * 6894.757293168;
    private static final double BRUTE_FORCE_TOLERANCE = 4e-3;
    private static final MethodOptions COUNTED = MethodOptions.DEFAULT.withAnnularFriction(AnnularFriction.COUNTED);

    @Provide
    Arbitrary<AnySection> sections() {
        return AnySection.any();
    }

    private static AnnularLoss.Computed loss(Wells wells) {
        return assertInstanceOf(AnnularLoss.Computed.class, wells.model().annularLoss());
    }

    private static List<String> warnings(Wells wells) {
        return wells.evaluate().warnings().stream()
                .filter(w -> w.subject().equals("annular friction"))
                .map(w -> w.text())
                .toList();
    }

    @Example
    void countedAgreesWithBruteForce() {
        Wells wells = Wells.standard().flowing(RATE).options(COUNTED);
        AnnularLoss.Computed loss = loss(wells);
        double open = (loss.aboveBit() - loss.aboveShoe()) / (Wells.BOTTOM - Wells.SHOE);
        BruteForce brute = new BruteForce(
                WellPath.vertical(9000),
                new double[] {Wells.SHOE, Wells.BOTTOM},
                md -> Math.PI / 4 * (Wells.HOLE * Wells.HOLE - Wells.PIPE * Wells.PIPE),
                md -> Wells.pressure(1860, md),
                md -> loss.aboveShoe() + open * (md - Wells.SHOE),
                Wells.MUD,
                RealGas.of(GasComposition.sweet(0.65)),
                wells.temperature());
        double expected = brute.leastMass(Wells.pressure(Wells.MUD + 60, Wells.BOTTOM), 1);
        Tolerance.Finite counted = assertInstanceOf(Tolerance.Finite.class, wells.drilled());
        assertEquals(expected, counted.mass(), BRUTE_FORCE_TOLERANCE * expected);
        Tolerance.Finite neglected = assertInstanceOf(
                Tolerance.Finite.class, wells.options(MethodOptions.DEFAULT).drilled());
        assertTrue(counted.volume() < 0.95 * neglected.volume(), counted + " and " + neglected);
        assertEquals(Wells.standard().drilled(), neglected, "readings alone change nothing");
    }

    /** With the shoe weakest the whole loss above it is lost to the zero-gain margin, and nothing of that below. */
    @Example
    void zeroGainMarginLosesTheFrictionAboveTheWeakPoint() {
        Wells wells = Wells.standard().flowing(RATE);
        double free = wells.model().zeroGainIntensity(wells.model().hole(Wells.BOTTOM));
        wells.options(COUNTED);
        double counted = wells.model().zeroGainIntensity(wells.model().hole(Wells.BOTTOM));
        double lost = loss(wells).aboveShoe() / (Physics.GRAVITY * Wells.BOTTOM);
        assertEquals(lost, free - counted, 1e-9);
    }

    @Property(tries = 60, seed = "1")
    void countedNeverAllowsMore(@ForAll("sections") AnySection section) {
        double free = AnySection.allowed(section.wells().flowing(RATE).drilled());
        double counted = AnySection.allowed(
                section.wells().flowing(RATE).options(COUNTED).drilled());
        assertTrue(counted <= free * (1 + 1e-7), counted + " and " + free);
    }

    @Property(tries = 30, seed = "1")
    void marginOfTheToleratedInfluxIsZero(@ForAll("sections") AnySection section) {
        Wells wells = section.wells().flowing(RATE).options(COUNTED);
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
    void nothingFlowsAtShutIn() {
        MethodOptions onBottom = MethodOptions.DEFAULT.withDefinition(ToleranceDefinition.ON_BOTTOM);
        assertEquals(
                Wells.standard().flowing(RATE).options(onBottom).drilled(),
                Wells.standard()
                        .flowing(RATE)
                        .options(onBottom.withAnnularFriction(AnnularFriction.COUNTED))
                        .drilled());
    }

    @Example
    void neglectedLossIsWarnedOfAboveFiftyPsi() {
        MethodOptions few = MethodOptions.DEFAULT.withDepths(1000, 1);
        Wells fast = Wells.standard().flowing(RATE).options(few);
        assertTrue(loss(fast).aboveBit() > FIFTY_PSI);
        assertEquals(1, warnings(fast).size());
        assertEquals(
                0,
                warnings(fast.options(few.withAnnularFriction(AnnularFriction.COUNTED)))
                        .size());
        Wells wide = Wells.standard()
                .depths(500, 900)
                .flowing(1e-3)
                .options(few)
                .string(new StringComponent("drill pipe", 10, 0.06, 0.05));
        assertTrue(loss(wide).aboveBit() < FIFTY_PSI);
        assertEquals(0, warnings(wide).size());
    }

    @Example
    void withoutReadingsTheLossIsNotInvented() {
        MethodOptions few = MethodOptions.DEFAULT.withDepths(1000, 1);
        SectionEnvelope counted = Wells.standard()
                .options(few.withAnnularFriction(AnnularFriction.COUNTED))
                .evaluate();
        Tolerance.NotAssessed not =
                assertInstanceOf(Tolerance.NotAssessed.class, counted.drilled().tolerance());
        assertEquals("section: mud: rheometer", not.missing());
        assertInstanceOf(AnnularLoss.NotAssessed.class, counted.annularLoss());
        SectionEnvelope neglected = Wells.standard().options(few).evaluate();
        assertInstanceOf(Tolerance.Finite.class, neglected.drilled().tolerance());
        assertFalse(neglected.warnings().stream().anyMatch(w -> w.subject().equals("annular friction")));
        assertTrue(neglected.assumptions().stream()
                .anyMatch(a -> a.subject().equals("annular friction")
                        && a.text().contains("missing: section: mud: rheometer")));
    }
}
