package staunch.ingest;

import java.util.Objects;

/** Where a pressure at depth stands in a table, and as what. */
public sealed interface PressureColumns {
    /** Column of the figure itself. */
    TableColumn column();

    /**
     * Equivalent density.
     *
     * @param column of the density or gradient
     * @param below level that its column of fluid begins at, as a rule the datum
     */
    record Equivalent(TableColumn column, DepthColumns.Level below) implements PressureColumns {
        public Equivalent {
            Objects.requireNonNull(column, "column");
            Objects.requireNonNull(below, "below");
        }
    }

    /**
     * Pressure at the depth; psi, bar, kPa and MPa are read as gauge, psia, bara, kPaa and MPaa as absolute.
     *
     * @param column of the pressure
     */
    record Downhole(TableColumn column) implements PressureColumns {
        public Downhole {
            Objects.requireNonNull(column, "column");
        }
    }

    /**
     * Gauge pressure at the datum on top of a column of mud from there: p = pₐ + p_s + ρ g z.
     *
     * @param pressure column of the surface pressure
     * @param mud column of the density of the mud in the hole
     */
    record Surface(TableColumn pressure, TableColumn mud) implements PressureColumns {
        public Surface {
            Objects.requireNonNull(pressure, "pressure");
            Objects.requireNonNull(mud, "mud");
        }

        @Override
        public TableColumn column() {
            return pressure;
        }
    }
}
