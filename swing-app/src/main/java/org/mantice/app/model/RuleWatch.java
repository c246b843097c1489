package org.mantice.app.model;

import java.time.Duration;
import java.util.Optional;
import java.util.function.Consumer;
import org.mantice.plugin.Packs;
import org.mantice.plugin.RuleAtWork;
import org.mantice.plugin.RuleStuckException;

/**
 * Notices rules from jars that do not come back. Looks when the time is up, and twice more a second later: only a rule
 * found in the same call each time is given up.
 */
final class RuleWatch {
    private static final int LOOKS = 3;
    private static final Duration BETWEEN = Duration.ofSeconds(1);

    private final RuleAtWork rules;
    private final Background background;
    private final int patienceSeconds;
    private final Consumer<RuleStuckException> stuck;

    /** @param stuck told of a rule that does not come back, on the asking thread */
    RuleWatch(Packs packs, Background background, int patienceSeconds, Consumer<RuleStuckException> stuck) {
        this.rules = new RuleAtWork(packs);
        this.background = background;
        this.patienceSeconds = patienceSeconds;
        this.stuck = stuck;
    }

    /** Watches over one piece of work from now on; over nothing where no rule comes from a jar. */
    Guard guard() {
        Guard guard = new Guard();
        if (rules.isWanted()) guard.look(Duration.ofSeconds(patienceSeconds));
        return guard;
    }

    /** Watches until the work ends, even if nobody waits for it any more: other work may wait behind it. */
    final class Guard {
        private volatile Optional<Thread> worker = Optional.empty();
        private volatile boolean ended;
        private Optional<RuleAtWork.Found> seen = Optional.empty();
        private boolean dismissed;
        private int looks;

        /** Called by the thread that does the work. */
        void begin() {
            worker = Optional.of(Thread.currentThread());
        }

        /** Called by the thread that did the work. */
        void end() {
            ended = true;
        }

        /** The work is not wanted any more; if it has not begun it never will. */
        void dismiss() {
            dismissed = true;
        }

        private void look(Duration wait) {
            background.later(wait, this::look);
        }

        private void look() {
            if (ended || dismissed && worker.isEmpty()) return;
            Optional<RuleAtWork.Found> now =
                    worker.flatMap(rules::in).filter(found -> found.pack().isFromJar());
            looks = now.isPresent() && now.equals(seen) ? looks + 1 : 1;
            seen = now;
            if (now.isEmpty()) look(Duration.ofSeconds(patienceSeconds));
            else if (looks < LOOKS) look(BETWEEN);
            else {
                ended = true;
                stuck.accept(new RuleStuckException(
                        now.get().ruleId(), now.get().pack().provider().id(), patienceSeconds));
            }
        }
    }
}
