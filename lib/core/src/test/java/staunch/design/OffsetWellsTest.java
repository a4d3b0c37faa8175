package staunch.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import staunch.envelope.DepthPoint;
import staunch.envelope.Drilling;
import staunch.envelope.IntensityLimit;
import staunch.envelope.KickResult;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.SurfaceLimit;
import staunch.envelope.Tolerance;
import staunch.envelope.Verdict;

/**
 * The open data of real wells through the whole library: every section gives an answer or a named reason, and the answers
 * agree with arithmetic that shares nothing with the library. What the data lack stands in {@link AssumedForOffsetWells}.
 */
class OffsetWellsTest {
    private static final double G = 9.80665;
    private static final double ATMOSPHERE = 101_325;

    /** Rounding of pressures up to 100 MPa summed in another order, Pa. */
    private static final double ROUNDING = 1e-3;

    /**
     * Of the hand formula: the ratio of two gas densities by another equation of state at up to 60 MPa (4 %), and one
     * density for the whole column (1 %).
     */
    private static final double HAND_TOLERANCE = 0.05;

    /** A section of a well with what went in and what came out. */
    private record Section(OffsetWellCase built, OffsetWellCase.Stretch stretch, SectionEnvelope envelope) {
        boolean shutIn() {
            return envelope.plan().drilling() == Drilling.SHUT_IN;
        }

        boolean hasMud() {
            return stretch.mudWeight().isPresent();
        }

        double mud() {
            return 1000 * stretch.mudWeight().orElseThrow().weight();
        }

        double shoe() {
            return built.path().verticalDepth(stretch.top());
        }

        double bottom() {
            return built.path().verticalDepth(stretch.bottom());
        }

        boolean vertical() {
            return shoe() == stretch.top() && bottom() == stretch.bottom();
        }

        /** Loss in the choke line of a floater, Pa. */
        double chokeFriction() {
            return built.well().floater() ? 1e5 : 0;
        }

        /** Reported leak-off values exposed in the section, each at the depth of its shoe. */
        private List<OffsetWell.Row> exposed() {
            return built.well().rows().stream()
                    .filter(r -> r.cased() && r.leakOff().isPresent())
                    .filter(r -> r.casingDepth() >= stretch.top() && r.casingDepth() <= stretch.bottom())
                    .toList();
        }

        /** The test of the shoe: the lowest reported from the shoe to 30 m below it. */
        Optional<OffsetWell.Row> shoeTest() {
            return exposed().stream()
                    .filter(r -> built.path().verticalDepth(r.casingDepth()) - shoe() <= 30)
                    .min((a, b) -> Double.compare(
                            a.leakOff().getAsDouble(), b.leakOff().getAsDouble()));
        }

        List<OffsetWell.Row> deeperTests() {
            return exposed().stream()
                    .filter(r -> built.path().verticalDepth(r.casingDepth()) - shoe() > 30)
                    .toList();
        }

        /** Formation MAASP by hand: the least (leak-off − mud) g z of the exposed tests. */
        OptionalDouble maaspByHand() {
            List<Double> values = new ArrayList<>();
            shoeTest().ifPresent(t -> {
                double over = 1000 * t.leakOff().getAsDouble() - mud();
                values.add(over * G * shoe());
                values.add(over * G * built.path().verticalDepth(t.casingDepth()));
            });
            for (OffsetWell.Row test : deeperTests()) {
                double over = 1000 * test.leakOff().getAsDouble() - mud();
                values.add(over * G * built.path().verticalDepth(test.casingDepth()));
            }
            return values.stream().mapToDouble(Double::doubleValue).min();
        }

        @Override
        public String toString() {
            return built.well().name() + ", " + stretch.name();
        }
    }

    private static final List<OffsetWell> WELLS = OffsetWell.all();
    private static List<Section> sections;

    @BeforeAll
    static void evaluate() {
        sections = WELLS.parallelStream()
                .map(w -> evaluated(new OffsetWellCase(w, Optional.empty())))
                .flatMap(List::stream)
                .toList();
    }

    private static List<Section> evaluated(OffsetWellCase built) {
        List<SectionEnvelope> envelopes = Study.of(built.build()).evaluate().sections();
        return IntStream.range(0, envelopes.size())
                .mapToObj(i -> new Section(built, built.stretches().get(i), envelopes.get(i)))
                .toList();
    }

    private static List<Section> where(Predicate<Section> condition) {
        return sections.stream().filter(condition).toList();
    }

