package org.mantice.layer.righthand;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.mantice.instrument.Accordion;
import org.mantice.layer.Outcome;
import org.mantice.layer.Question;
import org.mantice.layer.RuleBook;
import org.mantice.pattern.Accompaniment;
import org.mantice.performance.ChordsPlayed;
import org.mantice.performance.Pass;
import org.mantice.performance.Performance;
import org.mantice.performance.PlayedMeasure;
import org.mantice.performance.PlayedNote;
import org.mantice.performance.Punctuation;
import org.mantice.performance.Settings;
import org.mantice.performance.TrebleMoment;
import org.mantice.plan.RightHandPlan;
import org.mantice.plan.VariationPlan;
import org.mantice.player.BassMethod;
import org.mantice.player.Jumps;
import org.mantice.player.Player;
import org.mantice.player.Taste;
import org.mantice.rule.RuleProvider;
import org.mantice.rule.righthand.RightHandRules;
import org.mantice.tune.Barlines;
import org.mantice.tune.Key;
import org.mantice.tune.Loudness;
import org.mantice.tune.Measure;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

/**
 * Melodies for tests of the right hand, played without the unrolling of a written tune: evenly spaced notes, one
 * measure of eight notes after another, legato unless a rest follows.
 *
 * <p>Text: pitches separated by spaces; {@code +} joins a chord; {@code _} after a pitch holds it on into the next
 * moment; {@code r} a rest as long as a note; {@code (} before a note begins a slur and {@code )} after it ends one;
 * {@code =3} prints a finger.
 */
final class Hands {
    private Hands() {}

    /** A performance of the text. @param noteMillis from note to note */
    static Performance performance(String text, long noteMillis) {
        List<TrebleMoment> moments = new ArrayList<>();
        String[] words = text.trim().split("\\s+");
        boolean slurred = false;
        List<Integer> holding = List.of();
        int slots = 0;
        for (int at = 0; at < words.length; at++, slots++) {
            if (words[at].equals("r")) continue;
            boolean restAfter = at + 1 < words.length && words[at + 1].equals("r");
            if (words[at].startsWith("(")) slurred = true;
            if (words[at].endsWith(")")) slurred = false;
            List<PlayedNote> notes = new ArrayList<>();
            for (int held : holding) notes.add(new PlayedNote(held, true, List.of()));
            List<Integer> holdingNext = new ArrayList<>();
            for (String pitch : words[at].replaceAll("[()]", "").split("\\+")) {
                String[] parts = pitch.split("=");
                int midi = midi(parts[0].replace("_", ""));
                notes.add(new PlayedNote(
                        midi, false, parts.length == 1 ? List.of() : List.of(Integer.valueOf(parts[1]))));
                if (parts[0].endsWith("_")) holdingNext.add(midi);
            }
            notes.sort((a, b) -> Integer.compare(a.midi(), b.midi()));
            holding = holdingNext;
            moments.add(new TrebleMoment(
                    moments.size(),
                    slots / 8,
                    new WrittenPlace(slots / 8, MusicalTime.of(slots % 8, 8)),
                    0,
                    MusicalTime.of(slots, 8),
                    MusicalTime.of(1, 8),
                    slots * noteMillis * 1_000,
                    (slots + 1) * noteMillis * 1_000,
                    notes,
                    Set.of(),
                    slurred && !restAfter,
                    false,
                    false,
                    false,
                    Punctuation.NONE,
                    400));
        }
        int measures = (slots + 7) / 8;
        List<Measure> written = new ArrayList<>();
        List<PlayedMeasure> played = new ArrayList<>();
        for (int index = 0; index < measures; index++) {
            written.add(new Measure(
                    String.valueOf(index + 1),
                    MusicalTime.WHOLE,
                    Meter.of(4, 4),
                    Key.C_MAJOR,
                    false,
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    Barlines.PLAIN));
            played.add(new PlayedMeasure(
                    index, 1, index, 1, MusicalTime.of(index, 1), MusicalTime.WHOLE, index * 8 * noteMillis * 1_000));
        }
        Settings settings = new Settings(
                Tempo.quarters(100), false, 1, false, Loudness.MF, false, 0, ChordsPlayed.USUAL, Accompaniment.NONE);
        return new Performance(
                new Tune("", Optional.empty(), written),
                settings,
                List.of(new Pass(1, 1, 0, measures - 1)),
                played,
                moments,
                List.of(),
                List.of(),
                measures * 8 * noteMillis * 1_000);
    }

    static int midi(String name) {
        int base =
                switch (name.charAt(0)) {
                    case 'C' -> 0;
                    case 'D' -> 2;
                    case 'E' -> 4;
                    case 'F' -> 5;
                    case 'G' -> 7;
                    case 'A' -> 9;
                    case 'B' -> 11;
                    default -> throw new IllegalArgumentException("no pitch: " + name);
                };
        int at = 1;
        for (; name.charAt(at) == '#' || name.charAt(at) == 'b'; at++) base += name.charAt(at) == '#' ? 1 : -1;
        return base + 12 * (Integer.parseInt(name.substring(at)) + 1);
    }

    static VariationPlan noVariation(Performance performance) {
        return new VariationPlan(
                performance.passes().stream()
                        .map(pass -> new VariationPlan.PassDecision(pass.number(), "master", 0))
                        .toList(),
                new TreeMap<>(),
                List.of());
    }

    static Player player(int handSpanTenths) {
        return new Player(
                "test", "Test", handSpanTenths, BassMethod.FOUR_THREE_TWO, Jumps.ESTIMATE, false, Taste.PLAIN);
    }

    static RuleBook book(RuleProvider... providers) {
        return RuleBook.of(Arrays.asList(providers));
    }

    static RightHandLayer layer(Performance performance, Accordion accordion, int handSpanTenths, RuleBook book) {
        return new RightHandLayer(performance, noVariation(performance), accordion, player(handSpanTenths), book);
    }

    /** Our rules' best plan on a large instrument for a hand of the published span on narrow keys. */
    static RightHandPlan best(String text, long noteMillis) {
        return best(text, noteMillis, 98, Taste.PLAIN);
    }

    static RightHandPlan best(String text, long noteMillis, int handSpanTenths, Taste taste) {
        RightHandLayer layer =
                layer(performance(text, noteMillis), Instruments.WIDE, handSpanTenths, book(new RightHandRules()));
        return ((Outcome.Found<RightHandPlan>) layer.best(Question.best(taste))).best();
    }

    /** Fingers as a string: {@code "1 2 3 1-5"}. */
    static String fingers(RightHandPlan plan) {
        return plan.events().stream()
                .map(event -> event.fingers().stream().map(String::valueOf).collect(Collectors.joining("-")))
                .collect(Collectors.joining(" "));
    }
}
