package staunch.cli;

import picocli.CommandLine.Option;
import staunch.design.Study;
import staunch.design.WellCase;

/** The one casing design that a command works on. */
final class DesignOption {
    @Option(names = "--design", paramLabel = "NAME", description = "Casing design. Default: the case's first.")
    private String name;

    Study of(CaseArgument argument, WellCase wellCase) {
        return argument.study(wellCase, name == null ? wellCase.designs().get(0).name() : name);
    }
}
