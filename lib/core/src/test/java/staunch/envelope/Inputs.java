package staunch.envelope;

import java.util.List;
import java.util.Optional;
import staunch.control.SlowCirculation;
import staunch.earth.EarthModel;
import staunch.earth.Range;
import staunch.earth.TemperatureProfile;
import staunch.fluid.Mud;
import staunch.well.CasingString;

/** Copies of a section's input with one part changed. */
final class Inputs {
    private Inputs() {}

    static SectionInput earth(SectionInput input, EarthModel earth) {
        return new SectionInput(
                input.datum(), input.path(), earth, input.casing(), input.equipment(), input.plan(), input.options());
    }

    static SectionInput temperature(SectionInput input, Optional<TemperatureProfile> temperature) {
        EarthModel e = input.earth();
        return earth(
                input, new EarthModel(e.porePressure(), e.strength(), e.tests(), e.weakZones(), temperature, e.tops()));
    }

    static SectionInput porePressure(SectionInput input, Range porePressure) {
        EarthModel e = input.earth();
        return earth(
                input,
                new EarthModel(
                        Optional.of(porePressure), e.strength(), e.tests(), e.weakZones(), e.temperature(), e.tops()));
    }

    static SectionInput casing(SectionInput input, CasingString... casing) {
        return new SectionInput(
                input.datum(),
                input.path(),
                input.earth(),
                List.of(casing),
                input.equipment(),
                input.plan(),
                input.options());
    }

    static SectionInput plan(SectionInput input, Drilling drilling, Mud mud) {
        SectionPlan p = input.plan();
        SectionPlan plan = new SectionPlan(
                p.name(),
                drilling,
                p.hole(),
                p.bitDiameter(),
                Optional.of(mud),
                p.string(),
                p.bitOffBottom(),
                p.gas(),
                p.slowCirculations(),
                p.pumpOutput(),
                p.activeVolume(),
                p.detectableGain(),
                p.circulatingOverbalance(),
                p.chokeHandlingAllowance(),
                p.criteria());
        return new SectionInput(
                input.datum(), input.path(), input.earth(), input.casing(), input.equipment(), plan, input.options());
    }

    static SectionInput slowCirculations(SectionInput input, List<SlowCirculation> measured) {
        SectionPlan p = input.plan();
        SectionPlan plan = new SectionPlan(
                p.name(),
                p.drilling(),
                p.hole(),
                p.bitDiameter(),
                p.mud(),
                p.string(),
                p.bitOffBottom(),
                p.influxDepth(),
                p.gas(),
                measured,
                p.pumpOutput(),
                p.activeVolume(),
                p.detectableGain(),
                p.circulatingOverbalance(),
                p.chokeHandlingAllowance(),
                p.criteria(),
                p.operations());
        return new SectionInput(
                input.datum(), input.path(), input.earth(), input.casing(), input.equipment(), plan, input.options());
    }

    static SectionEnvelope evaluate(SectionInput input) {
        return SectionEvaluator.evaluate(input, n -> {});
    }
}
