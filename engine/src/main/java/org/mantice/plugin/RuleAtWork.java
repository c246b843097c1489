package org.mantice.plugin;

import java.util.Optional;
import org.mantice.rule.Rule;

/** Finds the rule that a thread is in: of one that does not come back. */
public final class RuleAtWork {
    private final Packs packs;

    public RuleAtWork(Packs packs) {
        this.packs = packs;
    }

    /** Whether there is reason to look: only rules from jars may never come back; our own always end. */
    public boolean isWanted() {
        return packs.packs().stream().anyMatch(Packs.Pack::isFromJar);
    }

    /**
     * A rule and its pack.
     *
     * @param depth of its call on the stack: the same call, if looked at twice, has the same
     */
    public record Found(String ruleId, Packs.Pack pack, int depth) {}

    /** Empty if the thread is in no rule. */
    public Optional<Found> in(Thread thread) {
        StackTraceElement[] frames = thread.getStackTrace();
        for (int i = 0; i < frames.length; i++)
            for (Packs.Pack pack : packs.packs())
                for (Rule<?> rule : pack.provider().rules())
                    if (rule.getClass().getName().equals(frames[i].getClassName()))
                        return Optional.of(new Found(rule.info().id(), pack, frames.length - i));
        return Optional.empty();
    }
}
