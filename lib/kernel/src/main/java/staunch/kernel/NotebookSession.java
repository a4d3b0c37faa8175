package staunch.kernel;

import java.io.File;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Diag;
import jdk.jshell.JShell;
import jdk.jshell.JShellException;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.Status;
import jdk.jshell.Snippet.SubKind;
import jdk.jshell.SnippetEvent;
import jdk.jshell.UnresolvedReferenceException;
import jdk.jshell.VarSnippet;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;

/**
 * Evaluates cells of Java one after another, each seeing what those before it declared. The same session serves a
 * Jupyter front end and the embedded runner; only the {@link OutputSink} differs.
 *
 * <p>Cells run on a thread of the session's own, so {@link #interrupt} can end one while {@link #run} waits for it. All
 * other methods are for one caller at a time. While a session is open, {@code System.out}, {@code System.err} and
 * {@code System.in} belong to the cells for every thread that a cell has started.
 */
public final class NotebookSession implements AutoCloseable {
    private static final Pattern WRAPPER = Pattern.compile("REPL\\.\\$JShell\\$\\w+");
    private static final int LEAST_RESERVE = 8 << 20;
    private static final int MOST_RESERVE = 48 << 20;

    private final SessionOptions options;
    private final OutputPump pump = new OutputPump();
    private final MemoryWatch memory = new MemoryWatch(this::starve);
    private final CellStreams originalStreams;
    private final SnippetLoader loader;
    private final CellThread thread;
    private final CellExecution execution;
    private final JShell shell;
    private final CellSplitter splitter;
    private final ErrorReports errors;
    private final CodeAssistant assistant;
    private final Map<String, Snippet> declarations = new HashMap<>();
    private final Map<String, Field> variables = new HashMap<>();
    private final Object activeLock = new Object();
    private CellContext active;
    private boolean armed;
    // Let go when a cell has filled the heap, so that there is room to say so and to mend it.
    private volatile byte[] reserve;

    public NotebookSession(SessionOptions options) {
        this.options = options;
        loader = new SnippetLoader(NotebookSession.class.getClassLoader(), options.classPath());
        thread = new CellThread(loader.classLoader());
        execution = new CellExecution(loader, thread, options.displays());
        errors = new ErrorReports(options.errors());
        Grammar grammar = new Grammar();
        shell = JShell.builder()
                .executionEngine(new Provider(execution), Map.of())
                .compilerOptions("-classpath", classPath(options), "-proc:none")
                .build();
        splitter = new CellSplitter(shell.sourceCodeAnalysis(), grammar);
        assistant =
                new CodeAssistant(shell.sourceCodeAnalysis(), new JavadocIndex(options.sources(), grammar), grammar);
        originalStreams = CellStreams.install();
        reserve();
        options.imports().forEach(name -> start("import " + name + ";"));
        options.startup().forEach(this::start);
    }

