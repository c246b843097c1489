package org.mantice.json;

import java.util.Arrays;
import java.util.List;
import org.mantice.fault.FilePlace;
import org.mantice.fault.ManticeException;

/** One of our JSON files cannot be read; the message says where, what and what is allowed. */
public final class JsonFileException extends ManticeException {
    private static final int LONGEST_ARGUMENT = 300;

    /** Why; {@code {0}}, {@code {1}} and so on stand for the arguments. A field is named by its JSON pointer. */
    public enum Reason {
        NOT_FOUND("no such file"),
        UNREADABLE("cannot be read: {0}"),
        EMPTY("the file is empty; allowed: a JSON object"),
        TOO_LARGE("the file has {0} bytes; allowed: at most {1}"),
        BAD_ENCODING("the text is not valid UTF-8; allowed: UTF-8"),
        TRUNCATED("the file ends in the middle; allowed: a complete JSON object"),
        TOO_DEEP("values are nested more than {0} deep; allowed: at most {0}"),
        DUPLICATE_FIELD("the field \"{0}\" comes twice in one object; allowed: once"),
        NOT_JSON("the JSON is damaged ({0}); allowed: JSON after RFC 8259"),
        NOT_AN_OBJECT("the file holds {0}; allowed: a JSON object"),
        NEWER_VERSION("/version is {0}, which a newer Mantice wrote; allowed: {1}.0 to {1}.*"),
        MISSING("{0} is missing; allowed: {1}"),
        WRONG_VALUE("{0} is {1}; allowed: {2}"),
        REFUSED("{0}: {1}");

        private final String template;

        Reason(String template) {
            this.template = template;
        }
    }

    private final Reason reason;

    private JsonFileException(Reason reason, FilePlace place, List<String> args) {
        super(reason.name(), args, place, sentence(reason.template, args));
        this.reason = reason;
    }

    public static JsonFileException of(Reason reason, FilePlace place, Object... args) {
        return new JsonFileException(
                reason, place, Arrays.stream(args).map(JsonFileException::text).toList());
    }

    public static JsonFileException causedBy(Throwable cause, Reason reason, FilePlace place, Object... args) {
        JsonFileException made = of(reason, place, args);
        made.initCause(cause);
        return made;
    }

    public Reason reason() {
        return reason;
    }

    /** One line of at most so many characters, whatever the file holds. */
    private static String text(Object arg) {
        String line = String.valueOf(arg)
                .replaceAll("[\\p{Cntrl}\\u2028\\u2029]+", " ")
                .strip();
        return line.length() <= LONGEST_ARGUMENT ? line : line.substring(0, LONGEST_ARGUMENT) + "…";
    }
}
