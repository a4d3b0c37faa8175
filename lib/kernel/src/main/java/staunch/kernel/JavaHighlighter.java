package staunch.kernel;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Java with its comments, literals and keywords marked. */
final class JavaHighlighter {
    private static final List<String> KINDS = List.of("comment", "string", "number", "keyword");
    private static final Pattern TOKEN = Pattern.compile("(?<comment>//[^\\n]*|/\\*(?s:.*?)(?:\\*/|\\z))"
            + "|(?<string>\"\"\"(?s:.*?)(?:\"\"\"|\\z)|\"(?:\\\\.|[^\"\\\\\\n])*\"?|'(?:\\\\.|[^'\\\\\\n])*'?)"
            + "|\\b(?<number>\\d[\\w.]*)"
            + "|\\b(?<keyword>abstract|boolean|break|byte|case|catch|char|class|continue|default|do|double|else|enum"
            + "|extends|final|finally|float|for|if|implements|import|instanceof|int|interface|long|new|null|package"
            + "|private|protected|public|record|return|sealed|short|static|super|switch|this|throw|throws|true|false|try"
            + "|var|void|while|yield)\\b");

    private JavaHighlighter() {}

    static String html(String source) {
        StringBuilder html = new StringBuilder();
        Matcher token = TOKEN.matcher(source);
        int last = 0;
        while (token.find()) {
            html.append(Html.escape(source.substring(last, token.start())));
            for (String kind : KINDS) {
                if (token.group(kind) != null) {
                    html.append("<span class=\"").append(kind).append("\">");
                }
            }
            html.append(Html.escape(token.group())).append("</span>");
            last = token.end();
        }
        return html.append(Html.escape(source.substring(last))).toString();
    }
}
