package staunch.design;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import staunch.envelope.SectionOperations;
import staunch.envelope.WellEnvelope;
import staunch.units.Check;
import staunch.units.InputFault;

/**
 * What a run leaves behind: everything it was computed from, in SI and in a fixed order, and what it found. Equal input
 * gives an equal record, in whatever units the case is written.
 *
 * @param library version of the library that computed it
 * @param well name of the well
 * @param files that were read, with their hashes
 * @param tables which values came from which file, where not from the case file itself
 * @param inputs every value of the case with the choices of method, defaults written out
 * @param results of each hole section of each casing design that was evaluated
 */
public record RunRecord(
        String library,
        String well,
        List<InputFile> files,
        List<InputLine> tables,
        List<InputLine> inputs,
        List<SectionResult> results) {
    public RunRecord {
        Check.text("version of the library", library);
        Check.text("name of the well", well);
        files = List.copyOf(files);
        tables = List.copyOf(tables);
        inputs = List.copyOf(inputs);
        results = List.copyOf(results);
        for (int i = 0; i < results.size(); i++) {
            SectionResult here = results.get(i);
            if (results.stream().skip(i + 1L).anyMatch(here::isOf)) {
                throw new InputFault(
                        "section \"" + here.section() + "\" of design \"" + here.design() + "\"",
                        "is recorded twice",
                        "record each design once");
            }
        }
    }

    /**
     * Results of an evaluated design, as a record keeps them.
     *
     * @param operations of its sections, in their order
     * @throws InputFault where they are of other sections
     */
    public static List<SectionResult> results(WellEnvelope envelope, List<SectionOperations> operations) {
        if (!envelope.sections().stream()
                .map(s -> s.plan().name())
                .toList()
                .equals(operations.stream().map(SectionOperations::section).toList())) {
            throw new InputFault(
                    "operations of design \"" + envelope.design() + "\"",
                    "are not those of its sections",
                    "evaluate both by the same study");
        }
        List<SectionResult> results = new ArrayList<>();
        for (int i = 0; i < operations.size(); i++) {
            results.add(SectionResult.of(envelope.design(), envelope.sections().get(i), operations.get(i)));
        }
        return results;
    }

    /** Names of the casing designs it has results of. */
    public List<String> designs() {
        return results.stream().map(SectionResult::design).distinct().toList();
    }

    Stream<SectionResult> resultsOf(String design) {
        return results.stream().filter(r -> r.design().equals(design));
    }
}
