/** The launcher: {@link org.mantice.app.Main}. It starts the command line; the window comes beside it. */
package org.mantice.app;
