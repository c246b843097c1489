package org.mantice.writing;

import java.util.Set;
import java.util.TreeSet;
import org.mantice.tune.Lyric;

/** Writes lyrics, remembering in which verses a word goes on. */
final class Syllables {
    private final Set<Integer> insideWord = new TreeSet<>();

    void write(XmlOut out, Lyric lyric) {
        boolean inside = insideWord.contains(lyric.verse());
        if (lyric.endsWord()) insideWord.remove(lyric.verse());
        else insideWord.add(lyric.verse());
        String syllabic = lyric.endsWord() ? inside ? "end" : "single" : inside ? "middle" : "begin";
        out.open("lyric", "number", String.valueOf(lyric.verse()))
                .leaf("syllabic", syllabic)
                .leaf("text", lyric.text())
                .close();
    }
}
