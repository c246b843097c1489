/**
 * The app's own files: opening tunes and plans, what is remembered between starts, copies of unsaved work, the profiles
 * one can pick from. Start at {@link org.mantice.app.work.TuneOpening} and {@link org.mantice.app.work.AppFolder}. Plain
 * functions that read and write, to be called off the event thread; uses the model's records, knows no view.
 */
package org.mantice.app.work;
