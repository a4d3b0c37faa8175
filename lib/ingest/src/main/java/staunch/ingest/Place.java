package staunch.ingest;

/**
 * Where something stands in a case.
 *
 * @param file path relative to the case directory
 * @param line counted from 1
 * @param field path of the key, items of lists counted from 1
 */
record Place(String file, int line, String field) {
    Place key(String name, int keyLine) {
        return new Place(file, keyLine, field.isEmpty() ? name : field + "." + name);
    }

    Place item(int number, int itemLine) {
        return new Place(file, itemLine, field + "[" + number + "]");
    }
}
