package org.mantice.performance;

/** Where the words let a singer breathe: the sign after the last syllable sung to a note. */
public enum Punctuation {
    NONE,
    /** A comma or a dash. */
    COMMA,
    /** A full stop, semicolon, colon, question or exclamation mark. */
    STOP;

    /** Of a syllable with its punctuation; closing quotes and brackets after the sign do not hide it. */
    public static Punctuation of(String syllable) {
        String text = syllable.strip().replaceAll("[\"'\\u2019\\u201d\\u00bb)\\]]+$", "");
        if (text.isEmpty()) return NONE;
        return switch (text.charAt(text.length() - 1)) {
            case '.', ';', ':', '?', '!', '\u2026' -> STOP;
            case ',', '\u2013', '\u2014' -> COMMA;
            default -> NONE;
        };
    }
}
