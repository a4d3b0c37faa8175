package staunch.ingest;

import java.util.regex.Pattern;

/**
 * A cell of a table as written.
 *
 * @param text without spaces around it; empty where there is nothing
 * @param number whether the file holds it as a number, so that no decimal mark is in question
 */
record Cell(String text, boolean number) {
    static final Cell EMPTY = new Cell("", false);

    private static final Pattern AROUND = Pattern.compile("^[\\s\\p{Z}\\uFEFF]+|[\\s\\p{Z}\\uFEFF]+$");

    /** Without spaces around it, also such as do not break a line. */
    static String bare(String written) {
        return AROUND.matcher(written).replaceAll("");
    }

    static Cell text(String written) {
        return new Cell(bare(written), false);
    }
}
