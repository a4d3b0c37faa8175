package staunch.kernel;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;
import org.jsoup.parser.Parser;
import uk.ac.ed.ph.snuggletex.SnuggleEngine;
import uk.ac.ed.ph.snuggletex.SnuggleInput;
import uk.ac.ed.ph.snuggletex.SnuggleSession;
import uk.ac.ed.ph.snuggletex.XMLStringOutputOptions;

/** Formulas in TeX as the MathML that browsers draw themselves. */
final class TexMath {
    /** What the converter does not know, said in what it knows. */
    private static final String PREAMBLE =
            "\\newcommand{\\text}[1]{\\mbox{#1}}\\newcommand{\\operatorname}[1]{\\mathrm{#1}}"
                    + "\\newcommand{\\dfrac}[2]{\\frac{#1}{#2}}\\newcommand{\\tfrac}[2]{\\frac{#1}{#2}}"
                    + "\\newcommand{\\lvert}{|}\\newcommand{\\rvert}{|}";

    private static final Pattern ALIGNED_START =
            Pattern.compile("\\\\begin\\{(?:aligned|align\\*?|split|gathered|gather\\*?|equation\\*?)\\}");
    private static final Pattern ALIGNED_END =
            Pattern.compile("\\\\end\\{(?:aligned|align\\*?|split|gathered|gather\\*?|equation\\*?)\\}");
    private static final Map<String, String> STYLES = Map.of("bold", "font-weight:bold", "italic", "font-style:italic");

    private final SnuggleEngine engine = new SnuggleEngine();

    /** The formula as a {@code math} element; empty if it uses TeX that is not understood. */
    Optional<String> render(String tex, boolean display) {
        String array = ALIGNED_END
                .matcher(ALIGNED_START.matcher(tex).replaceAll("\\\\begin{array}{rlrl}"))
                .replaceAll("\\\\end{array}");
        SnuggleSession session = engine.createSession();
        try {
            boolean parsed = session.parseInput(new SnuggleInput(PREAMBLE + "$" + array.strip() + "$"));
            XMLStringOutputOptions options = new XMLStringOutputOptions();
            options.setIndenting(false);
            String xml = parsed ? session.buildXMLString(options) : null;
            if (xml == null || !session.getErrors().isEmpty()) {
                return Optional.empty();
            }
            Document document = Parser.xmlParser().parseInput(xml, "");
            document.outputSettings().prettyPrint(false).syntax(Document.OutputSettings.Syntax.xml);
            Element math = document.selectFirst("math");
            if (math == null || document.select("math").size() != 1) {
                return Optional.empty();
            }
            simplify(document);
            math.attr("display", display ? "block" : "inline");
            math.attr("alttext", tex.strip());
            return Optional.of(math.outerHtml());
        } catch (IOException e) {
            throw new UncheckedIOException("a formula held in memory could not be read", e);
        }
    }

    /** Browsers draw the core of MathML only, without fences and style variants as elements of their own. */
    private static void simplify(Document document) {
        for (Element fence : document.select("mfenced")) {
            List<Element> parts = List.copyOf(fence.children());
            fence.tagName("mrow");
            String open = fence.attr("open");
            String close = fence.attr("close");
            fence.clearAttributes();
            for (int i = 1; i < parts.size(); i++) {
                parts.get(i).before(operator(","));
            }
            if (!open.isEmpty()) {
                fence.prependChild(operator(open));
            }
            if (!close.isEmpty()) {
                fence.appendChild(operator(close));
            }
        }
        for (Element style : document.select("mstyle[mathvariant]")) {
            String variant = style.attr("mathvariant");
            style.removeAttr("mathvariant");
            if (variant.equals("normal")) {
                upright(style);
            } else if (STYLES.containsKey(variant)) {
                style.attr("style", STYLES.get(variant));
            }
        }
    }

    private static Element operator(String text) {
        return new Element("mo").appendChild(new TextNode(text));
    }

    /** Letters in a row are one word; a word of several letters stands upright by itself. */
    private static void upright(Element style) {
        for (Element letter : style.select("mi")) {
            if (letter.parent() == null) {
                continue;
            }
            Element next = letter.nextElementSibling();
            while (next != null && next.tagName().equals("mi")) {
                letter.text(letter.text() + next.text());
                next.remove();
                next = letter.nextElementSibling();
            }
            letter.attr("mathvariant", "normal");
        }
    }
}
