package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import staunch.units.Measure;
import staunch.units.UnitSystem;

/** Walls of the table against sizes that handbooks print beside their ratings. */
class PipeSizesReferenceTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/casing-sizes.csv", numLinesToSkip = 1)
    void wallOfTheNominalWeight(String id, double outside, double weight, double wall, String source) {
        double found = PipeSizes.wall(
                        UnitSystem.FIELD.toSi(outside, Measure.DIAMETER),
                        UnitSystem.FIELD.toSi(weight, Measure.LINEAR_MASS))
                .orElseThrow();
        // Both are printed to a thousandth of an inch: they must be the same figure.
        assertEquals(wall, UnitSystem.FIELD.fromSi(found, Measure.DIAMETER), 1e-9, id + " of " + source);
    }
}
