package org.mantice.plan;

import java.util.List;

/**
 * Why there is no playable plan: a result, never an exception.
 *
 * @param code the kind of obstacle, stable: {@code note-off-keyboard}, {@code locks-contradict} …
 * @param what one plain sentence; its own code tells apart how an obstacle of one kind is said
 * @param remedies nearest first
 */
public record Obstacle(String code, Sentence what, List<Sentence> remedies) {
    public Obstacle {
        remedies = List.copyOf(remedies);
    }

    /** An obstacle that is said in one way only: its sentence has the same code. */
    public static Obstacle of(Sentence what, List<Sentence> remedies) {
        return new Obstacle(what.code(), what, remedies);
    }

    /** The sentence in plain English. */
    public String message() {
        return what.english();
    }
}
