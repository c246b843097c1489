package org.mantice.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.mantice.fault.TextPlace;
import org.mantice.reading.TuneReadException.Reason;
import org.mantice.reading.abc.AbcElement;
import org.mantice.reading.abc.AbcElement.Directive;
import org.mantice.reading.abc.AbcElement.Field;
import org.mantice.reading.abc.AbcEscapes;
import org.mantice.reading.abc.AbcKey;
import org.mantice.reading.abc.AbcMeter;
import org.mantice.reading.abc.AbcProperties;
import org.mantice.reading.abc.AbcTempo;
import org.mantice.reading.abc.AbcTune;
import org.mantice.tune.Mark;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;

/** Reads what a tune in ABC says, field by field and note by note, into a score with a part for every voice. */
final class AbcScore {
    private final AbcReport report;
    private final Map<String, AbcVoice> voices = new LinkedHashMap<>();
    private final List<Field> voiceFields = new ArrayList<>();
    private final List<String> rhythms = new ArrayList<>();
    private final AbcParts parts = new AbcParts();
    private String title = "";
    private Optional<AbcVoice> current = Optional.empty();
    private Optional<Meter> meter = Optional.empty();
    private Optional<MusicalTime> unit = Optional.empty();
    private Optional<Field> tempo = Optional.empty();
    private AbcKey key = AbcKey.C_MAJOR;
    private AbcPitches.Reach reach = AbcPitches.Reach.PITCH;
    private int semitones;
    private boolean voiceChosen;
    private int notes;

    AbcScore(AbcReport report) {
        this.report = report;
    }

    Score read(AbcTune tune) {
        for (AbcElement element : tune.head()) readHead(element);
        for (Field field : voiceFields) chooseVoice(field);
        voiceChosen = false;
        current = voices.values().stream().findFirst();
        for (AbcElement element : tune.body()) {
            try {
                readBody(element);
            } catch (ArithmeticException e) {
                throw TuneReadException.causedBy(e, Reason.TIME_TOO_FINE, report.at(element.place()));
            }
        }
        voices.values().forEach(voice -> voice.bars.finish());
        List<ScorePart> read = new AbcStaves(List.copyOf(voices.values())).parts();
        return new Score(title, dance(read), parts.inOrder(read, report), false, true);
    }

    private Optional<String> dance(List<ScorePart> read) {
        List<String> places = new ArrayList<>(rhythms);
        for (ScorePart part : read)
            for (ScoreMeasure measure :
                    part.measures().subList(0, Math.min(2, part.measures().size())))
                for (ScoreSign sign : measure.signs())
                    if (sign instanceof ScoreSign.Plain plain && plain.mark() instanceof Mark.Words words)
                        places.add(words.text());
        return ScoreHeader.danceIn(places);
    }

    // --- head ------------------------------------------------------------------------------------------------------

    private void readHead(AbcElement element) {
        if (element instanceof AbcElement.Flaw flaw) report.add(flaw);
        if (element instanceof Directive directive) readDirective(directive);
        if (!(element instanceof Field field)) return;
        switch (field.letter()) {
            case 'T' -> {
                if (title.isEmpty())
                    title = AbcEscapes.read(field.text()).strip().replaceAll("[\\s\\p{Cntrl}]+", " ");
            }
            case 'R' -> rhythms.add(AbcEscapes.read(field.text()));
            case 'M' -> meter = readMeter(field).or(() -> meter);
            case 'L' -> unit = readUnit(field).or(() -> unit);
            case 'Q' -> tempo = Optional.of(field);
            case 'P', 'Y' -> parts.order(field.place(), field.text());
            case 'K' -> key = readKey(field).orElse(AbcKey.C_MAJOR);
            case 'V' -> voiceFields.add(field);
            case 'W' -> report.add(field.place(), SkippedWhat.WORDS_BELOW);
            default -> {} // about the tune, not of it
        }
    }

    private Optional<Meter> readMeter(Field field) {
        Optional<Meter> read = AbcMeter.meter(field.text());
        if (read.isEmpty()) report.add(field.place(), SkippedWhat.METER, field.text());
        return read;
    }

