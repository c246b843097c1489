/** The app's files: plans, recovery copies, recent files, what the app remembers. No Swing. */
package org.mantice.app.work;
