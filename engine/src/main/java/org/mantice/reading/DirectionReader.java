package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.mantice.reading.ScoreSign.Order;
import org.mantice.tune.Loudness;
import org.mantice.tune.Mark;
import org.mantice.tune.MusicalTime;

/** Reads one direction or sound element at its place. */
final class DirectionReader {
    /** What our own files call it, because the standard has no element for it. */
    private static final String PHRASE_START = "phrase start";

    private final MusicalTime onset;
    private final int staff;
    private final boolean verbatim;
    private final List<ScoreSign> signs = new ArrayList<>();

    /** @param verbatim words mean nothing but themselves; beside playback they are its label */
    DirectionReader(MusicalTime onset, int staff, boolean verbatim) {
        this.onset = onset;
        this.staff = staff;
        this.verbatim = verbatim;
    }

    List<ScoreSign> read(XmlNode direction) {
        List<XmlNode> types = direction
                .children("direction-type")
                .flatMap(type -> type.children().stream())
                .toList();
        Optional<XmlNode> sound = direction.child("sound");
        if (!verbatim) readWords(types);
        else if (sound.isEmpty()) readPlainWords(types);
        readTempo(types, sound.map(node -> node.attribute("tempo")).orElse(""));
        types.forEach(this::readType);
        sound.ifPresent(this::readOrderOfPlay);
        sound.ifPresent(this::readSoundDynamics);
        settleCodaSign();
        return signs;
    }

    /** A sound element that stands alone. */
    List<ScoreSign> readSound(XmlNode sound) {
        readTempo(List.of(), sound.attribute("tempo"));
        readOrderOfPlay(sound);
        readSoundDynamics(sound);
        return signs;
    }

    List<ScoreSign> readDynamics(XmlNode node) {
        for (XmlNode mark : node.children()) {
            String name = mark.is("other-dynamics") ? mark.text() : mark.name();
            Optional<Loudness> level = Loudness.ofMark(name);
            if (level.isPresent()) addMark(new Mark.Dynamic(onset, level.get()));
            else unused(SkippedWhat.DYNAMIC, name);
        }
        return signs;
    }

    private void readType(XmlNode node) {
        switch (node.name()) {
            case "words", "symbol", "metronome", "octave-shift" -> {} // read together, or pitches already shifted
            case "dynamics" -> readDynamics(node);
            case "wedge" -> readWedge(node);
            case "rehearsal" -> addMark(new Mark.Rehearsal(onset, node.text()));
            case "segno" -> addOrder(Order.What.SEGNO);
            case "coda" -> addOrder(Order.What.CODA_SIGN);
            case "accordion-registration" -> readRegistration(node);
            case "other-direction" -> readOther(node);
            default -> unused(SkippedWhat.DIRECTION, node.name());
        }
    }

    private void readWedge(XmlNode node) {
        switch (node.attribute("type")) {
            case "crescendo" -> addMark(new Mark.HairpinStart(onset, true));
            case "diminuendo" -> addMark(new Mark.HairpinStart(onset, false));
            case "stop" -> addMark(new Mark.HairpinEnd(onset));
            default -> {} // "continue" only joins printed lines
        }
    }

    /** The schema lets an empty registration through, but its text asks for at least one dot. */
    private void readRegistration(XmlNode node) {
        String written = node.text("accordion-middle");
        int middle = node.has("accordion-middle") ? Numbers.integer(written, 0) : 0;
        boolean high = node.has("accordion-high");
        boolean low = node.has("accordion-low");
        if (node.has("accordion-middle") && (middle < 1 || middle > 3))
            unused(SkippedWhat.REGISTRATION, "with " + (written.isEmpty() ? "no number of" : written) + " middle dots");
        else if (!high && !low && middle == 0) unused(SkippedWhat.REGISTRATION, "without a dot");
        else addMark(new Mark.Registration(onset, high, middle, low));
    }

