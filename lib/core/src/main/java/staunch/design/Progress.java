package staunch.design;

/** Told how far a long evaluation has come. */
@FunctionalInterface
public interface Progress {
    /** Listens to nothing. */
    Progress SILENT = (done, total, what) -> {};

    /**
     * @param done steps finished
     * @param total steps in all
     * @param what is being worked on
     */
    void step(long done, long total, String what);
}
