package staunch.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The units a reader sees: one unit and a number of decimals per measure. Field, metric and a mixed set are given; any
 * other is made from one of these with {@link #with(Measure, String, int)}.
 */
public final class UnitSystem {
    /** SI units, as calculations hold them. */
    public static final UnitSystem SI = si();

    /** Oilfield units: ft, in, psi, ppg, bbl, °F. */
    public static final UnitSystem FIELD = field();

    /** Metric oilfield units: m, mm, bar, kg/m³, m³, °C. */
    public static final UnitSystem METRIC = metric();

    /** Metric depths with oilfield diameters, pressures, densities and volumes, as many offshore wells are planned. */
    public static final UnitSystem MIXED = mixed();

    private static final List<UnitSystem> NAMED = List.of(FIELD, METRIC, MIXED, SI);

    private final String name;
    private final Map<Measure, Shown> shown;

    private record Shown(String symbol, int decimals, UnitSymbol.LinearMap map, Kind stated) {}

    private UnitSystem(String name, Map<Measure, Shown> shown) {
        this.name = name;
        this.shown = new EnumMap<>(shown);
    }

    /** Name by which it is chosen. */
    public String name() {
        return name;
    }

    /** The given system of that name. */
    public static Optional<UnitSystem> named(String name) {
        return NAMED.stream().filter(s -> s.name.equals(name)).findFirst();
    }

    /**
     * The given system of that name.
     *
     * @throws InputFault where there is none of that name
     */
    public static UnitSystem of(String name) {
        return named(name)
                .orElseThrow(() -> new InputFault(
                        "unit system", "\"" + name + "\" is not known", "use one of " + String.join(", ", names())));
    }

    /** Names of the given systems. */
    public static List<String> names() {
        return NAMED.stream().map(UnitSystem::name).toList();
    }

    /**
     * The same system with another unit for one measure.
     *
     * @throws UnitFault where the unit is unknown or cannot hold the measure
     */
    public UnitSystem with(Measure measure, String symbol, int decimals) {
        Map<Measure, Shown> copy = new EnumMap<>(shown);
        copy.put(measure, shown(measure, symbol, decimals));
        return new UnitSystem(name, copy);
    }

    /** The same units under another name. */
    public UnitSystem renamed(String newName) {
        return new UnitSystem(Check.text("name of the unit system", newName), shown);
    }

    /** Value as shown, from SI. */
    public double fromSi(double si, Measure measure) {
        return unit(measure).map.fromSi(si);
    }

    /** Value in SI, from the unit shown. */
    public double toSi(double value, Measure measure) {
        return unit(measure).map.toSi(value);
    }

    /** Symbol of the unit alone: psi. */
    public String symbol(Measure measure) {
        return unit(measure).symbol;
    }

    /** Decimals that values of this measure are shown with. */
    public int decimals(Measure measure) {
        return unit(measure).decimals;
    }

    /** Unit as an axis or a column names it: the symbol, with the kind where it matters ("psi gauge", "ppg EMW"). */
    public String label(Measure measure) {
        String symbol = symbol(measure);
        if (unit(measure).stated == measure.kind()) {
            return measure.kind() == Kind.EQUIVALENT ? symbol + " EMW" : symbol;
        }
        return switch (measure) {
            case PRESSURE_ABSOLUTE -> symbol + " abs";
            case PRESSURE_GAUGE -> symbol + " gauge";
            case EQUIVALENT_DENSITY -> symbol + " EMW";
            default -> symbol;
        };
    }

    /** Number alone, rounded to nearest. */
    public String number(double si, Measure measure) {
        return number(si, measure, RoundingMode.HALF_EVEN);
    }

    /**
     * Number alone, rounded as told. Towards the safe side means {@link RoundingMode#FLOOR} for tolerances and MAASP and
     * {@link RoundingMode#CEILING} for loads and kill mud density; {@link RoundingMode#DOWN} would raise a negative value.
     *
     * @throws InputFault where the value is not finite
     */
    public String number(double si, Measure measure, RoundingMode rounding) {
        double value = fromSi(si, measure);
        if (!Double.isFinite(value)) {
            throw new InputFault(measure.title(), "has no finite value to print", "report it as not assessed instead");
        }
        // Nine significant digits first, one less than a case is read to, so that 10000 psi held in SI does not round
        // down
        // to 9999.
        BigDecimal decimal = new BigDecimal(value).round(new MathContext(9, RoundingMode.HALF_EVEN));
        BigDecimal rounded = decimal.setScale(decimals(measure), rounding);
        return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
    }

    /** Number and unit, rounded to nearest. */
    public String text(double si, Measure measure) {
        return join(number(si, measure), symbol(measure));
    }

    /** Number and unit, rounded as told. */
    public String text(double si, Measure measure, RoundingMode rounding) {
        return join(number(si, measure, rounding), symbol(measure));
    }

    /** The same units, with times in hours where they are shown in minutes: for waits and operations that last. */
    public UnitSystem inHours() {
        return symbol(Measure.TIME).equals("min") ? with(Measure.TIME, "h", 2) : this;
    }

    /** The same units, with speeds per minute where they are shown per hour: for pipe that is tripped. */
    public UnitSystem perMinute() {
        return switch (symbol(Measure.SPEED)) {
            case "ft/h" -> with(Measure.SPEED, "ft/min", 0);
            case "m/h" -> with(Measure.SPEED, "m/min", 1);
            default -> this;
        };
    }

    /** A time that may be waited, rounded down: from two hours on in hours, where times are shown in minutes. */
    public String duration(@Si("s") double si) {
        UnitSystem hours = inHours().with(Measure.TIME, inHours().symbol(Measure.TIME), 1);
        return (si < 7200 ? this : hours).text(si, Measure.TIME, RoundingMode.FLOOR);
    }

    /** Number to six significant digits and unit, for faults. */
    public String precise(double si, Measure measure) {
        return join(trimmed(fromSi(si, measure), 6), symbol(measure));
    }

    /**
     * Number to some significant digits and unit.
     *
     * @param si value, in the SI unit of its measure
     * @param digits at least 1
     * @param measure what it is
     */
    public String significant(double si, int digits, Measure measure) {
        return join(trimmed(fromSi(si, measure), digits), symbol(measure));
    }

    /** The same with as many digits as tell it from a bound, so that a value just out of range does not look inside it. */
    String preciseBeside(double si, double bound, Measure measure) {
        return significant(si, digitsBeside(si, bound, measure), measure);
    }

    int digitsBeside(double si, double bound, Measure measure) {
        double value = fromSi(si, measure);
        double other = fromSi(bound, measure);
        int digits = 6;
        while (digits < 17 && value != other && trimmed(value, digits).equals(trimmed(other, digits))) {
            digits++;
        }
        return digits;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof UnitSystem that && name.equals(that.name) && shown.equals(that.shown);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, shown);
    }

    @Override
    public String toString() {
        return name;
    }

    private static String trimmed(double value, int digits) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        BigDecimal decimal =
                new BigDecimal(value).round(new MathContext(digits)).stripTrailingZeros();
        double magnitude = Math.abs(value);
        boolean plain = magnitude == 0 || (magnitude >= 1e-4 && magnitude < 1e9);
        return plain ? decimal.toPlainString() : decimal.toEngineeringString();
    }

    private static String join(String number, String symbol) {
        return symbol.isEmpty() || symbol.equals("1") ? number : number + " " + symbol;
    }

    private Shown unit(Measure measure) {
        return shown.get(Objects.requireNonNull(measure, "measure"));
    }

    private static Shown shown(Measure measure, String symbol, int decimals) {
        Check.within("decimals of " + measure.title(), decimals, 0, 12, Measure.NUMBER);
        UnitSymbol unit = UnitSymbol.named(symbol, measure);
        if (unit == null) {
            throw new UnitFault(
                    measure.title(),
                    "cannot be shown in \"" + symbol + "\"",
                    "use one of " + String.join(", ", measure.usualUnits()));
        }
        return new Shown(symbol, decimals, unit.toSi(measure), unit.statedKind());
    }

    private static UnitSystem si() {
        Map<Measure, Shown> map = new EnumMap<>(Measure.class);
        for (Measure m : Measure.values()) {
            map.put(m, shown(m, m.siUnit(), m == Measure.ANGLE || m == Measure.DIAMETER ? 4 : 3));
        }
        return new UnitSystem("si", map);
    }

    private static UnitSystem field() {
        return SI.renamed("field")
                .with(Measure.DEPTH, "ft", 0)
                .with(Measure.LENGTH, "ft", 0)
                .with(Measure.DIAMETER, "in", 3)
                .with(Measure.AREA, "in2", 2)
                .with(Measure.CAPACITY, "bbl/ft", 4)
                .with(Measure.VOLUME, "bbl", 1)
                .with(Measure.FLOW_RATE, "gpm", 0)
                .with(Measure.GAS_RATE, "MMscf/d", 2)
                .with(Measure.MASS, "lb", 0)
                .with(Measure.LINEAR_MASS, "lb/ft", 1)
                .with(Measure.MOLAR_MASS, "g/mol", 2)
                .with(Measure.DENSITY, "ppg", 2)
                .with(Measure.EQUIVALENT_DENSITY, "ppg", 2)
                .with(Measure.DENSITY_DIFFERENCE, "ppg", 2)
                .with(Measure.PRESSURE_ABSOLUTE, "psia", 0)
                .with(Measure.PRESSURE_GAUGE, "psi", 0)
                .with(Measure.PRESSURE_DIFFERENCE, "psi", 0)
                .with(Measure.STRESS, "ksi", 1)
                .with(Measure.PRESSURE_GRADIENT, "psi/ft", 3)
                .with(Measure.COMPRESSIBILITY, "1/psi", 8)
                .with(Measure.THERMAL_EXPANSION, "1/degF", 6)
                .with(Measure.TEMPERATURE, "°F", 0)
                .with(Measure.TEMPERATURE_DIFFERENCE, "°F", 0)
                .with(Measure.TEMPERATURE_GRADIENT, "°F/100ft", 2)
                .with(Measure.VISCOSITY, "cP", 3)
                .with(Measure.FORCE, "klbf", 1)
                .with(Measure.SURFACE_TENSION, "mN/m", 1)
                .with(Measure.ANGLE, "°", 1)
                .with(Measure.CURVATURE, "°/100ft", 2)
                .with(Measure.SPEED, "ft/h", 0)
                .with(Measure.SLOWNESS, "µs/ft", 1)
                .with(Measure.RESISTIVITY, "ohm.m", 2)
                .with(Measure.TIME, "min", 1)
                .with(Measure.FREQUENCY, "1/min", 1);
    }

    private static UnitSystem metric() {
        return SI.renamed("metric")
                .with(Measure.DEPTH, "m", 1)
                .with(Measure.LENGTH, "m", 1)
                .with(Measure.DIAMETER, "mm", 1)
                .with(Measure.AREA, "m²", 5)
                .with(Measure.CAPACITY, "l/m", 2)
                .with(Measure.VOLUME, "m³", 2)
                .with(Measure.FLOW_RATE, "l/min", 0)
                .with(Measure.GAS_RATE, "Sm³/d", 0)
                .with(Measure.MASS, "kg", 1)
                .with(Measure.LINEAR_MASS, "kg/m", 1)
                .with(Measure.MOLAR_MASS, "g/mol", 2)
                .with(Measure.DENSITY, "kg/m³", 0)
                .with(Measure.EQUIVALENT_DENSITY, "kg/m³", 0)
                .with(Measure.DENSITY_DIFFERENCE, "kg/m³", 0)
                .with(Measure.PRESSURE_ABSOLUTE, "bara", 1)
                .with(Measure.PRESSURE_GAUGE, "bar", 1)
                .with(Measure.PRESSURE_DIFFERENCE, "bar", 1)
                .with(Measure.STRESS, "MPa", 0)
                .with(Measure.PRESSURE_GRADIENT, "kPa/m", 2)
                .with(Measure.COMPRESSIBILITY, "1/bar", 7)
                .with(Measure.THERMAL_EXPANSION, "1/K", 6)
                .with(Measure.TEMPERATURE, "°C", 1)
                .with(Measure.TEMPERATURE_DIFFERENCE, "°C", 1)
                .with(Measure.TEMPERATURE_GRADIENT, "°C/100m", 2)
                .with(Measure.VISCOSITY, "mPa.s", 3)
                .with(Measure.FORCE, "kN", 0)
                .with(Measure.SURFACE_TENSION, "mN/m", 1)
                .with(Measure.ANGLE, "°", 1)
                .with(Measure.CURVATURE, "°/30m", 2)
                .with(Measure.SPEED, "m/h", 0)
                .with(Measure.SLOWNESS, "µs/m", 0)
                .with(Measure.RESISTIVITY, "ohm.m", 2)
                .with(Measure.TIME, "min", 1)
                .with(Measure.FREQUENCY, "1/min", 1);
    }

    private static UnitSystem mixed() {
        return FIELD.renamed("mixed")
                .with(Measure.DEPTH, "m", 1)
                .with(Measure.LENGTH, "m", 1)
                .with(Measure.GAS_RATE, "Sm³/d", 0)
                .with(Measure.DENSITY, "sg", 3)
                .with(Measure.EQUIVALENT_DENSITY, "sg", 3)
                .with(Measure.DENSITY_DIFFERENCE, "sg", 3)
                .with(Measure.CAPACITY, "l/m", 2)
                .with(Measure.TEMPERATURE, "°C", 1)
                .with(Measure.TEMPERATURE_DIFFERENCE, "°C", 1)
                .with(Measure.TEMPERATURE_GRADIENT, "°C/100m", 2)
                .with(Measure.CURVATURE, "°/30m", 2)
                .with(Measure.SPEED, "m/h", 0);
    }
}
