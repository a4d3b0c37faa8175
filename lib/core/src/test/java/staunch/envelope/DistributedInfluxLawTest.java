package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import staunch.fluid.GasComposition;
import staunch.fluid.RealGas;
import staunch.units.Physics;
import staunch.well.HoleInterval;
import staunch.well.StringComponent;

/** Gas spread evenly in mud. */
class DistributedInfluxLawTest {
    private static final double BRUTE_FORCE_TOLERANCE = 4e-3;
    private static final double CASING_BORE = 0.22049;

    @Provide
    Arbitrary<AnySection> sections() {
        return AnySection.any();
    }

    private static MethodOptions spread(double gasFraction) {
        return MethodOptions.DEFAULT.withInflux(new InfluxForm.Distributed(gasFraction));
    }

    @Property(tries = 60, seed = "1")
    void aFractionOfOneIsTheSingleBubble(@ForAll("sections") AnySection section) {
        Tolerance single = section.wells().drilled();
        Tolerance one = section.wells().options(spread(1)).drilled();
        double expected = AnySection.allowed(single);
        assertEquals(expected, AnySection.allowed(one), Double.isInfinite(expected) ? 0 : 1e-9 * expected);
        Tolerance nearly = section.wells().options(spread(1 - 1e-7)).drilled();
        assertEquals(expected, AnySection.allowed(nearly), Double.isInfinite(expected) ? 0 : 1e-4 * expected + 1e-6);
    }

    /**
     * In one cross-section, vertical and with the shoe weakest, spreading the same gas puts part of it deeper in the well at
     * any position of its top, where it is smaller and lightens less of the column below the shoe.
     */
    @Property(tries = 60, seed = "1")
    void spreadingTheGasNeverLowersTheToleranceInAUniformVerticalHole(
            @ForAll("sections") AnySection section, @ForAll @DoubleRange(min = 0.1, max = 0.95) double fraction) {
        double strength = section.mud() + section.window();
        double single = AnySection.allowed(uniform(section, strength).drilled());
        double spread = AnySection.allowed(
                uniform(section, strength).options(spread(fraction)).drilled());
        double less = AnySection.allowed(
                uniform(section, strength).options(spread(0.5 * (1 + fraction))).drilled());
        assertTrue(spread >= single * (1 - 1e-6), single + " single, spread " + spread);
        assertTrue(spread >= less * (1 - 1e-6), less + " less spread, spread " + spread);
    }

    private static Wells uniform(AnySection section, double strength) {
        return section.vertical()
                .wells()
                .strength(0, strength, 9000, strength)
                .string(new StringComponent("drill pipe", 10, Wells.PIPE, 0.1086))
                .hole(new HoleInterval(section.shoe(), section.bottom(), CASING_BORE));
    }

