package staunch.ingest;

/** Reads numbers out of characters without making strings, since a log holds millions of them. */
final class LasNumber {
    /** Whole numbers below it and their product or quotient with a power of ten up to 10²² round once only. */
    private static final long EXACT = 1L << 53;

    private static final double[] TENS = new double[23];

    static {
        double ten = 1;
        for (int i = 0; i < TENS.length; i++) {
            TENS[i] = ten;
            ten *= 10;
        }
    }

    private double value;
    private boolean comma;

    /** The number last read. */
    double value() {
        return value;
    }

    /** Whether its decimal mark was a comma. */
    boolean comma() {
        return comma;
    }

    /** Whether the characters are one number; a single comma between digits is a decimal mark. */
    boolean parse(char[] text, int from, int to) {
        int i = from;
        comma = false;
        boolean negative = false;
        if (i < to && (text[i] == '-' || text[i] == '+')) {
            negative = text[i++] == '-';
        }
        long digits = 0;
        int scale = 0;
        int count = 0;
        boolean fraction = false;
        boolean exact = true;
        for (; i < to; i++) {
            char c = text[i];
            if (c >= '0' && c <= '9') {
                if (digits >= EXACT / 10 - 1) {
                    exact = false;
                }
                digits = exact ? digits * 10 + (c - '0') : digits;
                count++;
                scale += fraction ? 1 : 0;
            } else if (c == '.' && !fraction) {
                fraction = true;
            } else if (c == ',' && !fraction && count > 0 && i + 1 < to && isDigit(text[i + 1])) {
                fraction = true;
                comma = true;
            } else {
                break;
            }
        }
        if (count == 0) {
            return false;
        }
        int exponent = 0;
        if (i < to) {
            if (text[i] != 'e' && text[i] != 'E') {
                return false;
            }
            i++;
            boolean down = i < to && text[i] == '-';
            i += i < to && (text[i] == '-' || text[i] == '+') ? 1 : 0;
            if (i == to) {
                return false;
            }
            for (; i < to; i++) {
                if (!isDigit(text[i])) {
                    return false;
                }
                exponent = Math.min(exponent * 10 + (text[i] - '0'), 9999);
            }
            exponent = down ? -exponent : exponent;
        }
        int power = exponent - scale;
        if (exact && power >= -22 && power <= 22) {
            double size = power < 0 ? digits / TENS[-power] : digits * TENS[power];
            value = negative ? -size : size;
        } else {
            value = Double.parseDouble(new String(text, from, to - from).replace(',', '.'));
        }
        return true;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
