package saddlebar.stencil.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.Properties;

/** The words that stand on sheets, proofs and tape plans, from {@code words.properties}; another language is another such file. */
final class SheetWords {
    private final Properties words = new Properties();

    SheetWords() {
        try (InputStream in = SheetWords.class.getResourceAsStream("words.properties");
                Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            words.load(reader);
        } catch (IOException e) {
            throw new IllegalStateException("the words of this bundle cannot be read", e);
        }
    }

    /** The words of a key with its places {0}, {1} filled in. */
    String of(String key, Object... values) {
        String pattern = words.getProperty(key);
        if (pattern == null) {
            throw new IllegalArgumentException("there are no words for " + key);
        }
        return new MessageFormat(pattern, Locale.ROOT).format(values);
    }

    /** The words of a process; one that came with another bundle is called by its key. */
    String ofProcess(String key) {
        return words.getProperty("process." + key, key.replace('-', ' '));
    }
}
