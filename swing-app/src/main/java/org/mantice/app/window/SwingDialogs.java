package org.mantice.app.window;

import java.awt.Component;
import java.io.File;
import java.nio.file.Path;
import java.text.DateFormat;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.filechooser.FileNameExtensionFilter;
import org.mantice.app.model.BookLine;
import org.mantice.app.model.BookModel;
import org.mantice.app.model.MelodyModel;
import org.mantice.app.words.Words;
import org.mantice.reading.PartInfo;
import org.mantice.reading.ReadTune;
import org.mantice.reading.TuneEntry;

/** Asks in dialogs over the window. */
final class SwingDialogs implements Dialogs {
    private final Supplier<? extends Component> window;
    private final Supplier<Words> words;

    /** @param words of the moment: the language may change */
    SwingDialogs(Supplier<? extends Component> window, Supplier<Words> words) {
        this.window = window;
        this.words = words;
    }

    private String text(String key, Object... arguments) {
        return words.get().text(key, arguments);
    }

    @Override
    public Optional<Path> open(Kind kind, Optional<Path> folder) {
        FileNameExtensionFilter tunes = new FileNameExtensionFilter(
                text("window.filter.tunes"), "musicxml", "mxl", "xml", "abc", "txt", "mid", "midi", "rmi");
        FileNameExtensionFilter ours = new FileNameExtensionFilter(text("window.filter.plans"), "json");
        JFileChooser chooser = chooser(folder, kind == Kind.TUNE ? "window.open.tune" : "window.open.plan");
        chooser.addChoosableFileFilter(tunes);
        chooser.addChoosableFileFilter(ours);
        chooser.setFileFilter(kind == Kind.TUNE ? tunes : ours);
        return opened(chooser);
    }

    @Override
    public Optional<Path> findTune(String wanted, Optional<Path> folder) {
        int answer = JOptionPane.showConfirmDialog(
                window.get(),
                text("window.findTune.question", wanted),
                text("window.findTune"),
                JOptionPane.OK_CANCEL_OPTION);
        return answer == JOptionPane.OK_OPTION ? open(Kind.TUNE, folder) : Optional.empty();
    }

    @Override
    public Optional<TuneEntry> tuneOf(List<BookLine> book, Optional<String> last) {
        BookModel model = new BookModel(book, last, words.get());
        Choosing dialog = new Choosing(window.get(), text("window.book"));
        BookPanel panel = new BookPanel(model, words.get(), dialog::take);
        boolean taken = dialog.ask(panel, panel.filter(), text("window.book.open"), words.get());
        return taken ? model.choice() : Optional.empty();
    }

    @Override
    public Optional<PartInfo> melodyOf(ReadTune tune) {
        Choosing dialog = new Choosing(window.get(), text("window.melody"));
        MelodyPanel panel = new MelodyPanel(MelodyModel.of(tune, words.get()), words.get(), dialog::take);
        boolean taken = dialog.ask(panel, panel.first(), text("window.melody.take"), words.get());
        return taken ? panel.choice() : Optional.empty();
    }

    private JFileChooser chooser(Optional<Path> folder, String title) {
        JFileChooser chooser = new JFileChooser();
        chooser.setLocale(words.get().locale());
        folder.map(Path::toFile).ifPresent(chooser::setCurrentDirectory);
        chooser.setDialogTitle(words.get().text(title));
        return chooser;
    }

    private Optional<Path> opened(JFileChooser chooser) {
        if (chooser.showOpenDialog(window.get()) != JFileChooser.APPROVE_OPTION) return Optional.empty();
        return Optional.of(chooser.getSelectedFile().toPath());
    }

    @Override
    public Optional<Path> save(Path suggested) {
        JFileChooser chooser = chooser(Optional.ofNullable(suggested.getParent()), "window.save");
        chooser.setFileFilter(new FileNameExtensionFilter(text("window.filter.plans"), "json"));
        chooser.setSelectedFile(new File(suggested.toString()));
        if (chooser.showSaveDialog(window.get()) != JFileChooser.APPROVE_OPTION) return Optional.empty();
        return Optional.of(chooser.getSelectedFile().toPath());
    }

