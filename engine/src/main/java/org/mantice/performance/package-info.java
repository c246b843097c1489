/**
 * The tune as played: passes, measures in order of play, moments of both hands with their times. Start at
 * {@link org.mantice.performance.Performance}. Depends on {@code org.mantice.tune}.
 */
package org.mantice.performance;
