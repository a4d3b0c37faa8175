package staunch.ingest;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.stream.Collectors;
import staunch.design.InputLine;
import staunch.design.InputValue;
import staunch.earth.DensityLog;
import staunch.earth.LogFracture;
import staunch.earth.LogMethod;
import staunch.earth.LogPressure;
import staunch.earth.LogProperty;
import staunch.earth.NormalPressure;
import staunch.earth.OffsetEvidence;
import staunch.earth.OffsetWell;
import staunch.earth.PorePressureMethod;
import staunch.earth.PressureEstimate;
import staunch.earth.PressurePoint;
import staunch.earth.PressureProfile;
import staunch.earth.Range;
import staunch.earth.TrendChoice;
import staunch.earth.WellLog;
import staunch.units.Amount;
import staunch.units.InputFault;
import staunch.units.Measure;
import staunch.units.Source;
import staunch.units.Warning;
import staunch.units.Wording;

/** Reads the logs of offset wells and makes overburden and pore pressure of them. */
final class LogBuilder {
    static final String LOGS = "logs";
    private static final double STEP = 10;

    private final FaultLog log;
    private final List<Warning> warnings;
    private final List<InputValue> register;
    private final List<InputLine> files;
    private final Map<String, List<WellLog>> logs = new HashMap<>();

    LogBuilder(FaultLog log, List<Warning> warnings, List<InputValue> register, List<InputLine> files) {
        this.log = log;
        this.warnings = warnings;
        this.register = register;
        this.files = files;
    }

    // --- Reading

    /** Reads a file as a layout says. */
    void read(Fields f, Path path, String shown, Map<String, OffsetSite> sites) {
        String well = f.needText("well");
        OffsetSite site = sites.get(well);
        if (site == null) {
            log.add(
                    f.place("well"),
                    well,
                    "names the unknown well " + well,
                    "add it to the wells, or check its spelling");
            return;
        }
        log.attempt(f.place(), () -> {
            LogColumns columns = columns(f);
            try {
                LogBlocks.Read read = LogBlocks.read(path, shown, columns, site);
                logs.computeIfAbsent(well, w -> new ArrayList<>()).add(read.log());
                warnings.addAll(read.warnings());
                register.addAll(read.register());
                files.add(new InputLine("offset_evidence." + EvidenceRows.LOGS + "[" + well + "]", shown));
                return true;
            } catch (DataFileFault e) {
                log.add(shown, e);
                throw new FaultLog.Incomplete();
            }
        });
    }

    private LogColumns columns(Fields f) {
        if (!f.has("density") && !f.has("sonic") && !f.has("resistivity")) {
            log.add(f.place(), "", "names no curve", "give density, sonic or resistivity");
            throw new FaultLog.Incomplete();
        }
        return new LogColumns(
                EvidenceBuilder.logDepth(f.needNested("depth"), log),
                curve(f, "density", Measure.DENSITY),
                curve(f, "sonic", Measure.SLOWNESS),
                curve(f, "resistivity", Measure.RESISTIVITY),
                f.nested("shale")
                        .map(s -> new LogColumns.Shale(
                                EvidenceBuilder.column(s),
                                s.needAmount("cut_off"),
                                s.text("shale").filter("below"::equals).isEmpty())),
                f.amount("step").orElse(STEP),
                f.text("spikes").filter("leave_out"::equals).isEmpty(),
                f.text("bad_readings").filter("leave_out"::equals).isPresent());
    }

    /** A curve with its unit; a unit of another dimension is on record already. */
    private static Optional<TableColumn> curve(Fields f, String key, Measure measure) {
        Optional<TableColumn> column = f.nested(key).map(EvidenceBuilder::column);
        if (column.isPresent() && !LogUnits.holds(column.get().unit(), measure)) {
            throw new FaultLog.Incomplete();
        }
        return column;
    }

    /** Logs by well, as read or as a record holds them, downwards. */
    Map<String, List<WellLog>> logs() {
        Map<String, List<WellLog>> sorted = new HashMap<>();
        logs.forEach((well, all) -> sorted.put(
                well,
                all.stream().sorted(Comparator.comparingDouble(LogBuilder::top)).toList()));
        return sorted;
    }

    void recorded(Map<String, List<WellLog>> rows) {
        logs.putAll(rows);
    }

    private static double top(WellLog one) {
        return one.blocks().get(0).verticalDepth();
    }

    private static double bottom(WellLog one) {
        return one.blocks().get(one.blocks().size() - 1).verticalDepth();
    }

    // --- What is made of them

