package staunch.units;

/** Input that is missing, contradicts itself or cannot be used, where no single number is to blame. */
public final class InputFault extends Fault {
    private static final long serialVersionUID = 1L;

    private final String field;

    /**
     * @param field what is wrong, in the words of the input
     * @param problem predicate of the sentence: "is missing", "lies above the shoe"
     * @param advice what to do
     */
    public InputFault(String field, String problem, String advice) {
        super(field + " " + problem + "; " + advice);
        this.field = field;
    }

    @Override
    public String field() {
        return field;
    }

    @Override
    public String text(UnitSystem units) {
        return getMessage();
    }
}
