package staunch.earth;

import java.util.List;
import java.util.Objects;
import staunch.units.Check;
import staunch.units.InputFault;
import staunch.units.Kind;
import staunch.units.Measure;
import staunch.units.Si;

/**
 * A neighbouring well with what was measured in it. All depths are below its own datum.
 *
 * @param name of the well
 * @param distance to the planned well at the depth of interest, m, 0 to 1000 km
 * @param normal its hydrostatic pressure and datum
 * @param overburden its overburden
 * @param porePressure its pore pressure, as judged after drilling; the ratio of each strength rests on it
 * @param tests leak-off and integrity tests done in it
 * @param points formation pressures measured in it
 * @param events losses, kicks and muds seen in it
 */
public record OffsetWell(
        String name,
        @Si(value = "m", kind = Kind.LENGTH) double distance,
        NormalPressure normal,
        PressureProfile overburden,
        PressureProfile porePressure,
        List<StrengthTest> tests,
        List<PressurePoint> points,
        List<DrillingEvent> events) {
    public OffsetWell {
        Check.text("name of the offset well", name);
        Check.within("distance of offset well " + name, distance, 0, 1e6, Measure.LENGTH);
        Objects.requireNonNull(normal, "normal");
        Objects.requireNonNull(overburden, "overburden");
        Objects.requireNonNull(porePressure, "porePressure");
        tests = List.copyOf(tests);
        points = List.copyOf(points);
        events = List.copyOf(events);
        for (StrengthTest test : tests) {
            if (test.standing() == Standing.PREDICTED) {
                throw new InputFault(
                        "strength test \"" + test.name() + "\" of offset well " + name,
                        "is a prediction",
                        "give tests that were pumped");
            }
        }
    }

    /** A well in which nothing else was seen. */
    public OffsetWell(
            String name,
            @Si(value = "m", kind = Kind.LENGTH) double distance,
            NormalPressure normal,
            PressureProfile overburden,
            PressureProfile porePressure,
            List<StrengthTest> tests,
            List<PressurePoint> points) {
        this(name, distance, normal, overburden, porePressure, tests, points, List.of());
    }

    /** Overburden and pore pressure at a depth; at a step of the pore pressure the higher. */
    StressState stressAt(double verticalDepth) {
        return new StressState(overburden.lowestAt(verticalDepth), porePressure.highestAt(verticalDepth));
    }

    double belowGround(double verticalDepth) {
        return verticalDepth - normal.datum().groundOrSeabedDepth();
    }
}
