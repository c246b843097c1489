package org.mantice.app.work;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.mantice.app.model.OpenTune;
import org.mantice.app.model.Setup;
import org.mantice.app.model.Wishes;
import org.mantice.editing.Edits;
import org.mantice.editing.TuneEdit;
import org.mantice.fault.Cause;
import org.mantice.fault.FilePlace;
import org.mantice.fault.ManticeException;
import org.mantice.file.AccordionFile;
import org.mantice.file.EditJson;
import org.mantice.file.LockJson;
import org.mantice.file.PlanFile;
import org.mantice.file.PlayerFile;
import org.mantice.pattern.Accompaniment;
import org.mantice.pattern.AccompanimentJson;
import org.mantice.performance.ChordsPlayed;
import org.mantice.tune.Loudness;

/**
 * One copy of unsaved work as a ZIP archive: {@code recovery.json} says what it is of, beside it lie the profiles and
 * the plan as the files they always are, and the tune's own bytes where they are few.
 */
final class RecoveryArchive {
    private static final String FORMAT = "mantice-recovery";
    private static final String HEAD = "recovery.json";
    private static final String ACCORDION = "setup" + AccordionFile.SUFFIX;
    private static final String PLAYER = "setup" + PlayerFile.SUFFIX;
    private static final String PLAN = "chosen" + PlanFile.SUFFIX;
    private static final String TUNE = "tune";
    /** Bytes of an archive: many times what the longest tune needs. */
    static final int MOST_BYTES = 64 * 1024 * 1024;

    /** What is said of a copy before it is restored. */
    record Head(String title, String tuneFile, Instant writtenAt, Optional<Path> savedTo) {}

    private RecoveryArchive() {}

