package org.mantice.app.view;

import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.List;
import org.mantice.app.sheet.SheetContent;
import org.mantice.app.sheet.Spot;
import org.mantice.app.words.MusicWords;
import org.mantice.app.words.Words;
import org.mantice.plan.BellowsPlan.Stroke;
import org.mantice.plan.Decision;
import org.mantice.plan.LeftHandPlan;
import org.mantice.plan.Plan;
import org.mantice.plan.RightHandPlan;
import org.mantice.plan.VariationPlan;
import org.mantice.rule.HandMove;
import org.mantice.tune.MusicalTime;

/** What stands at a spot of the sheet, in words: for tooltips and for those who do not see it. */
final class SpotWords {
    private final Words words;
    private final MusicWords music;

    SpotWords(Words words) {
        this.words = words;
        this.music = new MusicWords(words);
    }

    /** As "A, bellows, pass 1, measure 3, beat 1: turn, in, 62 % of the comfortable opening". */
    String at(SheetContent sheet, int band, Spot spot) {
        Plan plan = sheet.bands().get(band).plan();
        List<String> said =
                switch (spot.strip()) {
                    case FINGERS -> fingers(sheet, plan.rightHand(), spot);
                    case REGISTERS -> register(sheet, plan.variation(), spot);
                    case BELLOWS -> bellows(sheet, plan.bellows().strokes(), spot);
                    case BUTTONS -> buttons(plan.leftHand(), spot);
                };
        return words.text(
                "sheet.spot",
                sheet.bands().get(band).letter(),
                words.of("sheet", spot.strip()),
                music.place(sheet.performance(), spot.measure(), spot.place()),
                String.join(", ", said));
    }

    private List<String> fingers(SheetContent sheet, RightHandPlan plan, Spot spot) {
        List<String> said = new ArrayList<>();
        for (RightHandPlan.Event event : plan.events()) {
            boolean here = event.place().equals(spot.place())
                    && sheet.performance().treble().get(event.moment()).measure() == spot.measure()
                    && spot.part() < event.fingers().size();
            if (!here) continue;
            said.add(music.value(
                    Decision.Kind.FINGER, event.fingers().get(spot.part()).toString(), sheet.accordion()));
            if (event.move() != HandMove.STAY) said.add(music.move(event.move()));
        }
        return said;
    }

    private List<String> register(SheetContent sheet, VariationPlan plan, Spot spot) {
        VariationPlan.PassDecision pass = plan.pass(spot.pass());
        return List.of(music.register(pass.switchId(), sheet.accordion()), music.octave(pass.octave()));
    }

    private List<String> buttons(LeftHandPlan plan, Spot spot) {
        List<String> said = new ArrayList<>();
        for (LeftHandPlan.Event event : plan.events()) {
            if (event.measure() != spot.measure() || !event.place().equals(spot.place())) continue;
            said.add(music.buttons(event.buttons()));
            if (event.jump() != LeftHandPlan.Jump.NONE) said.add(music.jump(event.jump()));
            if (!event.missing().isEmpty()) said.add(words.text("sheet.missing", music.tones(event.missing())));
            if (!event.foreign().isEmpty()) said.add(words.text("sheet.foreign", music.tones(event.foreign())));
        }
        return said;
    }

    private List<String> bellows(SheetContent sheet, List<Stroke> strokes, Spot spot) {
        MusicalTime at = sheet.performance()
                .measures()
                .get(spot.measure())
                .start()
                .plus(spot.place().offset());
        for (Stroke stroke : strokes) {
            MusicalTime end = stroke.onset().plus(stroke.length());
            if (at.isBefore(stroke.onset()) || !at.isBefore(end)) continue;
            boolean turns = stroke.measure() == spot.measure() && stroke.place().equals(spot.place());
            List<String> said = new ArrayList<>();
            if (!turns) said.add(words.text("sheet.noTurn"));
            else if (stroke.index() > 0) said.add(words.text("sheet.turn"));
            said.add(music.direction(stroke.direction()));
            said.add(words.text("sheet.opening", opening(sheet, stroke, at)));
            return said;
        }
        return List.of(words.text("sheet.noTurn"));
    }

    /** Share of the comfortable opening. */
    private String opening(SheetContent sheet, Stroke stroke, MusicalTime at) {
        MusicalTime since = at.minus(stroke.onset()).dividedBy(stroke.length());
        double share = (double) since.numerator() / since.denominator();
        double open = stroke.startMillilitres() + share * (stroke.endMillilitres() - stroke.startMillilitres());
        return NumberFormat.getPercentInstance(words.locale())
                .format(open / sheet.accordion().bellows().comfortableMillilitres());
    }
}
