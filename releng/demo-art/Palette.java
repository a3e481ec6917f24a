import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** The glasses of the demonstration windows: name to flat sRGB colour, from {@code palette.csv}. */
record Palette(Map<String, String> colours) {
    static Palette read(Path file) throws IOException {
        Map<String, String> colours = new LinkedHashMap<>();
        for (String line : Files.readAllLines(file, StandardCharsets.UTF_8).stream().skip(1).toList()) {
            String[] cells = line.split(",");
            colours.put(cells[0].trim(), cells[1].trim());
        }
        return new Palette(colours);
    }

    String colour(String name) {
        String colour = colours.get(name);
        if (colour == null) {
            throw new IllegalArgumentException("the palette has no glass called " + name);
        }
        return colour;
    }
}
