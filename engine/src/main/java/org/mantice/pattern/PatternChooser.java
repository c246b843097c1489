package org.mantice.pattern;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.mantice.pattern.Accompaniment.Choice;
import org.mantice.pattern.Accompaniment.Hand;
import org.mantice.pattern.PatternUse.Why;
import org.mantice.tune.Meter;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;
import org.mantice.tune.TuneWords;

/**
 * Which pattern is played where. The player's choice comes first, where it fits the meter; else a written bass staff is
 * played as it stands. Where there is none, the first pattern in the shipped order that fits meter and tempo and bears the name of the tune's dance, from the header or the title; else the
 * first that is usual for the meter at that tempo. The tempo is that of the start, so that no pattern changes in mid-tune
 * because of a rallentando.
 */
public final class PatternChooser {
    private final Tune tune;
    private final Tempo tempo;
    private final Accompaniment asked;
    private final boolean staff;
    private final Map<Meter, PatternUse> assumed = new HashMap<>();

    /** @param tempo at the start */
    public PatternChooser(Tune tune, Tempo tempo, Accompaniment asked) {
        this.tune = tune;
        this.tempo = tempo;
        this.asked = asked;
        this.staff = tune.measures().stream()
                .flatMap(measure -> measure.bass().stream())
                .anyMatch(event -> !event.pitches().isEmpty());
    }

    /**
     * What is played in a measure.
     *
     * @param measure index of the written measure
     * @param pass from 1
     */
    public PatternUse at(int measure, int pass) {
        Meter meter = tune.measure(measure).meter();
        Hand hand = Hand.FULL;
        Optional<BassPattern> chosen = Optional.empty();
        for (Choice choice : asked.choices()) {
            if (!choice.speaksOf(measure, pass)) continue;
            hand = choice.hand().orElse(hand);
            Optional<BassPattern> named = choice.pattern().flatMap(asked::find).filter(pattern -> pattern.fit()
                    .fits(meter));
            if (named.isPresent()) chosen = named;
        }
        Hand played = hand;
        return chosen.map(pattern -> new PatternUse(pattern, played, Why.CHOSEN))
                .orElseGet(() -> {
                    PatternUse usual = assumed.computeIfAbsent(meter, this::assumed);
                    return new PatternUse(usual.pattern(), played, staff ? Why.WRITTEN : usual.why());
                });
    }

    private PatternUse assumed(Meter meter) {
        for (String text : List.of(tune.dance().orElse(""), tune.title())) {
            Optional<BassPattern> danced =
                    first(meter, pattern -> TuneWords.name(text, pattern.fit().dances()));
            if (danced.isPresent()) return new PatternUse(danced.get(), Hand.FULL, Why.DANCE);
        }
        BassPattern usual = first(meter, pattern -> pattern.fit().isUsualFor(meter))
                .orElseThrow(() -> new IllegalStateException("no shipped pattern is usual for " + meter));
        return new PatternUse(usual, Hand.FULL, Why.METER);
    }

    private Optional<BassPattern> first(Meter meter, Predicate<BassPattern> asks) {
        return BassPatterns.shipped().stream()
                .filter(pattern -> pattern.fit().fits(meter))
                .filter(pattern -> pattern.fit().fits(meter, tempo))
                .filter(asks)
                .findFirst();
    }
}
