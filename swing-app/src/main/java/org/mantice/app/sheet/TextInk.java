package org.mantice.app.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.mantice.app.words.Words;
import org.mantice.instrument.RegisterSign;
import org.mantice.tune.Barlines;
import org.mantice.tune.Mark;
import org.mantice.tune.Measure;
import org.mantice.tune.MusicalTime;

/** Inks what stands highest above a line: measure numbers, rehearsal letters, tempo, words, registers, signs of order. */
final class TextInk {
    private static final double GAP = 0.6;
    private static final double BETWEEN = 0.9;
    private static final double SIGN_SCALE = 0.75;

    private final LineInk ink;
    private final StaffLine line;
    private final Words words;
    private final TempoText tempo;

    private double ceiling;

    /** @param rightAligned x is of its right end */
    private record Item(Row row, double x, boolean rightAligned, boolean played) {
        double left() {
            return rightAligned ? x - row.width() : x;
        }
    }

    TextInk(LineInk ink, StaffLine line, Words words, TempoText tempo) {
        this.ink = ink;
        this.line = line;
        this.words = words;
        this.tempo = tempo;
    }

    /** At the start of each line but the tune's first; at every barline where the measures stand in order of play. */
    void numbers() {
        for (int cell = line.first(); cell <= line.last(); cell++) {
            boolean lineStart = cell == line.first();
            if (cell == 0 || !lineStart && !line.sheet().isUnrolled()) continue;
            ink.played(line.isPlayed(cell));
            Measure measure = line.of(cell).staff().measure();
            SheetFonts.Outline outline = SheetFonts.text(measure.number(), SheetFonts.Face.PLAIN, Engraving.SMALL_SIZE);
            double x = lineStart ? 0 : line.of(cell).box().x() - outline.advance() / 2;
            ink.outline(outline, x, ink.highest(x, x + outline.advance(), 0) - 0.45);
        }
    }

    /** Registers that the source writes, each in its own place. */
    void registers() {
        for (int cell = line.first(); cell <= line.last(); cell++)
            for (Mark mark : line.of(cell).staff().measure().marks())
                if (mark instanceof Mark.Registration registration) register(cell, registration);
    }

    private void register(int cell, Mark.Registration mark) {
        int banks = (mark.high() ? 1 : 0) + mark.middle() + (mark.low() ? 1 : 0);
        if (banks == 0) return;
        RegisterSign.Triple triple = new RegisterSign.Triple(mark.high() ? 1 : 0, mark.middle(), mark.low() ? 1 : 0);
        Optional<RegisterSign> sign = RegisterSign.ofTriple(triple).stream().findFirst();
        if (sign.isEmpty()) return;
        ink.played(line.isPlayed(cell));
        SheetFonts.Outline outline = SheetFonts.register(sign.get());
        double x = x(cell, mark.offset());
        ink.outline(outline, x, ink.highest(x, x + outline.bounds().getWidth(), 0) - GAP);
    }

    /** @param ceiling y that everything stays above: the top of the chord symbols, so that all rows are straight */
    void write(double ceiling) {
        this.ceiling = ceiling;
        List<Item> left = new ArrayList<>();
        List<Item> right = new ArrayList<>();
        for (int cell = line.first(); cell <= line.last(); cell++) {
            signs(cell, left);
            marks(cell, left);
            jumps(cell, right);
        }
        left.sort(Comparator.comparingDouble(Item::x));
        clusters(left);
        for (Item item : right) place(List.of(item), item.left());
    }

    private double x(int cell, MusicalTime offset) {
        MusicalTime length = line.of(cell).staff().measure().length();
        return line.of(cell).x(offset.min(length)) - Engraving.HALF_HEAD;
    }

    private void signs(int cell, List<Item> items) {
        Barlines barlines = line.sheet().barlines(cell);
        double x = line.of(cell).box().x();
        if (barlines.segno()) items.add(new Item(Row.glyph(Glyph.SEGNO, SIGN_SCALE), x, false, line.isPlayed(cell)));
        if (barlines.coda()) items.add(new Item(Row.glyph(Glyph.CODA, SIGN_SCALE), x, false, line.isPlayed(cell)));
    }

