package org.fieldfold.pack;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;

/** What the counter's page says by itself, in one language. */
public final class PackWords {
    private final String language;
    private final Properties words = new Properties();

    private PackWords(String language) {
        this.language = language;
    }

    /** @throws IllegalArgumentException for a language without words */
    public static PackWords in(String language) {
        PackWords found = new PackWords(language);
        try (InputStream in = PackWords.class.getResourceAsStream("pack-" + language + ".properties")) {
            if (in == null) {
                throw new IllegalArgumentException("expected a language that packs speak (en, es), found '"
                        + language + "'");
            }
            found.words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return found;
    }

    String language() {
        return language;
    }

    String say(String key, Object... parts) {
        String words = this.words.getProperty(key);
        if (words == null) {
            throw new IllegalArgumentException("no words for '" + key + "' in '" + language + "'");
        }
        for (int i = 0; i < parts.length; i++) {
            words = words.replace("{" + i + "}", String.valueOf(parts[i]));
        }
        return words;
    }
}
