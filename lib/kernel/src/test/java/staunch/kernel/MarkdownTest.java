package staunch.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MarkdownTest {
    private final List<String> log = new ArrayList<>();

    private Document render(String markdown) {
        return Jsoup.parseBodyFragment(new Markdown(log::add).render(markdown));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\\frac{\\partial p}{\\partial z} = \\rho g",
                "p_{\\text{shut in}} = 0.052\\,\\rho\\,D",
                "V_2 = V_1 \\frac{p_1}{p_2} \\cdot \\frac{Z_2 T_2}{Z_1 T_1}",
                "\\left( \\frac{a}{b} \\right)^2 \\le \\sqrt[3]{x}",
                "\\sum_{i=1}^{n} x_i \\approx \\int_0^1 f(x)\\,dx",
                "\\begin{aligned} a &= b \\\\ c &= d \\end{aligned}",
                "\\begin{cases} 1 & x > 0 \\\\ 0 & x \\le 0 \\end{cases}",
                "\\dot{m} \\bar{x} \\operatorname{min}(a, b) \\dfrac{1}{2} \\lvert x \\rvert",
                "60^\\circ \\mathrm{kg/m^3} \\mathbf{v}"
            })
    void drawsFormulas(String tex) {
        Document page = render("Before $" + tex + "$ after.\n\n$$" + tex + "$$\n");
        assertEquals(2, page.select("math").size(), log.toString());
        assertEquals(List.of(), log);
        assertEquals(0, page.select("mfenced, mstyle[mathvariant]").size());
        assertTrue(page.text().startsWith("Before "));
    }

    @Test
    void writesBracketsAndCommasOfAFunctionOut() {
        assertEquals(
                "max(a,b)", render("$\\max(a, b)$").selectFirst("math").text().replace(" ", ""));
    }

    @Test
    void setsUnitsUprightInOneWord() {
        assertEquals("kg", render("$\\mathrm{kg}$").selectFirst("mi").text());
    }

    @Test
    void leavesMoneyAndCodeAlone() {
        Document page = render("From $5 to $10, `$a$`, \\$3 and\n\n```\n$b$\n```\n");
        assertEquals(0, page.select("math").size());
        assertEquals("From $5 to $10, $a$, $3 and", page.selectFirst("p").text());
        assertEquals("$b$\n", page.selectFirst("pre").wholeText());
    }

    @Test
    void protectsFormulasFromMarkdown() {
        Document page = render("$a_1 * b_1 * c_1$ and _really_ \\(x_2\\) \\[y*z*w\\]");
        assertEquals(3, page.select("math").size());
        assertEquals(1, page.select("em").size());
    }

    @Test
    void showsTheSourceOfAFormulaItCannotDrawAndSaysSo() {
        Document page = render("$\\nowhere{x} < 1$");
        assertEquals("\\nowhere{x} < 1", page.selectFirst("code.tex").text());
        assertEquals(1, log.size());
    }

    @Test
    void closesWhatIsLeftOpen() {
        String html = new Markdown(log::add).render("<div><b>open\n\nnext");
        assertEquals(html, HtmlFragment.clean(html));
        assertFalse(new Markdown(log::add).render("<script>alert(1)</script>x").contains("script"));
    }
}
