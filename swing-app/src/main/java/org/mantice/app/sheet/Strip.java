package org.mantice.app.sheet;

/** The strips below the staff, from top to bottom; each can be hidden. */
public enum Strip {
    FINGERS,
    REGISTERS,
    BELLOWS,
    BUTTONS
}
