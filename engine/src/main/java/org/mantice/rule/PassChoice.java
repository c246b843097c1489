package org.mantice.rule;

import org.mantice.instrument.RegisterSwitch;

/**
 * What one pass would be played with.
 *
 * @param pass from 1
 * @param passes how many there are
 * @param octave octaves up from the written melody, -1 to 1
 * @param keysOutside melody notes off the keyboard at that octave
 * @param pressMillis silence before the pass in which a hand could press the switch
 */
public record PassChoice(
        int pass, int passes, RegisterSwitch register, int octave, int keysOutside, long pressMillis)
        implements VariationStep {}
