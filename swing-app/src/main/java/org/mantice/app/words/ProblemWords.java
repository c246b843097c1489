package org.mantice.app.words;

import java.util.ArrayList;
import java.util.List;
import org.mantice.editing.TuneEditException;
import org.mantice.fault.FilePlace;
import org.mantice.fault.ManticeException;
import org.mantice.fault.TextPlace;
import org.mantice.file.FileWriteException;
import org.mantice.json.JsonFileException;
import org.mantice.layer.RuleFailureException;
import org.mantice.performance.TuneException;
import org.mantice.plan.Obstacle;
import org.mantice.plan.Sentence;
import org.mantice.plugin.RuleStuckException;
import org.mantice.reading.Skipped;
import org.mantice.reading.TuneReadException;
import org.mantice.writing.TuneWriteException;

/** What goes wrong, and what a reader of files left out, in whole sentences of the player's language. */
final class ProblemWords {
    private static final int MOST_MEASURES = 8;

    private final Words words;
    private final EngineWords engine;

    ProblemWords(Words words, EngineWords engine) {
        this.words = words;
        this.engine = engine;
    }

    String trouble(Throwable cause) {
        if (cause instanceof ManticeException ours) return words.text("problems.at", place(ours), sentence(ours));
        if (cause instanceof RuleFailureException failure)
            return words.text("problems.rule", failure.ruleId(), engine.place(failure.place()), detail(failure));
        if (cause instanceof RuleStuckException stuck)
            return words.text("problems.stuck", stuck.ruleId(), stuck.seconds(), stuck.packId());
        if (cause instanceof OutOfMemoryError) return words.text("problems.memory");
        String message = cause.getMessage();
        if (cause instanceof IllegalArgumentException && message != null)
            return words.text("problems.refused", message);
        String kind = cause.getClass().getSimpleName();
        return message == null
                ? words.text("problems.failed-silently", kind)
                : words.text("problems.failed", kind, message);
    }

    private String detail(RuleFailureException failure) {
        String message = String.valueOf(failure.getMessage());
        return engine.said(message.substring(
                message.indexOf(failure.place()) + failure.place().length() + ": ".length()));
    }

    private String sentence(ManticeException ours) {
        Object[] args = ours.args().stream().map(engine::said).toArray();
        if (ours instanceof TuneReadException) return words.text("problems.tune." + ours.code(), args);
        if (ours instanceof JsonFileException) return words.text("problems.json." + ours.code(), args);
        if (ours instanceof TuneEditException) return words.text("problems.edit." + ours.code(), args);
        if (ours instanceof TuneException) return words.text("problems.played." + ours.code(), args);
        if (ours instanceof TuneWriteException) return words.text("problems.write." + ours.code(), args);
        if (ours instanceof FileWriteException) return words.text("problems.write." + ours.code(), args);
        return String.valueOf(ours.getMessage());
    }

    /** As "waltz.mxl, measure 3, line 120". */
    private String place(ManticeException ours) {
        FilePlace place = ours.place();
        List<String> parts = new ArrayList<>();
        parts.add(
                (ours instanceof TuneException || ours instanceof TuneEditException)
                                && place.file().equals("the tune")
                        ? words.text("problems.no-title")
                        : place.file());
        place.measure().ifPresent(number -> parts.add(words.text("problems.measure", number)));
        if (place.line().isPresent())
            parts.add(words.text("problems.line", String.valueOf(place.line().getAsInt())));
        if (place.column().isPresent())
            parts.add(
                    words.text("problems.column", String.valueOf(place.column().getAsInt())));
        return String.join(", ", parts);
    }

    String sentence(Sentence sentence) {
        return words.text(
                "problems.said." + sentence.code(),
                sentence.args().stream().map(engine::said).toArray());
    }

    String obstacle(Obstacle obstacle) {
        return sentence(obstacle.what());
    }

    List<String> remedies(Obstacle obstacle) {
        return obstacle.remedies().stream().map(this::sentence).toList();
    }

    /** As "left out: trill-mark (2; measures 3, 7)". */
    String skipped(Skipped skipped) {
        String kind = words.of("problems", skipped.what().kind());
        String what = words.text(
                "problems.skipped." + skipped.what().name(),
                skipped.args().stream().map(engine::said).toArray());
        List<String> notes = new ArrayList<>();
        if (skipped.count() > 1) notes.add(words.text("problems.times", skipped.count()));
        if (!skipped.measures().isEmpty()) notes.add(measures(skipped.measures()));
        if (!skipped.lines().isEmpty()) notes.add(lines(skipped.lines(), skipped.count()));
        return notes.isEmpty()
                ? words.text("problems.skipped", kind, what)
                : words.text("problems.skipped-with", kind, what, String.join("; ", notes));
    }

    private String lines(List<TextPlace> places, int count) {
        List<String> shown = places.stream()
                .limit(MOST_MEASURES)
                .map(place -> words.text("problems.spot", String.valueOf(place.line()), String.valueOf(place.column())))
                .toList();
        String list = String.join("; ", shown);
        return count > shown.size() ? words.text("problems.more", list, count - shown.size()) : list;
    }

    private String measures(List<String> numbers) {
        String list = String.join(", ", numbers.subList(0, Math.min(MOST_MEASURES, numbers.size())));
        String some =
                numbers.size() == 1 ? words.text("problems.measure", list) : words.text("problems.measures", list);
        return numbers.size() > MOST_MEASURES
                ? words.text("problems.more", some, numbers.size() - MOST_MEASURES)
                : some;
    }
}