    private Optional<MusicalTime> readUnit(Field field) {
        Optional<MusicalTime> read = AbcMeter.unit(field.text());
        if (read.isEmpty()) report.add(field.place(), SkippedWhat.BAD_FIELD, "L:" + field.text());
        return read;
    }

    private Optional<AbcKey> readKey(Field field) {
        Optional<AbcKey> read = AbcKey.read(field.text());
        if (read.isEmpty()) report.add(field.place(), SkippedWhat.KEY, field.text());
        read.filter(found -> !found.exact())
                .ifPresent(found -> report.add(
                        field.place(),
                        SkippedWhat.KEY_SHOWN,
                        field.text(),
                        found.signature().orElseThrow().tonic() + " "
                                + found.signature().orElseThrow().mode().name().toLowerCase(java.util.Locale.ROOT)));
        return read;
    }

    private void readDirective(Directive directive) {
        String text = directive.text();
        switch (directive.name()) {
            case "propagate-accidentals" ->
                reach = switch (text) {
                    case "not" -> AbcPitches.Reach.NOTE;
                    case "octave" -> AbcPitches.Reach.OCTAVE;
                    default -> AbcPitches.Reach.PITCH;
                };
            case "transpose" -> transpose(text, directive);
            case "MIDI" -> {
                if (text.matches("r?transpose\\s.*")) transpose(text.replaceFirst("\\S+\\s+", ""), directive);
                else report.add(directive.place(), SkippedWhat.INSTRUCTION, "MIDI " + text);
            }
            case "abc-include", "percmap", "map", "voicemap", "score-transpose" ->
                report.add(directive.place(), SkippedWhat.INSTRUCTION, directive.name() + " " + text);
            default -> {} // print
        }
        current.ifPresent(this::settle);
    }

    private void transpose(String text, Directive directive) {
        if (text.matches("[+-]?\\d{1,2}")) semitones = Integer.parseInt(text);
        else report.add(directive.place(), SkippedWhat.INSTRUCTION, directive.name() + " " + directive.text());
    }

    private void settle(AbcVoice voice) {
        voice.pitches.reach(reach);
        voice.pitches.semitones(semitones + voice.transpose);
        voice.bars.keyChanged();
    }

    // --- body ------------------------------------------------------------------------------------------------------

    private AbcVoice voice() {
        if (current.isEmpty()) current = Optional.of(voice("1", new TextPlace(1, 1)));
        return current.get();
    }

    private AbcVoice voice(String id, TextPlace place) {
        AbcVoice known = voices.get(id);
        if (known != null) return known;
        if (voices.size() == ReadLimits.PARTS)
            throw TuneReadException.of(Reason.TOO_MANY_PARTS, report.at(place), ReadLimits.PARTS);
        AbcVoice voice = new AbcVoice(id, report);
        voices.put(id, voice);
        meter.ifPresent(voice.bars::meter);
        voice.unit = unit.orElse(AbcMeter.unitFor(meter.orElse(Meter.FREE)));
        take(voice, key);
        if (voices.size() == 1) tempo.ifPresent(field -> readTempo(voice, field));
        return voice;
    }

    private void take(AbcVoice voice, AbcKey read) {
        voice.pitches.take(read);
        take(voice, read.properties());
    }

    private void take(AbcVoice voice, AbcProperties properties) {
        properties.clef().ifPresent(clef -> voice.clef = clef);
        boolean moves = properties.clef().isPresent()
                || properties.value("middle").isPresent()
                || properties.value("octave").isPresent();
        if (moves)
            voice.pitches.octaves(
                    properties.clefOctaves() + properties.number("octave").orElse(0));
        properties.number("transpose").ifPresent(number -> voice.transpose = number);
        properties.value("name").or(() -> properties.value("nm")).ifPresent(name -> voice.name = name);
        settle(voice);
    }

    private void chooseVoice(Field field) {
        String[] words = field.text().split("\\s+", 2);
        if (words[0].isEmpty()) {
            report.add(field.place(), SkippedWhat.BAD_FIELD, "V:");
            return;
        }
        AbcVoice voice = voice(words[0], field.place());
        if (words.length > 1) take(voice, AbcProperties.read(words[1]));
        current = Optional.of(voice);
        voiceChosen = true;
    }

