package staunch.units;

import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.CUBIC_METRE;
import static tech.units.indriya.unit.Units.KELVIN;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.MOLE;
import static tech.units.indriya.unit.Units.OHM;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.RADIAN;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.SQUARE_METRE;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.measure.Dimension;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import tech.units.indriya.AbstractUnit;

/**
 * A unit as it is written in the oilfield, with its JSR-385 unit. Factors are exact by definition: inch 0.0254 m, pound
 * 0.45359237 kg, US gallon 231 in³, barrel 42 US gallons, psi = lbf/in² with standard gravity (NIST SP 811, appendix B).
 */
final class UnitSymbol {
    private static final double INCH = 0.0254;
    private static final double FOOT = 12 * INCH;
    private static final double POUND = 0.45359237;
    private static final double GALLON = 231 * INCH * INCH * INCH;
    private static final double BARREL = 42 * GALLON;
    private static final double PSI = POUND * Physics.GRAVITY / (INCH * INCH);
    private static final double POUND_PER_GALLON = POUND / GALLON;

    private static final Unit<?> NEWTON = PASCAL.multiply(SQUARE_METRE);
    private static final Unit<?> DENSITY = KILOGRAM.divide(CUBIC_METRE);
    private static final Unit<?> DEGREE = RADIAN.multiply(Math.PI).divide(180);
    private static final Unit<?> FAHRENHEIT = KELVIN.multiply(5).divide(9).shift(459.67);
    private static final Unit<?> FAHRENHEIT_STEP = KELVIN.multiply(5).divide(9);

    /** SI units by the names used in {@link Si}. */
    private static final Map<String, Unit<?>> SI_UNITS = Map.ofEntries(
            Map.entry("1", AbstractUnit.ONE),
            Map.entry("m", METRE),
            Map.entry("m2", SQUARE_METRE),
            Map.entry("m3/m", SQUARE_METRE),
            Map.entry("m3", CUBIC_METRE),
            Map.entry("m3/s", CUBIC_METRE.divide(SECOND)),
            Map.entry("kg", KILOGRAM),
            Map.entry("kg/m", KILOGRAM.divide(METRE)),
            Map.entry("kg/mol", KILOGRAM.divide(MOLE)),
            Map.entry("kg/m3", DENSITY),
            Map.entry("Pa", PASCAL),
            Map.entry("Pa/m", PASCAL.divide(METRE)),
            Map.entry("1/Pa", PASCAL.inverse()),
            Map.entry("1/K", KELVIN.inverse()),
            Map.entry("K", KELVIN),
            Map.entry("K/m", KELVIN.divide(METRE)),
            Map.entry("Pa.s", PASCAL.multiply(SECOND)),
            Map.entry("N", NEWTON),
            Map.entry("N/m", PASCAL.multiply(METRE)),
            Map.entry("rad", RADIAN),
            Map.entry("rad/m", RADIAN.divide(METRE)),
            Map.entry("m/s", METRE.divide(SECOND)),
            Map.entry("s/m", SECOND.divide(METRE)),
            Map.entry("ohm.m", OHM.multiply(METRE)),
            Map.entry("s", SECOND),
            Map.entry("1/s", SECOND.inverse()));

    private static final Map<Measure, Dimension> SI_DIMENSIONS = Arrays.stream(Measure.values())
            .collect(Collectors.toMap(m -> m, m -> SI_UNITS.get(m.siUnit()).getDimension()));

    private static final Map<String, List<UnitSymbol>> BY_SYMBOL = table();

    private final String symbol;
    private final Unit<?> unit;
    private final Kind only;
    private final Map<Measure, LinearMap> maps = new EnumMap<>(Measure.class);

    private UnitSymbol(String symbol, Unit<?> unit, Kind only) {
        this.symbol = symbol;
        this.unit = unit;
        this.only = only;
        // Dimensions first: asking the library whether two units are compatible takes a hundred times as long.
        Dimension dimension = unit.getDimension();
        boolean angle = unit.getSystemUnit().equals(RADIAN);
        for (Measure measure : Measure.values()) {
            Unit<?> si = SI_UNITS.get(measure.siUnit());
            boolean ofKind = only == null || only == measure.kind();
            // A radian has no dimension, but 30 is no angle and 30 degrees are no pure number.
            boolean angles = angle == (measure == Measure.ANGLE);
            if (ofKind && angles && dimension.equals(SI_DIMENSIONS.get(measure))) {
                maps.put(measure, LinearMap.of(unit, si));
            }
        }
    }

