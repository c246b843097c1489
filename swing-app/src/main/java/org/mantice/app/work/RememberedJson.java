package org.mantice.app.work;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.mantice.app.sheet.Strip;
import org.mantice.app.words.Words;

/** What is remembered as a tree of JSON and back. A field that is missing or of a wrong kind counts as not said. */
final class RememberedJson {
    private RememberedJson() {}

    static Remembered of(ObjectNode tree) {
        return new Remembered(
                recent(tree.path("recent")),
                SmallJson.path(tree.path("folder")),
                new Remembered.Picked(SmallJson.text(tree.path("accordion")), SmallJson.text(tree.path("player"))),
                profiles(tree.path("profiles")),
                books(tree.path("books")),
                appearance(tree));
    }

    private static List<Remembered.Recent> recent(JsonNode list) {
        Map<Path, Remembered.Recent> files = new LinkedHashMap<>();
        for (JsonNode one : list)
            SmallJson.path(one.path("file"))
                    .ifPresent(file -> files.putIfAbsent(
                            file,
                            new Remembered.Recent(
                                    file, SmallJson.flag(one.path("missing")).orElse(false))));
        return List.copyOf(files.values());
    }

    private static List<Path> profiles(JsonNode list) {
        Set<Path> files = new LinkedHashSet<>();
        for (JsonNode one : list) SmallJson.path(one).ifPresent(files::add);
        return List.copyOf(files);
    }

    private static List<Remembered.Book> books(JsonNode list) {
        Map<Path, Remembered.Book> books = new LinkedHashMap<>();
        for (JsonNode one : list) {
            Optional<Path> file = SmallJson.path(one.path("file"));
            Optional<String> entry = SmallJson.text(one.path("tune"));
            if (file.isPresent() && entry.isPresent())
                books.putIfAbsent(file.get(), new Remembered.Book(file.get(), entry.get()));
        }
        return List.copyOf(books.values());
    }

    private static Appearance appearance(ObjectNode tree) {
        OptionalInt zoom = SmallJson.number(tree.path("zoomPercent"));
        return new Appearance(
                SmallJson.text(tree.path("language"))
                        .map(Locale::forLanguageTag)
                        .filter(Words.LANGUAGES::contains),
                SmallJson.flag(tree.path("dark")),
                Math.max(Appearance.LEAST_ZOOM, Math.min(Appearance.MOST_ZOOM, zoom.orElse(100))),
                window(tree.path("window")),
                strips(tree.path("strips")));
    }

    private static Optional<WindowBounds> window(JsonNode node) {
        List<Integer> numbers = new ArrayList<>();
        for (String name : List.of("x", "y", "width", "height"))
            SmallJson.number(node.path(name)).ifPresent(numbers::add);
        if (numbers.size() < 4 || numbers.get(2) < 1 || numbers.get(3) < 1) return Optional.empty();
        boolean maximised = SmallJson.flag(node.path("maximised")).orElse(false);
        return Optional.of(new WindowBounds(numbers.get(0), numbers.get(1), numbers.get(2), numbers.get(3), maximised));
    }

    private static Set<Strip> strips(JsonNode list) {
        if (!list.isArray()) return Appearance.USUAL.strips();
        Set<Strip> shown = EnumSet.noneOf(Strip.class);
        for (JsonNode one : list)
            for (Strip strip : Strip.values()) if (word(strip).equals(one.asText())) shown.add(strip);
        return shown;
    }

    /** Puts all of it into a tree; other fields there are left as they are. */
    static void put(Remembered remembered, ObjectNode tree) {
        ArrayNode recent = tree.putArray("recent");
        for (Remembered.Recent file : remembered.recent()) {
            ObjectNode one = recent.addObject().put("file", file.file().toString());
            if (file.missing()) one.put("missing", true);
        }
        put(tree, "folder", remembered.folder().map(Path::toString));
        put(tree, "accordion", remembered.picked().accordion());
        put(tree, "player", remembered.picked().player());
        ArrayNode profiles = tree.putArray("profiles");
        for (Path file : remembered.profiles()) profiles.add(file.toString());
        ArrayNode books = tree.putArray("books");
        for (Remembered.Book book : remembered.books())
            books.addObject().put("file", book.file().toString()).put("tune", book.entry());
        Appearance look = remembered.appearance();
        put(tree, "language", look.language().map(Locale::toLanguageTag));
        look.dark().ifPresentOrElse(dark -> tree.put("dark", dark), () -> tree.remove("dark"));
        tree.put("zoomPercent", look.zoomPercent());
        look.window().ifPresent(bounds -> putWindow(bounds, tree));
        ArrayNode strips = tree.putArray("strips");
        look.strips().forEach(strip -> strips.add(word(strip)));
    }

    private static void put(ObjectNode tree, String name, Optional<String> value) {
        value.ifPresentOrElse(text -> tree.put(name, text), () -> tree.remove(name));
    }

    private static void putWindow(WindowBounds bounds, ObjectNode tree) {
        ObjectNode node = tree.get("window") instanceof ObjectNode old ? old : tree.putObject("window");
        node.put("x", bounds.x()).put("y", bounds.y());
        node.put("width", bounds.width()).put("height", bounds.height());
        node.put("maximised", bounds.maximised());
    }

    private static String word(Strip strip) {
        return strip.name().toLowerCase(Locale.ROOT);
    }
}
