package staunch.kernel;

/** Turns a value given from outside into the Java expression that takes the place of a parameter's own. */
@FunctionalInterface
public interface ParameterWriter {
    /**
     * @param parameter the parameter as the notebook declares it
     * @param text the value as given, for example {@code 10.4 ppg}
     * @return a Java expression of the parameter's type
     * @throws IllegalArgumentException if {@code text} is no such value; the message says what is wrong with it
     */
    String expression(NotebookParameter parameter, String text);

    /** Takes the text as Java, except for {@code String} parameters, whose quotes may be left out. */
    static ParameterWriter java() {
        return (parameter, text) -> {
            boolean quoted = text.length() > 1 && text.startsWith("\"") && text.endsWith("\"");
            return parameter.type().equals("String") && !quoted
                    ? '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"'
                    : text;
        };
    }
}
