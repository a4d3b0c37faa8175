package staunch.kernel;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Optional;
import jdk.jshell.execution.DirectExecutionControl;

/** Runs what JShell has compiled on the cell thread, and keeps the real value and the real throwable of each run. */
final class CellExecution extends DirectExecutionControl {
    private final CellThread thread;
    private final DisplayRegistry displays;
    private CellContext cell;
    private boolean showing;
    private MimeBundle shown;
    private Throwable failure;

    CellExecution(SnippetLoader loader, CellThread thread, DisplayRegistry displays) {
        super(loader);
        this.thread = thread;
        this.displays = displays;
    }

    /** Says for which cell the next runs are, and whether to render the value of what is run. */
    void prepare(CellContext forCell, boolean show) {
        cell = forCell;
        showing = show;
        shown = null;
        failure = null;
    }

    Optional<MimeBundle> shown() {
        return Optional.ofNullable(shown);
    }

    Optional<Throwable> failure() {
        return Optional.ofNullable(failure);
    }

    @Override
    protected String invoke(Method doIt) throws Exception {
        try {
            // A display function is the user's code as well: it may fail, loop or be interrupted like the cell.
            shown = (MimeBundle) thread.call(cell, () -> {
                Object value = doIt.invoke(null);
                boolean visible = showing && value != null && !(value instanceof DisplayHandle);
                return visible ? displays.render(value) : null;
            });
        } catch (InvocationTargetException e) {
            failure = e.getCause();
            throw e;
        } catch (Throwable e) {
            failure = e;
            throw new InvocationTargetException(e);
        }
        return "";
    }
}
