package staunch.ingest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import staunch.control.CirculationMethod;
import staunch.design.CaseHeader;
import staunch.design.CasingDesign;
import staunch.design.InputValue;
import staunch.design.WellCase;
import staunch.earth.EarthModel;
import staunch.earth.EquivalentZero;
import staunch.earth.EvidenceTransfer;
import staunch.envelope.Criteria;
import staunch.envelope.InfluxForm;
import staunch.envelope.MaspBasis;
import staunch.envelope.MethodOptions;
import staunch.limit.PressureEquipment;
import staunch.units.Source;
import staunch.units.UnitSystem;
import staunch.units.Warning;
import staunch.well.Datum;
import staunch.well.WellPath;

/** Builds a case from keys that were checked one by one, and checks what they say together. */
final class CaseBuilder {
    private final Fields root;
    private final Validator validator;
    private final FaultLog log;
    private final List<Warning> warnings = new ArrayList<>();
    private final List<InputValue> ofOffsets = new ArrayList<>();
    private EvidenceRows evidence = EvidenceRows.NONE;

    CaseBuilder(Fields root, Validator validator, FaultLog log) {
        this.root = root;
        this.validator = validator;
        this.log = log;
    }

    /** The case; empty where a fault is in the log. */
    Optional<WellCase> build(CaseDirectory directory, List<Drop> drops) {
        Optional<UnitSystem> units = root.mapping().get("units").flatMap(i -> UnitChoice.of(i, validator));
        log.units(units.orElse(UnitSystem.METRIC));
        UnitSystem shown = units.orElse(UnitSystem.METRIC);
        Optional<CaseHeader> header = attempt("title_block", this::header);
        Optional<Placed<Datum>> datum =
                root.nested("datum").flatMap(f -> log.attempt(f.place(), () -> new Placed<>(datum(f), f)));
        Map<String, Criteria> criteria = criteria();
        List<DesignBuilder.Built> designs =
                new DesignBuilder(root, criteria, datum.map(Placed::value), validator, log).build();
        SurveyBuilder survey = new SurveyBuilder(root, shown, log, warnings);
        Optional<WellPath> path = survey.build(designs);
        Optional<EarthModel> earth = earth(datum, path, shown);
        Optional<PressureEquipment> equipment = root.has("equipment")
                ? attempt("equipment", f -> new EquipmentBuilder(f, log).build())
                : Optional.of(PressureEquipment.NONE);
        Optional<MethodOptions> options =
                root.has("options") ? attempt("options", this::options) : Optional.of(MethodOptions.DEFAULT);
        if (datum.isPresent() && EarthBuilder.seaUnknown(datum.get().value())) {
            options.filter(o -> o.equivalentDensityFrom() == EquivalentZero.Place.MUDLINE)
                    .ifPresent(o -> log.add(
                            root.nested("options").orElseThrow().place("equivalent_density_from"),
                            "mudline",
                            EarthBuilder.SEA_NEEDED,
                            EarthBuilder.GIVE_SEA));
        }
        CaseChecks checks = new CaseChecks(datum.map(Placed::value), path, shown, log);
        designs.forEach(checks::check);
        Optional<EvidenceTransfer.Result> evidence =
                datum.flatMap(d -> path.flatMap(p -> earth.flatMap(e -> evidence(d, p, e, shown, directory, drops))));
        if (!log.isEmpty()) {
            return Optional.empty();
        }
        List<CasingDesign> all =
                designs.stream().map(DesignBuilder.Built::design).toList();
        Optional<WellCase> wellCase = log.attempt(
                root.place(),
                () -> new WellCase(
                        need(header),
                        need(units),
                        need(datum).value(),
                        need(path),
                        evidence.map(EvidenceTransfer.Result::earth).orElseGet(() -> need(earth)),
                        all,
                        need(equipment),
                        need(options),
                        directory.files(),
                        List.of(),
                        evidence.map(EvidenceTransfer.Result::evidence),
                        register()));
        return wellCase.map(c -> {
            new CaseWarnings(c, warnings).look();
            return new WellCase(
                    c.header(),
                    c.units(),
                    c.datum(),
                    c.path(),
                    c.earth(),
                    c.designs(),
                    c.equipment(),
                    c.options(),
                    c.files(),
                    warnings,
                    c.evidence(),
                    c.register());
        });
    }