    private void marks(int cell, List<Item> items) {
        Measure measure = line.of(cell).staff().measure();
        boolean played = line.isPlayed(cell);
        if (cell == 0) items.add(new Item(tempo.atStart(), x(cell, MusicalTime.ZERO), false, true));
        for (Mark mark : measure.marks()) {
            double x = x(cell, mark.offset());
            if (mark instanceof Mark.Rehearsal rehearsal)
                items.add(new Item(
                        Row.framed(rehearsal.text()),
                        rehearsal.offset().isPositive()
                                ? x
                                : line.of(cell).box().x(),
                        false,
                        played));
            else if (mark instanceof Mark.Words said && !said.text().isBlank())
                items.add(new Item(said(said.text().strip()), x, false, played));
            else if (mark instanceof Mark.TempoChange change && !tempo.isAtStart(cell, change))
                items.add(new Item(tempo.of(change), x, false, played));
        }
    }

    /** Words longer than the line are cut. */
    private Row said(String text) {
        Row row = Row.text(text, SheetFonts.Face.ITALIC, Engraving.WORDS_SIZE);
        if (row.width() <= line.width() || text.length() < 4) return row;
        int keep = (int) (text.length() * line.width() / row.width()) - 2;
        return said(text.substring(0, Math.max(1, Math.min(keep, text.length() - 3))) + "\u2026");
    }

    private void jumps(int cell, List<Item> items) {
        Barlines barlines = line.sheet().barlines(cell);
        double x = line.of(cell).box().right();
        boolean played = line.isPlayed(cell);
        barlines.repeatEnd()
                .filter(times -> times > 2)
                .ifPresent(times -> items.add(item(words.text("staff.times", times), x, played)));
        if (barlines.toCoda())
            items.add(new Item(
                    Row.text(words.text("staff.toCoda"), SheetFonts.Face.BOLD, Engraving.WORDS_SIZE)
                            .then(Row.glyph(Glyph.CODA, 0.5)),
                    x,
                    true,
                    played));
        if (barlines.fine()) items.add(item(words.text("staff.fine"), x, played));
        barlines.jump().ifPresent(jump -> items.add(item(words.text(key(jump)), x, played)));
    }

    private static Item item(String text, double x, boolean played) {
        return new Item(Row.text(text, SheetFonts.Face.BOLD, Engraving.WORDS_SIZE), x, true, played);
    }

    private String key(Barlines.Jump jump) {
        boolean fine = false;
        boolean coda = false;
        for (int cell = 0; cell < line.sheet().count(); cell++) {
            fine |= line.sheet().barlines(cell).fine();
            coda |= line.sheet().barlines(cell).toCoda();
        }
        if (jump == Barlines.Jump.DA_CAPO)
            return coda ? "staff.daCapoAlCoda" : fine ? "staff.daCapoAlFine" : "staff.daCapo";
        return coda ? "staff.dalSegnoAlCoda" : fine ? "staff.dalSegnoAlFine" : "staff.dalSegno";
    }

    /** Items that would touch stand beside each other on one base line while there is room. */
    private void clusters(List<Item> items) {
        List<Item> cluster = new ArrayList<>();
        double end = 0;
        for (Item item : items) {
            boolean touches = !cluster.isEmpty() && item.x() < end + BETWEEN;
            boolean fits = end + BETWEEN + item.row().width() <= line.width();
            if (!cluster.isEmpty() && !(touches && fits)) {
                place(cluster, cluster.get(0).left());
                cluster.clear();
            }
            end = (cluster.isEmpty() ? item.x() : end + BETWEEN) + item.row().width();
            cluster.add(item);
        }
        if (!cluster.isEmpty()) place(cluster, cluster.get(0).left());
    }

    private void place(List<Item> cluster, double from) {
        double width = cluster.stream()
                        .mapToDouble(item -> item.row().width() + BETWEEN)
                        .sum()
                - BETWEEN;
        double x = Math.max(0, Math.min(from, line.width() - width));
        double depth =
                cluster.stream().mapToDouble(item -> item.row().depth()).max().orElse(0);
        double base = ink.highest(x - BETWEEN / 2, x + width + BETWEEN / 2, ceiling) - GAP - depth;
        for (Item item : cluster) {
            ink.played(item.played());
            item.row().write(ink, x, base);
            x += item.row().width() + BETWEEN;
        }
    }
}
