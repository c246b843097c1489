package org.mantice.layer.bellows;

import org.mantice.rule.TurnPlace;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/**
 * A place where a stroke may begin or end. The first is the start and the last the end of the performance; between them
 * the bellows may turn.
 *
 * @param measure index of the played measure
 * @param pass from 1
 * @param place in the written music; the turn is just before what is written there
 * @param onset from the start of the performance
 * @param micros the same in microseconds
 * @param microBeats felt beats from the start in millionths, for lengths of strokes; where a pickup begins, those of the
 *     barline that it leads to, so that phrases with and without a pickup count alike
 * @param measureHalfBeats length of the measure in halves of its felt beat
 * @param facts what rules may know; of no meaning at the start and the end
 */
record Candidate(
        int measure,
        int pass,
        WrittenPlace place,
        MusicalTime onset,
        long micros,
        long microBeats,
        int measureHalfBeats,
        TurnPlace facts) {}
