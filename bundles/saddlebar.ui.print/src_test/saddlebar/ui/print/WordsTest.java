package saddlebar.ui.print;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Properties;
import java.util.TreeSet;

import org.junit.jupiter.api.Test;

class WordsTest {
    private static Properties words(String file) throws IOException {
        Properties words = new Properties();
        try (InputStream in = Messages.class.getResourceAsStream(file)) {
            words.load(in);
        }
        return words;
    }

    @Test
    void bothLanguagesSayAllAndTakeTheSameValues() throws IOException {
        Properties english = words("messages.properties");
        Properties german = words("messages_de.properties");
        TreeSet<String> fields = new TreeSet<>(Arrays.stream(Messages.class.getFields()).map(field -> field.getName()).toList());
        assertEquals(fields, new TreeSet<>(english.stringPropertyNames()));
        assertEquals(fields, new TreeSet<>(german.stringPropertyNames()));
        for (String key : fields) {
            for (String value : new String[] {"{0}", "{1}", "{2}"}) {
                assertEquals(english.getProperty(key).contains(value), german.getProperty(key).contains(value), key);
            }
        }
    }
}
