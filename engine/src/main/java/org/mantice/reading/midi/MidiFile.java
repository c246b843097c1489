package org.mantice.reading.midi;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.mantice.reading.midi.MidiRefusal.Why;

/**
 * A Standard MIDI File of format 0 or 1, plain or wrapped in RIFF. Chunks of other kinds are passed over; a track that
 * is damaged or cut off counts as far as it can be read. Work and memory are linear in the bytes.
 *
 * @param division ticks a quarter note, 1 to 32,767
 * @param tracks one or more
 */
public record MidiFile(int format, int division, List<MidiTrack> tracks) {
    private static final int HEADER = 14;

    public MidiFile {
        tracks = List.copyOf(tracks);
    }

    /** Whether the bytes begin like a file of this kind. */
    public static boolean claims(byte[] bytes) {
        return tag(bytes, 0).equals("MThd")
                || tag(bytes, 0).equals("RIFF") && tag(bytes, 8).equals("RMID");
    }

    /**
     * @param mostTracks with notes or without
     * @param mostEvents notes and signs of all tracks together
     */
    public static MidiFile parse(byte[] bytes, int mostTracks, int mostEvents) throws MidiRefusal {
        int start = tag(bytes, 0).equals("MThd") ? 0 : afterRiff(bytes);
        if (bytes.length - start < HEADER) throw new MidiRefusal(Why.TRUNCATED, 0);
        int format = word(bytes, start + 8);
        int division = word(bytes, start + 12);
        if (format > 1) throw new MidiRefusal(Why.FORMAT, format);
        if (division == 0 || division > 0x7fff) throw new MidiRefusal(Why.FRAMES, 0);
        List<MidiTrack> tracks = new ArrayList<>();
        int left = mostEvents;
        long at = start + 8L + Math.max(6, length(bytes, start + 4));
        while (at + 8 <= bytes.length) {
            int body = (int) at + 8;
            long end = body + length(bytes, body - 4);
            if (tag(bytes, (int) at).equals("MTrk")) {
                if (tracks.size() == mostTracks) throw new MidiRefusal(Why.TRACKS, mostTracks);
                TrackParser parser = new TrackParser(bytes, body, (int) Math.min(end, bytes.length), left);
                MidiTrack track = parser.parse(tracks.size() + 1, end > bytes.length);
                left -= track.notes().size() + track.metas().size();
                if (left < 0) throw new MidiRefusal(Why.EVENTS, mostEvents);
                tracks.add(track);
            }
            at = end;
        }
        if (tracks.isEmpty()) throw new MidiRefusal(Why.TRUNCATED, 0);
        return new MidiFile(format, division, tracks);
    }

    /** The chunk "data" of a RIFF file holds the plain one. Lengths there are little-endian and chunks even. */
    private static int afterRiff(byte[] bytes) throws MidiRefusal {
        long at = 12;
        while (at + 8 <= bytes.length) {
            int chunk = (int) at;
            if (tag(bytes, chunk).equals("data") && tag(bytes, chunk + 8).equals("MThd")) return chunk + 8;
            long length = Integer.toUnsignedLong(Integer.reverseBytes((int) length(bytes, chunk + 4)));
            at += 8 + length + (length & 1);
        }
        throw new MidiRefusal(Why.TRUNCATED, 0);
    }

    private static String tag(byte[] bytes, int at) {
        return at + 4 > bytes.length ? "" : new String(bytes, at, 4, StandardCharsets.ISO_8859_1);
    }

    private static int word(byte[] bytes, int at) {
        return (bytes[at] & 0xff) << 8 | bytes[at + 1] & 0xff;
    }

    private static long length(byte[] bytes, int at) {
        return (long) word(bytes, at) << 16 | word(bytes, at + 2);
    }
}