    /** Cell by cell from the lower end up: gas expands, mud does not; first amount whose top meets the limit. */
    @Example
    void agreesWithBruteForce() {
        double fraction = 0.5;
        Wells wells = Wells.standard().intensity(120).options(spread(fraction));
        Tolerance.Finite found = assertInstanceOf(Tolerance.Finite.class, wells.drilled());
        RealGas gas = RealGas.of(GasComposition.sweet(0.65));
        double pf = Wells.pressure(Wells.MUD + 120, Wells.BOTTOM);
        double tb = wells.temperature().at(Wells.BOTTOM);
        double mudVolumePerGasMass = (1 - fraction) / (fraction * gas.density(pf, tb));
        double area = Math.PI / 4 * (Wells.HOLE * Wells.HOLE - Wells.PIPE * Wells.PIPE);
        double cell = 0.5;
        double least = Double.POSITIVE_INFINITY;
        for (double lower = Wells.BOTTOM; lower > Wells.SHOE; lower -= cell) {
            double p = pf - Wells.MUD * Physics.GRAVITY * (Wells.BOTTOM - lower);
            double mass = 0;
            for (double top = lower; top > Wells.SHOE; top -= cell) {
                double t = wells.temperature().at(top - cell / 2);
                double middle = p;
                double gasHere = 0;
                double weight = 0;
                for (int k = 0; k < 3; k++) {
                    double gasVolume = 1 / gas.density(middle, t);
                    gasHere = area * cell / (gasVolume + mudVolumePerGasMass);
                    weight = gasHere * (1 + mudVolumePerGasMass * Wells.MUD) * Physics.GRAVITY / area;
                    middle = p - weight / 2;
                }
                double before = p - limit(top);
                double after = p - weight - limit(top - cell);
                if (after > 0) {
                    least = Math.min(least, before >= 0 ? mass : mass + gasHere * -before / (after - before));
                    break;
                }
                mass += gasHere;
                p -= weight;
            }
        }
        assertEquals(least, found.mass(), BRUTE_FORCE_TOLERANCE * least);
        double single =
                ToleranceTrapLawTest.volume(Wells.standard().intensity(120).drilled());
        assertTrue(found.volume() > 1.01 * single, found + " against " + single);
        // The volume is that of this gas where it stands at shut-in, a little above the influx.
        assertEquals(gas.density(pf, tb), found.mass() / found.volume(), 0.05 * gas.density(pf, tb));
    }

    private static double limit(double depth) {
        return Wells.pressure(1860, Wells.SHOE) + Wells.MUD * Physics.GRAVITY * (depth - Wells.SHOE);
    }

    @Property(tries = 40, seed = "1")
    void marginOfTheToleratedInfluxIsZero(
            @ForAll("sections") AnySection section, @ForAll @DoubleRange(min = 0.1, max = 0.9) double fraction) {
        Wells wells = section.wells().options(spread(fraction));
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

    @Property(tries = 40, seed = "1")
    void stableUnderMorePositions(
            @ForAll("sections") AnySection section, @ForAll @DoubleRange(min = 0.1, max = 0.9) double fraction) {
        Model model = section.wells().model();
        Kick kick = model.kick(Kick.Scenario.DRILLED, section.bottom());
        double[] allowed = new double[2];
        for (int i = 0; i < 2; i++) {
            ToleranceSolver solver = new ToleranceSolver(
                    model.gas().orElseThrow(),
                    section.wells().temperature(),
                    model.mudColumn().orElseThrow(),
                    spread(fraction),
                    new ToleranceSolver.Circulation(0, OptionalDouble.of(0)),
                    i == 0 ? ToleranceSolver.DEFAULT_SAMPLES : 300);
            allowed[i] = AnySection.allowed(solver.solve(model.hole(section.bottom()), Optional.empty(), kick));
        }
        assertEquals(allowed[1], allowed[0], Double.isInfinite(allowed[1]) ? 0 : 1e-6 * allowed[1]);
    }

    @Example
    void theResultSaysSo() {
        SectionEnvelope section =
                Wells.standard().options(spread(0.25).withDepths(1000, 1)).evaluate();
        assertTrue(section.warnings().stream().anyMatch(w -> w.subject().equals("influx")));
        assertTrue(section.assumptions().stream()
                .anyMatch(a -> a.subject().equals("influx") && a.text().contains("gas fraction 0.25")));
    }

    /** Near surface gas in mud swells fast; the way to the choke is walked all the same. */
    @Example
    void isFollowedToSurface() {
        Wells single = Wells.standard()
                .burst(40e6)
                .equipment(Wells.rated(35e6))
                .options(MethodOptions.DEFAULT.withDepths(1000, 1));
        double one = AnySection.allowed(
                single.evaluate().drilled().circulatedToSurface().tolerance());
        for (double fraction : new double[] {0.05, 0.2, 0.7}) {
            double spread = AnySection.allowed(single.options(spread(fraction).withDepths(1000, 1))
                    .evaluate()
                    .drilled()
                    .circulatedToSurface()
                    .tolerance());
            assertTrue(spread >= one, fraction + ": " + spread + " against " + one);
        }
    }
}
