package staunch.envelope;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import staunch.control.ConnectedLines;
import staunch.control.HydrostaticConstant;
import staunch.control.SubseaFormulas;
import staunch.earth.PressureProfile;
import staunch.influx.MudColumn;
import staunch.limit.FlowLine;
import staunch.units.Physics;
import staunch.well.Datum;
import staunch.well.StringGeometry;

/** What a subsea well loses with its riser, and what its lines do against the riser. */
final class RiserCheck {
    private final SectionInput input;
    private final MudColumn mud;
    private final PressureProfile pore;
    private final double waterDepth;
    private final double seabed;
    private final double sea;
    private final double atSeabed;

    private RiserCheck(SectionInput input, MudColumn mud, PressureProfile pore, double waterDepth) {
        this.input = input;
        this.mud = mud;
        this.pore = pore;
        this.waterDepth = waterDepth;
        this.seabed = input.datum().groundOrSeabedDepth();
        this.sea = EquipmentLimits.seawaterDensity(input.datum());
        this.atSeabed = Physics.ATMOSPHERE + sea * Physics.GRAVITY * waterDepth;
    }

    static RiserOutcome of(SectionInput input, Model model) {
        if (!(input.datum().place() instanceof Datum.AtSea place && place.stackAtSeabed())) {
            return new NotAssessed("no riser under pressure: the stack is at surface", "");
        }
        if (model.mudColumn().isEmpty()) {
            return new NotAssessed("the section has no mud", "section: mud");
        }
        if (model.pore().isEmpty()) {
            return new NotAssessed("the pore pressure is not known", "earth: pore pressure");
        }
        return new RiserCheck(input, model.mudColumn().get(), model.pore().get(), place.waterDepth()).check();
    }

    private RiserOutcome check() {
        RiserOutcome.Exposed worst = null;
        double needed = 0;
        for (double z : exposed()) {
            if (!pore.covers(z)) {
                return new NotAssessed("the pore pressure is not known at every exposed depth", "earth: pore pressure");
            }
            RiserOutcome.Exposed here =
                    new RiserOutcome.Exposed(z, mud.pressure(seabed, atSeabed, z), pore.highestAt(z));
            worst = worst == null || here.margin() < worst.margin() ? here : worst;
            if (z > seabed) {
                needed = Math.max(needed, (here.porePressure() - atSeabed) / (Physics.GRAVITY * (z - seabed)));
            }
        }
        double inRiser = density(input.equipment().riser());
        double level = Math.max(0, seabed - sea * waterDepth / inRiser);
        SubseaFormulas.Sea water = SubseaFormulas.Sea.of(seabed - waterDepth, waterDepth, sea);
        return new RiserOutcome.Computed(
                water.lossOnDisconnect(inRiser, HydrostaticConstant.EXACT),
                worst,
                needed,
                mud.density(),
                level,
                sea * Physics.GRAVITY * Math.max(0, level - water.airGap()),
                lines());
    }

    private TreeSet<Double> exposed() {
        double top = input.plan().topDepth();
        double bottom = input.plan().bottomDepth();
        TreeSet<Double> depths = new TreeSet<>();
        depths.add(input.path().verticalDepth(top));
        depths.add(input.path().verticalDepth(bottom));
        for (double node : input.path().nodesBetween(top, bottom)) {
            depths.add(input.path().verticalDepth(node));
        }
        double first = depths.first();
        double last = depths.last();
        Arrays.stream(pore.depths()).filter(z -> z > first && z < last).forEach(depths::add);
        return depths;
    }

    private double density(Optional<FlowLine> line) {
        return line.map(FlowLine::fluidDensity).orElse(OptionalDouble.empty()).orElse(mud.density());
    }

    /** The line whose fluid differs most from the riser's; empty where none does or a size is not known. */
    private Optional<ConnectedLines> lines() {
        Optional<FlowLine> riser = input.equipment().riser();
        if (riser.isEmpty() || input.plan().string().isEmpty()) {
            return Optional.empty();
        }
        double riserDensity = density(riser);
        Optional<FlowLine> other = Optional.empty();
        for (Optional<FlowLine> line :
                List.of(input.equipment().killLine(), input.equipment().chokeLine())) {
            boolean more = line.isPresent()
                    && density(line) != riserDensity
                    && (other.isEmpty()
                            || Math.abs(density(line) - riserDensity) > Math.abs(density(other) - riserDensity));
            other = more ? line : other;
        }
        return other.map(line -> ConnectedLines.of(
                new ConnectedLines.Line(line.name(), density(Optional.of(line)), circle(line.insideDiameter())),
                new ConnectedLines.Line(riser.get().name(), riserDensity, riserArea(riser.get())),
                seabed));
    }

    /** Cross-section of the riser around the pipe at the stack. */
    private double riserArea(FlowLine riser) {
        StringGeometry string = StringGeometry.of(
                input.plan().string().orElseThrow(), input.plan().bottomDepth());
        double pipe = 0;
        for (int i = 0; i < string.count(); i++) {
            if (string.top(i) < seabed && string.bottom(i) >= seabed) {
                pipe = circle(string.component(i).outsideDiameter());
            }
        }
        return circle(riser.insideDiameter()) - pipe;
    }

    private static double circle(double diameter) {
        return Math.PI / 4 * diameter * diameter;
    }
}
