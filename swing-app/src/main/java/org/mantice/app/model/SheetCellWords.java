package org.mantice.app.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;
import org.mantice.instrument.Accordion;
import org.mantice.performance.Performance;
import org.mantice.performance.Places;
import org.mantice.performance.TrebleMoment;
import org.mantice.plan.BellowsPlan;
import org.mantice.plan.Decision;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Lock;
import org.mantice.plan.RightHandPlan;
import org.mantice.plan.VariationPlan;
import org.mantice.rule.HandMove;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.Measure;
import org.mantice.tune.MelodyEvent;
import org.mantice.tune.MelodyNote;
import org.mantice.tune.NoteName;
import org.mantice.tune.PlacedChord;

/** What stands in the cells of the sheet as a table. */
final class SheetCellWords {
    private final PlannerState state;
    private final Performance performance;
    private final Accordion accordion;
    private final Words words;
    private final MusicWords music;

    SheetCellWords(PlannerState state, Words words) {
        this.state = state;
        this.performance = state.performance().orElseThrow();
        this.accordion = state.setup().accordion();
        this.words = words;
        this.music = new MusicWords(words);
    }

    String measure(PlayedMoment moment) {
        return performance.tune().measure(moment.place().measure()).number();
    }

    String beat(PlayedMoment moment) {
        Measure written = performance.tune().measure(moment.place().measure());
        return Places.beat(written, moment.place().offset());
    }

    String place(PlayedMoment moment) {
        return music.place(performance.tune(), moment.place());
    }

    int pass(PlayedMoment moment) {
        return performance.measures().get(moment.measure()).pass();
    }

    /** As struck, each in the octave in which it is written; a note that sounds on says so. */
    String notes(PlayedMoment moment) {
        if (moment.treble().isEmpty()) return "";
        TrebleMoment treble = moment.treble().get();
        String notes = treble.notes().stream()
                .map(note ->
                        note.held() ? words.text("table.held", note(treble, note.midi())) : note(treble, note.midi()))
                .collect(Collectors.joining(", "));
        return treble.graceIndex() == 0 ? notes : words.text("table.grace", notes);
    }

    /** As written at the place; a grace note as near to the key signature as it can be. */
    private String note(TrebleMoment moment, int midi) {
        Measure written = performance.tune().measure(moment.place().measure());
        int lowest = written.key().fifths() - 4;
        NoteName name = NoteName.ofFifths(Math.floorMod(7 * midi - lowest, 12) + lowest);
        for (MelodyEvent event : written.melody())
            if (event.offset().equals(moment.place().offset()))
                for (MelodyNote note : event.notes())
                    if (note.pitch().midi() == midi) name = note.pitch().name();
        return music.note(name) + (Math.floorDiv(midi - name.alter(), 12) - 1);
    }

    /** The chord played there, with the one written beside it and whether it may be left out. */
    String chord(PlayedMoment moment) {
        Optional<ChordSymbol> played = moment.chord().flatMap(span -> span.chord());
        if (played.isEmpty()) return "";
        Optional<PlacedChord> written = performance
                .tune()
                .measure(moment.place().measure())
                .chords()
                .stream()
                .filter(chord -> chord.offset().equals(moment.place().offset()))
                .reduce((before, last) -> last);
        String said = written.flatMap(chord -> beside(chord, played.get()))
                .map(other -> words.text("table.chordBeside", name(played.get()), name(other)))
                .orElse(name(played.get()));
        return written.filter(PlacedChord::optional).isPresent() ? words.text("table.chordOptional", said) : said;
    }

    private static Optional<ChordSymbol> beside(PlacedChord written, ChordSymbol played) {
        return written.alternate().map(other -> other.equals(played) ? written.symbol() : other);
    }

    private static String name(ChordSymbol symbol) {
        return symbol.toString().replace('#', '♯').replaceAll("([A-G(])b", "$1♭");
    }

    String fingers(RightHandPlan.Event event) {
        return event.fingers().stream().map(String::valueOf).collect(Collectors.joining(" + "));
    }

    /** How the hand comes there; a hand that stays goes without saying. */
    String hand(RightHandPlan.Event event) {
        if (event.move() == HandMove.STAY) return "";
        String place = music.value(Decision.Kind.HAND_PLACE, String.valueOf(event.handPlace()), accordion);
        return words.text("table.hand", music.move(event.move()), place);
    }

    String bellows(BellowsPlan.Stroke stroke, boolean begins, long micros) {
        String direction = music.direction(stroke.direction());
        if (!begins) return words.text("table.stroke", direction, open(airAt(stroke, micros)));
        return stroke.index() == 0
                ? words.text("table.firstStroke", direction, open(stroke.startMillilitres()))
                : words.text("table.turn", direction, open(stroke.startMillilitres()));
    }

    /** Between start and end of a stroke as if the air went evenly; which is why it is called about. */
    private static long airAt(BellowsPlan.Stroke stroke, long micros) {
        long length = Math.max(1, stroke.endMicros() - stroke.startMicros());
        long passed = Math.max(0, Math.min(length, micros - stroke.startMicros()));
        return stroke.startMillilitres() + (stroke.endMillilitres() - stroke.startMillilitres()) * passed / length;
    }

    private long open(long millilitres) {
        return Math.round(100.0 * millilitres / accordion.bellows().fullMillilitres());
    }

    String register(VariationPlan.PassDecision register) {
        String name = music.register(register.switchId(), accordion);
        return register.octave() == 0 ? name : words.text("table.register", name, music.octave(register.octave()));
    }

    String buttons(LeftHandPlan.Event event) {
        List<String> buttons = new ArrayList<>();
        for (int i = 0; i < event.buttons().size(); i++)
            buttons.add(words.text(
                    "table.button",
                    music.buttons(List.of(event.buttons().get(i))),
                    event.fingers().get(i)));
        return String.join(" + ", buttons);
    }

    String jump(LeftHandPlan.Event event) {
        return event.jump() == LeftHandPlan.Jump.NONE ? "" : music.jump(event.jump());
    }

    /** Locks on what is decided at the moment; of a register, at the first moment of its pass. */
    String locks(PlayedMoment moment) {
        return state.setup().locks().stream()
                .filter(lock -> lock.appliesTo(pass(moment)))
                .filter(lock -> isHere(lock, moment))
                .map(lock -> music.lock(lock, performance, accordion))
                .collect(Collectors.joining("; "));
    }

    private static boolean isHere(Lock lock, PlayedMoment moment) {
        if (lock instanceof Lock.Buttons buttons)
            return moment.main() && buttons.place().equals(moment.place());
        if (lock instanceof Lock.Turn turn)
            return moment.first() && turn.place().equals(moment.place());
        if (lock instanceof Lock.Finger finger)
            return moment.main()
                    && moment.treble().isPresent()
                    && finger.place().equals(moment.place());
        return moment.startsPass();
    }

    /** What the plans compared decide differently there. */
    String differences(PlayedMoment moment) {
        List<String> kinds = new ArrayList<>();
        for (int i = 0; i < state.differences().size(); i++) {
            Difference difference = state.differences().get(i);
            if (!moment.isAt(difference.spot())) continue;
            String kind = music.kind(difference.kind());
            boolean steppedTo =
                    state.differenceAt().isPresent() && state.differenceAt().getAsInt() == i;
            String said = steppedTo ? words.text("table.steppedTo", kind) : kind;
            if (!kinds.contains(said)) kinds.add(said);
        }
        return String.join(", ", kinds);
    }
}
