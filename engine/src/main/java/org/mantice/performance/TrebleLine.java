package org.mantice.performance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.mantice.tune.Articulation;
import org.mantice.tune.EventMarks;
import org.mantice.tune.GraceGroup;
import org.mantice.tune.Lyric;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MelodyNote;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

/** Collects what the right hand strikes, in order of play, and makes moments of it. */
final class TrebleLine {
    /** Length of a grace note. Estimate. */
    static final MusicalTime GRACE = MusicalTime.of(1, 32);

    /** All grace notes before an event take at most half of it, all after it a quarter. Estimate. */
    private static final int BEFORE_SHARE = 2;

    private static final int AFTER_SHARE = 4;

    private final Tune tune;
    private final WrittenState state;
    private final SlurMap slurs;
    private final List<Strike> strikes = new ArrayList<>();
    private List<Sound> ringing = new ArrayList<>();
    private boolean phraseDue;
    private Optional<Strike> lastSung = Optional.empty();

    /** A key from when it is struck until it is let go, ties joined. */
    private static final class Sound {
        private final int midi;
        private MusicalTime end;
        private boolean tied;
        private List<Integer> fingers;

        private Sound(int midi, MusicalTime end, boolean tied, List<Integer> fingers) {
            this.midi = midi;
            this.end = end;
            this.tied = tied;
            this.fingers = fingers;
        }
    }

    /** A moment in the making. */
    private static final class Strike {
        private final int measure;
        private final WrittenPlace place;
        private final int graceIndex;
        private final MusicalTime onset;
        private final List<Sound> struck;
        private final boolean startsPhrase;
        private Set<Articulation> touch = Set.of();
        private int firstEvent;
        private int lastEvent;
        private boolean partOfEventFollows;
        private boolean breath;
        private boolean fermata;
        private boolean endsSlur;
        private Punctuation punctuation = Punctuation.NONE;
        private int loudness;

        private Strike(
                int measure,
                WrittenPlace place,
                int graceIndex,
                MusicalTime onset,
                List<Sound> struck,
                boolean startsPhrase) {
            this.measure = measure;
            this.place = place;
            this.graceIndex = graceIndex;
            this.onset = onset;
            this.struck = struck;
            this.startsPhrase = startsPhrase;
        }
    }

    TrebleLine(Tune tune, WrittenState state) {
        this.tune = tune;
        this.state = state;
        this.slurs = new SlurMap(tune);
    }

    void startTimeThrough() {
        phraseDue = true;
    }

    void play(PlayedMeasure played) {
        Measure measure = tune.measure(played.written());
        List<Mark.PhraseStart> phrases = measure.marks().stream()
                .filter(Mark.PhraseStart.class::isInstance)
                .map(Mark.PhraseStart.class::cast)
                .toList();
        int next = 0;
        for (int i = 0; i < measure.melody().size(); i++) {
            MelodyEvent event = measure.melody().get(i);
            while (next < phrases.size()
                    && !event.offset().isBefore(phrases.get(next).offset())) {
                phraseDue = true;
                next++;
            }
            if (event.isRest()) continue;
            playEvent(played, event, slurs.indexOf(played.written(), i));
        }
        if (next < phrases.size() || measure.barlines().doubleBar()) phraseDue = true;
    }

    private void playEvent(PlayedMeasure played, MelodyEvent event, int number) {
        MusicalTime start = played.start().plus(event.offset());
        MusicalTime end = start.plus(event.duration());
        MusicalTime before = graceLength(event.graces(), event.duration(), BEFORE_SHARE);
        MusicalTime after = graceLength(event.after(), event.duration(), AFTER_SHARE);
        MusicalTime mainStart = start.plus(before.times(event.graces().notes().size()));
        MusicalTime mainEnd = end.minus(after.times(event.after().notes().size()));
        List<Sound> goingOn = new ArrayList<>();
        List<MelodyNote> fresh = new ArrayList<>();
        for (MelodyNote note : event.notes()) {
            Optional<Sound> held = note.tiedBack() ? tiedInto(note, start) : Optional.empty();
            held.ifPresentOrElse(
                    sound -> {
                        sound.end = note.tiedForward() ? end : mainEnd;
                        sound.tied = note.tiedForward();
                        if (!note.fingers().isEmpty()) sound.fingers = note.fingers();
                        goingOn.add(sound);
                    },
                    () -> fresh.add(note));
        }
        int first = strikes.size();
        graceStrikes(played, event, event.graces(), start, before, 1);
        List<Sound> sounds = sounds(fresh, mainEnd, end);
        if (!sounds.isEmpty())
            strike(played, event, 0, mainStart, sounds).touch = event.marks().articulations();
        graceStrikes(played, event, event.after(), mainEnd, after, -1);
        for (int i = first; i < strikes.size(); i++) {
            strikes.get(i).firstEvent = number;
            strikes.get(i).lastEvent = number;
            strikes.get(i).partOfEventFollows = i + 1 < strikes.size();
        }
        finish(event.marks(), number);
        goingOn.addAll(sounds);
        ringing = goingOn;
    }

