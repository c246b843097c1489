package org.mantice.app.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.mantice.app.model.Setup;
import org.mantice.file.PlanFile;

class RecoveryCopyTest {
    private static final Instant NOW = Instant.parse("2031-05-04T10:15:30Z");
    private static final String ID = "00000000-0000-0000-0000-00000000000a";

    @TempDir
    Path temp;

    private final List<Notice> notices = new ArrayList<>();
    private AppFolder folder;
    private RecoveryCopy ours;
    private final List<AutoCloseable> open = new ArrayList<>();

    @BeforeEach
    void start() {
        folder = new AppFolder(temp.resolve("state"), temp.resolve("state"), notices::add);
        ours = instance();
    }

    @AfterEach
    void end() throws Exception {
        for (AutoCloseable one : open) one.close();
    }

    private RecoveryCopy instance() {
        RecoveryCopy copy = new RecoveryCopy(folder, InstantSource.fixed(NOW));
        open.add(copy);
        return copy;
    }

    private List<AbandonedCopy> found() {
        List<AbandonedCopy> found = ours.findAbandoned();
        open.addAll(found);
        return found;
    }

    private Path copyOf(String id) {
        return folder.recovery().resolve(id + RecoveryFolder.SUFFIX);
    }

    /** A copy as a dead instance leaves it. */
    private Path leave(UnsavedWork work) throws IOException {
        Files.createDirectories(folder.recovery());
        return Files.write(copyOf(ID), RecoveryArchive.bytes(work, NOW));
    }

    private Path leave(byte[] bytes) throws IOException {
        Files.createDirectories(folder.recovery());
        return Files.write(copyOf(ID), bytes);
    }

    private Path leaveChanged(String entry, String content) throws IOException {
        Path copy = leave(Works.unplanned());
        try (FileSystem zip = FileSystems.newFileSystem(URI.create("jar:" + copy.toUri()), Map.of())) {
            Files.writeString(zip.getPath(entry), content);
        }
        return copy;
    }

