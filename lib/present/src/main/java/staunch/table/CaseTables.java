package staunch.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import staunch.control.KillSheet;
import staunch.design.Comparison;
import staunch.design.MudRule;
import staunch.design.Sensitivity;
import staunch.design.ShoeSearch;
import staunch.design.StudyTable;
import staunch.design.WellCase;
import staunch.earth.EquivalentZero;
import staunch.envelope.BullheadingOutcome;
import staunch.envelope.CirculationOutcome;
import staunch.envelope.InfluxMargin;
import staunch.envelope.Kick;
import staunch.envelope.KickOperations;
import staunch.envelope.KickResult;
import staunch.envelope.KillSheetOutcome;
import staunch.envelope.LubricationOutcome;
import staunch.envelope.MigrationOutcome;
import staunch.envelope.MudFlowOutcome;
import staunch.envelope.RiserOutcome;
import staunch.envelope.SectionEnvelope;
import staunch.envelope.SectionOperations;
import staunch.envelope.SurfaceGasOutcome;
import staunch.envelope.Verdict;
import staunch.envelope.VolumetricOutcome;
import staunch.envelope.WellEnvelope;
import staunch.units.UnitSystem;

/** Every table of a case and its results, whole, for use outside the library. */
public final class CaseTables {
    private final WellCase wellCase;
    private final UnitSystem units;
    private final List<Entry> all = new ArrayList<>();

    /** What the tables added next belong to. */
    private String design = "";

    private String section = "";

    private CaseTables(WellCase wellCase, UnitSystem units) {
        this.wellCase = wellCase;
        this.units = units;
    }

    /**
     * A table with what it belongs to.
     *
     * @param design casing design; empty where it belongs to the case
     * @param section hole section; empty where it belongs to the whole design or case
     * @param title of the table, told apart from others of its kind
     * @param sheet the same in few words, for the name of a sheet
     * @param table with rows
     */
    public record Entry(String design, String section, String title, String sheet, ResultTable table) {
        public Entry {
            Objects.requireNonNull(design, "design");
            Objects.requireNonNull(section, "section");
            Objects.requireNonNull(title, "title");
            Objects.requireNonNull(sheet, "sheet");
            Objects.requireNonNull(table, "table");
        }

        /** A table under its own name. */
        public Entry(String design, String section, ResultTable table) {
            this(design, section, table.name(), table.name(), table);
        }
    }

    /**
     * A casing design evaluated.
     *
     * @param envelope of every section
     * @param operations what follows after an influx into each section; may be empty
     * @param shoes where its shoes may stand, by each rule of the mud that was searched; may be empty
     * @param sensitivities of its sections; may be empty
     */
    public record Evaluated(
            WellEnvelope envelope,
            List<SectionOperations> operations,
            List<ShoeSearch> shoes,
            List<Sensitivity> sensitivities) {
        public Evaluated {
            Objects.requireNonNull(envelope, "envelope");
            operations = List.copyOf(operations);
            shoes = List.copyOf(shoes);
            sensitivities = List.copyOf(sensitivities);
        }
    }

    /**
     * Casing designs of a case evaluated, by themselves and together.
     *
     * @param designs each by itself
     * @param comparison of them; empty where there are fewer than two
     * @param study of them; empty where there is none
     */
    public record Results(List<Evaluated> designs, Optional<Comparison> comparison, Optional<StudyTable> study) {
        public Results {
            designs = List.copyOf(designs);
            Objects.requireNonNull(comparison, "comparison");
            Objects.requireNonNull(study, "study");
        }

        /** One design with what follows an influx into its sections and what their verdicts hang on. */
        public static Results of(
                WellEnvelope envelope, List<SectionOperations> operations, List<Sensitivity> sensitivities) {
            return new Results(
                    List.of(new Evaluated(envelope, operations, List.of(), sensitivities)),
                    Optional.empty(),
                    Optional.empty());
        }
    }

    /**
     * Tables that have rows: of the case, with its designs side by side where there are several, then of each design, then
     * of each of its sections.
     */
    public static List<Entry> of(WellCase wellCase, Results results, UnitSystem units) {
        CaseTables tables = new CaseTables(wellCase, units);
        tables.wholeCase(results);
        results.designs().forEach(tables::evaluated);
        tables.of("", "");
        tables.add(EvidenceTables.register(wellCase.register(), units));
        return List.copyOf(tables.all);
    }

