package org.mantice.fault;

/** What an exception from elsewhere says for itself, for a sentence of our own. */
public final class Cause {
    private Cause() {}

    /** Its message; the name of its kind where it has none. */
    public static String words(Throwable cause) {
        String message = cause.getMessage();
        return message == null ? cause.getClass().getSimpleName() : message;
    }
}
