package org.mantice.reading;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Counts notes and other signs of a tune in ABC by plain search, apart from our reader. */
final class PlainAbc {
    private static final Pattern NOTE = Pattern.compile("[A-Ga-g]");
    private static final Pattern TEXT = Pattern.compile("\"[^\"]*\"|![^!\\s]*!");
    /** Bar lines with their endings, rests, ties, slurs, tuplets, ornaments. */
    private static final Pattern SIGN = Pattern.compile("[|:]+\\]?\\[?\\d*|\\[\\d|[zx]|-|\\(\\d?|\\)|~");

    private final StringBuilder music = new StringBuilder();

    private PlainAbc() {}

    static PlainAbc firstTune(String file) {
        PlainAbc tune = new PlainAbc();
        boolean body = false;
        for (String line : file.split("\r?\n")) {
            if (line.startsWith("X:") && body) break;
            boolean field = line.matches("[A-Za-z]:[^|:].*|[A-Z]:");
            if (!field && body && !line.startsWith("%"))
                tune.music.append(line.replaceFirst("%.*", "")).append('\n');
            if (line.startsWith("K:")) body = true;
        }
        return tune;
    }

    /** The text without the fields that give an order of parts: Y:, and P: in the head. */
    static String withoutOrder(String file) {
        int key = file.indexOf("\nK:");
        String head = file.substring(0, key).replaceAll("(?m)^[PY]:.*$", "%");
        return head + file.substring(key).replaceAll("(?m)^Y:.*$", "%");
    }

    int notes() {
        return count(NOTE, TEXT.matcher(music).replaceAll(" "));
    }

    int otherSigns() {
        return count(TEXT, music) + count(SIGN, TEXT.matcher(music).replaceAll(" "));
    }

    private static int count(Pattern pattern, CharSequence text) {
        Matcher matcher = pattern.matcher(text);
        int count = 0;
        while (matcher.find()) count++;
        return count;
    }
}
