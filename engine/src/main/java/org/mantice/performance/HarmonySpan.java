package org.mantice.performance;

import java.util.Optional;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.WrittenPlace;

/**
 * How long a chord holds, cut at every played measure.
 *
 * @param index in order of play, from 0
 * @param measure index of the played measure
 * @param place where it begins in the written music
 * @param chord empty before the first chord symbol
 */
public record HarmonySpan(
        int index,
        int measure,
        WrittenPlace place,
        MusicalTime start,
        MusicalTime end,
        long startMicros,
        long endMicros,
        Optional<ChordSymbol> chord) {}
