package staunch.envelope;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import staunch.units.Physics;

/**
 * Gas mass is conserved over the displacement: between the ends of the gas at each position, density integrated by an
 * independent fine method gives the mass that came in.
 */
class ConservationLawTest {
    /** Of the mass; the independent integration is good to about 1e-11. */
    private static final double CONSERVED = 1e-10;

    @Provide
    Arbitrary<AnySection> sections() {
        return AnySection.any();
    }

    @Property(tries = 60, seed = "1")
    void gasMassIsConservedOverTheDisplacement(
            @ForAll("sections") AnySection section, @ForAll @DoubleRange(min = 0.5, max = 8) double volume) {
        Wells wells = section.wells();
        Model model = wells.model();
        Kick kick = model.kick(Kick.Scenario.DRILLED, section.bottom());
        DrilledHole hole = model.hole(section.bottom());
        InfluxMargin margin = model.margin(kick, hole, volume, "test");
        GasReference reference = new GasReference(section, wells, model.gas().orElseThrow());
        double top = hole.grid().topOfVolume(section.bottom(), volume);
        double mass = reference.mass(top, section.bottom(), kick.formationPressure());
        assertTrue(margin.path().size() > 40);
        for (InfluxMargin.Point point : margin.path()) {
            double below = section.mud()
                    * Physics.GRAVITY
                    * (reference.vertical(section.bottom()) - reference.vertical(point.gasBottom()));
            double found = reference.mass(point.gasTop(), point.gasBottom(), kick.formationPressure() - below);
            assertEquals(mass, found, CONSERVED * mass, "gas from " + point.gasTop() + " to " + point.gasBottom());
        }
    }
}
