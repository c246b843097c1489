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
     * @param code stable name of the kind of error, in capitals
     * @param args what the sentence speaks of, in a fixed order for each code
     * @param sentence plain English without the place
     */
    protected ManticeException(String code, List<String> args, FilePlace place, String sentence, Throwable cause) {
        super(place + ": " + sentence, cause);
        this.code = code;
        this.args = List.copyOf(args);
        this.place = place;
    }

    /** An error that nothing else caused. */
    protected ManticeException(String code, List<String> args, FilePlace place, String sentence) {
        super(place + ": " + sentence);
        this.code = code;
        this.args = List.copyOf(args);
        this.place = place;
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
