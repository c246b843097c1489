package org.mantice.player;

import java.util.List;
import java.util.Optional;

/**
 * Ready-made players by size of hand. A hand reaches more keys of an accordion than of a piano: one that just takes a
 * piano's octave (165.1 mm from key to key) reaches 8.1 accordion keys of 20.375 mm onward, a ninth or 91 tenths as
 * counted here. The three spans are estimates.
 */
public final class PlayerPresets {
    private static final List<Player> ALL = List.of(
            hand("small-hand", "Small hand", 80, BassMethod.THREE_TWO),
            hand("medium-hand", "Medium hand", 95, BassMethod.FOUR_THREE_TWO),
            hand("large-hand", "Large hand", 110, BassMethod.FOUR_THREE_TWO));

    private PlayerPresets() {}

    /** All presets from small to large. */
    public static List<Player> all() {
        return ALL;
    }

    public static Optional<Player> find(String id) {
        return ALL.stream().filter(player -> player.id().equals(id)).findFirst();
    }

    /** The preset of an id; an unknown one is refused with the list of those that there are. */
    public static Player get(String id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException("player preset is '" + id + "'; allowed: "
                + String.join(", ", ALL.stream().map(Player::id).toList())));
    }

    private static Player hand(String id, String name, int spanTenths, BassMethod method) {
        return new Player(id, name, spanTenths, method, Jumps.ESTIMATE, false, Taste.PLAIN);
    }
}
