package staunch.earth;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What is known of the rock along the well. What is missing stays empty and makes the results that need it "not
 * assessed".
 *
 * @param porePressure by vertical depth
 * @param strength predicted fracture pressure by vertical depth
 * @param tests leak-off and integrity tests, planned or done
 * @param weakZones zones weaker than the profile
 * @param temperature by vertical depth
 * @param tops formation tops, downwards
 * @param stayOuts depths at which no shoe may stand
 */
public record EarthModel(
        Optional<Range> porePressure,
        Optional<Range> strength,
        List<StrengthTest> tests,
        List<WeakZone> weakZones,
        Optional<TemperatureProfile> temperature,
        List<FormationTop> tops,
        List<StayOut> stayOuts) {
    public EarthModel {
        Objects.requireNonNull(porePressure, "porePressure");
        Objects.requireNonNull(strength, "strength");
        tests = List.copyOf(tests);
        weakZones = List.copyOf(weakZones);
        Objects.requireNonNull(temperature, "temperature");
        tops = List.copyOf(tops);
        stayOuts = List.copyOf(stayOuts);
    }

    /** Rock in which a shoe may stand at any depth. */
    public EarthModel(
            Optional<Range> porePressure,
            Optional<Range> strength,
            List<StrengthTest> tests,
            List<WeakZone> weakZones,
            Optional<TemperatureProfile> temperature,
            List<FormationTop> tops) {
        this(porePressure, strength, tests, weakZones, temperature, tops, List.of());
    }

    /** Rock of which pore pressure, predicted strength and temperature are known. */
    public static EarthModel of(Range porePressure, Range strength, TemperatureProfile temperature) {
        return new EarthModel(
                Optional.of(porePressure),
                Optional.of(strength),
                List.of(),
                List.of(),
                Optional.of(temperature),
                List.of(),
                List.of());
    }

    /** The same rock with tests. */
    public EarthModel withTests(List<StrengthTest> newTests) {
        return new EarthModel(porePressure, strength, newTests, weakZones, temperature, tops, stayOuts);
    }

    /** The same rock with weak zones. */
    public EarthModel withWeakZones(List<WeakZone> newZones) {
        return new EarthModel(porePressure, strength, tests, newZones, temperature, tops, stayOuts);
    }
}
