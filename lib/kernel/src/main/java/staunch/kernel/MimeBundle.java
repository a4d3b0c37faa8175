package staunch.kernel;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * One value in several formats, of which plain text is always one.
 *
 * @param data from MIME type to content; binary formats are Base64 text, JSON formats are JSON text
 * @param metadata from MIME type to its hints, such as the width of an image
 */
public record MimeBundle(Map<String, String> data, Map<String, Map<String, Object>> metadata) {
    public static final String PLAIN = "text/plain";
    public static final String HTML = "text/html";

    public MimeBundle {
        data = Map.copyOf(new LinkedHashMap<>(data));
        metadata = Map.copyOf(metadata);
        if (!data.containsKey(PLAIN)) {
            throw new IllegalArgumentException(
                    "a display needs a text/plain form besides " + data.keySet() + ": add one with MimeBundle.text");
        }
    }

    public static MimeBundle text(String plain) {
        return new MimeBundle(Map.of(PLAIN, Objects.requireNonNull(plain, "plain")), Map.of());
    }

    public static MimeBundle html(String html, String plain) {
        return text(plain).with(HTML, html);
    }

    /** This bundle with one more format, or with that format replaced. */
    public MimeBundle with(String mimeType, String content) {
        Map<String, String> more = new LinkedHashMap<>(data);
        more.put(mimeType, Objects.requireNonNull(content, mimeType));
        return new MimeBundle(more, metadata);
    }

    public String plain() {
        return data.get(PLAIN);
    }
}
