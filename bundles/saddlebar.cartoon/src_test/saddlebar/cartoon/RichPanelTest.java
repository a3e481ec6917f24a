package saddlebar.cartoon;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.PlaceMm;
import saddlebar.model.work.Work;

/** A panel as a studio would draw one: round head, border, sun with rays, hills, water, reeds; its pieces were counted by hand. */
class RichPanelTest {
    private static List<DrawnLine> drawing() {
        List<DrawnLine> lines = new ArrayList<>();
        double[] head = Drawings.arc(200, 200, 200, 200, 180, 360);
        lines.add(Drawings.closed("outline", Drawings.joined(head, new double[] {400, 640, 0, 640})));
        double[] inner = Drawings.arc(200, 200, 175, 175, 180, 360);
        lines.add(Drawings.closed("border", Drawings.joined(inner, new double[] {375, 615, 25, 615})));
        for (double y : new double[] {200, 340, 480}) { // border cut into lengths
            lines.add(Drawings.line("left cut", 0, y, 25, y));
            lines.add(Drawings.line("right cut", 375, y, 400, y));
        }
        for (double deg : new double[] {225, 270, 315}) {
            double cos = Math.cos(Math.toRadians(deg));
            double sin = Math.sin(Math.toRadians(deg));
            lines.add(Drawings.line("head cut", 200 + 175 * cos, 200 + 175 * sin, 200 + 200 * cos, 200 + 200 * sin));
        }
        lines.add(Drawings.line("foot cut", 200, 615, 200, 640));
        lines.add(Drawings.line("corner left", 0, 640, 25, 615));
        lines.add(Drawings.line("corner right", 400, 640, 375, 615));
        lines.add(Drawings.circle("sun", 200, 190, 60));
        for (int i = 0; i < 7; i++) { // rays from the sun to the border and to the hills
            double deg = 180 + 30 * i;
            double cos = Math.cos(Math.toRadians(deg));
            double sin = Math.sin(Math.toRadians(deg));
            double t = i == 0 || i == 6 ? 175 : rim(cos, sin);
            lines.add(Drawings.line("ray", 200 + 60 * cos, 190 + 60 * sin, 200 + t * cos, 190 + t * sin));
        }
        lines.add(Drawings.line("hill", Drawings.wave(25, 375, 330, 22, 350)));
        lines.add(Drawings.line("sun stands on the hill", 200, 250, 200, 330));
        lines.add(Drawings.line("shore", Drawings.wave(25, 375, 420, 9, 175)));
        lines.add(Drawings.line("water", Drawings.wave(25, 375, 500, 7, 116.6666666666667)));
        // both end on the curves themselves, not on their flattened steps
        lines.add(Drawings.line("reed", 90, 615, 96, 560, 112, 500 + 7 * Math.sin(2 * Math.PI * (112 - 25) / 116.6666666666667)));
        var onHill = new Coordinate(140, 330 + 22 * Math.sin(2 * Math.PI * (140 - 25) / 350));
        var onShore = new Coordinate(170, 420 + 9 * Math.sin(2 * Math.PI * (170 - 25) / 175));
        lines.add(Drawings.line("field", Drawings.bent(onHill, onShore, 16, 0.08)));
        return lines;
    }

    /** From the sun's centre (200, 190) to the inner arc of radius 175 about (200, 200). */
    private static double rim(double cos, double sin) {
        double b = -10 * sin;
        return -b + Math.sqrt(b * b - 100 + 175 * 175);
    }

    @Test
    void comesOutWhole() {
        Cartoon cartoon = CartoonMaker.make(drawing(), CartoonSettings.defaults().withOutline("outline"), Work.UNWATCHED);
        Pictures.draw("rich-panel", cartoon);
        Soundness.assertSound(cartoon);
        // border 4 + 3 + 3 + 2; sun 1, sky 6 and 2 beside it, hill 2, shore 1, water 2
        assertEquals(26, cartoon.pieces().size());
        assertEquals(List.of(CutlineProblems.HINGE), Drawings.codes(cartoon)); // the joint above the foot of the border
        assertEquals(new PlaceMm(200, 615), cartoon.problems().get(0).at().orElseThrow());
        CartoonPiece sun = cartoon.pieces().stream().filter(piece -> Math.abs(piece.inradiusMm() - 60) < 0.02).findFirst().orElseThrow();
        assertEquals(8, sun.neighbours().size());
        assertEquals(Math.PI * 59.6 * 59.6, sun.netAreaMm2(), 0.01 * 2 * Math.PI * 60); // the flattening takes up to 0.01 mm
    }
}
