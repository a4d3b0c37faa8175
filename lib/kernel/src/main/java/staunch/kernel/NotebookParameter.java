package staunch.kernel;

/**
 * A parameter as the cell tagged {@code parameters} declares it.
 *
 * @param type the declared type, for example {@code double}, or {@code var}
 * @param value the expression it is declared with, for example {@code ppg(9.6)}
 */
public record NotebookParameter(String name, String type, String value) {}
