package saddlebar.report.truesize;

import java.util.List;

import saddlebar.model.units.Require;

/**
 * What is to be printed at true size.
 *
 * @param title    for the map and the foot of each page
 * @param widthMm  from 0 to the right, at most {@value #MOST_MM}
 * @param heightMm from 0 down, at most {@value #MOST_MM}
 * @param ink      in the order of drawing
 */
public record TrueSizeDrawing(String title, double widthMm, double heightMm, List<Ink> ink) {
    /** 20 m: no window is printed larger in one piece. */
    public static final double MOST_MM = 20_000;

    public TrueSizeDrawing {
        Require.text("title", title);
        Require.within("widthMm", widthMm, 0.1, MOST_MM);
        Require.within("heightMm", heightMm, 0.1, MOST_MM);
        ink = List.copyOf(ink);
    }
}
