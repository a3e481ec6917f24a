package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import saddlebar.model.units.Units;
import saddlebar.stencil.code.StencilFile;

/** What a stencil's or sheet's own file says of how it was made, and whether that and its bits are still what was written. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "recipe", sortOptions = false, description = "Shows how a stencil or sheet was made, from its own file, and whether it was changed since.",
        footer = {"", "Example: saddlebar recipe matt.tif"})
public final class RecipeCommand implements BenchCommand {
    @Parameters(index = "0", paramLabel = "FILE", description = "A stencil or sheet: TIFF, PDF or PNG.")
    private Path file;

    @Mixin
    private CommonOptions common;

    /** The JSON document; {@code recipeIntact} and {@code bitsIntact} are null where the file records no hash. */
    record Answer(String file, String format, int widthPx, int heightPx, double dpi, String title, String recipe, Boolean recipeIntact, Boolean bitsIntact,
            String sha256OfBits) {
    }

    @Override
    public Integer call() throws IOException {
        StencilFile read = StencilFile.read(file, common.work(1));
        Boolean recipeIntact = read.recordedRecipe().isPresent() ? read.recipeIntact() : null;
        Boolean bitsIntact = read.recordedBits().isPresent() ? read.bitsIntact() : null;
        List<String> words = new ArrayList<>();
        words.add(String.format(Locale.ROOT, "%s: %s, %d x %d px at %s dpi", file, read.format(), read.widthPx(), read.heightPx(), Units.plain(read.dpi())));
        if (!read.title().isEmpty()) {
            words.add(read.title());
        }
        read.recipe().lines().forEach(line -> words.add("  " + line));
        words.add(said("Recipe", recipeIntact));
        words.add(said("Bits", bitsIntact));
        common.answer(new Answer(file.toString(), read.format(), read.widthPx(), read.heightPx(), read.dpi(), read.title(), read.recipe(), recipeIntact,
                bitsIntact, read.bits()), words);
        return Boolean.TRUE.equals(recipeIntact) && Boolean.TRUE.equals(bitsIntact) ? DONE : ATTENTION;
    }

    private static String said(String what, Boolean intact) {
        if (intact == null) {
            return what + ": the file records no hash, so that nothing can be said; it is not of this program, or was saved again by another.";
        }
        return what + (intact ? ": as written." : ": changed since the file was written.");
    }
}
