package org.mantice.layer.lefthand;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.BassRow;
import org.mantice.instrument.ButtonChoice;
import org.mantice.instrument.ChordButtons;
import org.mantice.instrument.StradellaBass;
import org.mantice.instrument.Substitution;
import org.mantice.rule.ButtonMoment.Bass;
import org.mantice.tune.BassChordType;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.NoteName;

/** Which buttons could play what is wanted, best first; empty where none come near. */
final class Candidates {
    /** Buttons of the fifth or third that are worth a thought: the nearest. */
    private static final int NEAREST = 2;
    /** Columns within which a counterbass third still colours the bass; estimate. */
    private static final int THIRD_COLUMNS = 1;

    private static final List<Substitution> ABOUT_BASS =
            List.of(Substitution.OTHER_BASS, Substitution.NO_BASS_NOTE, Substitution.NO_COUNTERBASS_ROW);

    private static final String NOT_FIRST = "not the buttons that players take first";

    private final StradellaBass layout;
    private final ChordButtons chordButtons;
    private final Map<ChordSymbol, List<ButtonChoice>> choices = new HashMap<>();

    Candidates(StradellaBass layout) {
        this.layout = layout;
        this.chordButtons = new ChordButtons(layout);
    }

    List<Candidate> of(Wanted wanted) {
        Map<List<BassButton>, Candidate> found = new LinkedHashMap<>();
        if (wanted instanceof Wanted.OfChord chord) {
            for (Candidate candidate : ofChord(chord)) found.putIfAbsent(candidate.buttons(), candidate);
        } else if (wanted instanceof Wanted.OfRun run) {
            for (Candidate candidate : ofRun(run)) found.putIfAbsent(candidate.buttons(), candidate);
        } else if (wanted instanceof Wanted.OfStaff staff) {
            for (Candidate candidate : ofStaff(staff)) found.putIfAbsent(candidate.buttons(), candidate);
        }
        return List.copyOf(found.values());
    }

    private List<ButtonChoice> choices(ChordSymbol chord) {
        return choices.computeIfAbsent(chord, chordButtons::choices);
    }

    private List<Candidate> ofChord(Wanted.OfChord wanted) {
        List<Candidate> found = new ArrayList<>(
                switch (wanted.bass()) {
                    case ROOT -> List.of();
                    case CHANGE -> changes(wanted.chord());
                    case FIFTH -> fifths(wanted.chord());
                    case THIRD -> thirds(wanted.chord());
                });
        boolean settled = wanted.bass() == Wanted.BassWish.FIFTH || wanted.bass() == Wanted.BassWish.THIRD;
        if (settled && !found.isEmpty()) return found;
        List<ButtonChoice> all = choices(wanted.chord());
        for (ButtonChoice choice : all) {
            if (choice.isSilent()) continue;
            boolean usual = shape(choice).equals(shape(all.get(0)));
            switch (wanted.part()) {
                case BASS -> found.add(choice.bass().isPresent() ? bass(choice) : chord(choice, usual));
                case CHORD -> found.add(choice.chord().isEmpty() ? bass(choice) : chord(choice, usual));
                case BOTH -> found.add(both(choice, usual));
            }
        }
        return found;
    }

    /** The chord's rows and notes, whichever of equal buttons is meant. */
    private static List<String> shape(ButtonChoice choice) {
        return choice.chord().stream()
                .map(button -> button.row().ordinal() + " " + button.rootPitchClass())
                .toList();
    }

    private static Candidate bass(ButtonChoice choice) {
        return new Candidate(
                List.of(choice.bass().orElseThrow()),
                choice.hasWrittenBass() ? Bass.ROOT : Bass.OTHER,
                Candidate.NO_TONES,
                Candidate.NO_TONES,
                notes(choice, true, false, true),
                charged(choice, true, false, true));
    }

    private static Candidate chord(ButtonChoice choice, boolean usual) {
        return new Candidate(
                choice.chord(),
                Bass.NONE,
                choice.missing(),
                choice.foreign(),
                notes(choice, false, true, usual),
                charged(choice, false, true, usual));
    }

