package org.mantice.file;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.mantice.fault.FilePlace;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.Bellows;
import org.mantice.instrument.ReedBank;
import org.mantice.instrument.RegisterSwitch;
import org.mantice.instrument.StradellaBass;
import org.mantice.instrument.TrebleKeyboard;
import org.mantice.json.Fields;
import org.mantice.json.JsonFile;
import org.mantice.json.JsonFileException;
import org.mantice.tune.Loudness;

/**
 * Profiles of accordions ({@code *.accordion.json}), described by the JSON Schema
 * {@code org/mantice/schema/accordion.schema.json}. Fields that this version does not know are kept when a file is
 * written again; a newer major version is refused.
 */
public final class AccordionFile {
    public static final String FORMAT = "mantice-accordion";
    public static final String SUFFIX = ".accordion.json";

    /** Version 0.2 lays the bass out row by row; 0.1 had one range of columns for all rows. */
    private static final int MINOR = 2;

    private final Accordion accordion;
    private final Optional<Fields> source;

    private AccordionFile(Accordion accordion, Optional<Fields> source) {
        this.accordion = accordion;
        this.source = source;
    }

    /** A new file. */
    public static AccordionFile of(Accordion accordion) {
        return new AccordionFile(accordion, Optional.empty());
    }

    /** @throws JsonFileException if the file is not a profile that this version can read */
    public static AccordionFile read(Path file) {
        return of(JsonFile.read(file, ProfileFormat.MOST_BYTES));
    }

    /** Reads bytes that came from the place. */
    static AccordionFile parse(byte[] bytes, FilePlace place) {
        return of(JsonFile.parse(bytes, place, ProfileFormat.MOST_BYTES));
    }

    private static AccordionFile of(JsonFile file) {
        Fields fields = file.fields(FORMAT, ProfileFormat.MAJOR);
        return new AccordionFile(accordion(fields), Optional.of(fields));
    }

    public Accordion accordion() {
        return accordion;
    }

    /** The same file with another profile; fields that this version does not know are kept. */
    public AccordionFile with(Accordion changed) {
        return new AccordionFile(changed, source);
    }

    /** As text in UTF-8, indented, ending in a line feed. */
    public byte[] bytes() {
        return JsonFile.bytes(ProfileFormat.file(FORMAT, MINOR, tree(accordion), source));
    }

    /** @throws FileWriteException if it cannot be written; what was there before is then unchanged */
    public void write(Path file) {
        AtomicFile.write(file, bytes());
    }

    static Accordion accordion(Fields fields) {
        String id = fields.text("id");
        String name = fields.text("name");
        TrebleKeyboard treble = treble(fields.object("treble"));
        StradellaBass bass = BassJson.read(fields.object("bass"));
        Bellows bellows = bellows(fields.object("bellows"));
        return fields.make(() -> new Accordion(id, name, treble, bass, bellows));
    }

    private static TrebleKeyboard treble(Fields fields) {
        int lowest = fields.wholeNumber("lowestMidi");
        int highest = fields.wholeNumber("highestMidi");
        int width = fields.wholeNumber("whiteKeyMicrons");
        List<RegisterSwitch> switches =
                fields.objects("switches").stream().map(AccordionFile::register).toList();
        return fields.make(() -> new TrebleKeyboard(lowest, highest, width, switches));
    }

    private static RegisterSwitch register(Fields fields) {
        String id = fields.text("id");
        String name = fields.text("name");
        Set<ReedBank> banks = EnumSet.noneOf(ReedBank.class);
        banks.addAll(fields.choices("banks", ReedBank.class));
        boolean works = fields.flag("works");
        int reach = fields.wholeNumber("reachMillis");
        return fields.make(() -> new RegisterSwitch(id, name, banks, works, reach));
    }

    private static Bellows bellows(Fields fields) {
        List<Bellows.OpeningVolume> volumes =
                fields.objects("volumes").stream().map(AccordionFile::volume).toList();
        int comfortable = fields.wholeNumber("comfortableOpeningMm");
        int full = fields.wholeNumber("fullOpeningMm");
        int capacity = fields.wholeNumber("capacityReedSeconds");
        Bellows.Appetites appetites = appetites(fields.object("appetites"));
        int turn = fields.wholeNumber("turnMillis");
        boolean measured = fields.flag("measured");
        return fields.make(() -> new Bellows(volumes, comfortable, full, capacity, appetites, turn, measured));
    }

    private static Bellows.OpeningVolume volume(Fields fields) {
        int opening = fields.wholeNumber("openingMm");
        int millilitres = fields.wholeNumber("millilitres");
        return fields.make(() -> new Bellows.OpeningVolume(opening, millilitres));
    }

    private static Bellows.Appetites appetites(Fields fields) {
        TreeMap<ReedBank, Integer> banks = new TreeMap<>(fields.numbers("banks", ReedBank.class));
        int bass = fields.wholeNumber("bassButton");
        int chord = fields.wholeNumber("chordButton");
        TreeMap<Loudness, Integer> loudness = new TreeMap<>(fields.numbers("loudness", Loudness.class));
        return fields.make(() -> new Bellows.Appetites(banks, bass, chord, loudness));
    }

    /** The profile without format and version, as it also stands in other files of ours. */
    static ObjectNode tree(Accordion accordion) {
        ObjectNode tree = JsonFile.object().put("id", accordion.id()).put("name", accordion.name());
        putTreble(tree.putObject("treble"), accordion.treble());
        BassJson.put(tree.putObject("bass"), accordion.bass());
        putBellows(tree.putObject("bellows"), accordion.bellows());
        return tree;
    }

    private static void putTreble(ObjectNode tree, TrebleKeyboard treble) {
        tree.put("lowestMidi", treble.lowestMidi());
        tree.put("highestMidi", treble.highestMidi());
        tree.put("whiteKeyMicrons", treble.whiteKeyMicrons());
        ArrayNode switches = tree.putArray("switches");
        for (RegisterSwitch register : treble.switches()) {
            ObjectNode one = switches.addObject().put("id", register.id()).put("name", register.name());
            ArrayNode banks = one.putArray("banks");
            register.banks().forEach(bank -> banks.add(Fields.word(bank)));
            one.put("works", register.works()).put("reachMillis", register.reachMillis());
        }
    }

    private static void putBellows(ObjectNode tree, Bellows bellows) {
        ArrayNode volumes = tree.putArray("volumes");
        for (Bellows.OpeningVolume row : bellows.volumes())
            volumes.addObject().put("openingMm", row.openingMm()).put("millilitres", row.millilitres());
        tree.put("comfortableOpeningMm", bellows.comfortableOpeningMm());
        tree.put("fullOpeningMm", bellows.fullOpeningMm());
        tree.put("capacityReedSeconds", bellows.capacityReedSeconds());
        ObjectNode appetites = tree.putObject("appetites");
        ObjectNode banks = appetites.putObject("banks");
        bellows.appetites().banks().forEach((bank, value) -> banks.put(Fields.word(bank), value));
        appetites.put("bassButton", bellows.appetites().bassButton());
        appetites.put("chordButton", bellows.appetites().chordButton());
        ObjectNode loudness = appetites.putObject("loudness");
        bellows.appetites().loudness().forEach((level, value) -> loudness.put(Fields.word(level), value));
        tree.put("turnMillis", bellows.turnMillis()).put("measured", bellows.measured());
    }
}
