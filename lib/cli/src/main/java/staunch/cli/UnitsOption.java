package staunch.cli;

import java.util.Optional;
import picocli.CommandLine.Option;
import staunch.units.UnitSystem;

/** Units that results are shown in. */
final class UnitsOption {
    @Option(
            names = "--units",
            paramLabel = "NAME",
            description = "Units to show: field, metric, mixed or si, or those that the case defines under this name."
                    + " Default: those of the case; field where there is none.")
    private String name;

    /** Units asked for, or those of the case. */
    UnitSystem or(UnitSystem ofCase) {
        return name == null || name.equals(ofCase.name()) ? ofCase : named();
    }

    /** Units asked for, or field units. */
    UnitSystem orField() {
        return or(UnitSystem.FIELD);
    }

    private UnitSystem named() {
        Optional<UnitSystem> found = UnitSystem.named(name);
        return found.orElseThrow(() -> new CommandFailure(
                ExitCode.USAGE,
                "staunch: --units: there is no unit system \"" + name + "\"; use one of "
                        + String.join(", ", UnitSystem.names())));
    }
}
