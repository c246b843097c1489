package org.mantice.performance;

import java.util.List;
import java.util.Optional;
import org.mantice.tune.Meter;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tempo;
import org.mantice.tune.Tune;
import org.mantice.tune.TuneWords;

/**
 * Tempos by dance and meter, in felt beats a minute. Every number is an estimate: common practice, no source. More
 * particular names stand before plainer ones ("slow waltz" before "waltz").
 */
final class DanceTempos {
    /** @param meters where the tempo holds; empty for any; counted in felt beats of the meter */
    private record Entry(List<String> names, List<String> meters, int beatsPerMinute) {}

    private static final List<Entry> DANCES = List.of(
            entry("3/4", 90, "slow waltz", "english waltz", "langsamer walzer", "valse lente"),
            entry("3/4", 186, "musette waltz", "valse musette", "viennese waltz", "wiener walzer"),
            entry("3/8", 180, "waltz", "walzer", "valse", "vals", "valzer"),
            entry("6/8", 60, "waltz", "walzer", "valse", "vals", "valzer"),
            entry("", 156, "waltz", "walzer", "valse", "vals", "valzer"),
            entry("3/4", 126, "mazurka", "masurka", "mazur"),
            entry("", 132, "ländler", "landler", "redowa", "varsovienne"),
            entry("4/4", 208, "polka", "polca"),
            entry("", 108, "polka", "polca"),
            entry("4/4", 152, "schottische", "schottisch", "rheinländer", "chotis", "scottish"),
            entry("", 76, "schottische", "schottisch", "rheinländer", "chotis", "scottish"),
            entry("2/4", 132, "galop", "gallop", "one-step", "onestep"),
            entry("", 112, "march", "marche", "marsch", "marcia", "marcha"),
            entry("9/8", 116, "slip jig"),
            entry("", 116, "jig", "gigue", "giga"),
            entry("4/4", 192, "reel"),
            entry("", 104, "reel"),
            entry("4/4", 160, "hornpipe"),
            entry("", 80, "hornpipe"),
            entry("4/4", 120, "strathspey"),
            entry("2/4", 62, "tango"),
            entry("", 120, "tango"),
            entry("2/4", 66, "habanera"),
            entry("", 116, "paso doble", "pasodoble"),
            entry("2/2", 60, "slowfox", "slow fox", "slow foxtrot"),
            entry("", 114, "slowfox", "slow fox", "slow foxtrot"),
            entry("2/2", 66, "foxtrot", "fox-trot", "fox trot"),
            entry("", 126, "foxtrot", "fox-trot", "fox trot"),
            entry("2/2", 100, "quickstep"),
            entry("", 200, "quickstep"),
            entry("", 106, "rumba", "beguine", "bolero"),
            entry("", 120, "cha-cha", "cha cha"),
            entry("", 100, "samba"),
            entry("", 130, "bossa nova", "bossa"),
            entry("", 140, "swing"),
            entry("", 92, "blues"),
            entry("", 112, "minuet", "menuet", "menuett"),
            entry("", 92, "polonaise"),
            entry("6/8", 40, "slow air", "lament"),
            entry("", 60, "slow air", "lament"),
            entry("6/8", 48, "lullaby", "berceuse", "cradle song", "wiegenlied", "barcarolle"),
            entry("", 72, "lullaby", "berceuse", "cradle song", "wiegenlied", "barcarolle"),
            entry("", 84, "hymn", "carol", "chorale"),
            entry("", 72, "ballad", "ballade", "air"));

    private static final List<Entry> METERS = List.of(
            entry("2/2", 88),
            entry("3/2", 84),
            entry("4/2", 84),
            entry("2/4", 96),
            entry("3/4", 132),
            entry("4/4", 112),
            entry("3/8", 150),
            entry("6/8", 92),
            entry("9/8", 92),
            entry("12/8", 76),
            entry("free", 80));

    private static final int OTHER_METERS = 100;

    private DanceTempos() {}

    static Tempo tempo(Tune tune) {
        Meter meter = Assumptions.meter(tune);
        int beats = tune.dance()
                .flatMap(name -> find(name, meter))
                .or(() -> find(tune.title(), meter))
                .or(() -> METERS.stream()
                        .filter(entry -> entry.meters().contains(meter.toString()))
                        .map(Entry::beatsPerMinute)
                        .findFirst())
                .orElseGet(() -> meter.unit() >= 8 && !meter.isCompound() ? 2 * OTHER_METERS : OTHER_METERS);
        MusicalTime beat = meter.isFree() ? MusicalTime.QUARTER : meter.beat();
        return new Tempo(beat, 1000 * beats);
    }

    /** The first entry whose name stands in the text as whole words, for this meter or any. */
    private static Optional<Integer> find(String text, Meter meter) {
        return DANCES.stream()
                .filter(entry -> entry.meters().isEmpty() || entry.meters().contains(meter.toString()))
                .filter(entry -> TuneWords.name(text, entry.names()))
                .map(Entry::beatsPerMinute)
                .findFirst();
    }

    private static Entry entry(String meter, int beatsPerMinute, String... names) {
        return new Entry(List.of(names), meter.isEmpty() ? List.of() : List.of(meter), beatsPerMinute);
    }
}
