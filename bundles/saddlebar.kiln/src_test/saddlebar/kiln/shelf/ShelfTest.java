package saddlebar.kiln.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import saddlebar.kiln.shelf.ShelfLoad.Lay;
import saddlebar.kiln.shelf.ShelfPlaces.Witness;
import saddlebar.model.problem.Problem;

class ShelfTest {
    @Test
    void whatLiesWhere() {
        ShelfLoad good = new ShelfLoad(420, 420, List.of(new Lay("1", 30, 30, 100, 80, 3), new Lay("2", 140, 30, 200, 80, 3)));
        assertEquals(List.of(), good.check());
        assertEquals((8000 + 16000) / (420.0 * 420), good.use(), 1e-12);
        assertEquals(200, good.largestMm());
        List<String> codes = new ShelfLoad(420, 420,
                List.of(new Lay("1", 30, 30, 100, 80, 3), new Lay("2", 100, 60, 100, 80, 3), new Lay("3", 350, 300, 100, 50, 10),
                        new Lay("4", 5, 300, 50, 50, 3), new Lay("5", 57, 300, 50, 50, 3)))
                .check().stream().map(Problem::code).toList();
        assertEquals(List.of("lie-over", "off-shelf", "near-rim", "uneven-load", "lie-near"), codes);
    }

    /** Additive data with holes: firing + place is found again exactly, though the firings differ by more than the places. */
    @Property(tries = 50)
    void placesAreFoundInUnbalancedRecords(@ForAll @DoubleRange(min = -15, max = 15) double back,
            @ForAll @DoubleRange(min = -15, max = 15) double door,
            @ForAll @DoubleRange(min = -40, max = 40) double hotFiring) {
        Map<String, Double> off = Map.of("back", back, "door", door, "middle", -back - door);
        List<Witness> witnesses = new ArrayList<>();
        double[] firings = {640, 640 + hotFiring, 655, 600};
        for (int i = 0; i < firings.length; i++) {
            for (String place : List.of("back", "door", "middle")) {
                if (!(i == 1 && place.equals("door")) && !(i == 3 && place.equals("back"))) {
                    witnesses.add(new Witness("F" + i, place, firings[i] + off.get(place)));
                }
            }
        }
        for (ShelfPlaces.Place place : ShelfPlaces.of(witnesses).places()) {
            assertEquals(off.get(place.name()), place.offK(), 1e-6, place.name());
        }
    }

    @Test
    void coldAndHotPlacesAreToldWhenTheyAreClear() {
        List<Witness> witnesses = new ArrayList<>();
        double[] noise = {0.8, -0.6, 0.3, -0.9, 0.4};
        for (int i = 0; i < 5; i++) {
            witnesses.add(new Witness("F" + i, "back left", 650 + 5 * i + 8 + noise[i]));
            witnesses.add(new Witness("F" + i, "middle", 650 + 5 * i + noise[(i + 1) % 5]));
            witnesses.add(new Witness("F" + i, "door", 650 + 5 * i - 8 + noise[(i + 2) % 5]));
        }
        List<Problem> cautions = ShelfPlaces.of(witnesses).cautions();
        assertEquals(List.of("hot-place", "cold-place"), cautions.stream().map(Problem::code).toList());
        assertEquals("back left", cautions.get(0).where());
        assertTrue(ShelfPlaces.of(witnesses).residualSd() < 1.5);
        assertTrue(ShelfPlaces.of(witnesses.subList(0, 3)).cautions().isEmpty(), "one firing proves nothing");
        assertTrue(ShelfPlaces.of(List.of()).places().isEmpty());
    }

    /** Whatever is laid in rows lies on the shelf, free of rim and neighbours, and nothing is lost. */
    @Property
    void rowsKeepRimAndDistance(@ForAll @Size(min = 1, max = 40) List<@DoubleRange(min = 10, max = 260) Double> sides) {
        List<ShelfRows.Box> boxes = new java.util.ArrayList<>();
        for (int i = 0; i < sides.size(); i++) {
            boxes.add(new ShelfRows.Box("p" + i, sides.get(i), sides.get((i * 7 + 3) % sides.size()), 3));
        }
        ShelfRows rows = ShelfRows.of(boxes, 420, 420);
        assertTrue(rows.load().check().isEmpty(), rows.load().check().toString());
        assertEquals(boxes.size(), rows.load().lays().size() + rows.left().size());
        assertTrue(rows.load().lays().size() >= 1, "the first always has room");
    }
}
