package org.mantice.plugin;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PacksTest {
    private static final String SERVICE = "META-INF/services/org.mantice.rule.RuleProvider";

    @TempDir
    Path folder;

    @Test
    void ourOwnPacksAreFoundOnTheClassPath() {
        assertThat(Packs.ofClassPath().packs())
                .extracting(pack -> pack.provider().id())
                .contains("mantice.variation", "mantice.left-hand", "mantice.bellows", "mantice.right-hand");
    }

    @Test
    void goodJarLoadsBesideBadOnesWhichAreListedWithTheReason() throws IOException {
        jar("a-good.jar", source("good.Pack", "good-pack", "good.rule", ""));
        Files.writeString(folder.resolve("b-bytes.jar"), "no archive at all");
        Files.createFile(folder.resolve("c-empty.jar"));
        jar("d-silent.jar", null);
        jar(
                "e-throws.jar",
                source("bad.Pack", "bad-pack", "bad.rule", "if (true) throw new IllegalStateException(\"sulks\");"));
        jar("f-taken.jar", source("taken.Pack", "taken-pack", "variation.growing", ""));
        jar(
                "g-peeks.jar",
                source("peek.Pack", "peek-pack", "peek.rule", "org.mantice.search.Transition.builder(1, 1);"));
        Files.createDirectory(folder.resolve("h-folder.jar"));
        jar("i-missing.jar", "no.such.Pack", List.of());

        Packs packs = Packs.of(Optional.of(folder));

        assertThat(packs.packs())
                .filteredOn(pack -> pack.origin().endsWith(".jar"))
                .extracting(pack -> pack.origin() + " " + pack.provider().id())
                .containsExactly("a-good.jar good-pack");
        assertThat(packs.problems())
                .extracting(Packs.Problem::origin)
                .containsExactly(
                        "b-bytes.jar",
                        "c-empty.jar",
                        "d-silent.jar",
                        "e-throws.jar",
                        "f-taken.jar",
                        "g-peeks.jar",
                        "h-folder.jar",
                        "i-missing.jar");
        assertThat(message(packs, "e-throws.jar")).contains("sulks");
        assertThat(message(packs, "f-taken.jar")).contains("variation.growing is taken");
        assertThat(message(packs, "g-peeks.jar")).contains("org/mantice/search/Transition");
        assertThat(message(packs, "i-missing.jar")).contains("no.such.Pack").contains("not found");
    }

    @Test
    void folderThatIsNotThereIsAProblemAndNotAnError() {
        Packs packs = Packs.of(Optional.of(folder.resolve("nowhere")));

        assertThat(packs.problems()).singleElement().satisfies(problem -> assertThat(problem.message())
                .contains("not a folder"));
        assertThat(packs.packs()).isNotEmpty();
    }

    private static String message(Packs packs, String origin) {
        return packs.problems().stream()
                .filter(p -> p.origin().equals(origin))
                .findFirst()
                .orElseThrow()
                .message();
    }

    private static String source(String className, String packId, String ruleId, String constructor) {
        String pkg = className.substring(0, className.lastIndexOf('.'));
        return """
                package %s;
                import java.util.List;
                import org.mantice.rule.*;
                public final class Pack implements RuleProvider {
                    public Pack() { %s }
                    public String id() { return "%s"; }
                    public String version() { return "1.0.0"; }
                    public String bundle() { return "%s.texts"; }
                    public List<Rule<?>> rules() { return List.of(new Free()); }
                    static final class Free implements Rule<PassChoice> {
                        public RuleInfo info() { return RuleInfo.of("%s", RuleSet.REPEAT_VARIATION, "estimate"); }
                        public Class<PassChoice> reach() { return PassChoice.class; }
                        public long cost(PassChoice choice) { return 0; }
                        public Reasons explain(PassChoice choice) { return Reasons.NOTHING; }
                    }
                }
                """.formatted(pkg, constructor, packId, pkg, ruleId);
    }

    private void jar(String name, String source) throws IOException {
        if (source == null) {
            jar(name, null, List.of());
            return;
        }
        String pkg = source.substring("package ".length(), source.indexOf(';'));
        Path work = Files.createTempDirectory(folder.getParent(), "pack");
        Path file = work.resolve(pkg).resolve("Pack.java");
        Files.createDirectories(file.getParent());
        Files.writeString(file, source);
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        assertThat(compiler.run(
                        null,
                        null,
                        null,
                        "-d",
                        work.toString(),
                        file.toString(),
                        "-proc:none",
                        "-cp",
                        System.getProperty("java.class.path")))
                .isZero();
        List<Path> classes = new ArrayList<>();
        try (Stream<Path> found = Files.walk(work)) {
            found.filter(path -> path.toString().endsWith(".class")).sorted().forEach(classes::add);
        }
        jar(name, pkg + ".Pack", classes);
    }

    private void jar(String name, String provider, List<Path> classes) throws IOException {
        try (OutputStream out = Files.newOutputStream(folder.resolve(name));
                JarOutputStream jar = new JarOutputStream(out)) {
            if (provider != null) {
                jar.putNextEntry(new JarEntry(SERVICE));
                jar.write(provider.getBytes(StandardCharsets.UTF_8));
            }
            for (Path file : classes) {
                jar.putNextEntry(new JarEntry(file.getParent().getFileName() + "/" + file.getFileName()));
                jar.write(Files.readAllBytes(file));
            }
        }
    }
}
