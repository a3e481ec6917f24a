package saddlebar.model.store;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import saddlebar.model.commission.UnitSystem;
import saddlebar.model.units.Require;

/**
 * What a new commission starts with.
 *
 * @param title        shown everywhere
 * @param number       the studio's number for it, or empty
 * @param client       the client's name, or empty
 * @param units        units shown and printed
 * @param papers       names of the paper sizes that sheets may use, in order of liking; not empty
 * @param sharedStudio folder of a studio that several commissions share, made if absent; else the commission has its own inside
 * @param library      tables that fill a new studio; without them it starts empty
 */
public record NewCommission(String title, String number, String client, UnitSystem units, List<String> papers, Optional<Path> sharedStudio,
        Optional<StudioLibrary> library) {
    public NewCommission {
        Require.text("title", title);
        papers = List.copyOf(papers);
        if (papers.isEmpty()) {
            throw new IllegalArgumentException("papers must not be empty");
        }
    }

    public static NewCommission titled(String title) {
        return new NewCommission(title, "", "", UnitSystem.MM, List.of("a4"), Optional.empty(), Optional.empty());
    }

    public NewCommission withNumber(String given) {
        return new NewCommission(title, given, client, units, papers, sharedStudio, library);
    }

    public NewCommission forClient(String name) {
        return new NewCommission(title, number, name, units, papers, sharedStudio, library);
    }

    public NewCommission inUnits(UnitSystem given) {
        return new NewCommission(title, number, client, given, papers, sharedStudio, library);
    }

    public NewCommission onPapers(List<String> names) {
        return new NewCommission(title, number, client, units, names, sharedStudio, library);
    }

    public NewCommission sharing(Path studioFolder) {
        return new NewCommission(title, number, client, units, papers, Optional.of(studioFolder), library);
    }

    public NewCommission stockedFrom(StudioLibrary tables) {
        return new NewCommission(title, number, client, units, papers, sharedStudio, Optional.of(tables));
    }
}
