package staunch.control;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import staunch.reference.ReferenceRow;
import staunch.reference.ReferenceTable;
import staunch.units.Measure;
import staunch.units.Quantity;
import staunch.well.Annulus;
import staunch.well.AnnulusGeometry;
import staunch.well.DrillString;
import staunch.well.HoleInterval;
import staunch.well.StringComponent;
import staunch.well.SurveyStation;
import staunch.well.WellPath;

/**
 * The handbook's worked kill sheet, rebuilt as a well: capacities become diameters. The vertical depth of 10 000 ft is that of
 * the bit; the string is longer by 525 ft, which the example's inclined hole takes up.
 */
class KillSheetReferenceTest {
    private static final ReferenceTable TABLE = ReferenceTable.read("control/well-control-cases.csv");
    private static final double PIPE = 0.127;
    private static final double COLLAR = 0.1778;

    private static double capacity(String row, String input) {
        return Quantity.parse(TABLE.row(row).text(input).split(",")[0]).si(Measure.CAPACITY);
    }

    private static double length(String row, String input) {
        return Quantity.parse(TABLE.row(row).text(input).split(",")[1]).si(Measure.LENGTH);
    }

    private static double bore(double capacity, double pipe) {
        return Math.sqrt(4 * capacity / Math.PI + pipe * pipe);
    }

    private static StringComponent part(String input, double outside) {
        return new StringComponent(input, length("D03-14", input), outside, bore(capacity("D03-14", input), 0));
    }

    private static KillSheet sheet() {
        ReferenceRow kill = TABLE.row("D03-11");
        DrillString string = new DrillString(List.of(part("dc", COLLAR), part("hwdp", PIPE), part("dp", PIPE)));
        double shoe = length("D03-16", "dp_csg");
        double collarTop = shoe + length("D03-16", "dp_oh");
        double bit = collarTop + length("D03-16", "dc_oh");
        Annulus annulus = Annulus.of(new AnnulusGeometry(
                List.of(KillWells.casing(0, shoe, bore(capacity("D03-16", "dp_csg"), PIPE))),
                List.of(
                        new HoleInterval(shoe, collarTop, bore(capacity("D03-16", "dp_oh"), PIPE)),
                        new HoleInterval(collarTop, bit, bore(capacity("D03-16", "dc_oh"), COLLAR))),
                string,
                bit,
                0,
                bit));
        double vertical = kill.si("tvd", Measure.DEPTH);
        // One straight inclined stretch brings the bit to its vertical depth.
        double inclination = Math.acos((vertical - 1000) / (bit - 1000));
        WellPath path = WellPath.of(List.of(
                new SurveyStation(0, 0, 0),
                new SurveyStation(1000, 0, 0),
                new SurveyStation(1000.001, inclination, 0),
                new SurveyStation(bit, inclination, 0)));
        double slow = TABLE.row("D03-12").si("kill_rate_pressure", Measure.PRESSURE_GAUGE);
        double stroke = Quantity.of(0.136, "bbl").si(Measure.VOLUME);
        return KillSheet.of(new KillSheetInput(
                path,
                annulus,
                kill.si("mw", Measure.DENSITY),
                new KillSheetInput.ShutIn(kill.si("sidpp", Measure.PRESSURE_GAUGE), 4e6, 2),
                new KillSheetInput.Pump(
                        stroke, 0, new SlowCirculation(0.01, OptionalDouble.of(slow), OptionalDouble.empty())),
                new KillSheetInput.OpenHoleLimit("shoe", shoe, 3e7),
                new KillSheetInput.KillMud(Quantity.of(0.1, "ppg").si(Measure.DENSITY), 0, 100, 4200),
                Optional.empty(),
                new KillSheetInput.Options(HydrostaticConstant.TRADE_0_052, StringFriction.BY_LENGTH, 10)));
    }

    private static ReferenceRow row(String id) {
        return TABLE.row(id).as("kill sheet of the whole well");
    }

    @Test
    void theWholeSheetGivesTheSameNumbers() {
        KillSheet sheet = sheet();
        row("D03-11").checkSi(sheet.balancingDensity(), Measure.DENSITY);
        row("D03-12").checkSi(sheet.initialCirculatingPressure(), Measure.PRESSURE_GAUGE);
        row("D03-14").checkSi(sheet.input().annulus().stringVolume(), Measure.VOLUME);
        row("D03-15").check(sheet.legs().get(1).strokes());
        row("D03-16").checkSi(sheet.bottomsUpVolume(), Measure.VOLUME);
    }
}
