package staunch.units;

import java.util.ArrayList;
import java.util.List;

/** A number outside the range in which the input makes sense or a correlation is valid. */
public final class RangeFault extends Fault {
    private static final long serialVersionUID = 1L;

    private final String field;
    private final double value;
    private final double lowest;
    private final double highest;
    private final Measure measure;
    private final String advice;

    /**
     * @param field what is out of range, in the words of the input
     * @param value the value, in the SI unit of the measure
     * @param lowest lowest allowed value, SI; negative infinity where there is none
     * @param highest highest allowed value, SI; positive infinity where there is none
     * @param measure what the value measures
     * @param advice what to do; may be empty
     */
    public RangeFault(String field, double value, double lowest, double highest, Measure measure, String advice) {
        super(sentence(field, value, lowest, highest, measure, advice, UnitSystem.SI));
        this.field = field;
        this.value = value;
        this.lowest = lowest;
        this.highest = highest;
        this.measure = measure;
        this.advice = advice;
    }

    @Override
    public String field() {
        return field;
    }

    /** The offending value in the SI unit of {@link #measure()}. */
    public double value() {
        return value;
    }

    /** Lowest allowed value, SI. */
    public double lowest() {
        return lowest;
    }

    /** Highest allowed value, SI. */
    public double highest() {
        return highest;
    }

    /** What the value measures. */
    public Measure measure() {
        return measure;
    }

    @Override
    public String text(UnitSystem units) {
        return sentence(field, value, lowest, highest, measure, advice, units);
    }

    @Override
    public Wording wording() {
        if (!Double.isFinite(value)) {
            return super.wording();
        }
        List<Amount> amounts = new ArrayList<>();
        double bound = value < lowest ? lowest : highest;
        amounts.add(new Amount(value, measure, UnitSystem.SI.digitsBeside(value, bound, measure)));
        for (double end : new double[] {lowest, highest}) {
            if (Double.isFinite(end)) {
                amounts.add(new Amount(end, measure, 6));
            }
        }
        return new Wording(getMessage(), amounts);
    }

    private static String sentence(
            String field,
            double value,
            double lowest,
            double highest,
            Measure measure,
            String advice,
            UnitSystem units) {
        String range;
        if (Double.isInfinite(highest)) {
            range = "must be at least " + units.precise(lowest, measure);
        } else if (Double.isInfinite(lowest)) {
            range = "must be at most " + units.precise(highest, measure);
        } else {
            range = "is outside " + units.precise(lowest, measure) + " to " + units.precise(highest, measure);
        }
        double bound = value < lowest ? lowest : highest;
        return field + " " + units.preciseBeside(value, bound, measure) + " " + range
                + (advice.isEmpty() ? "" : "; " + advice);
    }
}
