package staunch.ingest;

import java.util.Optional;

/** Versions of the log ASCII standard of the Canadian Well Logging Society that are read. */
public enum LasVersion {
    /** September 1990; text of the well section stands after the colon. */
    V1_2(1.2),
    /** September 1992. */
    V2_0(2.0),
    /** June 2000; further sections of parameters, definitions and data. */
    V3_0(3.0);

    private final double number;

    LasVersion(double number) {
        this.number = number;
    }

    static Optional<LasVersion> of(double number) {
        for (LasVersion version : values()) {
            if (version.number == number) {
                return Optional.of(version);
            }
        }
        return Optional.empty();
    }

    /** As written in a file: 2.0. */
    public String title() {
        return Double.toString(number);
    }
}
