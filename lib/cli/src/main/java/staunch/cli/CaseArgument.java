package staunch.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import staunch.design.MudRule;
import staunch.design.Sensitivity;
import staunch.design.ShoeSearch;
import staunch.design.Study;
import staunch.design.WellCase;
import staunch.envelope.Drilling;
import staunch.envelope.SectionOperations;
import staunch.envelope.SectionPlan;
import staunch.envelope.WellEnvelope;
import staunch.ingest.CaseFaults;
import staunch.ingest.CaseInput;
import staunch.units.Fault;
import staunch.units.UnitSystem;

/** The case that a command works on. */
final class CaseArgument {
    @Parameters(paramLabel = "CASE", description = "Directory of the case, or its case.yaml.")
    private Path path;

    @Option(
            names = "--with",
            paramLabel = "FOLDER",
            description = "Folder of offset data to put into the rock of the case, as its offset_evidence says. May be"
                    + " repeated.")
    private List<Path> drops = List.of();

    /** The path as given. */
    Path path() {
        return path;
    }

    /** Folders of offset data handed in with it. */
    List<Path> drops() {
        return drops;
    }

    /** Name of the case: that of its directory. */
    String name() {
        Path full = path.toAbsolutePath().normalize();
        Path directory = Files.isRegularFile(full) ? full.getParent() : full;
        return directory.getFileName() == null
                ? "case"
                : directory.getFileName().toString();
    }

    /** Reads the case; every fault in it is told at once. */
    WellCase read() {
        return input().wellCase();
    }

    /** Reads the case with what is to be put on record. */
    CaseInput input() {
        try {
            return CaseInput.read(path, drops);
        } catch (CaseFaults e) {
            String faults = e.faults().stream().map(f -> "  " + f.text()).collect(Collectors.joining("\n"));
            int count = e.faults().size();
            throw new CommandFailure(
                    ExitCode.CASE_FAULTS,
                    path + " has " + (count == 1 ? "a fault" : count + " faults") + ", nothing was computed:\n"
                            + faults);
        }
    }

    /** Evaluates a design, with a progress bar where a person waits for it. */
    WellEnvelope evaluate(Study study, UnitSystem units, Terminal terminal) {
        return found(study, units, () -> {
            try (ProgressLine progress = new ProgressLine("design " + study.design(), terminal)) {
                return study.evaluate(progress);
            }
        });
    }

    /** What follows after an influx into each section of a design. */
    List<SectionOperations> operations(Study study, UnitSystem units) {
        return found(study, units, study::operations);
    }

    /** Where the casing shoes of a design may stand. */
    ShoeSearch shoes(Study study, MudRule mud, UnitSystem units, Terminal terminal) {
        return found(study, units, () -> {
            try (ProgressLine progress = new ProgressLine("shoes of " + study.design(), terminal)) {
                return study.shoes(mud, progress);
            }
        });
    }

    /** What a design of the case gives; a contradiction of the case ends the command. */
    private <T> T found(Study study, UnitSystem units, Supplier<T> work) {
        try {
            return work.get();
        } catch (Fault fault) {
            throw new CommandFailure(
                    ExitCode.CASE_FAULTS, path + ", design \"" + study.design() + "\": " + fault.text(units));
        }
    }

    /** Names of the sections of a design that are shut in on a kick. */
    List<String> shutIn(Study study) {
        return study.wellCase().design(study.design()).sections().stream()
                .filter(s -> s.drilling() == Drilling.SHUT_IN)
                .map(SectionPlan::name)
                .toList();
    }

    /** What each input of sections of a design does to their verdict. */
    List<Sensitivity> sensitivities(Study study, List<String> sections, UnitSystem units, Terminal terminal) {
        return found(study, units, () -> {
            try (ProgressLine progress = new ProgressLine("sensitivity of " + study.design(), terminal)) {
                List<Sensitivity> found = new ArrayList<>();
                for (String name : sections) {
                    progress.step(found.size(), sections.size(), name);
                    found.add(study.sensitivity(name));
                }
                return found;
            }
        });
    }

    /** The study of a design of the case. */
    Study study(WellCase wellCase, String design) {
        try {
            return Study.of(wellCase).withDesign(design);
        } catch (Fault fault) {
            throw new CommandFailure(ExitCode.USAGE, "staunch: --design: " + fault.getMessage());
        }
    }
}
