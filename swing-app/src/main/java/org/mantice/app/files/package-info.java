/**
 * What the command line and the window have in common about files: how a plan becomes a file, where its tune is found
 * again, which profile a name stands for. Depends on the engine alone.
 */
package org.mantice.app.files;