    private List<InputValue> register() {
        List<InputValue> all = new ArrayList<>(new Register(validator).of(root.mapping(), CaseKeys.CASE));
        all.addAll(ofOffsets);
        return all;
    }

    /** What tables said of offset wells. */
    EvidenceRows evidence() {
        return evidence;
    }

    private static <T> T need(Optional<T> value) {
        return value.orElseThrow(FaultLog.Incomplete::new);
    }

    private <T> Optional<T> attempt(String key, Function<Fields, T> build) {
        return root.nested(key).flatMap(f -> log.attempt(f.place(), () -> build.apply(f)));
    }

    private CaseHeader header(Fields f) {
        return new CaseHeader(
                f.needText("well"),
                f.needText("title"),
                f.text("revision"),
                f.text("date"),
                f.text("prepared_by"),
                f.text("checked_by"),
                f.text("approved_by"),
                f.text("notice"));
    }

    private Datum datum(Fields f) {
        Datum.Place place;
        if (f.has("ground_level")) {
            if (f.has("stack")) {
                log.add(f.place("stack"), f.written("stack"), "stands in a land well", "leave it out");
            }
            place = new Datum.OnLand(f.needAmount("ground_level"));
        } else {
            double water = f.needAmount("water_depth");
            if (!f.has("stack")) {
                log.add(f.place("stack"), "", "is missing", "a well at sea needs it: surface or seabed");
            }
            place = new Datum.AtSea(
                    water,
                    f.text("stack").orElseThrow(FaultLog.Incomplete::new).equals("seabed"),
                    f.amount("sea_water_density"));
        }
        return new Datum(f.needText("name"), f.needAmount("elevation"), place);
    }

    private Optional<EarthModel> earth(Optional<Placed<Datum>> datum, Optional<WellPath> path, UnitSystem units) {
        if (!root.has("earth")) {
            return Optional.of(new EarthModel(
                    Optional.empty(), Optional.empty(), List.of(), List.of(), Optional.empty(), List.of()));
        }
        return datum.flatMap(d -> attempt("earth", f -> new EarthBuilder(f, d, path, units, log).build()));
    }

    private Optional<EvidenceTransfer.Result> evidence(
            Placed<Datum> datum,
            WellPath path,
            EarthModel predicted,
            UnitSystem units,
            CaseDirectory directory,
            List<Drop> drops) {
        if (!root.has("offset_evidence")) {
            for (Drop drop : drops) {
                log.add(
                        new Place(drop.name(), 0, ""),
                        "",
                        "cannot be read: the case has no offset_evidence",
                        "say there how its tables are written and what is made of them");
            }
            return Optional.empty();
        }
        Set<String> planned = root.nested("earth")
                .map(f -> f.rows("strength_tests").stream()
                        .filter(t -> t.flag("planned").orElse(false))
                        .map(t -> t.needText("name"))
                        .collect(Collectors.toSet()))
                .orElse(Set.of());
        return root.nested("offset_evidence").flatMap(f -> {
            EvidenceBuilder builder = new EvidenceBuilder(f, datum, directory, drops, units, log, warnings, ofOffsets);
            Optional<EvidenceTransfer.Result> result = builder.build(predicted, planned, path);
            evidence = builder.rows();
            return result;
        });
    }

    private Map<String, Criteria> criteria() {
        Map<String, Criteria> found = new HashMap<>();
        for (Fields f : root.rows("criteria")) {
            log.attempt(f.place(), () -> criteria(f)).ifPresent(c -> {
                if (found.put(c.name(), c) != null) {
                    log.add(f.place("name"), c.name(), "\"" + c.name() + "\" is given twice", "rename one");
                }
            });
        }
        return found;
    }