    private static boolean answered(Tolerance tolerance) {
        return tolerance instanceof Tolerance.Finite
                || tolerance instanceof Tolerance.Unlimited
                || tolerance instanceof Tolerance.FailsOnIntensity;
    }

    /** Volume for comparison: none where the formation breaks without gas, infinite where there is no limit. */
    private static double volume(Tolerance tolerance) {
        if (tolerance instanceof Tolerance.Finite finite) {
            return finite.volume();
        }
        return tolerance instanceof Tolerance.Unlimited ? Double.POSITIVE_INFINITY : 0;
    }

    private static String reason(Tolerance tolerance) {
        if (tolerance instanceof Tolerance.NotAssessed not) {
            return not.reason() + (not.missing().isEmpty() ? "" : " (missing: " + not.missing() + ")");
        }
        return tolerance instanceof Tolerance.NotShutIn not ? not.drilling().title() : "";
    }

    @Test
    void readsTheQuirksOfTheData() {
        assertEquals(13.375, OffsetWell.inches("13 3/8").getAsDouble());
        assertEquals(9.625, OffsetWell.inches("9  5/8").getAsDouble());
        assertEquals(12.25, OffsetWell.inches("12 174").getAsDouble());
        assertEquals(7, OffsetWell.inches("7").getAsDouble());
        assertTrue(OffsetWell.inches("").isEmpty());
        assertEquals(75, WELLS.size());
        for (OffsetWell well : WELLS) {
            for (int i = 1; i < well.rows().size(); i++) {
                assertTrue(
                        well.rows().get(i - 1).drilledTo() <= well.rows().get(i).drilledTo(), well.name());
            }
            assertTrue(
                    well.rows().stream()
                            .allMatch(r -> r.leakOff().isEmpty() || r.leakOff().getAsDouble() > 0),
                    "zero means not reported");
        }
        OffsetWell twice =
                WELLS.stream().filter(w -> w.name().equals("2/5-8")).findFirst().orElseThrow();
        assertEquals(4, twice.rows().size(), "the 20 in string reported twice is one string");
    }

    @Test
    void everyWellIsBuiltAndEverySectionGivesAnAnswerOrANamedReason() throws IOException {
        assertEquals(
                75,
                sections.stream().map(s -> s.built().well().name()).distinct().count());
        for (Section s : sections) {
            for (KickResult kick : List.of(s.envelope().drilled(), s.envelope().swabbed())) {
                assertTrue(
                        answered(kick.tolerance()) || !reason(kick.tolerance()).isBlank(), s.toString());
                assertFalse(kick.verdict().statement().isBlank(), s.toString());
            }
        }
        write();
    }

    /** The answers of this run, for looking at. */
    private static void write() throws IOException {
        Path folder = Path.of(System.getProperty("basedir", "."), "target", "open-data");
        Files.createDirectories(folder);
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader(
                        "well",
                        "section",
                        "to m MD",
                        "leak-off g/cm3",
                        "mud g/cm3",
                        "drilled m3",
                        "swabbed m3",
                        "formation MAASP bar",
                        "verdict",
                        "reason")
                .get();
        try (CSVPrinter out = format.print(folder.resolve("sections.csv"), StandardCharsets.UTF_8)) {
            for (Section s : sections) {
                out.printRecord(
                        s.built().well().name(),
                        s.stretch().name(),
                        s.stretch().bottom(),
                        s.stretch().leakOff().isPresent()
                                ? s.stretch().leakOff().getAsDouble()
                                : "",
                        s.stretch().mudWeight().map(OffsetWell.Reading::weight).orElse(null),
                        answered(s.envelope().drilled().tolerance())
                                ? volume(s.envelope().drilled().tolerance())
                                : "",
                        answered(s.envelope().swabbed().tolerance())
                                ? volume(s.envelope().swabbed().tolerance())
                                : "",
                        formation(s).isPresent() ? formation(s).getAsDouble() / 1e5 : "",
                        s.envelope().verdict().statement(),
                        reason(s.envelope().drilled().tolerance()));
            }
        }
        List<String> unused = sections.stream()
                .map(Section::built)
                .distinct()
                .flatMap(b -> b.unused().stream())
                .toList();
        Files.write(folder.resolve("leak-off-without-hole.txt"), unused, StandardCharsets.UTF_8);
    }

    private static OptionalDouble formation(Section s) {
        return s.envelope()
                .maasp()
                .flatMap(m -> m.formation())
                .map(SurfaceLimit::pressure)
                .orElse(OptionalDouble.empty());
    }

