package org.mantice.tune;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TunesTest {
    @Test
    void a_line_of_text_becomes_a_tune() {
        Tune tune = Tunes.in("3/4")
                .key(-1)
                .melody("""
                @pickup C4 e, D4 e | "F/C" F4+A4~ q. stacc, R e, {G4;A4} Bb4 et (, A4 et, G4 et ) breath
                | @ending1+2 @end @meter=2/4 !mf C5=1=2 1/2 fermata""")
                .bass(" | F2 q, F2+A2+C3 h M")
                .tune();

        Measure first = tune.measure(1);
        assertThat(tune.measure(0).length()).isEqualTo(MusicalTime.QUARTER);
        assertThat(first.melody())
                .extracting(MelodyEvent::offset)
                .map(String::valueOf)
                .containsExactly("0", "3/8", "1/2", "7/12", "2/3");
        assertThat(first.melody().get(0).notes())
                .extracting(note -> note.pitch().midi())
                .containsExactly(65, 69);
        assertThat(first.melody().get(0).notes().get(1).tiedForward()).isTrue();
        assertThat(first.melody().get(2).graces().notes()).hasSize(2);
        assertThat(first.chords().get(0).symbol()).hasToString("F/C");
        assertThat(first.bass().get(1).chord()).contains(BassChordType.MAJOR);
        assertThat(tune.measure(2).barlines().endingStart()).isEqualTo(List.of(1, 2));
        assertThat(tune.measure(2).barlines().repeatEnd()).isEqualTo(Optional.of(2));
        assertThat(tune.measure(2).melody().get(0).notes().get(0).fingers()).containsExactly(1, 2);
        assertThat(tune.measure(2).melody().get(0).marks().fermata()).isTrue();
    }
}
