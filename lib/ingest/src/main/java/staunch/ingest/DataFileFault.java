package staunch.ingest;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import staunch.units.UnitSystem;
import staunch.units.Wording;

/** A data file that cannot be used: every problem found, with file, line and place. Nothing of the file is kept. */
public final class DataFileFault extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    /**
     * One thing wrong in a file.
     *
     * @param file name of the file
     * @param line counted from 1; 0 where the file as a whole is meant
     * @param place section or column; empty where none
     * @param problem what is wrong
     * @param advice what to do
     */
    public record Problem(String file, int line, String place, Wording problem, Wording advice) {
        /** A problem that names no quantity. */
        public Problem(String file, int line, String place, String problem, String advice) {
            this(file, line, place, new Wording(problem, List.of()), new Wording(advice, List.of()));
        }

        public Problem {
            Objects.requireNonNull(file, "file");
            Objects.requireNonNull(place, "place");
            Objects.requireNonNull(problem, "problem");
            Objects.requireNonNull(advice, "advice");
        }

        /** The whole problem in one line, in SI units. */
        public String text() {
            return text(UnitSystem.SI);
        }

        /** The whole problem in one line. */
        public String text(UnitSystem units) {
            // What is quoted from a damaged file may hold characters that would garble the message.
            return (file
                            + (line > 0 ? ":" + line : "")
                            + (place.isEmpty() ? "" : ": " + place)
                            + ": "
                            + problem.in(units)
                            + (advice.text().isEmpty() ? "" : "; " + advice.in(units)))
                    .replaceAll("\\p{Cntrl}", "?");
        }
    }

    DataFileFault(Problem problem) {
        this(List.of(problem));
    }

    DataFileFault(List<Problem> problems) {
        super(problems.stream().map(Problem::text).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /** Every problem, by line. */
    public List<Problem> problems() {
        return problems;
    }
}
