package saddlebar.stencil.wedge;

import java.io.IOException;

import saddlebar.model.art.GrayBands;
import saddlebar.model.problem.Refusal;
import saddlebar.stencil.tone.Light;

/** A photograph as light, 0 to 1, in memory. */
record LightPicture(int widthPx, int heightPx, float[] light) {
    private static final long MOST_PX = 64_000_000;

    static LightPicture of(GrayBands bands) throws IOException {
        try (bands) {
            int width = bands.widthPx();
            int height = bands.heightPx();
            if ((long) width * height > MOST_PX || width < 50 || height < 50) {
                throw new Refusal("photograph", width + " x " + height + " px are " + (width < 50 || height < 50 ? "too few" : "too many"),
                        "take 1000 to 6000 px along its long side");
            }
            float[] ofCode = new float[256];
            for (int code = 0; code < 256; code++) {
                ofCode[code] = (float) Light.of(code, bands.coding());
            }
            float[] light = new float[width * height];
            byte[] band = new byte[width * 16];
            int at = 0;
            for (int rows = bands.read(band, 16); rows > 0; rows = bands.read(band, 16)) {
                for (int i = 0; i < rows * width; i++) {
                    light[at++] = ofCode[band[i] & 255];
                }
            }
            return new LightPicture(width, height, light);
        }
    }

    /** Between px middles in proportion; outside, the nearest. */
    double at(double x, double y) {
        double cx = Math.max(0, Math.min(widthPx - 1.001, x - 0.5));
        double cy = Math.max(0, Math.min(heightPx - 1.001, y - 0.5));
        int column = (int) cx;
        int row = (int) cy;
        double u = cx - column;
        double v = cy - row;
        int i = row * widthPx + column;
        return (1 - v) * ((1 - u) * light[i] + u * light[i + 1]) + v * ((1 - u) * light[i + widthPx] + u * light[i + widthPx + 1]);
    }
}
