package staunch.well;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class AnnulusLawTest {
    /** Rounding of sums of some hundred cubic metres, and the same divided by the smallest area (0.01 m²). */
    private static final double VOLUME_ROUNDING = 1e-11;

    private static final double DEPTH_ROUNDING = 1e-8;

    @Provide
    Arbitrary<Annulus> annuli() {
        return Combinators.combine(
                        Arbitraries.doubles().between(500, 2500),
                        Arbitraries.doubles().between(0, 300),
                        Arbitraries.doubles().between(0.26, 0.40),
                        Arbitraries.doubles().between(50, 400),
                        Arbitraries.doubles().between(0, 800))
                .as((shoe, top, washout, collars, offBottom) ->
                        Wells.annulus(new Wells.Shape(shoe, top, washout), collars, shoe + 1000 - offBottom));
    }

    @Property(tries = 300, seed = "1")
    void volumesAdd(
            @ForAll("annuli") Annulus annulus,
            @ForAll @DoubleRange(min = 0, max = 1) double a,
            @ForAll @DoubleRange(min = 0, max = 1) double b) {
        double x = at(annulus, Math.min(a, b));
        double y = at(annulus, Math.max(a, b));
        double parts = annulus.volumeBetween(annulus.top(), x)
                + annulus.volumeBetween(x, y)
                + annulus.volumeBetween(y, annulus.bottom());
        assertEquals(annulus.volume(), parts, VOLUME_ROUNDING);
        assertTrue(annulus.volumeBetween(x, y) >= 0);
    }

    @Property(tries = 300, seed = "1")
    void fillingAndMeasuringAreInverse(
            @ForAll("annuli") Annulus annulus,
            @ForAll @DoubleRange(min = 0, max = 1) double a,
            @ForAll @DoubleRange(min = 0, max = 1) double b) {
        double x = at(annulus, Math.min(a, b));
        double y = at(annulus, Math.max(a, b));
        double volume = annulus.volumeBetween(x, y);
        assertEquals(x, annulus.topOfVolume(y, volume), DEPTH_ROUNDING);
        assertEquals(y, annulus.bottomOfVolume(x, volume), DEPTH_ROUNDING);
    }

    @Property(tries = 100, seed = "1")
    void intervalsAreContiguousAndOfOneCrossSection(@ForAll("annuli") Annulus annulus) {
        double sum = 0;
        for (int i = 0; i < annulus.count(); i++) {
            assertTrue(annulus.top(i) < annulus.bottom(i));
            if (i > 0) {
                assertEquals(annulus.bottom(i - 1), annulus.top(i), 0);
            }
            double middle = 0.5 * (annulus.top(i) + annulus.bottom(i));
            assertEquals(annulus.area(i), annulus.areaAt(middle), 0);
            double d = annulus.holeDiameter(i);
            double p = annulus.pipeDiameter(i);
            assertEquals(Math.PI / 4 * (d * d - p * p), annulus.area(i), 1e-15);
            sum += annulus.area(i) * (annulus.bottom(i) - annulus.top(i));
        }
        assertEquals(annulus.volume(), sum, VOLUME_ROUNDING);
    }

    @Property(tries = 100, seed = "1")
    void emptyHoleIsAnnulusPlusPipe(@ForAll @DoubleRange(min = 100, max = 2900) double bit) {
        Wells.Shape shape = new Wells.Shape(2000, 0, 0.3);
        Annulus with = Wells.annulus(shape, 200, bit);
        Annulus without = Wells.annulus(shape, DrillString.NONE, bit);
        double pipe = 0;
        for (int i = 0; i < with.string().count(); i++) {
            double d = with.string().component(i).outsideDiameter();
            pipe += Math.PI
                    / 4
                    * d
                    * d
                    * (with.string().bottom(i) - with.string().top(i));
        }
        assertEquals(without.volume(), with.volume() + pipe, VOLUME_ROUNDING);
    }

    private static double at(Annulus annulus, double share) {
        return annulus.top() + share * (annulus.bottom() - annulus.top());
    }
}
