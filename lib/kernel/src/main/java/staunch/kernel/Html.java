package staunch.kernel;

/** HTML text. */
final class Html {
    private Html() {}

    static String escape(String text) {
        StringBuilder escaped = new StringBuilder(text.length() + 16);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                case '\'' -> escaped.append("&#39;");
                case '\n', '\r', '\t' -> escaped.append(c);
                default -> escaped.append(Character.isISOControl(c) ? '\uFFFD' : c);
            }
        }
        return escaped.toString();
    }
}
