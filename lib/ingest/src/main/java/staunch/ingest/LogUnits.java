package staunch.ingest;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import staunch.units.Fault;
import staunch.units.Measure;
import staunch.units.Quantity;

/** What units are called in the headers of logs, which follow no list; the names here are those in common use. */
final class LogUnits {
    private static final Map<String, String> KNOWN = Map.ofEntries(
            Map.entry("M", "m"),
            Map.entry("METER", "m"),
            Map.entry("METERS", "m"),
            Map.entry("METRE", "m"),
            Map.entry("METRES", "m"),
            Map.entry("F", "ft"),
            Map.entry("FT", "ft"),
            Map.entry("FEET", "ft"),
            Map.entry("FOOT", "ft"),
            Map.entry("GCC", "g/cm3"),
            Map.entry("GC3", "g/cm3"),
            Map.entry("GCM3", "g/cm3"),
            Map.entry("GMCC", "g/cm3"),
            Map.entry("GMCM3", "g/cm3"),
            Map.entry("GML", "g/cm3"),
            Map.entry("KM3", "kg/m3"),
            Map.entry("KGM3", "kg/m3"),
            Map.entry("LBF3", "lb/ft3"),
            Map.entry("LBFT3", "lb/ft3"),
            Map.entry("USF", "us/ft"),
            Map.entry("USFT", "us/ft"),
            Map.entry("USECF", "us/ft"),
            Map.entry("USECFT", "us/ft"),
            Map.entry("USM", "us/m"),
            Map.entry("USECM", "us/m"),
            Map.entry("OHMM", "ohm.m"));

    private LogUnits() {}

    /** What the header writes, where that is not the unit that the case states. */
    static Optional<String> other(String stated, String written, Measure measure) {
        if (written.isBlank() || written.equalsIgnoreCase(stated)) {
            return Optional.empty();
        }
        return KNOWN.containsKey(plain(written)) && si(KNOWN.get(plain(written)), measure) == si(stated, measure)
                ? Optional.empty()
                : Optional.of(written);
    }

    /** The same for a curve that is held against a number in its own unit. */
    static Optional<String> other(String stated, String written) {
        boolean same = written.isBlank() || stated.isBlank() || plain(stated).equals(plain(written));
        return same ? Optional.empty() : Optional.of(written);
    }

    /** Whether a unit can hold a measure. */
    static boolean holds(String unit, Measure measure) {
        return si(unit, measure) != 0;
    }

    private static String plain(String unit) {
        return unit.toUpperCase(Locale.ROOT)
                .replace('µ', 'U')
                .replace('Μ', 'U')
                .replace("³", "3")
                .replaceAll("[^A-Z0-9]", "");
    }

    private static double si(String unit, Measure measure) {
        try {
            return Quantity.of(1, unit).si(measure);
        } catch (Fault otherDimension) {
            return 0;
        }
    }
}
