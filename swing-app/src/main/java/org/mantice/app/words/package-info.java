/** What the window says, in English and German. Depends on the JDK alone. */
package org.mantice.app.words;
