/**
 * The left hand: what the meter asks for, which buttons can play it, how the fingers lie, and the search over all of
 * that. Start at {@link org.mantice.layer.lefthand.LeftHandLayer}. Depends on {@code layer}, {@code performance},
 * {@code instrument}, {@code player}, {@code rule}, {@code search} and {@code plan}.
 */
package org.mantice.layer.lefthand;
