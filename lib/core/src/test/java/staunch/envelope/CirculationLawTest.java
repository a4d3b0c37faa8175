package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import staunch.control.Circulation;
import staunch.control.CirculationMethod;
import staunch.control.CirculationPlan;
import staunch.control.CirculationPoint;
import staunch.control.CirculationPoint.Phase;
import staunch.control.CirculationSchedule;
import staunch.earth.TemperatureProfile;
import staunch.fluid.GasComposition;
import staunch.fluid.RealGas;
import staunch.influx.GasColumn;
import staunch.units.Physics;
import staunch.well.HoleInterval;
import staunch.well.SurveyStation;
import staunch.well.WellPath;

class CirculationLawTest {
    private static final double UNIFORM = 0.22049;

    private static CirculationSchedule run(Wells wells, CirculationMethod method, double volume, double friction) {
        Model model = wells.model();
        Kick kick = model.kick(Kick.Scenario.DRILLED, Wells.BOTTOM);
        DrilledHole hole = model.hole(Wells.BOTTOM);
        double held = kick.formationPressure() + wells.heldAbove();
        return Circulation.run(new CirculationPlan(
                hole.grid(),
                new GasColumn(model.gas().orElseThrow(), wells.temperature()),
                model.mudColumn().orElseThrow(),
                method,
                new CirculationPlan.Pressures(kick.formationPressure(), held, friction),
                volume,
                hole.stringVolume(),
                new CirculationPlan.Pump(0.01, OptionalDouble.of(0.012)),
                new double[] {Wells.SHOE}));
    }

    private static Wells uniform() {
        return Wells.standard().hole(new HoleInterval(Wells.SHOE, Wells.BOTTOM, UNIFORM));
    }

    @Test
    void chokePressureOfAnIdealIsothermalGasAgreesWithTheClosedForm() {
        double t = 350;
        double volume = 5;
        CirculationSchedule schedule =
                run(uniform().isothermal(t).options(ToleranceLawTest.ideal()), CirculationMethod.DRILLERS, volume, 0);
        double g = Physics.GRAVITY;
        double k = g * 0.65 * Physics.MOLAR_MASS_AIR / (Physics.GAS_CONSTANT * t);
        double area = Math.PI / 4 * (UNIFORM * UNIFORM - Wells.PIPE * Wells.PIPE);
        double pf = Wells.pressure(Wells.MUD + 60, Wells.BOTTOM);
        double mass = area * pf * -Math.expm1(-k * volume / area) / g;
        assertEquals(mass, schedule.influxMass(), 1e-10 * mass);
        int rising = 0;
        for (CirculationPoint point : schedule.points()) {
            if (point.phase() != Phase.INFLUX_RISING) {
                continue;
            }
            rising++;
            double h = point.pumped() / area;
            double low = pf - Wells.MUD * g * h;
            double top = low - mass * g / area;
            double z = Wells.BOTTOM - h - Math.log(low / top) / k;
            double choke = top - Wells.MUD * g * z - Physics.ATMOSPHERE;
            assertEquals(choke, point.chokePressure(), 10);
        }
        assertTrue(rising > 50);
    }

