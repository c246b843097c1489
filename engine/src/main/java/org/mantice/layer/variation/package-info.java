/** Which register and octave each pass takes; start at {@link org.mantice.layer.variation.VariationLayer}. */
package org.mantice.layer.variation;
