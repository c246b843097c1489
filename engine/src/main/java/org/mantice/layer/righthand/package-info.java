/**
 * The layer of the right hand: fingers and hand place. Start at {@link org.mantice.layer.righthand.RightHandLayer}.
 * Depends on {@code layer}, {@code plan}, {@code performance}, {@code rule}, the profiles and {@code search}.
 */
package org.mantice.layer.righthand;
