package staunch.envelope;

import java.util.OptionalDouble;
import staunch.well.CasingInterval;

final class CasingRating {
    private CasingRating() {}

    static OptionalDouble of(CasingInterval i) {
        return i.burstRating();
    }
}
