package org.mantice.app.look;

import java.awt.Color;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** Our own colours straight from a look's file, for programs that have another look. */
final class OwnColours {
    private static final String PREFIX = "Mantice.";

    private final Class<?> look;
    private final Properties properties;

    private OwnColours(Class<?> look, Properties properties) {
        this.look = look;
        this.properties = properties;
    }

    static OwnColours of(boolean dark) {
        Class<?> look = dark ? DarkLook.class : LightLook.class;
        Properties properties = new Properties();
        try (InputStream in = look.getResourceAsStream(look.getSimpleName() + ".properties")) {
            if (in == null) throw new IOException("the file of " + look.getSimpleName() + " is missing");
            properties.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new OwnColours(look, properties);
    }

    /** @throws IllegalArgumentException if there is none of this name */
    Color get(String name) {
        String value = properties.getProperty(PREFIX + name);
        if (value == null)
            throw new IllegalArgumentException("colour is " + name + "; allowed: those that " + look.getSimpleName()
                    + ".properties calls " + PREFIX);
        return Color.decode(value);
    }
}
