package staunch.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import staunch.chart.ChartImage;
import staunch.units.InputFault;

/** Writes a chart to a file by the ending of its name. */
public final class ChartFile {
    private ChartFile() {}

    /**
     * Writes a chart as PNG or SVG, whole or not at all.
     *
     * @param chart to write
     * @param file ending in .png or .svg
     * @return the file
     * @throws InputFault where the name ends otherwise
     * @throws IOException where it cannot be written
     */
    public static Path write(ChartImage chart, Path file) throws IOException {
        String name = file.getFileName().toString();
        byte[] bytes;
        if (name.endsWith(".png")) {
            bytes = chart.png();
        } else if (name.endsWith(".svg")) {
            bytes = chart.svg().getBytes(StandardCharsets.UTF_8);
        } else {
            throw new InputFault("name of the picture \"" + name + "\"", "ends in neither .png nor .svg", "choose one");
        }
        return WholeFile.write(file, out -> out.write(bytes));
    }
}
