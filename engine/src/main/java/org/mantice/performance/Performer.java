package org.mantice.performance;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.mantice.tune.BassEvent;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.Measure;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Transposer;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

/**
 * Unrolls a tune into what is played, in exact time.
 *
 * <p>Going back in the order of play, a measure sounds as it did the first time: tempo and loudness on entering it are
 * those of the first time. So does the chord; only before the first chord symbol does the last chord played ring on, and
 * of two chords written at one place {@link ChordsPlayed} says which a pass plays.
 * A fermata makes its event half as long again (estimate), in seconds alone: beats and measures stay where they are.
 * Grace notes take a 32nd each from their event, together at most half of it before and a quarter after the note
 * (estimate). Touch as in {@code Touch}. A key tied over while others of its chord are let go, with nothing struck,
 * makes no new moment. Time and memory grow with the number of notes played.
 */
public final class Performer {
    private final Tune tune;
    private final Settings settings;
    private final List<Integer> order;
    private final WrittenState state;
    private final Clock clock = new Clock();
    private final List<PlayedMeasure> measures = new ArrayList<>();
    private MusicalTime end = MusicalTime.ZERO;

    private Performer(Tune tune, Settings settings) {
        this.tune = tune;
        this.settings = settings;
        this.order = PlayOrder.of(tune, settings.timesThrough());
        this.state = new WrittenState(tune, settings, order);
    }

    /**
     * @throws TuneException if the tune has no note, is too long to be unrolled, or mixes note lengths whose sum has no
     *     exact value in 64 bits
     */
    public static Performance perform(Tune written, Settings settings) {
        if (!written.hasNotes())
            throw new TuneException("TUNE_WITHOUT_NOTES", List.of(), written, "it has no note to play");
        Tune tune = Transposer.transpose(written, settings.transposition());
        try {
            return new Performer(tune, settings).unroll();
        } catch (ArithmeticException e) {
            throw new TuneException(
                    "TUNE_UNEVEN", List.of(), written, "it mixes note lengths that cannot be added exactly");
        }
    }

    /** With everything as written or assumed. */
    public static Performance perform(Tune written) {
        return perform(written, SettingsBuilder.assumed(written));
    }

    private Performance unroll() {
        List<Pass> passes = Passes.of(order, tune.measures().size(), settings.timesThrough());
        layOut(passes);
        TrebleLine treble = new TrebleLine(tune, state);
        for (PlayedMeasure measure : measures) {
            if (measure.index() % order.size() == 0) treble.startTimeThrough();
            treble.play(measure);
        }
        return new Performance(
                tune, settings, passes, measures, treble.moments(clock), harmony(), bass(), clock.micros(end));
    }

    /** Measures and clock. */
    private void layOut(List<Pass> passes) {
        Map<Integer, Integer> occurrences = new HashMap<>();
        Map<Integer, List<WrittenState.Pace>> paces = new HashMap<>();
        for (Pass pass : passes)
            for (int i = pass.firstMeasure(); i <= pass.lastMeasure(); i++) {
                int written = order.get(i % order.size());
                int occurrence = occurrences.merge(written, 1, Integer::sum);
                MusicalTime start = end;
                paces.computeIfAbsent(written, state::paces)
                        .forEach(pace -> clock.goOn(start.plus(pace.offset()), pace.microsPerWhole()));
                MusicalTime length = tune.measure(written).length();
                measures.add(
                        new PlayedMeasure(i, pass.number(), written, occurrence, start, length, clock.micros(start)));
                end = end.plus(length);
            }
    }

    private List<HarmonySpan> harmony() {
        List<HarmonySpan> spans = new ArrayList<>();
        Map<Integer, List<WrittenState.Harmony>> first = new HashMap<>();
        Map<Integer, List<WrittenState.Harmony>> later = new HashMap<>();
        Optional<ChordSymbol> ringing = Optional.empty();
        for (PlayedMeasure measure : measures) {
            Map<Integer, List<WrittenState.Harmony>> known =
                    settings.chords().usesAlternates(measure.pass()) ? later : first;
            List<WrittenState.Harmony> parts =
                    known.computeIfAbsent(measure.written(), written -> state.harmony(written, measure.pass()));
            for (int i = 0; i < parts.size(); i++) {
                WrittenState.Harmony part = parts.get(i);
                MusicalTime until = i + 1 < parts.size() ? parts.get(i + 1).offset() : measure.length();
                if (part.chord().isPresent()) ringing = part.chord();
                MusicalTime from = measure.start().plus(part.offset());
                MusicalTime to = measure.start().plus(until);
                spans.add(new HarmonySpan(
                        spans.size(),
                        measure.index(),
                        new WrittenPlace(measure.written(), part.offset()),
                        from,
                        to,
                        clock.micros(from),
                        clock.micros(to),
                        ringing));
            }
        }
        return spans;
    }

    private List<BassMoment> bass() {
        List<BassMoment> moments = new ArrayList<>();
        for (PlayedMeasure played : measures) {
            Measure measure = tune.measure(played.written());
            for (BassEvent event : measure.bass()) {
                if (event.pitches().isEmpty()) continue;
                MusicalTime onset = played.start().plus(event.offset());
                MusicalTime until = onset.plus(event.duration());
                int held = event.tiedBack() ? heldUntil(moments, event, onset) : -1;
                if (held >= 0) moments.set(held, lengthened(moments.get(held), until));
                else moments.add(bassMoment(moments.size(), played, event, onset));
            }
        }
        return moments;
    }

    private BassMoment bassMoment(int index, PlayedMeasure played, BassEvent event, MusicalTime onset) {
        return new BassMoment(
                index,
                played.index(),
                new WrittenPlace(played.written(), event.offset()),
                onset,
                event.duration(),
                clock.micros(onset),
                clock.micros(onset.plus(event.duration())),
                event.pitches(),
                event.chord(),
                event.marks());
    }

    /** The index of the moment that the event is tied to, -1 if there is none. */
    private static int heldUntil(List<BassMoment> moments, BassEvent event, MusicalTime onset) {
        for (int i = moments.size() - 1; i >= 0 && i >= moments.size() - 8; i--) {
            BassMoment moment = moments.get(i);
            boolean meets = moment.onset().plus(moment.duration()).equals(onset);
            if (meets && moment.pitches().equals(event.pitches())) return i;
        }
        return -1;
    }

    private BassMoment lengthened(BassMoment moment, MusicalTime until) {
        return new BassMoment(
                moment.index(),
                moment.measure(),
                moment.place(),
                moment.onset(),
                until.minus(moment.onset()),
                moment.onsetMicros(),
                clock.micros(until),
                moment.pitches(),
                moment.chord(),
                moment.marks());
    }
}
