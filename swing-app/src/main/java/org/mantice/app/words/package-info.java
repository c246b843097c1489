/**
 * What the window says, in English and German: texts by key, rules by the bundles of their packs, and what the engine
 * names, in the player's language. Depends on the engine and on nothing else of the app.
 */
package org.mantice.app.words;
