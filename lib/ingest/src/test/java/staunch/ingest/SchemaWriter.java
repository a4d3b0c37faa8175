package staunch.ingest;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import staunch.units.Measure;
import staunch.units.Quantity;

/** Writes the JSON Schema of the case file from the table of keys. */
final class SchemaWriter {
    private static final String NUMBER =
            "[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?|[+-]?(?:\\d+(?:\\s+|-))?\\d+/\\d+";

    private final ObjectMapper mapper = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    String schema() throws IOException {
        ObjectNode root = mapper.createObjectNode();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("title", "Staunch case file");
        root.put("description", "A well with its casing designs, for well-control planning; see case-file.md.");
        root.put("$ref", "#/$defs/case");
        ObjectNode definitions = root.putObject("$defs");
        for (Block block : CaseKeys.blocks()) {
            definitions.set(block.name(), block(block));
        }
        return mapper.writeValueAsString(root).replace("\r\n", "\n") + "\n";
    }

    private static boolean isPartial(Block block) {
        return block.equals(CaseKeys.SECTION)
                || block.equals(CaseKeys.CASING_STRING)
                || block.equals(CaseKeys.SECTION_DEFAULTS);
    }

    private ObjectNode block(Block block) {
        ObjectNode node = mapper.createObjectNode();
        node.put("type", "object");
        node.put("additionalProperties", false);
        ObjectNode properties = node.putObject("properties");
        for (Key key : block.keys()) {
            ObjectNode value = form(key.form());
            value.put("description", description(key));
            properties.set(key.name(), value);
        }
        List<String> needed = block.keys().stream()
                .filter(k -> k.needed() && (!isPartial(block) || k.name().equals("name")))
                .map(Key::name)
                .toList();
        if (!needed.isEmpty()) {
            needed.forEach(node.putArray("required")::add);
        }
        if (!block.alternatives().isEmpty()) {
            ArrayNode all = node.putArray("allOf");
            for (List<String> group : block.alternatives()) {
                ArrayNode one = all.addObject().putArray("oneOf");
                group.forEach(name -> one.addObject().putArray("required").add(name));
            }
        }
        return node;
    }

    private static String description(Key key) {
        return key.meaning() + (key.without().isEmpty() ? "" : " Without it: " + key.without());
    }

    private ObjectNode form(Form form) {
        ObjectNode node = mapper.createObjectNode();
        if (form instanceof Form.Text) {
            node.putArray("type").add("string").add("number");
        } else if (form instanceof Form.Amount amount) {
            quantity(node, Stream.of(amount.measure()));
        } else if (form instanceof Form.RockPressure) {
            quantity(
                    node,
                    Stream.of(
                            Measure.EQUIVALENT_DENSITY,
                            Measure.PRESSURE_GRADIENT,
                            Measure.PRESSURE_GAUGE,
                            Measure.PRESSURE_ABSOLUTE));
        } else if (form instanceof Form.PumpRate) {
            quantity(node, Stream.of(Measure.FLOW_RATE, Measure.FREQUENCY));
        } else if (form instanceof Form.Count count) {
            node.put("type", "integer").put("minimum", count.lowest()).put("maximum", count.highest());
        } else if (form instanceof Form.Flag) {
            node.put("type", "boolean");
        } else if (form instanceof Form.Choice choice) {
            choice.names().forEach(node.putArray("enum")::add);
        } else if (form instanceof Form.Word word) {
            word.words().forEach(node.putArray("enum")::add);
        } else if (form instanceof Form.UnitOf unit) {
            Quantity.unitsFor(unit.measure()).forEach(node.putArray("enum")::add);
        } else if (form instanceof Form.Nested nested) {
            reference(node, nested.block());
        } else if (form instanceof Form.NameOrNested either) {
            ArrayNode any = node.putArray("anyOf");
            either.names().forEach(any.addObject().putArray("enum")::add);
            reference(any.addObject(), either.block());
        } else if (form instanceof Form.Csv) {
            file(node);
        } else if (form instanceof Form.Rows rows) {
            rows(node, rows);
        }
        return node;
    }

    private void rows(ObjectNode node, Form.Rows rows) {
        ArrayNode any = node.putArray("anyOf");
        ObjectNode list = any.addObject();
        list.put("type", "array").put("minItems", 1);
        reference(list.putObject("items"), rows.block());
        if (rows.csv()) {
            ObjectNode named = any.addObject();
            named.put("type", "object").put("additionalProperties", false);
            file(named.putObject("properties").putObject(CaseKeys.FILE));
            named.putArray("required").add(CaseKeys.FILE);
        }
        if (!rows.word().isEmpty()) {
            any.addObject().putArray("enum").add(rows.word());
        }
    }

    private static void file(ObjectNode node) {
        node.put("type", "string").put("pattern", "^[^/\\\\][^\\\\]*$");
    }

    private static void reference(ObjectNode node, Block block) {
        node.put("$ref", "#/$defs/" + block.name());
    }

    private static void quantity(ObjectNode node, Stream<Measure> measures) {
        List<Measure> all = measures.toList();
        String units = all.stream()
                .flatMap(m -> Quantity.unitsFor(m).stream())
                .distinct()
                .sorted()
                .map(SchemaWriter::escaped)
                .collect(Collectors.joining("|"));
        boolean pure = all.contains(Measure.NUMBER);
        if (pure) {
            node.putArray("type").add("number").add("string");
        } else {
            node.put("type", "string");
        }
        node.put("pattern", "^\\s*(?:" + NUMBER + ")\\s*(?:" + units + ")" + (pure ? "?" : "") + "\\s*$");
        node.putArray("examples")
                .add(pure ? "0.65" : "1 " + all.get(0).usualUnits().get(0));
    }

    private static String escaped(String unit) {
        return Pattern.compile("[.()%/]")
                .matcher(unit)
                .replaceAll(m -> m.group().equals(".") ? "\\\\." : m.group());
    }
}
