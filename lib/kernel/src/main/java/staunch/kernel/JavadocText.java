package staunch.kernel;

import com.sun.source.doctree.BlockTagTree;
import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.EndElementTree;
import com.sun.source.doctree.EntityTree;
import com.sun.source.doctree.LinkTree;
import com.sun.source.doctree.LiteralTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.ReturnTree;
import com.sun.source.doctree.SeeTree;
import com.sun.source.doctree.StartElementTree;
import com.sun.source.doctree.TextTree;
import com.sun.source.doctree.ThrowsTree;
import com.sun.source.util.SimpleDocTreeVisitor;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jsoup.parser.Parser;

/** A documentation comment as text and as HTML. */
record JavadocText(String plain, String html) {
    private static final Set<String> PARAGRAPHS = Set.of("p", "ul", "ol", "table", "tr", "pre", "dl", "dt", "dd");
    private static final Set<String> KEPT = Set.of(
            "p", "ul", "ol", "li", "b", "i", "em", "strong", "code", "pre", "sub", "sup", "table", "tr", "td", "th",
            "dl", "dt", "dd", "br");

    static JavadocText of(DocCommentTree comment) {
        Writer writer = new Writer();
        writer.all(comment.getFullBody());
        comment.getBlockTags().forEach(tag -> tag.accept(writer, null));
        String plain = writer.plain
                .toString()
                .replaceAll("[ \\t]*\\n[ \\t]*", "\n")
                .replaceAll("\\n{3,}", "\n\n")
                .strip();
        return new JavadocText(plain, writer.html.toString());
    }

    private static final class Writer extends SimpleDocTreeVisitor<Void, Void> {
        private final StringBuilder plain = new StringBuilder();
        private final StringBuilder html = new StringBuilder();

        void all(List<? extends DocTree> trees) {
            trees.forEach(tree -> tree.accept(this, null));
        }

        private void text(String text) {
            plain.append(text);
            html.append(Html.escape(text));
        }

        private void code(String text) {
            plain.append(text);
            html.append("<code>").append(Html.escape(text)).append("</code>");
        }

        private void block(String label, String name, List<? extends DocTree> description) {
            plain.append("\n\n").append(label);
            html.append("<p><b>").append(Html.escape(label)).append("</b> ");
            if (!name.isEmpty()) {
                plain.append(' ');
                code(name);
                text(":");
            }
            text(" ");
            all(description);
            html.append("</p>");
        }

        @Override
        public Void visitText(TextTree tree, Void none) {
            text(tree.getBody());
            return null;
        }

        @Override
        public Void visitEntity(EntityTree tree, Void none) {
            text(Parser.unescapeEntities(tree.toString(), false));
            return null;
        }

        @Override
        public Void visitLiteral(LiteralTree tree, Void none) {
            if (tree.getKind() == DocTree.Kind.CODE) {
                code(tree.getBody().getBody());
            } else {
                text(tree.getBody().getBody());
            }
            return null;
        }

        @Override
        public Void visitLink(LinkTree tree, Void none) {
            if (tree.getLabel().isEmpty()) {
                code(tree.getReference().getSignature().replaceFirst("^#", "").replace('#', '.'));
            } else {
                all(tree.getLabel());
            }
            return null;
        }

        @Override
        public Void visitStartElement(StartElementTree tree, Void none) {
            String name = tree.getName().toString().toLowerCase(Locale.ROOT);
            if (PARAGRAPHS.contains(name)) {
                plain.append("\n\n");
            } else if (name.equals("li")) {
                plain.append("\n- ");
            } else if (name.equals("br")) {
                plain.append('\n');
            }
            if (KEPT.contains(name)) {
                html.append('<').append(name).append('>');
            }
            return null;
        }

        @Override
        public Void visitEndElement(EndElementTree tree, Void none) {
            String name = tree.getName().toString().toLowerCase(Locale.ROOT);
            if (KEPT.contains(name)) {
                html.append("</").append(name).append('>');
            }
            return null;
        }

        @Override
        public Void visitParam(ParamTree tree, Void none) {
            String name = tree.getName().toString();
            block("Parameter", tree.isTypeParameter() ? "<" + name + ">" : name, tree.getDescription());
            return null;
        }

        @Override
        public Void visitReturn(ReturnTree tree, Void none) {
            block("Returns", "", tree.getDescription());
            return null;
        }

        @Override
        public Void visitThrows(ThrowsTree tree, Void none) {
            block("Throws", tree.getExceptionName().getSignature(), tree.getDescription());
            return null;
        }

        @Override
        public Void visitSee(SeeTree tree, Void none) {
            block("See", "", tree.getReference());
            return null;
        }

        @Override
        protected Void defaultAction(DocTree tree, Void none) {
            if (!(tree instanceof BlockTagTree)) {
                text(tree.toString());
            }
            return null;
        }
    }
}
