package saddlebar.stencil.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;

import saddlebar.stencil.process.TonerSide;

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
        return ifAny(key, values).orElseThrow(() -> new IllegalArgumentException("there are no words for " + key));
    }

    Optional<String> ifAny(String key, Object... values) {
        return Optional.ofNullable(words.getProperty(key)).map(pattern -> new MessageFormat(pattern, Locale.ROOT).format(values));
    }

    /** The words of a process; one that came with another bundle is called by its key. */
    String ofProcess(String key) {
        return words.getProperty("process." + key, key.replace('-', ' '));
    }

    String ofSide(TonerSide side) {
        return of("side." + side.key());
    }

    String ofSheet(SheetLabel label) {
        return of("label.sheet", label.commission(), String.valueOf(label.number()), String.valueOf(label.of()));
    }
}