    @Test
    void nineInTenSectionsWithALeakOffValueAreAnswered() {
        List<Section> tested = where(s -> s.stretch().leakOff().isPresent());
        long answered = tested.stream()
                .filter(s -> answered(s.envelope().drilled().tolerance())
                        && answered(s.envelope().swabbed().tolerance()))
                .count();
        assertTrue(tested.size() > 200, tested.size() + " sections");
        assertTrue(answered >= 0.9 * tested.size(), answered + " of " + tested.size());
        // The rest lack a mud reading in the section, and say so.
        for (Section s : tested) {
            Tolerance tolerance = s.envelope().drilled().tolerance();
            if (!answered(tolerance)) {
                assertFalse(s.hasMud(), s + ": " + reason(tolerance));
                assertEquals(
                        "section: mud",
                        assertInstanceOf(Tolerance.NotAssessed.class, tolerance).missing());
            }
        }
    }

    @Test
    void aLeakOffValueOfZeroIsMissing() {
        List<Section> untested = where(s -> s.shutIn()
                && s.hasMud()
                && s.shoeTest().isEmpty()
                && s.deeperTests().isEmpty());
        assertFalse(untested.isEmpty());
        for (Section s : untested) {
            Tolerance.NotAssessed not = assertInstanceOf(
                    Tolerance.NotAssessed.class, s.envelope().drilled().tolerance(), s.toString());
            assertTrue(not.missing().contains("strength"), not.missing());
            assertTrue(formation(s).isEmpty(), s.toString());
        }
        for (Section s : where(s -> !s.shutIn())) {
            assertInstanceOf(Tolerance.NotShutIn.class, s.envelope().drilled().tolerance());
            assertTrue(s.envelope().maasp().isEmpty());
        }
    }

    @Test
    void formationMaaspIsLeakOffLessMudOverTheDepth() {
        int positive = 0;
        for (Section s : where(s -> s.shutIn() && s.hasMud() && s.maaspByHand().isPresent())) {
            double hand = s.maaspByHand().getAsDouble();
            double computed = formation(s).orElseThrow();
            assertEquals(hand, computed, ROUNDING, s.toString());
            if (s.vertical() && s.deeperTests().isEmpty()) {
                // At the shoe of a vertical well straight from the figures of the data.
                OffsetWell.Row test = s.shoeTest().orElseThrow();
                double over = test.leakOff().getAsDouble()
                        - s.stretch().mudWeight().get().weight();
                double depth = over > 0 ? s.stretch().top() : test.casingDepth();
                assertEquals(1000 * over * G * depth, computed, ROUNDING, s.toString());
                assertEquals(over > 0, computed > 0, s.toString());
                positive += over > 0 ? 1 : 0;
            }
        }
        assertTrue(positive > 40, positive + " sections with the mud below the leak-off value");
    }

    @Test
    void theFormationBreaksWithoutGasExactlyWhereTheIntensityExceedsTheMaasp() {
        for (Section s : where(s -> s.shutIn() && s.hasMud() && s.maaspByHand().isPresent())) {
            double maasp = s.maaspByHand().getAsDouble();
            double added = AssumedForOffsetWells.INTENSITY * G * s.bottom();
            double drilled = Math.max(added, s.chokeFriction());
            fails(s, s.envelope().drilled().tolerance(), drilled - maasp);
            fails(s, s.envelope().swabbed().tolerance(), s.chokeFriction() - maasp);
            IntensityLimit.Largest zeroGain =
                    assertInstanceOf(IntensityLimit.Largest.class, s.envelope().zeroGainMargin());
            // Where the loss in the choke line alone breaks the formation, circulating does so whatever the kick.
            double left = s.chokeFriction() > maasp ? maasp - s.chokeFriction() : maasp;
            assertEquals(left / (G * s.bottom()), zeroGain.intensity(), 1e-6, s.toString());
        }
    }

    private static void fails(Section s, Tolerance tolerance, double shortfall) {
        if (Math.abs(shortfall) > ROUNDING) {
            assertEquals(shortfall > 0, tolerance instanceof Tolerance.FailsOnIntensity, s + ": " + tolerance);
        }
        if (tolerance instanceof Tolerance.FailsOnIntensity fails
                && fails.stage().moment().title().startsWith("shut in")) {
            assertTrue(fails.shortfall() > 0, s.toString());
        }
    }

