package org.mantice.app.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.NumberFormat;
import java.util.Optional;
import org.mantice.instrument.Accordion;
import org.mantice.performance.Performance;
import org.mantice.plan.Decision;
import org.mantice.plan.Lock;
import org.mantice.plan.Obstacle;
import org.mantice.tune.WrittenPlace;

/** Places, decisions, costs and troubles in the player's language. */
public final class MusicWords {
    private final Words words;

    public MusicWords(Words words) {
        this.words = words;
    }

    /** As "pass 1, measure 3, beat 2". @param measure index of the played measure */
    public String place(Performance performance, int measure, WrittenPlace place) {
        return org.mantice.layer.Places.words(performance, performance.measures().get(measure), place);
    }

    /** The place of an explanation's leaf, which the engine gives in English in one stable form. */
    public String place(String engineWords) {
        return engineWords;
    }

    public String kind(Decision.Kind kind) {
        return kind.name();
    }

    /** A decision's value, as "out", "3", "C bass + C major", the name of a register switch. */
    public String value(Decision.Kind kind, String value, Accordion accordion) {
        return value;
    }

    public String lock(Lock lock, Performance performance, Accordion accordion) {
        return lock.words(place -> org.mantice.layer.Places.words(performance.tune(), place));
    }

    public String obstacle(Obstacle obstacle) {
        return obstacle.message();
    }

    /** Any failure as one sentence for the player; our own by code, others in general words. */
    public String trouble(Throwable cause) {
        return Optional.ofNullable(cause.getMessage()).orElse(cause.toString());
    }

    /** Micropoints as ordinary position changes, two decimals, as the language writes numbers. */
    public String cost(long micropoints) {
        NumberFormat format = NumberFormat.getNumberInstance(words.locale());
        format.setMinimumFractionDigits(2);
        format.setMaximumFractionDigits(2);
        return format.format(BigDecimal.valueOf(micropoints, 6).setScale(2, RoundingMode.HALF_UP));
    }
}
