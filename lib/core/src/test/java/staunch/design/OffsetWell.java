package staunch.design;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * A well as the open data report it, in the units of the data: m along hole from the kelly bushing, inches, g/cm³, °C,
 * degrees. A zero means "not reported" and is read as empty.
 */
record OffsetWell(
        String name,
        String rig,
        double waterDepth,
        double kellyBushing,
        double totalDepth,
        OptionalDouble finalVerticalDepth,
        OptionalDouble greatestInclination,
        OptionalDouble bottomHoleTemperature,
        List<Row> rows,
        List<Reading> mud) {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    /** One row of the casing table. */
    record Row(
            String type,
            OptionalDouble casing,
            double casingDepth,
            OptionalDouble hole,
            double holeDepth,
            OptionalDouble leakOff) {
        /** A hole is at least as deep as the string set in it, also where its own depth is not reported. */
        double drilledTo() {
            return Math.max(holeDepth, casingDepth);
        }

        boolean cased() {
            return casing.isPresent() && !type.equals("OPEN HOLE") && !type.equals("PILOT HOLE");
        }

        boolean liner() {
            return type.equals("LINER");
        }
    }

    /** One mud reading. */
    record Reading(double depth, double weight, String type) {}

    boolean floater() {
        return rig.startsWith("SEMISUB");
    }

    /** Every well of the data, in the order of the file. */
    static List<OffsetWell> all() {
        Map<String, List<Row>> rows = new LinkedHashMap<>();
        for (CSVRecord r : records("ncs-casing-lot.csv")) {
            rows.computeIfAbsent(r.get("wlbName"), n -> new ArrayList<>())
                    .add(new Row(
                            r.get("wlbCasingType"),
                            inches(r.get("wlbCasingDiameter")),
                            number(r, "wlbCasingDepth"),
                            inches(r.get("wlbHoleDiameter")),
                            number(r, "wlbHoleDepth"),
                            reported(r, "wlbLotMudDencity")));
        }
        Map<String, List<Reading>> mud = new LinkedHashMap<>();
        for (CSVRecord r : records("ncs-mud.csv")) {
            mud.computeIfAbsent(r.get("wlbName"), n -> new ArrayList<>())
                    .add(new Reading(number(r, "wlbMD"), number(r, "wlbMudWeightAtMD"), r.get("wlbMudType")));
        }
        List<OffsetWell> wells = new ArrayList<>();
        for (CSVRecord r : records("ncs-wells.csv")) {
            String name = r.get("wlbWellboreName");
            wells.add(new OffsetWell(
                    name,
                    r.get("wlbFacilityTypeDrilling"),
                    number(r, "wlbWaterDepth"),
                    number(r, "wlbKellyBushElevation"),
                    number(r, "wlbTotalDepth"),
                    reported(r, "wlbFinalVerticalDepth"),
                    reported(r, "wlbMaxInclation"),
                    reported(r, "wlbBottomHoleTemperature"),
                    onceEach(rows.get(name)),
                    mud.get(name)));
        }
        return wells;
    }

    /**
     * Rows from the top down without pilot holes (opened afterwards) and without strings that are reported twice: of the
     * same diameter in the same hole the deeper shoe is kept.
     */
    private static List<Row> onceEach(List<Row> rows) {
        List<Row> sorted = new ArrayList<>(rows);
        sorted.removeIf(r -> r.type().equals("PILOT HOLE"));
        sorted.sort(Comparator.comparingDouble(Row::drilledTo).thenComparingDouble(Row::casingDepth));
        List<Row> kept = new ArrayList<>();
        for (Row row : sorted) {
            Row last = kept.isEmpty() ? null : kept.get(kept.size() - 1);
            boolean twice = last != null
                    && last.cased()
                    && row.cased()
                    && last.casing().equals(row.casing())
                    && last.holeDepth() == row.holeDepth();
            if (twice) {
                kept.remove(kept.size() - 1);
            }
            kept.add(row);
        }
        return kept;
    }

    /**
     * Inches written as "9 5/8", "7" or with stray blanks. The one "12 174" of the data lacks its slash: 1/4 typed as 174.
     */
    static OptionalDouble inches(String text) {
        if (text.isBlank()) {
            return OptionalDouble.empty();
        }
        double sum = 0;
        for (String part : text.replace("174", "1/4").trim().split("\\s+")) {
            int slash = part.indexOf('/');
            sum += slash < 0
                    ? Double.parseDouble(part)
                    : Double.parseDouble(part.substring(0, slash)) / Double.parseDouble(part.substring(slash + 1));
        }
        return sum == 0 ? OptionalDouble.empty() : OptionalDouble.of(sum);
    }

    private static OptionalDouble reported(CSVRecord record, String column) {
        double value = number(record, column);
        return value == 0 ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private static double number(CSVRecord record, String column) {
        return Double.parseDouble(record.get(column));
    }

    private static List<CSVRecord> records(String file) {
        try (InputStream in = OffsetWell.class.getResourceAsStream("/open-data/" + file)) {
            return FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .getRecords();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
