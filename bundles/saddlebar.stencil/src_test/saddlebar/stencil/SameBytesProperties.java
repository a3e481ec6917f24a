package saddlebar.stencil;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import saddlebar.model.art.GrayBands;
import saddlebar.model.work.Work;
import saddlebar.stencil.code.BitonalPng;
import saddlebar.stencil.code.BitonalSettings;
import saddlebar.stencil.code.BitonalTiff;
import saddlebar.stencil.code.SheetPdf;
import saddlebar.stencil.code.WrittenBits;
import saddlebar.stencil.tone.ToneTable;

/** The same picture and recipe give the same bits and the same bytes: on one thread or more, in bands of any height, in every format. */
class SameBytesProperties {
    private static final ScreeningMethods METHODS = ScreeningMethods.ownMethods();

    @Provide
    Arbitrary<ScreeningRecipe> recipes() {
        ScreeningRecipe base = ScreeningRecipe.withDefaults();
        Arbitrary<ScreeningRecipe> methods = Arbitraries.of(METHODS.keys()).map(base::withMethod);
        Arbitrary<ScreeningRecipe> filters = Arbitraries.of(DiffusionFilter.names()).map(name -> base.withMethod("diffusion").withFilter(name));
        Arbitrary<ScreeningRecipe> either = Arbitraries.oneOf(methods, filters);
        return either.flatMap(recipe -> Arbitraries.of(0.021, 0.0424, 0.17).map(recipe::withDotMm))
                .flatMap(recipe -> Arbitraries.of(ScreeningRecipe.Scan.values()).map(recipe::withScan))
                .flatMap(recipe -> Arbitraries.of(30.0, 47.5).map(recipe::withLpi))
                .flatMap(recipe -> Arbitraries.of(0.0, 22.5, 71.0).map(recipe::withAngleDeg));
    }

    private static GrayBands gray(int widthPx, int heightPx, int bandRows, long seed) {
        byte[] codes = Fields.noise(widthPx * heightPx, seed);
        return Fields.gray(widthPx, heightPx, bandRows, (x, y) -> {
            int tone = (int) (x * 300L / widthPx) - 20 + codes[y * widthPx + x] / 8;
            return Math.max(0, Math.min(255, tone));
        });
    }

    private static BitBands screened(ScreeningRecipe recipe, int widthPx, int heightPx, int bandRows, long seed, int threads) {
        return new ScreenedBands(gray(widthPx, heightPx, bandRows, seed), ToneTable.linear(), METHODS.method(recipe.method()), recipe,
                threads);
    }

    /** Widths above 1024 px are shared among threads. */
    @Property(tries = 40)
    void bitsOfEveryMethod(@ForAll("recipes") ScreeningRecipe recipe, @ForAll @IntRange(min = 1, max = 2600) int widthPx,
            @ForAll @IntRange(min = 1, max = 90) int heightPx, @ForAll @IntRange(min = 1, max = 40) int bandRows, @ForAll long seed) throws IOException {
        BitPicture one = BitPicture.of(screened(recipe, widthPx, heightPx, heightPx, seed, 1));
        for (int threads = 2; threads <= 3; threads++) {
            assertEquals(one, BitPicture.of(screened(recipe, widthPx, heightPx, bandRows, seed, threads)), threads + " threads");
        }
    }

    private interface Writer {
        WrittenBits write(BitBands bits, Path file, BitonalSettings settings, Work work) throws IOException;
    }

    @Property(tries = 20)
    void bytesOfEveryWriter(@ForAll("recipes") ScreeningRecipe recipe, @ForAll @IntRange(min = 1, max = 3000) int widthPx,
            @ForAll @IntRange(min = 1, max = 120) int heightPx, @ForAll @IntRange(min = 0, max = 50) int rowsPerStrip, @ForAll long seed) throws IOException {
        Writer[] writers = {BitonalTiff::write, SheetPdf::write, BitonalPng::write};
        Path folder = Files.createTempDirectory("same");
        try {
            for (int i = 0; i < writers.length; i++) {
                Path file = folder.resolve(i + ".out");
                BitonalSettings settings = BitonalSettings.at(1200).withTitle("T").withDescription(recipe.toString()).withRowsPerStrip(rowsPerStrip)
                        .replacing(true);
                writers[i].write(screened(recipe, widthPx, heightPx, 7, seed, 1), file, settings.onThreads(1), Work.UNWATCHED);
                byte[] one = Files.readAllBytes(file);
                WrittenBits written = writers[i].write(screened(recipe, widthPx, heightPx, 31, seed, 2), file, settings.onThreads(2), Work.UNWATCHED);
                assertArrayEquals(one, Files.readAllBytes(file), written.compression());
            }
        } finally {
            try (var files = Files.list(folder)) {
                for (Path file : files.toList()) {
                    Files.delete(file);
                }
            }
            Files.delete(folder);
        }
    }
}
