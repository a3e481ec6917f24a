package saddlebar.cartoon;

import java.util.List;
import java.util.SortedMap;

import org.locationtech.jts.geom.Polygon;

/**
 * Numbers that stay through a revision of the drawing.
 *
 * @param numbers number of each new face, in the order given, all different
 * @param split   old number to the new pieces that hold a share of the old one, where more than one does
 * @param merged  new number to the old pieces of which it holds the greater part, where more than one
 * @param gone    old numbers that no new piece keeps, ascending; they are not used again
 * @param fresh   numbers that are new, ascending
 */
public record KeptNumbers(List<Integer> numbers, SortedMap<Integer, List<Integer>> split, SortedMap<Integer, List<Integer>> merged,
        List<Integer> gone, List<Integer> fresh) {
    /**
     * @param before    pieces of the last revision
     * @param faces     faces of the new one, in the order in which new ones take their numbers
     * @param firstFree least number for a piece that keeps none, above all numbers ever used
     */
    public static KeptNumbers of(List<NumberedFace> before, List<Polygon> faces, int firstFree) {
        throw new IllegalStateException("not built yet");
    }
}
