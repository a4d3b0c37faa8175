/** Reads case directories: YAML and the CSV files it names, every fault at once with its file and line. */
package staunch.ingest;
