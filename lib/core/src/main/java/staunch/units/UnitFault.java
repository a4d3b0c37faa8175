package staunch.units;

/** Text that is not a quantity of the wanted measure: no number, unknown unit, or a unit of another dimension. */
public final class UnitFault extends Fault {
    private static final long serialVersionUID = 1L;

    private final String field;

    /**
     * @param field what was read, in the words of the input
     * @param problem predicate of the sentence, naming the text found
     * @param advice units that would do
     */
    public UnitFault(String field, String problem, String advice) {
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
