package org.mantice.fault;

import java.util.List;

/**
 * A file or the environment does not allow what was asked. The message is one line of plain English that begins with
 * the place; a user interface may show its own sentence by {@link #code()} and {@link #args()}.
 */
public abstract class ManticeException extends RuntimeException {
    private final String code;
    private final List<String> args;
    private final FilePlace place;

    /**
     * An error that nothing else caused.
     *
     * @param code stable name of the kind of error, in capitals
     * @param args what the sentence speaks of, in a fixed order for each code
     * @param sentence plain English without the place
     */
    protected ManticeException(String code, List<String> args, FilePlace place, String sentence) {
        super(place + ": " + sentence);
        this.code = code;
        this.args = List.copyOf(args);
        this.place = place;
    }

    /** An error that something else caused. */
    protected ManticeException(String code, List<String> args, FilePlace place, String sentence, Throwable cause) {
        this(code, args, place, sentence);
        initCause(cause);
    }

    /** The template with each {@code {0}}, {@code {1}} and so on, to {@code {9}}, replaced by its argument. */
    protected static String sentence(String template, List<String> args) {
        StringBuilder sentence = new StringBuilder();
        String rest = template;
        for (int open = rest.indexOf('{'); open >= 0; open = rest.indexOf('{')) {
            sentence.append(rest, 0, open).append(args.get(rest.charAt(open + 1) - '0'));
            rest = rest.substring(open + 3);
        }
        return sentence.append(rest).toString();
    }

    public String code() {
        return code;
    }

    public List<String> args() {
        return args;
    }

    public FilePlace place() {
        return place;
    }
}
