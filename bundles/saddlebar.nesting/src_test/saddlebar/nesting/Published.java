package saddlebar.nesting;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import saddlebar.nesting.read.StripFile;

/** Problems of the literature, see data/README.md. */
final class Published {
    /** A strip of Hopper & Turton (2001); its width is our height along y, its height our length along x. */
    record Strip(String name, double heightMm, double optimalMm, List<NestItem> items) {
    }

    /**
     * An irregular strip with the best use known, in percent.
     *
     * @param record records of 2025 kept beside the data, see docs/algorithms/nesting.md
     */
    record Irregular(String name, double record) {
        StripFile strip() {
            try (BufferedReader in = open(name + ".json")) {
                return StripFile.read(in, name + ".json");
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    static final List<Irregular> IRREGULAR = List.of(new Irregular("albano", 89.821), new Irregular("blaz1", 86.224),
            new Irregular("fu", 92.396), new Irregular("jakobs2", 87.717), new Irregular("mao", 86.867), new Irregular("marques", 92.015),
            new Irregular("shapes0", 69.978), new Irregular("shapes1", 76.719), new Irregular("shirts", 90.920),
            new Irregular("swim", 79.826), new Irregular("trousers", 92.615));

    private Published() {
    }

    static List<Strip> hopperTurton() {
        Map<String, Strip> strips = new LinkedHashMap<>();
        try (BufferedReader in = open("hopper-turton-2001.csv")) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                if (!line.startsWith("#") && !line.startsWith("problem")) {
                    String[] cell = line.split(",");
                    Strip strip = strips.computeIfAbsent(cell[0], name -> new Strip(name, Double.parseDouble(cell[1]),
                            Double.parseDouble(cell[2]), new ArrayList<>()));
                    strip.items.add(NestItem.rectangle(cell[3], Double.parseDouble(cell[4]), Double.parseDouble(cell[5]), 1,
                            Turns.QUARTER));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return List.copyOf(strips.values());
    }

    private static BufferedReader open(String name) {
        return new BufferedReader(new InputStreamReader(Published.class.getResourceAsStream("data/" + name), StandardCharsets.UTF_8));
    }
}
