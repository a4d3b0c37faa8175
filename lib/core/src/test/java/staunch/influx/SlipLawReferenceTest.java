package staunch.influx;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import staunch.control.HydrostaticConstant;
import staunch.control.MigrationFormulas;
import staunch.reference.ReferenceRow;
import staunch.reference.ReferenceTable;
import staunch.units.Measure;
import staunch.units.Quantity;

class SlipLawReferenceTest {
    private static final ReferenceTable TABLE = ReferenceTable.read("control/slip-velocity.csv");

    /** The rows state the inertial limit; water's viscosity keeps the law inside its range. */
    private static final double WATER_VISCOSITY = 1e-3;

    private static Stream<DynamicTest> rows(String start, ToDoubleFunction<ReferenceRow> computed) {
        return TABLE.tests(r -> r.quantity().startsWith(start), r -> r.check(computed.applyAsDouble(r)));
    }

    private static SlipConditions conditions(ReferenceRow row, FlowChannel channel) {
        return new SlipConditions(channel, 0, row.number("rho_l"), WATER_VISCOSITY, row.number("rho_g"), 0, 1);
    }

    @TestFactory
    Stream<DynamicTest> taylorBubbleInABore() {
        return TABLE.tests(r -> r.quantity().equals("Taylor bubble rise velocity"), r -> {
            FlowChannel bore = FlowChannel.bore(r.si("pipe ID", Measure.DIAMETER));
            r.check(TaylorBubble.PIPE.driftVelocity(conditions(r, bore)));
        });
    }

    @TestFactory
    Stream<DynamicTest> taylorBubbleInAnAnnulus() {
        return rows(
                "Taylor bubble rise velocity in annulus",
                r -> TaylorBubble.ANNULUS_HASAN_KABIR.driftVelocity(conditions(r, annulus(r))));
    }

    /** The value of the other form stands in the note of each row. */
    @TestFactory
    Stream<DynamicTest> taylorBubbleInAnAnnulusBySadatomi() {
        return TABLE.tests(r -> r.quantity().startsWith("Taylor bubble rise velocity in annulus"), r -> {
            double noted = Double.parseDouble(r.note().replaceAll(".* gives ([0-9.]+) m/s.*", "$1"));
            double computed = TaylorBubble.ANNULUS_SADATOMI.driftVelocity(conditions(r, annulus(r)));
            assertEquals(noted, computed, 0.02 * noted);
        });
    }

    private static FlowChannel annulus(ReferenceRow row) {
        return new FlowChannel(row.si("casing ID", Measure.DIAMETER), row.si("annulus pipe OD", Measure.DIAMETER));
    }

    @TestFactory
    Stream<DynamicTest> smallBubbles() {
        return rows(
                "small-bubble terminal velocity",
                r -> new HarmathyBubble(r.si("surface tension", Measure.SURFACE_TENSION))
                        .driftVelocity(conditions(r, FlowChannel.bore(0.2))));
    }

    @TestFactory
    Stream<DynamicTest> inclination() {
        return rows(
                "inclination factor",
                r -> TaylorBubble.inclinationFactor(r.si("inclination from vertical", Measure.ANGLE)));
    }

    @TestFactory
    Stream<DynamicTest> driftFlux() {
        return rows("gas velocity", r -> {
            DriftFlux law = new DriftFlux(r.number("C0"), r.si("drift velocity", Measure.SPEED));
            SlipConditions still = new SlipConditions(FlowChannel.bore(0.2), 0, 1000, WATER_VISCOSITY, 1, 0, 0.1);
            return law.gasVelocity(still.flowing(r.si("mixture velocity", Measure.SPEED), 0.1));
        });
    }

    @TestFactory
    Stream<DynamicTest> gasFraction() {
        return rows(
                "gas void fraction",
                r -> new DriftFlux(r.number("C0"), r.si("drift", Measure.SPEED))
                        .gasFraction(r.number("v_sg"), r.number("v_sl")));
    }

    @TestFactory
    Stream<DynamicTest> ruleByMudWeight() {
        double foot = Quantity.of(1, "ft").si(Measure.LENGTH);
        return rows(
                "gas migration velocity",
                r -> r.has("mud weight")
                        ? new MudWeightRule().riseRate(r.si("mud weight", Measure.DENSITY)) / foot
                        : rise(r));
    }

    private static double rise(ReferenceRow row) {
        MigrationFormulas.PressureRise observed = new MigrationFormulas.PressureRise(
                Quantity.of(200, "psi").si(Measure.PRESSURE_DIFFERENCE),
                Quantity.of(0.5, "h").si(Measure.TIME));
        double mud = Quantity.of(12.5, "ppg").si(Measure.DENSITY);
        return row.fromSi(
                MigrationFormulas.apparentRiseRate(observed, mud, HydrostaticConstant.TRADE_0_052), Measure.SPEED);
    }

    @TestFactory
    Stream<DynamicTest> fastEndOfTheBracket() {
        return rows(
                "gas rise velocity order of magnitude",
                r -> MigrationBracket.PUBLISHED
                        .fast()
                        .driftVelocity(new SlipConditions(FlowChannel.bore(0.2), 0, 1000, WATER_VISCOSITY, 1, 0, 0.1)));
    }
}
