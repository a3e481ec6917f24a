package saddlebar.production.plan;

import org.locationtech.jts.geom.Envelope;

import saddlebar.model.units.Require;

/** What one screen can print at once in mm: the frame's image area less the squeegee margin, and no more than the largest sheet carries. */
public record ImageArea(double widthMm, double heightMm) {
    public ImageArea {
        Require.within("widthMm", widthMm, 1, 10_000);
        Require.within("heightMm", heightMm, 1, 10_000);
    }

    /** Whether the box fits, as it lies or turned by a quarter. */
    boolean takes(Envelope box) {
        return box.getWidth() <= widthMm && box.getHeight() <= heightMm || box.getWidth() <= heightMm && box.getHeight() <= widthMm;
    }

    /** The larger of two areas for the same box does not exist; this one is what both can take as they lie. */
    public ImageArea within(ImageArea other) {
        ImageArea turned = new ImageArea(other.heightMm, other.widthMm);
        ImageArea straight = smaller(other);
        ImageArea quarter = smaller(turned);
        return straight.widthMm * straight.heightMm >= quarter.widthMm * quarter.heightMm ? straight : quarter;
    }

    private ImageArea smaller(ImageArea other) {
        return new ImageArea(Math.min(widthMm, other.widthMm), Math.min(heightMm, other.heightMm));
    }
}
