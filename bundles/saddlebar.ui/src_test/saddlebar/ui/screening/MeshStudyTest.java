package saddlebar.ui.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.junit.jupiter.api.Test;

import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.mesh.ScoredRuling;

class MeshStudyTest {
    private static MeshStudy study(double lpi, double angleDeg) {
        return MeshStudy.of(MeshStudy.Ask.of(160, 64, 0, ScreeningRecipe.withDefaults().withLpi(lpi).withAngleDeg(angleDeg)), Optional.empty());
    }

    @Test
    void aBadPairHasABetterOneNearAndThatOneHasNone() {
        MeshStudy worst = study(40, 0);
        ScoredRuling better = worst.nearBetter().orElseThrow(() -> new AssertionError("40 lpi along a mesh of 160 divides it, yet nothing better was found"));
        assertTrue(better.score() < worst.now().orElseThrow().score() / 2);
        assertEquals(40, better.lpi(), 40 * 0.15);
        assertEquals(Optional.empty(), study(better.lpi(), better.angleDeg()).nearBetter());
    }

    @Test
    void theMapIsKeptWhileMeshAndDeviceAreTheSame() {
        MeshStudy first = study(40, 0);
        MeshStudy second = MeshStudy.of(MeshStudy.Ask.of(160, 64, 0, ScreeningRecipe.withDefaults().withLpi(50)), Optional.of(first));
        assertSame(first.map(), second.map());
        MeshStudy third = MeshStudy.of(MeshStudy.Ask.of(120, 64, 0, ScreeningRecipe.withDefaults()), Optional.of(first));
        assertTrue(third.map() != first.map());
    }

    @Test
    void scatteredDotsHaveNoRuling() {
        MeshStudy scattered = MeshStudy.of(MeshStudy.Ask.of(160, 64, 0, ScreeningRecipe.withDefaults().withMethod("diffusion")), Optional.empty());
        assertEquals(Optional.empty(), scattered.now());
        assertEquals(Optional.empty(), scattered.nearBetter());
        assertTrue(MeshWords.beat(scattered, 1).contains("no ruling"));
    }

    @Test
    void theMapIsAFullGridAndAPlaceFindsItsPair() {
        MeshStudy study = study(40, 22.5);
        PairMap map = new PairMap(study.map(), 321, 207);
        assertEquals(19, map.columns());
        assertEquals(study.map().size(), map.columns() * map.rows());
        for (int row = 0; row < map.rows(); row++) {
            for (int column = 0; column < map.columns(); column++) {
                assertEquals(Optional.of(map.at(column, row)), map.under(map.x(column), map.y(row)));
                assertEquals(Optional.of(map.at(column, row)), map.under(map.x(column + 1) - 1, map.y(row + 1) - 1));
            }
        }
        assertEquals(Optional.empty(), map.under(321, 0));
        assertEquals(0xF3F0E6, map.rgb(map.least()));
        assertEquals(0x2B1100, map.rgb(map.most()));
        int[] cell = map.nearest(40, 67.5);
        assertEquals(22.5, map.at(cell[0], cell[1]).angleDeg());
        assertEquals(40, map.at(cell[0], cell[1]).lpi());
    }
}
