package staunch.well;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Invented casings and strings for tests. */
final class Wells {
    private Wells() {}

    /** Casing to the shoe, a kilometre of open hole with a washout of 100 m below it. */
    record Shape(double shoe, double top, double washout) {}

    static Annulus annulus(Shape shape, double collars, double bit) {
        return annulus(
                shape,
                new DrillString(List.of(
                        new StringComponent("collars", collars, 0.2, 0.07),
                        new StringComponent("drill pipe", 1000, 0.127, 0.1086))),
                bit);
    }

    static Annulus annulus(Shape shape, DrillString string, double bit) {
        return Annulus.of(new AnnulusGeometry(
                List.of(casing("casing", 0, shape.shoe(), 0.2445)),
                List.of(
                        new HoleInterval(shape.shoe(), shape.shoe() + 300, 0.216),
                        new HoleInterval(shape.shoe() + 300, shape.shoe() + 400, shape.washout()),
                        new HoleInterval(shape.shoe() + 400, shape.shoe() + 1000, 0.216)),
                string,
                bit,
                shape.top(),
                shape.shoe() + 1000));
    }

    /** String of one weight whose inside diameter is 24 mm below its outside diameter. */
    static CasingString casing(String name, double top, double shoe, double outsideDiameter) {
        return casing(name, List.of(interval(top, shoe, outsideDiameter)));
    }

    static CasingString casing(String name, List<CasingInterval> intervals) {
        return new CasingString(
                name,
                intervals,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    static CasingInterval interval(double top, double bottom, double outsideDiameter) {
        return new CasingInterval(
                top,
                bottom,
                outsideDiameter,
                outsideDiameter - 0.024,
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0);
    }
}
