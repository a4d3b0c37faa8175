package staunch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import staunch.kernel.NotebookParameter;

class UnitParametersTest {
    private static String expression(String type, String own, String given) {
        return new UnitParameters().expression(new NotebookParameter("value", type, own), given);
    }

    @Test
    void aQuantityKeepsItsUnitAndMayComeInAnother() {
        assertEquals("quantity(\"13.4 ppg\")", expression("var", "ppg(12.8)", "13.4 ppg"));
        assertEquals("quantity(\"1.54 sg\")", expression("Quantity", "quantity(\"12.8 ppg\")", " 1.54 sg "));
    }

    @Test
    void numbersTruthsAndTextAreTyped() {
        assertEquals("45.5", expression("double", "90", "45.5"));
        assertEquals("3", expression("int", "1", "3"));
        assertEquals("true", expression("boolean", "false", "true"));
        assertEquals("\"6 in\"", expression("String", "\"8 1/2 in\"", "6 in"));
        assertEquals("\"6 in\"", expression("var", "\"8 1/2 in\"", "6 in"));
    }

    @Test
    void severalTextsAreLinesOrPartedLikeAPath() {
        assertEquals("{}", expression("String[]", "{}", ""));
        assertEquals("{\"a b\"}", expression("String[]", "{}", "a b"));
        assertEquals("{\"a\", \"b\"}", expression("String[]", "{}", "a" + File.pathSeparator + "b"));
        assertEquals("{\"a:;b\"}", expression("String[]", "{}", "a:;b\n"));
        assertEquals("{\"a\", \"b\"}", expression("String[]", "{}", "a\nb\n"));
    }

    @ParameterizedTest
    @CsvSource({
        "var, ppg(12.8), heavy",
        "var, ppg(12.8), 13.4 cubits",
        "var, ppg(12.8), '1\"); System.exit(0); (\"'",
        "double, 90, 45 deg",
        "int, 1, 1.5",
        "boolean, false, yes"
    })
    void whatDoesNotFitNamesTheParameter(String type, String own, String given) {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> expression(type, own, given));
        assertTrue(e.getMessage().contains("value"), e.getMessage());
    }
}
