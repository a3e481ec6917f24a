package saddlebar.stencil.sheet;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Draws the marks of one sheet as outlines in mm. All words read right in the toner view, however the stencils lie: that they do is the sign that
 * the sheet came out of the printer as it was meant.
 */
final class SheetMarks {
    private static final double LABEL_EM_MM = 3.6;
    private static final double SMALL_EM_MM = 2.1;
    private static final double TITLE_EM_MM = 3.6;
    private static final double LINE_MM = 2.45;
    private static final double STROKE_MM = 0.2;

    private final SheetPlan plan;
    private final SheetFrame frame;
    private final SheetFont font;
    private final SheetWords words;
    private final List<Mark> marks = new ArrayList<>();

    private SheetMarks(SheetPlan plan, SheetFont font, SheetWords words) {
        this.plan = plan;
        this.frame = plan.frame();
        this.font = font;
        this.words = words;
    }

    static List<Mark> of(SheetPlan plan) throws IOException {
        try (SheetFont font = new SheetFont()) {
            SheetMarks drawn = new SheetMarks(plan, font, new SheetWords());
            drawn.registers();
            drawn.label();
            drawn.rule();
            drawn.reading();
            drawn.marks.addAll(new Captions(plan, font).marks());
            return List.copyOf(drawn.marks);
        }
    }

    private void registers() {
        for (RectMm band : List.of(frame.headMm(), frame.footMm())) {
            double yMm = band == frame.headMm() ? band.yMm() : band.bottomMm() - SheetFrame.REGISTER_MM;
            for (double xMm : new double[] {band.xMm(), band.rightMm() - SheetFrame.REGISTER_MM}) {
                RectMm box = new RectMm(xMm, yMm, SheetFrame.REGISTER_MM, SheetFrame.REGISTER_MM);
                marks.add(new Mark(Mark.Kind.REGISTER, "", box, MarkShapes.register(box, STROKE_MM)));
            }
        }
    }

    private void label() throws IOException {
        RectMm head = frame.headMm();
        double leftMm = head.xMm() + SheetFrame.REGISTER_MM + SheetFrame.SPACE_MM;
        double mostMm = head.rightMm() - SheetFrame.REGISTER_MM - SheetFrame.SPACE_MM - leftMm;
        SheetLabel label = plan.label();
        String counted = words.of("label.sheet", "", String.valueOf(label.number()), String.valueOf(label.of()));
        String commission = font.fitted(label.commission(), LABEL_EM_MM, mostMm - font.widthMm(counted, LABEL_EM_MM));
        String first = words.ofSheet(new SheetLabel(commission, label.number(), label.of(), ""));
        String second = words.of("label.paper", plan.paper().name(), plan.paper().sides(), Sides.mm(plan.dpi()), words.ofProcess(plan.process().key()),
                words.ofSide(plan.touches()));
        if (!label.note().isEmpty()) {
            second += words.of("label.note", label.note());
        }
        second = font.fitted(second, SMALL_EM_MM, mostMm);
        Path2D outline = font.outline(first, leftMm, head.yMm() + 3.4, LABEL_EM_MM);
        outline.append(font.outline(second, leftMm, head.yMm() + 6.8, SMALL_EM_MM), false);
        marks.add(new Mark(Mark.Kind.LABEL, first, new RectMm(leftMm, head.yMm(), mostMm, head.heightMm()), outline));
    }

    /** The rule's ticks stand at whole cm from middle to middle; its end ticks are 100 mm apart. */
    private void rule() throws IOException {
        RectMm foot = frame.footMm();
        double leftMm = foot.xMm() + SheetFrame.REGISTER_MM + SheetFrame.SPACE_MM;
        double topMm = foot.yMm() + frame.stackedMm();
        double zeroMm = leftMm + (SheetFrame.RULE_MM - 100) / 2;
        double lineMm = topMm + 4.2;
        Path2D outline = MarkShapes.box(zeroMm - STROKE_MM / 2, lineMm - STROKE_MM / 2, 100 + STROKE_MM, STROKE_MM);
        for (int cm = 0; cm <= 10; cm++) {
            double tickMm = cm % 5 == 0 ? 3.5 : 2.2;
            outline.append(MarkShapes.box(zeroMm + 10 * cm - STROKE_MM / 2, lineMm - tickMm, STROKE_MM, tickMm), false);
            if (cm % 5 == 0) {
                String figure = String.valueOf(10 * cm);
                double figureMm = font.widthMm(figure, SMALL_EM_MM);
                outline.append(font.outline(figure, zeroMm + 10 * cm - figureMm / 2, lineMm + 2.2, SMALL_EM_MM), false);
            }
        }
        String check = font.fitted(words.of("rule.check"), SMALL_EM_MM, SheetFrame.RULE_MM);
        outline.append(font.outline(check, zeroMm, topMm + 10, SMALL_EM_MM), false);
        RectMm box = new RectMm(leftMm, topMm, SheetFrame.RULE_MM, SheetFrame.FOOT_MM);
        marks.add(new Mark(Mark.Kind.RULE, check, box, outline));
    }

    private void reading() throws IOException {
        RectMm foot = frame.footMm();
        boolean stacked = frame.stackedMm() > 0;
        double edgeMm = SheetFrame.REGISTER_MM + SheetFrame.SPACE_MM;
        double leftMm = stacked ? foot.xMm() + edgeMm : foot.rightMm() - edgeMm - SheetFrame.READING_MM;
        double yMm = foot.yMm() + TITLE_EM_MM * SheetFont.CAPITAL_EM + 0.1;
        String title = words.of("reading.title");
        Path2D outline = font.outline(title, leftMm, yMm, TITLE_EM_MM);
        String first = plan.mirroredByRule() ? "reading.right" : "reading.byHand";
        String[] lines = {words.of(first), words.of("reading.lay", words.ofSide(plan.touches())), words.of("reading.wrong")};
        yMm += 0.3;
        for (String line : lines) {
            yMm += LINE_MM;
            outline.append(font.outline(font.fitted(line, SMALL_EM_MM, SheetFrame.READING_MM), leftMm, yMm, SMALL_EM_MM), false);
        }
        RectMm box = new RectMm(leftMm, foot.yMm(), SheetFrame.READING_MM, SheetFrame.FOOT_MM);
        marks.add(new Mark(Mark.Kind.READING, title, box, outline));
    }

    /** An outline turned by quarters about the middle of a box and, before that, left and right exchanged. */
    static Path2D turned(Path2D outline, double middleXMm, double middleYMm, int quarterTurns, boolean mirrored) {
        AffineTransform about = new AffineTransform();
        about.translate(middleXMm, middleYMm);
        about.quadrantRotate(quarterTurns);
        about.scale(mirrored ? -1 : 1, 1);
        about.translate(-middleXMm, -middleYMm);
        Path2D turned = new Path2D.Double(Path2D.WIND_NON_ZERO);
        turned.append(outline.getPathIterator(about), false);
        return turned;
    }
}
