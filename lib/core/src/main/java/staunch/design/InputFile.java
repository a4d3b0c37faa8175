package staunch.design;

import staunch.units.Check;

/**
 * A file the case was read from.
 *
 * @param path relative to the case directory
 * @param sha256 of its bytes, hexadecimal
 */
public record InputFile(String path, String sha256) {
    public InputFile {
        Check.text("path of the input file", path);
        Check.text("hash of the input file", sha256);
    }
}