    private static String classPath(SessionOptions options) {
        return options.classPath().stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator));
    }

    private void start(String code) {
        CellOutcome outcome = run("start-up", code, SilentSink.INSTANCE);
        outcome.error().ifPresent(error -> {
            close();
            throw new IllegalStateException(
                    "the start-up code of the session failed: " + String.join("\n", error.traceback()));
        });
    }

    /**
     * Runs a cell and waits for its end. Whatever the cell does, this returns.
     *
     * @param name how errors call the cell, for example {@code cell [3]}
     */
    public synchronized CellOutcome run(String name, String code, OutputSink sink) {
        CellContext cell = new CellContext(sink, pump, options);
        synchronized (activeLock) {
            active = cell;
            // Where an earlier cell has filled the heap, the next one must be let run: it may be the one to empty it.
            armed = !memory.isFull();
        }
        cell.begin();
        Cell run = new Cell(name, code, cell);
        try {
            return run.outcome();
        } catch (CellInterrupted e) {
            return CellOutcome.failed(run.stopped(null));
        } catch (OutOfMemoryError e) {
            reserve = null;
            return CellOutcome.failed(errors.runtime(e, null));
        } catch (RuntimeException | Error e) {
            return CellOutcome.failed(errors.runtime(e, null));
        } finally {
            synchronized (activeLock) {
                active = null;
            }
            cell.end();
            run.release();
            reserve();
        }
    }

    /** Ends the running cell, if one runs, from any thread: at once where its code allows, by force a second later. */
    public void interrupt() {
        synchronized (activeLock) {
            if (active != null) {
                thread.interrupt(active);
            }
        }
    }

    private void starve() {
        synchronized (activeLock) {
            if (active != null && armed && !active.isStarved()) {
                reserve = null;
                active.starve();
                thread.interrupt(active);
            }
        }
    }

    /** Gives the running cell up with {@code reason}; for when the JVM is about to end. */
    void abandon(String reason) {
        thread.leaveBehind(new NotebookFault(reason));
    }

    /** What could stand at {@code cursor}, a UTF-16 index into {@code code}. */
    public synchronized Completion complete(String code, int cursor) {
        return assistant.complete(code, cursor);
    }

    /** Signature and Javadoc of what stands at {@code cursor}, a UTF-16 index into {@code code}. */
    public synchronized Optional<MimeBundle> inspect(String code, int cursor) {
        return assistant.inspect(code, cursor);
    }

    synchronized CellSplitter.Standing standing(String code) {
        return splitter.standing(code);
    }

    @Override
    public void close() {
        thread.close();
        shell.close();
        pump.close();
        memory.close();
        originalStreams.restore();
    }

    private void reserve() {
        if (memory.isFull()) {
            System.gc();
        }
        if (reserve == null && !memory.isFull()) {
            long share = Runtime.getRuntime().maxMemory() / 16;
            try {
                reserve = new byte[(int) Math.max(LEAST_RESERVE, Math.min(MOST_RESERVE, share))];
            } catch (OutOfMemoryError e) {
                reserve = null;
            }
        }
    }

    /** One run of one cell. */
    private final class Cell {
        private final String name;
        private final String code;
        private final CellContext context;
        private final Map<Snippet, Status> unresolved = new LinkedHashMap<>();
        private final List<Snippet> temporary = new ArrayList<>();

        Cell(String name, String code, CellContext context) {
            this.name = name;
            this.code = code;
            this.context = context;
        }

        CellOutcome outcome() {
            List<CellPiece> pieces = splitter.split(code);
            // A cell that breaks the grammar somewhere does not run its first half.
            for (CellPiece piece : pieces) {
                if (!piece.wellFormed()) {
                    return CellOutcome.failed(ungrammatical(piece));
                }
            }
            Optional<MimeBundle> result = Optional.empty();
            for (int i = 0; i < pieces.size(); i++) {
                context.throwIfInterrupted();
                CellPiece piece = pieces.get(i);
                if (declaredAlready(piece)) {
                    continue;
                }
                execution.prepare(context, piece.showsValue() && i == pieces.size() - 1);
                List<SnippetEvent> events = shell.eval(piece.source());
                keepVariables();
                Optional<CellError> error = digest(piece, events);
                if (error.isPresent()) {
                    return CellOutcome.failed(error.get());
                }
                result = execution.shown();
            }
            noteUnresolved();
            return CellOutcome.done(result);
        }

        private CellError ungrammatical(CellPiece piece) {
            List<SnippetEvent> events = shell.eval(piece.source());
            if (events.isEmpty()) {
                return errors.compilation(name, code, piece, piece.source(), List.of());
            }
            Snippet snippet = events.get(0).snippet();
            List<Diag> all = shell.diagnostics(snippet).toList();
            // What the compiler makes of the names in a broken statement only hides where it breaks.
            List<Diag> grammar = all.stream()
                    .filter(diagnostic -> !diagnostic.getCode().startsWith("compiler.err.cant."))
                    .toList();
            List<Diag> diagnostics = grammar.isEmpty() ? all : grammar;
            events.forEach(event -> shell.drop(event.snippet()));
            return errors.compilation(name, code, piece, snippet.source(), diagnostics);
        }

        /** Running an unchanged declaration again would reset every variable that uses it. */
        private boolean declaredAlready(CellPiece piece) {
            Snippet same = declarations.get(piece.source().strip());
            return same != null && shell.status(same) == Status.VALID;
        }

        private Optional<CellError> digest(CellPiece piece, List<SnippetEvent> events) {
            for (SnippetEvent event : events) {
                Snippet snippet = event.snippet();
                if (event.causeSnippet() != null) {
                    digestConsequence(event);
                    continue;
                }
                errors.remember(snippet, name, code, piece);
                if (event.status() == Status.REJECTED) {
                    List<Diag> diagnostics = shell.diagnostics(snippet).toList();
                    return Optional.of(errors.compilation(name, code, piece, snippet.source(), diagnostics));
                }
                if (event.status() == Status.RECOVERABLE_DEFINED || event.status() == Status.RECOVERABLE_NOT_DEFINED) {
                    unresolved.put(snippet, event.status());
                }
                if (snippet.kind() == Snippet.Kind.METHOD || snippet.kind() == Snippet.Kind.TYPE_DECL) {
                    declarations.put(piece.source().strip(), snippet);
                }
                if (snippet.subKind() == SubKind.TEMP_VAR_EXPRESSION_SUBKIND) {
                    temporary.add(snippet);
                }
                Optional<CellError> error = failure(event.exception());
                if (error.isPresent()) {
                    return error;
                }
            }
            return Optional.empty();
        }

        private Optional<CellError> failure(JShellException translated) {
            Optional<Throwable> fault = execution.failure();
            if (translated instanceof UnresolvedReferenceException unmet) {
                DeclarationSnippet snippet = unmet.getSnippet();
                return Optional.of(errors.unresolved(
                        unmet, shell.unresolvedDependencies(snippet).toList()));
            }
            if (fault.isEmpty()) {
                return Optional.empty();
            }
            boolean ownFault = fault.get() instanceof NotebookFault || fault.get() instanceof OutOfMemoryError;
            if (context.isInterrupted() && !ownFault) {
                return Optional.of(stopped(translated));
            }
            if (fault.get() instanceof OutOfMemoryError) {
                reserve = null;
            }
            return Optional.of(errors.runtime(fault.get(), translated));
        }

        private CellError stopped(JShellException translated) {
            return context.isStarved()
                    ? errors.runtime(new OutOfMemoryError(), translated)
                    : errors.interrupted(translated);
        }

        private void digestConsequence(SnippetEvent event) {
            boolean live = event.status() == Status.VALID || event.status() == Status.RECOVERABLE_DEFINED;
            if (event.snippet() instanceof VarSnippet variable
                    && live
                    && event.previousStatus() == Status.VALID
                    && variable.subKind() != SubKind.TEMP_VAR_EXPRESSION_SUBKIND) {
                note(variable.name() + " has been reset, because a declaration it uses has changed");
            } else if (event.previousStatus() == Status.VALID
                    && event.status() == Status.RECOVERABLE_NOT_DEFINED
                    && event.snippet() instanceof DeclarationSnippet declaration) {
                note(declaration.name() + " is gone, because a declaration it uses has changed: run its cell again");
            }
        }

        private void noteUnresolved() {
            unresolved.keySet().forEach(snippet -> {
                Status now = shell.status(snippet);
                boolean open = now == Status.RECOVERABLE_DEFINED || now == Status.RECOVERABLE_NOT_DEFINED;
                if (open && snippet instanceof DeclarationSnippet declaration) {
                    String missing = shell.unresolvedDependencies(declaration).collect(Collectors.joining(", "));
                    note(declaration.name() + " cannot be used yet: "
                            + (missing.isEmpty() ? "its body has errors" : missing + " is not declared"));
                }
            });
        }

        private void note(String text) {
            context.write(StreamName.STDERR, text + "\n");
        }

        /** Lets go of what only this cell's unnamed values hold. */
        void release() {
            temporary.forEach(snippet -> {
                shell.drop(snippet);
                clear(variables.remove(((VarSnippet) snippet).name()));
                errors.forget(snippet);
            });
        }
    }

    /**
     * Notes in which class each variable now lives. JShell keeps the class of a variable that has been declared anew, and
     * with it the old value; that one is let go here.
     */
    private void keepVariables() {
        for (Class<?> type : loader.takeLatest()) {
            if (WRAPPER.matcher(type.getName()).matches()) {
                for (Field field : type.getDeclaredFields()) {
                    if (Modifier.isStatic(field.getModifiers())) {
                        clear(variables.put(field.getName(), field));
                    }
                }
            }
        }
    }

    private static void clear(Field old) {
        if (old != null && !old.getType().isPrimitive() && !Modifier.isFinal(old.getModifiers())) {
            try {
                old.setAccessible(true);
                old.set(null, null);
            } catch (IllegalAccessException e) {
                throw new IllegalStateException(old + " cannot be cleared", e);
            }
        }
    }

    private record Provider(ExecutionControl control) implements ExecutionControlProvider {
        @Override
        public String name() {
            return "cells";
        }

        @Override
        public ExecutionControl generate(ExecutionEnv environment, Map<String, String> parameters) {
            return control;
        }
    }
}
