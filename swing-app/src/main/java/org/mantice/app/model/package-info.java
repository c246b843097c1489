/**
 * What the window knows, without widgets: one immutable {@link org.mantice.app.model.PlannerState} and the {@link
 * org.mantice.app.model.PlannerModel} that changes it. Knows the engine and the records of the sheet; no Swing.
 */
package org.mantice.app.model;
