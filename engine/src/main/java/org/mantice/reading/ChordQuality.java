package org.mantice.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mantice.tune.ChordDegree;
import org.mantice.tune.ChordDegree.Change;
import org.mantice.tune.ChordKind;

/**
 * What a chord symbol says after its root, as a kind of MusicXML with degrees: a triad, an extension, then alterations.
 *
 * @param degrees in the order written
 */
record ChordQuality(ChordKind kind, List<ChordDegree> degrees) {
    private enum Triad {
        MAJOR,
        MINOR,
        DIMINISHED,
        HALF_DIMINISHED,
        AUGMENTED
    }

    /** "d" and "a" after a root are diminished and augmented in some collections of folk tunes. */
    private static final Pattern TRIAD = Pattern.compile("(major|maj|ma(?!dd)|M(?!i)|j(?=7)|\u0394)|(minor|min|mi|m|-)"
            + "|(dim(?:inished)?|o|d(?!om))|(\u00f8)|(aug(?:mented)?|\\+|a(?!dd|lt))|(dom(?=\\d))");

    /** A big seventh on another triad, as in m(maj7). */
    private static final Pattern BIG_SEVENTH = Pattern.compile("(?:maj|ma|M|\u0394|j)(?=7|9|11|13)|\u0394|(?:maj|M)$");

    private static final Pattern EXTENSION = Pattern.compile("(6/9|69|6|7/6|7|9|11|13|5(?=$))");
    private static final Pattern ALTERATION = Pattern.compile(
            "(?:(sus)(24|42|2|4|9)?(?!\\d))|(add|no|omit)?([b#+-])?(13|11|10|9|7|6|5|4|3|2)|(\\+|aug)|(alt)");

    static Optional<ChordQuality> read(String text) {
        if (!isBalanced(text)) return Optional.empty();
        String rest = text.replaceAll("[\\s(),\\[\\]]", "");
        if (rest.matches("[A-Z]{3,}.*")) rest = rest.toLowerCase(java.util.Locale.ROOT);
        rest = rest.replaceFirst("^(Maj|MAJ|Ma(?=\\d|$))", "maj").replaceFirst("^(Min|MIN|Mi(?=\\d|$))", "min");
        rest = rest.replaceFirst("^(Dim|DIM)", "dim")
                .replaceFirst("^(Aug|AUG)", "aug")
                .replace("Maj", "maj");
        return new Parser(rest).read();
    }

    private static boolean isBalanced(String text) {
        int open = 0;
        for (char c : text.toCharArray()) {
            if (c == '(' || c == '[') open++;
            if ((c == ')' || c == ']') && --open < 0) return false;
        }
        return open == 0 && !text.contains("()");
    }

    private static final class Parser {
        private final String text;
        private int at;
        private Triad triad = Triad.MAJOR;
        private boolean big;
        private String extension = "";
        private final List<ChordDegree> degrees = new ArrayList<>();
        private Optional<ChordKind> suspended = Optional.empty();

        Parser(String text) {
            this.text = text;
        }

        Optional<ChordQuality> read() {
            readTriad();
            Matcher bigSeventh = matcher(BIG_SEVENTH);
            if (triad != Triad.MAJOR && bigSeventh.lookingAt()) {
                big = true;
                at = bigSeventh.end();
                if (at == text.length()) extension = "7";
            }
            Matcher number = matcher(EXTENSION);
            if (number.lookingAt()) {
                extension = number.group(1);
                at = number.end();
            }
            while (at < text.length()) if (!readAlteration()) return Optional.empty();
            return kind().map(kind -> new ChordQuality(kind, settled(kind)));
        }

        private Matcher matcher(Pattern pattern) {
            return pattern.matcher(text).region(at, text.length()).useTransparentBounds(true);
        }

