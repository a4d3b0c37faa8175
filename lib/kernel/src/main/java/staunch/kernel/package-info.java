/**
 * A Jupyter kernel and a notebook runner for Java, on the JDK's JShell.
 *
 * <p>{@link staunch.kernel.NotebookSession} evaluates cells and writes to an {@link staunch.kernel.OutputSink};
 * {@link staunch.kernel.KernelProcess} serves it to a Jupyter front end, {@link staunch.kernel.NotebookRunner} runs a
 * notebook file with it in this JVM. What a value looks like, which imports a cell starts with and how a fault reads is
 * handed in by the embedding application.
 */
package staunch.kernel;
