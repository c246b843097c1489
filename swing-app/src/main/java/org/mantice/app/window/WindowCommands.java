package org.mantice.app.window;

import java.util.List;
import java.util.Locale;
import org.mantice.app.look.Looks;
import org.mantice.app.view.Actions;
import org.mantice.app.view.Command;
import org.mantice.app.words.Words;

/** What the commands do that need a window: files, looks, languages, pages. */
final class WindowCommands {
    private final MainWindow window;
    private final Actions actions;
    private final OpeningWork opening;
    private final SavingWork saving;
    private final WritingWork writing;

    private WindowCommands(
            MainWindow window, Actions actions, OpeningWork opening, SavingWork saving, WritingWork writing) {
        this.window = window;
        this.actions = actions;
        this.opening = opening;
        this.saving = saving;
        this.writing = writing;
    }

    static void bind(MainWindow window, Actions actions, OpeningWork opening, SavingWork saving, WritingWork writing) {
        WindowCommands commands = new WindowCommands(window, actions, opening, saving, writing);
        commands.bindFiles();
        commands.bindManners();
    }

    private void bindFiles() {
        actions.bind(Command.OPEN, () -> open(Dialogs.Kind.TUNE), state -> true);
        actions.bind(Command.OPEN_PLAN, () -> open(Dialogs.Kind.PLAN), state -> true);
        PickingWork picking = opening.picking();
        actions.bind(Command.ANOTHER_TUNE, () -> saving.beforeLosing(picking::another), PickingWork::hasOthers);
        actions.bind(Command.MELODY, () -> picking.melody(saving::beforeLosing), PickingWork::hasMelodyToChoose);
        actions.bind(Command.SAVE, () -> saving.save(() -> {}), SavingWork::possible);
        actions.bind(Command.SAVE_AS, () -> saving.saveAs(() -> {}), SavingWork::possible);
        actions.bind(Command.EXPORT_JSON, saving::export, SavingWork::possible);
        actions.bind(Command.WRITE_MUSICXML, writing::write, WritingWork::possible);
        actions.bind(Command.SAVE_PLAYER, saving::savePlayer, state -> true);
        actions.bind(Command.QUIT, window::quit, state -> true);
    }

    private void open(Dialogs.Kind kind) {
        saving.beforeLosing(() -> window.ask()
                .open(kind, window.keeping().remembered().folder())
                .ifPresent(file -> opening.open(List.of(file))));
    }

    private void bindManners() {
        actions.bindSwitch(Command.LIGHT, () -> look(false), state -> true, state -> !Looks.isDark());
        actions.bindSwitch(Command.DARK, () -> look(true), state -> true, state -> Looks.isDark());
        actions.bindSwitch(
                Command.ENGLISH, () -> speak(Locale.ENGLISH), state -> true, state -> speaks(Locale.ENGLISH));
        actions.bindSwitch(Command.GERMAN, () -> speak(Locale.GERMAN), state -> true, state -> speaks(Locale.GERMAN));
        actions.bind(
                Command.KEYS,
                () -> window.page(words().text("window.keys"), new KeysPage(words(), actions)),
                state -> true);
        actions.bind(
                Command.SIGNS, () -> window.page(words().text("window.signs"), new SignsPage(words())), state -> true);
        actions.bind(
                Command.ABOUT,
                () -> window.page(words().text("window.about"), new AboutPage(words(), AppMain.VERSION)),
                state -> true);
    }

    private Words words() {
        return window.words();
    }

    private boolean speaks(Locale language) {
        return words().locale().equals(language);
    }

    private void look(boolean dark) {
        Looks.use(dark);
        window.keeping()
                .remember(remembered ->
                        remembered.withAppearance(remembered.appearance().withDark(dark)));
        actions.follow(window.model().state());
    }

    private void speak(Locale language) {
        if (speaks(language)) {
            actions.follow(window.model().state());
            return;
        }
        window.keeping()
                .remember(remembered ->
                        remembered.withAppearance(remembered.appearance().withLanguage(language)));
        window.speak(language);
    }
}