    @ParameterizedTest
    @EnumSource(CirculationMethod.class)
    void bottomHolePressureStaysAsHeldAndMassIsKept(CirculationMethod method) {
        Wells wells = Wells.standard().overbalance(7e5);
        double volume = 4;
        CirculationSchedule schedule = run(wells, method, volume, 0);
        Model model = wells.model();
        DrilledHole hole = model.hole(Wells.BOTTOM);
        double held = Wells.pressure(Wells.MUD + 60, Wells.BOTTOM) + 7e5;
        double kill = Wells.MUD + 60;
        RealGas gas = RealGas.of(GasComposition.sweet(0.65));
        double killBefore = 0;
        for (CirculationPoint point : schedule.points()) {
            if (point.phase() != Phase.INFLUX_RISING && point.phase() != Phase.INFLUX_LEAVING) {
                continue;
            }
            double top = point.gasTop().getAsDouble();
            double bottom = point.gasBottom().getAsDouble();
            double p = point.chokePressure() + Physics.ATMOSPHERE + Wells.MUD * Physics.GRAVITY * top;
            // Down through the gas in steps of about a metre with the midpoint rule.
            int n = (int) Math.ceil(bottom - top) + 1;
            double h = (bottom - top) / n;
            double mass = 0;
            TemperatureProfile temperature = wells.temperature();
            for (int i = 0; i < n; i++) {
                double tm = temperature.at(top + (i + 0.5) * h);
                double middle = p + gas.density(p, tm) * Physics.GRAVITY * h / 2;
                double density = gas.density(middle, tm);
                mass += density * hole.grid().volume(top + i * h, top + (i + 1) * h);
                p += density * Physics.GRAVITY * h;
            }
            double killVolume =
                    method == CirculationMethod.WAIT_AND_WEIGHT ? Math.max(0, point.pumped() - hole.stringVolume()) : 0;
            double front = killVolume > 0 ? hole.grid().topOfVolume(Wells.BOTTOM, killVolume) : Wells.BOTTOM;
            p += Physics.GRAVITY * (Wells.MUD * (front - bottom) + kill * (Wells.BOTTOM - front));
            assertEquals(held, p, 1, "midpoint steps of a metre are good to well below 1 Pa");
            assertEquals(point.gasMass(), mass, 1e-6 * mass + 1e-9);
            if (point.phase() == Phase.INFLUX_RISING) {
                assertEquals(schedule.influxMass(), point.gasMass(), 1e-10 * schedule.influxMass());
            }
            killBefore = Math.max(killBefore, killVolume);
        }
        assertEquals(method == CirculationMethod.WAIT_AND_WEIGHT, killBefore > 0);
    }

    @ParameterizedTest
    @EnumSource(CirculationMethod.class)
    void shoePressurePeaksAtTheLimitWhenTheInfluxIsTheTolerance(CirculationMethod method) {
        List<WellPath> paths = List.of(WellPath.vertical(9000), deviated());
        for (WellPath path : paths) {
            Wells wells =
                    Wells.standard().path(path).overbalance(7e5).options(MethodOptions.DEFAULT.withMethod(method));
            Tolerance.Finite tolerance = (Tolerance.Finite) wells.drilled();
            CirculationSchedule schedule = run(wells, method, tolerance.volume(), 0);
            double limit = tolerance.weakPoint().limit();
            assertEquals(limit, schedule.greatestWatched().get(0).watched()[0], 1e-6 * limit);
        }
    }

    private static WellPath deviated() {
        return WellPath.of(List.of(
                new SurveyStation(0, 0, 0),
                new SurveyStation(1500, 0, 0),
                new SurveyStation(2100, Math.toRadians(40), 1),
                new SurveyStation(9000, Math.toRadians(40), 1)));
    }

    @Test
    void chokePressureEndsAtTheOverbalanceAndNeverFallsBelowZero() {
        Wells wells = Wells.standard().overbalance(7e5);
        for (CirculationMethod method : CirculationMethod.values()) {
            CirculationSchedule schedule = run(wells, method, 4, 3e6);
            List<CirculationPoint> points = schedule.points();
            CirculationPoint last = points.get(points.size() - 1);
            assertEquals(0, last.chokePressure(), 1e-3, "fully open: the friction exceeds what is to be held");
            assertTrue(last.bottomHolePressure() > Wells.pressure(Wells.MUD + 60, Wells.BOTTOM) + 2e6);
            assertTrue(points.stream().allMatch(p -> p.chokePressure() >= -1e-6));
            assertEquals(7e5, lastWithoutFriction(wells, method), 1e-3);
        }
    }

    private static double lastWithoutFriction(Wells wells, CirculationMethod method) {
        List<CirculationPoint> points = run(wells, method, 4, 0).points();
        return points.get(points.size() - 1).chokePressure();
    }

    @Test
    void gainNeverShrinksWhileTheGasRises() {
        double last = 0;
        for (CirculationPoint point :
                run(Wells.standard(), CirculationMethod.DRILLERS, 3, 0).points()) {
            if (point.phase() == Phase.INFLUX_RISING) {
                assertTrue(point.gasVolume() >= last - 1e-9);
                last = point.gasVolume();
            }
        }
        assertTrue(last > 6, "three cubic metres at 70 MPa are more than twice that at the choke");
    }
}
