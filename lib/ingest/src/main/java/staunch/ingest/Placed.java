package staunch.ingest;

/** Something built, with the keys it was built from. */
record Placed<T>(T value, Fields fields) {}
