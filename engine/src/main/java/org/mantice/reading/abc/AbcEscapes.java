package org.mantice.reading.abc;

import java.text.Normalizer;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads accents, entities and code points in texts (ABC 2.1, section 8.2). Linear in the length of the text. */
public final class AbcEscapes {
    private static final Pattern ESCAPE = Pattern.compile("\\\\u([0-9a-fA-F]{4})|\\\\U([0-9a-fA-F]{8})"
            + "|\\\\([`'^~\"=.;cvuHrk])([A-Za-z])|\\\\(/[OoLlDd]|AE|ae|OE|oe|AA|aa|ss|DH|dh|TH|th)|\\\\([%&\\\\\"])"
            + "|&([A-Za-z])(grave|acute|circ|tilde|uml|ring|cedil|caron|breve);"
            + "|&([A-Za-z]{2,6});|&#(\\d{1,7});|&#x([0-9a-fA-F]{1,6});");

    private static final Map<String, String> COMBINING = Map.ofEntries(
            Map.entry("`", "\u0300"),
            Map.entry("'", "\u0301"),
            Map.entry("^", "\u0302"),
            Map.entry("~", "\u0303"),
            Map.entry("\"", "\u0308"),
            Map.entry("=", "\u0304"),
            Map.entry(".", "\u0307"),
            Map.entry(";", "\u0328"),
            Map.entry("c", "\u0327"),
            Map.entry("v", "\u030c"),
            Map.entry("u", "\u0306"),
            Map.entry("H", "\u030b"),
            Map.entry("r", "\u030a"),
            Map.entry("k", "\u0328"),
            Map.entry("grave", "\u0300"),
            Map.entry("acute", "\u0301"),
            Map.entry("circ", "\u0302"),
            Map.entry("tilde", "\u0303"),
            Map.entry("uml", "\u0308"),
            Map.entry("ring", "\u030a"),
            Map.entry("cedil", "\u0327"),
            Map.entry("caron", "\u030c"),
            Map.entry("breve", "\u0306"));

    private static final Map<String, String> LETTERS = Map.ofEntries(
            Map.entry("/O", "\u00d8"),
            Map.entry("/o", "\u00f8"),
            Map.entry("/L", "\u0141"),
            Map.entry("/l", "\u0142"),
            Map.entry("/D", "\u0110"),
            Map.entry("/d", "\u0111"),
            Map.entry("AE", "\u00c6"),
            Map.entry("ae", "\u00e6"),
            Map.entry("OE", "\u0152"),
            Map.entry("oe", "\u0153"),
            Map.entry("AA", "\u00c5"),
            Map.entry("aa", "\u00e5"),
            Map.entry("ss", "\u00df"),
            Map.entry("DH", "\u00d0"),
            Map.entry("dh", "\u00f0"),
            Map.entry("TH", "\u00de"),
            Map.entry("th", "\u00fe"));

    private static final Map<String, String> ENTITIES = Map.ofEntries(
            Map.entry("AElig", "\u00c6"),
            Map.entry("aelig", "\u00e6"),
            Map.entry("OElig", "\u0152"),
            Map.entry("oelig", "\u0153"),
            Map.entry("Oslash", "\u00d8"),
            Map.entry("oslash", "\u00f8"),
            Map.entry("szlig", "\u00df"),
            Map.entry("ETH", "\u00d0"),
            Map.entry("eth", "\u00f0"),
            Map.entry("THORN", "\u00de"),
            Map.entry("thorn", "\u00fe"),
            Map.entry("amp", "&"),
            Map.entry("lt", "<"),
            Map.entry("gt", ">"),
            Map.entry("quot", "\""),
            Map.entry("apos", "'"),
            Map.entry("nbsp", "\u00a0"),
            Map.entry("copy", "\u00a9"));

    private AbcEscapes() {}

    /** The text with all escapes that are known replaced. */
    public static String read(String text) {
        if (text.indexOf('\\') < 0 && text.indexOf('&') < 0) return text;
        Matcher matcher = ESCAPE.matcher(text);
        StringBuilder plain = new StringBuilder();
        while (matcher.find())
            matcher.appendReplacement(
                    plain, Matcher.quoteReplacement(plain(matcher).orElse(matcher.group())));
        return Normalizer.normalize(matcher.appendTail(plain), Normalizer.Form.NFC);
    }

    private static Optional<String> plain(Matcher found) {
        if (found.group(1) != null) return codePoint(found.group(1), 16);
        if (found.group(2) != null) return codePoint(found.group(2), 16);
        if (found.group(3) != null) return Optional.of(found.group(4) + COMBINING.get(found.group(3)));
        if (found.group(5) != null) return Optional.ofNullable(LETTERS.get(found.group(5)));
        if (found.group(6) != null) return Optional.of(found.group(6));
        if (found.group(7) != null) return Optional.of(found.group(7) + COMBINING.get(found.group(8)));
        if (found.group(9) != null) return Optional.ofNullable(ENTITIES.get(found.group(9)));
        return found.group(10) != null ? codePoint(found.group(10), 10) : codePoint(found.group(11), 16);
    }

    private static Optional<String> codePoint(String digits, int radix) {
        long value = Long.parseLong(digits, radix);
        boolean known = value > 0 && value <= Character.MAX_CODE_POINT && (value < 0xD800 || value > 0xDFFF);
        return known ? Optional.of(Character.toString((int) value)) : Optional.empty();
    }
}