    /** The logs of a well as one; empty where it has none. */
    Optional<WellLog> of(String well) {
        List<WellLog> all = logs().getOrDefault(well, List.of());
        for (int i = 1; i < all.size(); i++) {
            if (top(all.get(i)) <= bottom(all.get(i - 1))) {
                throw new InputFault(
                        "logs of " + well,
                        "overlap: " + all.get(i - 1).source().text() + " reaches below the top of "
                                + all.get(i).source().text(),
                        "hand in one of them, or cut them so that each depth is in one");
            }
        }
        if (all.isEmpty()) {
            return Optional.empty();
        }
        String documents = all.stream().map(l -> l.source().document()).collect(Collectors.joining("; "));
        return Optional.of(
                new WellLog(all.stream().flatMap(l -> l.blocks().stream()).toList(), new Source(documents, "")));
    }

    Optional<DensityLog> density(Fields well, Optional<WellLog> curves) {
        return curves.flatMap(c -> c.density(well.amount("density_uncertainty").orElse(0)));
    }

    /** Pore pressure from the log, where a way to read it is stated. */
    Optional<LogPressure> pressure(
            Fields well,
            Optional<WellLog> curves,
            NormalPressure normal,
            Range overburden,
            List<PressurePoint> points) {
        Optional<Fields> f = well.nested("log_pressure");
        if (f.isEmpty() || curves.isEmpty()) {
            return Optional.empty();
        }
        LogMethod method = method(f.get());
        LogPressure made = LogPressure.of(
                method,
                trend(f.get().needNested("normal_trend"), method.property()),
                f.get().amount("uncertainty"),
                curves.get(),
                new LogPressure.Surroundings(normal, overburden, points));
        tell(well.needText("name"), made);
        return Optional.of(made);
    }

    private LogMethod method(Fields f) {
        String method = f.needText("method");
        if (method.equals("equivalent_depth")) {
            unused(f, "exponent", "belongs to Eaton's equation");
            unused(f, "calibrate", "belongs to Eaton's equation");
            if (!f.has("curve")) {
                throw missing(f, "curve", "method: equivalent_depth needs it");
            }
            return new LogMethod.EquivalentDepth(
                    f.needText("curve").equals("sonic") ? LogProperty.SLOWNESS : LogProperty.RESISTIVITY);
        }
        unused(f, "curve", "belongs to method: equivalent_depth");
        return new LogMethod.Eaton(
                method.equals("eaton_sonic") ? PorePressureMethod.EATON_SONIC : PorePressureMethod.EATON_RESISTIVITY,
                f.amount("exponent"),
                f.flag("calibrate").orElse(false));
    }

    private void unused(Fields f, String key, String why) {
        if (f.has(key)) {
            log.add(f.place(key), f.written(key), why, "leave it out");
            throw new FaultLog.Incomplete();
        }
    }

    private FaultLog.Incomplete missing(Fields f, String key, String why) {
        log.add(f.place(key), "", "is missing", why);
        return new FaultLog.Incomplete();
    }

    private TrendChoice trend(Fields f, LogProperty property) {
        if (f.has("from_tvd")) {
            unused(f, "length", "belongs to a stated trend");
            unused(f, "scatter", "belongs to a stated trend");
            if (!f.has("to_tvd")) {
                throw missing(f, "to_tvd", "from_tvd needs it");
            }
            return new TrendChoice.Fitted(f.needAmount("from_tvd"), f.needAmount("to_tvd"));
        }
        unused(f, "to_tvd", "belongs to from_tvd");
        String key = property == LogProperty.SLOWNESS ? "slowness_at_ground" : "resistivity_at_ground";
        if (!f.has(key)) {
            throw missing(f, key, "the method reads " + property.title());
        }
        if (!f.has("length")) {
            throw missing(f, "length", key + " needs it");
        }
        return new TrendChoice.Given(
                f.needAmount(key), f.needAmount("length"), f.amount("scatter").orElse(0));
    }

    private void tell(String well, LogPressure made) {
        String subject = "log of offset well " + well;
        if (!made.unread().isEmpty()) {
            LogPressure.Unread first = made.unread().get(0);
            warnings.add(new Warning(
                    subject,
                    Wording.joined(
                            List.of(
                                    Wording.of(
                                            made.unread().size() + " readings give no pore pressure, the first at {}: ",
                                            Amount.of(first.verticalDepth(), Measure.DEPTH)),
                                    first.reason().within("", ".")),
                            "")));
        }
        made.unread().stream()
                .filter(u -> u.ratio() < 1)
                .min(Comparator.comparingDouble(LogPressure.Unread::ratio))
                .ifPresent(least -> warnings.add(new Warning(
                        subject,
                        Wording.of(
                                "some of these readings are less compacted than normal, most at {}: pore pressure may be"
                                        + " higher there than the log shows, which is taken straight past them.",
                                Amount.of(least.verticalDepth(), Measure.DEPTH)))));
        made.uncalibrated()
                .forEach(reason -> warnings.add(new Warning(subject, reason.within("no exponent from ", "."))));
        if (made.method() instanceof LogMethod.Eaton eaton
                && eaton.calibrated()
                && made.exponent().orElseThrow().points() == 0) {
            warnings.add(new Warning(
                    subject,
                    "the exponent is to be calibrated, but no measured pressure of the well tells one; "
                            + made.exponent().orElseThrow().likely() + " is used, "
                            + (eaton.exponent().isPresent() ? "as the case states." : "that of the paper.")));
        }
    }