    String symbol() {
        return symbol;
    }

    /** Kind that the symbol itself states, as psia does; null where it states none. */
    Kind statedKind() {
        return only;
    }

    /** Linear map from this unit to the SI unit of a measure, or null where the unit cannot hold that measure. */
    LinearMap toSi(Measure measure) {
        return maps.get(measure);
    }

    /** Units known under a symbol: more than one where a pressure or a temperature has kinds. */
    static List<UnitSymbol> named(String symbol) {
        return BY_SYMBOL.getOrDefault(symbol, List.of());
    }

    /** The unit under a symbol that holds a measure, or null. */
    static UnitSymbol named(String symbol, Measure measure) {
        for (UnitSymbol unit : named(symbol)) {
            if (unit.toSi(measure) != null) {
                return unit;
            }
        }
        return null;
    }

    /** Every symbol known, in alphabetical order. */
    static Set<String> symbols() {
        return BY_SYMBOL.keySet();
    }

    /** A known symbol that an unknown one was probably meant to be: other capitals, a power with ^, or spelt out. */
    static Optional<String> meant(String unknown) {
        String plain = plain(unknown);
        return BY_SYMBOL.keySet().stream()
                .filter(known -> !known.isEmpty() && plain(known).equals(plain))
                .findFirst();
    }

    /** Known symbols of three letters and more that one wrong letter, or two changed about, make of an unknown one. */
    static List<String> near(String unknown) {
        String plain = plain(unknown);
        return BY_SYMBOL.keySet().stream()
                .filter(known -> known.length() >= 3 && oneSlip(plain(known), plain))
                .sorted()
                .toList();
    }

    private static boolean oneSlip(String known, String written) {
        if (known.length() != written.length()) {
            return false;
        }
        int[] different = IntStream.range(0, known.length())
                .filter(i -> known.charAt(i) != written.charAt(i))
                .toArray();
        return different.length == 1
                || different.length == 2
                        && different[1] == different[0] + 1
                        && known.charAt(different[0]) == written.charAt(different[1])
                        && known.charAt(different[1]) == written.charAt(different[0]);
    }

    private static String plain(String symbol) {
        return symbol.toLowerCase(Locale.ROOT)
                .replace("^", "")
                .replace("²", "2")
                .replace("³", "3")
                .replace("\u00b0", "deg")
                .replace("\"", "in")
                .replace("'", "ft")
                .replaceAll("(feet|foot)", "ft")
                .replaceAll("(inches|inch)", "in")
                .replaceAll("(metres|metre|meters|meter)", "m")
                .replaceAll("(barrels|barrel|bbls)", "bbl")
                .replaceAll("^(fahrenheit|f)$", "degf")
                .replaceAll("^(celsius|c)$", "degc")
                .replaceAll("(degrees|degree)", "deg");
    }

    /** Value in SI = factor × value + offset. */
    record LinearMap(double factor, double offset) {
        static LinearMap of(Unit<?> from, Unit<?> to) {
            try {
                UnitConverter converter = from.getConverterToAny(to);
                double zero = converter.convert(0.0);
                // A wide step keeps the digits that the difference of two shifted values would lose.
                return zero == 0
                        ? new LinearMap(converter.convert(1.0), 0)
                        : new LinearMap((converter.convert(1000.0) - zero) / 1000, zero);
            } catch (IncommensurableException e) {
                throw new IllegalStateException(from + " was found compatible with " + to, e);
            }
        }

        double toSi(double value) {
            return factor * value + offset;
        }

        double fromSi(double si) {
            return (si - offset) / factor;
        }
    }

