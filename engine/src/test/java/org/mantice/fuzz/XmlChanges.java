package org.mantice.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Changes whole elements and values of XML, so that most of what comes out can still be taken apart; one in five is
 * damaged byte by byte besides. The same seed gives the same changes.
 */
final class XmlChanges implements Supplier<byte[]> {
    private static final Pattern PIECE = Pattern.compile("<[^>]*>|[^<]+");
    private static final List<String> VALUES = List.of(
            "0", "1", "2", "3", "7", "-1", "0.5", "99999", "A", "G", "bad", "D.C.", "Fine", "4", "start", "stop",
            "half", "eighth", "quarter", "minor", "none", " ", "2+3");

    private final Random random;
    private final String input;
    private final Changes bytes;

    XmlChanges(long seed, String input, Changes bytes) {
        this.random = new Random(seed);
        this.input = input;
        this.bytes = bytes;
    }

    @Override
    public byte[] get() {
        List<String> pieces = new ArrayList<>(
                PIECE.matcher(input).results().map(MatchResult::group).toList());
        for (int changes = 1 + random.nextInt(6); changes > 0; changes--) change(pieces);
        byte[] changed = String.join("", pieces).getBytes(StandardCharsets.UTF_8);
        return random.nextInt(5) == 0 ? bytes.changed(changed) : changed;
    }

    private void change(List<String> pieces) {
        int at = random.nextInt(pieces.size());
        String piece = pieces.get(at);
        if (!piece.startsWith("<")) pieces.set(at, piece.isBlank() ? piece : VALUES.get(random.nextInt(VALUES.size())));
        else if (random.nextInt(4) == 0)
            pieces.set(at, piece.replaceAll("\"\\w*\"", "\"" + VALUES.get(random.nextInt(6)) + "\""));
        else if (!piece.startsWith("<?") && !piece.startsWith("<!")) moveElement(pieces, at);
    }

    /** Leaves out, doubles or moves the element that begins here, if one does that is not most of the score. */
    private void moveElement(List<String> pieces, int start) {
        int end = end(pieces, start);
        if (end < 0 || end - start > pieces.size() / 2) return;
        List<String> element = List.copyOf(pieces.subList(start, end));
        int what = random.nextInt(3);
        if (what < 2) pieces.subList(start, end).clear();
        if (what == 0) return;
        int to = what == 2 ? start : random.nextInt(pieces.size());
        if (what == 1 && !pieces.get(to).startsWith("</")) to = start;
        pieces.addAll(to, element);
    }

    /** The piece after the element; -1 where none begins. */
    private static int end(List<String> pieces, int start) {
        int depth = 0;
        for (int i = start; i < pieces.size(); i++) {
            String piece = pieces.get(i);
            if (piece.startsWith("</")) depth--;
            else if (piece.startsWith("<") && !piece.endsWith("/>")) depth++;
            if (depth < 0) return -1;
            if (depth == 0) return i + 1;
        }
        return -1;
    }
}
