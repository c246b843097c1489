package org.mantice.app;

import java.util.Random;

/** MusicXML of our own invention, as long as wanted; the same for the same seed. */
public final class InventedTune {
    private static final String[] SCALE = {"C4", "D4", "E4", "F4", "G4", "A4", "B4", "C5", "D5", "E5", "F5", "G5"};
    private static final String[][] CHORDS = {
        {"C", "major"},
        {"F", "major"},
        {"G", "dominant"},
        {"A", "minor"},
        {"D", "minor"},
        {"E", "dominant"},
        {"G", "major"},
        {"D", "minor-seventh"},
        {"B", "diminished"}
    };

    private final Random random;
    private int step = 4;

    private InventedTune(long seed) {
        random = new Random(seed);
    }

    /** A melody of quarters, eighths and a rest now and then, in 4/4, with one or two chord symbols a measure. */
    public static String musicXml(int measures, long seed) {
        return new InventedTune(seed).write(measures);
    }

    private String write(int measures) {
        StringBuilder xml = new StringBuilder("""
                <?xml version="1.0" encoding="UTF-8"?>
                <score-partwise version="4.0"><work><work-title>The Long Way Round</work-title></work>
                <part-list><score-part id="P1"><part-name>Melody</part-name></score-part></part-list><part id="P1">
                """);
        for (int measure = 1; measure <= measures; measure++) {
            xml.append("<measure number=\"").append(measure).append("\">");
            if (measure == 1)
                xml.append("<attributes><divisions>2</divisions><key><fifths>0</fifths></key>")
                        .append("<time><beats>4</beats><beat-type>4</beat-type></time></attributes>");
            half(xml, true);
            half(xml, random.nextInt(3) == 0);
            xml.append("</measure>\n");
        }
        return xml.append("</part></score-partwise>\n").toString();
    }

    private void half(StringBuilder xml, boolean chord) {
        if (chord) chord(xml);
        for (int left = 4; left > 0; ) {
            int length = left == 4 && random.nextInt(5) == 0 ? 4 : Math.min(left, 1 + random.nextInt(2));
            note(xml, length);
            left -= length;
        }
    }

    private void chord(StringBuilder xml) {
        String[] chord = CHORDS[random.nextInt(CHORDS.length)];
        xml.append("<harmony><root><root-step>")
                .append(chord[0])
                .append("</root-step></root><kind>")
                .append(chord[1])
                .append("</kind></harmony>");
    }

    private void note(StringBuilder xml, int length) {
        step = Math.max(0, Math.min(SCALE.length - 1, step + random.nextInt(7) - 3));
        String pitch = SCALE[step];
        xml.append("<note>");
        if (random.nextInt(14) == 0) xml.append("<rest/>");
        else
            xml.append("<pitch><step>")
                    .append(pitch.charAt(0))
                    .append("</step><octave>")
                    .append(pitch.charAt(1))
                    .append("</octave></pitch>");
        xml.append("<duration>")
                .append(length)
                .append("</duration><voice>1</voice><type>")
                .append(length == 4 ? "half" : length == 2 ? "quarter" : "eighth")
                .append("</type></note>");
    }
}
