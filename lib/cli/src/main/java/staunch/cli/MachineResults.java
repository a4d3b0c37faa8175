package staunch.cli;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import staunch.design.CaseHeader;
import staunch.design.InputFile;
import staunch.design.InputValue;
import staunch.design.WellCase;
import staunch.earth.OffsetEvidence;
import staunch.envelope.SectionOperations;
import staunch.envelope.WellEnvelope;
import staunch.well.Datum;

/**
 * Everything that one run found, as the machine interface gives it. All numbers are SI.
 *
 * @param format version of the layout; raised when a key changes its meaning or goes
 * @param library version of the library that computed it
 * @param header title block of the case
 * @param inputs files that were read, with their hashes
 * @param datum zero of all depths
 * @param evidence what offset wells say, and what was made of it in the rock; null where the case names none
 * @param register every number of the case with the place it was read from
 * @param designs results of each casing design
 * @param operations what follows after an influx, by casing design
 */
record MachineResults(
        int format,
        String library,
        CaseHeader header,
        List<InputFile> inputs,
        Datum datum,
        Optional<OffsetEvidence> evidence,
        List<InputValue> register,
        List<WellEnvelope> designs,
        List<DesignOperations> operations) {
    private static final int FORMAT = 1;

    MachineResults {
        Objects.requireNonNull(evidence, "evidence");
        register = List.copyOf(register);
        inputs = List.copyOf(inputs);
        designs = List.copyOf(designs);
        operations = List.copyOf(operations);
    }

    /**
     * What follows after an influx into the sections of a casing design.
     *
     * @param design name of the casing design
     * @param sections in the order they are drilled
     */
    record DesignOperations(String design, List<SectionOperations> sections) {
        DesignOperations {
            sections = List.copyOf(sections);
        }
    }

    static MachineResults of(WellCase wellCase, List<WellEnvelope> designs, List<DesignOperations> operations) {
        return new MachineResults(
                FORMAT,
                Version.LIBRARY,
                wellCase.header(),
                wellCase.files(),
                wellCase.datum(),
                wellCase.evidence(),
                wellCase.register(),
                designs,
                operations);
    }

    void write(OutputStream out) throws IOException {
        write(this, "results", out);
    }

    /** Writes UTF-8 JSON with a line feed at each line's end, on every platform; leaves the stream open. */
    static void write(Record record, String name, OutputStream out) throws IOException {
        // The fast writer prints the shortest digits that read back as the same number, whatever the JDK.
        JsonFactory factory = JsonFactory.builder()
                .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
                .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
                .build();
        try (JsonGenerator json = factory.createGenerator(out, JsonEncoding.UTF8)) {
            json.setPrettyPrinter(new LinePrinter());
            new RecordJson(json).write(record, name);
            json.writeRaw('\n');
        }
    }
}
