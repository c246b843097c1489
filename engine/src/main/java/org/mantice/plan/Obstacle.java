package org.mantice.plan;

import java.util.List;

/**
 * Why there is no playable plan: a result, never an exception.
 *
 * @param code stable, for translation: {@code note-off-keyboard}, {@code locks-contradict} …
 * @param message one plain sentence
 * @param remedies nearest first, each a plain sentence
 */
public record Obstacle(String code, String message, List<String> remedies) {
    public Obstacle {
        remedies = List.copyOf(remedies);
    }
}
