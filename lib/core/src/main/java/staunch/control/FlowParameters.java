package staunch.control;

import staunch.fluid.FlowModel;
import staunch.units.Check;
import staunch.units.Measure;

/**
 * Every flow model as a case of τ = τ_y + K γ̇ⁿ, which one friction law serves.
 *
 * @param yieldStress τ_y, Pa
 * @param consistency K, Pa·sⁿ
 * @param flowIndex n, 0.1 to 1: the range of the friction law
 */
record FlowParameters(double yieldStress, double consistency, double flowIndex) {
    FlowParameters {
        Check.within("flow index of the mud", flowIndex, 0.1, 1, Measure.NUMBER);
        Check.within("consistency of the mud", consistency, 1e-6, 100, Measure.VISCOSITY);
    }

    static FlowParameters of(FlowModel model) {
        if (model instanceof FlowModel.BinghamPlastic m) {
            return new FlowParameters(m.yieldPoint(), m.plasticViscosity(), 1);
        }
        if (model instanceof FlowModel.PowerLaw m) {
            return new FlowParameters(0, m.consistency(), m.flowIndex());
        }
        FlowModel.HerschelBulkley m = (FlowModel.HerschelBulkley) model;
        return new FlowParameters(m.yieldStress(), m.consistency(), m.flowIndex());
    }
}
