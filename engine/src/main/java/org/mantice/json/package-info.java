/**
 * Our own JSON files, read strictly and kept whole: {@link org.mantice.json.JsonFile} turns bytes into an object whose
 * {@link org.mantice.json.Fields} are asked for one by one; what nobody asks for is kept when the file is written
 * again. Jackson's types stay inside the engine. Depends on {@code org.mantice}'s exception and Jackson.
 */
package org.mantice.json;
