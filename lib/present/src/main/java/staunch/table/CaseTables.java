package staunch.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import staunch.design.Comparison;
import staunch.design.Sensitivity;
import staunch.design.ShoeSearch;
import staunch.design.WellCase;
import staunch.earth.EquivalentZero;
import staunch.envelope.BullheadingOutcome;
import staunch.envelope.InfluxMargin;
import staunch.envelope.KickOperations;
import staunch.envelope.LubricationOutcome;
import staunch.envelope.MigrationOutcome;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.SectionOperations;
import staunch.envelope.Verdict;
import staunch.envelope.VolumetricOutcome;
import staunch.envelope.WellEnvelope;
import staunch.units.UnitSystem;

/** Every table of a case and its results, whole, for use outside the library. */
public final class CaseTables {
    private CaseTables() {}

    /**
     * A table with what it belongs to.
     *
     * @param design casing design; empty where it belongs to the case
     * @param section hole section; empty where it belongs to the whole design or case
     * @param table with rows
     */
    public record Entry(String design, String section, ResultTable table) {
        public Entry {
            Objects.requireNonNull(design, "design");
            Objects.requireNonNull(section, "section");
            Objects.requireNonNull(table, "table");
        }
    }

    /**
     * A casing design evaluated.
     *
     * @param envelope of every section
     * @param operations what follows after an influx into each section; may be empty
     * @param shoes where its shoes may stand; empty where that was not searched
     * @param sensitivities of its sections; may be empty
     */
    public record Evaluated(
            WellEnvelope envelope,
            List<SectionOperations> operations,
            Optional<ShoeSearch> shoes,
            List<Sensitivity> sensitivities) {
        public Evaluated {
            Objects.requireNonNull(envelope, "envelope");
            operations = List.copyOf(operations);
            Objects.requireNonNull(shoes, "shoes");
            sensitivities = List.copyOf(sensitivities);
        }
    }

    /**
     * Tables that have rows: of the case, with its designs side by side where there are several, then of each design, then
     * of each of its sections.
     */
    public static List<Entry> of(WellCase wellCase, List<Evaluated> designs, UnitSystem units) {
        List<Entry> all = new ArrayList<>();
        EquivalentZero zero = EquivalentZero.of(wellCase.options().equivalentDensityFrom(), wellCase.datum());
        add(all, "", "", Tables.strengthTests(wellCase.earth(), zero, units));
        wellCase.evidence().ifPresent(e -> EvidenceTables.all(e, zero, units).forEach(t -> add(all, "", "", t)));
        wellCase.evidence()
                .ifPresent(e -> e.pumped().forEach(p -> add(all, "", "", EvidenceTables.pumpingTest(p.pick(), units))));
        if (designs.size() > 1) {
            comparison(
                    all,
                    Comparison.of(
                            wellCase, designs.stream().map(Evaluated::envelope).toList()),
                    units);
        }
        for (Evaluated evaluated : designs) {
            WellEnvelope envelope = evaluated.envelope();
            String design = envelope.design();
            add(all, design, "", Tables.sectionSummary(envelope, units));
            add(all, design, "", Tables.verdicts(envelope, units));
            add(all, design, "", Tables.windowVerdicts(envelope, units));
            add(all, design, "", Tables.casingProgramme(wellCase.design(design), units));
            add(all, design, "", Tables.holeProgramme(wellCase.design(design), units));
            add(all, design, "", Tables.criteria(wellCase.design(design), units));
            add(all, design, "", Tables.methods(envelope.options(), units));
            add(all, design, "", Tables.warnings(envelope.warnings(), units));
            evaluated.shoes().ifPresent(search -> {
                add(all, design, "", ShoeTables.shallowest(search, units));
                add(all, design, "", ShoeTables.stretches(search, units));
                add(all, design, "", ShoeTables.joint(search, units));
            });
            for (SectionEnvelope section : envelope.sections()) {
                section(all, design, section, units);
                evaluated.operations().stream()
                        .filter(o -> o.section().equals(section.plan().name()))
                        .forEach(o -> operations(all, design, o, units));
                evaluated.sensitivities().stream()
                        .filter(x -> x.section().equals(section.plan().name()))
                        .forEach(x -> add(all, design, x.section(), SensitivityTables.swings(x, units)));
            }
        }
        add(all, "", "", EvidenceTables.register(wellCase.register(), units));
        return List.copyOf(all);
    }

