package org.mantice.app.words;

import java.text.MessageFormat;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/**
 * Texts by key. The part of a key before its first dot names the bundle: {@code "sheet.out"} stands in {@code
 * sheet.properties} and, for German, {@code sheet_de.properties}. Keys are written out in the code, so that missing and
 * unused ones can be found; constants of an enum have keys of the form {@code <bundle>.<EnumName>.<CONSTANT>}.
 */
public final class Words {
    /** The languages there are; English first, which also serves every other language. */
    public static final List<Locale> LANGUAGES = List.of(Locale.ENGLISH, Locale.GERMAN);

    private final Locale locale;
    private final Map<String, ResourceBundle> bundles = new HashMap<>();

    private Words(Locale locale) {
        this.locale = locale;
    }

    /** In the locale's language where there is one, else in English. */
    public static Words of(Locale locale) {
        return new Words(locale.getLanguage().equals(Locale.GERMAN.getLanguage()) ? Locale.GERMAN : Locale.ENGLISH);
    }

    public Locale locale() {
        return locale;
    }

    /**
     * The text with its arguments put in; numbers are given as the language writes them.
     *
     * @throws MissingResourceException if there is no such key
     */
    public String text(String key, Object... arguments) {
        String pattern = bundle(key).getString(key);
        return arguments.length == 0 ? pattern : new MessageFormat(pattern, locale).format(arguments);
    }

    /** The text of a constant: {@code <bundle>.<EnumName>.<CONSTANT>}. */
    public String of(String bundle, Enum<?> constant) {
        return text(bundle + "." + constant.getDeclaringClass().getSimpleName() + "." + constant.name());
    }

    public boolean has(String key) {
        try {
            return bundle(key).containsKey(key);
        } catch (MissingResourceException e) {
            return false;
        }
    }

    private ResourceBundle bundle(String key) {
        int dot = key.indexOf('.');
        if (dot < 1) throw new IllegalArgumentException("key is " + key + "; allowed: <bundle>.<name>");
        return bundles.computeIfAbsent(
                key.substring(0, dot),
                name -> ResourceBundle.getBundle(
                        "org.mantice.app.words." + name,
                        locale,
                        Words.class.getClassLoader(),
                        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES)));
    }
}
