package org.mantice.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.mantice.rule.RuleSet;
import org.mantice.rule.Step;

/** Makes a jar with a pack of one rule, as a stranger would. */
public final class OneRulePack {
    public static final String RULE = "stranger.rule";

    private OneRulePack() {}

    /** @param cost the body of the rule's cost method, where {@code step} is what it looks at */
    public static void write(Path jar, Path work, RuleSet set, Class<? extends Step> reach, String cost)
            throws IOException {
        Path source = work.resolve("src/stranger/Pack.java");
        Path classes = Files.createDirectories(work.resolve("classes"));
        Files.createDirectories(source.getParent());
        Files.writeString(source, """
                package stranger;
                import java.util.List;
                import org.mantice.rule.*;
                public final class Pack implements RuleProvider {
                    public String id() { return "stranger"; }
                    public String version() { return "1.0.0"; }
                    public String bundle() { return "stranger.texts"; }
                    public List<Rule<?>> rules() { return List.of(new Odd()); }
                    static final class Odd implements Rule<%2$s> {
                        public RuleInfo info() { return RuleInfo.of("%4$s", RuleSet.%1$s, "estimate"); }
                        public Class<%2$s> reach() { return %2$s.class; }
                        public long cost(%2$s step) { %3$s }
                        public Reasons explain(%2$s step) { return Reasons.NOTHING; }
                    }
                }
                """.formatted(set.name(), reach.getSimpleName(), cost, RULE));
        int failed = ToolProvider.getSystemJavaCompiler()
                .run(
                        null,
                        null,
                        null,
                        "-proc:none",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "-d",
                        classes.toString(),
                        source.toString());
        assertThat(failed).isZero();
        Files.createDirectories(jar.getParent());
        try (OutputStream out = Files.newOutputStream(jar);
                JarOutputStream entries = new JarOutputStream(out);
                Stream<Path> files = Files.walk(classes)) {
            entries.putNextEntry(new JarEntry("META-INF/services/org.mantice.rule.RuleProvider"));
            entries.write("stranger.Pack\n".getBytes(StandardCharsets.UTF_8));
            for (Path file :
                    List.copyOf(files.filter(Files::isRegularFile).sorted().toList())) {
                entries.putNextEntry(new JarEntry("stranger/" + file.getFileName()));
                entries.write(Files.readAllBytes(file));
            }
        }
    }
}
