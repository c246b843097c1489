/** A screen for window tests. */
package org.mantice.app.screen;
