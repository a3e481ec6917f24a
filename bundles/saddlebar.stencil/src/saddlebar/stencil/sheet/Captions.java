package saddlebar.stencil.sheet;

import java.awt.geom.Path2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import saddlebar.model.problem.Refusal;

/**
 * Finds a free place beside each stencil for its number, its up-arrow and a letter F that lies as the stencil lies: turned with it, and mirrored
 * with it. Tried in turn: above, below, right, left; along each side at its beginning, middle and end.
 */
final class Captions {
    private static final double EM_MM = 3.6;
    private static final double SIGN_MM = 3.2;
    private static final double SPACE_MM = 0.7;
    private static final double INSET_MM = (SheetFrame.CAPTION_MM - SIGN_MM) / 2;

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
        for (boolean upright : new boolean[] {true, false}) {
            Optional<RectMm> box = free(place, lengthMm, upright);
            if (box.isPresent()) {
                taken.add(box.get().grown(-1e-6));
                return drawn(stencil, box.get(), numberMm, upright);
            }
        }
        throw new Refusal("sheet " + plan.label().number() + ", stencil " + stencil.id(),
                "there is no room beside it for its number, " + Sides.of(lengthMm, SheetFrame.CAPTION_MM),
                "keep stencils " + SheetFrame.CAPTION_MM + " mm apart");
    }

    /** A free box above or below, or, with the words turned, right or left. */
    private Optional<RectMm> free(RectMm place, double lengthMm, boolean upright) {
        double deepMm = SheetFrame.CAPTION_MM;
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

    private Mark drawn(PlacedStencil stencil, RectMm box, double numberMm, boolean upright) throws IOException {
        double middleXMm = box.xMm() + box.widthMm() / 2;
        double middleYMm = box.yMm() + box.heightMm() / 2;
        double lengthMm = Math.max(box.widthMm(), box.heightMm());
        double leftMm = middleXMm - lengthMm / 2 + INSET_MM;
        double baseMm = middleYMm + EM_MM * SheetFont.CAPITAL_EM / 2;
        int turns = upright ? 0 : 1;
        Path2D outline = SheetMarks.turned(font.outline(stencil.label(), leftMm, baseMm, EM_MM), middleXMm, middleYMm, turns, false);
        // the signs lie as the stencil lies, whichever way the number is turned
        int signTurns = stencil.quarterTurns() - turns;
        RectMm arrow = new RectMm(leftMm + numberMm + SPACE_MM, middleYMm - SIGN_MM / 2, SIGN_MM, SIGN_MM);
        RectMm letter = new RectMm(arrow.rightMm() + SPACE_MM, arrow.yMm(), SIGN_MM, SIGN_MM);
        Path2D signs = sign(MarkShapes.upArrow(arrow), arrow, signTurns, false);
        double letterEmMm = SIGN_MM / SheetFont.CAPITAL_EM;
        double letterXMm = letter.xMm() + (SIGN_MM - font.widthMm("F", letterEmMm)) / 2;
        signs.append(sign(font.outline("F", letterXMm, letter.bottomMm(), letterEmMm), letter, signTurns, stencil.mirrored()), false);
        outline.append(SheetMarks.turned(signs, middleXMm, middleYMm, turns, false), false);
        return new Mark(Mark.Kind.CAPTION, stencil.label(), box, outline);
    }

    private static Path2D sign(Path2D outline, RectMm box, int turns, boolean mirrored) {
        return SheetMarks.turned(outline, box.xMm() + box.widthMm() / 2, box.yMm() + box.heightMm() / 2, turns, mirrored);
    }
}
