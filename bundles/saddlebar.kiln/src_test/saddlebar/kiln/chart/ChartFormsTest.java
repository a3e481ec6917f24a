package saddlebar.kiln.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import saddlebar.kiln.Studio;
import saddlebar.kiln.fire.Firing;
import saddlebar.kiln.fire.Kiln;
import saddlebar.kiln.fire.Load;
import saddlebar.kiln.fire.Simulation;
import saddlebar.kiln.glass.Glass;

/** The same chart as a picture, at any size, and in numbers. */
class ChartFormsTest {
    private static final Firing FIRING = Simulation.run(Studio.trace650(), Load.of(Glass.floatGlass(), 3), Kiln.small());

    @Test
    void thePictureHasTheColoursOfTheCurves() throws IOException {
        ChartDrawing drawing = FiringChart.drawing(FIRING, Optional.of(FIRING.kilnCurve()));
        byte[] bytes = ChartPng.bytes(drawing, 1);
        BufferedImage picture = ImageIO.read(new ByteArrayInputStream(bytes));
        assertEquals(940, picture.getWidth());
        assertEquals(830, picture.getHeight());
        for (Ink ink : List.of(Ink.CORE, Ink.MEASURED, Ink.SURFACE, Ink.CENTRE)) {
            int found = 0;
            for (int y = 0; y < picture.getHeight(); y++) {
                for (int x = 0; x < picture.getWidth(); x++) {
                    found += (picture.getRGB(x, y) & 0xffffff) == ink.rgb() ? 1 : 0;
                }
            }
            assertTrue(found > 50, ink + " is drawn with " + found + " px");
        }
        assertArrayEquals(bytes, ChartPng.bytes(drawing, 1));
    }

    /** However small or wide, no mark leaves the drawing sideways, and every legend's words are there. */
    @ParameterizedTest
    @ValueSource(doubles = {260, 500, 1600})
    void fitsItsSize(double width) {
        ChartWords german = new ChartWords("Temperatur", "Unterschied", "Spannung", "Zeit in h", "K\u00fchlpunkt", "Programm", "Ofen", "Kern", "gemessen",
                "Oberseite", "Mitte");
        ChartDrawing drawing = FiringChart.drawing(FIRING, Optional.of(FIRING.kilnCurve()), german, width, 420);
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Mark.Curve curve) {
                for (int i = 0; i < curve.xy().length; i += 2) {
                    assertTrue(curve.xy()[i] >= 0 && curve.xy()[i] <= width, "x " + curve.xy()[i]);
                }
            }
        }
        for (String word : List.of("Temperatur", "gemessen", "Oberseite", "K\u00fchlpunkt")) {
            assertTrue(drawing.marks().stream().anyMatch(mark -> mark instanceof Mark.Words words && words.text().equals(word)), word);
        }
        assertEquals(3, drawing.plots().size());
        ChartDrawing.Plot plot = drawing.plots().get(0);
        assertEquals(5, plot.hoursAt(plot.x(5)), 1e-9);
        assertFalse(plot.holds(plot.left() - 1, plot.top() + 1));
    }

    @Test
    void theTableSaysWhatTheChartShows() {
        List<FiringTable.Row> rows = FiringTable.rows(FIRING, Optional.of(FIRING.kilnCurve()), 15);
        assertEquals((int) Math.ceil(FIRING.hours() * 4 - 1e-9) + 1, rows.size());
        assertEquals(FIRING.hours(), rows.get(rows.size() - 1).hours(), 1e-9);
        FiringTable.Row hour = rows.get(4);
        assertEquals(1, hour.hours(), 1e-9);
        assertEquals(170, hour.scheduledC(), 1e-9, "20 + 150 K/h");
        assertEquals(FIRING.kilnCurve().at(3600), hour.kilnC(), 1e-9);
        assertEquals(Optional.of(hour.kilnC()), hour.measuredC());
        String csv = FiringTable.csv(rows);
        assertEquals(rows.size() + 1, csv.lines().count());
        assertTrue(csv.startsWith("hours,scheduled_c,kiln_c,core_c,measured_c,lag_k,face_mpa,core_mpa\n0.000,20.0,20.0,20.0,20.0,"), csv.substring(0, 120));
    }
}