    private static Candidate both(ButtonChoice choice, boolean usual) {
        Bass bass = choice.bass().isEmpty() ? Bass.NONE : choice.hasWrittenBass() ? Bass.ROOT : Bass.OTHER;
        return new Candidate(
                choice.buttons(),
                bass,
                choice.missing(),
                choice.foreign(),
                notes(choice, true, true, usual),
                charged(choice, true, true, usual));
    }

    private static List<String> notes(ButtonChoice choice, boolean bass, boolean chord, boolean usual) {
        return words(choice, bass, chord, usual, true);
    }

    /** Without the other name of the same button, which nobody hears. */
    private static List<String> charged(ButtonChoice choice, boolean bass, boolean chord, boolean usual) {
        return words(choice, bass, chord, usual, false);
    }

    private static List<String> words(
            ButtonChoice choice, boolean bass, boolean chord, boolean usual, boolean otherNames) {
        List<String> words = new ArrayList<>();
        for (Substitution reason : choice.substitutions())
            if ((ABOUT_BASS.contains(reason) ? bass : chord)
                    && (otherNames || reason != Substitution.ENHARMONIC_COLUMN)) words.add(reason.text());
        if (!usual) words.add(NOT_FIRST);
        return words;
    }

    private List<Candidate> changes(ChordSymbol chord) {
        List<Candidate> found = new ArrayList<>();
        for (ButtonChoice choice : choices(chord)) {
            if (choice.bass().isEmpty() || !choice.hasWrittenBass()) continue;
            int column = layout.place(choice.bass().get());
            chordButtons.alternateBasses(chord, choice).stream()
                    .limit(NEAREST)
                    .forEach(button -> found.add(plain(button, Bass.FIFTH)));
            chordButtons.thirds(chord, choice).stream()
                    .filter(button -> button.row() == BassRow.COUNTERBASS)
                    .filter(button -> Math.abs(layout.place(button) - column) <= THIRD_COLUMNS)
                    .forEach(button -> found.add(plain(button, Bass.THIRD)));
        }
        return found;
    }

    private List<Candidate> fifths(ChordSymbol chord) {
        List<Candidate> found = new ArrayList<>();
        for (ButtonChoice choice : choices(chord))
            if (choice.hasWrittenBass())
                chordButtons.alternateBasses(chord, choice).stream()
                        .limit(NEAREST)
                        .forEach(button -> found.add(plain(button, Bass.FIFTH)));
        return found;
    }

    /** The third on any row; the fifth where none is in reach. */
    private List<Candidate> thirds(ChordSymbol chord) {
        List<Candidate> found = new ArrayList<>();
        for (ButtonChoice choice : choices(chord))
            if (choice.hasWrittenBass())
                chordButtons.thirds(chord, choice).stream()
                        .limit(NEAREST)
                        .forEach(button -> found.add(plain(button, Bass.THIRD)));
        return found.isEmpty() ? fifths(chord) : found;
    }

    /** Every button of the bass rows that sounds a note of some line. */
    private List<Candidate> ofRun(Wanted.OfRun wanted) {
        List<Candidate> found = new ArrayList<>();
        for (Wanted.RunNote note : wanted.notes())
            for (BassButton button : layout.bassButtons(note.pitchClass()))
                found.add(plain(button, note.inKey() ? Bass.PASSING : Bass.CHROMATIC));
        return found;
    }

    private static Candidate plain(BassButton button, Bass bass) {
        return new Candidate(List.of(button), bass, Candidate.NO_TONES, Candidate.NO_TONES, List.of(), List.of());
    }

    /** Every combination of what can play the signs; a sign for which the instrument has no button is left out. */
    private List<Candidate> ofStaff(Wanted.OfStaff wanted) {
        List<Candidate> together = List.of();
        for (Wanted.StaffPart part : wanted.parts()) {
            List<Candidate> ones = ofPart(part);
            if (ones.isEmpty()) continue;
            if (together.isEmpty()) {
                together = ones;
                continue;
            }
            List<Candidate> longer = new ArrayList<>();
            for (Candidate one : together) for (Candidate other : ones) longer.add(joined(one, other));
            together = longer;
        }
        return together;
    }

