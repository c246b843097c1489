package org.mantice.instrument;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Says why buttons found for a chord are not those that its symbol asks for. */
final class FallBacks {
    private final StradellaBass layout;
    private final ChordSearch search;

    FallBacks(StradellaBass layout, ChordSearch search) {
        this.layout = layout;
        this.search = search;
    }

    Set<Substitution> of(AskedChord asked, ChordGrip grip) {
        EnumSet<Substitution> reasons = EnumSet.noneOf(Substitution.class);
        if (grip.rank() != 0 && !asked.recipes().isEmpty()) addWhyNotUsual(asked, reasons);
        int root = asked.tones().root();
        if (!layout.hasColumn(asked.symbol().root().fifths())
                && grip.buttons().stream()
                        .anyMatch(button -> button.row() != BassRow.COUNTERBASS && button.rootPitchClass() == root))
            reasons.add(Substitution.ENHARMONIC_COLUMN);
        if (grip.bass().isEmpty()) reasons.add(Substitution.NO_BASS_NOTE);
        else if (grip.bassGrade() > 0) reasons.add(Substitution.OTHER_BASS);
        int bass = asked.tones().bass();
        if (layout.bassButtons(bass).isEmpty() && wouldBeCounterbass(bass))
            reasons.add(Substitution.NO_COUNTERBASS_ROW);
        return reasons;
    }

    private boolean wouldBeCounterbass(int pitchClass) {
        if (layout.hasRow(BassRow.COUNTERBASS)) return false;
        return layout.allButtons().stream()
                .map(button -> new BassButton(BassRow.COUNTERBASS, button.column()))
                .anyMatch(button -> button.pitchClasses().first() == pitchClass);
    }

    private void addWhyNotUsual(AskedChord asked, Set<Substitution> reasons) {
        ChordRecipe ideal = asked.recipes().get(0);
        if (!search.placements(asked, ideal).isEmpty()) return;
        for (ChordRecipe.Key key : ideal.keys())
            if (!layout.hasRow(key.row())) Substitution.ofMissing(key.row()).ifPresent(reasons::add);
        if (ideal.keys().stream().anyMatch(key -> isBroken(asked, key))) reasons.add(Substitution.BROKEN_BUTTON);
        if (reasons.isEmpty()
                || !layout.hasColumn(search.homeColumn(asked.symbol().root().fifths())))
            reasons.add(Substitution.BEYOND_COLUMNS);
    }

    /** Whether the only buttons of a key are broken. */
    private boolean isBroken(AskedChord asked, ChordRecipe.Key key) {
        int pitchClass = (asked.tones().root() + key.semitones()) % 12;
        List<BassRow> rows =
                key.row() == BassRow.BASS ? List.of(BassRow.BASS, BassRow.COUNTERBASS) : List.of(key.row());
        return rows.stream().allMatch(row -> layout.buttons(row, pitchClass).isEmpty())
                && layout.singles().broken().stream()
                        .anyMatch(button ->
                                rows.contains(button.row()) && button.noteName().pitchClass() == pitchClass);
    }
}
