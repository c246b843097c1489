/** The stand-alone window: frame, menus, dialogs, files; where everything is put together. */
package org.mantice.app.window;
