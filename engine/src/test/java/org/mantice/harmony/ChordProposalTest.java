package org.mantice.harmony;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.Key;
import org.mantice.tune.Measure;
import org.mantice.tune.Mode;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.PlacedChord;
import org.mantice.tune.Transposer;
import org.mantice.tune.Tune;
import org.mantice.tune.Tunes;
import org.mantice.tune.WrittenPlace;

class ChordProposalTest {
    private static final String CADENCE =
            "C4 q, E4 q, G4 q, E4 q | F4 q, A4 q, C5 q, A4 q | " + "G4 q, B4 q, D5 q, F5 q | C5 h, E4 q, C4 q @double";

    @Test
    void a_cadence_in_broken_chords_gets_those_chords() {
        ChordProposal proposal = ChordProposal.of(Tunes.melody("4/4", CADENCE));

        assertThat(perMeasure(proposal)).containsExactly("0:C", "1:F", "2:G7", "3:C");
    }

    @Test
    void a_minor_cadence_gets_the_major_dominant() {
        Tune tune = Tunes.melody(
                "4/4",
                "@minor A4 q, C5 q, E5 q, C5 q | D5 q, F5 q, A4 q, F5 q | "
                        + "E5 q, G#4 q, B4 q, D5 q | A4 h, C5 q, A4 q @double");

        ChordProposal proposal = ChordProposal.of(tune);

        assertThat(perMeasure(proposal)).containsExactly("0:Am", "1:Dm", "2:E7", "3:Am");
    }

    @Test
    void the_raised_fourth_brings_the_dominant_of_the_dominant() {
        Tune tune = Tunes.melody(
                "4/4", "C4 q, E4 q, G4 q, E4 q | A4 q, F#4 q, D4 q, F#4 q | G4 q, B4 q, D5 q, B4 q | C5 w @double");

        ChordProposal proposal = ChordProposal.of(tune);

        assertThat(at(proposal, 1).toString()).isEqualTo("D7");
        assertThat(at(proposal, 2).root().toString()).isEqualTo("G");
    }

    @Test
    void every_total_is_the_sum_of_its_facts() {
        ChordProposal proposal = ChordProposal.of(Tunes.melody("4/4", CADENCE));

        long facts = 0;
        for (ProposedChord chord : proposal.chords())
            for (HarmonyFact fact : chord.facts()) facts += fact.costMillipoints();
        assertThat(proposal.costMillipoints()).isEqualTo(facts);
        assertThat(proposal.chords()).allSatisfy(chord -> assertThat(chord.facts())
                .extracting(HarmonyFact::reason)
                .doesNotHaveDuplicates()
                .isSorted());
    }

    @Test
    void halves_that_repeat_note_for_note_get_the_same_chords_but_for_sevenths_that_lead_on() {
        String half = "E4 q, D4 q, C4 q, A4 q | B4 q, G4 q, E4 q, F4 q | A4 q, B4 q, D5 q, C5 q | ";
        Tune tune = Tunes.melody("4/4", half + "D5 h, B4 h | " + half + "C5 w @double");

        ChordProposal proposal = ChordProposal.of(tune);

        assertThat(inMeasures(proposal, 0, 3, 0)).isEqualTo(inMeasures(proposal, 4, 7, 4));
    }

    @ParameterizedTest
    @EnumSource(Mode.class)
    void every_mode_ends_on_its_own_tonic_with_chords_of_its_own(Mode mode) {
        Key key = new Key(0, mode);
        Tune tune = in(key, scaleTune(key.tonic().step().ordinal()));

        ChordProposal proposal = ChordProposal.of(tune);

        List<ProposedChord> chords = proposal.chords();
        assertThat(chords.get(chords.size() - 1).symbol().root()).isEqualTo(key.tonic());
        Set<Integer> white = Set.of(0, 2, 4, 5, 7, 9, 11);
        assertThat(chords.get(chords.size() - 1).symbol().pitchClasses()).isSubsetOf(white);
    }

    @Test
    void a_pickup_at_the_beginning_gets_no_chord() {
        Tune tune = Tunes.melody("3/4", "@pickup G4 q | C5 q, E5 q, C5 q | B4 q, D5 q, G4 q | C5 h.");

        ChordProposal proposal = ChordProposal.of(tune);

        assertThat(proposal.chords().get(0).place()).isEqualTo(new WrittenPlace(1, MusicalTime.ZERO));
        assertThat(at(proposal, 1).toString()).isEqualTo("C");
    }

    @Test
    void a_pickup_that_is_all_there_is_gets_a_chord() {
        ChordProposal proposal = ChordProposal.of(Tunes.melody("4/4", "@pickup C4 q"));

        assertThat(proposal.chords()).hasSize(1);
    }

    @Test
    void free_time_gets_chords_too() {
        Tune tune = Tunes.melody("free", "C4 q, E4 q, G4 h | G4 q, B4 q, D5 h | C5 w @double");

        ChordProposal proposal = ChordProposal.of(tune);

        assertThat(at(proposal, 0).toString()).isEqualTo("C");
        assertThat(at(proposal, 1).root().toString()).isEqualTo("G");
        assertThat(at(proposal, 2).toString()).isEqualTo("C");
    }