    /** Pore pressure of an offset well, of its profile or of its log, as the case chooses. */
    Range porePressure(Fields well, Optional<Range> profile, Optional<LogPressure> pressure, NormalPressure normal) {
        boolean fromLog = well.text("pore_pressure_from").filter("log"::equals).isPresent();
        String name = well.needText("name");
        if (fromLog && !well.has("log_pressure")) {
            throw missing(well, "log_pressure", "pore_pressure_from: log needs it");
        }
        if (!fromLog || pressure.isEmpty()) {
            if (profile.isEmpty()) {
                throw missing(
                        well,
                        "pore_pressure",
                        fromLog ? "no log of " + name + " was read" : "or state pore_pressure_from: log");
            }
            if (fromLog) {
                warnings.add(new Warning(
                        "offset well " + name, "no log of it was read; its pore pressure is the profile of the case."));
            }
            return profile.get();
        }
        Range logged = pressure.get().profile();
        double top = logged.likely().top();
        if (profile.filter(p -> p.likely().top() < top).isEmpty()) {
            warnings.add(new Warning(
                    "offset well " + name,
                    Wording.of(
                            "no pore pressure is given above its log, which begins at {} with {}: above it the hydrostatic"
                                    + " pressure counts, {} there. Tests above it seem too strong where the pressure is higher.",
                            Amount.of(top, Measure.DEPTH),
                            Amount.of(logged.likely().lowestAt(top), Measure.PRESSURE_ABSOLUTE),
                            Amount.of(normal.at(top), Measure.PRESSURE_ABSOLUTE))));
        }
        PressureProfile above =
                normal.profile(Math.max(normal.waterLevel(), normal.datum().groundOrSeabedDepth()), top);
        return new Range(
                joined(profile.map(Range::likely), above, logged.likely()),
                Optional.of(joined(profile.map(Range::lowOrLikely), above, logged.lowOrLikely())),
                Optional.of(joined(profile.map(Range::highOrLikely), above, logged.highOrLikely())),
                profile.flatMap(Range::source));
    }

    /** The log between its ends; the profile above and below, or hydrostatic pressure above where there is none. */
    private static PressureProfile joined(
            Optional<PressureProfile> profile, PressureProfile hydrostatic, PressureProfile logged) {
        double top = logged.top();
        double bottom = logged.bottom();
        List<double[]> points = new ArrayList<>();
        PressureProfile over = profile.filter(p -> p.top() < top).orElse(hydrostatic);
        add(points, over, z -> z < top);
        if (over.covers(top)) {
            points.add(new double[] {top, over.above(top)});
        }
        add(points, logged, z -> true);
        profile.filter(p -> p.bottom() > bottom).ifPresent(under -> {
            if (under.covers(bottom)) {
                points.add(new double[] {bottom, under.below(bottom)});
            }
            add(points, under, z -> z > bottom);
        });
        return PressureProfile.of(
                points.stream().mapToDouble(p -> p[0]).toArray(),
                points.stream().mapToDouble(p -> p[1]).toArray());
    }

    private static void add(List<double[]> points, PressureProfile from, DoublePredicate wanted) {
        double[] z = from.depths();
        double[] p = from.pressures();
        for (int i = 0; i < z.length; i++) {
            if (wanted.test(z[i])) {
                points.add(new double[] {z[i], p[i]});
            }
        }
    }

    /** What is shown of a log. */
    OffsetEvidence.Log shown(Fields well, WellLog curves, Optional<DensityLog> density, OffsetWell offset) {
        Range overburden = offset.overburden();
        List<OffsetEvidence.Weight> weights = density.stream()
                .flatMapToDouble(d -> Arrays.stream(d.depths()))
                .mapToObj(z -> new OffsetEvidence.Weight(
                        z,
                        new PressureEstimate(
                                overburden.lowOrLikely().lowestAt(z),
                                overburden.likely().lowestAt(z),
                                overburden.highOrLikely().lowestAt(z))))
                .toList();
        Optional<LogPressure> pressure = offset.logged().log();
        boolean counts = pressure.isPresent()
                && well.text("pore_pressure_from").filter("log"::equals).isPresent();
        return new OffsetEvidence.Log(offset.name(), curves, weights, pressure, LogFracture.of(offset), counts);
    }
}
