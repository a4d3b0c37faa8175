package staunch.ingest;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import staunch.design.CasingDesign;
import staunch.design.WellCase;
import staunch.earth.PressureProfile;
import staunch.earth.StrengthTest;
import staunch.earth.TemperatureProfile;
import staunch.envelope.Drilling;
import staunch.envelope.SectionPlan;
import staunch.limit.FlowLine;
import staunch.units.Amount;
import staunch.units.Measure;
import staunch.units.Physics;
import staunch.units.Warning;
import staunch.units.Wording;
import staunch.well.CasingString;

/** Looks for what is legal but suspicious in a case. */
final class CaseWarnings {
    private static final double SHORT_LAP = 30;
    private static final double LONG_POCKET = 30;
    private static final double LINER_DEPTH = 50;
    private static final double SHOE_TEST_ABOVE = 1;
    private static final double SHOE_TEST_BELOW = 30;

    private final WellCase wellCase;
    private final List<Warning> warnings;

    CaseWarnings(WellCase wellCase, List<Warning> warnings) {
        this.wellCase = wellCase;
        this.warnings = warnings;
    }

    void look() {
        strengthBelowPorePressure();
        profilesEnd();
        equipment();
        for (CasingDesign design : wellCase.designs()) {
            for (int i = 0; i < design.sections().size(); i++) {
                section(design, i);
            }
            design.strings().forEach(s -> lap(design, s));
            sourGas(design);
        }
    }

    private void warn(String subject, String template, Amount... amounts) {
        Warning warning = new Warning(subject, Wording.of(template, amounts));
        if (!warnings.contains(warning)) {
            warnings.add(warning);
        }
    }

    private static Amount depth(double z) {
        return Amount.of(z, Measure.DEPTH);
    }

    private static Amount density(double rho) {
        return Amount.of(rho, Measure.EQUIVALENT_DENSITY);
    }

    private static Amount length(double length) {
        return Amount.of(length, Measure.LENGTH);
    }

    private void strengthBelowPorePressure() {
        Optional<PressureProfile> pore = wellCase.earth().porePressure().map(r -> r.likely());
        Optional<PressureProfile> strength = wellCase.earth().strength().map(r -> r.lowOrLikely());
        if (pore.isEmpty() || strength.isEmpty()) {
            return;
        }
        TreeSet<Double> depths = new TreeSet<>();
        for (PressureProfile profile : List.of(pore.get(), strength.get())) {
            for (double z : profile.depths()) {
                depths.add(z);
            }
        }
        depths.stream()
                .filter(z -> pore.get().covers(z) && strength.get().covers(z))
                .filter(z -> z > wellCase.datum().groundOrSeabedDepth()
                        && strength.get().lowestAt(z) < pore.get().lowestAt(z))
                .findFirst()
                .ifPresent(z -> warn(
                        "strength",
                        "the low estimate is below the likely pore pressure at {}: check both profiles.",
                        depth(z)));
    }

    private void profilesEnd() {
        double deepest = 0;
        for (CasingDesign design : wellCase.designs()) {
            for (SectionPlan plan : design.sections()) {
                if (plan.drilling() == Drilling.SHUT_IN) {
                    deepest = Math.max(deepest, wellCase.path().verticalDepth(plan.bottomDepth()));
                }
            }
        }
        double td = deepest;
        wellCase.earth()
                .porePressure()
                .ifPresent(r -> ends("pore pressure", r.likely().bottom(), td));
        wellCase.earth().strength().ifPresent(r -> ends("strength", r.likely().bottom(), td));
        wellCase.earth().temperature().filter(t -> !t.covers(td)).ifPresent(t -> ends("temperature", last(t), td));
    }

    private static double last(TemperatureProfile profile) {
        double[] depths = profile.depths();
        return depths[depths.length - 1];
    }

    private void ends(String what, double bottom, double td) {
        if (bottom < td) {
            warn(
                    what,
                    "the profile ends at {}, above the deepest section TD at {} of vertical depth: below it nothing is"
                            + " assessed that needs it.",
                    depth(bottom),
                    depth(td));
        }
    }

