package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.mantice.reading.abc.AbcElement;
import org.mantice.reading.abc.AbcElement.Decoration;
import org.mantice.tune.Mark;
import org.mantice.tune.MusicalTime;

/** What is written before a note, until the note comes. */
final class AbcPending {
    private static final ChordText CHORDS = new ChordText(ChordText.Letters.INTERNATIONAL);

    private final AbcVoice voice;
    private final AbcReport report;
    private final List<Decoration> decorations = new ArrayList<>();
    private final List<Integer> fingers = new ArrayList<>();
    private final List<List<AbcItem.Tone>> graces = new ArrayList<>();
    private final List<String> slurs = new ArrayList<>();
    private boolean phraseEnds;

    AbcPending(AbcVoice voice, AbcReport report) {
        this.voice = voice;
        this.report = report;
    }

    void slur(String number) {
        slurs.add(number);
    }

    void grace(List<AbcItem.Tone> together) {
        graces.add(together);
    }

    void decoration(Decoration decoration) {
        Optional<Function<MusicalTime, ScoreSign>> sign = AbcDecorations.sign(decoration.name());
        if (sign.isPresent()) voice.bars.current().add(sign.get());
        else decorations.add(decoration);
    }

    /** Inside a chord a finger belongs to the next note; all else to the chord. */
    void decorationInChord(Decoration decoration) {
        if (AbcDecorations.isFinger(decoration.name())) finger(decoration);
        else decoration(decoration);
    }

    private void finger(Decoration decoration) {
        int finger = Integer.parseInt(decoration.name());
        if (finger == 0) report.add(decoration.place(), SkippedWhat.FINGERING, "0");
        else fingers.add(finger);
    }

    void giveFingersTo(AbcItem.Tone tone) {
        tone.fingers.addAll(fingers);
        fingers.clear();
    }

    void giveTo(AbcItem item) {
        if (phraseEnds) voice.bars.current().add(onset -> new ScoreSign.Plain(new Mark.PhraseStart(onset)));
        phraseEnds = false;
        item.graces.addAll(graces);
        item.slurStarts.addAll(slurs);
        graces.clear();
        slurs.clear();
        for (Decoration decoration : decorations) give(decoration, item);
        decorations.clear();
        if (!item.isRest()) giveFingersTo(item.tones.get(0));
        fingers.clear();
    }

    private void give(Decoration decoration, AbcItem item) {
        String name = decoration.name();
        if (AbcDecorations.isFinger(name)) finger(decoration);
        else if (AbcDecorations.isFermata(name)) item.fermata = true;
        else if (AbcDecorations.isBreath(name)) item.breath = true;
        else if (AbcDecorations.isPhraseEnd(name)) phraseEnds = true;
        else if (AbcDecorations.touch(name).isPresent())
            item.articulations.add(AbcDecorations.touch(name).get());
        else if (!AbcDecorations.isLayout(name)) item.findings.add(Finding.of(SkippedWhat.NOTE_MARK, name));
    }

    /** At a bar line: breath, phrase and grace notes belong to the note before; all else has no note. */
    void endMeasure() {
        if (!graces.isEmpty() && voice.last().filter(item -> !item.isRest()).isPresent()) {
            voice.last().get().after.addAll(graces);
            graces.clear();
        }
        for (Decoration decoration : decorations) {
            String name = decoration.name();
            if (AbcDecorations.isBreath(name)) voice.last().ifPresent(item -> item.breath = true);
            else if (AbcDecorations.isPhraseEnd(name)) phraseEnds = true;
            else if (!AbcDecorations.isLayout(name))
                report.add(decoration.place(), SkippedWhat.DIRECTION, name + " over a bar line");
        }
        decorations.clear();
    }

    /** Grace notes that no note came for. */
    void finish() {
        graces.forEach(together -> together.forEach(tone -> report.list().add(SkippedWhat.LOST_GRACE)));
        graces.clear();
    }

    /** A chord symbol, words with a meaning, or words. */
    void text(AbcElement.Quoted quoted) {
        String text = quoted.text().strip();
        boolean placed = text.matches("(?s)[\\^_<>@].*");
        if (text.startsWith("@")) text = text.replaceFirst("^@\\s*-?[\\d.]+\\s*,\\s*-?[\\d.]+\\s*", "@");
        if (placed) {
            words(text.substring(1).strip());
            return;
        }
        for (String line : text.split("[;\n]")) {
            Optional<ChordText.Written> chord = CHORDS.read(line);
            if (chord.isPresent()) chord(chord.get());
            else words(line.strip());
        }
    }

    /** A second chord at a note, and one in brackets behind the first, are for a later pass. */
    private void chord(ChordText.Written written) {
        AbcMeasure measure = voice.bars.current();
        ScoreChord.Manner manner = measure.hasChordHere()
                ? ScoreChord.Manner.ALTERNATE
                : written.optional() ? ScoreChord.Manner.OPTIONAL : ScoreChord.Manner.PLAIN;
        measure.add(voice.pitches.sounding(written.symbol()), manner);
        written.alternate().ifPresent(other -> measure.add(voice.pitches.sounding(other), ScoreChord.Manner.ALTERNATE));
    }

    void words(String text) {
        if (text.isEmpty()) return;
        int staff = voice.clef.equals("F") ? 2 : 1;
        List<ScoreSign> signs = new DirectionWords(MusicalTime.ZERO, staff).read(text);
        AbcMeasure measure = voice.bars.current();
        for (ScoreSign sign : signs) measure.add(sign::at);
        if (signs.isEmpty()) measure.add(onset -> new ScoreSign.Plain(new Mark.Words(onset, text)));
    }
}
