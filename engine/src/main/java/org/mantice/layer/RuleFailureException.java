package org.mantice.layer;

/** A rule threw or returned nonsense while scoring. The plan stops; the caller may go on without the rule. */
public final class RuleFailureException extends RuntimeException {
    private final String ruleId;
    private final String place;

    RuleFailureException(String ruleId, String place, String detail) {
        super("rule " + ruleId + " at " + place + ": " + detail);
        this.ruleId = ruleId;
        this.place = place;
    }

    RuleFailureException(String ruleId, String place, Throwable thrown) {
        this(ruleId, place, thrown.toString());
        initCause(thrown);
    }

    public String ruleId() {
        return ruleId;
    }

    public String place() {
        return place;
    }
}
