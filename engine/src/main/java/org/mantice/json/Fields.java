package org.mantice.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.mantice.fault.Cause;
import org.mantice.fault.FilePlace;
import org.mantice.json.JsonFileException.Reason;

/**
 * The fields of one object in a file. Each is asked for by name and checked for its type; a wrong one is refused with
 * its JSON pointer, its value and what is allowed. Fields that nobody asks for are kept by {@link #keepInto}.
 */
public final class Fields {
    private static final Pattern REFUSAL = Pattern.compile("([A-Za-z][\\w.\\[\\]-]*) is (.*); allowed: (.*)");

    private final JsonFile file;
    private final String pointer;
    private final ObjectNode node;
    private final Set<String> asked = new TreeSet<>();
    private final Map<String, Fields> objects = new LinkedHashMap<>();
    private final Map<String, List<Fields>> lists = new LinkedHashMap<>();

    Fields(JsonFile file, String pointer, ObjectNode node) {
        this.file = file;
        this.pointer = pointer;
        this.node = node;
    }

    /** Whether the field is there; a null counts as there. */
    public boolean has(String name) {
        return node.has(name);
    }

    /** A whole number; one written with a fraction of zero counts. */
    public int wholeNumber(String name) {
        return wholeNumber(name, get(name, "a whole number"));
    }

    private int wholeNumber(String name, JsonNode value) {
        if (!value.isNumber()) throw wrong(name, "a whole number");
        try {
            return value.decimalValue().intValueExact();
        } catch (ArithmeticException e) {
            throw wrong(name, "a whole number from " + Integer.MIN_VALUE + " to " + Integer.MAX_VALUE);
        }
    }

    public String text(String name) {
        JsonNode value = get(name, "a text");
        if (!value.isTextual()) throw wrong(name, "a text");
        return value.textValue();
    }

    public boolean flag(String name) {
        JsonNode value = get(name, "true or false");
        if (!value.isBoolean()) throw wrong(name, "true or false");
        return value.booleanValue();
    }

    /** One of a closed choice, written as {@link #word} writes it. */
    public <E extends Enum<E>> E choice(String name, Class<E> type) {
        String allowed = words(type);
        return choice(name, get(name, allowed), type);
    }

    private <E extends Enum<E>> E choice(String name, JsonNode value, Class<E> type) {
        for (E constant : type.getEnumConstants())
            if (value.isTextual() && word(constant).equals(value.textValue())) return constant;
        throw wrong(name, words(type));
    }

