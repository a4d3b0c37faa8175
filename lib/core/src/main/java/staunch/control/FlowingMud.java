package staunch.control;

import java.util.Objects;
import staunch.fluid.FlowModel;
import staunch.units.Check;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * A fluid as friction sees it.
 *
 * @param density kg/m³, 500 to 3000
 * @param flow how its stress grows with shear rate; for friction its flow index must lie within 0.1 to 1 and its
 *     consistency or plastic viscosity within 1e-6 to 100
 */
public record FlowingMud(@Si("kg/m3") double density, FlowModel flow) {
    public FlowingMud {
        Check.within("mud density", density, 500, 3000, Measure.DENSITY);
        Objects.requireNonNull(flow, "flow");
    }
}
