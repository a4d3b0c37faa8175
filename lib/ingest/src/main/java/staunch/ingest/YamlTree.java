package staunch.ingest;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentEndEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingEndEvent;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceEndEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.events.StreamStartEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Reads YAML from its events alone: no object is ever constructed. Tags, anchors, aliases, keys given twice, further
 * documents and deep nesting are faults, so that what is read is what a person sees.
 */
final class YamlTree {
    private static final int DEEPEST = 24;

    private final String file;
    private final FaultLog log;
    private Iterator<Event> events;
    private int line = 1;

    private YamlTree(String file, FaultLog log) {
        this.file = file;
        this.log = log;
    }

    static Item.Mapping read(String text, String file, FaultLog log) {
        return new YamlTree(file, log).document(text);
    }

    private Item.Mapping document(String text) {
        LoadSettings settings = LoadSettings.builder()
                .setLabel(file)
                .setCodePointLimit(CaseDirectory.YAML_LIMIT)
                .build();
        try {
            events = new Parse(settings).parseString(text).iterator();
            return document();
        } catch (MarkedYamlEngineException e) {
            int noticed = e.getProblemMark().map(Mark::getLine).orElse(line - 1) + 1;
            int began = e.getContextMark().map(Mark::getLine).orElse(noticed - 1) + 1;
            String problem = e.getProblem().replaceAll("\\s+", " ");
            throw stop(
                    new Place(file, Math.min(began, noticed), ""),
                    "is not YAML: " + problem + (began < noticed ? " (noticed in line " + noticed + ")" : ""),
                    "check quotes, brackets and indentation");
        } catch (YamlEngineException e) {
            throw stop(new Place(file, line, ""), "is not YAML: " + e.getMessage(), "check the characters there");
        }
    }

    private Item.Mapping document() {
        Event event = next();
        if (event instanceof StreamStartEvent) {
            event = next();
        }
        Place root = new Place(file, 1, "");
        if (!(event instanceof DocumentStartEvent)) {
            throw stop(root, "is empty", "write a case into it");
        }
        Item item = item(next(), root, 0);
        Event end = next();
        while (!(end instanceof DocumentEndEvent)) {
            end = next();
        }
        Event after = next();
        if (after instanceof DocumentStartEvent) {
            throw stop(new Place(file, line, ""), "holds a second document", "keep one case in a file, without ---");
        }
        if (item instanceof Item.Mapping mapping) {
            return mapping;
        }
        throw stop(root, "holds no keys", "begin with a key such as title_block:");
    }

    private Event next() {
        Event event = events.next();
        event.getStartMark().ifPresent(m -> line = m.getLine() + 1);
        return event;
    }

    private Item item(Event event, Place place, int depth) {
        if (depth > DEEPEST) {
            throw stop(place, "is nested deeper than " + DEEPEST + " levels", "check the brackets and the indentation");
        }
        if (event instanceof AliasEvent) {
            log.add(place, "", "is a YAML alias (*)", "write the value out");
            return new Item.Refused(place);
        }
        plain((NodeEvent) event, place);
        if (event instanceof MappingStartEvent) {
            return mapping(place, depth);
        }
        if (event instanceof SequenceStartEvent) {
            return sequence(place, depth);
        }
        return new Item.Scalar(place, ((ScalarEvent) event).getValue());
    }

    private void plain(NodeEvent event, Place place) {
        event.getAnchor().ifPresent(a -> log.add(place, "&" + a, "has a YAML anchor (&)", "leave it out"));
        Optional<String> tag = event instanceof ScalarEvent scalar
                ? scalar.getTag()
                : event instanceof CollectionStartEvent start ? start.getTag() : Optional.empty();
        tag.ifPresent(t -> log.add(place, t, "has a YAML tag (!)", "leave it out"));
    }

    private Item.Mapping mapping(Place place, int depth) {
        List<Item.Entry> entries = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Event event = next(); !(event instanceof MappingEndEvent); event = next()) {
            if (!(event instanceof ScalarEvent key)) {
                throw stop(new Place(file, line, place.field()), "has a key that is not a text", "check the brackets");
            }
            Place at = place.key(key.getValue(), line);
            plain(key, at);
            Item value = item(next(), at, depth + 1);
            if (names.add(key.getValue())) {
                entries.add(new Item.Entry(key.getValue(), at, value));
            } else {
                log.add(at, "", "is given twice", "keep one of them");
            }
        }
        return new Item.Mapping(place, entries);
    }

    private Item.Sequence sequence(Place place, int depth) {
        List<Item> items = new ArrayList<>();
        for (Event event = next(); !(event instanceof SequenceEndEvent); event = next()) {
            items.add(item(event, place.item(items.size() + 1, line), depth + 1));
        }
        return new Item.Sequence(place, items);
    }

    private FaultLog.Unreadable stop(Place place, String problem, String hint) {
        log.add(place, "", problem, hint);
        return new FaultLog.Unreadable();
    }
}
