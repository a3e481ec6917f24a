package saddlebar.kiln.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import saddlebar.kiln.Studio;
import saddlebar.kiln.fire.Firing;
import saddlebar.kiln.fire.Kiln;
import saddlebar.kiln.fire.Load;
import saddlebar.kiln.fire.Simulation;
import saddlebar.kiln.glass.Glass;
import saddlebar.kiln.schedule.Schedule;
import saddlebar.model.problem.LockedException;

class FiringChartTest {
    @TempDir
    Path temp;

    private static Firing firing(String name) {
        return Simulation.run(new Schedule(name, Studio.trace650().segments()), Load.of(Glass.floatGlass(), 3), Kiln.small());
    }

    @Test
    void isWellFormedWithLabelsAndUnits() throws Exception {
        Firing firing = firing("a <b> & \"c\"");
        String svg = FiringChart.svg(firing, Optional.of(firing.kilnCurve()));
        var document = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        assertEquals("svg", document.getDocumentElement().getTagName());
        assertTrue(document.getDocumentElement().getTextContent().contains("a <b> & \"c\""));
        for (String word : List.of("time in h", "\u00b0C", ">K<", "MPa", "schedule as written", "kiln, measured", "core of the glass", "tension")) {
            assertTrue(svg.contains(word), word);
        }
        assertEquals(7, document.getElementsByTagName("path").getLength(), "4 temperatures, lag, 2 stresses");
        assertFalse(svg.contains("NaN") || svg.contains("Infinity"));
        assertEquals(svg, FiringChart.svg(firing, Optional.of(firing.kilnCurve())));
        assertFalse(FiringChart.svg(firing, Optional.empty()).contains("kiln, measured"));
    }

    @Test
    void everyPointLiesOnThePage() throws IOException {
        String svg = FiringChart.svg(firing("s"), Optional.empty());
        java.util.regex.Matcher points = java.util.regex.Pattern.compile("[ML](-?[0-9.]+) (-?[0-9.]+)").matcher(svg);
        int n = 0;
        while (points.find()) {
            double x = Double.parseDouble(points.group(1));
            double y = Double.parseDouble(points.group(2));
            assertTrue(x >= 89 && x <= 911 && y >= 74 && y <= 766, points.group());
            n++;
        }
        assertTrue(n > 1000);
    }

    @Test
    void neverOverAFileUnasked() throws IOException {
        Path out = Files.writeString(temp.resolve("c.svg"), "mine");
        assertThrows(LockedException.class, () -> FiringChart.write(firing("s"), Optional.empty(), out, false));
        assertEquals("mine", Files.readString(out));
        FiringChart.write(firing("s"), Optional.empty(), out, true);
        assertTrue(Files.readString(out).startsWith("<svg"));
    }

    @Test
    void stepsOfAnAxisAreRound() {
        assertEquals(1, Panel.step(0.9));
        assertEquals(2, Panel.step(1.1));
        assertEquals(5, Panel.step(2.4));
        assertEquals(10, Panel.step(6));
        assertEquals(0.05, Panel.step(0.03), 1e-12);
    }
}
