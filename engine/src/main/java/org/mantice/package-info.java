/** What all of the engine shares: the base of its located errors. */
package org.mantice;
