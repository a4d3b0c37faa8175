package staunch.kernel;

import java.awt.image.RenderedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javax.imageio.ImageIO;

/** Which function turns a value of which class into its formats. */
public final class DisplayRegistry {
    private final Map<Class<?>, Function<Object, MimeBundle>> renderers;

    private DisplayRegistry(Map<Class<?>, Function<Object, MimeBundle>> renderers) {
        this.renderers = Map.copyOf(renderers);
    }

    /** Knows images and arrays; everything else shows its {@code toString}. */
    public static DisplayRegistry standard() {
        return new DisplayRegistry(Map.of()).with(RenderedImage.class, DisplayRegistry::image);
    }

    /** This registry, with {@code renderer} for values of {@code type} and of its subtypes that have none nearer. */
    public <T> DisplayRegistry with(Class<T> type, Function<? super T, MimeBundle> renderer) {
        Map<Class<?>, Function<Object, MimeBundle>> more = new LinkedHashMap<>(renderers);
        more.put(type, value -> renderer.apply(type.cast(value)));
        return new DisplayRegistry(more);
    }

    /** The formats of {@code value}. */
    public MimeBundle render(Object value) {
        if (value == null) {
            return MimeBundle.text("null");
        }
        if (value instanceof MimeBundle bundle) {
            return bundle;
        }
        return nearest(value.getClass())
                .map(renderer -> renderer.apply(value))
                .orElseGet(() -> MimeBundle.text(plain(value)));
    }

    /** The class and its superclasses first, then their interfaces, the most specific ones before the others. */
    private Optional<Function<Object, MimeBundle>> nearest(Class<?> type) {
        List<Class<?>> generation = new ArrayList<>();
        for (Class<?> level = type; level != null && level != Object.class; level = level.getSuperclass()) {
            Function<Object, MimeBundle> own = renderers.get(level);
            if (own != null) {
                return Optional.of(own);
            }
            generation.addAll(List.of(level.getInterfaces()));
        }
        while (!generation.isEmpty()) {
            List<Class<?>> next = new ArrayList<>();
            for (Class<?> face : generation) {
                Function<Object, MimeBundle> renderer = renderers.get(face);
                if (renderer != null) {
                    return Optional.of(renderer);
                }
                next.addAll(List.of(face.getInterfaces()));
            }
            generation = next;
        }
        return Optional.ofNullable(renderers.get(Object.class));
    }

    private static String plain(Object value) {
        if (value.getClass().isArray()) {
            String nested = Arrays.deepToString(new Object[] {value});
            return nested.substring(1, nested.length() - 1);
        }
        return String.valueOf(value.toString());
    }

    private static MimeBundle image(RenderedImage image) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", bytes);
        } catch (IOException e) {
            throw new UncheckedIOException("the image could not be written as PNG", e);
        }
        return MimeBundle.text("image, " + image.getWidth() + " × " + image.getHeight() + " px")
                .with("image/png", Base64.getEncoder().encodeToString(bytes.toByteArray()));
    }
}
