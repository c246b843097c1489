package org.mantice;

import org.mantice.plan.Lock;
import org.mantice.plan.Sentence;

/** A lock that speaks of something that is no longer in the tune, and why. */
public record FallenLock(Lock lock, Sentence reason) {}
