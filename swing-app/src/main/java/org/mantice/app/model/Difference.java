package org.mantice.app.model;

import java.util.List;
import java.util.Optional;
import org.mantice.app.sheet.Spot;
import org.mantice.plan.Decision;

/**
 * A named decision in which the plans compared do not all agree.
 *
 * @param kind what is decided
 * @param spot where; two decisions of different kind may share it
 * @param values one a plan compared, in their order, as {@link Decision#value}; empty where a plan decides nothing there
 */
public record Difference(Decision.Kind kind, Spot spot, List<Optional<String>> values) {
    public Difference {
        values = List.copyOf(values);
    }
}
