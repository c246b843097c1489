package org.mantice.plugin;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.jar.JarFile;
import org.mantice.rule.Rule;
import org.mantice.rule.RuleInfo;
import org.mantice.rule.RuleProvider;

/**
 * The packs there are. A jar or pack that cannot be used is left out and listed with the reason; the rest go on. Code
 * in a jar is code: it can do what the user can do.
 */
public final class Packs {
    /**
     * A pack that can be used.
     *
     * @param origin {@code "class path"} or the name of the jar
     */
    public record Pack(RuleProvider provider, String origin) {
        public boolean isFromJar() {
            return !origin.equals(CLASS_PATH);
        }
    }

    /** A jar or pack that cannot be used, and why. */
    public record Problem(String origin, String message) {}

    private static final String SERVICE = RuleProvider.class.getName();
    private static final String CLASS_PATH = "class path";
    private static final int MOST_FAILURES_IN_A_JAR = 20;

    private final List<Pack> packs = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private final Set<String> packIds = new HashSet<>();
    private final Set<String> ruleIds = new HashSet<>();

    private Packs() {}

    /** The packs of the class path alone: our own, and whatever the application brings. */
    public static Packs ofClassPath() {
        return of(Optional.empty());
    }

    /**
     * The packs of the class path, then those of the jars of a folder in the order of their names.
     *
     * @param folder with jars; a folder that is not there is listed as a problem
     */
    public static Packs of(Optional<Path> folder) {
        Packs found = new Packs();
        found.take(
                ServiceLoader.load(RuleProvider.class, RuleProvider.class.getClassLoader()),
                CLASS_PATH,
                provider -> true);
        folder.ifPresent(found::takeJars);
        return found;
    }

    public List<Pack> packs() {
        return Collections.unmodifiableList(packs);
    }

    public List<RuleProvider> providers() {
        return packs.stream().map(Pack::provider).toList();
    }

    public List<Problem> problems() {
        return Collections.unmodifiableList(problems);
    }

    private void takeJars(Path folder) {
        TreeSet<Path> jars = new TreeSet<>();
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder, "*.jar")) {
            entries.forEach(jars::add);
        } catch (IOException e) {
            problems.add(new Problem(folder.toString(), "is not a folder that can be read"));
        }
        jars.forEach(this::takeJar);
    }

    private void takeJar(Path jar) {
        String name = jar.getFileName().toString();
        try (JarFile check = new JarFile(jar.toFile())) {
            if (check.getEntry("META-INF/services/" + SERVICE) == null) {
                problems.add(new Problem(name, "offers no rules: it has no META-INF/services/" + SERVICE));
                return;
            }
            // Stays open for as long as the rules are used: their classes are loaded on demand.
            URLClassLoader loader =
                    new URLClassLoader("pack:" + name, new URL[] {jar.toUri().toURL()}, new RuleAuthorsView());
            take(ServiceLoader.load(RuleProvider.class, loader), name, provider -> provider.getClassLoader() == loader);
        } catch (IOException e) {
            problems.add(new Problem(name, "is not a jar that can be read: " + e.getMessage()));
        }
    }

    private void take(ServiceLoader<RuleProvider> services, String origin, Predicate<Class<?>> own) {
        int before = packs.size() + problems.size();
        int failures = 0;
        Iterator<ServiceLoader.Provider<RuleProvider>> found = services.stream().iterator();
        while (failures < MOST_FAILURES_IN_A_JAR) {
            try {
                if (!found.hasNext()) break;
                ServiceLoader.Provider<RuleProvider> provider = found.next();
                if (!own.test(provider.type())) continue;
                register(provider.get(), origin);
            } catch (ServiceConfigurationError | LinkageError | RuntimeException e) {
                failures++;
                problems.add(new Problem(origin, reason(e)));
            }
        }
        if (packs.size() + problems.size() == before) problems.add(new Problem(origin, "offers no rules"));
    }

    /** Asks the pack for everything once, so that one that fails does so here and not while planning. */
    private void register(RuleProvider provider, String origin) {
        if (!provider.id().matches("[a-z][a-z0-9.-]*"))
            throw new IllegalArgumentException(
                    "pack id is \"" + provider.id() + "\"; allowed: lower-case letters, digits, hyphens and dots");
        if (packIds.contains(provider.id()))
            throw new IllegalArgumentException("pack id " + provider.id() + " is taken; allowed: each id once");
        if (provider.version().isBlank() || provider.bundle().isBlank())
            throw new IllegalArgumentException("version or bundle of pack " + provider.id() + " is blank");
        Set<String> own = new HashSet<>();
        for (Rule<?> rule : provider.rules()) {
            RuleInfo info = rule.info();
            if (ruleIds.contains(info.id()) || !own.add(info.id()))
                throw new IllegalArgumentException("rule id " + info.id() + " is taken; allowed: each id once");
            if (!info.ruleSet().reaches().contains(rule.reach()))
                throw new IllegalArgumentException("reach of rule " + info.id() + " is "
                        + rule.reach().getSimpleName() + "; allowed: "
                        + info.ruleSet().reaches().stream()
                                .map(Class::getSimpleName)
                                .toList());
        }
        provider.leanings().forEach(leaning -> leaning.ruleSet().id());
        packIds.add(provider.id());
        ruleIds.addAll(own);
        packs.add(new Pack(provider, origin));
    }

    private static String reason(Throwable e) {
        if (e instanceof ServiceConfigurationError) {
            String own = String.valueOf(e.getMessage()).replace(SERVICE + ": ", "");
            return e.getCause() == null ? own : own + ": " + e.getCause();
        }
        return e instanceof IllegalArgumentException && e.getMessage() != null ? e.getMessage() : e.toString();
    }
}
