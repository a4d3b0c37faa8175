package staunch.kernel;

import java.util.List;
import java.util.Locale;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** HTML that comes from a cell, made fit to stand in a page: balanced, without scripts, without anything to load. */
final class HtmlFragment {
    private static final String ACTIVE = "script, iframe, object, embed, link, meta, base, form";

    private HtmlFragment() {}

    static String clean(String html) {
        Document document = Jsoup.parseBodyFragment(html);
        document.outputSettings().prettyPrint(false);
        document.select(ACTIVE).remove();
        for (Element element : document.body().getAllElements()) {
            for (Attribute attribute : List.copyOf(element.attributes().asList())) {
                String name = attribute.getKey().toLowerCase(Locale.ROOT);
                String value = attribute.getValue().strip().toLowerCase(Locale.ROOT);
                boolean handler = name.startsWith("on");
                boolean loads = name.equals("src") && !value.startsWith("data:");
                if (handler || loads || value.startsWith("javascript:")) {
                    element.removeAttr(attribute.getKey());
                }
            }
        }
        return document.body().html();
    }
}
