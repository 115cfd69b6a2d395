package mouldwright.report;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** Writes JSON: two spaces of indent, keys in the order they are written, numbers as {@link Numbers} has them. */
final class JsonFile {

    /** Writes one value. */
    @FunctionalInterface
    interface Content {
        void write(JsonFile json) throws IOException;
    }

    private final JsonWriter writer;

    private JsonFile(StringWriter out) {
        writer = new JsonWriter(out);
        writer.setIndent("  ");
    }

    static String print(Content content) {
        StringWriter out = new StringWriter();
        try {
            content.write(new JsonFile(out));
        } catch (IOException e) {
            throw new UncheckedIOException("a string refused to be written to", e);
        }
        return out.append('\n').toString();
    }

    JsonFile object(Content members) throws IOException {
        writer.beginObject();
        members.write(this);
        writer.endObject();
        return this;
    }

    <T> JsonFile array(String key, Iterable<T> items, Item<T> item) throws IOException {
        writer.name(key);
        return array(items, item);
    }

    <T> JsonFile array(Iterable<T> items, Item<T> item) throws IOException {
        writer.beginArray();
        for (T one : items) {
            item.write(this, one);
        }
        writer.endArray();
        return this;
    }

    JsonFile member(String key, Content content) throws IOException {
        writer.name(key);
        content.write(this);
        return this;
    }

    JsonFile member(String key, String value) throws IOException {
        writer.name(key).value(value);
        return this;
    }

    JsonFile member(String key, double value) throws IOException {
        writer.name(key);
        return number(value);
    }

    JsonFile member(String key, boolean value) throws IOException {
        writer.name(key).value(value);
        return this;
    }

    JsonFile number(double value) throws IOException {
        writer.jsonValue(Numbers.text(value));
        return this;
    }

    JsonFile text(String value) throws IOException {
        writer.value(value);
        return this;
    }

    /** A pair of numbers, on one line. */
    JsonFile pair(double first, double second) throws IOException {
        writer.jsonValue("[" + Numbers.text(first) + ", " + Numbers.text(second) + "]");
        return this;
    }

    /** Writes one item of an array. */
    @FunctionalInterface
    interface Item<T> {
        void write(JsonFile json, T item) throws IOException;
    }
}
