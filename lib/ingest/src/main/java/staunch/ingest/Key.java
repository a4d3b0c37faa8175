package staunch.ingest;

/**
 * One key of the case file.
 *
 * @param name as written
 * @param form of its value
 * @param needed whether the thing it belongs to makes no sense without
 * @param meaning one sentence for the reference
 * @param without what is not assessed, or what is taken, without it
 */
record Key(String name, Form form, boolean needed, String meaning, String without) {
    static Key of(String name, Form form, String meaning) {
        return new Key(name, form, false, meaning, "");
    }

    Key must() {
        return new Key(name, form, true, meaning, without);
    }

    Key without(String effect) {
        return new Key(name, form, needed, meaning, effect);
    }
}