    private List<Candidate> ofPart(Wanted.StaffPart part) {
        if (part.chord().isPresent()) return ofLetter(rootOf(part), part.chord().get());
        if (part.notes().size() == 1) return ofBassNote(part.notes().get(0), part.row());
        List<Candidate> whole = sounding(part.notes());
        if (!whole.isEmpty()) return whole;
        return ofStaff(new Wanted.OfStaff(part.notes().stream()
                .map(note -> new Wanted.StaffPart(List.of(note), Optional.empty(), part.row()))
                .toList()));
    }

    /** The note on which the chord button's tones are those written; the lowest where none is. */
    private static NoteName rootOf(Wanted.StaffPart part) {
        for (NoteName note : part.notes())
            if (rowOf(part.chord().orElseThrow()).intervals().stream()
                    .map(interval -> (note.pitchClass() + interval) % 12)
                    .allMatch(tone -> part.notes().stream().anyMatch(other -> other.pitchClass() == tone))) return note;
        return part.notes().get(0);
    }

    private List<Candidate> ofLetter(NoteName root, BassChordType letter) {
        List<Candidate> found = new ArrayList<>();
        for (BassButton button : layout.buttons(rowOf(letter), root.pitchClass())) found.add(plain(button, Bass.NONE));
        if (!found.isEmpty()) return found;
        for (ButtonChoice choice : choices(ChordSymbol.of(root, kindOf(letter))))
            if (!choice.chord().isEmpty()) found.add(chord(choice, true));
        return found;
    }

    /**
     * In the row that is written, in any where that one lacks the note. Empty where the instrument lacks it: under an
     * unknown harmony another would be a guess.
     */
    private List<Candidate> ofBassNote(NoteName note, Optional<BassRow> row) {
        List<BassButton> all = layout.bassButtons(note.pitchClass());
        List<BassButton> asWritten = all.stream()
                .filter(button -> row.filter(button.row()::equals).isPresent())
                .toList();
        List<Candidate> found = new ArrayList<>();
        for (BassButton button : asWritten.isEmpty() ? all : asWritten) found.add(plain(button, Bass.OTHER));
        return found;
    }

    /** Chord buttons that sound exactly these notes. */
    private List<Candidate> sounding(List<NoteName> notes) {
        SortedSet<Integer> tones = new TreeSet<>();
        notes.forEach(note -> tones.add(note.pitchClass()));
        List<Candidate> found = new ArrayList<>();
        for (BassButton button : layout.allButtons())
            if (button.row().isChord() && button.pitchClasses().equals(tones)) found.add(plain(button, Bass.NONE));
        return found;
    }

    private static Candidate joined(Candidate one, Candidate other) {
        List<BassButton> buttons = new ArrayList<>(one.buttons());
        buttons.addAll(other.buttons());
        return new Candidate(
                buttons,
                one.bass() == Bass.NONE ? other.bass() : one.bass(),
                union(one.missing(), other.missing()),
                union(one.foreign(), other.foreign()),
                concatenated(one.notes(), other.notes()),
                concatenated(one.charged(), other.charged()));
    }

    private static SortedSet<Integer> union(SortedSet<Integer> one, SortedSet<Integer> other) {
        SortedSet<Integer> both = new TreeSet<>(one);
        both.addAll(other);
        return both;
    }

    private static List<String> concatenated(List<String> one, List<String> other) {
        List<String> both = new ArrayList<>(one);
        for (String text : other) if (!both.contains(text)) both.add(text);
        return both;
    }

    private static BassRow rowOf(BassChordType letter) {
        return switch (letter) {
            case MAJOR -> BassRow.MAJOR;
            case MINOR -> BassRow.MINOR;
            case SEVENTH -> BassRow.SEVENTH;
            case DIMINISHED -> BassRow.DIMINISHED;
        };
    }

    private static ChordKind kindOf(BassChordType letter) {
        return switch (letter) {
            case MAJOR -> ChordKind.MAJOR;
            case MINOR -> ChordKind.MINOR;
            case SEVENTH -> ChordKind.DOMINANT;
            case DIMINISHED -> ChordKind.DIMINISHED_SEVENTH;
        };
    }
}
