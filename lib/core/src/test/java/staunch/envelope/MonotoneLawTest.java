package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import staunch.envelope.MethodOptions.DrilledPressure;
import staunch.well.HoleInterval;
import staunch.well.WellPath;

/** What makes a well weaker never raises its tolerance. */
class MonotoneLawTest {
    /** To which a tolerance is solved. */
    private static final double STABLE = 1e-6;

    /** Inside diameter of the casing of {@link Wells}. */
    private static final double CASING_BORE = 0.22049;

    @Provide
    Arbitrary<AnySection> sections() {
        return AnySection.any();
    }

    private static void neverMore(Tolerance strong, Tolerance weak) {
        double most = AnySection.allowed(strong);
        assertTrue(AnySection.allowed(weak) <= most * (1 + STABLE), strong + " then " + weak);
    }

    @Property(tries = 200, seed = "1")
    void toleranceNeverRisesWithIntensity(
            @ForAll("sections") AnySection section, @ForAll @DoubleRange(min = 0.01, max = 60) double more) {
        neverMore(
                section.wells().drilled(),
                section.wells().intensity(section.intensity() + more).drilled());
        neverMore(section.wells().swabbed(), section.wells().drilled());
    }

    @Property(tries = 200, seed = "1")
    void toleranceNeverRisesWithPorePressureWhereItGoverns(
            @ForAll("sections") AnySection section,
            @ForAll @DoubleRange(min = 0, max = 100) double above,
            @ForAll @DoubleRange(min = 0.01, max = 60) double more) {
        double high = section.mud() + section.intensity() + above;
        neverMore(
                section.wells().highPore(high).drilled(),
                section.wells().highPore(high + more).drilled());
        MethodOptions options =
                MethodOptions.DEFAULT.withDrilledPressure(DrilledPressure.INTENSITY_ABOVE_PORE_PRESSURE);
        neverMore(
                section.wells().options(options).highPore(section.mud() + above).drilled(),
                section.wells()
                        .options(options)
                        .highPore(section.mud() + above + more)
                        .drilled());
    }

    /** Hole as wide as the casing, pipe of one diameter: the shoe alone moves. */
    @Property(tries = 200, seed = "1")
    void toleranceNeverRisesWithAShallowerShoeAtEqualCrossSection(
            @ForAll("sections") AnySection section, @ForAll @DoubleRange(min = 1, max = 1000) double raised) {
        WellPath path = WellPath.of(section.stations());
        double bottom = section.bottom();
        double shallower = section.shoe() - raised;
        neverMore(
                section.wells()
                        .path(path)
                        .hole(new HoleInterval(section.shoe(), bottom, CASING_BORE))
                        .drilled(),
                section.wells()
                        .path(path)
                        .depths(shallower, bottom)
                        .hole(new HoleInterval(shallower, bottom, CASING_BORE))
                        .drilled());
    }

    @Property(tries = 200, seed = "1")
    void toleranceNeverRisesWithAWeakerShoe(
            @ForAll("sections") AnySection section,
            @ForAll @DoubleRange(min = 0, max = 1) double share,
            @ForAll @DoubleRange(min = 0.1, max = 50) double weaker) {
        double z = WellPath.of(section.stations()).verticalDepth(section.shoe());
        double strong = section.mud() + share * section.window();
        neverMore(
                section.wells().zone("shoe", z - 1, z + 1, strong).drilled(),
                section.wells().zone("shoe", z - 1, z + 1, strong - weaker).drilled());
        neverMore(
                section.wells().drilled(),
                section.wells().zone("shoe", z - 1, z + 1, strong).drilled());
    }
}
