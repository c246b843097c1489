package org.mantice.app.window;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.mantice.app.model.BookLine;
import org.mantice.app.words.Words;
import org.mantice.reading.PartInfo;
import org.mantice.reading.ReadTune;
import org.mantice.reading.TuneEntry;

/** A player whose answers are set before, and who remembers what was said and asked. */
final class FakeTalk implements Talk, Dialogs {
    private final Words words = Words.of(Locale.ENGLISH);
    final List<String> said = new ArrayList<>();
    final List<String> noted = new ArrayList<>();
    final List<String> asked = new ArrayList<>();
    Optional<Path> tune = Optional.empty();
    Optional<Path> file = Optional.empty();
    Optional<String> name = Optional.empty();
    Optional<String> title = Optional.empty();
    Optional<String> part = Optional.empty();
    Unsaved unsaved = Unsaved.CANCEL;
    boolean agrees = true;
    boolean writtenOut;
    boolean bassStaff;
    RecoveryAnswer recovery = new RecoveryAnswer(Recovery.LATER, 0);

    @Override
    public void say(Function<Words, String> sentence) {
        said.add(sentence.apply(words));
    }

    @Override
    public void note(Function<Words, String> sentence) {
        noted.add(sentence.apply(words));
    }

    @Override
    public Dialogs ask() {
        return this;
    }

    @Override
    public Optional<Path> open(Kind kind, Optional<Path> folder) {
        asked.add("open");
        return file;
    }

    @Override
    public Optional<Path> save(Path suggested) {
        asked.add("save " + suggested.getFileName());
        return file;
    }

    @Override
    public Optional<Score> saveScore(Path suggested, boolean planned) {
        asked.add("score " + suggested.getFileName());
        return file.map(there -> new Score(there, writtenOut, bassStaff && planned));
    }

    @Override
    public Optional<TuneEntry> tuneOf(List<BookLine> book, Optional<String> last) {
        asked.add("tune of " + book.size()
                + last.map(handle -> ", last " + handle).orElse(""));
        return book.stream()
                .map(BookLine::entry)
                .filter(entry -> title.filter(entry.title()::equals).isPresent())
                .findFirst();
    }

    @Override
    public Optional<PartInfo> melodyOf(ReadTune read) {
        asked.add("melody of " + read.parts().size());
        return read.parts().stream()
                .filter(each -> part.filter(each.name()::equals).isPresent())
                .findFirst();
    }

    @Override
    public Optional<Path> findTune(String wanted, Optional<Path> folder) {
        asked.add("find " + wanted);
        return tune;
    }

    @Override
    public Unsaved unsaved() {
        asked.add("unsaved");
        return unsaved;
    }

    @Override
    public boolean overwrite(Path there) {
        asked.add("overwrite");
        return agrees;
    }

    @Override
    public boolean planAnew(String tuneFile) {
        asked.add("anew");
        return agrees;
    }

    @Override
    public Optional<String> playerName(String suggested) {
        asked.add("name " + suggested);
        return name;
    }

    @Override
    public boolean overwritePlayer(String player) {
        asked.add("overwrite player " + player);
        return agrees;
    }

    @Override
    public RecoveryAnswer recover(List<Copy> copies) {
        asked.add("recover " + copies.size());
        return recovery;
    }
}