    private List<String> left() throws IOException {
        try (Stream<Path> files = Files.list(folder.recovery())) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private UnsavedWork restored(AbandonedCopy copy) {
        return ((Restored.Work) ours.restore(copy).orElseThrow()).work();
    }

    @Test
    void everythingComesBackAsItWas() throws IOException {
        UnsavedWork work = Works.planned(temp.resolve("weir.plan.json"));
        leave(work);

        AbandonedCopy copy = found().get(0);
        UnsavedWork back = restored(copy);

        assertThat(copy.title()).isEqualTo("Lanterns at the Weir");
        assertThat(copy.writtenAt()).isEqualTo(NOW);
        assertThat(copy.savedTo()).contains(temp.resolve("weir.plan.json"));
        assertThat(back.setup()).isEqualTo(work.setup());
        assertThat(back.tune().fileName()).isEqualTo(work.tune().fileName());
        assertThat(back.tune().read().fingerprint())
                .isEqualTo(work.tune().read().fingerprint());
        assertThat(back.plan().map(PlanFile::json)).isEqualTo(work.plan().map(PlanFile::json));
        assertThat(back.savedTo()).isEqualTo(work.savedTo());
        assertThat(notices).isEmpty();
    }

    @Test
    void workWithoutAPlanComesBackToo() throws IOException {
        leave(Works.unplanned());

        UnsavedWork back = restored(found().get(0));

        assertThat(back.plan()).isEmpty();
        assertThat(back.savedTo()).isEmpty();
        assertThat(back.setup().locks()).isEqualTo(Works.LOCKS);
    }

    @Test
    void tuneThatIsGoneComesBackFromTheCopy() throws IOException {
        Path tune =
                Files.write(temp.resolve("tune.musicxml"), TuneContent.example().bytes());
        Opened.Tune opened = (Opened.Tune) TuneOpening.open(tune);
        leave(new UnsavedWork(
                opened.tune(), opened.content(), Works.unplanned().setup(), Optional.empty(), Optional.empty()));
        Files.delete(tune);

        UnsavedWork back = restored(found().get(0));

        assertThat(back.content().file()).contains(tune.toAbsolutePath());
        assertThat(back.content().bytes()).isEqualTo(opened.content().bytes());
    }

    @Test
    void restoredWorkIsProtectedByTheNewInstancesOwnCopy() throws IOException {
        leave(Works.unplanned());

        restored(found().get(0));

        assertThat(left()).hasSize(2).noneMatch(name -> name.contains(ID));
        assertThat(found()).isEmpty();
    }

    @Test
    void discardedCopyIsGoneAndAClosedOneIsOfferedAgain() throws IOException {
        leave(Works.unplanned());

        ours.findAbandoned().forEach(AbandonedCopy::close);
        List<AbandonedCopy> again = found();
        again.get(0).discard();

        assertThat(again).hasSize(1);
        assertThat(left()).isEmpty();
    }

    @Test
    void copyOnOfferIsNotOfferedToAnotherInstance() throws IOException {
        leave(Works.unplanned());
        Files.createFile(folder.recovery().resolve(ID + ".lock"));

        assertThat(found()).hasSize(1);

        assertThat(instance().findAbandoned()).isEmpty();
        assertThat(OtherInstance.seenFromOutside(temp.resolve("state"))).isZero();
    }

    @Test
    void livingInstanceInThisProcessIsLeftAlone() throws IOException {
        RecoveryCopy other = instance();
        other.write(Works.unplanned());
        ours.write(Works.unplanned());

        assertThat(found()).isEmpty();
        assertThat(other.findAbandoned()).isEmpty();

        assertThat(left().stream().filter(name -> name.endsWith(RecoveryFolder.SUFFIX)))
                .hasSize(2);
        assertThat(OtherInstance.seenFromOutside(temp.resolve("state")))
                .as("looking must not let go of the locks")
                .isZero();
    }

    @Test
    void copyOfAnotherProcessIsOfferedOnceItHasCrashed() throws Exception {
        try (OtherInstance other = OtherInstance.writing(temp.resolve("state"))) {
            assertThat(found()).as("it lives").isEmpty();

            other.crash();

            assertThat(found()).extracting(AbandonedCopy::title).containsExactly("Lanterns at the Weir");
        }
    }

    @Test
    void nothingIsLeftAfterSavingOrACleanEnd() throws IOException {
        ours.write(Works.unplanned());
        ours.write(Works.unplanned());
        assertThat(left()).anyMatch(name -> name.endsWith(RecoveryFolder.SUFFIX));

        ours.remove();
        assertThat(left()).allMatch(name -> name.endsWith(".lock"));
        ours.write(Works.unplanned());
        ours.close();
        ours.write(Works.unplanned());

        assertThat(left()).isEmpty();
    }

    @Test
    void largeTuneIsReadFromItsFile() throws IOException {
        Path tune = largeTune();
        leave(Works.large(tune));

        UnsavedWork back = restored(found().get(0));

        assertThat(Files.size(tune)).isGreaterThan(TuneContent.SMALL_BYTES);
        assertThat(back.tune().part()).contains("1");
        assertThat(back.content().file()).contains(tune.toAbsolutePath());
    }

    @Test
    void largeTuneThatIsGoneCanBeLookedFor() throws IOException {
        Path tune = largeTune();
        leave(Works.large(tune));
        Path moved = Files.move(tune, temp.resolve("moved.musicxml"));
        Path other = Files.write(
                temp.resolve("other.musicxml"), TuneContent.example().bytes());

        AbandonedCopy copy = found().get(0);
        Restored gone = ours.restore(copy).orElseThrow();
        Restored wrong = ours.restore(copy, other).orElseThrow();
        Restored folderInstead = ours.restore(copy, temp).orElseThrow();
        Restored right = ours.restore(copy, moved).orElseThrow();

        assertThat(gone).isEqualTo(new Restored.TuneMissing(tune.toAbsolutePath()));
        assertThat(wrong).isEqualTo(new Restored.TuneChanged(other));
        assertThat(folderInstead).isEqualTo(new Restored.TuneMissing(temp));
        assertThat(right).isInstanceOf(Restored.Work.class);
        assertThat(notices).isEmpty();
    }

    private Path largeTune() throws IOException {
        String text = new String(TuneContent.example().bytes(), java.nio.charset.StandardCharsets.UTF_8);
        return Files.writeString(temp.resolve("large.musicxml"), text + " ".repeat(TuneContent.SMALL_BYTES));
    }

    @Test
    void newestCopyComesFirst() throws IOException {
        leave(Works.unplanned());
        Files.write(
                copyOf(ID.replace('a', 'b')), RecoveryArchive.bytes(Works.unplanned(), NOW.plus(Duration.ofHours(1))));

        assertThat(found()).extracting(AbandonedCopy::writtenAt).containsExactly(NOW.plus(Duration.ofHours(1)), NOW);
    }

    @Test
    void halfWrittenCopyIsSetAsideAndTheRestIsFound() throws IOException {
        byte[] whole = RecoveryArchive.bytes(Works.unplanned(), NOW);
        for (int tenths = 0; tenths < 10; tenths++) {
            notices.clear();
            Path copy = leave(Arrays.copyOf(whole, whole.length * tenths / 10));
            Files.write(copyOf(ID.replace('a', 'b')), whole);

            List<AbandonedCopy> found = ours.findAbandoned();

            assertThat(found).hasSize(1);
            assertThat(copy).doesNotExist();
            assertThat(Path.of(copy + ".broken")).exists();
            assertThat(notices).extracting(Notice::key).containsExactly("work.recovery-broken");
            found.forEach(AbandonedCopy::close);
        }
    }

    @Test
    void copyWithBytesChangedAnywhereNeverBringsTheStartDown() throws IOException {
        byte[] whole = RecoveryArchive.bytes(Works.unplanned(), NOW);
        Random random = new Random(7);
        int restored = 0;
        for (int i = 0; i < 300; i++) {
            byte[] changed = whole.clone();
            int places = 1 + random.nextInt(4);
            for (int k = 0; k < places; k++) changed[random.nextInt(changed.length)] = (byte) random.nextInt(256);
            leave(changed);

            for (AbandonedCopy copy : ours.findAbandoned()) {
                if (ours.restore(copy).isPresent()) restored++;
                copy.close();
            }
        }
        assertThat(notices).isNotEmpty().allMatch(notice -> notice.key().equals("work.recovery-broken"));
        assertThat(restored + notices.size()).isEqualTo(300);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "\0\0\0",
                "[]",
                "{\"format\": \"mantice-recovery\", \"version\": \"0.1\"}",
                "{\"format\": \"mantice-recovery\", \"version\": \"0.1\", \"tune\": {\"name\": 5}, \"writtenAt\": \"x\"}",
                "{\"format\": \"mantice-recovery\", \"version\": \"0.1\", \"tune\": {\"name\": \"a\"}, \"writtenAt\": \"x\"}",
                "{\"format\": \"mantice-plan\", \"version\": \"0.1\", \"tune\": {\"name\": \"a\"}}",
                "deep"
            })
    void foreignHeadIsSetAside(String head) throws IOException {
        leaveChanged("/recovery.json", head.equals("deep") ? "{\"a\":" + "[".repeat(100_000) : head);

        assertThat(found()).isEmpty();
        assertThat(notices).extracting(Notice::key).containsExactly("work.recovery-broken");
    }

