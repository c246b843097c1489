package org.mantice.tune;

import java.util.Optional;

/** Loudness marks from softest to loudest. */
public enum Loudness {
    PPP,
    PP,
    P,
    MP,
    MF,
    F,
    FF,
    FFF;

    /** Reads {@code "mf"} and the like; longer chains than three count as three. */
    public static Optional<Loudness> ofMark(String mark) {
        String text = mark.matches("p{4,}") ? "ppp" : mark.matches("f{4,}") ? "fff" : mark;
        for (Loudness level : values()) if (level.name().equalsIgnoreCase(text)) return Optional.of(level);
        return Optional.empty();
    }
}
