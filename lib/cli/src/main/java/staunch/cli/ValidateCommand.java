package staunch.cli;

import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;
import staunch.design.CasingDesign;
import staunch.design.WellCase;
import staunch.units.Warning;

/** {@code staunch validate}: reads a case and lists its faults. */
@Command(
        name = "validate",
        description =
                "Read a case and list everything that is wrong in it, with line numbers. Computes and writes nothing.",
        mixinStandardHelpOptions = true)
final class ValidateCommand implements Runnable {
    @ParentCommand
    private Main main;

    @Mixin
    private CaseArgument argument;

    @Override
    public void run() {
        WellCase wellCase = argument.read();
        Terminal terminal = main.terminal();
        terminal.out().println(wellCase.header().well() + ": no faults. " + designs(wellCase));
        for (Warning warning : wellCase.warnings()) {
            terminal.out().println("Warning: " + warning.subject() + ": " + warning.text(wellCase.units()));
        }
    }

    private static String designs(WellCase wellCase) {
        return wellCase.designs().stream()
                .map(ValidateCommand::design)
                .collect(Collectors.joining("; ", "Casing designs: ", "."));
    }

    private static String design(CasingDesign design) {
        int sections = design.sections().size();
        return design.name() + " (" + sections + (sections == 1 ? " hole section)" : " hole sections)");
    }
}
