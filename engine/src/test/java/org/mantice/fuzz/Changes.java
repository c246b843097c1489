package org.mantice.fuzz;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;

/** Damages inputs at random; the same seed gives the same damage. */
final class Changes implements Supplier<byte[]> {
    private static final int MOST_BYTES = 8_192;

    private final Random random;
    private final List<byte[]> inputs;
    private final List<byte[]> words;

    /**
     * @param inputs what is damaged, one or more
     * @param words of the format's language, one or more
     */
    Changes(long seed, List<byte[]> inputs, List<byte[]> words) {
        this.random = new Random(seed);
        this.inputs = inputs;
        this.words = words;
    }

    /** One of the inputs with one to eight changes. */
    @Override
    public byte[] get() {
        byte[] bytes = any(inputs);
        for (int changes = 1 + random.nextInt(8); changes > 0; changes--) bytes = changed(bytes);
        return Arrays.copyOf(bytes, Math.min(bytes.length, MOST_BYTES));
    }

    /** One change. */
    byte[] changed(byte[] bytes) {
        int from = random.nextInt(bytes.length + 1);
        int to = Math.min(bytes.length, from + random.nextInt(random.nextInt(10) == 0 ? bytes.length + 1 : 12));
        byte[] part = Arrays.copyOfRange(bytes, from, to);
        return switch (random.nextInt(6)) {
            case 0, 1 -> with(bytes, from, from, any(words));
            case 2 -> with(bytes, from, to, new byte[0]);
            case 3 -> with(bytes, from, to, new byte[] {(byte) random.nextInt(256)});
            case 4 -> with(bytes, random.nextInt(from + 1), from, part);
            default -> {
                byte[] other = any(inputs);
                int start = random.nextInt(other.length);
                yield with(bytes, from, to, Arrays.copyOfRange(other, start, Math.min(other.length, start + 80)));
            }
        };
    }

    private byte[] any(List<byte[]> some) {
        return some.get(random.nextInt(some.size()));
    }

    private static byte[] with(byte[] bytes, int from, int to, byte[] put) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(bytes, 0, from);
        out.writeBytes(put);
        out.write(bytes, to, bytes.length - to);
        return out.toByteArray();
    }
}
