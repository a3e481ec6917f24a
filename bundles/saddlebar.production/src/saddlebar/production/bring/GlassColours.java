package saddlebar.production.bring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import saddlebar.artwork.ColourArea;
import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.GlassChoice;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;

/**
 * Takes the glass of each piece from the drawing: the colour that is drawn at the piece's number, and the studio's glass of that colour or the nearest
 * to it. What a person has chosen before is not touched.
 */
final class GlassColours {
    private final Studio studio;
    private final List<Problem> problems = new ArrayList<>();

    GlassColours(Studio studio) {
        this.studio = studio;
    }

    List<Problem> problems() {
        return problems;
    }

    void choose(Window window, Panel panel, String colourwayName, List<ColourArea> areas) {
        Colourway colourway = window.getColourways().stream().filter(c -> c.getName().equals(colourwayName)).findFirst().orElseGet(() -> {
            Colourway fresh = CommissionFactory.eINSTANCE.createColourway();
            fresh.setName(colourwayName);
            window.getColourways().add(fresh);
            return fresh;
        });
        Map<Integer, Integer> strange = new LinkedHashMap<>();
        for (Piece piece : panel.getPieces()) {
            boolean chosen = colourway.getChoices().stream().anyMatch(choice -> choice.getPiece() == piece && choice.getGlass() != null);
            if (piece.isRetired() || chosen) {
                continue;
            }
            Optional<ColourArea> seen = Optional.empty();
            for (ColourArea area : areas) { // paint order: the last one that holds the point is seen
                if (area.opacity() > 0.5 && area.contains(piece.getLabelXMm(), piece.getLabelYMm())) {
                    seen = Optional.of(area);
                }
            }
            seen.flatMap(area -> nearest(area.rgb(), strange)).ifPresent(glass -> {
                GlassChoice choice = CommissionFactory.eINSTANCE.createGlassChoice();
                choice.setPiece(piece);
                choice.setGlass(glass);
                colourway.getChoices().add(choice);
            });
        }
        strange.forEach((rgb, pieces) -> problems.add(Problem.of("nearest-glass", Severity.NOTE, window.getName() + " " + colourwayName,
                String.format(Locale.ROOT, "the studio has no glass of colour #%06x; %d pieces got the nearest, %s", rgb, pieces, nearest(rgb).getName()))));
    }

    private Optional<GlassStock> nearest(int rgb, Map<Integer, Integer> strange) {
        if (studio.getGlass().stream().noneMatch(glass -> glass.getColour() != null)) {
            return Optional.empty();
        }
        GlassStock glass = nearest(rgb);
        if (rgb(glass) != rgb) {
            strange.merge(rgb, 1, Integer::sum);
        }
        return Optional.of(glass);
    }

    private GlassStock nearest(int rgb) {
        return studio.getGlass().stream().filter(glass -> glass.getColour() != null)
                .min(Comparator.comparingInt((GlassStock glass) -> distance(rgb(glass), rgb)).thenComparing(GlassStock::getName)).orElseThrow();
    }

    private static int rgb(GlassStock glass) {
        return Integer.parseInt(glass.getColour().substring(1), 16);
    }

    private static int distance(int one, int other) {
        int red = (one >> 16 & 255) - (other >> 16 & 255);
        int green = (one >> 8 & 255) - (other >> 8 & 255);
        int blue = (one & 255) - (other & 255);
        return red * red + green * green + blue * blue;
    }
}
