package saddlebar.stencil.limits;

import java.util.List;

import saddlebar.model.problem.PlaceMm;

/**
 * What a screened picture holds that mesh and paint may not hold.
 *
 * @param px           px of the picture
 * @param paintPx      px that print
 * @param tooFine      openings, or runs of one, that are narrower than the finest opening: paint there will hardly print
 * @param bridgesLost  bridges of stencil between openings that are narrower than the finest bridge: the openings will run together
 * @param looseIslands those of {@code bridgesLost} that hang on no other stencil: whole islands that will be lost
 * @param fineAt       first px of the first openings too fine, in mm from the top left, from the top
 * @param lostAt       first px of the first bridges lost, likewise
 */
public record LimitsFound(long px, long paintPx, long tooFine, long bridgesLost, long looseIslands, List<PlaceMm> fineAt, List<PlaceMm> lostAt) {
    public LimitsFound {
        fineAt = List.copyOf(fineAt);
        lostAt = List.copyOf(lostAt);
    }

    /** Share of the picture that prints, exact, from the bits. */
    public double coverage() {
        return (double) paintPx / px;
    }
}
