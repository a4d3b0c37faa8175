package staunch.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import staunch.design.ShoeObstacle.Criterion;
import staunch.envelope.KickCheck;
import staunch.envelope.SectionCheck;
import staunch.envelope.SectionEvaluator;
import staunch.envelope.SectionInput;
import staunch.envelope.Tolerance;
import staunch.envelope.Verdict;
import staunch.units.Fault;
import staunch.well.CasingString;

/** Whether hole between two shoes holds, and what speaks against it. */
final class ShoeSections {
    private final WellCase wellCase;
    private final ShoeProgramme programme;

    ShoeSections(WellCase wellCase, ShoeProgramme programme) {
        this.wellCase = wellCase;
        this.programme = programme;
    }

    /** A section by the strings at its ends; empty at the top and the bottom of what is searched. */
    record Between(Optional<CasingString> upper, Optional<CasingString> lower) {}

    boolean holds(Between section, Map<CasingString, Double> shoes, Set<CasingString> leftOut) {
        try {
            return SectionEvaluator.holds(programme.section(section.upper(), section.lower(), shoes, leftOut));
        } catch (Fault notAssessed) {
            // What is wrong there is told by the obstacles.
            return false;
        }
    }

    /** Whether a section meets the pressure window, without which it cannot hold. */
    boolean meetsWindow(Between section, Map<CasingString, Double> shoes, Set<CasingString> leftOut) {
        try {
            return SectionEvaluator.meetsWindow(programme.section(section.upper(), section.lower(), shoes, leftOut));
        } catch (Fault notAssessed) {
            return false;
        }
    }

    List<ShoeObstacle> stayOuts(double measuredDepth) {
        double z = wellCase.path().verticalDepth(measuredDepth);
        return wellCase.earth().stayOuts().stream()
                .filter(s -> s.holds(z))
                .map(s -> new ShoeObstacle(Criterion.STAY_OUT, "", s.reason(), s.name()))
                .toList();
    }

    List<ShoeObstacle> obstacles(Between section, Map<CasingString, Double> shoes, Set<CasingString> leftOut) {
        SectionInput input;
        SectionCheck check;
        try {
            input = programme.section(section.upper(), section.lower(), shoes, leftOut);
            check = SectionEvaluator.check(input);
        } catch (Fault fault) {
            return List.of(new ShoeObstacle(Criterion.NOT_ASSESSED, "", fault.getMessage(), ""));
        }
        return obstacles(input.plan().name(), check);
    }

    static List<ShoeObstacle> obstacles(String section, SectionCheck check) {
        List<ShoeObstacle> found = new ArrayList<>();
        Verdict window = check.window();
        if (check.verdict().outcome() == Verdict.Outcome.NOT_SHUT_IN) {
            if (window.outcome() == Verdict.Outcome.FAILS) {
                found.add(obstacle(windowCriterion(window), section, window));
            }
            return found;
        }
        if (check.verdict().outcome() == Verdict.Outcome.HOLDS) {
            return found;
        }
        if (window.outcome() == Verdict.Outcome.FAILS || !window.governing().isEmpty()) {
            found.add(obstacle(windowCriterion(window), section, window));
        }
        add(found, section, check.drilled(), Criterion.DRILLED_TOLERANCE);
        add(found, section, check.swabbed(), Criterion.SWABBED_TOLERANCE);
        if (found.isEmpty()) {
            found.add(obstacle(Criterion.NOT_ASSESSED, section, check.verdict()));
        }
        return found;
    }

    private static void add(List<ShoeObstacle> found, String section, KickCheck kick, Criterion formation) {
        if (kick.verdict().outcome() == Verdict.Outcome.FAILS) {
            boolean rock = kick.tolerance() instanceof Tolerance.FailsOnIntensity
                    || kick.tolerance() instanceof Tolerance.Finite finite
                            && kick.required().isPresent()
                            && finite.volume() < kick.required().getAsDouble();
            found.add(obstacle(rock ? formation : Criterion.CASING_OR_EQUIPMENT, section, kick.verdict()));
        }
    }

    private static Criterion windowCriterion(Verdict window) {
        return window.governing().equals("pore pressure") ? Criterion.PORE_PRESSURE : Criterion.STRENGTH;
    }

    private static ShoeObstacle obstacle(Criterion criterion, String section, Verdict verdict) {
        return new ShoeObstacle(criterion, section, verdict.statement(), verdict.governing());
    }
}