    private static MusicalTime graceLength(GraceGroup graces, MusicalTime duration, int share) {
        int count = graces.notes().size();
        if (count == 0) return MusicalTime.ZERO;
        return GRACE.min(duration.dividedBy((long) share * count));
    }

    private Optional<Sound> tiedInto(MelodyNote note, MusicalTime start) {
        return ringing.stream()
                .filter(sound -> sound.tied && sound.midi == note.pitch().midi() && sound.end.equals(start))
                .findFirst();
    }

    private void graceStrikes(
            PlayedMeasure played, MelodyEvent event, GraceGroup graces, MusicalTime from, MusicalTime each, int sign) {
        MusicalTime onset = from;
        int index = sign;
        for (List<MelodyNote> notes : graces.notes()) {
            MusicalTime end = onset.plus(each);
            List<Sound> sounds = sounds(notes, end, end);
            if (!sounds.isEmpty()) strike(played, event, index, onset, sounds);
            onset = end;
            index += sign;
        }
    }

    /** One sound for each key. */
    private static List<Sound> sounds(List<MelodyNote> notes, MusicalTime end, MusicalTime tiedEnd) {
        List<Sound> sounds = new ArrayList<>();
        for (MelodyNote note : notes) {
            int midi = note.pitch().midi();
            if (sounds.stream().anyMatch(sound -> sound.midi == midi)) continue;
            sounds.add(new Sound(midi, note.tiedForward() ? tiedEnd : end, note.tiedForward(), note.fingers()));
        }
        return sounds;
    }

    private Strike strike(
            PlayedMeasure played, MelodyEvent event, int graceIndex, MusicalTime onset, List<Sound> sounds) {
        WrittenPlace place = new WrittenPlace(played.written(), event.offset());
        Strike strike = new Strike(played.index(), place, graceIndex, onset, sounds, phraseDue);
        strike.loudness = state.loudness(played.written(), event.offset());
        phraseDue = false;
        strikes.add(strike);
        return strike;
    }

    /** Marks at the end of an event belong to what sounds then, even if it was struck earlier. */
    private void finish(EventMarks marks, int number) {
        if (strikes.isEmpty()) return;
        Strike last = strikes.get(strikes.size() - 1);
        last.lastEvent = number;
        last.breath |= marks.breathAfter();
        last.fermata |= marks.fermata();
        last.endsSlur |= slurs.endsAt(number);
        sing(marks, last);
    }

    /** The sign after a syllable stands after the last note that it is sung to. */
    private void sing(EventMarks marks, Strike last) {
        Optional<Lyric> words = marks.lyrics().stream().min(Comparator.comparingInt(Lyric::verse));
        if (words.isPresent()) last.punctuation = Punctuation.of(words.get().text());
        else if (lastSung.isPresent() && lastSung.get() != last) {
            last.punctuation = lastSung.get().punctuation;
            lastSung.get().punctuation = Punctuation.NONE;
        }
        lastSung = Optional.of(last);
    }

    List<TrebleMoment> moments(Clock clock) {
        List<TrebleMoment> moments = new ArrayList<>();
        List<Sound> down = new ArrayList<>();
        for (int i = 0; i < strikes.size(); i++) {
            Strike strike = strikes.get(i);
            down.removeIf(sound -> !strike.onset.isBefore(sound.end)
                    || strike.struck.stream().anyMatch(struck -> struck.midi == sound.midi));
            List<PlayedNote> notes = new ArrayList<>();
            down.forEach(sound -> notes.add(new PlayedNote(sound.midi, true, sound.fingers)));
            strike.struck.forEach(sound -> notes.add(new PlayedNote(sound.midi, false, sound.fingers)));
            notes.sort(Comparator.comparingInt(PlayedNote::midi));
            down.addAll(strike.struck);
            moments.add(moment(i, notes, down, clock));
        }
        return moments;
    }

    private TrebleMoment moment(int index, List<PlayedNote> notes, List<Sound> down, Clock clock) {
        Strike strike = strikes.get(index);
        Optional<Strike> next = index + 1 < strikes.size() ? Optional.of(strikes.get(index + 1)) : Optional.empty();
        MusicalTime longest = down.stream()
                .map(sound -> sound.end)
                .max(Comparator.naturalOrder())
                .orElseThrow();
        MusicalTime end = next.map(after -> longest.min(after.onset)).orElse(longest);
        boolean joined = next.filter(after -> after.onset.equals(end))
                .filter(after -> strike.partOfEventFollows
                        || strike.graceIndex > 0
                        || slurs.joins(strike.lastEvent, after.firstEvent))
                .isPresent();
        boolean goesOn = end.isBefore(longest);
        MusicalTime duration = end.minus(strike.onset);
        MusicalTime sounding = goesOn ? duration : Touch.sounding(duration, strike.touch, joined, strike.breath);
        return new TrebleMoment(
                index,
                strike.measure,
                strike.place,
                strike.graceIndex,
                strike.onset,
                duration,
                clock.micros(strike.onset),
                clock.micros(strike.onset.plus(sounding)),
                notes,
                strike.touch,
                joined,
                strike.breath || strike.fermata,
                strike.endsSlur,
                strike.startsPhrase,
                strike.punctuation,
                strike.loudness);
    }
}
