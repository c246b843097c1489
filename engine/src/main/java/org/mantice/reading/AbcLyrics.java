package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.mantice.reading.abc.AbcEscapes;
import org.mantice.tune.Lyric;

/** Lays words under the notes of a line of music (ABC 2.1, section 5.1). */
final class AbcLyrics {
    /** The notes of the line; empty for a bar line. */
    private final List<Optional<AbcItem>> line = new ArrayList<>();

    private boolean ended;
    private int verse;

    void add(AbcItem item) {
        startAnew();
        if (!item.isRest()) line.add(Optional.of(item));
    }

    void addBar() {
        startAnew();
        line.add(Optional.empty());
    }

    private void startAnew() {
        if (!ended) return;
        line.clear();
        ended = false;
        verse = 0;
    }

    void endLine() {
        ended = true;
    }

    /** @return how many syllables found no note */
    int lay(String text) {
        verse++;
        int at = 0;
        int lost = 0;
        for (String syllable : syllables(text)) {
            if (syllable.equals("|")) {
                while (at < line.size() && line.get(at).isPresent()) at++;
                at++;
                continue;
            }
            while (at < line.size() && line.get(at).isEmpty()) at++;
            boolean sung = !syllable.equals("*");
            if (at >= line.size()) {
                if (sung) lost++;
                continue;
            }
            if (sung) line.get(at).orElseThrow().lyrics.add(lyric(syllable));
            at++;
        }
        return lost;
    }

    private Lyric lyric(String syllable) {
        boolean endsWord = !syllable.endsWith("-");
        String text = endsWord ? syllable : syllable.substring(0, syllable.length() - 1);
        return new Lyric(verse, AbcEscapes.read(text.replace("\\-", "-")), endsWord);
    }

    /** Syllables, those inside words with a hyphen behind; "*" for a note without one, "|" for the next measure. */
    private static List<String> syllables(String text) {
        List<String> syllables = new ArrayList<>();
        StringBuilder open = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '\\' -> {
                    open.append(c);
                    if (i + 1 < text.length()) open.append(text.charAt(++i));
                }
                case '~' -> open.append(' ');
                case '-' -> {
                    if (open.length() > 0) close(open.append('-'), syllables);
                    else if (i > 0) syllables.add("*");
                }
                case ' ', '\t' -> close(open, syllables);
                case '_', '*' -> {
                    close(open, syllables);
                    syllables.add("*");
                }
                case '|' -> {
                    close(open, syllables);
                    syllables.add("|");
                }
                default -> open.append(c);
            }
        }
        close(open, syllables);
        return syllables;
    }

    private static void close(StringBuilder open, List<String> syllables) {
        if (open.length() > 0) syllables.add(open.toString());
        open.setLength(0);
    }
}
