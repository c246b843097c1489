package org.mantice.app.view;

import java.awt.BorderLayout;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** Fields that together make one edit. */
abstract class EditForm extends JPanel {
    EditForm() {
        super(new BorderLayout());
    }

    /** Where the focus begins. */
    abstract JComponent first();

    /**
     * Makes the edit.
     *
     * @throws IllegalArgumentException if a field says nothing that can be meant, with a sentence for the player
     */
    abstract void make();
}