    private static Map<String, List<UnitSymbol>> table() {
        Table t = new Table();
        t.add(AbstractUnit.ONE, "1", "");
        t.add(AbstractUnit.ONE.divide(100), "%");
        t.add(METRE, "m");
        t.add(METRE.multiply(FOOT), "ft");
        t.add(METRE.multiply(INCH), "in");
        t.add(METRE.divide(1000), "mm");
        t.add(METRE.divide(100), "cm");
        t.add(METRE.multiply(1000), "km");
        t.add(SQUARE_METRE, "m2", "m²", "m3/m", "m³/m");
        t.add(SQUARE_METRE.multiply(INCH * INCH), "in2", "in²");
        t.add(SQUARE_METRE.multiply(FOOT * FOOT), "ft2", "ft²", "ft3/ft", "ft³/ft");
        t.add(SQUARE_METRE.multiply(BARREL / FOOT), "bbl/ft");
        t.add(SQUARE_METRE.multiply(BARREL), "bbl/m");
        t.add(SQUARE_METRE.multiply(GALLON / FOOT), "gal/ft");
        t.add(SQUARE_METRE.divide(1000), "l/m", "L/m");
        t.add(CUBIC_METRE, "m3", "m³");
        t.add(CUBIC_METRE.multiply(BARREL), "bbl");
        t.add(CUBIC_METRE.multiply(GALLON), "gal");
        t.add(CUBIC_METRE.multiply(FOOT * FOOT * FOOT), "ft3", "ft³");
        t.add(CUBIC_METRE.divide(1000), "l", "L");
        t.add(CUBIC_METRE.divide(SECOND), "m3/s");
        t.add(CUBIC_METRE.divide(SECOND.multiply(60)), "m3/min", "m³/min");
        t.add(CUBIC_METRE.divide(SECOND.multiply(60_000)), "l/min", "L/min", "lpm");
        t.add(CUBIC_METRE.multiply(BARREL).divide(SECOND.multiply(60)), "bbl/min", "bpm");
        t.add(CUBIC_METRE.multiply(GALLON).divide(SECOND.multiply(60)), "gal/min", "gpm");
        t.add(CUBIC_METRE.divide(SECOND.multiply(86_400)), Kind.STANDARD, "Sm3/d", "Sm³/d");
        t.add(CUBIC_METRE.divide(SECOND.multiply(3600)), Kind.STANDARD, "Sm3/h", "Sm³/h");
        t.add(CUBIC_METRE.multiply(1e6 * FOOT * FOOT * FOOT).divide(SECOND.multiply(86_400)), Kind.STANDARD, "MMscf/d");
        t.add(KILOGRAM, "kg");
        t.add(KILOGRAM.multiply(POUND), "lb");
        t.add(KILOGRAM.multiply(1000), "t");
        t.add(KILOGRAM.divide(METRE), "kg/m");
        t.add(KILOGRAM.multiply(POUND / FOOT).divide(METRE), "lb/ft", "ppf");
        t.add(KILOGRAM.divide(MOLE), "kg/mol");
        t.add(KILOGRAM.divide(MOLE).divide(1000), "g/mol");
        t.add(DENSITY, "kg/m3", "kg/m³");
        t.add(DENSITY.multiply(1000), "g/cm3", "g/cm³", "g/cc", "kg/l", "kg/L", "sg", "SG");
        t.add(DENSITY.multiply(POUND_PER_GALLON), "ppg", "lb/gal");
        t.add(DENSITY.multiply(POUND / (FOOT * FOOT * FOOT)), "lb/ft3", "lb/ft³", "pcf");
        t.add(DENSITY.multiply(PSI / FOOT / Physics.GRAVITY), Kind.EQUIVALENT, "psi/ft");
        t.add(DENSITY.multiply(1000 / Physics.GRAVITY), Kind.EQUIVALENT, "kPa/m");
        t.add(PASCAL, "Pa");
        t.add(PASCAL.multiply(1000), "kPa");
        t.add(PASCAL.multiply(1_000_000), "MPa");
        t.add(PASCAL.multiply(1_000_000_000), "GPa");
        t.add(PASCAL.multiply(100_000), "bar");
        t.add(PASCAL.multiply(PSI), "psi");
        t.add(PASCAL.multiply(1000 * PSI), Kind.STRESS, "ksi");
        t.add(PASCAL.multiply(PSI * INCH * INCH / (100 * FOOT * FOOT)), Kind.STRESS, "lbf/100ft2", "lbf/100ft²");
        t.add(PASCAL.multiply(PSI), Kind.ABSOLUTE, "psia");
        t.add(PASCAL.multiply(100_000), Kind.ABSOLUTE, "bara");
        t.add(PASCAL.multiply(1000), Kind.ABSOLUTE, "kPaa");
        t.add(PASCAL.multiply(1_000_000), Kind.ABSOLUTE, "MPaa");
        t.add(PASCAL.multiply(PSI), Kind.GAUGE, "psig");
        t.add(PASCAL.multiply(100_000), Kind.GAUGE, "barg");
        t.add(PASCAL.multiply(1000), Kind.GAUGE, "kPag");
        t.add(PASCAL.multiply(1_000_000), Kind.GAUGE, "MPag");
        t.add(PASCAL.divide(METRE), "Pa/m");
        t.add(PASCAL.multiply(1000).divide(METRE), "kPa/m");
        t.add(PASCAL.multiply(10_000).divide(METRE), "bar/10m");
        t.add(PASCAL.multiply(100_000).divide(METRE), "bar/m");
        t.add(PASCAL.multiply(PSI / FOOT).divide(METRE), "psi/ft");
        t.add(PASCAL.inverse(), "1/Pa");
        t.add(PASCAL.multiply(100_000).inverse(), "1/bar");
        t.add(PASCAL.multiply(1_000_000_000).inverse(), "1/GPa");
        t.add(PASCAL.multiply(PSI).inverse(), "1/psi");
        t.add(KELVIN.inverse(), "1/K", "1/degC", "1/°C");
        t.add(FAHRENHEIT_STEP.inverse(), "1/degF", "1/°F");
        t.add(KELVIN, "K");
        t.add(CELSIUS, Kind.POINT, "degC", "°C");
        t.add(FAHRENHEIT, Kind.POINT, "degF", "°F");
        t.add(KELVIN, Kind.DIFFERENCE, "degC", "°C");
        t.add(FAHRENHEIT_STEP, Kind.DIFFERENCE, "degF", "°F");
        t.add(KELVIN.divide(METRE), "K/m");
        t.add(KELVIN.divide(METRE).divide(1000), "degC/km", "°C/km", "K/km");
        t.add(KELVIN.divide(METRE).divide(100), "degC/100m", "°C/100m");
        t.add(FAHRENHEIT_STEP.divide(METRE.multiply(100 * FOOT)), "degF/100ft", "°F/100ft");
        t.add(PASCAL.multiply(SECOND), "Pa.s");
        t.add(PASCAL.multiply(SECOND).divide(1000), "mPa.s", "cP");
        t.add(PASCAL.multiply(SECOND).divide(1_000_000), "uPa.s");
        t.add(NEWTON, "N");
        t.add(NEWTON.multiply(1000), "kN");
        t.add(NEWTON.multiply(POUND * Physics.GRAVITY), "lbf");
        t.add(NEWTON.multiply(1000 * POUND * Physics.GRAVITY), "klbf", "klb");
        t.add(PASCAL.multiply(METRE), "N/m");
        t.add(PASCAL.multiply(METRE).divide(1000), "mN/m");
        t.add(RADIAN, "rad");
        t.add(DEGREE, "deg", "°");
        t.add(RADIAN.divide(METRE), "rad/m");
        t.add(DEGREE.divide(METRE.multiply(30)), "deg/30m", "°/30m");
        t.add(DEGREE.divide(METRE.multiply(100 * FOOT)), "deg/100ft", "°/100ft");
        t.add(METRE.divide(SECOND), "m/s");
        t.add(METRE.divide(SECOND.multiply(60)), "m/min");
        t.add(METRE.divide(SECOND.multiply(3600)), "m/h");
        t.add(METRE.multiply(FOOT).divide(SECOND.multiply(3600)), "ft/h");
        t.add(METRE.multiply(FOOT).divide(SECOND.multiply(60)), "ft/min");
        t.add(SECOND.divide(METRE), "s/m");
        t.add(SECOND.divide(METRE).divide(1_000_000), "us/m", "µs/m");
        t.add(SECOND.divide(METRE.multiply(FOOT)).divide(1_000_000), "us/ft", "µs/ft");
        t.add(OHM.multiply(METRE), "ohm.m");
        t.add(SECOND, "s");
        t.add(SECOND.multiply(60), "min");
        t.add(SECOND.multiply(3600), "h");
        t.add(SECOND.inverse(), "1/s");
        t.add(SECOND.multiply(60).inverse(), "1/min", "spm", "rpm", "strokes/min");
        return t.bySymbol;
    }

    private static final class Table {
        private final Map<String, List<UnitSymbol>> bySymbol = new TreeMap<>();

        void add(Unit<?> unit, String... symbols) {
            add(unit, null, symbols);
        }

        void add(Unit<?> unit, Kind only, String... symbols) {
            for (String symbol : symbols) {
                bySymbol.computeIfAbsent(symbol, s -> new ArrayList<>()).add(new UnitSymbol(symbol, unit, only));
            }
        }
    }
}
