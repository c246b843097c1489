/**
 * The player: hand, bass method, speed of jumps, taste. Immutable profiles; start at
 * {@link org.mantice.player.Player}, for ready-made ones at {@link org.mantice.player.PlayerPresets}. Depends on the
 * JDK alone.
 */
package org.mantice.player;