    /** A list of different constants of a closed choice. */
    public <E extends Enum<E>> List<E> choices(String name, Class<E> type) {
        String allowed = "a list of different ones of: " + words(type);
        JsonNode list = get(name, allowed);
        if (!list.isArray()) throw wrong(name, allowed);
        List<E> found = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            E constant = choice(name + "/" + i, list.get(i), type);
            if (found.contains(constant)) throw wrong(name + "/" + i, "each one once");
            found.add(constant);
        }
        return List.copyOf(found);
    }

    /** Whole numbers by the constants of a closed choice; other names are kept unread. */
    public <E extends Enum<E>> Map<E, Integer> numbers(String name, Class<E> type) {
        Fields inner = object(name);
        Map<E, Integer> found = new TreeMap<>();
        for (E constant : type.getEnumConstants()) {
            inner.asked.add(word(constant));
            if (inner.has(word(constant))) found.put(constant, inner.wholeNumber(word(constant)));
        }
        return found;
    }

    /** Whole numbers by whatever names there are. */
    public Map<String, Integer> numbers(String name) {
        Fields inner = object(name);
        Map<String, Integer> found = new TreeMap<>();
        inner.node.properties().forEach(field -> {
            inner.asked.add(field.getKey());
            found.put(field.getKey(), inner.wholeNumber(escape(field.getKey()), field.getValue()));
        });
        return found;
    }

    /** A list of texts. */
    public List<String> texts(String name) {
        JsonNode list = get(name, "a list of texts");
        if (!list.isArray()) throw wrong(name, "a list of texts");
        List<String> found = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            if (!list.get(i).isTextual()) throw wrong(name + "/" + i, "a text");
            found.add(list.get(i).textValue());
        }
        return List.copyOf(found);
    }

    /** Texts by whatever names there are. */
    public Map<String, String> textsByName(String name) {
        Fields inner = object(name);
        Map<String, String> found = new TreeMap<>();
        inner.node.properties().forEach(field -> {
            inner.asked.add(field.getKey());
            if (!field.getValue().isTextual()) throw inner.wrong(escape(field.getKey()), "a text");
            found.put(field.getKey(), field.getValue().textValue());
        });
        return found;
    }

    public Fields object(String name) {
        JsonNode value = get(name, "an object");
        if (!(value instanceof ObjectNode object)) throw wrong(name, "an object");
        return objects.computeIfAbsent(name, key -> new Fields(file, pointerTo(key), object));
    }

    public List<Fields> objects(String name) {
        JsonNode value = get(name, "a list of objects");
        if (!(value instanceof ArrayNode array)) throw wrong(name, "a list of objects");
        if (lists.containsKey(name)) return lists.get(name);
        List<Fields> found = new ArrayList<>();
        for (int i = 0; i < array.size(); i++) {
            if (!(array.get(i) instanceof ObjectNode object)) throw wrong(name + "/" + i, "an object");
            found.add(new Fields(file, pointerTo(name + "/" + i), object));
        }
        lists.put(name, List.copyOf(found));
        return lists.get(name);
    }

    /**
     * Makes a value from fields already read; where its own checks refuse one ("name is value; allowed: range"), the
     * refusal is located at that field.
     */
    public <T> T make(Supplier<T> maker) {
        return make("", maker);
    }

    /** As {@link #make(Supplier)}; a refusal that names no field of this object is located at the one named here. */
    public <T> T make(String name, Supplier<T> maker) {
        try {
            return maker.get();
        } catch (IllegalArgumentException e) {
            Matcher refusal = REFUSAL.matcher(String.valueOf(e.getMessage()));
            String field = refusal.matches() ? pathOf(refusal.group(1)) : "";
            if (!field.isEmpty() && find(field).isPresent())
                throw JsonFileException.causedBy(
                        e, Reason.WRONG_VALUE, placeOf(field), pointerTo(field), refusal.group(2), refusal.group(3));
            String at = name.isEmpty() ? pointer : pointerTo(escape(name));
            throw JsonFileException.causedBy(
                    e, Reason.REFUSED, file.placeOf(at), at.isEmpty() ? "/" : at, Cause.words(e));
        }
    }

    /** {@code volumes[3].openingMm} as {@code volumes/3/openingMm}, {@code banks.LOW_16} as {@code banks/low-16}. */
    private static String pathOf(String name) {
        StringBuilder path = new StringBuilder();
        for (String segment : name.replace("[", ".").replace("]", "").split("\\."))
            path.append(path.isEmpty() ? "" : "/").append(segment.matches("[A-Z][A-Z0-9_]*") ? word(segment) : segment);
        return path.toString();
    }

    /** The refusal of a field's value. */
    public JsonFileException wrong(String name, String allowed) {
        String value = find(name).map(Fields::show).orElse("not there");
        return JsonFileException.of(Reason.WRONG_VALUE, placeOf(name), pointerTo(name), value, allowed);
    }

    /** Copies what nobody asked for into a fresh object of the same kind, unless that has a field of this name. */
    public void keepInto(ObjectNode fresh) {
        node.properties().forEach(field -> {
            if (!asked.contains(field.getKey()) && !fresh.has(field.getKey()))
                fresh.set(field.getKey(), field.getValue().deepCopy());
        });
        objects.forEach((name, inner) -> {
            if (fresh.get(name) instanceof ObjectNode object) inner.keepInto(object);
        });
        lists.forEach((name, elements) -> {
            if (fresh.get(name) instanceof ArrayNode array) keepElements(elements, array);
        });
    }

    /** Elements are known again by their id; without ids, by their place while the list is as long as before. */
    private static void keepElements(List<Fields> elements, ArrayNode fresh) {
        for (int i = 0; i < elements.size(); i++) {
            Fields old = elements.get(i);
            if (old.has("id")) {
                for (JsonNode element : fresh)
                    if (element instanceof ObjectNode object
                            && old.node.get("id").equals(object.get("id"))) old.keepInto(object);
            } else if (fresh.size() == elements.size() && fresh.get(i) instanceof ObjectNode object) {
                old.keepInto(object);
            }
        }
    }

    private JsonNode get(String name, String allowed) {
        asked.add(name);
        JsonNode value = node.get(name);
        if (value == null) throw JsonFileException.of(Reason.MISSING, file.placeOf(pointer), pointerTo(name), allowed);
        return value;
    }

    private Optional<JsonNode> find(String path) {
        JsonNode found = node;
        for (String segment : path.split("/"))
            found = found.isArray() && segment.matches("[0-9]{1,9}")
                    ? found.path(Integer.parseInt(segment))
                    : found.path(segment.replace("~1", "/").replace("~0", "~"));
        return found.isMissingNode() ? Optional.empty() : Optional.of(found);
    }

    private FilePlace placeOf(String path) {
        return file.placeOf(pointerTo(path));
    }

    private static String escape(String name) {
        return name.replace("~", "~0").replace("/", "~1");
    }

    private String pointerTo(String path) {
        return pointer + "/" + path;
    }

    /** How a value looks in a message. */
    public static String show(JsonNode value) {
        if (value.isObject()) return "an object";
        if (value.isArray()) return "a list";
        return value.toString();
    }

    /** How a constant is written: {@code LOW_16} as {@code low-16}. */
    public static String word(Enum<?> constant) {
        return word(constant.name());
    }

    private static String word(String constantName) {
        return constantName.toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static <E extends Enum<E>> String words(Class<E> type) {
        List<String> words = new ArrayList<>();
        for (E constant : type.getEnumConstants()) words.add(word(constant));
        return String.join(", ", words);
    }
}
