package staunch.limit;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * Casing grades of API Spec 5CT with their minimum yield strength (from memory of the standard; the number in the name is
 * the yield in thousands of psi).
 */
public enum SteelGrade {
    H40("H40", 40),
    J55("J55", 55),
    K55("K55", 55),
    M65("M65", 65),
    N80("N80", 80),
    L80("L80", 80),
    C90("C90", 90),
    R95("R95", 95),
    T95("T95", 95),
    C95("C95", 95),
    C110("C110", 110),
    P110("P110", 110),
    Q125("Q125", 125);

    /** A thousand pounds-force per square inch: 0.45359237 kg · 9.80665 m/s² / (0.0254 m)², exact by definition. */
    private static final double KSI = 1000 * 0.45359237 * 9.80665 / (0.0254 * 0.0254);

    private final String title;
    private final double yield;

    SteelGrade(String title, double ksi) {
        this.title = title;
        this.yield = ksi * KSI;
    }

    /** Name as in the standard, without hyphen. */
    public String title() {
        return title;
    }

    /** Minimum yield strength. */
    @Si(value = "Pa", kind = Kind.STRESS)
    public double yieldStrength() {
        return yield;
    }

    /** Grade of that name, with or without hyphen or space, in capitals or not: "L80", "L-80", "n 80"; L80-13Cr is L80. */
    public static Optional<SteelGrade> named(String name) {
        String plain = name.toUpperCase(Locale.ROOT).replaceAll("[\\s-]", "");
        return Arrays.stream(values())
                .filter(g -> plain.equals(g.title) || plain.matches(g.title + "(1|Q|TYPE1|9CR|13CR)"))
                .findFirst();
    }

    /** Names of all grades. */
    public static List<String> names() {
        return Arrays.stream(values()).map(SteelGrade::title).toList();
    }
}
