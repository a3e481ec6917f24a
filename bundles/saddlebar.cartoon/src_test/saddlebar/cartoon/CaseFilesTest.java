package saddlebar.cartoon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.LineString;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.Problem;

/**
 * Cutlines as data, in folders by purpose: a sentence, the number of pieces, what is told of the lines, the lines. {@code robust/} holds
 * what breaks geometry programs, {@code polygonizer/} what the JTS library publishes for the same task.
 */
class CaseFilesTest {
    private static final Set<String> OF_LINES = Set.of(CutlineProblems.OPEN_END, CutlineProblems.CROSSING_END, CutlineProblems.DIVIDES_NOTHING,
            CutlineProblems.LOST_RING, CutlineProblems.DOUBLED_LINE, CutlineProblems.PANEL_APART, CutlineProblems.NET_UNPROVED);

    static Stream<Path> cases() throws IOException, URISyntaxException {
        List<Path> cases = new ArrayList<>();
        for (String folder : List.of("robust", "polygonizer")) {
            try (Stream<Path> files = Files.list(Path.of(CaseFilesTest.class.getResource(folder).toURI()))) {
                files.forEach(cases::add);
            }
        }
        assertTrue(cases.size() > 20, "cases not found");
        return cases.stream().sorted();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void comesOutAsWritten(Path file) {
        List<String> rows = read(file);
        int pieces = Integer.parseInt(rows.get(1).substring("pieces ".length()));
        List<String> told = Arrays.stream(rows.get(2).substring("lines ".length()).split(" ")).filter(code -> !code.equals("quiet")).toList();
        List<DrawnLine> lines = new ArrayList<>();
        for (int row = 3; row < rows.size(); row++) {
            lines.add(Drawings.ofLine("row " + (row + 1), (LineString) Drawings.read(rows.get(row))));
        }
        Cartoon cartoon = Drawings.make(lines);
        Pictures.draw(file.getFileName().toString().replace(".txt", ""), cartoon);
        assertEquals(pieces, cartoon.pieces().size(), rows.get(0));
        assertEquals(told, cartoon.problems().stream().map(Problem::code).filter(OF_LINES::contains).sorted().toList(),
                rows.get(0) + cartoon.problems());
        Soundness.assertSound(cartoon);
    }

    private static List<String> read(Path file) {
        try {
            return Files.readAllLines(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
