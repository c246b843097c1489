package org.mantice.reading;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Writes small MIDI files for tests, byte by byte after Standard MIDI Files 1.0. */
public final class MidiBytes {
    private record Event(long tick, int order, byte[] bytes) {}

    /** One track. Events may come in any order. */
    public static final class Track {
        private final List<Event> events = new ArrayList<>();

        public Track note(int channel, int pitch, long start, long end) {
            event(start, 3, 0x90 | channel - 1, pitch, 90);
            event(end, 1, 0x80 | channel - 1, pitch, 0);
            return this;
        }

        public Track name(String name) {
            return text(0, 0x03, name);
        }

        public Track lyric(long tick, String text) {
            return text(tick, 0x05, text);
        }

        public Track text(long tick, int type, String text) {
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            byte[] all = new byte[bytes.length + 3];
            all[0] = (byte) 0xff;
            all[1] = (byte) type;
            all[2] = (byte) bytes.length;
            System.arraycopy(bytes, 0, all, 3, bytes.length);
            events.add(new Event(tick, 2, all));
            return this;
        }

        public Track meter(long tick, int beats, int power) {
            return event(tick, 0, 0xff, 0x58, 4, beats, power, 24, 8);
        }

        public Track key(long tick, int fifths, boolean minor) {
            return event(tick, 0, 0xff, 0x59, 2, fifths & 0xff, minor ? 1 : 0);
        }

        public Track tempo(long tick, int micros) {
            return event(tick, 0, 0xff, 0x51, 3, micros >> 16, micros >> 8 & 0xff, micros & 0xff);
        }

        private Track event(long tick, int order, int... values) {
            byte[] bytes = new byte[values.length];
            for (int i = 0; i < values.length; i++) bytes[i] = (byte) values[i];
            events.add(new Event(tick, order, bytes));
            return this;
        }

        private byte[] bytes() {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            events.sort(Comparator.comparingLong(Event::tick).thenComparingInt(Event::order));
            long at = 0;
            for (Event event : events) {
                number(out, event.tick() - at);
                out.writeBytes(event.bytes());
                at = event.tick();
            }
            out.writeBytes(new byte[] {0, (byte) 0xff, 0x2f, 0});
            return out.toByteArray();
        }

        private static void number(ByteArrayOutputStream out, long value) {
            for (int shift = 21; shift > 0; shift -= 7)
                if (value >> shift != 0) out.write((int) (value >> shift & 0x7f | 0x80));
            out.write((int) (value & 0x7f));
        }
    }

    private MidiBytes() {}

    public static byte[] file(int format, int division, Track... tracks) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes("MThd".getBytes(StandardCharsets.US_ASCII));
        out.writeBytes(ByteBuffer.allocate(10)
                .putInt(6)
                .putShort((short) format)
                .putShort((short) tracks.length)
                .putShort((short) division)
                .array());
        for (Track track : tracks) {
            byte[] bytes = track.bytes();
            out.writeBytes("MTrk".getBytes(StandardCharsets.US_ASCII));
            out.writeBytes(ByteBuffer.allocate(4).putInt(bytes.length).array());
            out.writeBytes(bytes);
        }
        return out.toByteArray();
    }

    /** The same in RIFF. */
    public static byte[] riff(byte[] file) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes("RIFF".getBytes(StandardCharsets.US_ASCII));
        out.writeBytes(little(file.length + 12));
        out.writeBytes("RMIDdata".getBytes(StandardCharsets.US_ASCII));
        out.writeBytes(little(file.length));
        out.writeBytes(file);
        return out.toByteArray();
    }

    private static byte[] little(int value) {
        return ByteBuffer.allocate(4).putInt(Integer.reverseBytes(value)).array();
    }
}
