/**
 * The sheet: staff and strips painted on a {@link java.awt.Graphics2D}. Start at {@link
 * org.mantice.app.sheet.SheetPainter}. Knows no window: nothing of Swing, no model.
 */
package org.mantice.app.sheet;
