package org.mantice.app.model;

import java.text.NumberFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;
import org.mantice.fault.ManticeException;
import org.mantice.performance.ChordsPlayed;
import org.mantice.performance.Settings;
import org.mantice.performance.SettingsBuilder;
import org.mantice.reading.ReadTune;
import org.mantice.tune.Loudness;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Transposer;
import org.mantice.tune.Tune;

/**
 * What the setup bar says: the tune, and each setting with what holds where the player has chosen nothing.
 *
 * @param open whether a tune is open; else only the title is of use
 * @param melody the part with the melody; empty where the file has no other
 * @param leftOut what the tune does not hold as its file has it, one line each
 * @param tempo felt beats a minute, rounded
 * @param beat the felt beat, in words
 * @param shift semitones up
 * @param key the key that results, in words
 * @param chords what is played where the tune leaves a choice
 * @param air what is to be said about the figures of air; empty if the accordion is measured
 */
public record SetupModel(
        boolean open,
        String title,
        String melody,
        List<String> leftOut,
        Setting tempo,
        String beat,
        Setting times,
        int shift,
        String key,
        Loudness loudness,
        Setting loudnessLevel,
        int plans,
        Chords chords,
        String air) {
    /**
     * What the tune leaves open about its chords, and what is chosen.
     *
     * @param alternates whether two chords stand at one place anywhere
     * @param optional whether a chord stands in brackets anywhere
     */
    public record Chords(boolean alternates, boolean optional, ChordsPlayed chosen) {}

    /**
     * A setting that the player may choose.
     *
     * @param value in force
     * @param otherwise what holds when nothing is chosen, and whether that is written or assumed
     */
    public record Setting(int value, boolean chosen, String otherwise) {}

    public SetupModel {
        leftOut = List.copyOf(leftOut);
    }

    /** A tune that is too long to be unrolled is shown as played once; the answer says what is wrong with it. */
    public static SetupModel of(PlannerState state, Words words) {
        return new Maker(words, state.setup()).make(state);
    }

    private record Maker(Words words, Setup setup) {
        SetupModel make(PlannerState state) {
            String air = setup.accordion().bellows().measured() ? "" : words.text("setup.airEstimated");
            Optional<ReadTune> read = state.tune().map(OpenTune::read);
            if (read.isEmpty()) return closed(air);
            Tune tune = state.editedTune().orElse(read.get().tune());
            MusicWords music = new MusicWords(words);
            Wishes wishes = setup.wishes();
            Settings plain = settings(Wishes.NONE, tune);
            Settings settings = settings(wishes, tune);
            return new SetupModel(
                    true,
                    state.tune().orElseThrow().name(),
                    MelodyModel.hasChoice(read.get())
                            ? words.text(
                                    "setup.melody", read.get().melody().part().label())
                            : "",
                    read.get().skipped().stream().map(music::skipped).toList(),
                    new Setting(
                            (int) Math.round(feltBeats(settings, tune)),
                            wishes.beatsPerMinute().isPresent(),
                            otherwise(plain.tempoAssumed(), number(feltBeats(plain, tune)))),
                    beat(feltBeat(tune)),
                    new Setting(
                            settings.timesThrough(),
                            wishes.timesThrough().isPresent(),
                            otherwise(plain.timesAssumed(), number(plain.timesThrough()))),
                    wishes.transposition(),
                    music.key(Transposer.transpose(tune.measure(0).key(), wishes.transposition())),
                    settings.loudness(),
                    loudness(settings, plain),
                    wishes.plans(),
                    new Chords(tune.hasAlternateChords(), tune.hasOptionalChords(), wishes.chords()),
                    air);
        }

        private SetupModel closed(String air) {
            Setting none = new Setting(0, false, words.text("setup.noTune"));
            return new SetupModel(
                    false,
                    words.text("setup.noTune"),
                    "",
                    List.of(),
                    none,
                    "",
                    none,
                    setup.wishes().transposition(),
                    "",
                    Loudness.MF,
                    none,
                    setup.wishes().plans(),
                    new Chords(false, false, setup.wishes().chords()),
                    air);
        }

        private static Settings settings(Wishes wishes, Tune tune) {
            try {
                return wishes.settings(tune);
            } catch (ManticeException tooLong) {
                return wishes.withTimes(OptionalInt.of(1)).settings(tune);
            }
        }

        /** Where loudness is written at the start it holds there; what is set holds where nothing is written. */
        private Setting loudness(Settings settings, Settings plain) {
            boolean chosen = setup.wishes().loudness().isPresent();
            String otherwise = plain.loudnessAssumed()
                    ? otherwise(true, plain.loudness().name().toLowerCase(Locale.ROOT))
                    : words.text("setup.asWritten");
            return new Setting(settings.loudness().ordinal(), chosen, otherwise);
        }

        private String otherwise(boolean assumed, String value) {
            return assumed ? words.text("setup.assumedValue", value) : words.text("setup.writtenValue", value);
        }

        private static MusicalTime feltBeat(Tune tune) {
            return SettingsBuilder.of(tune)
                    .beatsPerMinute(60)
                    .timesThrough(1)
                    .build()
                    .tempo()
                    .beat();
        }

        private static double feltBeats(Settings settings, Tune tune) {
            MusicalTime share = settings.tempo().beat().dividedBy(feltBeat(tune));
            return settings.tempo().milliBeatsPerMinute() / 1000.0 * share.numerator() / share.denominator();
        }

        private String number(double value) {
            NumberFormat format = NumberFormat.getNumberInstance(words.locale());
            format.setMaximumFractionDigits(1);
            return format.format(value);
        }

        private String beat(MusicalTime beat) {
            return switch (beat.toString()) {
                case "1/2" -> words.text("setup.beat.half");
                case "1/4" -> words.text("setup.beat.quarter");
                case "3/8" -> words.text("setup.beat.dottedQuarter");
                case "1/8" -> words.text("setup.beat.eighth");
                case "3/16" -> words.text("setup.beat.dottedEighth");
                default -> words.text("setup.beat.other", beat.toString());
            };
        }
    }
}
