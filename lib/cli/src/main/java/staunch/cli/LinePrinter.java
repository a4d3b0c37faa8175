package staunch.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;

/**
 * Indents JSON for the eye, but sets each element of a long list, such as a point of a curve, on one line: indenting the
 * inside of the points takes more bytes than a third of all results.
 */
final class LinePrinter extends DefaultPrettyPrinter {
    private static final long serialVersionUID = 1L;

    /** Elements from which a list is long. */
    private static final int LONG = 20;

    private int deepestIndented = Integer.MAX_VALUE;

    LinePrinter() {
        DefaultIndenter indenter = new DefaultIndenter(" ", "\n") {
            private static final long serialVersionUID = 1L;

            @Override
            public void writeIndentation(JsonGenerator json, int level) throws IOException {
                if (level <= deepestIndented) {
                    super.writeIndentation(json, level);
                }
            }
        };
        indentObjectsWith(indenter);
        indentArraysWith(indenter);
    }

    /** To be called after the start of a list; gives what {@link #listEnds} is to get after its end. */
    int listBegins(int elements) {
        int before = deepestIndented;
        if (elements >= LONG) {
            deepestIndented = Math.min(before, _nesting);
        }
        return before;
    }

    void listEnds(int before) {
        deepestIndented = before;
    }

    @Override
    public void writeObjectFieldValueSeparator(JsonGenerator json) throws IOException {
        if (_nesting > deepestIndented) {
            json.writeRaw(':');
        } else {
            super.writeObjectFieldValueSeparator(json);
        }
    }

    @Override
    public void writeEndObject(JsonGenerator json, int entries) throws IOException {
        if (_nesting > deepestIndented) {
            _nesting--;
            json.writeRaw('}');
        } else {
            super.writeEndObject(json, entries);
        }
    }

    @Override
    public void writeEndArray(JsonGenerator json, int values) throws IOException {
        if (_nesting > deepestIndented) {
            _nesting--;
            json.writeRaw(']');
        } else {
            super.writeEndArray(json, values);
        }
    }
}
