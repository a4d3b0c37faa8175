package staunch.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.envelope.KickResult;
import staunch.envelope.Maasp;
import staunch.envelope.Tolerance;
import staunch.envelope.WellEnvelope;

class RecordJsonTest {
    private final WellCase wellCase = InventedWell.wellCase();
    private final WellEnvelope envelope = Study.of(wellCase).evaluate();

    private static List<MachineResults.DesignOperations> operations(WellCase wellCase) {
        Study study = Study.of(wellCase);
        return List.of(new MachineResults.DesignOperations(study.design(), study.operations()));
    }

    private byte[] json() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        MachineResults.of(wellCase, List.of(envelope), operations(wellCase)).write(out);
        return out.toByteArray();
    }

    private JsonNode tree() throws IOException {
        return new ObjectMapper().readTree(json());
    }

    @Test
    void numbersCarryTheirUnitInTheKeyAndReadBackExactly() throws IOException {
        KickResult drilled = envelope.sections().get(1).drilled();
        JsonNode node = tree().at("/designs/0/sections/1/drilled");
        assertEquals(
                drilled.kick().orElseThrow().formationPressure(),
                node.at("/kick/formationPressure_Pa_abs").doubleValue());
        Tolerance.Finite finite = (Tolerance.Finite) drilled.tolerance();
        assertEquals("finite", node.at("/tolerance/outcome").textValue());
        assertEquals(finite.volume(), node.at("/tolerance/volume_m3").doubleValue());
        assertEquals(4.0, node.at("/required_m3").doubleValue());
        JsonNode step = node.at("/hand/steps/0");
        assertTrue(step.has(
                "result" + drilled.hand().orElseThrow().steps().get(0).measure().jsonSuffix()));
    }

    @Test
    void otherOutcomesAreNamedAndAbsentValuesAreNull() throws IOException {
        JsonNode onDiverter = tree().at("/designs/0/sections/0");
        assertEquals("notShutIn", onDiverter.at("/drilled/tolerance/outcome").textValue());
        assertEquals("DIVERTER", onDiverter.at("/drilled/tolerance/drilling").textValue());
        assertTrue(onDiverter.get("maasp").isNull());
        assertTrue(tree().at("/header/date").isNull());
        assertEquals("onLand", tree().at("/datum/place/outcome").textValue());
    }

    @Test
    void keysOfTheHeadAreFixed() throws IOException {
        List<String> keys = new ArrayList<>();
        tree().fieldNames().forEachRemaining(keys::add);
        assertEquals(
                List.of(
                        "format",
                        "library",
                        "header",
                        "inputs",
                        "datum",
                        "evidence",
                        "register",
                        "designs",
                        "operations"),
                keys);
        assertEquals(1, tree().get("format").intValue());
        assertEquals("0.1.0", tree().get("library").textValue());
    }

    @Test
    void equalInputGivesEqualBytes() throws IOException {
        WellEnvelope again = Study.of(InventedWell.wellCase()).evaluate();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        MachineResults.of(InventedWell.wellCase(), List.of(again), operations(InventedWell.wellCase()))
                .write(out);
        assertArrayEquals(json(), out.toByteArray());
    }

    @Test
    void mapsAreSortedByNumber() throws IOException {
        List<String> speeds = new ArrayList<>();
        tree().at("/designs/0/sections/1/plan/mud/rheometer/dialReadings")
                .fieldNames()
                .forEachRemaining(speeds::add);
        assertEquals(List.of("3", "6", "100", "300", "600"), speeds);
    }

    @Test
    void linesEndInALineFeedAndTextIsUtf8() throws IOException {
        String text = new String(json(), StandardCharsets.UTF_8);
        assertTrue(text.startsWith("{\n \"format\" : 1,\n"), text.substring(0, 40));
        assertTrue(text.endsWith("}\n"));
        assertTrue(text.indexOf('\r') < 0);
    }

    @Test
    void aPointOfACurveTakesOneLine() throws IOException {
        String text = new String(json(), StandardCharsets.UTF_8);
        long points =
                text.lines().filter(l -> l.strip().startsWith("{\"phase\":")).count();
        assertTrue(points > 20, points + " points of circulations");
        assertTrue(
                text.lines()
                        .filter(l -> l.strip().startsWith("{\"phase\":"))
                        .allMatch(l -> l.endsWith("},") || l.endsWith("}")),
                "a point ends where its line does");
    }

    @Test
    void aNumberThatIsNoneIsAMistakeThatNamesItsPlace() {
        Maasp broken = new Maasp(Double.NaN, List.of(), Optional.empty(), Optional.empty(), false);
        IllegalStateException e = assertThrows(IllegalStateException.class, () -> write(broken));
        assertEquals("results.mudDensity is NaN where a number is due", e.getMessage());
    }

    @Test
    void aNumberWithoutAUnitIsAMistake() {
        record Bare(double value, OptionalDouble other) {}
        assertThrows(IllegalStateException.class, () -> write(new Bare(1, OptionalDouble.empty())));
    }

    private static void write(Record record) throws IOException {
        try (var generator =
                new com.fasterxml.jackson.core.JsonFactory().createGenerator(new ByteArrayOutputStream())) {
            new RecordJson(generator).write(record, "results");
        }
    }
}
