package staunch.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import staunch.ingest.CaseFaults;
import staunch.ingest.DataFileFault;
import staunch.kernel.KernelIdentity;
import staunch.kernel.SessionOptions;
import staunch.units.Fault;
import staunch.units.UnitSystem;

/** What the library brings into a notebook session: imports, displays, and how its faults read. */
final class Notebooks {
    private static final List<String> IMPORTS = List.of(
            "staunch.chart.*",
            "staunch.control.*",
            "staunch.design.*",
            "staunch.earth.*",
            "staunch.envelope.*",
            "staunch.fluid.*",
            "staunch.influx.*",
            "staunch.ingest.*",
            "staunch.limit.*",
            "staunch.report.*",
            "staunch.table.*",
            "staunch.units.*",
            "staunch.well.*",
            "tech.tablesaw.api.*",
            "static staunch.cli.Cells.*",
            "static staunch.units.Measure.*",
            "static staunch.units.Quantities.*");

    private Notebooks() {}

    /** A session whose displays and faults speak in the given units. */
    static SessionOptions options(UnitSystem units) {
        return SessionOptions.standard()
                .withImports(IMPORTS)
                .withDisplays(Displays.in(units))
                .withSources(sources())
                .withErrors(fault -> describe(fault, units));
    }

    /** Sources for Javadoc: the library's lie in its own archive, the JDK's beside it where they are installed. */
    private static List<Path> sources() {
        Path jdk = Path.of(System.getProperty("java.home"), "lib", "src.zip");
        return Stream.of(RunningJar.path(), jdk).filter(Files::exists).toList();
    }

    static KernelIdentity identity() {
        return new KernelIdentity(
                "staunch",
                Version.LIBRARY,
                "Staunch " + Version.LIBRARY + ": well-control planning in Java "
                        + Runtime.version().feature(),
                Map.of());
    }

    private static Optional<String> describe(Throwable fault, UnitSystem units) {
        if (fault instanceof Fault known) {
            return Optional.of(known.text(units));
        }
        return fault instanceof CaseFaults || fault instanceof DataFileFault
                ? Optional.of(fault.getMessage())
                : Optional.empty();
    }
}
