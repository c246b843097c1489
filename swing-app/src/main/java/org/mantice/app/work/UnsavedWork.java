package org.mantice.app.work;

import java.nio.file.Path;
import java.util.Optional;
import org.mantice.app.model.OpenTune;
import org.mantice.app.model.Setup;
import org.mantice.file.PlanFile;

/**
 * Work that is not saved: enough to go on with it after the program ended without asking.
 *
 * @param content what the tune was read from
 * @param setup accordion, player with the weights, wishes and locks as they are now; newer than the plan's own where a
 *     change was still being planned
 * @param plan the chosen plan; empty where there is none yet
 * @param savedTo the plan file last opened or saved
 */
public record UnsavedWork(
        OpenTune tune, TuneContent content, Setup setup, Optional<PlanFile> plan, Optional<Path> savedTo) {}
