package org.mantice.app.model;

/** What the offers in view were planned with, which a change under way or one that failed leaves behind. */
record Made(OpenTune tune, Setup setup, Basis basis) {}
