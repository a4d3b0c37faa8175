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

    /** Length that the first block begins with, so that a file of many curves and few rows stays small. */
    private static final int FIRST = 4;

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
        int at = rows % BLOCK;
        if (at == 0) {
            blocks.add(new double[rows == 0 ? FIRST : BLOCK]);
        }
        double[] block = blocks.get(rows / BLOCK);
        if (at == block.length) {
            block = Arrays.copyOf(block, Math.min(4 * at, BLOCK));
            blocks.set(rows / BLOCK, block);
        }
        block[at] = value;
        if (written != null) {
            written.add(asWritten);
        }
        anyValue = true;
        rows++;
    }

    /** Forgets how numbers were written, and with it the chance to become text. */
    void forgetWritten() {
        written = null;
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
