package saddlebar.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import saddlebar.ui.colourway.ColourWords;
import saddlebar.ui.screening.ScreenWords;

/** Every word of the desktop is there in both languages, and each language fills the same gaps. */
class WordsTest {
    private static final Pattern GAP = Pattern.compile("\\{\\d}");

    private static Properties read(String file) throws IOException {
        Properties words = new Properties();
        Path path = Path.of(file);
        try (InputStream in = Files.exists(path) ? Files.newInputStream(path) : WordsTest.class.getResourceAsStream(file)) {
            words.load(in);
        }
        return words;
    }

    private static Set<String> gaps(String text) {
        Set<String> gaps = new TreeSet<>();
        Matcher matcher = GAP.matcher(text);
        while (matcher.find()) {
            gaps.add(matcher.group());
        }
        return gaps;
    }

    private static void assertAlike(Properties english, Properties german) {
        assertEquals(english.stringPropertyNames(), german.stringPropertyNames());
        for (String key : english.stringPropertyNames()) {
            assertEquals(gaps(english.getProperty(key)), gaps(german.getProperty(key)), "gaps of " + key);
            assertFalse(english.getProperty(key).isEmpty() || german.getProperty(key).isEmpty(), key + " has no words");
        }
    }

    @Test
    void bothLanguagesSayTheSameThings() throws IOException {
        assertAlike(read("messages.properties"), read("messages_de.properties"));
        assertAlike(read("plugin.properties"), read("plugin_de.properties"));
        assertAlike(read("colourway/words.properties"), read("colourway/words_de.properties"));
        assertAlike(read("screening/screen.properties"), read("screening/screen_de.properties"));
    }

    @Test
    void everyKeyOfTheCodeHasWordsAndNoneIsLeftOver() throws IOException {
        assertEquals(keys(Messages.class), new TreeSet<>(read("messages.properties").stringPropertyNames()));
        assertEquals(keys(ScreenWords.class), new TreeSet<>(read("screening/screen.properties").stringPropertyNames()));
        assertEquals(keys(ColourWords.class), new TreeSet<>(read("colourway/words.properties").stringPropertyNames()));
    }

    private static Set<String> keys(Class<?> words) {
        return Arrays.stream(words.getFields()).filter(field -> Modifier.isStatic(field.getModifiers())).map(Field::getName)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Texts with gaps go through NLS.bind, where a lone apostrophe would hide the rest. */
    @Test
    void noApostropheStandsBesideAGap() throws IOException {
        for (String file : new String[] {"messages.properties", "messages_de.properties", "colourway/words.properties", "colourway/words_de.properties",
                "screening/screen.properties", "screening/screen_de.properties"}) {
            Properties words = read(file);
            words.forEach((key, text) -> assertTrue(gaps((String) text).isEmpty() || !((String) text).contains("'"), key + " in " + file));
        }
    }
}
