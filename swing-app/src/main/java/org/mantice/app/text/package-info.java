/** Plans, comparisons and explanations as plain text for the command line. */
package org.mantice.app.text;
