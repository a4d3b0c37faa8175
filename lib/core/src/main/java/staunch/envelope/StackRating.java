package staunch.envelope;

import java.util.Comparator;
import java.util.Optional;
import staunch.limit.PressureEquipment;
import staunch.limit.PressureRating;

final class StackRating {
    private StackRating() {}

    static Optional<PressureRating> of(PressureEquipment e) {
        return e.stack().stream()
                .flatMap(s -> s.rating().stream())
                .min(Comparator.comparingDouble(PressureRating::pressure));
    }
}
