package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mantice.tune.Mark;

/** Reads the title and the dance out of what stands before and over the first notes. */
final class ScoreHeader {
    /** Dances that a source may name, in several spellings; common practice, no source. */
    private static final Pattern DANCE = Pattern.compile(
            "\\b((slow|english|viennese|musette|langsamer|wiener) (waltz|walzer)|valse (lente|musette)|waltz|walzer|"
                    + "valse|vals|valzer|mazurka|masurka|mazur|l\u00e4ndler|landler|redowa|varsovienne|polka|polca|"
                    + "schottische?|rheinl\u00e4nder|chotis|galop|gallop|one-?step|march|marche|marsch|marcia|slip jig|"
                    + "jig|gigue|giga|reel|hornpipe|strathspey|tango|habanera|paso ?doble|slow ?fox(trot)?|"
                    + "fox[- ]?trot|quickstep|rumba|beguine|bolero|bol\u00e9ro|cha[- ]cha|samba|bossa( nova)?|swing|"
                    + "blues|minuet|menuett?|polonaise|slow air|lament|lullaby|berceuse|cradle song|barcarolle|hymn|"
                    + "carol|chorale|ballade?|tarantella|rag|ragtime)\\b",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS);

    private String workTitle = "";
    private String movementTitle = "";
    private String creditTitle = "";
    private final List<String> styles = new ArrayList<>();
    private final List<String> software = new ArrayList<>();
    private Optional<String> dance = Optional.empty();

    void read(XmlNode block) {
        switch (block.name()) {
            case "work" -> workTitle = block.text("work-title");
            case "movement-title" -> movementTitle = block.text();
            case "credit" -> readCredit(block);
            case "identification" -> readIdentification(block);
            default -> {} // layout
        }
    }

    private void readIdentification(XmlNode block) {
        block.children("encoding")
                .flatMap(node -> node.children("software"))
                .forEach(node -> software.add(node.text()));
        block.children("miscellaneous")
                .flatMap(node -> node.children("miscellaneous-field"))
                .filter(field -> field.attribute("name").matches("(?i)genre|style|rhythm|dance"))
                .forEach(field -> {
                    styles.add(field.text());
                    if (field.attribute("name").equals("dance")) dance = Optional.of(field.text());
                });
    }

    /** Our own writer made the file, and no other program has changed it since: each puts its own name there. */
    boolean isVerbatim() {
        return software.equals(List.of("Mantice"));
    }

    private void readCredit(XmlNode credit) {
        String type = credit.text("credit-type");
        String words = credit.text("credit-words");
        if (type.equals("title") && creditTitle.isEmpty()) creditTitle = words;
        if (!type.matches("title|composer|lyricist|arranger|rights|page number|part name")) styles.add(words);
    }

    /** One line; the movement's own title before the work's. */
    String title() {
        String title = !movementTitle.isBlank() ? movementTitle : !workTitle.isBlank() ? workTitle : creditTitle;
        return title.strip().replaceAll("[\\s\\p{Cntrl}]+", " ");
    }

    /** Named in words over the first measures or in the head; a title alone may mislead ("Swing ..."). */
    Optional<String> dance(List<ScorePart> parts) {
        if (isVerbatim()) return dance;
        List<String> places = new ArrayList<>();
        for (ScorePart part : parts)
            part.measures().stream()
                    .limit(2)
                    .flatMap(measure -> measure.signs().stream())
                    .forEach(sign -> {
                        if (sign instanceof ScoreSign.Plain plain && plain.mark() instanceof Mark.Words words)
                            places.add(words.text());
                    });
        places.addAll(styles);
        return danceIn(places);
    }

    /** The first dance that one of the texts names. */
    static Optional<String> danceIn(List<String> places) {
        for (String text : places) {
            Matcher matcher = DANCE.matcher(text);
            if (matcher.find())
                return Optional.of(matcher.group(1).toLowerCase(Locale.ROOT).replace('\u00e9', 'e'));
        }
        return Optional.empty();
    }
}
