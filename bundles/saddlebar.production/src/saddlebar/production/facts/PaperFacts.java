package saddlebar.production.facts;

import saddlebar.model.units.Require;

/** A size of sheet in use, upright, and what the printer leaves white on each side, in mm. */
public record PaperFacts(String name, double widthMm, double heightMm, double marginMm) {
    public PaperFacts {
        Require.text("name", name);
        Require.within("widthMm", widthMm, 20, 5000);
        Require.within("heightMm", heightMm, 20, 5000);
        Require.within("marginMm", marginMm, 0, 50);
    }
}
