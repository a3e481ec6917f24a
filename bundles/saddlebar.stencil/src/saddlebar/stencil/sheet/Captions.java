package saddlebar.stencil.sheet;

import java.awt.geom.Path2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import saddlebar.model.problem.Refusal;

/**
 * Finds a free place beside each stencil for its number, its up-arrow and a letter F that lies as the stencil lies: turned with it, and mirrored
 * with it. Tried in turn: above, below, right, left; along each side at its beginning, middle and end; then all of that in smaller letters.
 */
final class Captions {
    private static final double EM_MM = 3.6;
    private static final double SIGN_MM = 3.2;
    private static final double SPACE_MM = 0.7;
    private static final double INSET_MM = (SheetFrame.CAPTION_MM - SIGN_MM) / 2;

    /** Sizes tried, largest first; the smallest has figures of 1.4 mm. */
    private static final double[] SCALES = {1, 0.75, 0.55};

    private final SheetPlan plan;
    private final SheetFont font;
    private final List<RectMm> taken = new ArrayList<>();
    private final RectMm allowed;

    Captions(SheetPlan plan, SheetFont font) {
        this.plan = plan;
        this.font = font;
        SheetFrame frame = plan.frame();
        double topMm = frame.headMm().bottomMm();
        this.allowed = new RectMm(frame.headMm().xMm(), topMm, frame.headMm().widthMm(), frame.footMm().yMm() - topMm).grown(1e-6);
        plan.stencils().forEach(stencil -> taken.add(stencil.placeMm(plan.dpi()).grown(-1e-6)));
    }

    List<Mark> marks() throws IOException {
        List<Mark> marks = new ArrayList<>();
        for (PlacedStencil stencil : plan.stencils()) {
            marks.add(mark(stencil));
        }
        return marks;
    }

    private Mark mark(PlacedStencil stencil) throws IOException {
        double numberMm = font.widthMm(stencil.label(), EM_MM);
        double lengthMm = numberMm + 2 * SIGN_MM + 2 * SPACE_MM + 2 * INSET_MM;
        RectMm place = stencil.placeMm(plan.dpi());
        for (double scale : SCALES) {
            for (boolean upright : new boolean[] {true, false}) {
                Optional<RectMm> box = free(place, scale * lengthMm, scale * SheetFrame.CAPTION_MM, upright);
                if (box.isPresent()) {
                    taken.add(box.get().grown(-1e-6));
                    return drawn(stencil, box.get(), scale, upright);
                }
            }
        }
        double least = SCALES[SCALES.length - 1];
        throw new Refusal("sheet " + plan.label().number() + ", stencil " + stencil.id(),
                "there is no room beside it for its number, " + Sides.of(least * lengthMm, least * SheetFrame.CAPTION_MM),
                "keep stencils " + SheetFrame.CAPTION_MM + " mm apart, or more where they are small");
    }

    /** A free box above or below, or, with the words turned, right or left. */
    private Optional<RectMm> free(RectMm place, double lengthMm, double deepMm, boolean upright) {
        for (int side = 0; side < 2; side++) {
            for (double share : new double[] {0, 0.5, 1}) {
                RectMm box;
                if (upright) {
                    double xMm = place.xMm() + share * (place.widthMm() - lengthMm);
                    box = new RectMm(xMm, side == 0 ? place.yMm() - deepMm : place.bottomMm(), lengthMm, deepMm);
                } else {
                    double yMm = place.yMm() + share * (place.heightMm() - lengthMm);
                    box = new RectMm(side == 0 ? place.rightMm() : place.xMm() - deepMm, yMm, deepMm, lengthMm);
                }
                if (allowed.contains(box) && taken.stream().noneMatch(box::overlaps)) {
                    return Optional.of(box);
                }
            }
        }
        return Optional.empty();
    }

    private Mark drawn(PlacedStencil stencil, RectMm box, double scale, boolean upright) throws IOException {
        double emMm = scale * EM_MM;
        double signMm = scale * SIGN_MM;
        double spaceMm = scale * SPACE_MM;
        double middleXMm = box.xMm() + box.widthMm() / 2;
        double middleYMm = box.yMm() + box.heightMm() / 2;
        double lengthMm = Math.max(box.widthMm(), box.heightMm());
        double leftMm = middleXMm - lengthMm / 2 + scale * INSET_MM;
        double baseMm = middleYMm + emMm * SheetFont.CAPITAL_EM / 2;
        int turns = upright ? 0 : 1;
        Path2D outline = SheetMarks.turned(font.outline(stencil.label(), leftMm, baseMm, emMm), middleXMm, middleYMm, turns, false);
        // the signs lie as the stencil lies, whichever way the number is turned
        int signTurns = stencil.quarterTurns() - turns;
        RectMm arrow = new RectMm(leftMm + font.widthMm(stencil.label(), emMm) + spaceMm, middleYMm - signMm / 2, signMm, signMm);
        RectMm letter = new RectMm(arrow.rightMm() + spaceMm, arrow.yMm(), signMm, signMm);
        Path2D signs = sign(MarkShapes.upArrow(arrow), arrow, signTurns, false);
        double letterEmMm = signMm / SheetFont.CAPITAL_EM;
        double letterXMm = letter.xMm() + (signMm - font.widthMm("F", letterEmMm)) / 2;
        signs.append(sign(font.outline("F", letterXMm, letter.bottomMm(), letterEmMm), letter, signTurns, stencil.mirrored()), false);
        outline.append(SheetMarks.turned(signs, middleXMm, middleYMm, turns, false), false);
        return new Mark(Mark.Kind.CAPTION, stencil.label(), box, outline);
    }

    private static Path2D sign(Path2D outline, RectMm box, int turns, boolean mirrored) {
        return SheetMarks.turned(outline, box.xMm() + box.widthMm() / 2, box.yMm() + box.heightMm() / 2, turns, mirrored);
    }
}
