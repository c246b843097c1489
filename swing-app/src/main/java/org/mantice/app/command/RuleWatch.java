package org.mantice.app.command;

import java.nio.file.Path;
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
    private final Map<Path, Thread> workers = new ConcurrentHashMap<>();

    RuleWatch(Packs packs, int patienceSeconds) {
        this.rules = new RuleAtWork(packs);
        this.patienceSeconds = patienceSeconds;
        this.watching = rules.isWanted();
    }

    /** Called by the thread that works on the file. */
    void begins(Path file) {
        workers.put(file, Thread.currentThread());
    }

    <T> T await(Path file, Future<T> future) throws InterruptedException, ExecutionException, TimeoutException {
        return watching ? future.get(patienceSeconds, TimeUnit.SECONDS) : future.get();
    }

    /** What to say of a file that was given up: which rule its thread is in, if it is in one. */
    String verdict(Path file) {
        String took = "is not planned after " + patienceSeconds + " s";
        return ruleAtWork(file)
                .map(rule -> "rule " + rule + " does not come back; the tune " + took + "; --without " + rule
                        + " goes on without it")
                .orElse(took + "; --patience gives it more time");
    }

    private Optional<String> ruleAtWork(Path file) {
        return Optional.ofNullable(workers.get(file)).flatMap(rules::in).map(RuleAtWork.Found::ruleId);
    }
}
