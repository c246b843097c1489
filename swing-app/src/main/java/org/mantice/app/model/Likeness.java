package org.mantice.app.model;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.BiPredicate;
import org.mantice.plan.Plan;

/** Whether two plans decide the same, whatever they are called and whatever their decisions cost. */
final class Likeness {
    private Likeness() {}

    /** Measures count as played: a turn in another playing of the same place is another turn. */
    static boolean same(Plan one, Plan other) {
        if (one == other) return true;
        return one.variation().passes().equals(other.variation().passes())
                && all(
                        one.bellows().strokes(),
                        other.bellows().strokes(),
                        (a, b) -> a.measure() == b.measure()
                                && a.place().equals(b.place())
                                && a.direction() == b.direction())
                && all(
                        one.leftHand().events(),
                        other.leftHand().events(),
                        (a, b) -> a.measure() == b.measure()
                                && a.place().equals(b.place())
                                && a.buttons().equals(b.buttons()))
                && all(
                        one.rightHand().events(),
                        other.rightHand().events(),
                        (a, b) -> a.place().equals(b.place())
                                && a.fingers().equals(b.fingers())
                                && a.handPlace() == b.handPlace());
    }

    private static <E> boolean all(List<E> one, List<E> other, BiPredicate<E, E> same) {
        if (one.size() != other.size()) return false;
        for (int i = 0; i < one.size(); i++) if (!same.test(one.get(i), other.get(i))) return false;
        return true;
    }

    /** Index of the first offer that decides the same. */
    static OptionalInt find(List<Offer> offers, Plan plan) {
        for (int i = 0; i < offers.size(); i++) if (same(offers.get(i).plan(), plan)) return OptionalInt.of(i);
        return OptionalInt.empty();
    }
}
