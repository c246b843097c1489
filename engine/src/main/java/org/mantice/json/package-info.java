/**
 * The JSON of all files of ours: read strictly, field by field, with errors that name pointer, line, value and what is
 * allowed. Start at {@link org.mantice.json.JsonFile}. Knows no music.
 */
package org.mantice.json;
