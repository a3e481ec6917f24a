package saddlebar.architecture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The floors of the house, lowest first: a bundle sees only bundles of floors below its own. docs/house.md tells why. */
final class House {
    static final Path BUNDLES = Path.of("../../bundles");
    static final List<List<String>> FLOORS = List.of(List.of("model"), List.of("nesting"),
            List.of("artwork", "cartoon", "stencil", "kiln", "colour"), List.of("report", "trace", "materials"), List.of("production"),
            List.of("ui", "cli"));

    private House() {
    }

    /** Names of the bundles that stand in the tree, without {@code saddlebar.} and without their test fragments. */
    static List<String> standing() throws IOException {
        try (Stream<Path> folders = Files.list(BUNDLES)) {
            return folders.filter(Files::isDirectory).map(p -> p.getFileName().toString())
                    .filter(name -> name.startsWith("saddlebar.") && !name.endsWith(".tests"))
                    .map(name -> name.substring("saddlebar.".length())).sorted().toList();
        }
    }

    /** Floor of a bundle; the benches {@code ui.*} stand on the floor of {@code ui}. -1 if the bundle has no floor. */
    static int floorOf(String bundle) {
        for (int floor = 0; floor < FLOORS.size(); floor++) {
            if (FLOORS.get(floor).contains(bundle) || bundle.startsWith("ui.") && FLOORS.get(floor).contains("ui")) {
                return floor;
            }
        }
        return -1;
    }
}
