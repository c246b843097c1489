package org.mantice.app.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.AccordionPresets;
import org.mantice.instrument.BassButton;
import org.mantice.instrument.BassRow;
import org.mantice.instrument.ReedBank;
import org.mantice.instrument.RegisterSwitch;
import org.mantice.performance.Performance;
import org.mantice.performance.Performer;
import org.mantice.performance.SettingsBuilder;
import org.mantice.plan.Decision;
import org.mantice.plan.Lock;
import org.mantice.reading.TuneReader;
import org.mantice.tune.Key;
import org.mantice.tune.Mode;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tune;
import org.mantice.tune.WrittenPlace;

class MusicWordsTest {
    private static final Accordion ACCORDION = AccordionPresets.get("standard-34-key-72-bass");

    private final MusicWords english = new MusicWords(Words.of(Locale.ENGLISH));
    private final MusicWords german = new MusicWords(Words.of(Locale.GERMANY));

    @Test
    void placesAreSaidInTheLanguage() {
        String place = "pass 2, measure 12a, beat 2+1/8";

        assertThat(english.place(place)).isEqualTo(place);
        assertThat(german.place(place)).isEqualTo("Durchgang 2, Takt 12a, Zählzeit 2+1/8");
        assertThat(german.place("pass 3")).isEqualTo("Durchgang 3");
        assertThat(german.place("measure 7, beat 1")).isEqualTo("Takt 7, Zählzeit 1");
        assertThat(german.place("written measure 4, offset 1/4")).isEqualTo("notierter Takt 4, Abstand 1/4");
    }

    @Test
    void whatIsNoPlaceStaysAsItIs() {
        assertThat(german.place("pass two, measure 3, beat 1")).isEqualTo("pass two, measure 3, beat 1");
        assertThat(german.place("pass 1, measure 3, beat")).isEqualTo("pass 1, measure 3, beat");
        assertThat(german.place("")).isEmpty();
    }

    @Test
    void valuesAreSaidInTheTradesWords() {
        assertThat(english.value(Decision.Kind.TURN, "out", ACCORDION)).isEqualTo("out");
        assertThat(german.value(Decision.Kind.TURN, "out", ACCORDION)).isEqualTo("auf");
        assertThat(german.value(Decision.Kind.TURN, "no turn", ACCORDION)).isEqualTo("kein Balgwechsel");
        assertThat(english.value(Decision.Kind.BUTTONS, "Eb bass + G counterbass", ACCORDION))
                .isEqualTo("E♭ bass + G counterbass");
        assertThat(german.value(Decision.Kind.BUTTONS, "C bass + C major", ACCORDION))
                .isEqualTo("C-Grundbass + C-Dur");
        assertThat(german.value(Decision.Kind.BUTTONS, "G counterbass + Bb diminished", ACCORDION))
                .isEqualTo("G-Terzbass + B♭ vermindert");
        assertThat(german.value(Decision.Kind.OCTAVE, "-1", ACCORDION)).isEqualTo("eine Oktave tiefer");
        assertThat(english.value(Decision.Kind.FINGER, "3", ACCORDION)).isEqualTo("finger 3");
        assertThat(english.value(Decision.Kind.HAND_PLACE, "28", ACCORDION)).isEqualTo("thumb at C4");
    }

    @Test
    void aRegisterIsCalledByTheNameOfItsSwitch() {
        assertThat(english.value(Decision.Kind.REGISTER, "bassoon", ACCORDION)).isEqualTo("bassoon");
        assertThat(german.value(Decision.Kind.REGISTER, "bassoon", ACCORDION)).isEqualTo("Fagott");
        assertThat(german.value(Decision.Kind.REGISTER, "bassoon, octave 1", ACCORDION))
                .isEqualTo("Fagott, eine Oktave höher");
        assertThat(german.value(Decision.Kind.REGISTER, "bassoon, octave 0", ACCORDION))
                .isEqualTo("Fagott");
        assertThat(german.value(Decision.Kind.REGISTER, "not-here", ACCORDION)).isEqualTo("not-here");
    }

    @Test
    void aNameThatSomebodyGaveStays() {
        RegisterSwitch own = new RegisterSwitch("bassoon", "Grumbler", Set.of(ReedBank.LOW_16), true, 0);

        assertThat(german.register(own)).isEqualTo("Grumbler");
    }

    @Test
    void everyPresetHasItsNameInBothLanguages() {
        for (Accordion preset : AccordionPresets.all()) {
            assertThat(english.name(preset)).isEqualTo(preset.name());
            assertThat(german.name(preset)).isNotEqualTo(preset.name()).contains("Tasten");
        }
    }

    @Test
    void keysAreNamedByTonicAndMode() {
        assertThat(english.key(new Key(1, Mode.MAJOR))).isEqualTo("G major");
        assertThat(german.key(new Key(1, Mode.MAJOR))).isEqualTo("G-Dur");
        assertThat(german.key(new Key(3, Mode.MINOR))).isEqualTo("f♯-Moll");
        assertThat(english.key(new Key(-2, Mode.MAJOR))).isEqualTo("B♭ major");
        assertThat(english.key(new Key(-1, Mode.NONE))).isEqualTo("1 flat");
        assertThat(english.key(new Key(3, Mode.NONE))).isEqualTo("3 sharps");
        assertThat(german.key(new Key(0, Mode.NONE))).isEqualTo("keine Vorzeichen");
    }

    @Test
    void locksAreSaidWithWhatPlaceAndPass() {
        Tune tune = new TuneReader()
                .read(Path.of(System.getProperty("mantice.root", ".."), "examples/tunes/the-rusty-gate.musicxml"))
                .tune();
        Performance performance =
                Performer.perform(tune, SettingsBuilder.of(tune).build());
        WrittenPlace start = new WrittenPlace(0, MusicalTime.ZERO);

        assertThat(german.lock(new Lock.Finger(OptionalInt.of(2), start, 0, 3), performance, ACCORDION))
                .isEqualTo("Finger 3 bei Takt 1, Zählzeit 1 in Durchgang 2");
        assertThat(english.lock(new Lock.Turn(OptionalInt.empty(), start, false), performance, ACCORDION))
                .isEqualTo("no turn at measure 1, beat 1 in every pass");
        assertThat(german.lock(
                        new Lock.Buttons(
                                OptionalInt.empty(),
                                start,
                                Set.of(new BassButton(BassRow.BASS, 0), new BassButton(BassRow.MINOR, 3))),
                        performance,
                        ACCORDION))
                .isEqualTo("C-Grundbass + A-Moll bei Takt 1, Zählzeit 1 in jedem Durchgang");
        assertThat(german.lock(new Lock.Register(OptionalInt.of(1), "bassoon"), performance, ACCORDION))
                .isEqualTo("Fagott in Durchgang 1");
        assertThat(english.lock(new Lock.Octave(OptionalInt.of(1), -1), performance, ACCORDION))
                .isEqualTo("an octave down in pass 1");
    }

    @Test
    void costsAreWrittenAsTheLanguageWritesNumbers() {
        assertThat(english.cost(1_234_567_890)).isEqualTo("1,234.57");
        assertThat(german.cost(1_234_567_890)).isEqualTo("1.234,57");
        assertThat(english.cost(-5_000)).isEqualTo("-0.01");
    }
}