    @Test
    void tolerancesAreNeverNegativeAndASwabbedInfluxMayBeLarger() {
        int compared = 0;
        for (Section s : where(s -> answered(s.envelope().drilled().tolerance()))) {
            for (DepthPoint point : s.envelope().alongSection()) {
                if (answered(point.drilled())) {
                    double drilled = volume(point.drilled());
                    double swabbed = volume(point.swabbed());
                    assertTrue(drilled >= 0, s + " at " + point.measuredDepth());
                    assertTrue(
                            swabbed >= drilled * (1 - 1e-9),
                            s + " at " + point.measuredDepth() + ": " + swabbed + " < " + drilled);
                    compared++;
                } else {
                    assertFalse(reason(point.drilled()).isBlank());
                }
            }
            if (s.envelope().swabbed().tolerance() instanceof Tolerance.Unlimited unlimited) {
                assertTrue(unlimited.atLeast() > 0, s.toString());
            }
        }
        assertTrue(compared > 5000, compared + " depths");
    }

    @Test
    void theVerdictSaysWhatIsNotKnown() {
        int shoeOnly = 0;
        for (Section s : where(s -> answered(s.envelope().drilled().tolerance()))) {
            KickResult drilled = s.envelope().drilled();
            String statement = drilled.verdict().statement();
            boolean holdsToSurface =
                    volume(drilled.circulatedToSurface().tolerance()) >= AssumedForOffsetWells.REQUIRED;
            if (volume(drilled.tolerance()) < AssumedForOffsetWells.REQUIRED || !holdsToSurface) {
                assertEquals(Verdict.Outcome.FAILS, drilled.verdict().outcome(), s.toString());
            } else if (s.shoeTest().isPresent() && s.deeperTests().isEmpty()) {
                assertEquals("holds at the shoe; open hole not assessed", statement, s.toString());
                shoeOnly++;
            } else {
                assertEquals(
                        "holds where the strength is known; part of the open hole not assessed",
                        statement,
                        s.toString());
            }
            assertFalse(
                    s.envelope().verdict().outcome() == Verdict.Outcome.HOLDS,
                    "a plain \"holds\" is never said of an open hole of which only tests are known");
        }
        assertTrue(shoeOnly > 20, shoeOnly + " sections");
    }

    /**
     * With one annulus all the way down, each metre drilled brings a higher kick pressure against the same shoe: the gas
     * that the weak point tolerates never grows, nor does its volume.
     */
    @Test
    void aDeeperUniformHoleToleratesNoMoreGas() {
        List<Section> uniform = WELLS.parallelStream()
                .map(w -> evaluated(new OffsetWellCase(w, Optional.of(AssumedForOffsetWells.uniformString()))))
                .flatMap(List::stream)
                .filter(s -> s.vertical()
                        && s.hasMud()
                        && s.shoeTest().isPresent()
                        && s.deeperTests().isEmpty()
                        && s.envelope().plan().hole().size() <= 2
                        && s.envelope().plan().hole().get(0).bottomDepth()
                                        - s.stretch().top()
                                < 20)
                .toList();
        int compared = 0;
        for (Section s : uniform) {
            double last = Double.POSITIVE_INFINITY;
            double lastVolume = Double.POSITIVE_INFINITY;
            for (DepthPoint point : s.envelope().alongSection()) {
                if (point.measuredDepth() < s.envelope().plan().hole().get(0).bottomDepth()) {
                    continue;
                }
                double mass =
                        point.drilled() instanceof Tolerance.Finite finite ? finite.mass() : volume(point.drilled());
                if (point.drilled() instanceof Tolerance.Finite && last < Double.POSITIVE_INFINITY) {
                    compared++;
                }
                String where = s + " at " + point.measuredDepth();
                assertTrue(mass <= last * (1 + 1e-6), where + ": mass " + mass + " after " + last);
                assertTrue(
                        volume(point.drilled()) <= lastVolume * (1 + 1e-6),
                        where + ": volume " + volume(point.drilled()) + " after " + lastVolume);
                last = mass;
                lastVolume = volume(point.drilled());
            }
        }
        assertTrue(compared > 300, compared + " pairs of depths in " + uniform.size() + " sections");
    }

