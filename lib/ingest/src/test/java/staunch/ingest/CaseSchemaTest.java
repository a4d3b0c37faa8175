package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * Schema and reference say what the reader reads. Both are written anew with {@code -Dstaunch.casefile.write=true}.
 */
class CaseSchemaTest {
    private static final Path ROOT = Path.of(System.getProperty("staunch.root"));
    private static final Path SCHEMA = ROOT.resolve("docs/case.schema.json");
    private static final Path PAGE = ROOT.resolve("docs/case-file.md");
    private static final String BEGIN = "<!-- keys: written from the table of keys in staunch.ingest -->\n";
    private static final String END = "<!-- end of keys -->\n";

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static boolean writes() {
        return Boolean.getBoolean("staunch.casefile.write");
    }

    @Test
    void theSchemaIsThatOfTheReader() throws IOException {
        String schema = new SchemaWriter().schema();
        if (writes()) {
            Files.writeString(SCHEMA, schema);
        }
        assertEquals(schema, Files.readString(SCHEMA));
    }

    @Test
    void theReferenceIsThatOfTheReader() throws IOException {
        String page = Files.readString(PAGE);
        int begin = page.indexOf(BEGIN) + BEGIN.length();
        int end = page.indexOf(END);
        if (writes()) {
            Files.writeString(PAGE, page.substring(0, begin) + ReferenceWriter.reference() + page.substring(end));
            page = Files.readString(PAGE);
            end = page.indexOf(END);
        }
        assertEquals(ReferenceWriter.reference(), page.substring(begin, end));
    }

    @Test
    void everyPropertyOfTheSchemaIsAKeyOfTheReader() throws IOException {
        JsonNode definitions = MAPPER.readTree(Files.readString(SCHEMA)).get("$defs");
        for (Block block : CaseKeys.blocks()) {
            Set<String> properties = new TreeSet<>();
            definitions.get(block.name()).get("properties").fieldNames().forEachRemaining(properties::add);
            assertEquals(new TreeSet<>(block.names()), properties, block.name());
        }
        assertEquals(CaseKeys.blocks().size(), definitions.size());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "data/quillmarsh-1/case.yaml",
                "data/wrenskerry-2/case.yaml",
                "lib/ingest/src/test/resources/base/case.yaml"
            })
    void theCasesFollowTheSchema(String file) throws IOException {
        assertEquals("", faults(Files.readString(ROOT.resolve(file))));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "  elevation: 25 m|  elevation: 25 bar",
                "  elevation: 25 m|  elevation: 25",
                "  elevation: 25 m|  elevasion: 25 m",
                "  water_depth: 100 m|  stack_depth: 100 m",
                "units: metric|units: metrik",
                "    drilling: diverter|    drilling: drifter",
                "  file: survey.csv|  file: /etc/hosts",
                "  depth_count: 50|  depth_count: 0",
                "  - name: House rules|  - title: House rules"
            },
            ignoreLeadingAndTrailingWhitespace = false)
    void aBrokenCaseDoesNot(String old, String broken) throws IOException {
        String text = Files.readString(ROOT.resolve("lib/ingest/src/test/resources/base/case.yaml"));
        assertFalse(faults(text.replace(old + "\n", broken + "\n")).isEmpty());
    }

    private static String faults(String yaml) throws IOException {
        JsonSchema schema =
                JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(Files.readString(SCHEMA));
        Object tree = new Load(LoadSettings.builder().build()).loadFromString(yaml);
        return schema.validate(MAPPER.valueToTree(tree)).stream()
                .map(Object::toString)
                .sorted()
                .collect(Collectors.joining("\n"));
    }
}
