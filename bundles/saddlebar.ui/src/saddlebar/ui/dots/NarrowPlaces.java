package saddlebar.ui.dots;

import java.util.ArrayList;
import java.util.List;

import saddlebar.model.problem.PlaceMm;
import saddlebar.stencil.limits.Mending;
import saddlebar.stencil.limits.PictureMending;
import saddlebar.ui.screening.PreviewAsk;
import saddlebar.ui.screening.PreviewRoom;

/** Places of a preview that are too narrow for the mesh, as proposals to widen them. */
public final class NarrowPlaces {
    /** Near the part's edge dots are cut off, which makes them look narrow. */
    private static final double EDGE_MM = 1;

    private NarrowPlaces() {
    }

    /**
     * One proposal.
     *
     * @param thicken whether an opening is made wider, else a bridge
     * @param at      on the panel's page
     * @param widthMm to which it is brought
     * @param px      px that would change
     */
    public record Proposal(boolean thicken, PlaceMm at, double widthMm, int px) {
    }

    /** From the top of the part, openings first. */
    public static List<Proposal> of(PreviewRoom.Preview preview, PreviewAsk.LimitsMm limits, double dpi) {
        List<Proposal> found = new ArrayList<>();
        if (limits.openMm() > 0) {
            add(PictureMending.all(preview.paint(), dpi, limits.openMm(), 0).steps(), limits.openMm(), preview, found);
        }
        if (limits.bridgeMm() > 0) {
            add(PictureMending.all(preview.paint(), dpi, 0, limits.bridgeMm()).steps(), limits.bridgeMm(), preview, found);
        }
        return found;
    }

    private static void add(List<Mending.Step> steps, double widthMm, PreviewRoom.Preview preview, List<Proposal> found) {
        double acrossMm = preview.bits().widthPx() / preview.bits().pxPerMm();
        double downMm = preview.bits().heightPx() / preview.bits().pxPerMm();
        for (Mending.Step step : steps) {
            if (nearEdge(step.at().xMm(), acrossMm) || nearEdge(step.at().yMm(), downMm)) {
                continue;
            }
            PlaceMm at = new PlaceMm(round(preview.leftMm() + step.at().xMm()), round(preview.topMm() + step.at().yMm()));
            found.add(new Proposal(step.kind().equals(Mending.THICKEN), at, widthMm, step.px()));
        }
    }

    private static boolean nearEdge(double mm, double sideMm) {
        return mm < EDGE_MM || mm > sideMm - EDGE_MM;
    }

    /** A hundredth of a mm is less than a px at any resolution that a place is looked for with. */
    private static double round(double mm) {
        return Math.rint(mm * 1000) / 1000;
    }
}
