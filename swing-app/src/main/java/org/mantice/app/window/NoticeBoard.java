package org.mantice.app.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.mantice.app.work.Notice;

/** Keeps what is to be told until there is a window to tell it in. Takes notices on any thread. */
final class NoticeBoard implements Consumer<Notice> {
    private final Executor ui;
    private final List<Notice> waiting = new ArrayList<>();
    private Optional<Consumer<Notice>> reader = Optional.empty();

    NoticeBoard(Executor ui) {
        this.ui = ui;
    }

    @Override
    public synchronized void accept(Notice notice) {
        reader.ifPresentOrElse(to -> ui.execute(() -> to.accept(notice)), () -> waiting.add(notice));
    }

    synchronized void readBy(Consumer<Notice> window) {
        reader = Optional.of(window);
        List<Notice> all = List.copyOf(waiting);
        waiting.clear();
        all.forEach(this);
    }
}
