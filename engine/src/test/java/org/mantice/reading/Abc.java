package org.mantice.reading;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MelodyNote;
import org.mantice.tune.PlacedChord;

/** Reads small invented tunes in ABC for the tests and says what was read in few signs. */
final class Abc {
    private Abc() {}

    /** A tune whose body follows a head with the given fields; X: and a title stand before them. */
    static ReadTune tune(String head, String body) {
        return read("X:1\nT:Invented\n" + head + "\n" + body + "\n");
    }

    /** A tune in 4/4 in C with eighths as unit. */
    static ReadTune plain(String body) {
        return tune("M:4/4\nL:1/8\nK:C", body);
    }

    static ReadTune read(String text) {
        return read(text, ReadOptions.DEFAULT);
    }

    static ReadTune read(String text, ReadOptions options) {
        return new TuneReader().read("tune.abc", text.getBytes(StandardCharsets.UTF_8), options);
    }

    /** Events as "C4 1/8" or "C4+E4 1/4" or "- 1/2" for a rest, measures apart by a bar. */
    static String events(ReadTune read) {
        return read.tune().measures().stream()
                .map(measure -> measure.melody().stream().map(Abc::text).collect(Collectors.joining(", ")))
                .collect(Collectors.joining(" | "));
    }

    private static String text(MelodyEvent event) {
        String notes =
                event.notes().stream().map(note -> note.pitch().toString()).collect(Collectors.joining("+"));
        return (notes.isEmpty() ? "-" : notes) + " " + event.duration();
    }

    /** The pitches alone. */
    static String pitches(ReadTune read) {
        return read.tune().measures().stream()
                .flatMap(measure -> measure.melody().stream())
                .filter(event -> !event.isRest())
                .map(event -> event.notes().stream()
                        .map(note -> note.pitch().toString())
                        .collect(Collectors.joining("+")))
                .collect(Collectors.joining(" "));
    }

    /** The pitches in the order of play, as MIDI numbers. */
    static String played(ReadTune read) {
        return PlayedPitches.text(PlayedPitches.of(read.tune()));
    }

    /** As {@code "G(Em)@0 (A7)@1/2"}. */
    static String chords(ReadTune read) {
        return read.tune().measures().stream()
                .map(measure -> measure.chords().stream().map(Abc::chord).collect(Collectors.joining(" ")))
                .collect(Collectors.joining(" | "));
    }

    private static String chord(PlacedChord chord) {
        String symbol =
                chord.optional() ? "(" + chord.symbol() + ")" : chord.symbol().toString();
        return symbol + chord.alternate().map(other -> "(" + other + ")").orElse("") + "@" + chord.offset();
    }

    static List<MelodyEvent> melody(ReadTune read) {
        return read.tune().measures().stream()
                .flatMap(measure -> measure.melody().stream())
                .toList();
    }

    /** Written notes, grace notes included. */
    static long notes(ReadTune read) {
        List<MelodyNote> all = new ArrayList<>();
        for (Measure measure : read.tune().measures())
            for (MelodyEvent event : measure.melody()) {
                all.addAll(event.notes());
                event.graces().notes().forEach(all::addAll);
                event.after().notes().forEach(all::addAll);
            }
        return all.size();
    }

    static List<String> listed(ReadTune read) {
        return read.skipped().stream().map(Skipped::toString).toList();
    }

    static int count(ReadTune read, SkippedWhat what) {
        return read.skipped().stream()
                .filter(skipped -> skipped.what() == what)
                .mapToInt(Skipped::count)
                .sum();
    }
}
