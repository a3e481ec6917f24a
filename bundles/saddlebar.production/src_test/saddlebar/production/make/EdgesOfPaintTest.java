package saddlebar.production.make;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import saddlebar.cartoon.PaintedArea;
import saddlebar.model.art.GrayBands;
import saddlebar.model.art.GrayCoding;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.SightLineRule;
import saddlebar.model.units.Units;

/** How paint ends at the edge of a piece: past it, short of the sight line, or running out under it. */
class EdgesOfPaintTest {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    /** Ten px a mm. */
    private static final double DPI = 254;

    private static Polygon rectangle(double x, double y, double width, double height) {
        return (Polygon) GEOMETRY.toGeometry(new Envelope(x, x + width, y, y + height));
    }

    private static boolean[][] bits(Geometry region, RasterPlace place) {
        boolean[][] bits = new boolean[place.heightPx()][place.widthPx()];
        try (MaskBands mask = new MaskBands(List.of(region), place)) {
            long[] band = new long[37 * mask.wordsPerRow()];
            int row = 0;
            for (int rows = mask.read(band, 37); rows > 0; rows = mask.read(band, 37)) {
                for (int y = 0; y < rows; y++, row++) {
                    for (int x = 0; x < place.widthPx(); x++) {
                        bits[row][x] = (band[y * mask.wordsPerRow() + x / 64] >>> 63 - x % 64 & 1) == 1;
                    }
                }
            }
            assertEquals(place.heightPx(), row);
        }
        return bits;
    }

    private static long count(boolean[][] bits) {
        long count = 0;
        for (boolean[] row : bits) {
            for (boolean bit : row) {
                count += bit ? 1 : 0;
            }
        }
        return count;
    }

    @Test
    void bleedRunsPastTheEdgeAndKeepingOffStopsBeforeIt() {
        Polygon glass = rectangle(10, 10, 20, 10);
        RasterPlace page = new RasterPlace(0, 0, 401, 303, DPI);
        assertEquals(220L * 120, count(bits(PaintedArea.of(glass, 1), page)));
        assertEquals(200L * 100, count(bits(glass, page)));
        assertEquals(160L * 60, count(bits(PaintedArea.visible(glass, 2), page)));
    }

    /** The rule of the mask, px by px: in where the px's middle lies in the region. */
    @Property(tries = 40)
    void aPxIsInWhereItsMiddleIs(@ForAll @IntRange(min = 1, max = 150) int width, @ForAll @DoubleRange(min = -3, max = 20) double x1,
            @ForAll @DoubleRange(min = -3, max = 20) double y1, @ForAll @DoubleRange(min = -3, max = 20) double x2) {
        Polygon triangle = GEOMETRY
                .createPolygon(new Coordinate[] {new Coordinate(x1, y1), new Coordinate(x2, 17.313), new Coordinate(3.777, -2.1), new Coordinate(x1, y1)});
        RasterPlace place = new RasterPlace(-7, -5, width, 130, DPI);
        boolean[][] bits = bits(triangle, place);
        Geometry edge = triangle.getBoundary();
        for (int y = 0; y < place.heightPx(); y++) {
            for (int x = 0; x < width; x++) {
                var middle = GEOMETRY
                        .createPoint(new Coordinate(place.originXMm() + (x + 0.5) / place.pxPerMm(), place.originYMm() + (y + 0.5) / place.pxPerMm()));
                if (edge.distance(middle) > 0.01) { // a tenth of a px: the platform's spans follow a slanting edge no closer than 1/50 px
                    assertEquals(triangle.contains(middle), bits[y][x], "px " + x + ", " + y);
                }
            }
        }
    }

    /** An even gray of one coding. */
    private record EvenGray(int widthPx, int heightPx, GrayCoding coding, int code, int[] next) implements GrayBands {
        @Override
        public int read(byte[] target, int maxRows) {
            int rows = Math.min(maxRows, heightPx - next[0]);
            java.util.Arrays.fill(target, 0, rows * widthPx, (byte) code);
            next[0] += rows;
            return rows;
        }