    private static void comparison(List<Entry> all, Comparison comparison, UnitSystem units) {
        add(all, "", "", Tables.comparison(comparison, units));
        add(all, "", "", Tables.dominance(comparison, units));
        add(all, "", "", Tables.comparedMaasp(comparison, units));
        add(all, "", "", Tables.steel(comparison, units));
    }

    private static void section(List<Entry> all, String design, SectionEnvelope section, UnitSystem units) {
        String name = section.plan().name();
        add(all, design, name, Tables.sectionInputs(section.plan(), units));
        add(all, design, name, Tables.openHole(section.plan(), units));
        add(all, design, name, Tables.drillString(section.plan(), units));
        add(all, design, name, Tables.pressureWindow(section, units));
        if (section.verdict().outcome() != Verdict.Outcome.NOT_SHUT_IN) {
            add(all, design, name, Tables.kicks(section, units));
            add(all, design, name, Tables.influxes(section, units));
            add(all, design, name, Tables.toleranceAlongSection(section, units));
            add(all, design, name, Tables.volumeAgainstIntensity(section, units));
        }
        section.maasp().ifPresent(m -> add(all, design, name, Tables.maasp(m, units)));
        add(all, design, name, Tables.maaspAgainstMud(section, units));
        add(all, design, name, Tables.maaspComponentsAgainstMud(section, units));
        add(all, design, name, Tables.masp(section, units));
        section.masps().forEach(m -> add(all, design, name, Tables.maspChecks(m, units)));
        add(all, design, name, Tables.influxMargins(section, units));
        for (InfluxMargin margin : section.margins()) {
            add(all, design, name, Tables.displacement(margin, units));
        }
        add(all, design, name, Tables.assumptions(section, units));
        add(all, design, name, Tables.warnings(section.warnings(), units));
    }

    private static void operations(List<Entry> all, String design, SectionOperations operations, UnitSystem units) {
        String section = operations.section();
        add(all, design, section, OperationTables.answers(operations, units));
        for (KickOperations course : List.of(operations.drilled(), operations.swabbed())) {
            if (course instanceof KickOperations.Followed kick) {
                kick(all, design, section, kick, units);
            }
        }
        add(all, design, section, OperationTables.assumptions(operations, units));
        add(all, design, section, Tables.warnings(operations.warnings(), units));
    }

    private static void kick(
            List<Entry> all, String design, String section, KickOperations.Followed kick, UnitSystem units) {
        if (kick.migration() instanceof MigrationOutcome.Computed migration) {
            add(all, design, section, OperationTables.timeToLimit(migration, units));
        }
        add(all, design, section, OperationTables.circulationPeaks(kick.circulations(), units));
        if (kick.volumetric() instanceof VolumetricOutcome.Computed volumetric) {
            add(all, design, section, OperationTables.volumetric(volumetric.table(), units));
        }
        if (kick.lubrication() instanceof LubricationOutcome.Computed lubrication) {
            add(all, design, section, OperationTables.lubricateAndBleed(lubrication.table(), units));
        }
        if (kick.bullheading() instanceof BullheadingOutcome.Computed bullheading) {
            add(all, design, section, OperationTables.bullheading(bullheading, units));
        }
    }

    private static void add(List<Entry> all, String design, String section, ResultTable table) {
        if (table.rowCount() > 0) {
            all.add(new Entry(design, section, table));
        }
    }
}
