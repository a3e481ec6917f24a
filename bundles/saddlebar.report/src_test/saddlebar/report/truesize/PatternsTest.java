package saddlebar.report.truesize;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import saddlebar.model.art.OutlineMm;
import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;
import saddlebar.nesting.Effort;

class PatternsTest {
    private static PatternPiece box(String label, double x, double y, double w, double h, String glass) {
        return new PatternPiece(label, OutlineMm.rectangle(x, y, w, h), x + w / 2, y + h / 2, Math.min(w, h) / 2, glass);
    }

    @Test
    void theCutlineIsAsLargeAsThePieces() {
        TrueSizeDrawing drawing = CutlineDrawing.of("W01", List.of(box("1", 100, 50, 60, 40, "sea green"), box("2", 160, 50, 60, 40, "")));
        assertEquals(128, drawing.widthMm(), 1e-9);
        assertEquals(48, drawing.heightMm(), 1e-9);
        assertTrue(drawing.ink().stream().anyMatch(ink -> ink instanceof Ink.Words words && words.text().equals("sea green")));
        assertThrows(Refusal.class, () -> CutlineDrawing.of("W01", List.of()));
    }

    @Test
    void eachPatternIsThereOnceAtItsSize() {
        List<PatternPiece> pieces = new ArrayList<>();
        for (int i = 1; i <= 30; i++) {
            pieces.add(box(String.valueOf(i), 10 * i, 5 * i, 40 + i, 25 + i, i % 3 == 0 ? "amber" : "pale blue"));
        }
        List<LaidDrawing> pages = PatternSheets.of("W01", pieces, PrintPaper.of("a4"), Effort.rounds(5), Work.UNWATCHED);
        List<Double> areas = new ArrayList<>();
        for (LaidDrawing page : pages) {
            for (Ink ink : page.drawing().ink()) {
                if (ink instanceof Ink.Line line && line.closed()) {
                    double[] xy = line.paths().get(0);
                    double area = 0;
                    for (int i = 0; i < xy.length; i += 2) {
                        int j = (i + 2) % xy.length;
                        area += xy[i] * xy[j + 1] - xy[j] * xy[i + 1];
                        assertTrue(xy[i] >= -1e-6 && xy[i] <= page.drawing().widthMm() + 1e-6 && xy[i + 1] >= -1e-6
                                && xy[i + 1] <= page.drawing().heightMm() + 1e-6);
                    }
                    areas.add(Math.abs(area) / 2);
                }
            }
        }
        areas.sort(null);
        List<Double> wanted = new ArrayList<>();
        for (int i = 1; i <= 30; i++) {
            wanted.add((40.0 + i) * (25 + i));
        }
        assertEquals(30, areas.size());
        for (int i = 0; i < 30; i++) {
            assertEquals(wanted.get(i), areas.get(i), 1e-6);
        }
        assertTrue(pages.stream().anyMatch(page -> page.drawing().title().contains("amber")));
    }

    @Test
    void aPatternLargerThanThePaperHasPagesOfItsOwn() {
        List<LaidDrawing> pages = PatternSheets.of("W01", List.of(box("1", 0, 0, 50, 30, ""), box("2", 0, 0, 500, 300, "")), PrintPaper.of("a4"),
                Effort.rounds(1), Work.UNWATCHED);
        assertEquals(2, pages.size());
        assertTrue(pages.get(1).tiling().tiles().size() > 1);
        assertTrue(pages.get(1).drawing().title().endsWith("pattern 2"));
    }
}
