package saddlebar.stencil.sheet;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

import saddlebar.model.units.Units;
import saddlebar.model.work.Work;
import saddlebar.stencil.BitBands;
import saddlebar.stencil.code.BitonalSettings;
import saddlebar.stencil.code.BitonalTiff;
import saddlebar.stencil.code.CodedBits;
import saddlebar.stencil.code.SheetPdf;
import saddlebar.stencil.code.WrittenBits;
import saddlebar.stencil.process.Face;
import saddlebar.stencil.process.FusedSheetProcess;

/**
 * A tabloid sheet at 1200 px an inch, full of screened stencils that are drawn while they are read, composed once and written as TIFF, PDF and proof.
 * Run by hand with a folder and a small heap, such as {@code -Xmx256m}: it leaves times and the peak of the heap in {@code memory.txt}.
 */
final class SheetMemory {
    private static final double DPI = 1200;

    private SheetMemory() {
    }

    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        FusedSheetProcess process = new FusedSheetProcess();
        RectMm room = SheetFrame.of(Paper.TABLOID, SheetPlan.COMMON_MARGIN_MM).usableMm();
        int widthPx = Units.pxOfMm(82, DPI);
        int heightPx = Units.pxOfMm(120, DPI);
        List<PlacedStencil> stencils = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            stencils.add(new PlacedStencil("W1-" + i, String.valueOf(i + 1), room.xMm() + i % 3 * 90, room.yMm() + i / 3 * 126, i == 4 ? 2 : 0, widthPx,
                    heightPx, Face.INTERIOR, false, () -> process.toner(new Dots(widthPx, heightPx), false)));
        }
        SheetPlan plan = Sheets.plan(process, Paper.TABLOID, DPI, stencils);
        BitonalSettings settings = BitonalSettings.at(DPI).replacing(true);
        StringBuilder said = new StringBuilder();
        for (int run = 0; run < 3; run++) {
            long start = System.nanoTime();
            try (BitBands sheet = ComposedSheet.of(plan); CodedBits coded = CodedBits.of(sheet, folder.resolve("sheet"), settings, Work.UNWATCHED)) {
                double composedS = (System.nanoTime() - start) / 1e9;
                WrittenBits tiff = BitonalTiff.write(coded, folder.resolve("sheet.tif"), settings, Work.UNWATCHED);
                double tiffS = (System.nanoTime() - start) / 1e9 - composedS;
                WrittenBits pdf = SheetPdf.write(coded, folder.resolve("sheet.pdf"), settings, Work.UNWATCHED);
                double pdfS = (System.nanoTime() - start) / 1e9 - composedS - tiffS;
                said.append(String.format(Locale.ROOT, "%d x %d px: drawn, composed and coded in %.2f s; TIFF of %d bytes written and read back in %.2f s,"
                        + " PDF of %d bytes in %.2f s; bits %s%n", tiff.widthPx(), tiff.heightPx(), composedS, tiff.bytes(), tiffS, pdf.bytes(), pdfS,
                        tiff.sha256OfBits()));
            }
        }
        try (BitBands sheet = BitonalTiff.read(folder.resolve("sheet.tif"))) {
            SheetProof.write(sheet, plan, folder.resolve("proof.png"), 150, settings, Work.UNWATCHED);
        }
        TapePage.writePdf(plan, folder.resolve("tape.pdf"), settings);
        long peak = ManagementFactory.getMemoryPoolMXBeans().stream().filter(pool -> pool.getType() == MemoryType.HEAP)
                .mapToLong(pool -> pool.getPeakUsage().getUsed()).sum();
        said.append(String.format(Locale.ROOT, "peaks of the parts of the heap add up to %d MB, garbage included; most it may take: %d MB%n", peak >> 20,
                Runtime.getRuntime().maxMemory() >> 20));
        Files.writeString(folder.resolve("memory.txt"), said);
    }

    /** A screen of 40 lines an inch at 22.5 degrees whose dots grow downwards. */
    private static final class Dots implements BitBands {
        private final int widthPx;
        private final int heightPx;
        private int row;

        Dots(int widthPx, int heightPx) {
            this.widthPx = widthPx;
            this.heightPx = heightPx;
        }

        @Override
        public int widthPx() {
            return widthPx;
        }

        @Override
        public int heightPx() {
            return heightPx;
        }

        @Override
        public int read(long[] target, int maxRows) {
            int rows = Math.min(maxRows, heightPx - row);
            double cos = Math.cos(Math.toRadians(22.5)) / 30;
            double sin = Math.sin(Math.toRadians(22.5)) / 30;
            Arrays.fill(target, 0, rows * wordsPerRow(), 0);
            for (int y = 0; y < rows; y++) {
                double radius = 0.7 * (row + y) / heightPx;
                for (int x = 0; x < widthPx; x++) {
                    double u = x * cos + (row + y) * sin;
                    double v = (row + y) * cos - x * sin;
                    double du = u - Math.rint(u);
                    double dv = v - Math.rint(v);
                    if (du * du + dv * dv < radius * radius) {
                        target[y * wordsPerRow() + (x >> 6)] |= Long.MIN_VALUE >>> (x & 63);
                    }
                }
            }
            row += rows;
            return rows;
        }

        @Override
        public void close() {
            // nothing open
        }
    }
}
