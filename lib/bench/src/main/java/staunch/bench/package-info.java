/** How long things take. Each benchmark checks its answer before it is timed; nothing depends on this package. */
package staunch.bench;
