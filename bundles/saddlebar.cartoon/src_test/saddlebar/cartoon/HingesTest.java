package saddlebar.cartoon;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.PlaceMm;

class HingesTest {
    private static final DrawnLine FRAME = Drawings.rectangle("frame", 0, 0, 400, 300);

    private static List<PlaceMm> hinges(DrawnLine... joints) {
        List<DrawnLine> lines = new ArrayList<>(List.of(joints));
        lines.add(FRAME);
        return Drawings.problems(Drawings.make(lines), CutlineProblems.HINGE).stream().map(problem -> problem.at().orElseThrow()).toList();
    }

    @Test
    void straightAcross() {
        assertEquals(List.of(new PlaceMm(200, 120)), hinges(Drawings.line("j", 0, 120, 400, 120)));
        assertEquals(List.of(new PlaceMm(200, 150)), hinges(Drawings.line("diagonal", 0, 0, 400, 300)));
    }

    /** A bow's height on the whole width: below the deviation it folds, above it does not (the panel is 400 wide, 80 % are 320). */
    @ParameterizedTest
    @CsvSource({"1, 1", "2.8, 1", "8, 0", "30, 0"})
    void bow(double height, int hinges) {
        double[] xy = new double[82];
        for (int i = 0; i <= 40; i++) {
            double t = i / 40.0;
            xy[2 * i] = 400 * t;
            xy[2 * i + 1] = 150 - 4 * height * t * (1 - t);
        }
        assertEquals(hinges, hinges(Drawings.line("bow", xy)).size());
    }

    @Test
    void shareOfThePanel() {
        assertEquals(0, hinges(Drawings.line("most", 0, 150, 300, 150), Drawings.line("down", 300, 0, 300, 220),
                Drawings.line("on", 300, 220, 400, 250)).stream().filter(place -> place.yMm() == 150).count());
        assertEquals(1, hinges(Drawings.line("more", 0, 150, 330, 150), Drawings.line("down", 330, 0, 340, 300)).stream()
                .filter(place -> place.yMm() == 150).count());
    }

    /** Drawn in strokes, with joints crossing it, and stepping aside by 2 mm at a crossing: still one line that folds. */
    @Test
    void throughCrossingsAndSmallSteps() {
        List<PlaceMm> places = hinges(Drawings.line("a", 0, 150, 130, 150), Drawings.line("b", 130, 150, 260, 150),
                Drawings.line("c", 260, 152, 400, 152),
                Drawings.line("x", 130, 0, 120, 90, 130, 150, 150, 210, 130, 300),
                Drawings.line("y", 260, 0, 300, 80, 260, 150, 260, 152, 300, 220, 260, 300));
        assertEquals(1, places.size());
        assertEquals(151, places.get(0).yMm(), 1);
    }

    @Test
    void brokenLineDoesNotFold() {
        assertEquals(List.of(), hinges(Drawings.line("zigzag", 0, 150, 100, 130, 200, 170, 300, 130, 400, 150)));
        assertEquals(List.of(), hinges(Drawings.line("wave", Drawings.wave(0, 400, 150, 12, 100))));
    }
}
