package saddlebar.ui.easel;

import saddlebar.production.light.Metal;
import saddlebar.production.light.RectMm;
import saddlebar.production.light.ScenePiece;
import saddlebar.production.light.GlassLook;
import saddlebar.production.light.EaselScene;
import saddlebar.production.light.Contour;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import saddlebar.ui.easel.PieceWalk.Way;

class PieceWalkTest {
    /** Nine pieces in three rows, numbered as one reads. */
    private static EaselScene nine() {
        List<ScenePiece> pieces = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            RectMm square = new RectMm(10.0 * (i % 3), 10.0 * (i / 3), 9, 9);
            pieces.add(new ScenePiece("id" + (i + 1), "" + (i + 1), Contour.of(square), square.centreXMm(), square.centreYMm(), 4.5,
                    List.of(GlassLook.UNCHOSEN)));
        }
        RectMm all = new RectMm(0, 0, 30, 30);
        return new EaselScene("W", all, List.of(Contour.of(all)), pieces, List.of(), List.of(), List.of(""), new Metal(0));
    }

    private static String from(String number, Way way) {
        EaselScene scene = nine();
        return new PieceWalk(scene).from(scene.piece("id" + number), way).map(ScenePiece::number).orElse("none");
    }

    @Test
    void keysGoToTheNeighbourThatWay() {
        assertEquals("2", from("5", Way.UP));
        assertEquals("8", from("5", Way.DOWN));
        assertEquals("4", from("5", Way.LEFT));
        assertEquals("6", from("5", Way.RIGHT));
        assertEquals("none", from("3", Way.RIGHT));
    }

    @Test
    void numbersGoRoundInARing() {
        assertEquals("6", from("5", Way.NEXT));
        assertEquals("1", from("9", Way.NEXT));
        assertEquals("9", from("1", Way.PREVIOUS));
    }

    @Test
    void withNoneChosenOneStartsAtTheEnds() {
        PieceWalk walk = new PieceWalk(nine());
        assertEquals("1", walk.from(Optional.empty(), Way.DOWN).orElseThrow().number());
        assertEquals("9", walk.from(Optional.empty(), Way.PREVIOUS).orElseThrow().number());
    }

    @Test
    void nobodyWalksInAnEmptyWindow() {
        EaselScene empty = new EaselScene("W", new RectMm(0, 0, 1, 1), List.of(), List.of(), List.of(), List.of(), List.of(""), new Metal(0));
        assertTrue(new PieceWalk(empty).from(Optional.empty(), Way.NEXT).isEmpty());
    }
}
