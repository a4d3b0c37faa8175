package staunch.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import staunch.design.CasingDesign;
import staunch.design.StringPrice;
import staunch.design.WellCase;
import staunch.earth.StayOut;

/** Keys that the shoe search and the comparison of designs read. */
class ShoeKeysTest {
    private static final String STAY_OUTS = "  shoe_stay_outs:\n";
    private static final String PRICE = "{amount: 48, currency: USD (invented), per: ft}";

    @TempDir
    Path directory;

    private Cases quillmarsh() throws IOException {
        return Cases.copy(Cases.ROOT.resolve("data/quillmarsh-1"), directory);
    }

    private static String stayOut(String top, String bottom) {
        return STAY_OUTS + "    - name: Fault\n      " + top + "\n      " + bottom
                + "\n      reason: Total losses when crossed\n      source: Invented map\n";
    }

    private static StringPrice price(WellCase wellCase) {
        CasingDesign design = wellCase.design("Base");
        return design.prices().stream()
                .filter(p -> p.string().equals("9 5/8 in casing"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aStayOutCountsFromTheDatum() throws IOException, CaseFaults {
        WellCase wellCase = quillmarsh()
                .with(STAY_OUTS, stayOut("top_tvdss: 5000 ft", "bottom_tvd: 6000 ft"))
                .read();
        StayOut found = wellCase.earth().stayOuts().stream()
                .filter(s -> s.name().equals("Fault"))
                .findFirst()
                .orElseThrow();
        assertEquals((5000 + 642) * 0.3048, found.topVerticalDepth(), 1e-9);
        assertEquals(6000 * 0.3048, found.bottomVerticalDepth(), 1e-9);
        assertEquals("Total losses when crossed", found.reason());
    }

    @Test
    void aStayOutTheWrongWayUpIsAFault() throws IOException {
        Cases turned = quillmarsh().with(STAY_OUTS, stayOut("top_tvd: 6000 ft", "bottom_tvd: 5000 ft"));
        CaseFaults faults = assertThrows(CaseFaults.class, turned::read);
        assertTrue(faults.faults().get(0).text().contains("bottom above its top"), faults.getMessage());
    }

    @Test
    void pricesBecomePricesPerMetreOrKilogram() throws IOException, CaseFaults {
        WellCase perFoot =
                quillmarsh().with(PRICE, "{amount: 61, currency: EUR, per: ft}").read();
        assertEquals("EUR", price(perFoot).currency());
        assertEquals(StringPrice.Basis.METRE, price(perFoot).basis());
        assertEquals(61 / 0.3048, price(perFoot).amount(), 1e-9);
    }

    @Test
    void aTonneIsAThousandKilograms() throws IOException, CaseFaults {
        WellCase perTonne = quillmarsh()
                .with(PRICE, "{amount: 2100, currency: EUR, per: t}")
                .read();
        assertEquals(new StringPrice("9 5/8 in casing", "EUR", 2.1, StringPrice.Basis.KILOGRAM), price(perTonne));
    }
}
