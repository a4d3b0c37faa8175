package staunch.ingest;

import java.util.Arrays;

/** Cuts a data line into values. */
final class LasTokens {
    private int[] start = new int[64];
    private int[] end = new int[64];
    private boolean[] quoted = new boolean[64];
    private int count;

    int count() {
        return count;
    }

    int start(int i) {
        return start[i];
    }

    int end(int i) {
        return end[i];
    }

    /** Whether the value stood in quotes, which {@link #start} and {@link #end} leave out. */
    boolean quoted(int i) {
        return quoted[i];
    }

    private void add(int from, int to, boolean inQuotes) {
        if (count == start.length) {
            start = Arrays.copyOf(start, 2 * count);
            end = Arrays.copyOf(end, 2 * count);
            quoted = Arrays.copyOf(quoted, 2 * count);
        }
        start[count] = from;
        end[count] = to;
        quoted[count++] = inQuotes;
    }

    /** Cuts; false where a quote is not closed. */
    boolean cut(char[] line, int length, LasDelimiter delimiter) {
        count = 0;
        return delimiter == LasDelimiter.SPACE
                ? cutAtSpaces(line, length)
                : cutAt(line, length, delimiter == LasDelimiter.TAB ? '\t' : ',');
    }

    private boolean cutAtSpaces(char[] line, int length) {
        int i = 0;
        while (true) {
            while (i < length && isSpace(line[i])) {
                i++;
            }
            if (i == length) {
                return true;
            }
            if (line[i] == '"') {
                int close = closing(line, i + 1, length);
                if (close < 0) {
                    return false;
                }
                add(i + 1, close, true);
                i = close + 1;
                continue;
            }
            int from = i;
            while (i < length && !isSpace(line[i])) {
                i++;
            }
            add(from, i, false);
        }
    }

    private boolean cutAt(char[] line, int length, char mark) {
        int i = 0;
        while (i <= length) {
            int from = i;
            while (from < length && line[from] != mark && isSpace(line[from])) {
                from++;
            }
            if (from < length && line[from] == '"') {
                int close = closing(line, from + 1, length);
                if (close < 0) {
                    return false;
                }
                add(from + 1, close, true);
                i = close + 1;
                while (i < length && line[i] != mark) {
                    i++;
                }
            } else {
                i = from;
                while (i < length && line[i] != mark) {
                    i++;
                }
                int to = i;
                while (to > from && isSpace(line[to - 1])) {
                    to--;
                }
                add(from, to, false);
            }
            i++;
        }
        return true;
    }

    private static int closing(char[] line, int from, int length) {
        for (int i = from; i < length; i++) {
            if (line[i] == '"') {
                return i;
            }
        }
        return -1;
    }

    /** Drops empty values at the end beyond a number of them, which a delimiter at the end of the line leaves. */
    void dropEmptyBeyond(int wanted) {
        while (count > wanted && start[count - 1] == end[count - 1] && !quoted[count - 1]) {
            count--;
        }
    }

    /** Parts numbers that run into each other at a minus sign that is not that of an exponent. */
    void partAtSigns(char[] line) {
        LasTokens whole = copy();
        count = 0;
        for (int t = 0; t < whole.count; t++) {
            int from = whole.start[t];
            int to = whole.end[t];
            if (!whole.quoted[t] && isNumeric(line, from, to)) {
                for (int i = from + 1; i < to; i++) {
                    if (line[i] == '-' && line[i - 1] != 'e' && line[i - 1] != 'E') {
                        add(from, i, false);
                        from = i;
                    }
                }
            }
            add(from, to, whole.quoted[t]);
        }
    }

    /** Parts numbers with two decimal points where another row of the same layout ends a column. */
    void partAtColumns(char[] line, int[] ends) {
        LasTokens whole = copy();
        count = 0;
        for (int t = 0; t < whole.count; t++) {
            int from = whole.start[t];
            int to = whole.end[t];
            if (!whole.quoted[t] && isNumeric(line, from, to) && points(line, from, to) > 1) {
                for (int end : ends) {
                    if (end > from && end < to) {
                        add(from, end, false);
                        from = end;
                    }
                }
            }
            add(from, to, whole.quoted[t]);
        }
    }

    /** Where each value ends. */
    int[] ends() {
        return Arrays.copyOf(end, count);
    }

    private LasTokens copy() {
        LasTokens copy = new LasTokens();
        copy.start = start.clone();
        copy.end = end.clone();
        copy.quoted = quoted.clone();
        copy.count = count;
        return copy;
    }

    private static boolean isNumeric(char[] line, int from, int to) {
        for (int i = from; i < to; i++) {
            char c = line[i];
            if ((c < '0' || c > '9') && "+-.eE".indexOf(c) < 0) {
                return false;
            }
        }
        return true;
    }

    private static int points(char[] line, int from, int to) {
        int points = 0;
        for (int i = from; i < to; i++) {
            points += line[i] == '.' ? 1 : 0;
        }
        return points;
    }

    private static boolean isSpace(char c) {
        return c == ' ' || c == '\t' || c == '\u00a0' || c == '\f' || c == '\u001a';
    }
}
