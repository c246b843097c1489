package org.mantice.plugin;

import java.util.Set;

/** What a pack's class loader sees above itself: the JDK, and the engine's packages for rule authors, without its resources. */
final class RuleAuthorsView extends ClassLoader {
    private static final Set<String> PUBLIC_PACKAGES =
            Set.of("org.mantice.rule", "org.mantice.instrument", "org.mantice.player", "org.mantice.tune");

    static {
        registerAsParallelCapable();
    }

    RuleAuthorsView() {
        super("rule authors' view", ClassLoader.getPlatformClassLoader());
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
        int dot = name.lastIndexOf('.');
        if (dot > 0 && PUBLIC_PACKAGES.contains(name.substring(0, dot)))
            return RuleAuthorsView.class.getClassLoader().loadClass(name);
        throw new ClassNotFoundException(name + " is not among the packages for rule authors");
    }
}
