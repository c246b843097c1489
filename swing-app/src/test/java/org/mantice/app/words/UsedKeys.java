package org.mantice.app.words;

import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.DeclaredType;
import javax.lang.model.type.TypeMirror;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * The keys of texts that the app's sources name, each with the file that does: string literals that begin with a
 * bundle's name and a dot, and the constants of every enum given to {@link Words#of(String, Enum)}. A literal that ends
 * with a dot, a hyphen or nothing but the bundle is the beginning of keys.
 */
final class UsedKeys extends TreePathScanner<Void, Trees> {
    private final List<String> bundles;
    private final SortedMap<String, String> keys = new TreeMap<>();
    private String file = "";

    private UsedKeys(List<String> bundles) {
        this.bundles = bundles;
    }

    static SortedMap<String, String> in(Path sources, List<String> bundles) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        UsedKeys used = new UsedKeys(bundles);
        StringWriter complaints = new StringWriter();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, Locale.ENGLISH, null);
                Stream<Path> all = Files.walk(sources)) {
            List<Path> java = all.filter(path -> path.toString().endsWith(".java"))
                    .sorted()
                    .toList();
            JavacTask task = (JavacTask) compiler.getTask(
                    complaints,
                    files,
                    null,
                    List.of("-proc:none", "-classpath", System.getProperty("java.class.path")),
                    null,
                    files.getJavaFileObjectsFromPaths(java));
            var units = task.parse();
            task.analyze();
            Trees trees = Trees.instance(task);
            for (var unit : units) {
                used.file = Path.of(unit.getSourceFile().toUri()).getFileName().toString();
                used.scan(unit, trees);
            }
        }
        if (used.keys.isEmpty()) throw new IllegalStateException("no keys seen in " + sources + ": " + complaints);
        return used.keys;
    }

    @Override
    public Void visitLiteral(LiteralTree literal, Trees trees) {
        if (literal.getValue() instanceof String text)
            for (String bundle : bundles)
                if (text.matches(bundle + "\\.[A-Za-z0-9._-]*") && !text.endsWith(".properties")) keys.put(text, file);
        return super.visitLiteral(literal, trees);
    }

    @Override
    public Void visitMethodInvocation(MethodInvocationTree call, Trees trees) {
        if (call.getMethodSelect() instanceof MemberSelectTree method
                && call.getArguments().size() == 2
                && call.getArguments().get(0) instanceof LiteralTree bundle
                && bundle.getValue() instanceof String name
                && method.getIdentifier().contentEquals("of")
                && isWords(method.getExpression(), trees))
            constants(name, call.getArguments().get(1), trees);
        if (call.getMethodSelect() instanceof MemberSelectTree method
                && !call.getArguments().isEmpty()
                && call.getArguments().get(0) instanceof LiteralTree key
                && key.getValue() instanceof String name
                && method.getIdentifier().contentEquals("text")
                && isWords(method.getExpression(), trees)) keys.put(name, file);
        return super.visitMethodInvocation(call, trees);
    }

    private boolean isWords(ExpressionTree receiver, Trees trees) {
        return type(receiver, trees).toString().equals(Words.class.getName());
    }

    private TypeMirror type(ExpressionTree expression, Trees trees) {
        return trees.getTypeMirror(new TreePath(getCurrentPath(), expression));
    }

    private void constants(String bundle, ExpressionTree argument, Trees trees) {
        if (!(type(argument, trees) instanceof DeclaredType declared)) return;
        TypeElement chosen = (TypeElement) declared.asElement();
        for (Element member : chosen.getEnclosedElements())
            if (member.getKind() == ElementKind.ENUM_CONSTANT)
                keys.put(bundle + "." + chosen.getSimpleName() + "." + member.getSimpleName(), file);
    }
}