    @Test
    void a_key_without_a_mode_is_minor_where_the_melody_ends_there() {
        Tune tune = in(
                new Key(0, Mode.NONE),
                Tunes.melody("4/4", "A4 q, C5 q, E5 q, C5 q | E5 q, G#4 q, B4 q, E4 q | A4 w @double"));

        ChordProposal proposal = ChordProposal.of(tune);

        assertThat(at(proposal, 0).toString()).isEqualTo("Am");
        assertThat(at(proposal, 2).toString()).isEqualTo("Am");
    }

    @Test
    void a_new_key_is_followed() {
        Tune tune =
                Tunes.melody("4/4", "C4 q, E4 q, G4 q, C5 q | C5 w | @key=2 D4 q, F#4 q, A4 q, D5 q | D5 w @double");

        ChordProposal proposal = ChordProposal.of(tune);

        assertThat(at(proposal, 1).toString()).isEqualTo("C");
        assertThat(at(proposal, 2).toString()).isEqualTo("D");
    }

    @Test
    void moved_to_another_key_the_chords_move_along() {
        Tune tune = Tunes.melody("4/4", CADENCE);
        List<String> degrees = degrees(ChordProposal.of(tune));

        for (int semitones = -11; semitones <= 11; semitones++)
            assertThat(degrees(ChordProposal.of(Transposer.transpose(tune, semitones))))
                    .isEqualTo(degrees);
    }

    @Test
    void the_tune_carries_the_chords_as_proposed_in_place_of_its_own() {
        Tune tune = Tunes.melody("4/4", "\"Bb\" " + CADENCE);

        Tune with = ChordProposal.of(tune).in(tune);

        List<PlacedChord> chords =
                with.measures().stream().flatMap(m -> m.chords().stream()).toList();
        assertThat(chords).extracting(chord -> chord.symbol().toString()).containsExactly("C", "F", "G7", "C");
        assertThat(chords).allMatch(PlacedChord::proposed);
        assertThat(with.measure(0).melody()).isEqualTo(tune.measure(0).melody());
    }

    @Test
    void chords_do_not_fit_into_a_shorter_tune() {
        ChordProposal proposal = ChordProposal.of(Tunes.melody("4/4", CADENCE));

        assertThatThrownBy(() -> proposal.in(Tunes.melody("4/4", "C4 w")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("allowed: below 1");
    }

    @Test
    void a_tune_without_notes_gets_no_chords() {
        assertThat(ChordProposal.of(Tunes.melody("4/4", "R w")).chords()).isEmpty();
    }

    @Test
    @Timeout(value = 20, unit = TimeUnit.SECONDS)
    void a_very_long_tune_ends_soon() {
        Tune one = Tunes.melody("4/4", CADENCE);
        List<Measure> measures = Collections.nCopies(2_500, one.measures()).stream()
                .flatMap(List::stream)
                .toList();

        ChordProposal proposal = ChordProposal.of(new Tune("", one.dance(), measures));

        assertThat(proposal.chords()).hasSizeGreaterThanOrEqualTo(10_000);
    }

    @Test
    void a_very_long_measure_is_cut_into_no_more_than_64_beats() {
        Tune tune = Tunes.melody("free", "@pickup C4 5000/1, E4 5000/1");

        assertThat(new SlotGrid(tune).slots()).hasSizeBetween(33, 64);
    }

    private static List<String> perMeasure(ChordProposal proposal) {
        return proposal.chords().stream()
                .map(chord -> chord.place().measure() + ":" + chord.symbol())
                .toList();
    }

    private static List<String> degrees(ChordProposal proposal) {
        return proposal.chords().stream()
                .map(chord -> chord.place().measure() + ":" + chord.degree())
                .toList();
    }

    private static List<String> inMeasures(ChordProposal proposal, int from, int to, int shift) {
        return proposal.chords().stream()
                .filter(chord ->
                        chord.place().measure() >= from && chord.place().measure() < to)
                .map(chord -> chord.place().measure() - shift + " "
                        + chord.place().offset() + " " + chord.degree().replace("7", ""))
                .toList();
    }

    /** The chord at the beginning of a measure. */
    private static ChordSymbol at(ChordProposal proposal, int measure) {
        ChordSymbol last = proposal.chords().get(0).symbol();
        for (ProposedChord chord : proposal.chords())
            if (chord.place().compareTo(new WrittenPlace(measure, MusicalTime.ZERO)) <= 0) last = chord.symbol();
        return last;
    }

    /** Tonic, dominant and tonic of a mode of the white keys, the tonic's letter given by its number from C. */
    private static Tune scaleTune(int tonic) {
        return Tunes.melody(
                "4/4",
                String.join(" | ", bar(tonic, 0, 2, 4, 2), bar(tonic, 0, 4, 2, 1), bar(tonic, 4, 2, 1, 2), note(tonic))
                        + " w @double");
    }

    private static String bar(int tonic, int... degrees) {
        StringBuilder text = new StringBuilder();
        for (int degree : degrees) text.append(note(tonic + degree)).append(" q, ");
        return text.substring(0, text.length() - 2);
    }

    private static String note(int white) {
        return "CDEFGAB".charAt(white % 7) + String.valueOf(4 + white / 7);
    }

    private static Tune in(Key key, Tune tune) {
        return new Tune(
                tune.title(),
                tune.dance(),
                tune.measures().stream().map(measure -> measure.withKey(key)).toList());
    }
}
