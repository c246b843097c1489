package org.mantice.app.sheet;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.mantice.app.model.Difference;
import org.mantice.app.model.Offer;
import org.mantice.app.model.States;
import org.mantice.app.words.Words;
import org.mantice.plan.Lock;

/** Sheets of the shipped examples with plans. */
final class PlannedSheets {
    static final Words ENGLISH = Words.of(Locale.ENGLISH);
    static final Set<Strip> ALL = EnumSet.allOf(Strip.class);

    /** Every role another colour, so that pixels tell which was used. */
    static final SheetColours COLOURS = new SheetColours(
            Color.WHITE,
            Color.BLACK,
            Color.GRAY,
            new Color(0xf0f0e0),
            new Color(0x2060a0),
            new Color(0x905010),
            new Color(0xfffff0),
            new Color(0xa00060),
            new Color(0x0000ff),
            new Color(0x404080),
            new Color(0xc00000),
            List.of(new Color(0x103050), new Color(0x503010), new Color(0x105030), new Color(0x501050)));

    private PlannedSheets() {}

    static SheetContent of(String tune, int plans, Reading reading) {
        return of(tune, plans, reading, ALL, List.of());
    }

    static SheetContent of(String tune, int plans, Reading reading, Set<Strip> strips, List<Lock> locks) {
        States states = States.of(tune);
        int shown = Math.min(plans, states.offers().size());
        Integer[] compared = new Integer[shown];
        for (int i = 0; i < shown; i++) compared[i] = i;
        Set<Spot> differing = states.comparing(compared).differences().stream()
                .map(Difference::spot)
                .collect(Collectors.toSet());
        List<PlanBand> bands = new ArrayList<>();
        for (Offer offer : states.offers().subList(0, shown))
            bands.add(new PlanBand(
                    offer.letter(),
                    offer.letter() + " plan",
                    bands.size(),
                    bands.isEmpty(),
                    offer.plan(),
                    differing,
                    locks));
        return new SheetContent(
                states.planning().performance(),
                org.mantice.instrument.AccordionPresets.get("full-41-key-120-bass"),
                reading.cells(states.planning().performance()),
                bands,
                strips,
                Pointing.NOWHERE);
    }

    static SheetPainter painter(SheetContent content) {
        return new SheetPainter(content, ENGLISH, 1200, 8);
    }

    static BufferedImage picture(SheetPainter painter) {
        BufferedImage image = new BufferedImage(1200, (int) painter.height(), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        painter.paint(graphics, COLOURS, new Rectangle(0, 0, image.getWidth(), image.getHeight()));
        graphics.dispose();
        return image;
    }
}
