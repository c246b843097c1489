/**
 * Views: Swing components that show a {@link org.mantice.app.model.PlannerModel} and act on it through {@link
 * org.mantice.app.view.Actions}. They know neither each other nor any frame.
 */
package org.mantice.app.view;