    private void readOther(XmlNode node) {
        String said = (node.attribute("smufl") + " " + node.text()).strip();
        if (said.equals(PHRASE_START)) {
            addMark(new Mark.PhraseStart(onset));
            return;
        }
        DirectionWords.effect(said)
                .ifPresentOrElse(
                        effect -> signs.add(new ScoreSign.Effect(onset, effect)),
                        () -> unused(SkippedWhat.DIRECTION, said.isEmpty() ? node.name() : said));
    }

    /** All words and symbols of a direction are one text; where that means nothing, each is looked at alone. */
    private void readWords(List<XmlNode> types) {
        List<String> texts = types.stream()
                .filter(node -> node.is("words") || node.is("symbol"))
                .map(XmlNode::text)
                .filter(text -> !text.isEmpty())
                .toList();
        if (texts.isEmpty()) return;
        String all = texts.stream().collect(Collectors.joining(" ")).replaceAll("\\s+", " ");
        DirectionWords words = new DirectionWords(onset, staff);
        List<ScoreSign> read = words.read(all);
        if (!read.isEmpty()) signs.addAll(read);
        else
            for (String text : texts) {
                String line = text.replaceAll("\\s+", " ");
                List<ScoreSign> alone = words.read(line);
                if (alone.isEmpty()) addMark(new Mark.Words(onset, line));
                else signs.addAll(alone);
            }
    }

    private void readPlainWords(List<XmlNode> types) {
        for (XmlNode node : types)
            if (node.is("words") && !node.text().isEmpty()) addMark(new Mark.Words(onset, node.text()));
    }

    private void readTempo(List<XmlNode> types, String quarters) {
        List<XmlNode> metronomes =
                types.stream().filter(node -> node.is("metronome")).toList();
        signs.addAll(new TempoReader(onset).read(metronomes, quarters));
    }

    private void readOrderOfPlay(XmlNode sound) {
        boolean some = !sound.attribute("time-only").isEmpty();
        if (!sound.attribute("segno").isEmpty()) addOrder(Order.What.SEGNO);
        if (!sound.attribute("coda").isEmpty()) addOrder(Order.What.CODA_START);
        if (!sound.attribute("tocoda").isEmpty()) addOrder(Order.What.TO_CODA);
        if (isSaid(sound.attribute("fine"))) addOrder(Order.What.FINE);
        if (isSaid(sound.attribute("dacapo"))) addOrder(Order.What.DA_CAPO);
        if (isSaid(sound.attribute("dalsegno"))) addOrder(Order.What.DAL_SEGNO);
        if (some) unused(SkippedWhat.ONLY_IN_PASS, "a playback instruction");
        if (isSaid(sound.attribute("forward-repeat"))) unused(SkippedWhat.DIRECTION, "playback repeat");
        if (sound.has("swing")) unused(SkippedWhat.DIRECTION, "swing");
    }

    private static boolean isSaid(String value) {
        return !value.isEmpty() && !value.equals("no");
    }

    /** Loudness in numbers counts where no mark stands beside it. */
    private void readSoundDynamics(XmlNode sound) {
        boolean marked = signs.stream()
                .anyMatch(sign -> sign instanceof ScoreSign.Plain plain && plain.mark() instanceof Mark.Dynamic);
        if (marked) return;
        Numbers.decimal(sound.attribute("dynamics"))
                .filter(percent -> percent.signum() >= 0)
                .ifPresent(percent -> addMark(new Mark.Dynamic(onset, DynamicsPercent.nearestMark(percent))));
    }

    /** A coda sign beside words or playback that say which of its two meanings it has. */
    private void settleCodaSign() {
        boolean said = signs.stream()
                .anyMatch(sign -> sign instanceof Order order
                        && (order.what() == Order.What.TO_CODA || order.what() == Order.What.CODA_START));
        if (said) signs.removeIf(sign -> sign instanceof Order order && order.what() == Order.What.CODA_SIGN);
    }

    private void addOrder(Order.What what) {
        Order order = new Order(onset, what);
        if (!signs.contains(order)) signs.add(order);
    }

    private void addMark(Mark mark) {
        signs.add(new ScoreSign.Plain(mark));
    }

    private void unused(SkippedWhat what, String arg) {
        signs.add(new ScoreSign.Unused(onset, Finding.of(what, arg)));
    }
}
