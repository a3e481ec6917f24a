package saddlebar.stencil.wedge;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import saddlebar.model.art.GrayBands;
import saddlebar.model.art.GrayCoding;
import saddlebar.stencil.code.PublicTool;
import saddlebar.stencil.sheet.RectMm;
import saddlebar.stencil.tone.MeasuredWedge;
import saddlebar.stencil.tone.TintDensity;
import saddlebar.stencil.tone.WedgeReading;

/**
 * A wedge drawn, seen in perspective, vignetted, made noisy and compressed by a general picture program (ImageMagick's convert), in linear light until
 * it is coded: nothing of the scene is made by our own code but the numbers that it is told. Left out where the program is not installed.
 */
class WedgePhotographByToolTest {
    private static final WedgeLayout LAYOUT = WedgeLayout.usual();
    private static final double PX_PER_MM = 8;
    private static final int AROUND_PX = 120;

    @TempDir
    Path folder;

    private static double printed(double nominal) {
        return nominal + 0.48 * nominal * (1 - nominal);
    }

    private static String rectangle(RectMm box, double transmittance) {
        return String.format(Locale.ROOT, "fill 'gray(%.4f%%)' rectangle %.1f,%.1f %.1f,%.1f", 100 * transmittance, AROUND_PX + box.xMm() * PX_PER_MM,
                AROUND_PX + box.yMm() * PX_PER_MM, AROUND_PX + box.rightMm() * PX_PER_MM - 1, AROUND_PX + box.bottomMm() * PX_PER_MM - 1);
    }

    private Path photograph(double solid, String perspective, int vignettePercent, double noise) throws IOException, InterruptedException {
        double solidT = TintDensity.transmittance(solid);
        int width = (int) (LAYOUT.widthMm() * PX_PER_MM) + 2 * AROUND_PX;
        int height = (int) (LAYOUT.heightMm() * PX_PER_MM) + 2 * AROUND_PX;
        List<String> draw = new ArrayList<>();
        double frame = LAYOUT.frameMm();
        draw.add(rectangle(new RectMm(0, 0, LAYOUT.widthMm(), LAYOUT.heightMm()), solidT));
        draw.add(rectangle(new RectMm(frame, frame, LAYOUT.widthMm() - 2 * frame, LAYOUT.heightMm() - 2 * frame), 1));
        for (int step = 0; step < LAYOUT.steps().size(); step++) {
            draw.add(rectangle(LAYOUT.patch(step), 1 - printed(LAYOUT.steps().get(step)) * (1 - solidT)));
        }
        Path file = folder.resolve("photograph.jpg");
        // -set colorspace RGB: the numbers drawn are linear light; the last step codes them as sRGB, as a camera does
        PublicTool.run("convert", "-size", width + "x" + height, "xc:white", "-set", "colorspace", "RGB", "-draw", String.join(" ", draw), "-virtual-pixel",
                "white", "-distort", "Perspective", perspective.replace("W", String.valueOf(width)).replace("H", String.valueOf(height)), "(", "-size",
                width + "x" + height, "radial-gradient:white-gray(" + vignettePercent + "%)", "-set", "colorspace", "RGB", ")", "-compose", "Multiply",
                "-composite", "-evaluate", "multiply", "0.92", "-seed", "7", "-attenuate", noise, "+noise", "Gaussian", "-colorspace", "sRGB", "-colorspace",
                "Gray",
                "-depth", "8", "-quality", "92", file);
        return file;
    }

    /** Density of the solid, corners of the perspective, light left in the corners, noise. Limit 2.5 points of coverage, our own. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"0.6|0,0 0,0 W,0 W,0 W,H W,H 0,H 0,H|90|0.02", "0.6|0,0 40,30 W,0 W,10 W,H W,H 0,H 20,H|60|0.05",
            "1.1|0,0 10,60 W,0 W,0 W,H W,H 0,H 60,H|55|0.03", "0.4|0,0 0,0 W,0 W,50 W,H W,H 0,H 0,H|70|0.03"})
    void coveragesComeBack(double solid, String perspective, int vignette, double noise) throws IOException, InterruptedException {
        BufferedImage seen = ImageIO.read(photograph(solid, perspective, vignette, noise).toFile());
        WedgePhotograph.Read read = WedgePhotograph.read(gray(seen), LAYOUT, List.of(), 10);
        for (WedgeReading reading : MeasuredWedge.readings(read.steps(), 1)) {
            assertEquals(printed(reading.nominal()), reading.effective(), 0.025, "step " + reading.nominal());
        }
    }

    private static GrayBands gray(BufferedImage image) {
        return new GrayBands() {
            private int row;

            @Override
            public int widthPx() {
                return image.getWidth();
            }

            @Override
            public int heightPx() {
                return image.getHeight();
            }

            @Override
            public GrayCoding coding() {
                return GrayCoding.SRGB_LUMINANCE;
            }

            @Override
            public int read(byte[] target, int maxRows) {
                int rows = Math.min(maxRows, heightPx() - row);
                for (int y = 0; y < rows; y++, row++) {
                    for (int x = 0; x < widthPx(); x++) {
                        target[y * widthPx() + x] = (byte) image.getRaster().getSample(x, row, 0);
                    }
                }
                return rows;
            }

            @Override
            public void close() {
                // all of it is in memory
            }
        };
    }
}
