/**
 * From music to lattice and back: each layer lists the choices that the instrument and the hand allow, has the rules
 * price them once, and lets {@code org.mantice.search} find the best. Start at {@link org.mantice.layer.Layer}.
 */
package org.mantice.layer;
