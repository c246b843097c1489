package org.mantice.app.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.mantice.file.PlanFile;
import org.mantice.plan.Explanation;
import org.mantice.plugin.Packs;
import org.mantice.rule.Fact;

class RuleWordsTest {
    private static final Path PLAN =
            Path.of(System.getProperty("mantice.root", ".."), "examples/plans/lanterns-at-the-weir.plan.json");

    private final Packs packs = Packs.of(Optional.empty());
    private final RuleWords english = new RuleWords(packs.providers(), Locale.ENGLISH);
    private final RuleWords german = new RuleWords(packs.providers(), Locale.GERMANY);

    @Test
    void rulesAndLeaningsAreNamedInTheLanguage() {
        assertThat(english.title("bellows.turns")).isEqualTo("Number of turns");
        assertThat(german.title("bellows.turns")).isEqualTo("Zahl der Balgwechsel");
        assertThat(german.about("left-hand.bass-variety")).contains("wechselt der Bass");
    }

    @Test
    void aLanguageThatNoPackSpeaksIsEnglishWhateverTheSystemSpeaks() {
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.GERMANY);
        try {
            assertThat(new RuleWords(packs.providers(), Locale.FRENCH).title("bellows.turns"))
                    .isEqualTo("Number of turns");
            assertThat(RuleWords.plainEnglish(packs.providers()).title("bellows.turns"))
                    .isEqualTo("Number of turns");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void whatAFactSpeaksOfIsSaidInTheLanguage() {
        Fact fact = Fact.of("left-hand.same-finger.fact", 4, "Eb bass", "G counterbass");
        Fact register = Fact.of("variation.written-pitch.fact", "bassoon");
        Fact fingers = Fact.of("fingering.weak-finger.fact", "F#4+A4", List.of(2, 4));

        assertThat(english.fact("left-hand.same-finger", fact)).isEqualTo("finger 4 from E♭ bass to G counterbass");
        assertThat(german.fact("left-hand.same-finger", fact)).isEqualTo("Finger 4 von E♭-Grundbass zu G-Terzbass");
        assertThat(german.fact("variation.written-pitch", register))
                .isEqualTo("Fagott hat keinen Chor in der notierten Tonhöhe");
        assertThat(german.fact("fingering.weak-finger", fingers)).isEqualTo("F♯4+A4 mit Finger 2, 4");
        assertThat(RuleWords.plainEnglish(packs.providers()).fact("left-hand.same-finger", fact))
                .isEqualTo("finger 4 from Eb bass to G counterbass");
    }

    @Test
    void noFactOfARealPlanKeepsEnglishWords() {
        Explanation tree = PlanFile.read(PLAN).document().explanation();

        SortedSet<String> facts = facts(tree, "", german::fact);

        assertThat(facts).hasSizeGreaterThan(50);
        assertThat(facts)
                .noneMatch(text -> text.matches(
                        ".*\\b(bass|major|minor|seventh|counterbass|with|the|of|finger|and|then|octave|thumb)\\b.*"));
    }

    private static SortedSet<String> facts(Explanation node, String rule, BiFunction<String, Fact, String> words) {
        SortedSet<String> facts = new TreeSet<>();
        for (Fact fact : node.facts()) facts.add(words.apply(rule, fact));
        for (Explanation child : node.children())
            facts.addAll(facts(child, child.place().isEmpty() ? child.key() : rule, words));
        return facts;
    }
}
