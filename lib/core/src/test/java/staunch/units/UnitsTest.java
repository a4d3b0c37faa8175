package staunch.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static staunch.units.Quantities.ft;
import static staunch.units.Quantities.ppg;
import static staunch.units.Quantities.psi;
import static staunch.units.Quantities.quantity;

import java.io.IOException;
import java.lang.reflect.Method;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.measure.IncommensurableException;
import javax.measure.format.UnitFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tech.units.indriya.format.SimpleUnitFormat;

class UnitsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "9.6 ppg | 9.6 | ppg",
                "9.6ppg | 9.6 | ppg",
                "  12.25  in | 12.25 | in",
                "13 3/8 in | 13.375 | in",
                "13-3/8 in | 13.375 | in",
                "7/8 in | 0.875 | in",
                "-1 1/2 in | -1.5 | in",
                "1e-9 1/Pa | 1e-9 | 1/Pa",
                "4.5E-6 1/degF | 4.5e-6 | 1/degF",
                ".5 m | 0.5 | m",
                "5. m | 5 | m",
                "-5 °C | -5 | °C",
                "30 deg/100ft | 30 | deg/100ft",
                "1.2 bar/10m | 1.2 | bar/10m",
            })
    void readsWhatPeopleWrite(String text, double value, String unit) {
        assertEquals(new Quantity(value, unit), Quantity.parse(text));
    }

    @Test
    void aNumberAloneIsAPureNumber() {
        assertEquals(0.65, Quantity.parse("0.65").si(Measure.NUMBER));
        assertEquals(0.8, Quantity.parse("80 %").si(Measure.NUMBER), 1e-15);
        assertEquals(2, Quantity.parse("2 1").si(Measure.NUMBER));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "9,6 ppg | is not a quantity: \"9,6 ppg\"; write the decimal mark as a point, without thousands"
                        + " separators",
                "9,6ppg | is not a quantity: \"9,6ppg\"; write the decimal mark as a point, without thousands separators",
                "1,000 psi | is not a quantity: \"1,000 psi\"; write the decimal mark as a point, without thousands"
                        + " separators",
                "ppg | is not a quantity: \"ppg\"; write a number and a unit, such as 9.6 ppg",
                "NaN ppg | is not a quantity: \"NaN ppg\"; write a number and a unit, such as 9.6 ppg",
                "9.6 ppg mud | is not a quantity: \"9.6 ppg mud\"; write a number and a unit, such as 9.6 ppg",
                "12.25 1/8 in | is not a quantity: \"12.25 1/8 in\"; write a number and a unit, such as 9.6 ppg",
                "1.2.3 m | is not a quantity: \"1.2.3 m\"; write a number and a unit, such as 9.6 ppg",
                "1e999 m | is not a finite number: Infinity; write a number and a unit, such as 9.6 ppg",
                "3/0 in | has a fraction with denominator zero: \"3/0 in\"; write a number and a unit, such as 9.6 ppg",
                "3 furlong | has an unknown unit \"furlong\"; docs/units.md lists the units",
                "9.6 pgg | has an unknown unit \"pgg\"; is \"ppg\" meant?",
                "500 pis | has an unknown unit \"pis\"; is \"psi\" meant?",
                "3000 PSI | has an unknown unit \"PSI\"; write \"psi\"",
                "8 inches | has an unknown unit \"inches\"; write \"in\"",
                "8\" | has an unknown unit \"\"\"; write \"in\"",
                "3 m^3 | has an unknown unit \"m^3\"; write \"m3\"",
                "70 F | has an unknown unit \"F\"; write \"degF\"",
            })
    void tellsWhatIsWrongWithAText(String text, String message) {
        UnitFault fault = assertThrows(UnitFault.class, () -> Quantity.parse("mud density", text));
        assertEquals("mud density " + message, fault.getMessage());
        assertEquals("mud density", fault.field());
    }

    @Test
    void anUnknownUnitSystemIsAnsweredWithTheKnownOnes() {
        assertEquals(UnitSystem.METRIC, UnitSystem.of("metric"));
        assertEquals(
                "unit system \"felid\" is not known; use one of field, metric, mixed, si",
                assertThrows(InputFault.class, () -> UnitSystem.of("felid")).getMessage());
    }

    @Test
    void anEmptyTextIsNoQuantity() {
        assertEquals(
                "depth is empty; write a number and a unit, such as 9.6 ppg",
                assertThrows(UnitFault.class, () -> Quantity.parse("depth", " "))
                        .getMessage());
        assertThrows(UnitFault.class, () -> Quantity.parse(null));
        assertThrows(UnitFault.class, () -> Quantity.of(1, "nonsense"));
        assertThrows(UnitFault.class, () -> Quantity.of(Double.NaN, "m"));
        assertThrows(UnitFault.class, () -> Quantity.of(1, null));
    }

    @Test
    void aWrongDimensionIsRefusedWithTheUsualUnits() {
        assertEquals(
                "mud density \"10 psi\" is not a density; use one of kg/m3, sg, ppg, lb/ft3",
                assertThrows(UnitFault.class, () -> psi(10).si("mud density", Measure.DENSITY))
                        .getMessage());
        assertEquals(
                "depth \"3000\" has no unit of depth; use one of m, ft",
                assertThrows(UnitFault.class, () -> quantity("3000").si("depth", Measure.DEPTH))
                        .getMessage());
        assertThrows(UnitFault.class, () -> quantity("30").si(Measure.ANGLE));
        assertThrows(UnitFault.class, () -> quantity("30 deg").si(Measure.NUMBER));
        assertThrows(UnitFault.class, () -> quantity("100 psia").si(Measure.PRESSURE_DIFFERENCE));
        assertThrows(UnitFault.class, () -> quantity("100 psig").si(Measure.PRESSURE_DIFFERENCE));
        assertThrows(UnitFault.class, () -> quantity("80 psig").si(Measure.STRESS));
    }

    @Test
    void everyMeasureHasUsualUnitsThatHoldIt() {
        for (Measure measure : Measure.values()) {
            assertFalse(measure.usualUnits().isEmpty(), measure.toString());
            for (String unit : measure.usualUnits()) {
                boolean absolute = measure == Measure.PRESSURE_ABSOLUTE;
                assertTrue(Quantity.of(1, unit).holds(measure) || absolute, measure + " " + unit);
                assertTrue(Double.isFinite(Quantity.of(1, unit).si(measure)));
            }
            assertNotNull(UnitSymbol.named(measure.siUnit(), measure), measure.toString());
            assertEquals(
                    1, UnitSymbol.named(measure.siUnit(), measure).toSi(measure).factor(), 0);
        }
    }

    /** A cubic foot holds 2.831 685e-2 m³ (NIST SP 811, appendix B.8, from memory). */
    @Test
    void aGasRateIsOfGasAtStandardConditions() {
        assertEquals(1e6 * 2.831685e-2 / 86_400, quantity("1 MMscf/d").si(Measure.GAS_RATE), 1e-7);
        assertThrows(UnitFault.class, () -> quantity("1 MMscf/d").si(Measure.FLOW_RATE));
        assertEquals("MMscf/d", UnitSystem.FIELD.label(Measure.GAS_RATE));
    }

    @Test
    void pressureWithoutAKindIsGauge() {
        double atmosphere = 101_325;
        double psi = 6894.757293168361;
        assertEquals(500 * psi, psi(500).si(Measure.PRESSURE_GAUGE), 1e-6);
        assertEquals(500 * psi + atmosphere, psi(500).si(Measure.PRESSURE_ABSOLUTE), 1e-6);
        assertEquals(500 * psi, quantity("500 psia").si(Measure.PRESSURE_ABSOLUTE), 1e-6);
        assertEquals(500 * psi - atmosphere, quantity("500 psia").si(Measure.PRESSURE_GAUGE), 1e-6);
        assertEquals(500 * psi + atmosphere, quantity("500 psig").si(Measure.PRESSURE_ABSOLUTE), 1e-6);
        assertEquals(500 * psi, psi(500).si(Measure.PRESSURE_DIFFERENCE), 1e-6);
        // Their names end in "a" and yet they say no more than psi does.
        assertEquals(35e6 + atmosphere, quantity("35 MPa").si(Measure.PRESSURE_ABSOLUTE), 1e-6);
        assertEquals(35e6 + atmosphere, quantity("35000 kPa").si(Measure.PRESSURE_ABSOLUTE), 1e-6);
        assertEquals(35e6 + atmosphere, quantity("35e6 Pa").si(Measure.PRESSURE_ABSOLUTE), 1e-6);
        assertEquals(35e6, quantity("35 MPaa").si(Measure.PRESSURE_ABSOLUTE), 1e-6);
        assertEquals(35e6, quantity("35000 kPaa").si(Measure.PRESSURE_ABSOLUTE), 1e-6);
    }

    @Test
    void aTemperatureIsAPointOrADifference() {
        assertEquals(288.15, quantity("15 degC").si(Measure.TEMPERATURE), 1e-12);
        assertEquals(15, quantity("15 degC").si(Measure.TEMPERATURE_DIFFERENCE), 1e-12);
        assertEquals(288.15, quantity("59 °F").si(Measure.TEMPERATURE), 1e-12);
        assertEquals(5, quantity("9 degF").si(Measure.TEMPERATURE_DIFFERENCE), 1e-12);
        assertEquals(0.03, quantity("3 degC/100m").si(Measure.TEMPERATURE_GRADIENT), 1e-15);
        assertEquals(5.0 / 9 / 30.48, quantity("1 degF/100ft").si(Measure.TEMPERATURE_GRADIENT), 1e-15);
    }

    @Test
    void nothingIsColderThanAbsoluteZeroOrBelowVacuum() {
        assertEquals(
                "bottom-hole temperature -26.85 K must be at least 0 K",
                assertThrows(
                                RangeFault.class,
                                () -> quantity("-300 degC").si("bottom-hole temperature", Measure.TEMPERATURE))
                        .getMessage());
        assertThrows(RangeFault.class, () -> psi(-20).si(Measure.PRESSURE_ABSOLUTE));
        assertEquals(-20 * 6894.757293168361, psi(-20).si(Measure.PRESSURE_DIFFERENCE), 1e-6);
    }

    @Test
    void anEquivalentDensityMayBeWrittenAsAGradient() {
        assertEquals(1000, quantity("9.80665 kPa/m").si(Measure.EQUIVALENT_DENSITY), 1e-9);
        assertEquals(
                ppg(10).si(Measure.DENSITY),
                quantity("0.519480519480519 psi/ft").si(Measure.EQUIVALENT_DENSITY),
                1e-9);
        assertThrows(UnitFault.class, () -> quantity("0.52 psi/ft").si(Measure.DENSITY));
    }

    @ParameterizedTest
    @CsvSource({
        "kPa/m, Pa/m, PRESSURE_GRADIENT",
        "g/cm³, kg/m³, DENSITY",
        "l/min, m³/s, FLOW_RATE",
        "mPa·s, Pa·s, VISCOSITY"
    })
    void factorsAgreeWithUnitsParsedByTheUnitLibrary(String unit, String si, Measure measure)
            throws IncommensurableException {
        UnitFormat format = SimpleUnitFormat.getInstance();
        double factor = format.parse(unit).getConverterToAny(format.parse(si)).convert(1.0);
        assertEquals(factor, Quantity.of(1, unit.replace('·', '.')).si(measure), 1e-15 * factor);
    }

    @Test
    void printsInTheUnitsOfTheSystem() {
        double si = ppg(9.6).si(Measure.DENSITY);
        assertEquals("9.60 ppg", UnitSystem.FIELD.text(si, Measure.DENSITY, RoundingMode.FLOOR));
        assertEquals("9.60 ppg", UnitSystem.FIELD.text(si, Measure.DENSITY, RoundingMode.CEILING));
        assertEquals("1150 kg/m³", UnitSystem.METRIC.text(si, Measure.DENSITY));
        assertEquals("9800 ft", UnitSystem.FIELD.text(ft(9800).si(Measure.DEPTH), Measure.DEPTH));
        assertEquals("0", UnitSystem.FIELD.number(-1, Measure.PRESSURE_GAUGE));
        assertEquals("-4", UnitSystem.FIELD.number(-3.4 * 6894.757, Measure.PRESSURE_GAUGE, RoundingMode.FLOOR));
        assertThrows(InputFault.class, () -> UnitSystem.FIELD.number(Double.NaN, Measure.DEPTH));
    }

    @Test
    void labelsNameTheKindOfAPressure() {
        assertEquals("psi gauge", UnitSystem.FIELD.label(Measure.PRESSURE_GAUGE));
        assertEquals("psia", UnitSystem.FIELD.label(Measure.PRESSURE_ABSOLUTE));
        assertEquals("bara", UnitSystem.METRIC.label(Measure.PRESSURE_ABSOLUTE));
        assertEquals("Pa abs", UnitSystem.SI.label(Measure.PRESSURE_ABSOLUTE));
        assertEquals("ppg EMW", UnitSystem.FIELD.label(Measure.EQUIVALENT_DENSITY));
        UnitSystem own = UnitSystem.FIELD
                .with(Measure.PRESSURE_GAUGE, "psig", 0)
                .with(Measure.PRESSURE_ABSOLUTE, "kPaa", 0)
                .with(Measure.EQUIVALENT_DENSITY, "psi/ft", 3);
        assertEquals("psig", own.label(Measure.PRESSURE_GAUGE));
        assertEquals("kPaa", own.label(Measure.PRESSURE_ABSOLUTE));
        assertEquals("psi/ft EMW", own.label(Measure.EQUIVALENT_DENSITY));
    }

    @Test
    void aSystemOfOnesOwnReplacesUnits() {
        UnitSystem own = UnitSystem.METRIC.with(Measure.DENSITY, "sg", 3).renamed("ours");
        assertEquals("ours", own.name());
        assertEquals("1.150 sg", own.text(ppg(9.6).si(Measure.DENSITY), Measure.DENSITY));
        assertEquals("kg/m³", UnitSystem.METRIC.symbol(Measure.DENSITY));
        assertEquals(
                "density cannot be shown in \"bar\"; use one of kg/m3, sg, ppg, lb/ft3",
                assertThrows(UnitFault.class, () -> own.with(Measure.DENSITY, "bar", 1))
                        .getMessage());
        assertThrows(RangeFault.class, () -> own.with(Measure.DENSITY, "sg", -1));
        assertEquals(UnitSystem.FIELD, UnitSystem.named("field").orElseThrow());
        assertTrue(UnitSystem.named("imperial").isEmpty());
    }

    @Test
    void aFaultShowsAValueJustOutOfRangeOutsideIt() {
        RangeFault fault =
                assertThrows(RangeFault.class, () -> Check.within("depth", 3000.00001, 0, 3000, Measure.DEPTH));
        assertEquals("depth 3000.00001 m is outside 0 m to 3000 m", fault.getMessage());
        assertTrue(fault.text(UnitSystem.FIELD).startsWith("depth 9842.519"), fault.text(UnitSystem.FIELD));
    }

    @Test
    void eachDeclarationStandsForOneMeasure() throws NoSuchMethodException {
        Set<String> seen = new HashSet<>();
        for (Measure measure : Measure.values()) {
            assertTrue(seen.add(measure.siUnit() + measure.kind()), measure.toString());
        }
        Method declared = Declared.class.getDeclaredMethod("gauge");
        assertEquals(Measure.PRESSURE_GAUGE, Measure.of(declared.getAnnotation(Si.class)));
        Method wrong = Declared.class.getDeclaredMethod("wrong");
        assertThrows(IllegalArgumentException.class, () -> Measure.of(wrong.getAnnotation(Si.class)));
    }

    private interface Declared {
        @Si(value = "Pa", kind = Kind.GAUGE)
        double gauge();

        @Si("furlong")
        double wrong();
    }

    @Test
    void theDocumentationListsEveryUnit() throws IOException {
        String page = Files.readString(Path.of(System.getProperty("staunch.root"), "docs", "units.md"));
        for (String symbol : UnitSymbol.symbols()) {
            assertTrue(symbol.isEmpty() || page.contains("`" + symbol + "`"), symbol);
        }
    }

    @Test
    void aWholeNumberHeldInSiIsNotRoundedUpToTheNext() {
        for (int tenths = 1; tenths <= 2000; tenths++) {
            double volume = UnitSystem.FIELD.toSi(tenths / 10.0, Measure.VOLUME);
            for (double si : new double[] {volume, volume * (1 + 1e-10), volume * (1 - 1e-10)}) {
                for (RoundingMode rounding : List.of(RoundingMode.CEILING, RoundingMode.FLOOR)) {
                    assertEquals(
                            tenths / 10 + "." + tenths % 10 + " bbl",
                            UnitSystem.FIELD.text(si, Measure.VOLUME, rounding));
                }
            }
        }
    }
}
