package staunch.earth;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import staunch.units.Kind;
import staunch.units.Si;

/**
 * What offset wells say of a planned well, and what was made of it.
 *
 * @param porePressure what the pore pressure is made of
 * @param strength what the strength is made of
 * @param weakZones whether a leak-off test made in a named weak zone stands in the place of the zone's estimate
 * @param tests strength tests with their matched depths, downwards
 * @param points formation pressures with their matched depths, downwards
 * @param conflicts between pieces of evidence, and between evidence and prediction; all are kept, none is averaged away
 * @param changes what was changed in the rock of the case
 * @param leftOut what could not be carried over, with the reason
 * @param pumped curves that leak-off was picked from
 * @param events losses, kicks and muds with their matched depths, downwards
 * @param boundUse what losses and kicks do
 * @param logUse what pore pressures read from logs do
 * @param logs logs of offset wells, and what was read from them
 * @param shoes casing shoes with their matched depths, by well and downwards
 */
public record OffsetEvidence(
        EvidenceUse porePressure,
        EvidenceUse strength,
        boolean weakZones,
        List<Test> tests,
        List<Point> points,
        List<EvidenceConflict> conflicts,
        List<Change> changes,
        List<String> leftOut,
        List<Pumped> pumped,
        List<Event> events,
        BoundUse boundUse,
        LogUse logUse,
        List<Log> logs,
        List<Shoe> shoes) {
    public OffsetEvidence {
        Objects.requireNonNull(porePressure, "porePressure");
        Objects.requireNonNull(strength, "strength");
        tests = List.copyOf(tests);
        points = List.copyOf(points);
        conflicts = List.copyOf(conflicts);
        changes = List.copyOf(changes);
        leftOut = List.copyOf(leftOut);
        pumped = List.copyOf(pumped);
        events = List.copyOf(events);
        Objects.requireNonNull(boundUse, "boundUse");
        Objects.requireNonNull(logUse, "logUse");
        logs = List.copyOf(logs);
        shoes = List.copyOf(shoes);
    }

    /** The same with the curves that leak-off was picked from, and with logs. */
    public OffsetEvidence with(List<Pumped> curves, List<Log> read) {
        return new OffsetEvidence(
                porePressure,
                strength,
                weakZones,
                tests,
                points,
                conflicts,
                changes,
                leftOut,
                curves,
                events,
                boundUse,
                logUse,
                read,
                shoes);
    }

    /**
     * A log of an offset well.
     *
     * @param well name of the offset well
     * @param log its curves as used
     * @param overburden of the well at the blocks of the log with a bulk density; empty where there are none
     * @param pressure pore pressure read from it, where a method is stated
     * @param fracture fracture pressure by that and the leak-off tests of the well, where it has any
     * @param counts whether the pore pressure from the log is the one that stress ratios of the well rest on
     */
    public record Log(
            String well,
            WellLog log,
            List<Weight> overburden,
            Optional<LogPressure> pressure,
            Optional<LogFracture> fracture,
            boolean counts) {
        public Log {
            Objects.requireNonNull(well, "well");
            Objects.requireNonNull(log, "log");
            overburden = List.copyOf(overburden);
            Objects.requireNonNull(pressure, "pressure");
            Objects.requireNonNull(fracture, "fracture");
        }
    }

    /**
     * Overburden at a depth of an offset well.
     *
     * @param verticalDepth below its datum, m
     * @param overburden with its spread
     */
    public record Weight(@Si(value = "m", kind = Kind.DEPTH) double verticalDepth, PressureEstimate overburden) {
        public Weight {
            Objects.requireNonNull(overburden, "overburden");
        }
    }

    /**
     * A casing shoe of an offset well.
     *
     * @param well name of the offset well
     * @param shoe as recorded, depth below the datum of its own well
     * @param verticalDepth that it corresponds to, below the datum of the planned well, m; empty where none does
     */
    public record Shoe(
            String well,
            CasingShoe shoe,
            @Si(value = "m", kind = Kind.DEPTH) OptionalDouble verticalDepth) {
        public Shoe {
            Objects.requireNonNull(well, "well");
            Objects.requireNonNull(shoe, "shoe");
            Objects.requireNonNull(verticalDepth, "verticalDepth");
        }
    }

    /**
     * A loss, kick or mud of an offset well, carried over as a bound.
     *
     * @param well name of the offset well
     * @param event as recorded, depth below the datum of its own well
     * @param verticalDepth that it corresponds to, below the datum of the planned well, m
     * @param bound pressure there: by the same stress ratio for losses, with the same excess over hydrostatic for kicks and
     *     muds, Pa absolute
     */
    public record Event(
            String well,
            DrillingEvent event,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double bound) {
        public Event {
            Objects.requireNonNull(well, "well");
            Objects.requireNonNull(event, "event");
        }

        String label() {
            return well + ": " + event.name();
        }
    }

    /**
     * A pumping curve of an offset well.
     *
     * @param well name of the offset well
     * @param pick what was read from it
     * @param column where gauge and formation stood
     */
    public record Pumped(String well, LeakOffPick pick, PumpingTest.Column column) {
        public Pumped {
            Objects.requireNonNull(well, "well");
            Objects.requireNonNull(pick, "pick");
            Objects.requireNonNull(column, "column");
        }
    }

    /**
     * A strength test of an offset well, carried over.
     *
     * @param well name of the offset well
     * @param test as recorded, depth below the datum of its own well
     * @param stressRatio (F − P) / (S − P) in its own well
     * @param verticalDepth that it corresponds to, below the datum of the planned well, m
     * @param strength there by the same ratio, Pa absolute
     * @param low the same with the uncertainty of overburden and pore pressure, Pa absolute
     * @param high likewise
     */
    public record Test(
            String well,
            StrengthTest test,
            @Si("1") double stressRatio,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double strength,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double low,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double high) {
        public Test {
            Objects.requireNonNull(well, "well");
            Objects.requireNonNull(test, "test");
        }

        String label() {
            return well + ": " + test.name();
        }
    }

    /**
     * A formation pressure of an offset well, carried over.
     *
     * @param well name of the offset well
     * @param point as recorded, depth below the datum of its own well
     * @param excess over the hydrostatic pressure of its own well, Pa; negative where depleted
     * @param verticalDepth that it corresponds to, below the datum of the planned well, m
     * @param pressure there with the same excess, Pa absolute
     */
    public record Point(
            String well,
            PressurePoint point,
            @Si(value = "Pa", kind = Kind.DIFFERENCE) double excess,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double pressure) {
        public Point {
            Objects.requireNonNull(well, "well");
            Objects.requireNonNull(point, "point");
        }

        String label() {
            return well + ": " + point.name();
        }
    }

    /**
     * Something of the rock of the case that the evidence changed.
     *
     * @param subject the profile, planned test or weak zone
     * @param verticalDepth where, m below the datum of the planned well
     * @param before pressure there by the case, Pa absolute
     * @param after pressure there with the evidence, Pa absolute
     */
    public record Change(
            String subject,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double before,
            @Si(value = "Pa", kind = Kind.ABSOLUTE) double after) {
        public Change {
            Objects.requireNonNull(subject, "subject");
        }
    }
}
