package staunch.control;

import staunch.units.Check;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Si;

/**
 * Two lines from the stack to surface, open at the top, that hold different fluids and are connected at the stack: a choke
 * or kill line, and the riser. Connected, the heavier column falls and pushes some of its fluid into the other, which
 * overflows, until both weigh the same at the stack (own derivation: columns at rest, fluids that do not mix).
 *
 * @param heavier line with the denser fluid
 * @param lighter the other
 * @param height vertical, from the stack to the top of both, m, 1 to 5000
 */
public record ConnectedLines(
        Line heavier,
        Line lighter,
        @Si(value = "m", kind = Kind.LENGTH) double height) {
    public ConnectedLines {
        Check.within("vertical height of the lines", height, 1, 5000, Measure.LENGTH);
        Check.within("density in the lighter line", lighter.density(), 500, heavier.density(), Measure.DENSITY);
    }

    /**
     * A line.
     *
     * @param name in the words of the case
     * @param density of the fluid in it, kg/m³, 500 to 3000
     * @param area cross-section, m², 1e-5 to 5
     */
    public record Line(
            String name,
            @Si("kg/m3") double density,
            @Si("m2") double area) {
        public Line {
            Check.text("name of the line", name);
            Check.within("density in the " + name, density, 500, 3000, Measure.DENSITY);
            Check.within("cross-section of the " + name, area, 1e-5, 5, Measure.AREA);
        }
    }

    /** Two lines in either order. */
    public static ConnectedLines of(Line a, Line b, @Si(value = "m", kind = Kind.LENGTH) double height) {
        return a.density() >= b.density() ? new ConnectedLines(a, b, height) : new ConnectedLines(b, a, height);
    }

    /** What the heavier column weighs more at the stack while the lines are apart: g (ρ₁ − ρ₂) h. */
    @Si(value = "Pa", kind = Kind.DIFFERENCE)
    public double imbalance() {
        return Physics.GRAVITY * (heavier.density() - lighter.density()) * height;
    }

    /**
     * How far the level of the heavier column falls: x = h (ρ₁ − ρ₂)/(ρ₁ + (ρ₁ − ρ₂) A₁/A₂), from ρ₁ (h − x) = ρ₂ (h − y) +
     * ρ₁ y with y = x A₁/A₂ of its fluid in the other line.
     */
    @Si(value = "m", kind = Kind.LENGTH)
    public double fall() {
        double more = heavier.density() - lighter.density();
        return height * more / (heavier.density() + more * heavier.area() / lighter.area());
    }

    /** Volume that goes over from the heavier line, and as much that overflows from the lighter one. */
    @Si("m3")
    public double overflow() {
        return fall() * heavier.area();
    }

    /** Fall of the pressure at the stack below the heavier column: what the well would lose if that column held it. */
    @Si(value = "Pa", kind = Kind.DIFFERENCE)
    public double lostByHeavier() {
        return Physics.GRAVITY * heavier.density() * fall();
    }
}
