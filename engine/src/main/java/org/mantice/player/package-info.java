/**
 * The player: hand, bass method, speed of jumps, taste. Immutable profiles; start at
 * {@link org.mantice.player.Player}. Depends on the JDK alone.
 */
package org.mantice.player;
