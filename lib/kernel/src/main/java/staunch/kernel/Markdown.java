package staunch.kernel;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/** Markdown with formulas, as HTML. */
final class Markdown {
    /**
     * Code, which is passed over, or a formula. A dollar sign opens a formula only before something that is not blank, and
     * closes one only after such and not before a digit, so that sums of money stay what they are.
     */
    private static final Pattern CODE_OR_MATH = Pattern.compile(
            "(?<code>(?m:^ {0,3}(?<fence>`{3,}|~{3,})[^\\n]*\\n(?s:.*?)(?:^ {0,3}\\k<fence>[`~]*[ \\t]*$|\\z))"
                    + "|(?<ticks>`+)(?!`)(?s:.+?)(?<!`)\\k<ticks>(?!`)|\\\\\\$)"
                    + "|\\$\\$(?<block>(?s:.+?))\\$\\$"
                    + "|\\\\\\[(?<bracket>(?s:.+?))\\\\\\]"
                    + "|(?<environment>\\\\begin\\{(?<name>align|equation|gather|eqnarray)(?<star>\\*?)\\}(?s:.+?)\\\\end\\{\\k<name>\\k<star>\\})"
                    + "|\\\\\\((?<paren>(?s:.+?))\\\\\\)"
                    + "|\\$(?<inline>[^\\s$`](?:[^$`\\n]|\\n(?!\\n))*?(?<![\\s\\\\])|[^\\s$`])\\$(?!\\d)");

    private final TexMath math = new TexMath();
    private final Consumer<String> log;
    private final Parser parser =
            Parser.builder().extensions(List.of(TablesExtension.create())).build();
    private final HtmlRenderer renderer = HtmlRenderer.builder()
            .extensions(List.of(TablesExtension.create()))
            .sanitizeUrls(true)
            .build();

    Markdown(Consumer<String> log) {
        this.log = log;
    }

    String render(String markdown) {
        List<String> formulas = new ArrayList<>();
        StringBuilder held = new StringBuilder();
        Matcher matcher = CODE_OR_MATH.matcher(markdown.replace("\uE000", "").replace("\uE001", ""));
        while (matcher.find()) {
            if (matcher.group("code") != null) {
                matcher.appendReplacement(held, Matcher.quoteReplacement(matcher.group()));
            } else {
                matcher.appendReplacement(held, "\uE000" + formulas.size() + "\uE001");
                formulas.add(formula(matcher));
            }
        }
        matcher.appendTail(held);
        String html = renderer.render(parser.parse(held.toString()));
        Matcher places = Pattern.compile("\uE000(\\d+)\uE001").matcher(html);
        return HtmlFragment.clean(
                places.replaceAll(place -> Matcher.quoteReplacement(formulas.get(Integer.parseInt(place.group(1))))));
    }

    private String formula(Matcher matcher) {
        for (String group : List.of("block", "bracket", "environment")) {
            if (matcher.group(group) != null) {
                return formula(matcher.group(group), true);
            }
        }
        return formula(matcher.group(matcher.group("paren") != null ? "paren" : "inline"), false);
    }

    private String formula(String tex, boolean display) {
        return math.render(tex, display).orElseGet(() -> {
            log.accept("warning: this formula is shown as its source, because it uses TeX the page cannot draw: "
                    + tex.strip());
            return "<code class=\"tex\">" + Html.escape(tex.strip()) + "</code>";
        });
    }
}