    private static Criteria criteria(Fields f) {
        return new Criteria(
                f.needText("name"),
                f.needText("owner"),
                new Source(f.needText("source"), f.text("place").orElse("")),
                f.amount("drilled_tolerance"),
                f.amount("swabbed_tolerance"),
                f.amount("kick_intensity"),
                f.amount("strength_margin"),
                f.amount("trip_margin"),
                f.amount("surge_margin"));
    }

    private MethodOptions options(Fields f) {
        MethodOptions d = MethodOptions.DEFAULT;
        return d.withDefinition(f.choice("definition", MethodOptions.ToleranceDefinition.class)
                        .orElse(d.definition()))
                .withDrilledPressure(f.choice("drilled_pressure", MethodOptions.DrilledPressure.class)
                        .orElse(d.drilledPressure()))
                .withWeakPoint(f.choice("weak_point", MethodOptions.WeakPointChoice.class)
                        .orElse(d.weakPoint()))
                .withEstimates(
                        f.choice("estimates", MethodOptions.Estimates.class).orElse(d.estimates()))
                .withGasModel(
                        f.choice("gas_model", MethodOptions.GasModel.class).orElse(d.gasModel()))
                .withMethod(f.choice("circulation", CirculationMethod.class).orElse(d.method()))
                .withMudDensity(f.choice("mud_density", MethodOptions.MudDensityModel.class)
                        .orElse(d.mudDensity()))
                .withMaspBasis(maspBasis(f))
                .withEquivalentDensityFrom(f.choice("equivalent_density_from", EquivalentZero.Place.class)
                        .orElse(d.equivalentDensityFrom()))
                .withInflux(influx(f))
                .withAnnularFriction(f.choice("annular_friction", MethodOptions.AnnularFriction.class)
                        .orElse(d.annularFriction()))
                .withSeawaterCredit(f.flag("seawater_credit").orElse(d.seawaterCredit()))
                .withDepths(
                        f.amount("depth_step").orElse(d.depthStep()),
                        f.count("depth_count").orElse(d.depthCount()));
    }

    private InfluxForm influx(Fields f) {
        boolean spread = f.text("influx").orElse(CaseKeys.SINGLE_BUBBLE).equals(CaseKeys.DISTRIBUTED);
        if (!spread && f.has("gas_fraction")) {
            log.add(
                    f.place("gas_fraction"),
                    f.written("gas_fraction"),
                    "a single bubble has no gas fraction",
                    "leave it out, or write influx: distributed");
            throw new FaultLog.Incomplete();
        }
        return spread
                ? new InfluxForm.Distributed(needed(f, "gas_fraction", "influx: distributed"))
                : new InfluxForm.SingleBubble();
    }

    private MaspBasis maspBasis(Fields f) {
        String basis = f.text("masp").orElse(CaseKeys.GAS_TO_SURFACE);
        unused(f, "masp_influx", basis, CaseKeys.KICK_LIMITED);
        unused(f, "masp_mud_share", basis, CaseKeys.MUD_AND_GAS);
        return switch (basis) {
            case CaseKeys.KICK_LIMITED -> new MaspBasis.KickLimited(needed(f, "masp_influx", "masp: " + basis));
            case CaseKeys.MUD_AND_GAS -> new MaspBasis.MudAndGas(needed(f, "masp_mud_share", "masp: " + basis));
            case CaseKeys.FRACTURE_LIMITED -> new MaspBasis.FractureLimited();
            default -> new MaspBasis.GasToSurface();
        };
    }

    private void unused(Fields f, String key, String basis, String of) {
        if (f.has(key) && !basis.equals(of)) {
            log.add(f.place(key), f.written(key), "it belongs to masp: " + of, "leave it out, or write masp: " + of);
        }
    }

    private double needed(Fields f, String key, String choice) {
        if (!f.has(key)) {
            log.add(f.place(key), "", "is missing", choice + " needs it");
            throw new FaultLog.Incomplete();
        }
        return f.needAmount(key);
    }
}
