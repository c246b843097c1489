package org.mantice.tune;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Small tunes for tests, in one line of text each.
 *
 * <pre>
 * Tunes.melody("3/4", "\"C\" C4 q, E4 q, G4 q | \"G7\" F4 h. breath | R h.");
 * Tunes.in("6/8").title("Jig").dance("jig").key(1).melody("@pickup D4 e | G4 q., A4 e t, …").bass("C3 q., C3 q. M").tune();
 * </pre>
 *
 * Measures are separated by {@code |}, events by commas, the words of an event by spaces, in any order:
 *
 * <ul>
 *   <li>pitches {@code C4}, {@code F#4}, {@code Bb3}, a chord {@code C4+E4}; {@code C4~} tied to the next, {@code ~C4}
 *       tied to the one before; {@code C4=3} with a written finger; {@code R} a rest
 *   <li>duration {@code w h q e s x} (whole to 32nd) with dots or {@code t} for a triplet ({@code et} = 1/12), or a
 *       fraction {@code 5/16}
 *   <li>grace notes {@code {D4;E4+G4}} before, {@code after{D4}} after
 *   <li>{@code (} and {@code )} a slur's start and end, {@code stacc}, {@code staccatissimo}, {@code ten}, {@code
 *       acc}, {@code marc}, {@code breath}, {@code fermata}, {@code shake}, {@code 'syl-} a syllable
 *   <li>at the event's place: a chord symbol {@code "Am7/G"} or {@code "N.C."}, one in brackets {@code "(A7)"}, with an
 *       alternate {@code "G(Em)"} or {@code "(G)(Em)"}; {@code !mf}, {@code !<}, {@code !>},
 *       {@code !end} (of a hairpin), {@code !phrase}, {@code !tempo=90} (quarters)
 *   <li>of the measure: {@code @start @end @end3} (repeats), {@code @nojump} (its repeat is not taken after a jump),
 *       {@code @ending1 @ending2+3 @stop}, {@code @segno @coda @tocoda @fine @dc @ds @double}, {@code @pickup}, {@code
 *       @meter=6/8}, {@code @key=-2}, {@code @minor}
 * </ul>
 *
 * A measure is as long as its meter; after {@code @pickup} as long as its events.
 */
public final class Tunes {
    private static final Pattern PITCH = Pattern.compile("(~?)([A-G])(#{0,2}|b{0,2})(-?\\d)(~?)((?:=[1-5])*)");
    private static final Pattern LENGTH = Pattern.compile("([whqesx])(\\.{0,2})(t?)");
    private static final Pattern FRACTION = Pattern.compile("(\\d+)/(\\d+)");
    private static final Pattern CHOICE = Pattern.compile("(?:\\((.+?)\\)|([^()]+))(?:\\((.+)\\))?");
    private static final Pattern CHORD = Pattern.compile("([A-G])(#|b)?([^/]*)(?:/([A-G])(#|b)?)?");

    private String title = "";
    private Optional<String> dance = Optional.empty();
    private Meter meter;
    private Key key = Key.C_MAJOR;
    private String melody = "";
    private String bass = "";

    private Tunes(String meter) {
        this.meter = meterOf(meter);
    }

    /** A tune without a title, in C major. */
    public static Tune melody(String meter, String text) {
        return in(meter).melody(text).tune();
    }

    public static Tunes in(String meter) {
        return new Tunes(meter);
    }

    public Tunes title(String text) {
        title = text;
        return this;
    }

    public Tunes dance(String name) {
        dance = Optional.of(name);
        return this;
    }

    /** Sharps above 0, flats below. */
    public Tunes key(int fifths) {
        key = new Key(fifths, key.mode());
        return this;
    }

    public Tunes melody(String text) {
        melody = text;
        return this;
    }

    /** Pitches, durations and a button letter {@code M m 7 d}; {@code tie} joins to the event before. */
    public Tunes bass(String text) {
        bass = text;
        return this;
    }

    public Tune tune() {
        String[] written = melody.split("\\|", -1);
        String[] below = bass.isEmpty() ? new String[0] : bass.split("\\|", -1);
        List<Measure> measures = new ArrayList<>();
        for (int i = 0; i < written.length; i++)
            measures.add(measure(String.valueOf(i + 1), written[i], i < below.length ? below[i] : ""));
        return new Tune(title, dance, measures);
    }

    private Measure measure(String number, String text, String bassText) {
        Draft draft = new Draft();
        for (String event : text.split(",(?=\\s|$)")) event(event, draft);
        MusicalTime length = draft.pickup ? draft.offset : meter.length();
        return new Measure(
                number,
                length,
                meter,
                key,
                draft.pickup,
                draft.events,
                draft.chords,
                bassEvents(bassText),
                draft.marks,
                draft.barlines());
    }

    private void event(String text, Draft draft) {
        Draft.Event event = new Draft.Event();
        for (String word : text.trim().split("\\s+")) {
            if (word.isEmpty() || word.equals("R")) continue;
            if (word.startsWith("@")) sign(word.substring(1), draft);
            else if (word.startsWith("!")) draft.marks.add(mark(word.substring(1), draft.offset));
            else if (word.startsWith("\""))
                draft.chords.add(placed(draft.offset, word.substring(1, word.length() - 1)));
            else if (word.startsWith("{")) event.graces = graces(word.substring(1, word.length() - 1));
            else if (word.startsWith("after{")) event.after = graces(word.substring(6, word.length() - 1));
            else if (!event.marked(word) && !event.timed(word)) event.notes = notes(word);
        }
        if (event.duration.isPositive()) {
            draft.events.add(event.at(draft.offset));
            draft.offset = draft.offset.plus(event.duration);
        }
    }

    private void sign(String word, Draft draft) {
        if (word.startsWith("meter=")) meter = meterOf(word.substring(6));
        else if (word.startsWith("key=")) key = new Key(Integer.parseInt(word.substring(4)), key.mode());
        else if (word.equals("minor")) key = new Key(key.fifths(), Mode.MINOR);
        else if (word.equals("pickup")) draft.pickup = true;
        else if (word.startsWith("ending"))
            for (String part : word.substring(6).split("\\+")) draft.endings.add(Integer.valueOf(part));
        else if (word.matches("end\\d*"))
            draft.repeatEnd = Optional.of(word.length() == 3 ? 2 : Integer.parseInt(word.substring(3)));
        else if (!Set.of("start", "nojump", "stop", "segno", "coda", "tocoda", "fine", "dc", "ds", "double")
                .contains(word)) throw new IllegalArgumentException("no such sign: @" + word);
        else draft.signs.add(word);
    }

    private static Mark mark(String word, MusicalTime offset) {
        return switch (word) {
            case "<" -> new Mark.HairpinStart(offset, true);
            case ">" -> new Mark.HairpinStart(offset, false);
            case "end" -> new Mark.HairpinEnd(offset);
            case "phrase" -> new Mark.PhraseStart(offset);
            default ->
                word.startsWith("tempo=")
                        ? new Mark.TempoChange(offset, Tempo.quarters(Integer.parseInt(word.substring(6))))
                        : new Mark.Dynamic(offset, Loudness.ofMark(word).orElseThrow());
        };
    }

    private static PlacedChord placed(MusicalTime offset, String text) {
        Matcher matcher = CHOICE.matcher(text);
        if (!matcher.matches()) throw new IllegalArgumentException("no chord: " + text);
        boolean optional = matcher.group(1) != null;
        ChordSymbol symbol = chord(optional ? matcher.group(1) : matcher.group(2));
        Optional<ChordSymbol> alternate = Optional.ofNullable(matcher.group(3)).map(Tunes::chord);
        return new PlacedChord(offset, symbol, alternate, optional, false);
    }

    /** A chord symbol as in {@code "F#m7/C#"}, with the suffixes of {@link ChordKind}. */
    public static ChordSymbol chord(String text) {
        if (text.equals("N.C.")) return ChordSymbol.of(new NoteName(Step.C, 0), ChordKind.NONE);
        Matcher match = CHORD.matcher(text);
        if (!match.matches()) throw new IllegalArgumentException("no chord symbol: " + text);
        for (ChordKind kind : ChordKind.values())
            if (kind.suffix().equals(match.group(3))) {
                Optional<NoteName> bass =
                        match.group(4) == null ? Optional.empty() : Optional.of(name(match.group(4), match.group(5)));
                return new ChordSymbol(name(match.group(1), match.group(2)), kind, List.of(), bass, match.group(3));
            }
        throw new IllegalArgumentException("no such chord kind: " + text);
    }

    private static NoteName name(String step, String accidentals) {
        int alter = accidentals == null ? 0 : accidentals.length() * (accidentals.startsWith("b") ? -1 : 1);
        return new NoteName(Step.valueOf(step), alter);
    }

    public static Pitch pitch(String text) {
        return notes(text).get(0).pitch();
    }

    private static List<MelodyNote> notes(String text) {
        List<MelodyNote> notes = new ArrayList<>();
        for (String one : text.split("\\+")) {
            Matcher match = PITCH.matcher(one);
            if (!match.matches()) throw new IllegalArgumentException("not understood: " + one);
            List<Integer> fingers = match.group(6)
                    .chars()
                    .filter(Character::isDigit)
                    .mapToObj(c -> c - '0')
                    .toList();
            Pitch pitch = new Pitch(name(match.group(2), match.group(3)), Integer.parseInt(match.group(4)));
            notes.add(new MelodyNote(
                    pitch, !match.group(1).isEmpty(), !match.group(5).isEmpty(), fingers));
        }
        return notes;
    }

    private static GraceGroup graces(String text) {
        List<List<MelodyNote>> group = new ArrayList<>();
        for (String one : text.split(";")) group.add(notes(one));
        return new GraceGroup(group);
    }

    private static List<BassEvent> bassEvents(String text) {
        List<BassEvent> events = new ArrayList<>();
        MusicalTime offset = MusicalTime.ZERO;
        for (String part : text.split(",")) {
            Draft.Event event = new Draft.Event();
            Optional<BassChordType> letter = Optional.empty();
            for (String word : part.trim().split("\\s+")) {
                if (word.isEmpty() || word.equals("R")) continue;
                Optional<BassChordType> named = letter(word);
                if (named.isPresent()) letter = named;
                else if (word.equals("tie")) event.tied = true;
                else if (!event.timed(word)) event.notes = notes(word);
            }
            if (!event.duration.isPositive()) continue;
            List<Pitch> pitches = event.notes.stream().map(MelodyNote::pitch).toList();
            events.add(new BassEvent(offset, event.duration, pitches, letter, event.tied));
            offset = offset.plus(event.duration);
        }
        return events;
    }

    private static Optional<BassChordType> letter(String word) {
        for (BassChordType type : BassChordType.values()) if (type.letter().equals(word)) return Optional.of(type);
        return Optional.empty();
    }

    private static Meter meterOf(String text) {
        if (text.equals("free")) return Meter.FREE;
        String[] parts = text.split("/");
        List<Integer> groups = new ArrayList<>();
        for (String group : parts[0].split("\\+")) groups.add(Integer.valueOf(group));
        return new Meter(groups, Integer.parseInt(parts[1]));
    }

    /** A measure in the making. */
    private static final class Draft {
        private MusicalTime offset = MusicalTime.ZERO;
        private boolean pickup;
        private Optional<Integer> repeatEnd = Optional.empty();
        private final List<MelodyEvent> events = new ArrayList<>();
        private final List<PlacedChord> chords = new ArrayList<>();
        private final List<Mark> marks = new ArrayList<>();
        private final List<Integer> endings = new ArrayList<>();
        private final List<String> signs = new ArrayList<>();

        private Barlines barlines() {
            Optional<Barlines.Jump> jump = signs.contains("dc")
                    ? Optional.of(Barlines.Jump.DA_CAPO)
                    : signs.contains("ds") ? Optional.of(Barlines.Jump.DAL_SEGNO) : Optional.empty();
            return new Barlines(
                    signs.contains("start"),
                    repeatEnd,
                    !signs.contains("nojump"),
                    endings,
                    signs.contains("stop"),
                    signs.contains("segno"),
                    signs.contains("coda"),
                    jump,
                    signs.contains("tocoda"),
                    signs.contains("fine"),
                    signs.contains("double"));
        }

        /** An event in the making. */
        private static final class Event {
            private MusicalTime duration = MusicalTime.ZERO;
            private List<MelodyNote> notes = List.of();
            private GraceGroup graces = GraceGroup.NONE;
            private GraceGroup after = GraceGroup.NONE;
            private int starts;
            private int stops;
            private boolean breath;
            private boolean fermata;
            private boolean tied;
            private Optional<BellowsEffect> effect = Optional.empty();
            private final Set<Articulation> touch = EnumSet.noneOf(Articulation.class);
            private final List<Lyric> lyrics = new ArrayList<>();

            private boolean timed(String word) {
                Matcher match = LENGTH.matcher(word);
                Matcher fraction = FRACTION.matcher(word);
                if (fraction.matches()) {
                    duration = MusicalTime.of(Long.parseLong(fraction.group(1)), Long.parseLong(fraction.group(2)));
                    return true;
                }
                if (!match.matches()) return false;
                duration = MusicalTime.of(1, 1L << "whqesx".indexOf(match.group(1)));
                int dots = match.group(2).length();
                duration = duration.times(MusicalTime.of((2L << dots) - 1, 1L << dots));
                if (!match.group(3).isEmpty()) duration = duration.times(MusicalTime.of(2, 3));
                return true;
            }

            private boolean marked(String word) {
                switch (word) {
                    case "(" -> starts++;
                    case ")" -> stops++;
                    case "breath" -> breath = true;
                    case "fermata" -> fermata = true;
                    case "stacc" -> touch.add(Articulation.STACCATO);
                    case "staccatissimo" -> touch.add(Articulation.STACCATISSIMO);
                    case "ten" -> touch.add(Articulation.TENUTO);
                    case "acc" -> touch.add(Articulation.ACCENT);
                    case "marc" -> touch.add(Articulation.STRONG_ACCENT);
                    case "shake" -> effect = Optional.of(BellowsEffect.SHAKE);
                    default -> {
                        if (!word.startsWith("'")) return false;
                        boolean ends = !word.endsWith("-");
                        lyrics.add(new Lyric(1, word.substring(1, word.length() - (ends ? 0 : 1)), ends));
                    }
                }
                return true;
            }

            private MelodyEvent at(MusicalTime offset) {
                List<MelodyNote> sorted = new ArrayList<>(notes);
                sorted.sort(Comparator.comparing(MelodyNote::pitch));
                EventMarks marks = new EventMarks(starts, stops, touch, breath, fermata, lyrics, effect);
                return new MelodyEvent(offset, duration, sorted, graces, after, marks);
            }
        }
    }
}
