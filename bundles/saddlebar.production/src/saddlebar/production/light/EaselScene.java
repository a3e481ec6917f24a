package saddlebar.production.light;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import saddlebar.model.commission.MakingState;
import saddlebar.model.problem.Problem;

/**
 * A window laid out on the Easel: plain immutable data, taken from the commission once, painted as often as needed on any thread. Lengths in
 * mm, x to the right and y down, as the artwork's page.
 *
 * @param name       the window's name
 * @param bounds     what is shown when the whole window is shown
 * @param outlines   the panels' outlines; between the pieces they are metal
 * @param pieces     the glass
 * @param layers     what is painted on it, in the order of firing
 * @param problems   what somebody should look at; those with a place are marked
 * @param colourways names of the choices of glass, at least one
 * @param metal      foil or came
 * @param hints      proposals drawn over the glass while problems are shown
 * @param states     how far pieces are made, by their ids; a piece that is not named is drawn
 */
public record EaselScene(String name, RectMm bounds, List<Contour> outlines, List<ScenePiece> pieces, List<SceneLayer> layers,
        List<Problem> problems, List<String> colourways, Metal metal, List<SceneHint> hints, Map<String, MakingState> states) {
    public EaselScene {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(bounds, "bounds");
        outlines = List.copyOf(outlines);
        pieces = List.copyOf(pieces);
        layers = List.copyOf(layers);
        problems = List.copyOf(problems);
        colourways = List.copyOf(colourways);
        if (colourways.isEmpty()) {
            throw new IllegalArgumentException("a scene needs at least one colourway");
        }
        Objects.requireNonNull(metal, "metal");
        hints = List.copyOf(hints);
        states = Map.copyOf(states);
    }

    /** Of whose making nothing is known yet. */
    public EaselScene(String name, RectMm bounds, List<Contour> outlines, List<ScenePiece> pieces, List<SceneLayer> layers, List<Problem> problems,
            List<String> colourways, Metal metal) {
        this(name, bounds, outlines, pieces, layers, problems, colourways, metal, List.of(), Map.of());
    }

    public EaselScene withStates(Map<String, MakingState> now) {
        return new EaselScene(name, bounds, outlines, pieces, layers, problems, colourways, metal, hints, now);
    }

    /** The same with proposals. */
    public EaselScene withHints(List<SceneHint> proposed) {
        return new EaselScene(name, bounds, outlines, pieces, layers, problems, colourways, metal, proposed, states);
    }

    public MakingState state(ScenePiece piece) {
        return states.getOrDefault(piece.id(), MakingState.DRAWN);
    }

    /** The piece at a place; a piece in the hole of another is found there, since a hole is not part of its contour. */
    public Optional<ScenePiece> pieceAt(double xMm, double yMm) {
        return pieces.stream().filter(piece -> piece.contour().holds(xMm, yMm)).findFirst();
    }

    public Optional<ScenePiece> piece(String id) {
        return pieces.stream().filter(piece -> piece.id().equals(id)).findFirst();
    }

    public boolean isEmpty() {
        return outlines.isEmpty() && pieces.isEmpty();
    }
}
