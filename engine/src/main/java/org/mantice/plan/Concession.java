package org.mantice.plan;

import org.mantice.rule.GiveWay;
import org.mantice.tune.WrittenPlace;

/** A ban that had to give way, and where. */
public record Concession(GiveWay what, String ruleId, int pass, WrittenPlace place) {}