    static byte[] bytes(UnsavedWork work, Instant now) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            put(zip, HEAD, SmallJson.bytes(head(work, now)));
            put(zip, ACCORDION, AccordionFile.of(work.setup().accordion()).bytes());
            put(zip, PLAYER, PlayerFile.of(work.setup().player()).bytes());
            if (work.plan().isPresent()) put(zip, PLAN, work.plan().get().bytes());
            if (work.content().isSmall()) put(zip, TUNE, work.content().bytes());
        } catch (IOException e) {
            throw new IllegalStateException("an archive in memory can be written", e);
        }
        return out.toByteArray();
    }

    private static void put(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(bytes);
        zip.closeEntry();
    }

    private static ObjectNode head(UnsavedWork work, Instant now) {
        ObjectNode tree = SmallJson.fresh(FORMAT).put("writtenAt", now.toString());
        tree.put("title", work.tune().read().tune().title());
        work.savedTo().ifPresent(file -> tree.put("savedTo", file.toString()));
        ObjectNode tune = tree.putObject("tune").put("name", work.content().name());
        work.content().file().ifPresent(file -> tune.put("file", file.toString()));
        tune.put("sha256", work.content().fingerprint());
        work.tune().part().ifPresent(part -> tune.put("part", part));
        work.tune().read().entry().ifPresent(entry -> tune.put("entry", entry));
        Wishes wishes = work.setup().wishes();
        ObjectNode wished = tree.putObject("wishes");
        wishes.beatsPerMinute().ifPresent(beats -> wished.put("beatsPerMinute", beats));
        wishes.timesThrough().ifPresent(times -> wished.put("timesThrough", times));
        wished.put("transposition", wishes.transposition());
        wishes.loudness().ifPresent(loudness -> wished.put("loudness", loudness.name()));
        wished.put("alternates", wishes.chords().alternates().name());
        wished.put("optional", wishes.chords().optional());
        wished.put("plans", wishes.plans());
        wished.set("leftHand", AccompanimentJson.tree(wishes.leftHand()));
        tree.set("locks", LockJson.tree(work.setup().locks()));
        tree.set("edits", EditJson.tree(work.setup().edits()));
        return tree;
    }

    /**
     * @throws SmallJson.NewerVersion if a newer version wrote it
     * @throws IOException if it is damaged or something else
     */
    static Head head(Path archive) throws IOException {
        return in(archive, root -> {
            ObjectNode tree = SmallJson.read(root.resolve(HEAD), FORMAT);
            return new Head(
                    SmallJson.text(tree.path("title")).orElse(""),
                    needed(tree.path("tune"), "name"),
                    Instant.parse(needed(tree, "writtenAt")),
                    SmallJson.path(tree.path("savedTo")));
        });
    }

    /**
     * @param elsewhere where the tune is now, if the player said so
     * @throws IOException if the copy is damaged or something else
     */
    static Restored restore(Path archive, Optional<Path> elsewhere) throws IOException {
        return in(archive, root -> restore(root, SmallJson.read(root.resolve(HEAD), FORMAT), elsewhere));
    }

    private static Restored restore(Path root, ObjectNode tree, Optional<Path> elsewhere) throws IOException {
        JsonNode tune = tree.path("tune");
        Optional<Path> file = SmallJson.path(tune.path("file"));
        Optional<TuneContent> copied = copied(root.resolve(TUNE), needed(tune, "name"), file);
        String fingerprint = needed(tune, "sha256");
        if (copied.isPresent() && !copied.get().fingerprint().equals(fingerprint))
            throw new IOException("the copied tune is not the one that was planned");
        Path there = elsewhere.or(() -> file).orElse(Path.of(needed(tune, "name")));
        Optional<TuneContent> content = copied.or(() -> readable(there));
        if (content.isEmpty()) return new Restored.TuneMissing(there);
        if (!content.get().fingerprint().equals(fingerprint)) return new Restored.TuneChanged(there);
        return new Restored.Work(work(root, tree, content.get()));
    }

    /** The file as far as it can be read: one that cannot is as good as missing. */
    private static Optional<TuneContent> readable(Path tune) {
        try {
            return Optional.of(TuneContent.of(tune));
        } catch (ManticeException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static UnsavedWork work(Path root, ObjectNode tree, TuneContent content) throws IOException {
        OpenTune tune = content.open(
                SmallJson.text(tree.path("tune").path("part")),
                SmallJson.text(tree.path("tune").path("entry")));
        Setup setup = new Setup(
                AccordionFile.read(root.resolve(ACCORDION)).accordion(),
                PlayerFile.read(root.resolve(PLAYER)).player(),
                wishes(tree.path("wishes")),
                LockJson.locks(tree.path("locks")),
                edits(tree, tune));
        Path plan = root.resolve(PLAN);
        return new UnsavedWork(
                tune,
                content,
                setup,
                Files.exists(plan) ? Optional.of(PlanFile.read(plan)) : Optional.empty(),
                SmallJson.path(tree.path("savedTo")));
    }

    /** Copies from before tunes could be edited have none; edits that do not fit are damage. */
    private static List<TuneEdit> edits(ObjectNode tree, OpenTune tune) throws IOException {
        if (!tree.has("edits")) return List.of();
        List<TuneEdit> edits = EditJson.edits(tree.path("edits"));
        Edits.apply(tune.read().tune(), edits);
        return edits;
    }

    private static Optional<TuneContent> copied(Path copy, String name, Optional<Path> file) throws IOException {
        if (!Files.exists(copy)) return Optional.empty();
        try (InputStream in = Files.newInputStream(copy)) {
            return Optional.of(new TuneContent(name, file, in.readNBytes(TuneContent.SMALL_BYTES + 1)));
        }
    }

    private static Wishes wishes(JsonNode wished) {
        OptionalInt plans = SmallJson.number(wished.path("plans"));
        return new Wishes(
                SmallJson.number(wished.path("beatsPerMinute")),
                SmallJson.number(wished.path("timesThrough")),
                SmallJson.number(wished.path("transposition")).orElse(0),
                SmallJson.text(wished.path("loudness")).map(Loudness::valueOf),
                chords(wished),
                plans.orElse(Wishes.USUAL_PLANS),
                wished.path("leftHand").isObject()
                        ? AccompanimentJson.of(wished.path("leftHand"), FilePlace.of(HEAD))
                        : Accompaniment.NONE);
    }

    /** A copy from before there was a choice has none. */
    private static ChordsPlayed chords(JsonNode wished) {
        return new ChordsPlayed(
                SmallJson.text(wished.path("alternates"))
                        .map(ChordsPlayed.Alternates::valueOf)
                        .orElse(ChordsPlayed.USUAL.alternates()),
                wished.path("optional").asBoolean(ChordsPlayed.USUAL.optional()));
    }

    private static String needed(JsonNode tree, String field) throws IOException {
        return SmallJson.text(tree.path(field))
                .orElseThrow(() -> new IOException(field + " is " + tree.path(field) + "; allowed: a text"));
    }

    private interface Reading<T> {
        T of(Path root) throws IOException;
    }

    /**
     * Opens an archive that anything may have happened to; whatever is wrong with it is one kind of failure. The JDK's
     * reader of archives also answers damage with unchecked exceptions.
     */
    private static <T> T in(Path archive, Reading<T> reading) throws IOException {
        if (!Files.isRegularFile(archive)) throw new IOException("it is not a file");
        if (Files.size(archive) > MOST_BYTES)
            throw new IOException("the file has " + Files.size(archive) + " bytes; allowed: at most " + MOST_BYTES);
        try (FileSystem zip = FileSystems.newFileSystem(archive, (ClassLoader) null)) {
            return reading.of(zip.getPath("/"));
        } catch (RuntimeException e) {
            throw new IOException(Cause.words(e), e);
        }
    }
}
