package org.mantice.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Makes parts of voices: every voice is a part, but the first in a bass clef behind the first other one with notes is
 * its second staff, the written bass.
 */
final class AbcStaves {
    private final List<AbcVoice> voices;

    AbcStaves(List<AbcVoice> voices) {
        this.voices = voices;
    }

    List<ScorePart> parts() {
        Optional<AbcVoice> melody = voices.stream()
                .filter(voice -> !isBass(voice) && hasNotes(voice))
                .findFirst();
        Optional<AbcVoice> bass = melody.flatMap(first -> voices.stream()
                .skip(voices.indexOf(first) + 1L)
                .filter(voice -> isBass(voice) && hasNotes(voice))
                .findFirst());
        List<ScorePart> parts = new ArrayList<>();
        for (AbcVoice voice : voices) {
            if (bass.equals(Optional.of(voice))) continue;
            List<ScoreMeasure> measures = measures(voice, 1);
            if (bass.isPresent() && melody.equals(Optional.of(voice)))
                measures = together(measures, measures(bass.get(), 2));
            if (!measures.isEmpty()) parts.add(new ScorePart(voice.id, voice.name, measures));
        }
        return parts;
    }

    private static boolean isBass(AbcVoice voice) {
        return voice.clef.equals("F");
    }

    private static boolean hasNotes(AbcVoice voice) {
        return voice.bars.measures().stream()
                .anyMatch(measure -> measure.first().stream().anyMatch(item -> !item.isRest()));
    }

    private static List<ScoreMeasure> measures(AbcVoice voice, int staff) {
        List<ScoreMeasure> measures = new ArrayList<>();
        for (AbcMeasure measure : voice.bars.measures())
            measures.add(measure.build(measures.size(), voice.id, staff, voice.clef));
        return measures;
    }

    /** The notes of the lower staff join the measures of the upper one, and its chord symbols where that has none. */
    private static List<ScoreMeasure> together(List<ScoreMeasure> upper, List<ScoreMeasure> lower) {
        boolean symbols = upper.stream().anyMatch(measure -> !measure.chords().isEmpty());
        List<ScoreMeasure> joined = new ArrayList<>();
        for (ScoreMeasure measure : upper) {
            if (measure.index() >= lower.size()) {
                joined.add(measure);
                continue;
            }
            ScoreMeasure below = lower.get(measure.index());
            List<ScoreNote> notes = new ArrayList<>(measure.notes());
            notes.addAll(below.notes());
            List<ScoreSign> signs = new ArrayList<>(measure.signs());
            below.signs().stream()
                    .filter(sign -> !(sign instanceof ScoreSign.Order))
                    .forEach(signs::add);
            Map<Integer, String> clefs = new HashMap<>(measure.clefs());
            clefs.putAll(below.clefs());
            joined.add(new ScoreMeasure(
                    measure.index(),
                    measure.number(),
                    measure.implicit(),
                    measure.key(),
                    measure.meter(),
                    measure.end().max(below.end()),
                    notes,
                    symbols ? measure.chords() : below.chords(),
                    signs,
                    measure.barlines(),
                    clefs,
                    0,
                    measure.findings()));
        }
        return joined;
    }
}
