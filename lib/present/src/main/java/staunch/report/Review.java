package staunch.report;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import staunch.control.KillSheet;
import staunch.design.Sensitivity;
import staunch.design.WellCase;
import staunch.envelope.KickOperations;
import staunch.envelope.KillSheetOutcome;
import staunch.envelope.SectionOperations;
import staunch.envelope.SectionPlan;
import staunch.envelope.WellEnvelope;
import staunch.units.Measure;
import staunch.units.UnitSystem;

/**
 * What a review shows of one casing design.
 *
 * @param wellCase the case that was evaluated
 * @param envelope its results
 * @param operations what follows after an influx into each section, in the order of the envelope's sections
 * @param sensitivities what the verdict of sections hangs on; of those that were asked for
 */
public record Review(
        WellCase wellCase, WellEnvelope envelope, List<SectionOperations> operations, List<Sensitivity> sensitivities) {
    public Review {
        Objects.requireNonNull(wellCase, "wellCase");
        Objects.requireNonNull(envelope, "envelope");
        operations = List.copyOf(operations);
        sensitivities = List.copyOf(sensitivities);
    }

    /** A review without sensitivities. */
    public Review(WellCase wellCase, WellEnvelope envelope, List<SectionOperations> operations) {
        this(wellCase, envelope, operations, List.of());
    }

    /** Sensitivity of a section; empty where it was not asked for. */
    public Optional<Sensitivity> sensitivity(String section) {
        return sensitivities.stream().filter(s -> s.section().equals(section)).findFirst();
    }

    /** Operations of a section; empty where they were not asked for. */
    public Optional<SectionOperations> operations(String section) {
        return operations.stream().filter(o -> o.section().equals(section)).findFirst();
    }

    /** Kill sheet of an influx, where it could be made. */
    public static Optional<KillSheet> killSheet(KickOperations operations) {
        return operations instanceof KickOperations.Followed followed
                        && followed.killSheet() instanceof KillSheetOutcome.Computed computed
                ? Optional.of(computed.sheet())
                : Optional.empty();
    }

    /** What the kill sheet of a planned influx into a section is about. */
    public KillSheetPage.Subject subject(String section, KickOperations.Followed followed, UnitSystem units) {
        return subject(wellCase, new Place(envelope.design(), section), followed, units);
    }

    /**
     * A hole section of a casing design.
     *
     * @param design name of the casing design
     * @param section name of the hole section
     */
    public record Place(String design, String section) {}

    /** The same for a section whose envelope was not worked out. */
    public static KillSheetPage.Subject subject(
            WellCase wellCase, Place place, KickOperations.Followed followed, UnitSystem units) {
        List<String> sections = wellCase.designs().stream()
                .filter(d -> d.name().equals(place.design()))
                .flatMap(d -> d.sections().stream())
                .map(SectionPlan::name)
                .toList();
        return new KillSheetPage.Subject(
                wellCase.header(),
                place.design(),
                place.section(),
                wellCase.datum().name(),
                "planned " + followed.kick().scenario().title() + " of "
                        + units.text(followed.volume(), Measure.VOLUME),
                KillSheetPage.Subject.fileName(place.section(), sections));
    }
}