    private void readBody(AbcElement element) {
        if (element instanceof AbcElement.Flaw flaw) report.add(flaw);
        else if (element instanceof Directive directive) readDirective(directive);
        else if (element instanceof Field field) readField(field);
        else readMusic(voice(), element);
    }

    private void readField(Field field) {
        switch (field.letter()) {
            case 'V' -> chooseVoice(field);
            case 'M' ->
                readMeter(field).ifPresent(read -> {
                    voice().bars.meter(read);
                    if (!voiceChosen) meter = Optional.of(read);
                });
            case 'L' ->
                readUnit(field).ifPresent(read -> {
                    voice().unit = read;
                    if (!voiceChosen) unit = Optional.of(read);
                });
            case 'K' ->
                readKey(field).ifPresent(read -> {
                    take(voice(), read);
                    if (!voiceChosen && read.signature().isPresent()) key = read;
                });
            case 'Q' -> readTempo(voice(), field);
            case 'P' -> voice().bars.label(AbcEscapes.read(field.text()));
            case 'Y' -> parts.order(field.place(), field.text());
            case 'w' -> {
                for (int lost = voice().lyrics.lay(field.text()); lost > 0; lost--)
                    report.add(field.place(), SkippedWhat.SYLLABLE);
            }
            case 'W' -> report.add(field.place(), SkippedWhat.WORDS_BELOW);
            case 'd' -> report.add(field.place(), SkippedWhat.INSTRUCTION, field.letter() + ":");
            case 'R' -> rhythms.add(AbcEscapes.read(field.text()));
            default -> {
                if (Character.isLowerCase(field.letter()) && field.letter() != 'r')
                    report.add(field.place(), SkippedWhat.BAD_FIELD, field.letter() + ":" + field.text());
            }
        }
    }

    private void readTempo(AbcVoice voice, Field field) {
        AbcTempo read = AbcTempo.read(field.text(), voice.unit);
        read.words().forEach(voice.pending()::words);
        read.tempo()
                .ifPresent(value ->
                        voice.bars.current().add(onset -> new ScoreSign.Plain(new Mark.TempoChange(onset, value))));
        if (!read.unread().isEmpty()) report.add(field.place(), SkippedWhat.TEMPO, read.unread());
    }

    private void readMusic(AbcVoice voice, AbcElement element) {
        if (element instanceof AbcElement.Note note) {
            count(1, element);
            voice.note(note);
        } else if (element instanceof AbcElement.Chord chord) {
            count(chord.members().size(), element);
            voice.chord(chord);
        } else if (element instanceof AbcElement.Grace grace) {
            count(grace.members().size(), element);
            voice.grace(grace);
        } else if (element instanceof AbcElement.Rest rest) {
            count(1, element);
            voice.rest(rest.length());
        } else if (element instanceof AbcElement.MeasureRest rest) voice.wholeMeasures(rest);
        else if (element instanceof AbcElement.Broken broken) voice.broken(broken);
        else if (element instanceof AbcElement.Tuplet tuplet) voice.tuplet(tuplet);
        else if (element instanceof AbcElement.Tie tie) voice.tie(tie.place());
        else if (element instanceof AbcElement.Slur slur) voice.slur(slur);
        else if (element instanceof AbcElement.Decoration decoration)
            voice.pending().decoration(decoration);
        else if (element instanceof AbcElement.Quoted quoted) voice.pending().text(quoted);
        else if (element instanceof AbcElement.Bar bar) {
            voice.bars.bar(bar);
            voice.lyrics.addBar();
        } else if (element instanceof AbcElement.Ending ending) voice.bars.ending(ending);
        else if (element instanceof AbcElement.Overlay) voice.bars.overlay();
        else if (element instanceof AbcElement.LineEnd) voice.lyrics.endLine();
    }

    private void count(int more, AbcElement element) {
        notes += more;
        if (notes > ReadLimits.NOTES)
            throw TuneReadException.of(Reason.TOO_MANY_NOTES, report.at(element.place()), ReadLimits.NOTES);
    }
}
