package org.mantice.instrument;

import java.util.List;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;

/**
 * A symbol, its tones and what players usually take for it.
 *
 * @param isChanged whether degrees make it none of the known kinds; the recipes are then those of the plain kind
 */
record AskedChord(ChordSymbol symbol, ChordTones tones, List<ChordRecipe> recipes, boolean isChanged) {
    static AskedChord of(ChordSymbol symbol) {
        ChordTones tones = ChordTones.of(symbol);
        boolean isChanged = tones.kind() == ChordKind.OTHER && symbol.kind() != ChordKind.OTHER;
        return new AskedChord(symbol, tones, ChordRecipe.usual(isChanged ? symbol.kind() : tones.kind()), isChanged);
    }

    /** Whether players take the recipe of this rank of their own accord, not for want of another. */
    boolean isUsual(int rank) {
        return !isChanged && rank < recipes.size() && !recipes.get(rank).onlyElse();
    }

    /** Whether players have a usual chord button for it. */
    boolean hasUsualButtons() {
        return !isChanged && recipes.stream().anyMatch(recipe -> !recipe.keys().isEmpty());
    }
}
