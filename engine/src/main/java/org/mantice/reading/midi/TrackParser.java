package org.mantice.reading.midi;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/**
 * Reads the events of one track. An end of a key's note belongs to the earliest note of that key still held; a note that
 * nothing ends is held to the next one of its key or to the end of the track.
 */
final class TrackParser {
    /** The file breaks off or holds what no event begins with. */
    private static final class Damage extends Exception {
        private Damage() {
            super(null, null, false, false);
        }
    }

    private record Held(long tick, int index) {}

    private static final int LONGEST_TEXT = 1_000;
    private final byte[] bytes;
    private final int end;
    private final int mostEvents;
    private final List<MidiNote> notes = new ArrayList<>();
    private final List<MidiMeta> metas = new ArrayList<>();
    private final Map<Integer, Deque<Held>> held = new HashMap<>();
    private String name = "";
    private int at;
    private long tick;
    private boolean ended;

    TrackParser(byte[] bytes, int start, int end, int mostEvents) {
        this.bytes = bytes;
        this.at = start;
        this.end = end;
        this.mostEvents = mostEvents;
    }

    /** @param cut the file ends before the track does */
    MidiTrack parse(int number, boolean cut) {
        OptionalInt damagedAt = OptionalInt.empty();
        int event = at;
        int status = 0;
        try {
            while (at < end && !ended && notes.size() + metas.size() <= mostEvents) {
                event = at;
                tick += number();
                if ((peek() & 0x80) != 0) status = next();
                if (status == 0) throw new Damage();
                read(status);
                if (status >= 0xf0) status = 0;
            }
            if (cut && !ended) damagedAt = OptionalInt.of(at);
        } catch (Damage e) {
            damagedAt = OptionalInt.of(event);
        }
        release();
        return new MidiTrack(number, name, notes, metas, damagedAt);
    }

    private void read(int status) throws Damage {
        switch (status >> 4) {
            case 0x8 -> noteOff((status & 15) + 1, data(), data());
            case 0x9 -> noteOn((status & 15) + 1, data(), data());
            case 0xa, 0xb, 0xe -> skip(2);
            case 0xc, 0xd -> skip(1);
            default -> {
                if (status == 0xff) meta(next(), number());
                else if (status == 0xf0 || status == 0xf7) skip(number());
                else throw new Damage();
            }
        }
    }

    private void noteOn(int channel, int pitch, int velocity) {
        if (velocity == 0) {
            noteOff(channel, pitch, 0);
            return;
        }
        held.computeIfAbsent(channel << 7 | pitch, key -> new ArrayDeque<>()).add(new Held(tick, notes.size()));
        notes.add(new MidiNote(channel, pitch, tick, tick));
    }

    private void noteOff(int channel, int pitch, int velocity) {
        Deque<Held> open = held.get(channel << 7 | pitch);
        if (open == null || open.isEmpty()) return;
        endNote(open.remove(), tick);
    }

    private void endNote(Held open, long until) {
        MidiNote note = notes.get(open.index());
        notes.set(open.index(), new MidiNote(note.channel(), note.pitch(), note.start(), until));
    }

    private void release() {
        for (Deque<Held> open : held.values())
            while (!open.isEmpty()) {
                Held first = open.remove();
                endNote(first, open.isEmpty() ? tick : open.element().tick());
            }
    }

    private void meta(int type, int length) throws Damage {
        int start = at;
        skip(length);
        switch (type) {
            case 0x01, 0x05 -> {
                String text = text(start, length);
                if (!text.isEmpty()) metas.add(new MidiMeta.Syllable(tick, text, type == 0x01));
            }
            case 0x03 -> name = name.isEmpty() ? text(start, length).strip() : name;
            case 0x2f -> ended = true;
            case 0x51 -> tempo(start, length);
            case 0x58 -> timeSignature(start, length);
            case 0x59 -> keySignature(start, length);
            default -> {}
        }
    }

    private void tempo(int start, int length) {
        if (length < 3) return;
        int micros = (bytes[start] & 0xff) << 16 | (bytes[start + 1] & 0xff) << 8 | bytes[start + 2] & 0xff;
        if (micros > 0) metas.add(new MidiMeta.Tempo(tick, micros));
    }

    private void timeSignature(int start, int length) {
        if (length < 2) return;
        int beats = bytes[start] & 0xff;
        int power = bytes[start + 1] & 0xff;
        if (beats >= 1 && beats <= 128 && power <= 6) metas.add(new MidiMeta.TimeSignature(tick, beats, 1 << power));
    }

    private void keySignature(int start, int length) {
        if (length < 2) return;
        int fifths = bytes[start];
        if (fifths >= -7 && fifths <= 7) metas.add(new MidiMeta.KeySignature(tick, fifths, bytes[start + 1] == 1));
    }

    /** UTF-8 where it is that, else Latin-1; the standard names no encoding. */
    private String text(int start, int length) {
        ByteBuffer part = ByteBuffer.wrap(bytes, start, Math.min(length, LONGEST_TEXT));
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(part.duplicate()).toString();
        } catch (CharacterCodingException e) {
            return StandardCharsets.ISO_8859_1.decode(part).toString();
        }
    }

    /** A number in one to four groups of seven bits. */
    private int number() throws Damage {
        int value = 0;
        for (int i = 0; i < 4; i++) {
            int group = next();
            value = value << 7 | group & 0x7f;
            if (group < 0x80) return value;
        }
        throw new Damage();
    }

    private int data() throws Damage {
        int value = next();
        if (value > 0x7f) throw new Damage();
        return value;
    }

    private int peek() throws Damage {
        if (at >= end) throw new Damage();
        return bytes[at] & 0xff;
    }

    private int next() throws Damage {
        int value = peek();
        at++;
        return value;
    }

    private void skip(int count) throws Damage {
        if (count > end - at) throw new Damage();
        at += count;
    }
}
