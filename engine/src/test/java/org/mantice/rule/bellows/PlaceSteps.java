package org.mantice.rule.bellows;

import org.mantice.rule.TurnPlace;
import org.mantice.rule.TurnPlace.Jump;
import org.mantice.rule.TurnPlace.Mark;
import org.mantice.rule.TurnPlace.Pickup;
import org.mantice.rule.TurnPlace.Strength;

/** A plain place, changed fact by fact. */
final class PlaceSteps {
    Mark mark = Mark.NONE;
    Strength strength = Strength.OFF_BEAT;
    Pickup pickup = Pickup.NONE;
    int measureOfSection = -1;
    boolean slurred;
    boolean endsSlur;
    boolean detached;
    boolean repeatedNote;
    boolean heldChord;
    Jump jump = Jump.NONE;
    int restMillis;
    int gapMillis;
    int beforeMillis = 500;
    int afterMillis = 500;

    TurnPlace step() {
        return new TurnPlace(
                mark,
                strength,
                pickup,
                measureOfSection,
                slurred,
                endsSlur,
                detached,
                repeatedNote,
                false,
                heldChord,
                jump,
                restMillis,
                gapMillis,
                beforeMillis,
                afterMillis,
                500,
                50);
    }

    static TurnPlace plain() {
        return new PlaceSteps().step();
    }

    static TurnPlace atBarline(int measureOfSection) {
        PlaceSteps steps = new PlaceSteps();
        steps.strength = Strength.BARLINE;
        steps.measureOfSection = measureOfSection;
        return steps.step();
    }

    static TurnPlace marked(Mark mark) {
        PlaceSteps steps = new PlaceSteps();
        steps.mark = mark;
        return steps.step();
    }

    static TurnPlace pickup(Pickup pickup) {
        PlaceSteps steps = new PlaceSteps();
        steps.pickup = pickup;
        steps.strength = pickup == Pickup.AFTER ? Strength.BARLINE : Strength.BEAT;
        return steps.step();
    }

    static TurnPlace jump(Jump jump) {
        PlaceSteps steps = new PlaceSteps();
        steps.jump = jump;
        return steps.step();
    }

    static TurnPlace rest(int millis) {
        PlaceSteps steps = new PlaceSteps();
        steps.restMillis = millis;
        steps.gapMillis = millis;
        return steps.step();
    }

    static TurnPlace betweenPasses() {
        PlaceSteps steps = new PlaceSteps();
        steps.mark = Mark.PASS;
        steps.restMillis = 300;
        steps.gapMillis = 300;
        return steps.step();
    }

    static TurnPlace after(int beforeMillis, int afterMillis) {
        PlaceSteps steps = new PlaceSteps();
        steps.beforeMillis = beforeMillis;
        steps.afterMillis = afterMillis;
        return steps.step();
    }

    static TurnPlace slurred() {
        PlaceSteps steps = new PlaceSteps();
        steps.slurred = true;
        return steps.step();
    }

    static TurnPlace separate() {
        PlaceSteps steps = new PlaceSteps();
        steps.repeatedNote = true;
        return steps.step();
    }
}