    /** Tables of a comparison of casing designs. */
    public static List<ResultTable> comparison(Comparison comparison, UnitSystem units) {
        return List.of(
                Tables.comparisonSideBySide(comparison, units),
                Tables.comparison(comparison, units),
                Tables.dominance(comparison, units),
                Tables.comparedMaasp(comparison, units),
                Tables.steel(comparison, units));
    }

    private void wholeCase(Results results) {
        EquivalentZero zero = EquivalentZero.of(wellCase.options().equivalentDensityFrom(), wellCase.datum());
        add(Tables.strengthTests(wellCase.earth(), zero, units));
        wellCase.evidence().ifPresent(e -> {
            EvidenceTables.all(e, zero, units).forEach(this::add);
            e.pumped().forEach(p -> add(EvidenceTables.pumpingTest(p.pick(), units)));
            e.logs().forEach(l -> add(EvidenceTables.log(l, units)));
        });
        results.comparison().ifPresent(c -> comparison(c, units).forEach(this::add));
        results.study().ifPresent(s -> add(Tables.study(s, units)));
    }

    private void evaluated(Evaluated evaluated) {
        WellEnvelope envelope = evaluated.envelope();
        of(envelope.design(), "");
        add(Tables.sectionSummary(envelope, units));
        add(Tables.verdicts(envelope, units));
        add(Tables.windowVerdicts(envelope, units));
        add(Tables.casingProgramme(wellCase.design(design), units));
        add(Tables.holeProgramme(wellCase.design(design), units));
        add(Tables.criteria(wellCase.design(design), units));
        add(Tables.methods(envelope.options(), units));
        add(Tables.warnings(envelope.warnings(), units));
        evaluated.shoes().forEach(this::shoes);
        for (SectionEnvelope each : envelope.sections()) {
            of(envelope.design(), each.plan().name());
            section(each);
            evaluated.operations().stream()
                    .filter(o -> o.section().equals(section))
                    .forEach(this::operations);
            evaluated.sensitivities().stream()
                    .filter(s -> s.section().equals(section))
                    .forEach(s -> add("Sensitivity", SensitivityTables.swings(s, units)));
        }
    }

    private void shoes(ShoeSearch search) {
        String mud = search.mud() == MudRule.LIGHTEST ? "lightest mud" : "planned mud";
        shoes(mud, "Shoe depths", ShoeTables.shallowest(search, units));
        shoes(mud, "Stretches", ShoeTables.stretches(search, units));
        shoes(mud, "All strings", ShoeTables.joint(search, units));
    }

    private void shoes(String mud, String sheet, ResultTable table) {
        add(table.name() + ", " + mud, sheet + " " + mud, table);
    }

    private void section(SectionEnvelope envelope) {
        add(Tables.sectionInputs(envelope.plan(), units));
        add(Tables.openHole(envelope.plan(), units));
        add(Tables.drillString(envelope.plan(), units));
        add(Tables.pressureWindow(envelope, units));
        if (envelope.verdict().outcome() != Verdict.Outcome.NOT_SHUT_IN) {
            add("Tolerance at TD", Tables.kicks(envelope, units));
            add("Influx at TD", Tables.influxes(envelope, units));
            add("Tolerance by depth", Tables.toleranceAlongSection(envelope, units));
            add("Volume by intensity", Tables.volumeAgainstIntensity(envelope, units));
        }
        for (KickResult kick : List.of(envelope.drilled(), envelope.swabbed())) {
            kick.hand().ifPresent(h -> add(kick.scenario(), "Hand calc", Tables.handCalculation(h, units)));
        }
        envelope.maasp().ifPresent(m -> add(Tables.maasp(m, units)));
        add("MAASP by mud", Tables.maaspAgainstMud(envelope, units));
        add("MAASP parts by mud", Tables.maaspComponentsAgainstMud(envelope, units));
        add(Tables.masp(envelope, units));
        envelope.masps().forEach(m -> add("MASP ratings", Tables.maspChecks(m, units)));
        add("Margins circulating", Tables.influxMargins(envelope, units));
        for (InfluxMargin margin : envelope.margins()) {
            add(margin.scenario(), "Gas path", Tables.displacement(margin, units));
        }
        add(Tables.assumptions(envelope, units));
        add(Tables.warnings(envelope.warnings(), units));
    }

