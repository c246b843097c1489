package org.mantice.app.window;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.event.ActionEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JPanel;
import org.mantice.app.model.Listening;
import org.mantice.app.model.OpenTune;
import org.mantice.app.model.PlannerModel;
import org.mantice.app.model.PlannerState;
import org.mantice.app.view.Actions;
import org.mantice.app.view.Command;
import org.mantice.app.view.PlannerPanel;
import org.mantice.app.words.Words;
import org.mantice.app.work.Appearance;

/** The frame: menu bar, planner, status line. Changing the language builds its content anew around the same model. */
public final class MainWindow extends JFrame implements Talk {
    private final transient PlannerModel model;
    private final transient Papers papers;
    private final transient Keeping keeping;
    private final transient Dialogs dialogs;
    private final transient OpeningWork opening;
    private final transient SavingWork saving;
    private final transient WritingWork writing;
    private final transient WindowPlace place;
    private transient Words words = Words.of(Locale.ENGLISH);
    private transient Actions actions = new Actions(words);
    private transient Runnable letGo = () -> {};
    private transient Runnable atEnd = () -> {};
    private transient Optional<Content> content = Optional.empty();

    /** What is in the frame, in one language. */
    private record Content(PlannerPanel panel, StatusLine status) {}

    MainWindow(PlannerModel model, Papers papers, Keeping keeping, Threads threads, Locale language) {
        this.model = model;
        this.papers = papers;
        this.keeping = keeping;
        this.dialogs = new SwingDialogs(() -> this, () -> words);
        this.opening = new OpeningWork(model, papers, keeping, threads, this);
        this.saving = new SavingWork(model, papers, keeping, threads, this);
        this.writing = new WritingWork(model, papers, keeping, threads, this);
        this.place = new WindowPlace(this);
        speak(language);
        content().panel().setZoomPercent(keeping.remembered().appearance().zoomPercent());
        setDefaultCloseOperation(DO_NOTHING_ON_CLOSE);
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                quit();
            }
        });
        place.restore(keeping.remembered().appearance().window());
    }

    /** Builds the content in a language. */
    void speak(Locale language) {
        int zoom = content.map(Content::panel).map(PlannerPanel::zoomPercent).orElse(0);
        letGo.run();
        words = Words.of(language);
        JComponent.setDefaultLocale(words.locale());
        setLocale(words.locale());
        actions = new Actions(words);
        WindowCommands.bind(this, actions, opening, saving, writing);
        Listening own = model.listeningDuring(this::build);
        PlannerPanel panel = content().panel();
        letGo = () -> {
            own.letGo();
            panel.letGo();
        };
        if (zoom > 0) content().panel().setZoomPercent(zoom);
        show(model.state());
    }

    private void build() {
        boolean first = content.isEmpty();
        PlannerPanel panel = first
                ? PlannerPanel.withViewsToCome(model, words, actions, keeping)
                : new PlannerPanel(model, words, actions, keeping);
        Content made = new Content(panel, new StatusLine(words, papers));
        content = Optional.of(made);
        JPanel pane = new JPanel(new BorderLayout());
        pane.add(made.panel());
        pane.add(made.status(), BorderLayout.PAGE_END);
        pane.setTransferHandler(new FileDrop(files -> saving.beforeLosing(() -> opening.open(files))));
        setContentPane(pane);
        Menus menus = new Menus(
                words,
                actions,
                new Menus.Recent(keeping::remembered, file -> saving.beforeLosing(() -> opening.openRecent(file))));
        setJMenuBar(menus.bar());
        model.addListener(this::show);
        if (first)
            ViewsToCome.of(panel, model, List.of(menus::fill, () -> setIconImages(AppIcon.all()), keeping::refresh));
        else menus.fill();
        revalidate();
    }

    private void show(PlannerState state) {
        content().status().show(state);
        String key = papers.isUnsaved(state) ? "window.title.unsaved" : "window.title";
        setTitle(state.tune()
                .map(OpenTune::name)
                .map(title -> words.text(key, title))
                .orElse(words.text("window.name")));
        getAccessibleContext().setAccessibleName(getTitle());
    }

    private Content content() {
        return content.orElseThrow();
    }

    Words words() {
        return words;
    }

    PlannerModel model() {
        return model;
    }

    Keeping keeping() {
        return keeping;
    }

    OpeningWork opening() {
        return opening;
    }

    /** The keys begin on the sheet, where an arrow changes nothing but what is looked at. */
    void goToSheet() {
        actions.get(Command.SHOW_SHEET)
                .actionPerformed(new ActionEvent(this, ActionEvent.ACTION_PERFORMED, Command.SHOW_SHEET.name()));
    }

    /** What is done when the window closes, after all questions. */
    void atEnd(Runnable work) {
        atEnd = work;
    }

    /** Closes, unless the player would rather stay. */
    void quit() {
        saving.beforeLosing(this::end);
    }

    private void end() {
        PlannerState state = model.state();
        Optional<String> accordion = keeping.keyOf(state.setup().accordion());
        Optional<String> player = keeping.keyOf(state.setup().player());
        keeping.rememberNow(remembered -> {
            Appearance appearance = remembered
                    .appearance()
                    .withZoom(content().panel().zoomPercent())
                    .withStrips(state.strips())
                    .withWindow(place.bounds());
            var now = remembered.withAppearance(appearance);
            if (accordion.isPresent()) now = now.withAccordion(accordion.get());
            return player.isPresent() ? now.withPlayer(player.get()) : now;
        });
        letGo.run();
        dispose();
        atEnd.run();
    }

    @Override
    public void say(Function<Words, String> sentence) {
        content().panel().say(sentence.apply(words));
    }

    @Override
    public void note(Function<Words, String> sentence) {
        content().status().note(sentence.apply(words));
        show(model.state());
    }

    @Override
    public Dialogs ask() {
        return dialogs;
    }

    /** Shows a page over the window until it is put away. */
    void page(String title, Component page) {
        Pages.show(Optional.of(this), title, page, words);
    }
}
