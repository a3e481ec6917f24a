package saddlebar.artwork;

import saddlebar.model.units.Require;

/** A part of the artwork's page in mm, x right and y down from the top left of the page; may reach over its edges. */
public record RegionMm(double xMm, double yMm, double widthMm, double heightMm) {
    public RegionMm {
        Require.within("xMm", xMm, -1e7, 1e7);
        Require.within("yMm", yMm, -1e7, 1e7);
        Require.within("widthMm", widthMm, 1e-6, 1e7);
        Require.within("heightMm", heightMm, 1e-6, 1e7);
    }

    /** The whole page. */
    public static RegionMm ofPage(Artwork artwork) {
        return new RegionMm(0, 0, artwork.widthMm(), artwork.heightMm());
    }
}
