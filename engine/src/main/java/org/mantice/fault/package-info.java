/**
 * What goes wrong with files and environment: one base of errors with a code, arguments and a place. Depends on the JDK
 * alone.
 */
package org.mantice.fault;
