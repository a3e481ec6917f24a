package saddlebar.ui.glazing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The parts speak both languages, and what {@code plugin.xml} names is there. */
class GlazingWordsTest {
    private static final Pattern GAP = Pattern.compile("\\{\\d}");
    private static final Path WORDS = Path.of("src/saddlebar/ui/glazing");

    private static Properties read(Path file) throws IOException {
        Properties words = new Properties();
        try (Reader in = Files.newBufferedReader(file)) {
            words.load(in);
        }
        return words;
    }

    private static Set<String> gaps(String text) {
        return GAP.matcher(text).results().map(found -> found.group()).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void bothLanguagesSayTheSameThings() throws IOException {
        for (Path[] pair : new Path[][] {{WORDS.resolve("messages.properties"), WORDS.resolve("messages_de.properties")},
                {Path.of("plugin.properties"), Path.of(
                        "plugin_de.properties")}}) {
            Properties english = read(pair[0]);
            Properties german = read(pair[1]);
            assertEquals(english.stringPropertyNames(), german.stringPropertyNames());
            for (String key : english.stringPropertyNames()) {
                assertEquals(gaps(english.getProperty(key)), gaps(german.getProperty(key)), key);
                assertFalse(english.getProperty(key).isBlank() || german.getProperty(key).isBlank(), key);
                assertTrue(gaps(english.getProperty(key)).isEmpty() || !(english.getProperty(key) + german.getProperty(key)).contains("'"), key);
            }
        }
        Set<String> keys = Arrays.stream(Messages.class.getFields()).filter(field -> Modifier.isStatic(field.getModifiers())).map(Field::getName)
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(keys, new TreeSet<>(read(WORDS.resolve("messages.properties")).stringPropertyNames()));
    }

    @Test
    void whatThePluginNamesIsThere() throws Exception {
        Element plugin = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(Path.of("plugin.xml").toFile()).getDocumentElement();
        Properties words = read(Path.of("plugin.properties"));
        Set<String> ids = new TreeSet<>();
        Set<String> used = new TreeSet<>(Set.of("bundle.name"));
        NodeList all = plugin.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            ids.add(element.getAttribute("id"));
            for (String attribute : new String[] {"class", "factoryClass", "serviceClass"}) {
                String name = element.getAttribute(attribute);
                assertTrue(name.isEmpty() || getClass().getClassLoader().getResource(name.replace('.', '/') + ".class") != null, name);
            }
            String icon = element.getAttribute("icon");
            assertTrue(icon.isEmpty() || Files.isRegularFile(Path.of(icon)), icon);
            for (String attribute : new String[] {"name", "label"}) {
                if (element.getAttribute(attribute).startsWith("%")) {
                    used.add(element.getAttribute(attribute).substring(1));
                }
            }
        }
        assertEquals(used, new TreeSet<>(words.stringPropertyNames()));
        for (Field field : GlazingIds.class.getFields()) {
            assertTrue(field.getName().equals("PLUGIN") || ids.contains(field.get(null)), field.getName());
        }
    }
}
