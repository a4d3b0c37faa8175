package staunch.cli;

import java.util.Optional;
import staunch.kernel.MimeBundle;
import staunch.kernel.OutputSink;
import staunch.kernel.StreamName;

/** Drops what a cell puts out. */
final class SinkToNowhere implements OutputSink {
    @Override
    public void stream(StreamName name, String text) {}

    @Override
    public void display(MimeBundle bundle, Optional<String> displayId) {}

    @Override
    public void updateDisplay(MimeBundle bundle, String displayId) {}

    @Override
    public void clearOutput(boolean wait) {}

    @Override
    public Optional<String> readLine(String prompt, boolean password) {
        return Optional.empty();
    }
}
