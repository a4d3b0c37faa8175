package staunch.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import staunch.table.TableBook;
import staunch.units.Fault;
import staunch.units.UnitSystem;

/**
 * Computes parts of which each may fail by itself. What fails is kept with its reason. Only a {@link Fault} is a reason; any
 * other exception is an error of the program and ends it.
 */
final class Parts {
    private final UnitSystem units;
    private final List<TableBook.Missing> missing = new ArrayList<>();

    Parts(UnitSystem units) {
        this.units = units;
    }

    /**
     * What a part gives; empty where it fails.
     *
     * @param design it belongs to; empty where to the case
     * @param section it belongs to; empty where to the design
     * @param part what it is
     * @param work computes it
     */
    <T> Optional<T> of(String design, String section, String part, Supplier<T> work) {
        try {
            return Optional.of(work.get());
        } catch (Fault fault) {
            missing.add(new TableBook.Missing(design, section, part, fault.text(units)));
            return Optional.empty();
        }
    }

    List<TableBook.Missing> missing() {
        return List.copyOf(missing);
    }
}
