package staunch.envelope;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import staunch.units.Kind;
import staunch.units.Si;

/** What is done about one influx, or why that is not assessed. */
public sealed interface KickOperations permits KickOperations.Followed, NotAssessed {
    /**
     * The influx and all that may be done about it.
     *
     * @param kick the influx
     * @param volume annulus it fills on bottom at shut-in, m³
     * @param volumeBasis where the volume comes from: "required tolerance", "detectable gain", "kick tolerance" or "as
     *     given"
     * @param shutIn readings of the closed well before anything moves
     * @param watched depths whose pressures stand in every list of watched pressures below, in this order
     * @param drillers driller's method, both circulations
     * @param waitAndWeight wait-and-weight method
     * @param migration left to rise in the closed well
     * @param volumetric volumetric method
     * @param lubrication lubricate and bleed after it
     * @param bullheading pumped back
     * @param killSheet planning sheet
     * @param surfaceGas gas at the choke and in the separator
     */
    record Followed(
            Kick kick,
            @Si("m3") double volume,
            String volumeBasis,
            ShutIn shutIn,
            List<WatchedDepth> watched,
            CirculationOutcome drillers,
            CirculationOutcome waitAndWeight,
            MigrationOutcome migration,
            VolumetricOutcome volumetric,
            LubricationOutcome lubrication,
            BullheadingOutcome bullheading,
            KillSheetOutcome killSheet,
            SurfaceGasOutcome surfaceGas)
            implements KickOperations {
        public Followed {
            Objects.requireNonNull(kick, "kick");
            Objects.requireNonNull(volumeBasis, "volumeBasis");
            Objects.requireNonNull(shutIn, "shutIn");
            watched = List.copyOf(watched);
            Objects.requireNonNull(drillers, "drillers");
            Objects.requireNonNull(waitAndWeight, "waitAndWeight");
            Objects.requireNonNull(migration, "migration");
            Objects.requireNonNull(volumetric, "volumetric");
            Objects.requireNonNull(lubrication, "lubrication");
            Objects.requireNonNull(bullheading, "bullheading");
            Objects.requireNonNull(killSheet, "killSheet");
            Objects.requireNonNull(surfaceGas, "surfaceGas");
        }

        /** Circulations that could be worked out, driller's method first. */
        public List<CirculationOutcome.Computed> circulations() {
            return Stream.of(drillers, waitAndWeight)
                    .filter(CirculationOutcome.Computed.class::isInstance)
                    .map(CirculationOutcome.Computed.class::cast)
                    .toList();
        }
    }

    /**
     * Readings of the well when it is just closed, gas on bottom.
     *
     * @param drillPipePressure formation pressure less the mud in the string, Pa gauge
     * @param casingPressure at the surface gauge of the choke line, its own fluid counted, Pa gauge
     * @param gasTop measured depth of the top of the gas, m
     */
    record ShutIn(
            @Si(value = "Pa", kind = Kind.GAUGE) double drillPipePressure,
            @Si(value = "Pa", kind = Kind.GAUGE) double casingPressure,
            @Si(value = "m", kind = Kind.DEPTH) double gasTop) {}

    /**
     * A depth whose pressure is followed.
     *
     * @param name in plain words
     * @param measuredDepth m
     * @param verticalDepth m
     */
    record WatchedDepth(
            String name,
            @Si(value = "m", kind = Kind.DEPTH) double measuredDepth,
            @Si(value = "m", kind = Kind.DEPTH) double verticalDepth) {
        public WatchedDepth {
            Objects.requireNonNull(name, "name");
        }
    }
}
