package org.mantice.app.view;

/**
 * Everything that can be done by menu, button or key. Texts and keys stand in the bundle {@code commands}: {@code
 * commands.Command.<NAME>} the label (an ampersand before its mnemonic), {@code commands.key.<NAME>} the keys as {@link
 * Keys} reads them, empty for none; {@code commands.hint.<NAME>} one sentence on what it does.
 */
public enum Command {
    OPEN(Group.FILE),
    OPEN_PLAN(Group.FILE),
    ANOTHER_TUNE(Group.FILE),
    MELODY(Group.FILE),
    SAVE(Group.FILE),
    SAVE_AS(Group.FILE),
    EXPORT_JSON(Group.FILE),
    WRITE_MUSICXML(Group.FILE),
    SAVE_PLAYER(Group.FILE),
    QUIT(Group.FILE),

    UNDO(Group.EDIT),
    REDO(Group.EDIT),
    LOCK(Group.EDIT),
    LOCK_EVERY_TIME(Group.EDIT),
    FREE(Group.EDIT),
    FREE_ALL(Group.EDIT),

    CHORD_HERE(Group.TUNE),
    CHORD_EARLIER(Group.TUNE),
    CHORD_LATER(Group.TUNE),
    REMOVE_CHORD(Group.TUNE),
    PROPOSE_CHORDS(Group.TUNE),
    ACCEPT_CHORD(Group.TUNE),
    ACCEPT_CHORDS(Group.TUNE),
    DISMISS_PROPOSALS(Group.TUNE),
    PHRASE_BEGINS(Group.TUNE),
    BARLINES(Group.TUNE),
    TEMPO_HERE(Group.TUNE),
    KEY_FROM_HERE(Group.TUNE),
    TIMES_THROUGH(Group.TUNE),
    TRANSPOSE(Group.TUNE),

    PLAN_AGAIN(Group.PLANS),
    STOP(Group.PLANS),
    CHOOSE_SELECTED(Group.PLANS),
    CHOOSE_A(Group.PLANS),
    CHOOSE_B(Group.PLANS),
    CHOOSE_C(Group.PLANS),
    CHOOSE_D(Group.PLANS),
    NEXT_DIFFERENCE(Group.PLANS),
    PREVIOUS_DIFFERENCE(Group.PLANS),

    SHOW_FINGERS(Group.SHOW),
    SHOW_REGISTERS(Group.SHOW),
    SHOW_BELLOWS(Group.SHOW),
    SHOW_BUTTONS(Group.SHOW),
    SHOW_SETUP(Group.SHOW),
    SHOW_FIGURES(Group.SHOW),
    SHOW_SHEET(Group.SHOW),
    SHOW_TABLE(Group.SHOW),
    SHOW_WHY(Group.SHOW),
    SHOW_DIFFERENCES(Group.SHOW),
    SHOW_TASTE(Group.SHOW),
    SHOW_MAP(Group.SHOW),
    LARGER(Group.SHOW),
    SMALLER(Group.SHOW),
    USUAL_SIZE(Group.SHOW),
    LIGHT(Group.SHOW),
    DARK(Group.SHOW),
    ENGLISH(Group.SHOW),
    GERMAN(Group.SHOW),

    KEYS(Group.HELP),
    SIGNS(Group.HELP),
    ABOUT(Group.HELP);

    /** The menus. */
    public enum Group {
        FILE,
        EDIT,
        TUNE,
        PLANS,
        SHOW,
        HELP
    }

    private final Group group;

    Command(Group group) {
        this.group = group;
    }

    public Group group() {
        return group;
    }
}
