package org.mantice.app.command;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.mantice.plugin.Packs;
import org.mantice.plugin.RuleAtWork;

/**
 * Gives up on a tune whose rules do not come back. Only where rules come from jars is there a deadline: our own always
 * end. Java cannot stop an endless loop, so its thread is left behind and dies with the program.
 */
final class RuleWatch {
    private final RuleAtWork rules;
    private final int patienceSeconds;
    private final boolean watching;
    private final Map<TuneJob, Thread> workers = new ConcurrentHashMap<>();

    RuleWatch(Packs packs, int patienceSeconds) {
        this.rules = new RuleAtWork(packs);
        this.patienceSeconds = patienceSeconds;
        this.watching = rules.isWanted();
    }

    /** Called by the thread that works on the tune. */
    void begins(TuneJob job) {
        workers.put(job, Thread.currentThread());
    }

    <T> T await(Future<T> future) throws InterruptedException, ExecutionException, TimeoutException {
        return watching ? future.get(patienceSeconds, TimeUnit.SECONDS) : future.get();
    }

    /** What to say of a tune that was given up: which rule its thread is in, if it is in one. */
    String verdict(TuneJob job) {
        String took = "is not planned after " + patienceSeconds + " s";
        return ruleAtWork(job)
                .map(rule -> "rule " + rule + " does not come back; the tune " + took + "; --without " + rule
                        + " goes on without it")
                .orElse(took + "; --patience gives it more time");
    }

    private Optional<String> ruleAtWork(TuneJob job) {
        return Optional.ofNullable(workers.get(job)).flatMap(rules::in).map(RuleAtWork.Found::ruleId);
    }
}
