package saddlebar.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.production.colourway.Colourways;

/** Reads words such as {@code 3,5-7=amber} and cuts the pieces so: all of them, or none if one word is wrong. */
final class PiecesOfGlass {
    private static final Pattern RANGE = Pattern.compile("(\\d{1,6})(?:-(\\d{1,6}))?");

    private record Cut(List<Piece> pieces, Optional<GlassStock> glass) {
    }

    private final Window window;
    private final Studio studio;

    PiecesOfGlass(Window window, Studio studio) {
        this.window = window;
        this.studio = studio;
    }

    /** @return how many pieces were named */
    int cut(Colourway colourway, List<String> words) {
        List<Cut> cuts = new ArrayList<>();
        for (String word : words) {
            int equals = word.indexOf('=');
            if (equals < 1) {
                throw new Refusal("colourway", "'" + word + "' is not of the form PIECES=GLASS", "write it as 3=amber or 3,5-7=amber or all=amber");
            }
            cuts.add(new Cut(pieces(word.substring(0, equals)), glass(word.substring(equals + 1).strip())));
        }
        cuts.forEach(cut -> Colourways.cut(colourway, cut.pieces(), cut.glass()));
        return cuts.stream().mapToInt(cut -> cut.pieces().size()).sum();
    }

    private List<Piece> pieces(String words) {
        List<Piece> all = Colourways.pieces(window);
        if (words.strip().toLowerCase(Locale.ROOT).equals("all")) {
            return all;
        }
        Set<Piece> named = new LinkedHashSet<>();
        for (String word : words.split(",")) {
            Matcher range = RANGE.matcher(word.strip());
            if (!range.matches()) {
                throw new Refusal(window.getName(), "'" + word.strip() + "' is no number of a piece", "write 3, 5-7 or all");
            }
            int from = Integer.parseInt(range.group(1));
            int to = range.group(2) == null ? from : Integer.parseInt(range.group(2));
            List<Piece> found = all.stream().filter(piece -> piece.getNumber() >= from && piece.getNumber() <= to).toList();
            if (found.isEmpty()) {
                throw new Refusal(window.getName(), "it has no piece " + word.strip(), all.isEmpty()
                        ? "bring its artwork first"
                        : "its pieces are " + all.get(0).getNumber() + " to " + all.get(all.size() - 1).getNumber());
            }
            named.addAll(found);
        }
        return List.copyOf(named);
    }

    private Optional<GlassStock> glass(String name) {
        if (name.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(studio.getGlass().stream().filter(glass -> name.equalsIgnoreCase(glass.getName())).findFirst()
                .orElseThrow(() -> new Refusal("glass", "the studio has no glass '" + name + "'",
                        studio.getGlass().isEmpty()
                                ? "put its glass into the studio first"
                                : "it has "
                                        + String.join(", ", studio.getGlass().stream().map(GlassStock::getName).toList()))));
    }
}
