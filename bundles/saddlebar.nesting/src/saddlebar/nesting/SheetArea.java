package saddlebar.nesting;

import java.util.Locale;

import saddlebar.model.problem.Refusal;

/**
 * The usable part of a sheet, inside its margins. The gap of a layout applies between shapes, not to the border of this area.
 *
 * @param widthMm  along x, more than 0, at most {@value #LARGEST_MM}
 * @param heightMm along y, more than 0, at most {@value #LARGEST_MM}
 */
public record SheetArea(double widthMm, double heightMm) {
    /** A side longer than this, 1 km, is a slip of the pen. */
    public static final double LARGEST_MM = 1e6;

    public SheetArea {
        require("width", widthMm);
        require("height", heightMm);
    }

    /** Area in mm2. */
    public double areaMm2() {
        return widthMm * heightMm;
    }

    /** Width and height as people write them. */
    public String sizeText() {
        return NestItem.text(widthMm) + " x " + NestItem.text(heightMm) + " mm";
    }

    private static void require(String side, double mm) {
        if (!(mm >= NestItem.SMALLEST_MM && mm <= LARGEST_MM)) {
            throw new Refusal("sheet", String.format(Locale.ROOT, "its usable %s is %s mm", side, NestItem.text(mm)),
                    "give a size from " + NestItem.text(NestItem.SMALLEST_MM) + " to " + NestItem.text(LARGEST_MM) + " mm");
        }
    }
}
