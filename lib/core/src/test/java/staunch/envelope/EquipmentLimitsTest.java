package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import staunch.earth.Range;
import staunch.limit.FlowLine;
import staunch.limit.PressureEquipment;
import staunch.limit.PressureRating;
import staunch.units.Physics;
import staunch.well.BurstBackUp;
import staunch.well.CasingInterval;
import staunch.well.CasingString;
import staunch.well.Datum;

class EquipmentLimitsTest {
    private static final double SAME = 1;

    private static CasingString string(
            String name, double[] topAndShoe, double[] outsideAndInside, OptionalDouble mixWater) {
        return new CasingString(
                name,
                List.of(new CasingInterval(
                        topAndShoe[0],
                        topAndShoe[1],
                        outsideAndInside[0],
                        outsideAndInside[1],
                        Optional.of("P110"),
                        OptionalDouble.of(758e6),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        0)),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                mixWater,
                OptionalDouble.of(0.8),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static List<SurfaceLimit> limits(SectionInput input) {
        return Inputs.evaluate(input).maasp().orElseThrow().components();
    }

    @Test
    void casingOutsideTheRangeOfTheBurstFormulaIsNotAssessed() {
        CasingString thick =
                string("thick casing", new double[] {0, Wells.SHOE}, new double[] {0.3, 0.14}, OptionalDouble.empty());
        SurfaceLimit casing = limits(Inputs.casing(Wells.standard().input(), thick)).stream()
                .filter(c -> c.type() == SurfaceLimit.Type.CASING)
                .findFirst()
                .orElseThrow();
        assertTrue(casing.pressure().isEmpty());
        assertTrue(casing.notAssessed().orElseThrow().contains("wall of the casing"));
    }

    @Test
    void linerTopBehindALaterStringDoesNotSeeTheAnnulus() {
        CasingString surface =
                string("20 in casing", new double[] {0, 1000}, new double[] {0.508, 0.476}, OptionalDouble.empty());
        CasingString liner = string(
                "13 3/8 in liner", new double[] {900, 2000}, new double[] {0.3397, 0.3153}, OptionalDouble.empty());
        CasingString inner = string(
                "9 5/8 in casing",
                new double[] {0, Wells.SHOE},
                new double[] {0.24448, 0.22049},
                OptionalDouble.empty());
        SectionInput behind = Inputs.casing(Wells.standard().input(), surface, liner, inner);
        assertTrue(limits(behind).stream().noneMatch(c -> c.type() == SurfaceLimit.Type.LINER_TOP));
        CasingString last = string(
                "9 5/8 in liner",
                new double[] {1900, Wells.SHOE},
                new double[] {0.24448, 0.22049},
                OptionalDouble.empty());
        SectionInput exposed = Inputs.casing(Wells.standard().input(), surface, liner, last);
        assertEquals(
                List.of("13 3/8 in liner top", "9 5/8 in liner top"),
                limits(exposed).stream()
                        .filter(c -> c.type() == SurfaceLimit.Type.LINER_TOP)
                        .map(SurfaceLimit::name)
                        .toList());
    }

    @Test
    void seaOutsideIsNoBackUpOfTheChokeLineWhichEndsAboveIt() {
        // Light oil in the line: with the sea's credit its upper end would see more than its rating.
        double rating = 35e6;
        PressureEquipment rated = Wells.rated(rating, 100e6, 1025, 0.0762);
        FlowLine line = new FlowLine(
                "choke line",
                1025,
                0.0762,
                Optional.of(new PressureRating("choke line", rating, Optional.empty())),
                OptionalDouble.of(800));
        PressureEquipment equipment = new PressureEquipment(
                rated.wellhead(),
                rated.chokeManifold(),
                Optional.of(line),
                Optional.empty(),
                Optional.empty(),
                rated.stack());
        SectionInput input = Wells.standard()
                .datum(new Datum("rotary table", 25, new Datum.AtSea(1000, true)))
                .chokeLineFriction(0)
                .equipment(equipment)
                .options(MethodOptions.DEFAULT.withSeawaterCredit(true).withDepths(30, 1))
                .input();
        List<SurfaceLimit> limits = limits(input);
        double oil = 800 * Physics.GRAVITY * 1025;
        double sea = 1025 * Physics.GRAVITY * 1000;
        for (SurfaceLimit limit : limits) {
            if (limit.type() == SurfaceLimit.Type.CHOKE_LINE) {
                assertEquals(rating - oil, limit.pressure().orElseThrow(), SAME);
            }
            if (limit.type() == SurfaceLimit.Type.WELLHEAD || limit.type() == SurfaceLimit.Type.BOP) {
                assertEquals(rating + sea - oil, limit.pressure().orElseThrow(), SAME);
            }
        }
    }

    @Test
    void casingHasNoBackUpAboveTheFirstKnownPorePressure() {
        double allowed = 0.8 * 65e6;
        CasingInterval interval =
                Wells.standard().input().casing().get(0).intervals().get(0);
        CasingString casing = new CasingString(
                "casing",
                List.of(interval),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(1000),
                OptionalDouble.of(0.8),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        SectionInput input = Inputs.porePressure(
                Inputs.casing(Wells.standard().input(), casing),
                Range.of(Wells.profile(new double[] {2500, 9000}, new double[] {1400, 1400})));
        SurfaceLimit limit = limits(input).stream()
                .filter(c -> c.type() == SurfaceLimit.Type.CASING)
                .findFirst()
                .orElseThrow();
        assertEquals(2500, limit.measuredDepth(), 1e-6);
        assertEquals(
                allowed - Wells.MUD * Physics.GRAVITY * 2500, limit.pressure().orElseThrow(), SAME);
        LimitNodes nodes = LimitNodes.of(input, new EquipmentLimits(input).components());
        assertEquals(Physics.ATMOSPHERE + allowed, nodes.limitAt(2000, 2000), SAME);
        double water = 1000 * Physics.GRAVITY * (2700 - input.datum().groundOrSeabedDepth());
        assertEquals(Physics.ATMOSPHERE + allowed + water, nodes.limitAt(2700, 2700), SAME);
    }

    @Test
    void casingLimitIsKnownOnBothSidesOfADepthInsideIt() {
        // The section begins a centimetre above the shoe, as depths from two tables do.
        SectionInput input = Inputs.casing(
                Wells.standard().input(),
                string("casing", new double[] {0, 3000.009}, new double[] {0.24448, 0.22049}, OptionalDouble.empty()));
        LimitNodes nodes = LimitNodes.of(input, new EquipmentLimits(input).components());
        assertTrue(nodes.knownAt(1500, 1500));
        assertEquals(
                "casing P110",
                nodes.weakPoint(1500, 1500, nodes.limitAt(1500, 1500)).basis());
    }

    @Test
    void theDeepestShoeNamesTheWeakPointWhateverTheOrderOfTheStrings() {
        CasingString deep = string(
                "9 5/8 in casing",
                new double[] {0, Wells.SHOE},
                new double[] {0.24448, 0.22049},
                OptionalDouble.empty());
        CasingString shallow =
                string("20 in casing", new double[] {0, 1000}, new double[] {0.508, 0.476}, OptionalDouble.empty());
        Tolerance.Finite finite = (Tolerance.Finite)
                Inputs.evaluate(Inputs.casing(Wells.standard().input(), deep, shallow))
                        .drilled()
                        .tolerance();
        assertEquals("shoe of 9 5/8 in casing", finite.weakPoint().name());
    }

    private static EquipmentLimits.Component casing(CasingString given, BurstBackUp backUp) {
        CasingString specified = new CasingString(
                given.name(),
                given.intervals(),
                given.topOfCement(),
                given.fluidBehindDensity(),
                given.mixWaterDensity(),
                given.allowedBurstShare(),
                given.testPressure(),
                given.linerTopRating(),
                Optional.of(backUp));
        return new EquipmentLimits(Inputs.casing(Wells.standard().input(), specified))
                .components().stream()
                        .filter(c -> c.type() == SurfaceLimit.Type.CASING)
                        .findFirst()
                        .orElseThrow();
    }

    private static double outside(EquipmentLimits.Component component, int point, double allowed) {
        return component.points().get(point).pressure() - allowed - Physics.ATMOSPHERE;
    }

    @Test
    void backUpIsAsSpecifiedWhereTheCaseSaysSo() {
        CasingString string = string(
                "9 5/8 in casing",
                new double[] {0, Wells.SHOE},
                new double[] {0.24448, 0.22049},
                OptionalDouble.of(1000));
        double allowed = 0.8 * 0.875 * 758e6 * (0.24448 - 0.22049) / 0.24448;
        // A column of 1200 kg/m³ from ground level, 8 m below the datum.
        EquipmentLimits.Component column = casing(string, new BurstBackUp.OfDensity(1200));
        int last = column.points().size() - 1;
        assertEquals(0, outside(column, 0, allowed), SAME);
        assertEquals(1200 * Physics.GRAVITY * (Wells.SHOE - 8), outside(column, last, allowed), SAME);
        EquipmentLimits.Component none = casing(string, new BurstBackUp.OfDensity(0));
        assertEquals(0, outside(none, none.points().size() - 1, allowed), SAME);
        EquipmentLimits.Component points = casing(
                string,
                new BurstBackUp.OfPressures(List.of(
                        new BurstBackUp.Point(1000, 10e6 + Physics.ATMOSPHERE),
                        new BurstBackUp.Point(2000, 30e6 + Physics.ATMOSPHERE))));
        assertEquals(0, outside(points, 0, allowed), SAME);
        assertEquals(0, outside(points, points.points().size() - 1, allowed), SAME);
        double[] at = points.points().stream()
                .filter(p -> p.measuredDepth() == 1000 || p.measuredDepth() == 2000)
                .mapToDouble(p -> p.pressure() - allowed - Physics.ATMOSPHERE)
                .sorted()
                .toArray();
        assertEquals(
                List.of(0.0, 0.0, 10e6, 30e6),
                Arrays.stream(at).mapToObj(v -> (double) Math.round(v)).toList());
    }
}
