package org.mantice.reading;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.mantice.tune.Articulation;
import org.mantice.tune.BellowsEffect;
import org.mantice.tune.Lyric;
import org.mantice.tune.Mark;
import org.mantice.tune.MusicalTime;

/** Reads what is written at one note: notations and lyrics. */
final class NotationsReader {
    /** What our own files write at a note that another one before it needs to show its length. */
    private static final String SAME_EVENT = "same event";

    private final MusicalTime onset;
    private final List<Finding> findings;
    private final List<Integer> fingers = new ArrayList<>();
    private final List<XmlNode> slurs = new ArrayList<>();
    private final Set<Articulation> articulations = EnumSet.noneOf(Articulation.class);
    private final List<Mark> dynamics = new ArrayList<>();
    private Optional<BellowsEffect> effect = Optional.empty();
    private boolean breathAfter;
    private boolean fermata;
    private boolean sameEvent;

    NotationsReader(MusicalTime onset, List<Finding> findings) {
        this.onset = onset;
        this.findings = findings;
    }

    NoteMarks read(XmlNode note) {
        note.children("notations").flatMap(node -> node.children().stream()).forEach(this::readNotation);
        return new NoteMarks(
                NoteReader.slurNumbers(slurs, "start"),
                NoteReader.slurNumbers(slurs, "stop"),
                articulations,
                breathAfter,
                fermata,
                lyrics(note),
                effect,
                List.copyOf(dynamics),
                isUnderlined(note),
                sameEvent);
    }

    /** Fingers 1 to 5 in the order they are written. */
    List<Integer> fingers() {
        return List.copyOf(fingers);
    }

    private void readNotation(XmlNode node) {
        switch (node.name()) {
            case "tied", "tuplet", "accidental-mark" -> {} // read elsewhere or display only
            case "other-notation" -> {
                if (node.text().equals(SAME_EVENT)) sameEvent = true;
                else readOther(node);
            }
            case "slur" -> slurs.add(node);
            case "articulations" -> node.children().forEach(this::readArticulation);
            case "technical" -> node.children().forEach(this::readTechnical);
            case "ornaments" -> node.children().forEach(this::readOrnament);
            case "dynamics" ->
                new DirectionReader(onset, 1, true).readDynamics(node).forEach(sign -> {
                    if (sign instanceof ScoreSign.Plain plain) dynamics.add(plain.mark());
                    if (sign instanceof ScoreSign.Unused unused) findings.add(unused.finding());
                });
            case "fermata" -> fermata = true;
            default -> readOther(node);
        }
    }

    private void readArticulation(XmlNode node) {
        if (node.is("breath-mark") || node.is("caesura")) {
            breathAfter = true;
            return;
        }
        String name = node.name().toUpperCase(Locale.ROOT).replace('-', '_');
        for (Articulation articulation : Articulation.values())
            if (articulation.name().equals(name)) {
                articulations.add(articulation);
                return;
            }
        readOther(node);
    }

    private void readTechnical(XmlNode node) {
        if (node.is("fingering")) readFingering(node);
        else readOther(node);
    }

    private void readOrnament(XmlNode node) {
        if (!node.is("accidental-mark")) readOther(node);
    }

    private void readFingering(XmlNode node) {
        String text = node.text();
        if (node.attribute("alternate").equals("yes") || !text.matches("[1-5]([\\s,;/\u2013\u2014-]*[1-5])*")) {
            findings.add(Finding.of(SkippedWhat.FINGERING, text));
            return;
        }
        text.chars().filter(Character::isDigit).forEach(digit -> fingers.add(digit - '0'));
    }

    /** Bellows effects have no element of their own; SMuFL glyph names or words say them. */
    private void readOther(XmlNode node) {
        String said = node.attribute("smufl") + " " + node.text();
        Optional<BellowsEffect> named = DirectionWords.effect(said);
        if (named.isPresent()) effect = named;
        else {
            String what = node.name().startsWith("other-") && !said.isBlank() ? said.strip() : node.name();
            findings.add(Finding.of(SkippedWhat.NOTE_MARK, what));
        }
    }

    /** MusicXML 4.0, number-of-lines: 1 to 3 lines. */
    private static boolean isUnderlined(XmlNode note) {
        return note.children("lyric")
                .flatMap(lyric -> lyric.children("text"))
                .anyMatch(text -> text.attribute("underline").matches("[1-3]"));
    }

    private List<Lyric> lyrics(XmlNode note) {
        List<Lyric> lyrics = new ArrayList<>();
        for (XmlNode lyric : note.children("lyric").toList()) {
            String text = lyric.children("text")
                    .map(XmlNode::rawText)
                    .collect(Collectors.joining(" "))
                    .strip();
            if (text.isEmpty()) continue;
            if (!lyric.attribute("time-only").isEmpty())
                findings.add(Finding.of(SkippedWhat.ONLY_IN_PASS, "a syllable"));
            List<String> syllabic =
                    lyric.children("syllabic").map(XmlNode::text).toList();
            String last = syllabic.isEmpty() ? "single" : syllabic.get(syllabic.size() - 1);
            boolean goesOn = last.equals("begin") || last.equals("middle");
            int verse = Numbers.integer(lyric.attribute("number"), lyrics.size() + 1);
            lyrics.add(new Lyric(Math.max(1, verse), text, !goesOn));
        }
        return lyrics;
    }
}