    @Test
    void copyFromBeforeTunesCouldBeEditedComesBackWithoutEdits() throws IOException {
        leaveChanged("/recovery.json", head(tree -> tree.remove("edits")));

        assertThat(restored(found().get(0)).setup())
                .isEqualTo(withoutEdits(Works.unplanned().setup()));
    }

    @Test
    void copyWhoseEditsDoNotFitItsTuneIsSetAside() throws IOException {
        leaveChanged(
                "/recovery.json",
                head(tree -> tree.withArray("edits").addObject().put("edit", "accept-chords")));

        assertThat(ours.restore(found().get(0))).isEmpty();
        assertThat(notices).extracting(Notice::key).containsExactly("work.recovery-broken");
    }

    private static Setup withoutEdits(Setup setup) {
        return new Setup(setup.accordion(), setup.player(), setup.wishes(), setup.locks());
    }

    /** What a copy says first, changed. */
    private String head(Consumer<ObjectNode> change) throws IOException {
        Path copy = leave(Works.unplanned());
        try (FileSystem zip = FileSystems.newFileSystem(URI.create("jar:" + copy.toUri()), Map.of())) {
            ObjectNode tree = (ObjectNode) new ObjectMapper().readTree(Files.readString(zip.getPath("/recovery.json")));
            change.accept(tree);
            return tree.toString();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"/setup.accordion.json", "/setup.player.json", "/chosen.plan.json", "/tune"})
    void damagedPartIsFoundOutWhenRestored(String part) throws IOException {
        Path copy = leaveChanged(part, "{\"format\": \0");

        Optional<Restored> restored = ours.restore(found().get(0));

        assertThat(restored).isEmpty();
        assertThat(copy).doesNotExist();
        assertThat(notices).extracting(Notice::key).containsExactly("work.recovery-broken");
        assertThat(found()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"wishes\": {\"beatsPerMinute\": 96}, \"locks\": 5",
                "\"wishes\": {\"loudness\": \"LOUD\"}, \"locks\": []",
                "\"wishes\": {\"plans\": 99}, \"locks\": []",
                "\"wishes\": {}, \"locks\": [{\"lock\": \"finger\", \"finger\": 9}]",
                "\"wishes\": {}, \"locks\": [{\"lock\": \"pedal\"}]",
                "\"wishes\": {}, \"locks\": [null]"
            })
    void wrongWishesAndLocksAreFoundOutWhenRestored(String fields) throws IOException {
        leaveChanged("/recovery.json", """
                {"format": "mantice-recovery", "version": "0.1", "writtenAt": "2031-05-04T10:15:30Z", "title": "T",
                 "tune": {"name": "a", "sha256": "%s"}, %s}""".formatted(TuneContent.example().fingerprint(), fields));

        Optional<Restored> restored = ours.restore(found().get(0));

        assertThat(restored).isEmpty();
        assertThat(notices).extracting(Notice::key).containsExactly("work.recovery-broken");
    }