    @Override
    public Optional<Score> saveScore(Path suggested, boolean planned) {
        JFileChooser chooser = chooser(Optional.ofNullable(suggested.getParent()), "window.score");
        chooser.setFileFilter(new FileNameExtensionFilter(text("window.filter.scores"), "musicxml", "mxl", "xml"));
        chooser.setSelectedFile(new File(suggested.toString()));
        PassesChoice passes = new PassesChoice(words.get(), planned);
        chooser.setAccessory(passes);
        if (chooser.showSaveDialog(window.get()) != JFileChooser.APPROVE_OPTION) return Optional.empty();
        return Optional.of(new Score(chooser.getSelectedFile().toPath(), passes.writtenOut(), passes.bassStaff()));
    }

    @Override
    public Unsaved unsaved() {
        int answer = choose(
                text("window.unsaved"),
                text("window.unsaved.question"),
                text("window.unsaved.save"),
                text("window.unsaved.lose"),
                text("window.cancel"));
        return answer == 0 ? Unsaved.SAVE : answer == 1 ? Unsaved.LOSE : Unsaved.CANCEL;
    }

    @Override
    public boolean overwrite(Path file) {
        return choose(
                        text("window.overwrite"),
                        text("window.overwrite.question", file),
                        text("window.overwrite.yes"),
                        text("window.cancel"))
                == 0;
    }

    @Override
    public boolean planAnew(String tuneFile) {
        return choose(
                        text("window.tuneChanged"),
                        text("window.tuneChanged.question", tuneFile),
                        text("window.tuneChanged.yes"),
                        text("window.cancel"))
                == 0;
    }

    @Override
    public boolean overwritePlayer(String name) {
        return choose(
                        text("window.overwrite"),
                        text("window.overwritePlayer.question", name),
                        text("window.overwrite.yes"),
                        text("window.cancel"))
                == 0;
    }

    /** @return the index of the option; the last if none was taken */
    private int choose(String title, Object message, String... options) {
        int answer = JOptionPane.showOptionDialog(
                window.get(),
                message,
                title,
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.QUESTION_MESSAGE,
                null,
                options,
                options[0]);
        return answer == JOptionPane.CLOSED_OPTION ? options.length - 1 : answer;
    }

    @Override
    public Optional<String> playerName(String suggested) {
        JTextField name = new JTextField(suggested, 24);
        JLabel label = new JLabel(text("window.playerName"));
        label.setLabelFor(name);
        JPanel question = new JPanel(new java.awt.BorderLayout());
        question.add(label, java.awt.BorderLayout.PAGE_START);
        question.add(name);
        int answer = choose(text("window.savePlayer"), question, text("window.unsaved.save"), text("window.cancel"));
        return answer == 0 ? Optional.of(name.getText()) : Optional.empty();
    }

    @Override
    public RecoveryAnswer recover(List<Copy> copies) {
        JList<String> list = new JList<>(copies.stream().map(this::line).toArray(String[]::new));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setSelectedIndex(0);
        list.setVisibleRowCount(Math.min(6, Math.max(2, copies.size())));
        JLabel label = new JLabel(text("window.recovery.question"));
        label.setLabelFor(list);
        JPanel question = new JPanel(new java.awt.BorderLayout(0, 8));
        question.add(label, java.awt.BorderLayout.PAGE_START);
        question.add(new JScrollPane(list));
        int answer = choose(
                text("window.recovery"),
                question,
                text("window.recovery.back"),
                text("window.recovery.away"),
                text("window.recovery.later"));
        return new RecoveryAnswer(Recovery.values()[answer], Math.max(0, list.getSelectedIndex()));
    }

    private String line(Copy copy) {
        DateFormat format = DateFormat.getDateTimeInstance(
                DateFormat.MEDIUM, DateFormat.SHORT, words.get().locale());
        return text("window.recovery.copy", copy.title(), format.format(Date.from(copy.writtenAt())), copy.tuneFile());
    }
}
