package org.mantice.reading;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.mantice.tune.ChordDegree;
import org.mantice.tune.ChordKind;
import org.mantice.tune.ChordSymbol;
import org.mantice.tune.Key;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.NoteName;
import org.mantice.tune.Step;

/** Reads one harmony element, which may hold several chord symbols. */
final class HarmonyReader {
    /** Editorial levels of a chord symbol that nobody wrote, and of one in brackets; the standard leaves the words open. */
    private static final String PROPOSED = "proposed";

    private static final String OPTIONAL = "optional";

    private final Transposition transposition;
    private final Key writtenKey;
    private final boolean verbatim;
    private final MusicalTime onset;
    private final boolean placed;
    private final List<Finding> unreadable = new ArrayList<>();
    private boolean alternate;

    HarmonyReader(PartState state, int staff, MusicalTime onset, boolean placed) {
        this.transposition = state.transposition(staff);
        this.writtenKey = state.writtenKey;
        this.verbatim = state.verbatim;
        this.onset = onset;
        this.placed = placed;
    }

    /** One of type "alternate" is meant for a later pass, in place of the one before it. */
    List<ScoreChord> read(XmlNode harmony) {
        alternate = harmony.attribute("type").equals("alternate");
        List<XmlNode> groups = new ArrayList<>();
        for (XmlNode child : harmony.children()) {
            if (child.is("root") || child.is("numeral") || child.is("function"))
                groups.add(new XmlNode("group", child.line()));
            if (groups.isEmpty() && child.is("kind")) groups.add(new XmlNode("group", child.line()));
            if (!groups.isEmpty()) groups.get(groups.size() - 1).add(child);
        }
        return groups.stream().flatMap(group -> chord(group).stream()).toList();
    }

    /** What could not be read at all. */
    List<Finding> unreadable() {
        return unreadable;
    }

    private Optional<ScoreChord> chord(XmlNode group) {
        List<Finding> findings = new ArrayList<>();
        XmlNode kindNode = group.child("kind").orElse(new XmlNode("kind", 0));
        String text = kindNode.attribute("text");
        ChordKind kind = verbatim
                ? ChordKind.ofMusicXml(kindNode.text()).orElse(ChordKind.OTHER)
                : ChordKindText.kind(kindNode.text(), text, findings);
        Optional<NoteName> root = kind == ChordKind.NONE ? Optional.of(new NoteName(Step.C, 0)) : root(group, findings);
        if (root.isEmpty()) {
            String shown = group.has("function") ? "of function " + group.text("function") : "without a root";
            unreadable.add(Finding.of(SkippedWhat.CHORD_SYMBOL, shown));
            return Optional.empty();
        }
        List<ChordDegree> degrees = new ArrayList<>();
        group.children("degree").forEach(node -> degree(node, findings).ifPresent(degrees::add));
        Optional<NoteName> bass = bass(group, kind, root.get(), findings);
        NoteName sounding = kind == ChordKind.NONE ? root.get() : transposition.of(root.get());
        ChordSymbol symbol = new ChordSymbol(sounding, kind, degrees, bass.map(transposition::of), text);
        return Optional.of(new ScoreChord(onset, placed, symbol, manner(group), List.copyOf(findings)));
    }

    private ScoreChord.Manner manner(XmlNode group) {
        List<String> levels = List.of(group.text("level").split(" "));
        boolean ours = Set.of(OPTIONAL, PROPOSED).containsAll(levels);
        return new ScoreChord.Manner(alternate, ours && levels.contains(OPTIONAL), ours && levels.contains(PROPOSED));
    }

    private Optional<NoteName> root(XmlNode group, List<Finding> findings) {
        Optional<XmlNode> root = group.child("root");
        if (root.isPresent()) return NoteReader.name(root.get(), "root", findings);
        return group.child("numeral").flatMap(this::ofNumeral);
    }

    /** A degree of the key, or of the key that the numeral brings along. */
    private Optional<NoteName> ofNumeral(XmlNode numeral) {
        int degree = Numbers.integer(numeral.text("numeral-root"), 0);
        if (degree < 1 || degree > 7) return Optional.empty();
        int alter = Numbers.integer(numeral.text("numeral-alter"), 0);
        int fifths = numeral.child("numeral-key")
                .map(key -> Numbers.integer(key.text("numeral-fifths"), writtenKey.fifths()))
                .orElse(writtenKey.fifths());
        boolean minor = numeral.child("numeral-key")
                .map(key -> key.text("numeral-mode").contains("minor"))
                .orElse(writtenKey.mode().name().equals("MINOR"));
        int[] steps = minor ? new int[] {3, 5, 0, 2, 4, -1, 1} : new int[] {0, 2, 4, -1, 1, 3, 5};
        if (Math.abs(fifths) > 7 || Math.abs(alter) > 2) return Optional.empty();
        return Optional.of(NoteName.ofFifths(fifths + steps[degree - 1] + 7 * alter));
    }

    private Optional<ChordDegree> degree(XmlNode node, List<Finding> findings) {
        String value = node.text("degree-value");
        Optional<BigDecimal> alter = node.text("degree-alter").isEmpty()
                ? Optional.of(BigDecimal.ZERO)
                : Numbers.decimal(node.text("degree-alter"));
        String type = node.text("degree-type").toUpperCase(Locale.ROOT);
        OptionalInt number = Numbers.integer(value);
        boolean readable = number.isPresent()
                && number.getAsInt() >= 1
                && number.getAsInt() <= 13
                && alter.isPresent()
                && alter.get().abs().compareTo(BigDecimal.valueOf(2)) <= 0
                && alter.get().stripTrailingZeros().scale() <= 0
                && type.matches("ADD|ALTER|SUBTRACT");
        if (!readable) {
            findings.add(Finding.of(SkippedWhat.CHORD_DEGREE, node.text("degree-type") + " " + value));
            return Optional.empty();
        }
        return Optional.of(
                new ChordDegree(number.getAsInt(), alter.get().intValueExact(), ChordDegree.Change.valueOf(type)));
    }

    private Optional<NoteName> bass(XmlNode group, ChordKind kind, NoteName root, List<Finding> findings) {
        Optional<XmlNode> bass = group.child("bass");
        if (bass.isPresent()) {
            Optional<NoteName> name = NoteReader.name(bass.get(), "bass", findings);
            if (name.isEmpty())
                findings.add(Finding.of(
                        SkippedWhat.CHORD_SYMBOL, "bass \"" + bass.get().text("bass-step") + "\""));
            return name.filter(note -> verbatim || !note.equals(root));
        }
        int inversion = Numbers.integer(group.text("inversion"), 0);
        if (inversion < 1 || inversion >= kind.intervals().size()) return Optional.empty();
        NoteName name = chordTone(root, kind.intervals().get(inversion));
        findings.add(Finding.of(SkippedWhat.CHORD_BASS, "of inversion " + inversion, name.toString()));
        return Optional.of(name);
    }

    /** The name of a chord tone so many semitones above the root: thirds, fifths and sevenths as letters. */
    private static NoteName chordTone(NoteName root, int semitones) {
        int[] fifths = {0, -5, 2, -3, 4, -1, -6, 1, 8, 3, -2, 5};
        return NoteName.ofFifths(root.fifths() + fifths[Math.floorMod(semitones, 12)]);
    }
}