        private void readTriad() {
            Matcher matcher = matcher(TRIAD);
            if (!matcher.lookingAt()) return;
            at = matcher.end();
            if (matcher.group(1) != null) {
                big = at < text.length() || matcher.group(1).equals("\u0394");
                if (at == text.length() && big) extension = "7";
            } else if (matcher.group(2) != null) triad = Triad.MINOR;
            else if (matcher.group(3) != null) triad = Triad.DIMINISHED;
            else if (matcher.group(4) != null) triad = Triad.HALF_DIMINISHED;
            else if (matcher.group(5) != null) triad = Triad.AUGMENTED;
        }

        private boolean readAlteration() {
            Matcher matcher = matcher(ALTERATION);
            if (!matcher.lookingAt()) return false;
            at = matcher.end();
            if (matcher.group(1) != null) return suspend(matcher.group(2));
            if (matcher.group(6) != null) return augment();
            if (matcher.group(7) != null) {
                degrees.add(new ChordDegree(5, 0, Change.SUBTRACT));
                degrees.add(new ChordDegree(9, -1, Change.ADD));
                return extension.equals("7");
            }
            return alter(matcher.group(3), matcher.group(4), Integer.parseInt(matcher.group(5)));
        }

        private boolean suspend(String which) {
            if (suspended.isPresent() || triad == Triad.DIMINISHED || triad == Triad.HALF_DIMINISHED) return false;
            boolean second = "2".equals(which) || "9".equals(which);
            suspended = Optional.of(second ? ChordKind.SUSPENDED_SECOND : ChordKind.SUSPENDED_FOURTH);
            if ("24".equals(which) || "42".equals(which)) degrees.add(new ChordDegree(2, 0, Change.ADD));
            return true;
        }

        private boolean augment() {
            if (triad != Triad.MAJOR) return false;
            triad = Triad.AUGMENTED;
            return true;
        }

        private boolean alter(String word, String sign, int degree) {
            int alter = sign == null ? 0 : sign.equals("b") || sign.equals("-") ? -1 : 1;
            if ("no".equals(word) || "omit".equals(word)) {
                if (degree != 3 && degree != 5 && degree != 7 && degree != 9 && degree != 11) return false;
                int third = degree == 3 && triad != Triad.MAJOR && triad != Triad.AUGMENTED ? -1 : 0;
                degrees.add(new ChordDegree(degree, alter + third, Change.SUBTRACT));
                return true;
            }
            if (degree == 5 || degree == 3) {
                if (sign == null || word != null || degree == 3) return false;
                degrees.add(new ChordDegree(5, alter, Change.ALTER));
                return true;
            }
            if (sign == null && word == null && degree != 2 && degree != 4 && degree != 9) return false;
            if (sign == null && word == null && degree == 9 && extension.isEmpty()) return false;
            if (degree == 4 && word == null && sign == null) return suspend("4");
            degrees.add(new ChordDegree(degree, alter, Change.ADD));
            return true;
        }

        private Optional<ChordKind> kind() {
            if (suspended.isPresent()) return suspendedKind();
            return switch (extension) {
                case "" -> Optional.of(triadKind());
                case "5" -> triad == Triad.MAJOR && !big ? Optional.of(ChordKind.POWER) : Optional.empty();
                case "6", "6/9", "69" -> sixth();
                case "7", "7/6" -> seventh();
                default -> extended();
            };
        }

        private ChordKind triadKind() {
            return switch (triad) {
                case MAJOR -> ChordKind.MAJOR;
                case MINOR -> ChordKind.MINOR;
                case DIMINISHED -> ChordKind.DIMINISHED;
                case HALF_DIMINISHED -> ChordKind.HALF_DIMINISHED;
                case AUGMENTED -> ChordKind.AUGMENTED;
            };
        }

        /** A suspended chord's sevenths and ninths are added tones. */
        private Optional<ChordKind> suspendedKind() {
            if (triad != Triad.MAJOR) return Optional.empty();
            List<Integer> added = new ArrayList<>();
            switch (extension) {
                case "" -> {}
                case "6" -> added.add(6);
                case "6/9", "69" -> added.addAll(List.of(6, 9));
                case "7" -> added.add(7);
                case "9" -> added.addAll(List.of(7, 9));
                case "13" -> added.addAll(List.of(7, 9, 13));
                default -> {
                    return Optional.empty();
                }
            }
            for (int i = added.size() - 1; i >= 0; i--)
                degrees.add(0, new ChordDegree(added.get(i), added.get(i) == 7 && big ? 1 : 0, Change.ADD));
            return suspended;
        }

