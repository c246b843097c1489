package org.mantice.plugin;

/** A rule from a jar did not come back: its pack is off until the program starts again. */
public final class RuleStuckException extends RuntimeException {
    private final String ruleId;
    private final String packId;
    private final int seconds;

    /** @param seconds how long it was waited for */
    public RuleStuckException(String ruleId, String packId, int seconds) {
        super("rule " + ruleId + " has not come back after " + seconds + " s; its pack " + packId
                + " is off until the program starts again");
        this.ruleId = ruleId;
        this.packId = packId;
        this.seconds = seconds;
    }

    public String ruleId() {
        return ruleId;
    }

    public String packId() {
        return packId;
    }

    /** How long it was waited for. */
    public int seconds() {
        return seconds;
    }
}