    private void operations(SectionOperations operations) {
        add(OperationTables.answers(operations, units));
        for (KickOperations course : List.of(operations.drilled(), operations.swabbed())) {
            if (course instanceof KickOperations.Followed kick) {
                circulated(kick);
                waited(kick);
                killSheet(kick);
            }
        }
        if (operations.riser() instanceof RiserOutcome.Computed riser) {
            add(OperationTables.riser(riser, units));
        }
        if (operations.mudFlow() instanceof MudFlowOutcome.Computed flow) {
            OperationTables.mudFlow(flow, units).forEach(t -> add("Friction", t));
            flow.trip().ifPresent(t -> add(OperationTables.trip(t, units)));
        }
        add("Operation basis", OperationTables.assumptions(operations, units));
        ResultTable warnings = Tables.warnings(operations.warnings(), units);
        add(warnings.name() + " of the operations", "Operation warnings", warnings);
    }

    private void circulated(KickOperations.Followed kick) {
        Kick.Scenario scenario = kick.kick().scenario();
        add(scenario, "Peaks", OperationTables.circulationPeaks(kick.circulations(), units));
        for (CirculationOutcome.Computed run : kick.circulations()) {
            String method = run == kick.drillers() ? "DM" : "WW";
            add(scenario, "Course " + method, OperationTables.circulation(run, kick.watched(), units));
            run.byHand().forEach(h -> add(scenario, "Hand " + method, OperationTables.byHand(h, units)));
        }
        if (kick.surfaceGas() instanceof SurfaceGasOutcome.Computed gas) {
            add(scenario, "Gas out", OperationTables.gasAtSurface(gas, units));
        }
    }

    private void waited(KickOperations.Followed kick) {
        Kick.Scenario scenario = kick.kick().scenario();
        if (kick.migration() instanceof MigrationOutcome.Computed migration) {
            add(scenario, "Limits", OperationTables.timeToLimit(migration, units));
            migration
                    .courses()
                    .forEach(c -> add(
                            scenario,
                            "Rise " + c.rate().split(" ")[0],
                            OperationTables.migration(c, kick.watched(), units)));
        }
        if (kick.volumetric() instanceof VolumetricOutcome.Computed volumetric) {
            add(scenario, "Volumetric", OperationTables.volumetric(volumetric.table(), units));
        }
        if (kick.lubrication() instanceof LubricationOutcome.Computed lubrication) {
            add(scenario, "Lubricate", OperationTables.lubricateAndBleed(lubrication.table(), units));
        }
        if (kick.bullheading() instanceof BullheadingOutcome.Computed bullheading) {
            add(scenario, "Bullheading", OperationTables.bullheading(bullheading, units));
        }
    }

    private void killSheet(KickOperations.Followed kick) {
        if (kick.killSheet() instanceof KillSheetOutcome.Computed computed) {
            Kick.Scenario scenario = kick.kick().scenario();
            KillSheet sheet = computed.sheet();
            killSheet(scenario, "Kill input", OperationTables.killSheetInput(sheet, units));
            killSheet(scenario, "Kill mud", OperationTables.killSheetAnswers(sheet, units));
            killSheet(scenario, "Kill MAASP", OperationTables.killSheetWeakPoint(sheet, units));
            killSheet(scenario, "Weighting", OperationTables.killSheetWeighting(sheet, units));
            OperationTables.killSheetChokeLine(sheet, units).ifPresent(t -> killSheet(scenario, "Choke line", t));
            killSheet(scenario, "Strokes", OperationTables.killSheetVolumes(sheet, units));
            killSheet(scenario, "Schedule", OperationTables.pressureSchedule(sheet, units));
        }
    }

    private void killSheet(Kick.Scenario kick, String sheet, ResultTable table) {
        add("Kill sheet: " + table.name() + ", " + kick.title(), sheet + word(kick), table);
    }

    private static String word(Kick.Scenario kick) {
        return " " + kick.name().toLowerCase(Locale.ROOT);
    }

    private void of(String newDesign, String newSection) {
        design = newDesign;
        section = newSection;
    }

    private void add(ResultTable table) {
        add(table.name(), table.name(), table);
    }

    private void add(String sheet, ResultTable table) {
        add(table.name(), sheet, table);
    }

    /** A table that each kick has one of. */
    private void add(Kick.Scenario kick, String sheet, ResultTable table) {
        String name = table.name();
        String title = name.endsWith(kick.title()) ? name : name + ", " + kick.title();
        add(title, sheet + word(kick), table);
    }

    private void add(String title, String sheet, ResultTable table) {
        if (table.rowCount() > 0) {
            all.add(new Entry(design, section, title, sheet, table));
        }
    }
}
