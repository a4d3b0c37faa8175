package staunch.cli;

import java.util.List;
import picocli.CommandLine.Option;
import staunch.design.CasingDesign;
import staunch.design.Study;
import staunch.design.WellCase;

/** The casing designs that a command works on, each by itself. */
final class DesignsOption {
    @Option(
            names = "--design",
            paramLabel = "NAME",
            description = "Casing design; may be repeated. Default: all of the case.")
    private List<String> names = List.of();

    List<Study> of(CaseArgument argument, WellCase wellCase) {
        List<String> asked = names.isEmpty()
                ? wellCase.designs().stream().map(CasingDesign::name).toList()
                : names;
        return asked.stream()
                .distinct()
                .map(name -> argument.study(wellCase, name))
                .toList();
    }
}
