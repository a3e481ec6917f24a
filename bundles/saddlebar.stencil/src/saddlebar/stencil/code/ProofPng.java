package saddlebar.stencil.code;

import java.awt.image.BufferedImage;
import java.awt.image.WritableRaster;
import java.io.IOException;
import java.nio.file.Path;

import saddlebar.model.units.Require;
import saddlebar.model.work.Work;
import saddlebar.stencil.BitBands;

/** Small gray or coloured PNG pictures for a person to look at; a proof is never printed from. */
public final class ProofPng {
    private ProofPng() {
    }

    /**
     * Writes bits made small and closes them.
     *
     * @param proofDpi px an inch of the proof, nearly: bits are counted in boxes of whole px
     * @param work     told one unit a row of bits
     */
    public static Path write(BitBands bits, Path target, double proofDpi, BitonalSettings settings, Work work) throws IOException {
        try (bits) {
            int factor = factor(settings.dpi(), proofDpi);
            ReducedGray small = ReducedGray.of(bits, factor, work);
            return write(small.image(), settings.dpi() / factor, target, settings);
        }
    }

    /** Bits a side of a box, so that a proof has about so many px an inch. */
    public static int factor(double dpi, double proofDpi) {
        Require.within("proofDpi", proofDpi, 1, 10_000);
        return Math.max(1, (int) Math.rint(dpi / proofDpi));
    }

    /** Writes a picture of 8-bit gray or of colours without transparency. */
    public static Path write(BufferedImage image, double dpi, Path target, BitonalSettings settings) throws IOException {
        boolean gray = image.getType() == BufferedImage.TYPE_BYTE_GRAY;
        try (OutputFile file = OutputFile.open(target, settings.replace())) {
            PngChunks chunks = new PngChunks(file);
            chunks.header(image.getWidth(), image.getHeight(), 8, gray ? 0 : 2);
            chunks.resolution(dpi);
            chunks.text("Title", settings.title());
            chunks.text("Description", settings.description());
            chunks.text("Software", settings.software());
            try (PngRows rows = new PngRows(chunks)) {
                for (int y = 0; y < image.getHeight(); y++) {
                    byte[] row = gray ? grayRow(image.getRaster(), y) : colourRow(image, y);
                    rows.write(row, row.length);
                }
                rows.finish();
            }
            chunks.end();
            file.commit();
            return target;
        }
    }

    private static byte[] grayRow(WritableRaster raster, int y) {
        byte[] row = new byte[1 + raster.getWidth()];
        byte[] samples = (byte[]) raster.getDataElements(0, y, raster.getWidth(), 1, null);
        System.arraycopy(samples, 0, row, 1, samples.length);
        return row;
    }

    private static byte[] colourRow(BufferedImage image, int y) {
        byte[] row = new byte[1 + 3 * image.getWidth()];
        int[] colours = image.getRGB(0, y, image.getWidth(), 1, null, 0, image.getWidth());
        for (int x = 0; x < colours.length; x++) {
            row[1 + 3 * x] = (byte) (colours[x] >> 16);
            row[2 + 3 * x] = (byte) (colours[x] >> 8);
            row[3 + 3 * x] = (byte) colours[x];
        }
        return row;
    }
}