    @Test
    void copyOfANewerVersionIsLeftAndSaid() throws IOException {
        Path copy = leaveChanged("/recovery.json", "{\"format\": \"mantice-recovery\", \"version\": \"1.0\"}");

        assertThat(found()).isEmpty();
        assertThat(copy).exists();
        assertThat(notices).extracting(Notice::key).containsExactly("work.recovery-newer");
    }

    @Test
    void hugeFileAndFolderInPlaceOfACopyAreSetAside() throws IOException {
        Files.createDirectories(copyOf(ID.replace('a', 'b')));
        try (RandomAccessFile file = new RandomAccessFile(copyOf(ID).toFile(), "rw")) {
            file.setLength(RecoveryArchive.MOST_BYTES + 1L);
        }

        assertThat(found()).isEmpty();
        assertThat(notices)
                .extracting(Notice::key)
                .containsOnly("work.recovery-broken")
                .hasSize(2);
    }

    @Test
    void foreignFilesAreNotTouched() throws IOException {
        Files.createDirectories(folder.recovery());
        Files.writeString(folder.recovery().resolve("notes.txt"), "mine");
        Files.writeString(folder.recovery().resolve("holiday" + RecoveryFolder.SUFFIX), "mine");

        assertThat(found()).isEmpty();
        assertThat(left()).containsExactly("holiday.recovery.zip", "notes.txt");
        assertThat(notices).isEmpty();
    }

    @Test
    void leftoversOfAWriteThatNeverEndedAreSweptAfterADay() throws IOException {
        Files.createDirectories(folder.recovery());
        Path lock = Files.createFile(folder.recovery().resolve(ID + ".lock"));
        Path half = Files.createFile(folder.recovery().resolve("." + ID + ".recovery.zip.x.tmp"));
        for (Path file : List.of(lock, half))
            Files.setLastModifiedTime(file, FileTime.from(NOW.minus(Duration.ofHours(23))));
        assertThat(found()).isEmpty();
        assertThat(left()).as("perhaps still being written").hasSize(2);

        for (Path file : List.of(lock, half))
            Files.setLastModifiedTime(file, FileTime.from(NOW.minus(Duration.ofHours(25))));

        assertThat(found()).isEmpty();
        assertThat(left()).isEmpty();
    }

    @Test
    void whereNothingCanBeWrittenThePlayerIsToldOnceAndWorkGoesOn() throws IOException {
        Path inTheWay = Files.writeString(temp.resolve("file"), "not a folder");
        RecoveryCopy copy = new RecoveryCopy(new AppFolder(inTheWay, inTheWay, notices::add), InstantSource.fixed(NOW));
        open.add(copy);

        copy.write(Works.unplanned());
        copy.write(Works.unplanned());

        assertThatCode(copy::remove).doesNotThrowAnyException();
        assertThat(copy.findAbandoned()).isEmpty();
        assertThat(notices).extracting(Notice::key).containsExactly("work.folder-not-written");
    }
}
