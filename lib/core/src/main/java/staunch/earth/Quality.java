package staunch.earth;

/** What the one who recorded a value thinks of it. */
public enum Quality {
    /** Nothing speaks against it. */
    GOOD,
    /** Used, and named as doubtful wherever it is used. */
    DOUBTFUL,
    /** Kept on record, used nowhere. */
    REJECTED
}
