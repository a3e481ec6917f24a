package saddlebar.ui.begin;

import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

import saddlebar.model.commission.UnitSystem;
import saddlebar.model.store.NewCommission;
import saddlebar.model.store.StudioLibrary;
import saddlebar.model.units.Require;

/**
 * What a new commission is to be.
 *
 * @param title        shown everywhere
 * @param folder       where it lies; made
 * @param sharedStudio folder of a studio that it joins, made if absent; else it has its own
 * @param units        units shown and printed; sheets follow: ISO sizes with millimetres, ANSI sizes with inches
 */
public record NewChoice(String title, Path folder, Optional<Path> sharedStudio, UnitSystem units) {
    private static final int LONGEST_NAME = 60;

    public NewChoice {
        Require.text("title", title);
        Objects.requireNonNull(folder, "folder");
        Objects.requireNonNull(sharedStudio, "sharedStudio");
        Objects.requireNonNull(units, "units");
    }

    /** As the store takes it. */
    public NewCommission settings(Optional<StudioLibrary> tables) {
        List<String> papers = units == UnitSystem.INCH ? List.of("letter", "tabloid") : List.of("a4", "a3");
        NewCommission settings = NewCommission.titled(title).inUnits(units).onPapers(papers);
        settings = sharedStudio.isPresent() ? settings.sharing(sharedStudio.get()) : settings;
        return tables.isPresent() ? settings.stockedFrom(tables.get()) : settings;
    }

    /** A folder's name that every system takes: small letters, numbers and hyphens; empty if nothing of the title is left. */
    public static String folderName(String title) {
        String plain = Normalizer.normalize(title.replace("ß", "ss"), Normalizer.Form.NFD).replaceAll("\\p{M}+", "").toLowerCase(Locale.ROOT);
        String name = plain.replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME).replaceAll("-$", "");
    }
}