        private Optional<ChordKind> sixth() {
            if (!extension.equals("6")) degrees.add(0, new ChordDegree(9, 0, Change.ADD));
            if (triad == Triad.MAJOR) return Optional.of(ChordKind.MAJOR_SIXTH);
            return triad == Triad.MINOR && !big ? Optional.of(ChordKind.MINOR_SIXTH) : Optional.empty();
        }

        private Optional<ChordKind> seventh() {
            if (extension.equals("7/6")) degrees.add(0, new ChordDegree(6, 0, Change.ADD));
            return switch (triad) {
                case MAJOR -> Optional.of(big ? ChordKind.MAJOR_SEVENTH : raised());
                case MINOR -> Optional.of(big ? ChordKind.MAJOR_MINOR : halfDiminished());
                case DIMINISHED ->
                    big ? withBigSeventh(ChordKind.DIMINISHED) : Optional.of(ChordKind.DIMINISHED_SEVENTH);
                case HALF_DIMINISHED -> big ? Optional.empty() : Optional.of(ChordKind.HALF_DIMINISHED);
                case AUGMENTED -> big ? withBigSeventh(ChordKind.AUGMENTED) : Optional.of(ChordKind.AUGMENTED_SEVENTH);
            };
        }

        private Optional<ChordKind> withBigSeventh(ChordKind kind) {
            degrees.add(0, new ChordDegree(7, 1, Change.ADD));
            return Optional.of(kind);
        }

        /** A dominant seventh with a raised fifth has a kind of its own. */
        private ChordKind raised() {
            return degrees.remove(new ChordDegree(5, 1, Change.ALTER))
                    ? ChordKind.AUGMENTED_SEVENTH
                    : ChordKind.DOMINANT;
        }

        private ChordKind halfDiminished() {
            return degrees.remove(new ChordDegree(5, -1, Change.ALTER))
                    ? ChordKind.HALF_DIMINISHED
                    : ChordKind.MINOR_SEVENTH;
        }

        private Optional<ChordKind> extended() {
            if (triad == Triad.AUGMENTED) degrees.add(0, new ChordDegree(5, 1, Change.ALTER));
            if (triad == Triad.HALF_DIMINISHED) degrees.add(0, new ChordDegree(5, -1, Change.ALTER));
            if (triad == Triad.DIMINISHED || triad == Triad.MINOR && big) return Optional.empty();
            boolean minor = triad == Triad.MINOR || triad == Triad.HALF_DIMINISHED;
            return Optional.of(
                    switch (extension) {
                        case "9" ->
                            minor ? ChordKind.MINOR_NINTH : big ? ChordKind.MAJOR_NINTH : ChordKind.DOMINANT_NINTH;
                        case "11" ->
                            minor ? ChordKind.MINOR_11TH : big ? ChordKind.MAJOR_11TH : ChordKind.DOMINANT_11TH;
                        default -> minor ? ChordKind.MINOR_13TH : big ? ChordKind.MAJOR_13TH : ChordKind.DOMINANT_13TH;
                    });
        }

        /** A sign before a tone that the kind already has alters it; without a kind's tone it adds one. */
        private List<ChordDegree> settled(ChordKind kind) {
            List<ChordDegree> settled = new ArrayList<>();
            for (ChordDegree degree : degrees) {
                boolean present = degree.change() == Change.ADD
                        && degree.alter() != 0
                        && degree.value() >= 9
                        && kind.intervals().contains(NATURAL[degree.value()]);
                settled.add(present ? new ChordDegree(degree.value(), degree.alter(), Change.ALTER) : degree);
            }
            return List.copyOf(settled);
        }

        private static final int[] NATURAL = {0, 0, 2, 4, 5, 7, 9, 10, 12, 14, 16, 17, 19, 21};
    }
}
