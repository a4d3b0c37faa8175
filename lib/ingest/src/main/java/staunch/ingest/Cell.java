package staunch.ingest;

/**
 * A cell of a table as written.
 *
 * @param text without spaces around it; empty where there is nothing
 * @param number whether the file holds it as a number, so that no decimal mark is in question
 */
record Cell(String text, boolean number) {
    static final Cell EMPTY = new Cell("", false);

    static Cell text(String written) {
        return new Cell(written.strip(), false);
    }
}