    /**
     * By hand: the gas column that the shoe bears, H = (MAASP − intensity) / (g (ρ_mud − ρ_gas)) with one gas density, filled
     * into the annulus beside drill pipe below the rat hole and brought back to bottom by p V = Z n R T. The gas by an
     * equation of state and pseudo-criticals that the library does not hold.
     */
    @Test
    void agreesWithTheHandFormula() {
        int compared = 0;
        for (Section s : where(s -> s.vertical() && s.hasMud() && s.stretch().hole() > 8)) {
            Tolerance tolerance = s.envelope().drilled().tolerance();
            if (!(tolerance instanceof Tolerance.Finite finite)
                    || !finite.weakPoint().name().startsWith("shoe")) {
                continue;
            }
            double newHole = s.envelope().plan().hole().get(0).bottomDepth();
            double aboveCollars = s.bottom() - AssumedForOffsetWells.COLLARS - 100;
            boolean uniform = finite.stage().gasTop() <= newHole + 0.01
                    && finite.stage().gasTop() >= newHole - 0.01
                    && finite.stage().gasBottom() < aboveCollars;
            // A column of some metres is a small difference of large pressures.
            if (!uniform || finite.stage().gasBottom() - finite.stage().gasTop() < 50) {
                continue;
            }
            double maasp = (1000 * s.shoeTest().orElseThrow().leakOff().getAsDouble() - s.mud()) * G * s.shoe();
            double intensity = AssumedForOffsetWells.INTENSITY * G * s.bottom();
            double atShoe =
                    ATMOSPHERE + 1000 * s.shoeTest().orElseThrow().leakOff().getAsDouble() * G * s.shoe();
            double atTop = atShoe + s.mud() * G * (newHole - s.shoe());
            double onBottom = ATMOSPHERE + (s.mud() + AssumedForOffsetWells.INTENSITY) * G * s.bottom();
            double head = maasp - intensity;
            double guess = head / (G * (s.mud() - HandGas.density(atTop, temperature(s, newHole))));
            double middle = newHole + guess / 2;
            double gas = HandGas.density(
                    atTop + HandGas.density(atTop, temperature(s, newHole)) * G * guess / 2, temperature(s, middle));
            double height = head / (G * (s.mud() - gas));
            double area = Math.PI / 4 * (square(s.stretch().hole()) - square(5)) * 0.0254 * 0.0254;
            double hand = area * height * gas / HandGas.density(onBottom, temperature(s, s.bottom()));
            assertEquals(hand, finite.volume(), HAND_TOLERANCE * hand, s.toString());
            compared++;
        }
        assertTrue(compared >= 12, compared + " sections");
    }

    /** The assumed temperature, written down once more: 5 °C at the seabed to the reported one at total depth. */
    private static double temperature(Section s, double depth) {
        OffsetWell well = s.built().well();
        double seabed = well.kellyBushing() + well.waterDepth();
        double bottom = Math.max(
                well.totalDepth(),
                s.built().stretches().get(s.built().stretches().size() - 1).bottom());
        double reached = well.bottomHoleTemperature().orElse(5 + 0.035 * (bottom - seabed));
        return 273.15 + 5 + (reached - 5) * (depth - seabed) / (bottom - seabed);
    }

    private static double square(double x) {
        return x * x;
    }

    /**
     * Density of gas of gravity 0.65 by the equation of Peng and Robinson (1976) with Standing's pseudo-criticals (1977) and
     * the acentric factor of such a gas, all from memory.
     */
    private static final class HandGas {
        private static final double R = 8.314462618;
        private static final double MOLAR_MASS = 0.65 * 0.028964;
        private static final double CRITICAL_TEMPERATURE = (168 + 325 * 0.65 - 12.5 * 0.65 * 0.65) / 1.8;
        private static final double CRITICAL_PRESSURE = (677 + 15 * 0.65 - 37.5 * 0.65 * 0.65) * 6894.757;
        private static final double ACENTRIC = 0.025;

        static double density(double pressure, double temperature) {
            double kappa = 0.37464 + 1.54226 * ACENTRIC - 0.26992 * ACENTRIC * ACENTRIC;
            double alpha = square(1 + kappa * (1 - Math.sqrt(temperature / CRITICAL_TEMPERATURE)));
            double attraction = 0.45724 * square(R * CRITICAL_TEMPERATURE) / CRITICAL_PRESSURE * alpha;
            double covolume = 0.0778 * R * CRITICAL_TEMPERATURE / CRITICAL_PRESSURE;
            double a = attraction * pressure / square(R * temperature);
            double b = covolume * pressure / (R * temperature);
            double z = 1 + b;
            for (int i = 0; i < 100; i++) {
                double f = z * z * z - (1 - b) * z * z + (a - 3 * b * b - 2 * b) * z - (a * b - b * b - b * b * b);
                double slope = 3 * z * z - 2 * (1 - b) * z + a - 3 * b * b - 2 * b;
                z -= f / slope;
            }
            return pressure * MOLAR_MASS / (z * R * temperature);
        }
    }
}
