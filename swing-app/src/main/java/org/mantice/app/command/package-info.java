/** The verbs of the command line. Start at {@link org.mantice.app.command.ManticeCommand}. */
package org.mantice.app.command;
