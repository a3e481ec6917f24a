package saddlebar.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** What {@code plugin.xml} names is there: classes, pictures, words, commands, parts. */
class PluginXmlTest {
    private static Element plugin;

    @BeforeAll
    static void read() throws Exception {
        plugin = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(Path.of("plugin.xml").toFile()).getDocumentElement();
    }

    private static Set<String> attributes(String element, String attribute) {
        Set<String> values = new TreeSet<>();
        NodeList found = plugin.getElementsByTagName(element);
        for (int i = 0; i < found.getLength(); i++) {
            String value = ((Element) found.item(i)).getAttribute(attribute);
            if (!value.isEmpty()) {
                values.add(value);
            }
        }
        return values;
    }

    @Test
    void everyClassOfOursIsThere() {
        for (String attribute : new String[] {"class", "factoryClass", "provider", "serviceClass", "type"}) {
            for (String name : attributes("*", attribute)) {
                if (name.startsWith("saddlebar.")) {
                    String resource = name.replaceFirst(":.*", "").replace('.', '/') + ".class";
                    assertTrue(getClass().getClassLoader().getResource(resource) != null, "no class " + name);
                }
            }
        }
    }

    @Test
    void everyPictureIsThere() {
        Set<String> icons = new TreeSet<>(attributes("*", "icon"));
        icons.add("icons/panel.svg");
        icons.add("icons/about.svg");
        for (String icon : icons) {
            assertTrue(Files.isRegularFile(Path.of(icon)), "no picture " + icon);
        }
    }

    @Test
    void everyWordIsThereAndNoneIsLeftOver() throws IOException {
        Set<String> used = new HashSet<>(Set.of("bundle.name"));
        for (String attribute : new String[] {"name", "label", "description", "mnemonic", "value"}) {
            attributes("*", attribute).stream().filter(text -> text.startsWith("%")).map(text -> text.substring(1)).forEach(used::add);
        }
        Properties words = new Properties();
        try (InputStream in = Files.newInputStream(Path.of("plugin.properties"))) {
            words.load(in);
        }
        assertEquals(new TreeSet<>(used), new TreeSet<>(words.stringPropertyNames()));
    }

    @Test
    void everyCommandOfOursHasAHandlerAndEveryKeyAndMenuACommand() {
        Set<String> commands = new TreeSet<>();
        NodeList found = plugin.getElementsByTagName("command");
        for (int i = 0; i < found.getLength(); i++) {
            Element command = (Element) found.item(i);
            if (!command.getAttribute("id").isEmpty() && !command.getAttribute("categoryId").isEmpty()) {
                commands.add(command.getAttribute("id"));
            }
        }
        assertEquals(commands, attributes("handler", "commandId"));
        Set<String> asked = new TreeSet<>(attributes("key", "commandId"));
        asked.addAll(attributes("command", "commandId"));
        asked.removeIf(id -> !id.startsWith("saddlebar."));
        asked.removeAll(commands);
        assertEquals(Set.of(), asked);
    }

    /** Ids in the code and in plugin.xml are the same; the platform's own are taken on trust, the screen test opens them. */
    @Test
    void everyIdOfTheCodeIsInPluginXml() throws IllegalAccessException {
        Set<String> ids = new HashSet<>();
        for (String attribute : new String[] {"id", "contributorId", "locationURI"}) {
            attributes("*", attribute).forEach(id -> ids.add(id.replaceFirst("^popup:", "")));
        }
        for (Field field : Ids.class.getFields()) {
            String id = (String) field.get(null);
            if (id.startsWith("saddlebar.") && !field.getName().equals("PLUGIN")) {
                assertTrue(ids.contains(id), field.getName() + " = " + id + " is not in plugin.xml");
            }
        }
    }
}