        @Override
        public void close() {
            // nothing was opened
        }
    }

    /** Gray along the middle row of a piece of 10 x 10 mm whose paint runs out over 1.6 mm: 16 steps, each one px wide. */
    private static int[] fadedRow(GrayCoding coding, int code) throws IOException {
        Polygon glass = rectangle(0, 0, 10, 10);
        List<Geometry> fades = new ArrayList<>();
        for (int step = 1; step <= 16; step++) {
            fades.add(PaintedArea.visible(glass, 1.6 * step / 16));
        }
        RasterPlace place = new RasterPlace(-3, 0, 106, 100, DPI);
        int[] row = new int[106];
        try (FadedGray faded = new FadedGray(new EvenGray(106, 100, coding, code, new int[1]), List.of(fades), place)) {
            byte[] band = new byte[106 * 100];
            int before = 0;
            while (before <= 50) {
                int rows = faded.read(band, 100);
                for (int x = 0; x < 106 && before + rows > 50; x++) {
                    row[x] = band[(50 - before) * 106 + x] & 0xff;
                }
                before += rows;
            }
        }
        return row;
    }

    @Test
    void darknessRunsOutInEvenSteps() throws IOException {
        int[] row = fadedRow(GrayCoding.CODE_VALUES, 0);
        for (int x = 0; x < 106; x++) {
            int fromEdge = Math.min(x - 3, 102 - x); // px between this one and the edge; below 0 outside
            int strength = Math.max(0, Math.min(16, fromEdge));
            assertEquals(Math.rint(255 - 255.0 * strength / 16), row[x], "px " + x);
        }
    }

    /** Half the light of white is code 188 in sRGB (IEC 61966-2-1: 1.055 * 0.5^(1/2.4) - 0.055 = 0.7354). */
    @Test
    void halfTheDarknessIsHalfTheLight() throws IOException {
        assertEquals(188, fadedRow(GrayCoding.SRGB_LUMINANCE, 0)[3 + 8]);
        assertEquals(255, fadedRow(GrayCoding.SRGB_LUMINANCE, 255)[3 + 8], "bare stays bare");
    }

    @Test
    void eachRuleMakesItsStencil(@TempDir Path temp) throws IOException {
        WorkBench bench = new WorkBench(temp);
        bench.bring("W01", WorkBench.svg(60, 40, "", "<g id='trace'><rect width='60' height='40'/></g>"));
        double pxMm = Units.MM_PER_INCH / WorkBench.DPI;

        MadeStencil under = made(bench, SightLineRule.PRINT_UNDER, 2, 1.5);
        assertEquals(60 + 2 * 1.5, under.planned().place().widthMm(), 2 * pxMm);
        assertEquals(60.0 * 40 / (63 * 43), under.coverage(), 0.01, "all that is drawn prints; nothing is drawn on the bleed");

        MadeStencil off = made(bench, SightLineRule.KEEP_OFF, 2, 1.5);
        assertEquals(60 - 2 * 2, off.planned().place().widthMm(), 2 * pxMm);
        assertEquals(1, off.coverage(), 0.02);

        MadeStencil fades = made(bench, SightLineRule.FADE, 2, 1.5);
        assertEquals(60, fades.planned().place().widthMm(), 2 * pxMm);
        // lines print where they keep half their strength: from 1 mm off the edge
        assertEquals(58.0 * 38 / (60 * 40), fades.coverage(), 0.02);
    }

    private static MadeStencil made(WorkBench bench, SightLineRule rule, double sightLineMm, double bleedMm) throws IOException {
        bench.change("W01", LayerRole.TRACE, layer -> {
            layer.setSightLine(rule);
            layer.setSightLineMm(sightLineMm);
            layer.setBleedMm(bleedMm);
        });
        List<MadeStencil> stencils = bench.make().stencils();
        assertEquals(1, stencils.size());
        return stencils.get(0);
    }
}
