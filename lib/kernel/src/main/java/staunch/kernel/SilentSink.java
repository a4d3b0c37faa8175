package staunch.kernel;

import java.util.Optional;

/** Drops everything: for silent requests and for the start-up code. */
enum SilentSink implements OutputSink {
    INSTANCE;

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
