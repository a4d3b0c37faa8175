package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import staunch.design.WellCase;
import staunch.earth.LogPressure;
import staunch.earth.LogProperty;
import staunch.earth.OffsetEvidence;
import staunch.earth.WellLog;
import staunch.units.Physics;
import staunch.units.UnitSystem;

/** The log of an offset well, from its file into the case, good and bad. */
class OffsetLogTest {
    private static final Path SUBSEA = Cases.ROOT.resolve("data/wrenskerry-2");
    private static final String LAS = "wrenskerry-1.las";

    @TempDir
    private Path directory;

    private Cases cases;

    @BeforeEach
    void copy() throws IOException {
        cases = Cases.copy(SUBSEA, directory);
    }

    private static OffsetEvidence.Log log(WellCase well) {
        return well.evidence().orElseThrow().logs().get(0);
    }

    /** Rows of the file straight from its text: depth, density g/cm3, slowness µs/ft, gamma ray. */
    private static List<double[]> rows(Path file) throws IOException {
        return Files.readAllLines(file).stream()
                .filter(line -> line.matches("[ 0-9.]+"))
                .map(line -> Stream.of(line.strip().split(" +"))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toList();
    }

    @Test
    void blocksAreMeansOfTheRowsInThem() throws Exception {
        WellLog read = log(cases.read()).log();
        WellLog.Block block = read.blocks().stream()
                .filter(b -> b.verticalDepth() == 1125)
                .findFirst()
                .orElseThrow();
        List<double[]> inside = rows(SUBSEA.resolve(LAS)).stream()
                .filter(r -> r[0] >= 1120 && r[0] < 1130)
                .toList();
        assertEquals(2, inside.size());
        double density = inside.stream().mapToDouble(r -> r[1]).average().orElseThrow();
        assertEquals(1000 * density, block.density().getAsDouble(), 1e-6);
        assertTrue(block.slowness().isEmpty(), "the sand is no shale");
        assertEquals(3240, read.blocks().get(read.blocks().size() - 1).verticalDepth());
    }

    /** Trend by the regression of Apache Commons Math, mass by a plain sum over the rows of the file. */
    @Test
    void trendAndOverburdenAreThoseOfPlainSums() throws Exception {
        OffsetEvidence.Log log = log(cases.with("density_uncertainty: 25 kg/m3", "density_uncertainty: 0 kg/m3")
                .read());
        SimpleRegression regression = new SimpleRegression();
        log.log().blocks().stream()
                .filter(b -> b.slowness().isPresent() && b.verticalDepth() <= 1500)
                .forEach(b -> regression.addData(
                        b.verticalDepth() - 319, Math.log(b.slowness().getAsDouble())));
        LogPressure pressure = log.pressure().orElseThrow();
        for (LogPressure.Row row : pressure.rows()) {
            double normal = row.ratio() * log.log().reading(LogProperty.SLOWNESS, row.verticalDepth());
            assertEquals(Math.exp(regression.predict(row.verticalDepth() - 319)), normal, 1e-9 * normal);
        }
        assertEquals(Math.sqrt(regression.getMeanSquareError()), pressure.uncertainty(), 1e-12);

        // The rows stand 5 m apart: the ends count by half.
        List<double[]> rows = rows(SUBSEA.resolve(LAS));
        double sum = rows.stream().mapToDouble(r -> r[1]).sum() - (rows.get(0)[1] + rows.get(rows.size() - 1)[1]) / 2;
        List<OffsetEvidence.Weight> weights = log.overburden();
        double first = weights.get(0).overburden().likely();
        double last = weights.get(weights.size() - 1).overburden().likely();
        double between =
                weights.get(weights.size() - 1).verticalDepth() - weights.get(0).verticalDepth();
        double expected = sum * 5 * 1000 / 2240 * between * Physics.GRAVITY;
        // A scatter of 18 kg/m³ of rows at the two ends, which the blocks there see differently.
        assertEquals(expected, last - first, 2 * 20 * 10 * Physics.GRAVITY);
        assertEquals(
                weights.get(0).overburden().low(), weights.get(0).overburden().high(), "no uncertainty is stated");
    }

    @Test
    void otherUnitsOfTheMappingGiveTheSameBlocks() throws Exception {
        WellLog metric = log(cases.read()).log();
        String text = Files.readString(directory.resolve(LAS));
        StringBuilder field = new StringBuilder();
        for (String line : text.lines().toList()) {
            if (line.matches("[ 0-9.]+")) {
                String[] cells = line.strip().split(" +");
                field.append(Double.parseDouble(cells[0]) / 0.3048)
                        .append(' ')
                        .append(Double.parseDouble(cells[1]) * 1000)
                        .append(' ')
                        .append(Double.parseDouble(cells[2]) / 0.3048)
                        .append(' ')
                        .append(cells[3]);
            } else {
                field.append(
                        line.replace("G/CM3", "KG/M3").replace("US/FT", "US/M").replace("DEPT.M ", "DEPT.FT"));
            }
            field.append('\n');
        }
        Files.writeString(directory.resolve(LAS), field.toString().replaceAll("(STRT|STOP|STEP)\\.M.*\n", ""));
        WellLog other = log(cases.with("column: DEPT, unit: m", "column: DEPT, unit: ft")
                        .with("column: RHOB, unit: g/cm3", "column: RHOB, unit: kg/m3")
                        .with("column: DT, unit: us/ft", "column: DT, unit: us/m")
                        .read())
                .log();
        assertEquals(metric, other);
    }

    @Test
    void aLogThatRunsUpwardsIsTheSame() throws Exception {
        WellLog down = log(cases.read()).log();
        List<String> lines = Files.readAllLines(directory.resolve(LAS));
        List<String> data = new java.util.ArrayList<>(
                lines.stream().filter(l -> l.matches("[ 0-9.]+")).toList());
        List<String> head = lines.stream().filter(l -> !l.matches("[ 0-9.]+")).toList();
        java.util.Collections.reverse(data);
        Files.writeString(directory.resolve(LAS), String.join("\n", head) + "\n" + String.join("\n", data) + "\n");
        assertEquals(down, log(cases.read()).log());
    }

    static Stream<Arguments> refused() {
        return Stream.of(
                Arguments.of(
                        "a wrong mnemonic",
                        "column: RHOB",
                        "column: RHOZ",
                        "wrenskerry-1.las: section ~C: curve RHOZ is not in wrenskerry-1.las; choose one of DEPT, RHOB, DT,"
                                + " GR"),
                Arguments.of(
                        "a curve mapped to the wrong dimension",
                        "column: RHOB, unit: g/cm3",
                        "column: RHOB, unit: us/ft",
                        "case.yaml:76: offset_evidence.logs[1].density.unit: \"us/ft\" is not a unit of density"),
                Arguments.of(
                        "curves changed over",
                        "column: RHOB",
                        "column: DT",
                        "wrenskerry-1.las: section ~A, curve DT: has 162.1 g/cm3 at 1000.0 m, where bulk"
                                + " density is 1.2 to 3.3 g/cm3; 449 readings in all; check curve and unit, or state"),
                Arguments.of(
                        "a cut-off that no row passes",
                        "cut_off: 75",
                        "cut_off: 750",
                        "wrenskerry-1.las: section ~A, curve DT: has no readings in shale; choose another curve"),
                Arguments.of(
                        "an unknown well",
                        "logs:\n    - well: Wrenskerry 1",
                        "logs:\n    - well: Wrenskerry 9",
                        "case.yaml:73: offset_evidence.logs[1].well: names the unknown well Wrenskerry 9; add it"),
                Arguments.of(
                        "measured depths without a survey",
                        "unit: m, kind: vertical, below: datum}\n      density",
                        "unit: m, kind: measured, below: datum}\n      density",
                        "wrenskerry-1.las: section ~A, curve DEPT: has 1000.0 m: log of Wrenskerry 1 has measured depths"),
                Arguments.of(
                        "an interval of the trend without readings",
                        "from_tvd: 1000 m, to_tvd: 1500 m",
                        "from_tvd: 100 m, to_tvd: 500 m",
                        "case.yaml:58: offset_evidence.wells[1]: normal trend of the sonic slowness has 0 blocks"),
                Arguments.of(
                        "a method without its curve",
                        "method: eaton_sonic",
                        "method: equivalent_depth",
                        "case.yaml:71: offset_evidence.wells[1].log_pressure.calibrate: belongs to Eaton's equation; leave"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refused")
    void aBadMappingIsOneClearMessage(String what, String old, String replacement, String message) throws Exception {
        cases.with(old, replacement);
        List<String> faults = assertThrows(CaseFaults.class, cases::read).faults().stream()
                .map(f -> f.text())
                .toList();
        assertEquals(1, faults.size(), faults.toString());
        assertTrue(faults.get(0).startsWith(message), faults.get(0));
    }

    private List<String> said(WellCase well) {
        return well.warnings().stream()
                .filter(w -> w.subject().startsWith(LAS))
                .map(w -> w.text(UnitSystem.METRIC))
                .toList();
    }

    @Test
    void aGoodLogIsReadWithoutAWord() throws Exception {
        assertEquals(List.of(), said(cases.read()));
    }

    @Test
    void aSpikeIsToldAndCountsUnlessItIsToBeLeftOut() throws Exception {
        double before = blockAt(2005, cases.read());
        cases.with(LAS, row(2005), row(2005).replaceAll("^( *2005.00 +[0-9.]+) +[0-9.]+", "$1  240.00"));
        WellCase counted = cases.read();
        assertEquals(1, said(counted).size(), said(counted).toString());
        assertTrue(
                said(counted)
                        .get(0)
                        .startsWith("curve DT of Wrenskerry 1 has 787 µs/m at 2005.0 m where its neighbours"),
                said(counted).toString());
        assertTrue(said(counted).get(0).endsWith("perhaps a spike. It counts."));
        assertTrue(blockAt(2005, counted) > 1.1 * before);
        WellCase without = cases.with("      step: 10 m\n", "      step: 10 m\n      spikes: leave_out\n")
                .read();
        assertTrue(said(without).get(0).endsWith("It is left out."));
        assertEquals(before, blockAt(2005, without), 0.05 * before);
    }

    private String row(int depth) throws IOException {
        return Files.readAllLines(directory.resolve(LAS)).stream()
                .filter(l -> l.strip().startsWith(depth + ".00 "))
                .findFirst()
                .orElseThrow();
    }

    private static double blockAt(double z, WellCase well) {
        return log(well).log().blocks().stream()
                .filter(b -> b.verticalDepth() == z)
                .findFirst()
                .orElseThrow()
                .slowness()
                .getAsDouble();
    }

    @Test
    void aGapAndMissingValuesAreTold() throws Exception {
        String text = Files.readString(directory.resolve(LAS));
        StringBuilder gap = new StringBuilder();
        for (String line : text.lines().toList()) {
            boolean in = line.matches("[ 0-9.]+")
                    && Double.parseDouble(line.strip().split(" ")[0]) > 1700
                    && Double.parseDouble(line.strip().split(" ")[0]) < 1800;
            gap.append(in ? line.replaceAll("^( *[0-9.]+ +)[0-9.]+", "$1-999.25") : line)
                    .append('\n');
        }
        Files.writeString(directory.resolve(LAS), gap.toString());
        assertEquals(
                List.of("curve RHOB of Wrenskerry 1 has no reading from 1700.0 m to 1800.0 m; values between are taken"
                        + " straight from one to the other."),
                said(cases.read()));
    }

    @Test
    void readingsOutOfRangeAreLeftOutWhereTheCaseSaysSo() throws Exception {
        cases.with(LAS, row(2005), row(2005).replaceAll("^( *2005.00) +[0-9.]+", "$1   1.0500"));
        List<String> faults = assertThrows(CaseFaults.class, cases::read).faults().stream()
                .map(f -> f.text())
                .toList();
        assertEquals(
                List.of("wrenskerry-1.las: section ~A, curve RHOB: has 1.05 g/cm3 at 2005.0 m, where bulk"
                        + " density is 1.2 to 3.3 g/cm3; check curve and unit, or state bad_readings: leave_out"),
                faults);
        cases.with("      step: 10 m\n", "      step: 10 m\n      bad_readings: leave_out\n");
        assertEquals(
                List.of("curve RHOB has 1.05 g/cm3 at 2005.0 m, where bulk density is 1.2 to 3.3 g/cm3; left"
                        + " out."),
                said(cases.read()));
    }

    @Test
    void unitsThatTheFileWritesOtherwiseAreTold() throws Exception {
        cases.with(LAS, "RHOB.G/CM3", "RHOB.K/M3  ")
                .with(LAS, "GR  .GAPI", "GR  .CPS ")
                .with(LAS, "DEPT.M ", "DEPT.F ");
        assertEquals(
                List.of(
                        "Stated in M, while the index is in F; find out which is right.",
                        "Stated in M, while the index is in F; find out which is right.",
                        "curve DEPT is stated in m, but the file writes F; what the case states counts.",
                        "curve GR is stated in gAPI, but the file writes CPS; what the case states counts.",
                        "curve RHOB is stated in g/cm3, but the file writes K/M3; what the case states counts."),
                said(cases.read()));
    }

    @Test
    void anIndexThatTurnsBackIsRefused() throws Exception {
        cases.with(LAS, "  2005.00", "  1905.00");
        List<String> faults = assertThrows(CaseFaults.class, cases::read).faults().stream()
                .map(f -> f.text())
                .toList();
        assertEquals(
                List.of(
                        "wrenskerry-1.las: section ~A, curve DEPT: repeats itself or turns back in 1 rows, first at 1905.0"
                                + " m; sort the log and keep one row for each depth"),
                faults);
    }

    @Test
    void shoesAreMatchedAndATestFarFromThemIsTold() throws Exception {
        Path drop = Files.createDirectory(directory.resolve("late"));
        Files.copy(SUBSEA.resolve("offset-drop/casing.csv"), drop.resolve("casing.csv"));
        Files.copy(SUBSEA.resolve("offset-drop/leak-off.csv"), drop.resolve("leak-off.csv"));
        WellCase well = CaseReader.read(directory, List.of(drop));
        List<OffsetEvidence.Shoe> shoes = well.evidence().orElseThrow().shoes();
        assertEquals(4, shoes.size(), "the open hole has no shoe");
        // The seabed lies 319 m below the datum there and 335 m below it here.
        assertEquals(1919 + 16, shoes.get(2).verticalDepth().getAsDouble(), 1e-9);
        assertEquals(13.375 * 0.0254, shoes.get(2).shoe().outsideDiameter().getAsDouble(), 1e-10);
        assertTrue(well.warnings().stream().noneMatch(w -> w.subject().contains("LOT 13")));
        assertTrue(well.warnings().stream()
                .anyMatch(w -> w.text(UnitSystem.METRIC).contains("is left out: has no outside diameter")));
        Files.writeString(
                drop.resolve("casing.csv"),
                Files.readString(drop.resolve("casing.csv")).replace("1919", "1819"));
        well = CaseReader.read(directory, List.of(drop));
        assertEquals(
                List.of(
                        "stands at 1922.0 m, but the nearest shoe of the well, that of 13 3/8 in casing, at 1819.0 m: a test is"
                                + " made just below a shoe. Check depth, datum and well."),
                well.warnings().stream()
                        .filter(w -> w.subject().equals("Wrenskerry 1: LOT 13 3/8 in"))
                        .map(w -> w.text(UnitSystem.METRIC))
                        .toList());
    }

    /** With the log as the well's pore pressure, and pressures from it in the transfer. */
    private CaseInput fromLog(String use) throws Exception {
        cases.with("pore_pressure_from: profile", "pore_pressure_from: log")
                .with("  window: 200 m\n", "  log_pressures: " + use + "\n  window: 200 m\n");
        return CaseInput.read(directory, List.of(SUBSEA.resolve("offset-drop")));
    }

    @Test
    void theCaseOfARecordHasTheSameLog() throws Exception {
        CaseInput input = fromLog("estimate");
        String text = RecordFile.text(Runs.record(input, "Base"));
        Path file = directory.resolve("record.txt");
        Files.writeString(file, text);
        WellCase rebuilt = RecordedCase.of(RecordFile.read(file));
        assertEquals(text, RecordFile.text(RecordFile.read(file)));
        assertEquals(input.wellCase().earth().porePressure(), rebuilt.earth().porePressure(), "to the last digit");
        assertEquals(input.wellCase().earth().strength(), rebuilt.earth().strength());
        OffsetEvidence evidence = input.wellCase().evidence().orElseThrow();
        OffsetEvidence again = rebuilt.evidence().orElseThrow();
        assertEquals(evidence.logs(), again.logs());
        assertEquals(evidence.tests(), again.tests());
        assertEquals(evidence.shoes(), again.shoes());
        assertEquals(evidence.conflicts(), again.conflicts());
        int ofLog = text.lines()
                .filter(l -> l.contains("log_readings"))
                .mapToInt(String::length)
                .sum();
        assertTrue(ofLog > 10_000 && ofLog < 40_000, "225 blocks in lines of a hundred characters or so: " + ofLog);
    }

    @Test
    void pressuresFromTheLogFillInBetweenMeasuredOnes() throws Exception {
        WellCase compared = CaseReader.read(directory, List.of(SUBSEA.resolve("offset-drop")));
        WellCase estimated = fromLog("estimate").wellCase();
        LogPressure log = log(estimated).pressure().orElseThrow();
        LogPressure.Row row = log.rows().stream()
                .filter(r -> r.verticalDepth() == 2105)
                .findFirst()
                .orElseThrow();
        // Excess over hydrostatic at equal depth below the seabed, in the same water: 2 m of sea and 16 m of depth.
        double excess = row.pressure().likely() - (Physics.ATMOSPHERE + 1030 * Physics.GRAVITY * (2105 - 23));
        double here = Physics.ATMOSPHERE + 1030 * Physics.GRAVITY * (2121 - 25) + excess;
        assertEquals(here, pore(estimated, 2121), 1, "far from measured pressures the log counts");
        assertEquals(pore(compared, 2905), pore(estimated, 2905), 1, "at a measured pressure that counts alone");
        assertTrue(Math.abs(pore(compared, 2121) - pore(estimated, 2121)) > 1e4);
    }

    private static double pore(WellCase well, double z) {
        return well.earth().porePressure().orElseThrow().likely().lowestAt(z);
    }

    @Test
    void withoutAProfileTheLogNeedsAndGivesThePorePressure() throws Exception {
        cases.with("pore_pressure_from: profile", "pore_pressure_from: log")
                .with(
                        "      pore_pressure:\n        file: wrenskerry-1-pore-pressure.csv\n        source: Invented end-of-well"
                                + " report of Wrenskerry 1\n",
                        "");
        WellCase alone = cases.read();
        assertTrue(log(alone).counts());
        List<String> above = alone.warnings().stream()
                .filter(w -> w.subject().equals("offset well Wrenskerry 1"))
                .map(w -> w.text(UnitSystem.METRIC))
                .toList();
        assertEquals(1, above.size(), above.toString());
        assertTrue(
                above.get(0).startsWith("no pore pressure is given above its log, which begins at 1005.0 m with "),
                above.get(0));
        cases.with("pore_pressure_from: log", "pore_pressure_from: profile");
        List<String> faults = assertThrows(CaseFaults.class, cases::read).faults().stream()
                .map(f -> f.text())
                .toList();
        assertEquals(1, faults.size(), faults.toString());
        assertTrue(
                faults.get(0).contains("pore_pressure: is missing; or state pore_pressure_from: log"), faults.get(0));
    }

    /** The trend begins at 1005 m: a slow reading just below has its equivalent depth above, where there is no trend. */
    @Test
    void readingsThatAreSlowBeyondTheMethodAreSaidToHideMorePressure() throws Exception {
        cases.with("method: eaton_sonic", "method: equivalent_depth\n        curve: sonic")
                .with("        calibrate: true\n", "");
        List<String> told = cases.read().warnings().stream()
                .filter(w -> w.subject().equals("log of offset well Wrenskerry 1"))
                .map(w -> w.text(UnitSystem.METRIC))
                .toList();
        assertEquals(2, told.size(), told.toString());
        assertTrue(told.get(0).startsWith("4 readings give no pore pressure, the first at 1015.0 m"), told.get(0));
        assertTrue(told.get(1).startsWith("some of these readings are less compacted than normal"), told.get(1));
    }

    @Test
    void aTestBelowALogWithoutAProfileIsNamed() throws Exception {
        cases.with("pore_pressure_from: profile", "pore_pressure_from: log")
                .with(
                        "      pore_pressure:\n        file: wrenskerry-1-pore-pressure.csv\n        source: Invented end-of-well"
                                + " report of Wrenskerry 1\n",
                        "");
        List<String> shallow = Files.readAllLines(directory.resolve(LAS)).stream()
                .filter(line -> !line.matches("[ 0-9.]+")
                        || Double.parseDouble(line.strip().split(" ")[0]) <= 1800)
                .map(line -> line.replace("3240.00", "1800.00"))
                .toList();
        Files.write(directory.resolve(LAS), shallow);
        List<String> faults = assertThrows(
                        CaseFaults.class, () -> CaseReader.read(directory, List.of(SUBSEA.resolve("offset-drop"))))
                .faults()
                .stream()
                .map(f -> f.text())
                .toList();
        assertEquals(1, faults.size(), faults.toString());
        assertTrue(faults.get(0).contains("tells no pore pressure at LOT 13 3/8 in"), faults.get(0));
    }
}
