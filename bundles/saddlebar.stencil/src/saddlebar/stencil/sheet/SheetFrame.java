package saddlebar.stencil.sheet;

import java.util.List;
import java.util.stream.Collectors;

import saddlebar.model.problem.Refusal;

/**
 * How a sheet is divided: printer's margin, a head with the label, a foot with the 100 mm rule and the reading mark, and between them the room
 * for stencils. Sizes of head and foot are ours, as small as the words in them can be read.
 *
 * @param paper     size of the sheet
 * @param headMm    label, with a register mark at each end
 * @param footMm    rule and reading mark, with a register mark at each end
 * @param usableMm  where stencils may lie; above it is room for the caption of the first row
 * @param stackedMm height of the reading mark if it stands above the rule, since the sheet is too narrow for both side by side; else 0
 */
public record SheetFrame(Paper paper, RectMm headMm, RectMm footMm, RectMm usableMm, double stackedMm) {
    /** Room that a stencil's number and up-arrow need on one side: stencils at least so far apart always have it. */
    public static final double CAPTION_MM = 4.5;
    static final double HEAD_MM = 8;
    static final double FOOT_MM = 11;
    static final double SPACE_MM = 1;
    static final double REGISTER_MM = 6;
    /** The rule with the half of a figure that stands out at each end. */
    static final double RULE_MM = 106;
    static final double READING_MM = 66;

    public static SheetFrame of(Paper paper, double marginMm) {
        double innerMm = paper.widthMm() - 2 * marginMm;
        double leastMm = RULE_MM + 2 * (REGISTER_MM + SPACE_MM);
        if (innerMm < leastMm) {
            throw new Refusal("sheet " + paper.name(), "a sheet of " + paper.sides() + " is too narrow for the 100 mm check rule",
                    "take one at least " + Sides.mm(leastMm + 2 * marginMm) + " mm wide");
        }
        double stackedMm = innerMm < leastMm + READING_MM + SPACE_MM ? FOOT_MM + SPACE_MM : 0;
        double footMm = FOOT_MM + stackedMm;
        RectMm head = new RectMm(marginMm, marginMm, innerMm, HEAD_MM);
        double topMm = head.bottomMm() + SPACE_MM + CAPTION_MM;
        double bottomMm = paper.heightMm() - marginMm - footMm - SPACE_MM;
        if (bottomMm - topMm < 10) {
            throw new Refusal("sheet " + paper.name(), "a sheet of " + paper.sides() + " has no room for stencils beside its label and rule",
                    "take a higher one");
        }
        RectMm foot = new RectMm(marginMm, bottomMm + SPACE_MM, innerMm, footMm);
        return new SheetFrame(paper, head, foot, new RectMm(marginMm, topMm, innerMm, bottomMm - topMm), stackedMm);
    }

    /** Whether a stencil of this size fits as it is or turned by a quarter. */
    public boolean hasRoomFor(double widthMm, double heightMm) {
        return widthMm <= usableMm.widthMm() && heightMm <= usableMm.heightMm()
                || heightMm <= usableMm.widthMm() && widthMm <= usableMm.heightMm();
    }

    /**
     * Refuses a stencil that no sheet can take.
     *
     * @param stencil name for the message
     * @param sheets  sheets there are, at least one
     */
    public static void requireRoom(String stencil, double widthMm, double heightMm, List<SheetFrame> sheets) {
        if (sheets.stream().noneMatch(sheet -> sheet.hasRoomFor(widthMm, heightMm))) {
            String rooms = sheets.stream().map(sheet -> sheet.paper.name() + " has room for " + Sides.of(sheet.usableMm.widthMm(), sheet.usableMm.heightMm()))
                    .collect(Collectors.joining(", "));
            throw new Refusal("stencil " + stencil, "it is " + Sides.of(widthMm, heightMm) + ", larger than any sheet takes (" + rooms + ")",
                    "split its layer into smaller stencils or take a larger sheet");
        }
    }
}
