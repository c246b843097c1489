package org.mantice.app.window;

import java.awt.EventQueue;
import java.lang.reflect.InvocationTargetException;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.function.Consumer;
import java.util.function.Function;
import org.mantice.app.look.Looks;
import org.mantice.app.model.Background;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.Setup;
import org.mantice.app.model.ThreadBackground;
import org.mantice.app.model.Wishes;
import org.mantice.app.sheet.SheetPainter;
import org.mantice.app.sheet.Strip;
import org.mantice.app.words.Words;
import org.mantice.app.work.AbandonedCopy;
import org.mantice.app.work.AppFolder;
import org.mantice.app.work.Notice;
import org.mantice.app.work.ProfileShelf;
import org.mantice.app.work.RecoveryCopy;
import org.mantice.app.work.RecoveryWriter;
import org.mantice.app.work.RememberedFile;
import org.mantice.app.work.Shelved;
import org.mantice.instrument.Accordion;
import org.mantice.instrument.AccordionPresets;
import org.mantice.player.Player;
import org.mantice.player.PlayerPresets;
import org.mantice.plugin.Packs;

/**
 * Where the window is put together: first what catches faults, then what is remembered, the look before any window, the
 * model, the window, and last the tune.
 */
public final class AppMain {
    static final String VERSION = "0.1.0";
    private static final String USUAL_ACCORDION = "full-41-key-120-bass";
    private static final String USUAL_PLAYER = "medium-hand";
    /** The window can be opened without the tune, but is complete sooner with it. */
    private static final Duration FOR_THE_TUNE = Duration.ofMillis(200);

    private static final Duration BETWEEN_COPIES = Duration.ofSeconds(5);

    private final Uncaught uncaught;
    private final NoticeBoard notices = new NoticeBoard(EventQueue::invokeLater);
    private final AppFolder folder;
    private final ScheduledExecutorService filesThread;
    private final Threads threads;
    private final Keeping keeping;
    private final CountDownLatch closed = new CountDownLatch(1);
    private final EarlyReading early;

    private AppMain(EarlyReading early, Function<Consumer<Notice>, AppFolder> where) {
        this.early = early;
        this.uncaught = new Uncaught(report -> Crash.show(Optional.empty(), Words.of(Locale.getDefault()), report));
        Thread.setDefaultUncaughtExceptionHandler(uncaught);
        this.folder = where.apply(notices);
        this.filesThread = Executors.newSingleThreadScheduledExecutor(work -> {
            Thread thread = new Thread(work, "mantice files");
            thread.setDaemon(true);
            return thread;
        });
        this.threads = new Threads(this::onFilesThread, EventQueue::invokeLater);
        this.keeping = new Keeping(new RememberedFile(folder), new ProfileShelf(folder), threads);
    }

    /** An executor keeps what its work throws to itself; here it is told like everything that nobody caught. */
    private void onFilesThread(Runnable work) {
        filesThread.execute(() -> {
            try {
                work.run();
            } catch (RuntimeException | Error e) {
                uncaught.uncaughtException(Thread.currentThread(), e);
            }
        });
    }

    /**
     * Opens the window and waits until it is closed.
     *
     * @throws InterruptedException if the waiting is interrupted
     */
    public static void run(WindowStart start) throws InterruptedException {
        run(start, AppFolder::ofThisComputer);
    }

    /** @param where the app keeps its things */
    static void run(WindowStart start, Function<Consumer<Notice>, AppFolder> where) throws InterruptedException {
        begin(start.dark(), start.file().map(EarlyReading::of).orElseGet(EarlyReading::ofExample), where)
                .open(start);
    }

    /**
     * Begins with what does not wait for rules and profiles: the look, the fonts.
     *
     * @param early the first tune, which is being read
     */
    static AppMain begin(Optional<Boolean> dark, EarlyReading early, Function<Consumer<Notice>, AppFolder> where) {
        AppMain app = new AppMain(early, where);
        app.onFilesThread(SheetPainter::loadFonts);
        EventQueue.invokeLater(() -> Looks.use(
                dark.or(() -> app.keeping.remembered().appearance().dark()).orElse(false)));
        return app;
    }

    /** Opens the window and waits until it is closed. */
    void open(WindowStart start) throws InterruptedException {
        Setup setup = new Setup(accordion(start), player(start), Wishes.NONE, List.of());
        Locale language = start.language()
                .or(() -> keeping.remembered().appearance().language())
                .orElse(Locale.getDefault());
        RecoveryCopy copy = new RecoveryCopy(folder, InstantSource.system());
        List<AbandonedCopy> abandoned = copy.findAbandoned();
        early.waitAtMost(FOR_THE_TUNE);
        try {
            EventQueue.invokeAndWait(() -> openWindow(start, setup, language, copy, abandoned));
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("the window cannot be opened", e.getCause());
        }
        closed.await();
    }

    private void openWindow(
            WindowStart start, Setup setup, Locale language, RecoveryCopy copy, List<AbandonedCopy> abandoned) {
        Background background = new ThreadBackground(EventQueue::invokeLater, "mantice planning");
        PlannerModel model = new PlannerModel(start.packs(), background, setup);
        for (Strip strip : Strip.values())
            model.show(strip, keeping.remembered().appearance().strips().contains(strip));
        Papers papers = new Papers(model);
        MainWindow window = new MainWindow(model, papers, keeping, threads, language);
        RecoveryWork recovery = recovery(window, papers, copy, background);
        uncaught.use(recovery::writeNow, report -> Crash.show(Optional.of(window), window.words(), report));
        notices.readBy(notice -> window.say(notice::text));
        for (Packs.Problem problem : start.packs().problems())
            window.say(words -> words.text("window.pack", problem.origin(), problem.message()));
        window.atEnd(() -> {
            recovery.close();
            closed.countDown();
        });
        if (abandoned.isEmpty()) window.opening().openFirst(start.file(), early);
        window.setVisible(true);
        window.goToSheet();
        if (!abandoned.isEmpty())
            EventQueue.invokeLater(
                    () -> recovery.offer(abandoned, () -> window.opening().openFirst(start.file(), early)));
    }

    private RecoveryWork recovery(MainWindow window, Papers papers, RecoveryCopy copy, Background background) {
        RecoveryWriter writer =
                new RecoveryWriter(copy, RecoveryWriter.Later.on(filesThread), InstantSource.system(), BETWEEN_COPIES);
        return new RecoveryWork(
                window.model(), papers, threads, window, new RecoveryWork.Copies(copy, writer, background));
    }

    private Accordion accordion(WindowStart start) {
        return start.accordion()
                .or(() -> keeping.remembered()
                        .picked()
                        .accordion()
                        .flatMap(keeping.shelf()::accordion)
                        .flatMap(Shelved::profile))
                .orElseGet(() -> AccordionPresets.get(USUAL_ACCORDION));
    }

    private Player player(WindowStart start) {
        return start.player()
                .or(() -> keeping.remembered()
                        .picked()
                        .player()
                        .flatMap(keeping.shelf()::player)
                        .flatMap(Shelved::profile))
                .orElseGet(() -> PlayerPresets.get(USUAL_PLAYER));
    }
}
