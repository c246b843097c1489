package org.mantice.pattern;

import java.util.List;
import org.mantice.tune.MusicalTime;

/**
 * The strokes of a measure or group in order. Only the last may go onward; a run fills the end.
 *
 * @param strokes one to {@value #MOST_STROKES}, each later than the one before
 */
public record Figure(List<Stroke> strokes) {
    public static final int MOST_STROKES = 64;

    public Figure {
        strokes = List.copyOf(strokes);
        if (strokes.isEmpty() || strokes.size() > MOST_STROKES)
            throw new IllegalArgumentException("strokes is " + strokes.size() + " long; allowed: 1 to " + MOST_STROKES);
        if (strokes.get(0).isRun())
            throw new IllegalArgumentException("strokes[0].bass is RUN; allowed: another bass before a run");
        for (int i = 0; i < strokes.size(); i++) {
            Stroke stroke = strokes.get(i);
            if (i > 0 && !strokes.get(i - 1).at().isBefore(stroke.at()))
                throw new IllegalArgumentException("strokes[" + i + "].at is " + stroke.at()
                        + "; allowed: later than the stroke before, which is at "
                        + strokes.get(i - 1).at());
            if (stroke.onward() && i + 1 < strokes.size())
                throw new IllegalArgumentException("strokes[" + i + "].onward is true; allowed: in the last stroke");
            if (i > 0 && strokes.get(i - 1).isRun() && !stroke.isRun())
                throw new IllegalArgumentException(
                        "strokes[" + i + "].part is " + stroke.part() + "; allowed: nothing but the run once it began");
        }
    }

    public boolean hasRun() {
        return strokes.get(strokes.size() - 1).isRun();
    }

    MusicalTime last() {
        return strokes.get(strokes.size() - 1).at();
    }
}
