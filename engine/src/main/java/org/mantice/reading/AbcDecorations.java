package org.mantice.reading;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.mantice.reading.ScoreSign.Order;
import org.mantice.tune.Articulation;
import org.mantice.tune.Loudness;
import org.mantice.tune.Mark;
import org.mantice.tune.MusicalTime;

/** What the names of decorations mean (ABC 2.1, section 4.14). */
final class AbcDecorations {
    private static final Map<String, Articulation> TOUCH = Map.ofEntries(
            Map.entry("staccato", Articulation.STACCATO),
            Map.entry("wedge", Articulation.STACCATISSIMO),
            Map.entry("tenuto", Articulation.TENUTO),
            Map.entry("accent", Articulation.ACCENT),
            Map.entry(">", Articulation.ACCENT),
            Map.entry("emphasis", Articulation.ACCENT),
            Map.entry("marcato", Articulation.STRONG_ACCENT),
            Map.entry("^", Articulation.STRONG_ACCENT));

    private static final Map<String, Order.What> ORDER = Map.ofEntries(
            Map.entry("segno", Order.What.SEGNO),
            Map.entry("coda", Order.What.CODA_SIGN),
            Map.entry("dacoda", Order.What.TO_CODA),
            Map.entry("tocoda", Order.What.TO_CODA),
            Map.entry("fine", Order.What.FINE),
            Map.entry("dacapo", Order.What.DA_CAPO));

    /** Nothing but print. */
    private static final Set<String> LAYOUT = Set.of("editorial", "courtesy", "xstem", "beamon", "stemless", "cross");

    private AbcDecorations() {}

    static Optional<Articulation> touch(String name) {
        return Optional.ofNullable(TOUCH.get(name));
    }

    static boolean isFermata(String name) {
        return name.equals("fermata") || name.equals("invertedfermata");
    }

    /** A place to breathe after the note. */
    static boolean isBreath(String name) {
        return name.equals("breath") || name.equals("caesura");
    }

    /** The end of a phrase after the note. */
    static boolean isPhraseEnd(String name) {
        return name.equals("shortphrase") || name.equals("mediumphrase") || name.equals("longphrase");
    }

    static boolean isFinger(String name) {
        return name.matches("[0-5]");
    }

    static boolean isLayout(String name) {
        return LAYOUT.contains(name);
    }

    /** A sign at a place rather than at a note. */
    static Optional<Function<MusicalTime, ScoreSign>> sign(String name) {
        Optional<Order.What> order = order(name);
        if (order.isPresent()) return Optional.of(onset -> new Order(onset, order.get()));
        Optional<Loudness> level = Loudness.ofMark(name);
        if (level.isPresent() && name.equals(name.toLowerCase(Locale.ROOT)))
            return plain(onset -> new Mark.Dynamic(onset, level.get()));
        return switch (name) {
            case "<(", "crescendo(" -> plain(onset -> new Mark.HairpinStart(onset, true));
            case ">(", "diminuendo(" -> plain(onset -> new Mark.HairpinStart(onset, false));
            case "<)", ">)", "crescendo)", "diminuendo)" -> plain(Mark.HairpinEnd::new);
            case "sfz", "sf", "fp", "sfp", "rf", "rfz", "fz" ->
                Optional.of(onset -> new ScoreSign.Unused(onset, Finding.of(SkippedWhat.DYNAMIC, name)));
            default -> Optional.empty();
        };
    }

    private static Optional<Order.What> order(String name) {
        String plain = name.toLowerCase(Locale.ROOT).replaceAll("[ .]", "");
        if (plain.matches("dc(al(fine|coda))?")) return Optional.of(Order.What.DA_CAPO);
        if (plain.matches("ds(al(fine|coda))?|dalsegno")) return Optional.of(Order.What.DAL_SEGNO);
        return Optional.ofNullable(ORDER.get(plain));
    }

    private static Optional<Function<MusicalTime, ScoreSign>> plain(Function<MusicalTime, Mark> mark) {
        return Optional.of(onset -> new ScoreSign.Plain(mark.apply(onset)));
    }
}
