package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.TreeSet;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import staunch.fluid.Gas;
import staunch.units.Physics;
import staunch.well.HoleInterval;
import staunch.well.StringComponent;
import staunch.well.SurveyStation;
import staunch.well.WellPath;

/**
 * Gas mass is conserved over the displacement: between the ends of the gas at each position, density integrated by an
 * independent fine method gives the mass that came in.
 */
class ConservationLawTest {
    /** Of the mass; the independent integration is good to about 1e-11. */
    private static final double CONSERVED = 1e-10;

    /** Runge–Kutta with this step: its error over a kilometre is far below the tolerance, m. */
    private static final double STEP = 1;

    @Provide
    Arbitrary<AnySection> sections() {
        return AnySection.any();
    }

    @Property(tries = 60)
    void gasMassIsConservedOverTheDisplacement(
            @ForAll("sections") AnySection section, @ForAll @DoubleRange(min = 0.5, max = 8) double volume) {
        Wells wells = section.wells();
        Model model = wells.model();
        Kick kick = model.kick(Kick.Scenario.DRILLED, section.bottom());
        DrilledHole hole = model.hole(section.bottom());
        InfluxMargin margin = model.margin(kick, hole, volume, "test");
        Reference reference = new Reference(section, wells, model.gas().orElseThrow());
        double top = hole.grid().topOfVolume(section.bottom(), volume);
        double mass = reference.mass(top, section.bottom(), kick.formationPressure());
        assertTrue(margin.path().size() > 40);
        for (InfluxMargin.Point point : margin.path()) {
            double below = section.mud()
                    * Physics.GRAVITY
                    * (reference.path.verticalDepth(section.bottom())
                            - reference.path.verticalDepth(point.gasBottom()));
            double found = reference.mass(point.gasTop(), point.gasBottom(), kick.formationPressure() - below);
            assertEquals(mass, found, CONSERVED * mass, "gas from " + point.gasTop() + " to " + point.gasBottom());
        }
    }

    /** Pressure and mass along the hole by Runge–Kutta of fourth order in measured depth. */
    private static final class Reference {
        private final AnySection section;
        private final WellPath path;
        private final Wells wells;
        private final Gas gas;
        private final TreeSet<Double> breaks = new TreeSet<>();

        Reference(AnySection section, Wells wells, Gas gas) {
            this.section = section;
            this.wells = wells;
            this.gas = gas;
            this.path = WellPath.of(section.stations());
            for (SurveyStation station : section.stations()) {
                breaks.add(station.measuredDepth());
            }
            for (HoleInterval interval : section.hole()) {
                breaks.add(interval.topDepth());
            }
            breaks.add(section.bottom() - section.string()[0].length());
        }

        double mass(double top, double bottom, double pressureAtBottom) {
            double s = bottom;
            double p = pressureAtBottom;
            double mass = 0;
            while (s > top) {
                Double above = breaks.lower(s - 1e-9);
                double end = Math.max(top, above == null ? 0 : above);
                int n = (int) Math.ceil((s - end) / STEP);
                double h = (s - end) / n;
                double area = area(0.5 * (s + end));
                for (int i = 0; i < n; i++) {
                    double at = s - i * h;
                    double r1 = density(p, at);
                    double k1 = r1 * rate(at);
                    double r2 = density(p - 0.5 * h * k1, at - 0.5 * h);
                    double k2 = r2 * rate(at - 0.5 * h);
                    double r3 = density(p - 0.5 * h * k2, at - 0.5 * h);
                    double k3 = r3 * rate(at - 0.5 * h);
                    double r4 = density(p - h * k3, at - h);
                    double k4 = r4 * rate(at - h);
                    p -= h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
                    mass += area * h / 6 * (r1 + 2 * r2 + 2 * r3 + r4);
                }
                s = end;
            }
            return mass;
        }

        private double density(double pressure, double md) {
            return gas.density(pressure, wells.temperature().at(path.verticalDepth(md)));
        }

        private double rate(double md) {
            return Physics.GRAVITY * path.verticalRate(md);
        }

        private double area(double md) {
            StringComponent collars = section.string()[0];
            double pipe = md > section.bottom() - collars.length() ? collars.outsideDiameter() : Wells.PIPE;
            double bore = md < section.shoe()
                    ? 0.22049
                    : section.hole()[md < section.hole()[1].topDepth() ? 0 : 1].diameter();
            return Math.PI / 4 * (bore * bore - pipe * pipe);
        }
    }
}
