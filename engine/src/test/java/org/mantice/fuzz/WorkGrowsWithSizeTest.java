package org.mantice.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.mantice.reading.MidiBytes;
import org.mantice.reading.MidiBytes.Track;
import org.mantice.reading.ReadOptions;
import org.mantice.reading.TuneReadException;
import org.mantice.reading.TuneReader;
import org.mantice.tune.Tune;
import org.mantice.writing.MusicXmlWriter;

/**
 * Twice the input makes twice the work and no more: counted in bytes that the thread allocates, which does not depend on
 * the machine's load as time does. A quadratic part would make it four times.
 */
class WorkGrowsWithSizeTest {
    private static final int SIZE = 1_500;
    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    /** A tune in ABC of {@code size} measures. */
    private static IntFunction<byte[]> abc(String measure) {
        return size -> ("X:1\nM:4/4\nL:1/8\nK:C\n" + (measure + "\n").repeat(size)).getBytes(StandardCharsets.UTF_8);
    }

    private static IntFunction<byte[]> xml(String measure) {
        return size -> ("<score-partwise><part-list><score-part id=\"P1\"/></part-list><part id=\"P1\"><measure>"
                        + "<attributes><divisions>2</divisions></attributes>" + note("G") + "</measure>"
                        + ("<measure>" + measure + "</measure>").repeat(size) + "</part></score-partwise>")
                .getBytes(StandardCharsets.UTF_8);
    }

    private static String note(String step) {
        return "<note><pitch><step>" + step + "</step><octave>4</octave></pitch><duration>4</duration></note>";
    }

    private static String sound(String attribute) {
        return "<direction><direction-type><words>x</words></direction-type><sound " + attribute + "/></direction>";
    }

    private static byte[] midi(int size, boolean chords, boolean words) {
        Track track = new Track().meter(0, 3, 2);
        for (int i = 0; i < size; i++) {
            track.note(1, 60 + i % 12, 480L * i, 480L * i + 470);
            if (chords) track.note(1, 40 + i % 9, 480L * i, 480L * i + 900);
            if (words) track.lyric(480L * i, "la ").tempo(480L * i, 500_000 + i % 7);
        }
        return MidiBytes.file(0, 480, track);
    }

    private static Arguments shape(String name, IntFunction<byte[]> input) {
        return Arguments.of(name, input);
    }

    static Stream<Arguments> shapes() {
        return Stream.of(
                shape("abc measures", abc("\"Am\"C2EG c>d (3efg|")),
                shape("abc repeats", abc("|:CDEF|1GABc:|2 cBAG|]")),
                shape("abc slurs, ties and graces", abc("(C{gef}D-D)|~E!trill!F .G^A-|A4(|")),
                shape("abc lyrics", abc("CDEF|\nw:la- la * | la_")),
                shape("abc voices", abc("[V:1]CDEF|\n[V:2]C4|")),
                shape("abc parts", abc("P:A\nCDEF|\nP:B\nGABc|")),
                shape("abc fields", abc("[M:3/4][L:1/16][K:Dm][Q:90]C|% remark\nN:note")),
                shape("abc hairpins and signs", abc("!<(!C!<)!D!segno!E!coda!F|!D.S.!")),
                shape("abc overlays and chords", abc("[CEG]4 & C2D2|")),
                shape("abc brackets left open", abc("[CE")),
                shape("abc braces left open", abc("{CE")),
                shape("abc quotes left open", abc("\"Am")),
                shape("abc lines that go on", abc("CDEF|\\")),
                shape("xml measures", xml(note("A"))),
                shape(
                        "xml repeats",
                        xml("<barline location=\"left\"><repeat direction=\"forward\"/></barline>" + note("B")
                                + "<barline><repeat direction=\"backward\"/></barline>")),
                shape(
                        "xml endings",
                        xml("<barline location=\"left\"><ending number=\"1\" type=\"start\"/></barline>" + note("B")
                                + "<barline><ending number=\"1\" type=\"stop\"/></barline>")),
                shape("xml segnos and jumps", xml(sound("segno=\"a\"") + note("C") + sound("dalsegno=\"a\""))),
                shape(
                        "xml ties and slurs",
                        xml(
                                note("D")
                                        .replace(
                                                "</duration>",
                                                "</duration><tie type=\"start\"/><notations><slur type=\"start\"/></notations>"))),
                shape(
                        "xml hairpins",
                        xml("<direction><direction-type><wedge type=\"crescendo\"/></direction-type></direction>"
                                + note("E"))),
                shape(
                        "xml voices",
                        xml(note("F")
                                + "<backup><duration>4</duration></backup>"
                                + note("A").replace("</duration>", "</duration><voice>2</voice>"))),
                shape("xml one full measure", size -> xml(note("G").repeat(size))
                        .apply(1)),
                shape("midi notes", size -> midi(size, false, false)),
                shape("midi chords", size -> midi(size, true, false)),
                shape("midi words and tempos", size -> midi(size, true, true)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("shapes")
    void readingTwiceAsMuchTakesTwiceTheWork(String name, IntFunction<byte[]> input) {
        byte[] once = input.apply(SIZE);
        byte[] twice = input.apply(2 * SIZE);
        WorkGrowsWithSizeTest.read(once);

        assertTimeout(
                Duration.ofSeconds(20),
                () -> assertGrowth(
                        name, () -> WorkGrowsWithSizeTest.read(once), () -> WorkGrowsWithSizeTest.read(twice)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("shapes")
    void writingTwiceAsMuchTakesTwiceTheWork(String name, IntFunction<byte[]> input) {
        Tune once = WorkGrowsWithSizeTest.read(input.apply(SIZE));
        Tune twice = WorkGrowsWithSizeTest.read(input.apply(2 * SIZE));
        if (once == null || twice == null) return; // refused: judged by the other test
        MusicXmlWriter.write(once);

        assertTimeout(
                Duration.ofSeconds(20),
                () -> assertGrowth(name, () -> MusicXmlWriter.write(once), () -> MusicXmlWriter.write(twice)));
    }

    private static void assertGrowth(String name, Runnable once, Runnable twice) {
        long one = allocated(once);
        long two = allocated(twice);

        assertThat(two)
                .as("%s: bytes allocated, %d for half the size", name, one)
                .isLessThan(one * 5 / 2 + 200_000);
    }

    private static long allocated(Runnable work) {
        long thread = Thread.currentThread().getId();
        long before = THREADS.getThreadAllocatedBytes(thread);
        work.run();
        return THREADS.getThreadAllocatedBytes(thread) - before;
    }

    /** Refused input counts too. */
    private static Tune read(byte[] bytes) {
        try {
            return new TuneReader().read("large", bytes, ReadOptions.DEFAULT).tune();
        } catch (TuneReadException e) {
            return null;
        }
    }
}
