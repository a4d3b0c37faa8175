package staunch.earth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import staunch.earth.LeakOffPick.Flag;
import staunch.earth.LeakOffPick.StraightLine;
import staunch.earth.PumpingTest.Pumped;
import staunch.units.InputFault;

/** Works out {@link LeakOffPick}. */
final class LeakOffReading {
    private static final int LEAST_ON_LINE = 3;
    private static final int GOOD_ON_LINE = 5;
    private static final double SCATTER = 0.02;
    private static final double STEP = 0.1;
    private static final double FALL = 0.1;

    private final PumpingTest test;
    private final LeakOffMethod method;

    /** Readings up to the greatest pressure; what comes after is breakdown. */
    private final List<Pumped> rising;

    private final double greatest;

    LeakOffReading(PumpingTest test, LeakOffMethod method) {
        this.test = test;
        this.method = method;
        this.greatest = test.greatestPressure();
        int peak = 0;
        while (test.pumped().get(peak).pressure() < greatest) {
            peak++;
        }
        this.rising = test.pumped().subList(0, peak + 1);
    }

    LeakOffPick read() {
        return method instanceof LeakOffMethod.Departure departure
                ? departure(departure)
                : twoLines((LeakOffMethod.TwoLines) method);
    }

    private StraightLine buildUp(List<Pumped> readings) {
        long volumes = readings.stream().mapToDouble(Pumped::volume).distinct().count();
        if (readings.size() < LEAST_ON_LINE || volumes < 2) {
            throw new InputFault(
                    "pumping test " + test.name(),
                    "has " + readings.size() + " readings on its straight build-up",
                    "give at least " + LEAST_ON_LINE + " at different volumes, or widen the stretch that is straight");
        }
        StraightLine line = LeakOffPick.line(readings);
        if (line.slope() <= 0) {
            throw new InputFault(
                    "pumping test " + test.name(), "has a build-up that does not rise", "check its columns");
        }
        return line;
    }

    private LeakOffPick departure(LeakOffMethod.Departure choice) {
        List<Pumped> straight = rising.stream()
                .filter(r -> r.pressure() >= choice.from() * greatest && r.pressure() <= choice.to() * greatest)
                .toList();
        StraightLine line = buildUp(straight);
        int last = rising.size() - 1;
        while (last >= 0
                && line.at(rising.get(last).volume()) - rising.get(last).pressure() > choice.tolerance()) {
            last--;
        }
        List<Flag> flags = new ArrayList<>();
        double scatter = straight.stream()
                .mapToDouble(r -> Math.abs(line.at(r.volume()) - r.pressure()))
                .max()
                .orElseThrow();
        common(flags, straight, scatter > choice.tolerance() / 2);
        if (last == rising.size() - 1) {
            return none(line, flags);
        }
        if (last < 0) {
            throw new InputFault(
                    "pumping test " + test.name(),
                    "lies below the line of its build-up from the first reading on",
                    "widen the tolerance or move the straight stretch");
        }
        return picked(
                line,
                Optional.empty(),
                rising.get(last).volume(),
                rising.get(last).pressure(),
                flags);
    }

    private LeakOffPick twoLines(LeakOffMethod.TwoLines choice) {
        List<Pumped> used = rising.stream()
                .filter(r -> r.pressure() >= choice.from() * greatest)
                .toList();
        StraightLine whole = buildUp(used);
        double least = Double.POSITIVE_INFINITY;
        StraightLine first = whole;
        StraightLine second = whole;
        for (int i = LEAST_ON_LINE; i <= used.size() - LEAST_ON_LINE; i++) {
            List<Pumped> before = used.subList(0, i);
            List<Pumped> after = used.subList(i, used.size());
            if (distinct(before) && distinct(after)) {
                StraightLine a = LeakOffPick.line(before);
                StraightLine b = LeakOffPick.line(after);
                double squares = squares(a, before) + squares(b, after);
                if (squares < least) {
                    least = squares;
                    first = a;
                    second = b;
                }
            }
        }
        List<Flag> flags = new ArrayList<>();
        StraightLine line = first;
        List<Pumped> straight = used.stream()
                .filter(r -> r.volume() >= line.fromVolume() && r.volume() <= line.toVolume())
                .toList();
        common(flags, straight, false);
        double volume = (second.at(0) - first.at(0)) / (first.slope() - second.slope());
        boolean bends = second.slope() <= (1 - choice.bend()) * first.slope();
        boolean between = volume >= first.fromVolume() && volume <= second.toVolume();
        if (!bends || !between) {
            return none(whole, flags);
        }
        return picked(first, Optional.of(second), volume, first.at(volume), flags);
    }

    private static boolean distinct(List<Pumped> readings) {
        return readings.get(0).volume() < readings.get(readings.size() - 1).volume();
    }

    private static double squares(StraightLine line, List<Pumped> readings) {
        return readings.stream()
                .mapToDouble(r -> Math.pow(line.at(r.volume()) - r.pressure(), 2))
                .sum();
    }

    private void common(List<Flag> flags, List<Pumped> straight, boolean scattered) {
        if (straight.size() < GOOD_ON_LINE) {
            flags.add(Flag.FEW_READINGS);
        }
        StraightLine line = LeakOffPick.line(straight);
        double rise = line.slope() * (line.toVolume() - line.fromVolume());
        boolean off = straight.stream().anyMatch(r -> Math.abs(line.at(r.volume()) - r.pressure()) > SCATTER * rise);
        if (scattered || off) {
            flags.add(Flag.NOT_STRAIGHT);
        }
    }

    private LeakOffPick none(StraightLine line, List<Flag> flags) {
        boolean fell = test.shutInFall().isPresent() && test.shutInFall().getAsDouble() > FALL * greatest;
        if (fell) {
            flags.add(Flag.FELL_WITHOUT_LEAK_OFF);
        }
        return new LeakOffPick.NoLeakOff(test, method, line, greatest, flags);
    }

    private LeakOffPick picked(
            StraightLine line, Optional<StraightLine> after, double volume, double pressure, List<Flag> flags) {
        List<Pumped> later = rising.stream().filter(r -> r.volume() > volume).toList();
        if (later.size() == 1) {
            flags.add(Flag.ONE_READING_AFTER);
        }
        if (!later.isEmpty() && Math.abs(later.get(0).pressure() - pressure) > STEP * pressure) {
            flags.add(Flag.WIDE_STEP);
        }
        if (test.shutInPressure().isPresent() && test.shutInPressure().getAsDouble() > pressure) {
            flags.add(Flag.SHUT_IN_ABOVE_LEAK_OFF);
        }
        return new LeakOffPick.Picked(test, method, line, after, volume, pressure, flags);
    }
}
