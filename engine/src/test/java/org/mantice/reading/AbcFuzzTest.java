package org.mantice.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

/** Whatever the bytes, a tune or a refusal with its place comes of them. */
class AbcFuzzTest {
    private static final int ROUNDS = Integer.getInteger("mantice.fuzz.rounds", 3_000);

    private static final List<String> SEEDS = List.of(
            "%abc-2.1\nX:1\nT:Invented\nM:6/8\nL:1/8\nQ:3/8=80\nP:AAB\nU:T=!trill!\nm:~G2={A}G{F}G\nK:ADor clef=treble\n"
                    + "P:A\n|:\"Am\"{g}a>b(3ABc|1 ~G2 z[M:3/4]^c/2_d//=e:|2 [CEG]2- [CEG]|]\nw: la-la la_ *|\nP:B\n"
                    + "!p!!<(!.A2 !<)!(B c) & E6|Z2|]\n",
            "X:2\nT:Second\nM:C|\nK:Bb transpose=-2\nV:1\nV:2 clef=bass octave=-1\n[V:1]B4!D.C.!|]\n[V:2]\"m\"B,4|]\n",
            "X:3\nM:none\nK:none ^f _b\nabc'|[1,3 D,,\\\nE::[2 F{/gef}g y z|&A|\n% remark\n%%MIDI transpose 3\nW: end\n");

    private static final String SIGNS =
            "|:[](){}!+\"'^_=,/<>-~.&%\\*#$@;`0123456789ABCGabcgzZxXyKMLQPUVWwmITr \n\r\t\u00e9";

    private final Random random = new Random(20_111);

    @Test
    void changedTunesNeverBreakTheReader() {
        Assertions.assertTimeoutPreemptively(Duration.ofSeconds(20 + ROUNDS / 100L), () -> {
            int read = 0;
            for (int round = 0; round < ROUNDS; round++) if (isRead(changed())) read++;

            assertThat(read).isBetween(ROUNDS / 4, ROUNDS - 1);
        });
    }

    private static boolean isRead(byte[] bytes) {
        TuneReader reader = new TuneReader();
        try {
            ReadTune tune = reader.read("fuzz.abc", bytes, ReadOptions.DEFAULT);
            assertThat(tune.tune().hasNotes()).isTrue();
            return true;
        } catch (TuneReadException e) {
            assertThat(e.getMessage()).startsWith("fuzz.abc").hasLineCount(1).contains("allowed");
            return false;
        } catch (RuntimeException e) {
            throw new AssertionError("seen with:\n" + new String(bytes, StandardCharsets.ISO_8859_1), e);
        }
    }

    private byte[] changed() {
        List<String> lines = new ArrayList<>();
        for (String seed : SEEDS) if (random.nextInt(3) > 0) lines.addAll(List.of(seed.split("(?<=\n)")));
        for (int change = random.nextInt(4); change > 0 && lines.size() > 1; change--) {
            int from = random.nextInt(lines.size());
            int to = random.nextInt(lines.size());
            switch (random.nextInt(4)) {
                case 0 -> lines.remove(from);
                case 1 -> lines.add(to, lines.get(from));
                case 2 -> Collections.swap(lines, from, to);
                default -> lines.set(from, lines.get(from).repeat(1 + random.nextInt(20)));
            }
        }
        StringBuilder text = new StringBuilder(String.join("", lines));
        for (int change = random.nextInt(12); change > 0 && text.length() > 0; change--) {
            int at = random.nextInt(text.length());
            char sign = SIGNS.charAt(random.nextInt(SIGNS.length()));
            switch (random.nextInt(3)) {
                case 0 -> text.setCharAt(at, sign);
                case 1 -> text.insert(at, sign);
                default -> text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(5)));
            }
        }
        byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
        if (random.nextInt(10) == 0 && bytes.length > 0)
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        return bytes;
    }

    @Test
    void workGrowsWithTheSizeAlone() {
        String head = "X:1\nM:4/4\nL:1/8\nK:C\n";
        List<String> bodies = List.of(
                "[", "{", "\"", "!", "(", "+", "[M:", "\\", "`", "c'", "|:", "[1", "(3", "^", "C-", "c>", "&", ")");
        for (String body : bodies) {
            String long1 = head + "CDEF|" + body.repeat(200_000 / body.length()) + "\n";
            Assertions.assertTimeoutPreemptively(
                    Duration.ofSeconds(20), () -> isRead(long1.getBytes(StandardCharsets.UTF_8)), body);
        }
    }

    @Test
    void manyTunesAreListedAndTheLastIsRead() {
        ByteArrayOutputStream book = new ByteArrayOutputStream();
        for (int i = 1; i <= 20_000; i++)
            book.writeBytes(("X:" + i + "\nT:Tune " + i + "\nM:4/4\nK:C\nCDEF|\n\n").getBytes(StandardCharsets.UTF_8));

        ReadTune last = Assertions.assertTimeoutPreemptively(Duration.ofSeconds(20), () -> new TuneReader()
                .read("book.abc", book.toByteArray(), ReadOptions.DEFAULT.withTune("Tune 20000")));

        assertThat(last.tune().title()).isEqualTo("Tune 20000");
    }
}
