/** Light and dark: looks with colours of our own on FlatLaf's core looks. Start at {@link org.mantice.app.look.Looks}. */
package org.mantice.app.look;
