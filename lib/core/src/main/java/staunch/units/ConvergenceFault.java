package staunch.units;

/** A numerical solution that did not reach its tolerance. */
public final class ConvergenceFault extends Fault {
    private static final long serialVersionUID = 1L;

    private final String field;

    /**
     * @param field quantity that was sought
     * @param problem what happened, with the last residual and its unit
     */
    public ConvergenceFault(String field, String problem) {
        super(field + " was not found: " + problem);
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
