package staunch.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class UnitsLawTest {
    /** A symbol with a measure that it holds. */
    record Pair(String symbol, Measure measure) {}

    @Provide
    Arbitrary<Pair> pairs() {
        List<Pair> all = new ArrayList<>();
        for (String symbol : UnitSymbol.symbols()) {
            for (Measure measure : Measure.values()) {
                if (UnitSymbol.named(symbol, measure) != null) {
                    all.add(new Pair(symbol, measure));
                }
            }
        }
        return Arbitraries.of(all);
    }

    @Property(tries = 1000, seed = "1")
    void thereAndBackIsTheSame(@ForAll("pairs") Pair pair, @ForAll @DoubleRange(min = 0, max = 1e5) double value) {
        UnitSymbol.LinearMap map =
                UnitSymbol.named(pair.symbol(), pair.measure()).toSi(pair.measure());
        double scale = Math.abs(map.offset() / map.factor()) + value;
        assertEquals(value, map.fromSi(map.toSi(value)), 1e-14 * scale + 1e-300);
        assertTrue(map.factor() > 0);
    }

    @Property(tries = 500, seed = "1")
    void whatIsPrintedIsReadBack(
            @ForAll("systems") UnitSystem system,
            @ForAll Measure measure,
            @ForAll @DoubleRange(min = 1, max = 1e4) double shown) {
        double si = system.toSi(shown, measure);
        String text = system.text(si, measure);
        if (measure == Measure.PRESSURE_ABSOLUTE && !system.symbol(measure).endsWith("a")) {
            return;
        }
        double back = Quantity.parse(text).si(measure);
        double half = 0.5 * Math.pow(10, -system.decimals(measure));
        assertEquals(shown, system.fromSi(back, measure), half * (1 + 1e-6) + 1e-9 * shown);
    }

    @Provide
    Arbitrary<UnitSystem> systems() {
        return Arbitraries.of(UnitSystem.FIELD, UnitSystem.METRIC, UnitSystem.MIXED);
    }

    @Property(tries = 1000, seed = "1")
    void aValueThatWasReadIsPrintedAsItWasReadWhicheverWayItIsRounded(
            @ForAll("systems") UnitSystem system,
            @ForAll Measure measure,
            @ForAll @IntRange(min = 0, max = 999_999) int digits) {
        BigDecimal written = BigDecimal.valueOf(digits, system.decimals(measure));
        double si = system.toSi(written.doubleValue(), measure);
        assertEquals(written.toPlainString(), system.number(si, measure, RoundingMode.FLOOR), measure.toString());
        assertEquals(written.toPlainString(), system.number(si, measure, RoundingMode.CEILING), measure.toString());
    }

    @Property(tries = 500, seed = "1")
    void floorIsNotAboveAndCeilingNotBelow(
            @ForAll("systems") UnitSystem system, @ForAll @DoubleRange(min = -1e8, max = 1e8) double si) {
        double floor = Double.parseDouble(system.number(si, Measure.PRESSURE_GAUGE, RoundingMode.FLOOR));
        double ceiling = Double.parseDouble(system.number(si, Measure.PRESSURE_GAUGE, RoundingMode.CEILING));
        double shown = system.fromSi(si, Measure.PRESSURE_GAUGE);
        // Twelve digits count, so that a value read from text is not moved by the rounding of its conversion.
        double slack = 1e-11 * Math.abs(shown);
        assertTrue(floor <= shown + slack && shown <= ceiling + slack);
    }

    @Property(tries = 300, seed = "1")
    void gaugeAndAbsoluteLieOneAtmosphereApart(
            @ForAll("pressureUnits") String unit, @ForAll @DoubleRange(min = 2, max = 1e4) double value) {
        Quantity quantity = Quantity.of(value, unit);
        assertEquals(
                Physics.ATMOSPHERE,
                quantity.si(Measure.PRESSURE_ABSOLUTE) - quantity.si(Measure.PRESSURE_GAUGE),
                1e-15 * quantity.si(Measure.PRESSURE_ABSOLUTE));
    }

    @Provide
    Arbitrary<String> pressureUnits() {
        return Arbitraries.of(
                "psi", "bar", "kPa", "MPa", "psig", "barg", "kPag", "MPag", "psia", "bara", "kPaa", "MPaa");
    }
}
