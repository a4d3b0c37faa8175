package staunch.kernel;

/**
 * One statement or declaration of a cell.
 *
 * @param source its text, ended with a semicolon where a declaration left it out
 * @param offset where it starts in the cell
 * @param showsValue whether it is an expression its author left without a semicolon
 * @param wellFormed whether it is whole and keeps to the grammar
 */
record CellPiece(String source, int offset, boolean showsValue, boolean wellFormed) {}
