package staunch.ingest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Values of a column as they come in. Numbers are kept in blocks, so that a long log never has to be copied into a
 * larger array; a missing number is held as not-a-number, which no accessor gives away.
 */
final class LasColumn {
    private static final int BLOCK = 4096;

    private final List<double[]> blocks = new ArrayList<>();
    private List<String> texts;
    private List<String> written;
    private int rows;
    private boolean anyValue;

    /**
     * @param text whether it is declared to hold text
     * @param keepsWritten whether numbers are also kept as written, in case a later value makes it a column of text
     */
    LasColumn(boolean text, boolean keepsWritten) {
        texts = text ? new ArrayList<>() : null;
        written = keepsWritten && !text ? new ArrayList<>() : null;
    }

    int rows() {
        return rows;
    }

    boolean isText() {
        return texts != null;
    }

    /** Whether a value that is not a number may still make it a column of text. */
    boolean canBecomeText() {
        return !anyValue || written != null;
    }

    double number(int row) {
        return blocks.get(row / BLOCK)[row % BLOCK];
    }

    String text(int row) {
        return texts.get(row);
    }

    void addNumber(double value, String asWritten) {
        if (rows % BLOCK == 0) {
            blocks.add(new double[BLOCK]);
        }
        blocks.get(rows / BLOCK)[rows % BLOCK] = value;
        if (written != null) {
            written.add(asWritten);
        }
        anyValue = true;
        rows++;
    }

    boolean wantsWritten() {
        return written != null;
    }

    void addMissing() {
        if (texts != null) {
            texts.add(null);
            rows++;
            return;
        }
        boolean before = anyValue;
        addNumber(Double.NaN, null);
        anyValue = before;
    }

    void addText(String value) {
        if (texts == null) {
            texts = written == null ? new ArrayList<>(Arrays.asList(new String[rows])) : written;
            written = null;
            blocks.clear();
        }
        texts.add(value);
        anyValue = true;
        rows++;
    }

    /** Frees the room of a last block that is not full. */
    void close() {
        written = null;
        if (!blocks.isEmpty() && rows % BLOCK != 0) {
            int last = blocks.size() - 1;
            blocks.set(last, Arrays.copyOf(blocks.get(last), rows % BLOCK));
        }
    }
}
