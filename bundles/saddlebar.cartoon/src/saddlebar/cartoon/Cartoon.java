package saddlebar.cartoon;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.locationtech.jts.geom.Geometry;

import saddlebar.model.problem.Problem;

/**
 * A panel in pieces. The geometry must not be changed by whoever gets it.
 *
 * @param panel    all faces together: one polygon, or several where the panel falls apart
 * @param pieces   by number, ascending
 * @param problems worst first, each with its place; a problem of a piece has {@code piece N} in {@code where}
 * @param euler    the count of the net after mending
 * @param revision what became of the pieces of the last revision; empty for a first drawing
 * @param reliefs  proposals of how an inside curve is taken out; they change no piece
 * @param joints   inner joints by what lies in them
 */
public record Cartoon(Geometry panel, List<CartoonPiece> pieces, List<Problem> problems, Euler euler, Optional<Revision> revision,
        List<Relief> reliefs, List<JoinLength> joints) {
    public Cartoon {
        Objects.requireNonNull(revision, "revision");
        reliefs = List.copyOf(reliefs);
        joints = List.copyOf(joints);
        Objects.requireNonNull(panel, "panel");
        Objects.requireNonNull(euler, "euler");
        pieces = List.copyOf(pieces);
        problems = List.copyOf(problems);
    }

    public Optional<CartoonPiece> piece(int number) {
        return pieces.stream().filter(piece -> piece.number() == number).findFirst();
    }

    public double panelAreaMm2() {
        return panel.getArea();
    }

    public double widthMm() {
        return panel.getEnvelopeInternal().getWidth();
    }

    public double heightMm() {
        return panel.getEnvelopeInternal().getHeight();
    }

    /** Length of the panel's outer edge, and of its holes if it has any. */
    public double panelPerimeterMm() {
        return panel.getLength();
    }

    /** Length of foil: the perimeters of all pieces = 2 x inner joints + outer edge. */
    public double foilLengthMm() {
        return pieces.stream().mapToDouble(CartoonPiece::perimeterMm).sum();
    }

    /** Length of the joints between pieces, each counted once. */
    public double innerJointMm() {
        return (foilLengthMm() - panelPerimeterMm()) / 2;
    }

    public double netAreaMm2() {
        return pieces.stream().mapToDouble(CartoonPiece::netAreaMm2).sum();
    }

    /** Other numbers for the same pieces; see {@link Renumbering}. */
    public Cartoon renumbered(Map<Integer, Integer> newByOld) {
        return Renumbering.of(this, newByOld);
    }
}
