package org.mantice.rule;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What a rule says of itself.
 *
 * @param id two or more parts joined by dots, each of lower-case letters, digits and hyphens; unique among all packs;
 *     also the key of its title ({@code <id>.title}) and text in the provider's bundle
 * @param ruleSet the family it belongs to
 * @param source where its numbers come from: a published source, "common practice, no source" or "estimate"
 * @param banGivesWay how its bans give way; empty if the rule never bans
 */
public record RuleInfo(String id, RuleSet ruleSet, String source, Optional<GiveWay> banGivesWay) {
    private static final Pattern ID = Pattern.compile("[a-z][a-z0-9-]*(\\.[a-z0-9-]+)+");

    public RuleInfo {
        if (!ID.matcher(id).matches())
            throw new IllegalArgumentException("id is \"" + id + "\"; allowed: " + ID.pattern());
        if (source.isBlank())
            throw new IllegalArgumentException("source is blank; allowed: where the numbers come from");
    }

    public static RuleInfo of(String id, RuleSet ruleSet, String source) {
        return new RuleInfo(id, ruleSet, source, Optional.empty());
    }
}
