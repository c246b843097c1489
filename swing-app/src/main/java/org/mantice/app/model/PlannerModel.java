package org.mantice.app.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.mantice.app.sheet.Reading;
import org.mantice.app.sheet.Strip;
import org.mantice.file.PlanDocument;
import org.mantice.file.PlanFile;
import org.mantice.instrument.Accordion;
import org.mantice.layer.Choice;
import org.mantice.plan.Explanation;
import org.mantice.plan.Lock;
import org.mantice.player.Player;
import org.mantice.player.Taste;
import org.mantice.plugin.Packs;
import org.mantice.rule.Leaning;

/**
 * The planner without a window: holds the one state and changes it. Used by one thread; slow work goes to the {@link
 * Background}, and its results come back on this thread.
 */
public final class PlannerModel {
    private final Packs packs;
    private final Background background;
    private final List<Consumer<PlannerState>> listeners = new ArrayList<>();
    private PlannerState state;

    public PlannerModel(Packs packs, Background background, Setup setup) {
        this.packs = packs;
        this.background = background;
        throw new UnsupportedOperationException("model helper");
    }

    public PlannerState state() {
        return state;
    }

    public Packs packs() {
        return packs;
    }

    /** Told of every change, after it. */
    public void addListener(Consumer<PlannerState> listener) {
        listeners.add(listener);
    }

    public void removeListener(Consumer<PlannerState> listener) {
        listeners.remove(listener);
    }

    /** Plans a tune from scratch: locks, history and choice of the tune before are gone. */
    public void open(OpenTune tune) {}

    /** Goes on with a saved plan: its profiles, settings, locks and rules; the saved plan is shown and chosen first. */
    public void reopen(OpenTune tune, PlanDocument saved) {}

    public void setAccordion(Accordion accordion) {}

    /** The player with the weights of the profile. */
    public void setPlayer(Player player) {}

    public void setWishes(Wishes wishes) {}

    /** Adds a lock, in place of one on the same decision. */
    public void lock(Lock lock) {}

    public void free(Lock lock) {}

    public void freeAll() {}

    /** Locks a choice for the pass it speaks of, or for every pass. */
    public void set(Choice choice, boolean everyPass) {}

    public void setTaste(Taste taste) {}

    /** Takes over the weights of a leaning; rules that it does not name keep theirs. */
    public void lean(Leaning leaning) {}

    /** Stops the planning; what was found stays. */
    public void stop() {}

    public void planAgain() {}

    /** Goes on without a rule that failed. */
    public void planWithout(String ruleId) {}

    /** Shows these offers side by side; one to four. */
    public void compare(List<Integer> offers) {}

    public void choose(int offer) {}

    public void select(Optional<Selection> selection) {}

    /** The next difference after the one stepped to, round to the first; selects its place. */
    public void nextDifference() {}

    public void previousDifference() {}

    public void stepTo(int difference) {}

    public void setReading(Reading reading) {}

    public void show(Strip strip, boolean shown) {}

    public void undo() {}

    public void redo() {}

    /** Tells that the present decisions are on disk. */
    public void saved() {}

    /** The whole tree of an offer, in the background. */
    public void explain(int offer, Consumer<Explanation> explained) {}

    /** The tree of one offer minus that of another, in the background. */
    public void explainDifference(int offer, int against, Consumer<Explanation> explained) {}

    /** The chosen plan as a file, byte for byte as the command line writes it; in the background. */
    public void planFile(Consumer<PlanFile> made) {}
}