    private void equipment() {
        boolean subsea = wellCase.datum().stackAtSeabed();
        Optional<FlowLine> line = wellCase.equipment().chokeLine();
        if (subsea && line.isEmpty()) {
            warn("choke line", "the stack stands on the seabed and the case has no choke line.");
        }
        line.filter(l -> subsea && l.length() < wellCase.datum().stackDepth() * 0.95)
                .ifPresent(l -> warn("choke line", "it is shorter than the way from the stack to the datum."));
        if (!subsea && wellCase.equipment().riser().isPresent()) {
            warn("riser", "the stack stands at surface and the case has a drilling riser.");
        }
    }

    private void section(CasingDesign design, int index) {
        SectionPlan plan = design.sections().get(index);
        double shoe = wellCase.path().verticalDepth(plan.topDepth());
        if (index > 0) {
            double pocket = design.sections().get(index - 1).bottomDepth() - plan.topDepth();
            if (pocket > LONG_POCKET) {
                warn(
                        plan.name(),
                        "the hole reaches {} below the shoe at {}: a long pocket.",
                        length(pocket),
                        depth(plan.topDepth()));
            }
        }
        plan.mud().ifPresent(mud -> {
            for (StrengthTest test : wellCase.earth().tests()) {
                boolean atShoe = test.verticalDepth() >= shoe - SHOE_TEST_ABOVE
                        && test.verticalDepth() <= shoe + SHOE_TEST_BELOW;
                double equivalent = (test.pressure() - Physics.ATMOSPHERE) / (Physics.GRAVITY * test.verticalDepth());
                if (atShoe && equivalent < mud.density()) {
                    warn(
                            plan.name(),
                            "the mud is heavier than the "
                                    + test.standing().title().toLowerCase(Locale.ROOT) + " \"" + test.name()
                                    + "\" of {} at its shoe.",
                            density(equivalent));
                }
            }
            highPorePressure(plan, mud.density(), shoe);
        });
    }

    private void highPorePressure(SectionPlan plan, double mud, double shoe) {
        Optional<PressureProfile> high = wellCase.earth().porePressure().map(r -> r.highOrLikely());
        if (plan.drilling() != Drilling.SHUT_IN || high.isEmpty()) {
            return;
        }
        double td = wellCase.path().verticalDepth(plan.bottomDepth());
        TreeSet<Double> depths = new TreeSet<>(List.of(shoe, td));
        for (double z : high.get().depths()) {
            if (z > shoe && z < td) {
                depths.add(z);
            }
        }
        OptionalDouble first = depths.stream()
                .filter(z -> high.get().covers(z)
                        && high.get().highestAt(z) > Physics.ATMOSPHERE + mud * Physics.GRAVITY * z)
                .mapToDouble(Double::doubleValue)
                .findFirst();
        first.ifPresent(z -> warn(
                plan.name(),
                "the mud of {} is below the high estimate of pore pressure at {} of vertical depth.",
                density(mud),
                depth(z)));
    }

    private void lap(CasingDesign design, CasingString string) {
        if (string.topDepth() <= wellCase.datum().groundOrSeabedDepth() + LINER_DEPTH) {
            return;
        }
        design.strings().stream()
                .filter(s -> s.shoeDepth() > string.topDepth() && s.shoeDepth() < string.shoeDepth())
                .mapToDouble(s -> s.shoeDepth() - string.topDepth())
                .max()
                .stream()
                .filter(lap -> lap < SHORT_LAP)
                .forEach(lap -> warn(string.name(), "the liner overlaps the string above by {} only.", length(lap)));
    }

    private void sourGas(CasingDesign design) {
        boolean sour = design.sections().stream()
                .anyMatch(s -> s.gas().isPresent() && s.gas().get().hydrogenSulphide() > 0);
        if (!sour) {
            return;
        }
        for (CasingString string : design.strings()) {
            if (string.intervals().stream().anyMatch(i -> i.grade().isEmpty())) {
                warn(
                        string.name(),
                        "the gas of a section holds hydrogen sulphide and the grade of this string is not declared: check"
                                + " it for sour service.");
            }
        }
    }
}
