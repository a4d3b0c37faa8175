package staunch.envelope;

/** The case lacks something a result needs. Caught where the result is made; it never leaves this package. */
final class Missing extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String field;

    Missing(String reason, String field) {
        super(reason, null, false, false);
        this.field = field;
    }

    /** The reason, and the field that would mend it where there is one. */
    String withField() {
        return field.isEmpty() ? getMessage() : getMessage() + " (missing: " + field + ")";
    }

    Tolerance.NotAssessed asTolerance() {
        return new Tolerance.NotAssessed(getMessage(), field);
    }
}
