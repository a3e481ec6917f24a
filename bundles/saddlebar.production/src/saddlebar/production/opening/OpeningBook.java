package saddlebar.production.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import saddlebar.cartoon.opening.BarRule;
import saddlebar.cartoon.opening.MeasuredFrame;
import saddlebar.cartoon.opening.OpeningKinds;
import saddlebar.cartoon.opening.OpeningMeasures;
import saddlebar.cartoon.opening.OpeningPlan;
import saddlebar.cartoon.opening.OpeningSizes;
import saddlebar.cartoon.opening.PanelDivision;
import saddlebar.cartoon.opening.SaddleBar;
import saddlebar.model.art.DrawnLine;
import saddlebar.model.art.OutlineMm;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.Opening;
import saddlebar.model.commission.OpeningKind;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;

/** Enters an opening into a window, and reads it from there. Changes the model; the caller saves. */
public final class OpeningBook {
    /** Rebate of a usual frame where nobody measured it (common practice, no source). */
    public static final double USUAL_REBATE_MM = 10;
    /** Code of the warning that the drawn panel is not as large as the opening asks for. */
    public static final String PANEL_NOT_AS_OPENING = "panel-not-as-opening";
    private static final double FITS_MM = 1;

    private OpeningBook() {
    }

    /**
     * Sets the window's opening. A window without pieces gets the panel's outline too; a drawing that was brought keeps its own, and
     * {@link #problems} tells whether it fits.
     */
    public static void enter(Window window, OpeningMeasures measures, OpeningPlan plan) {
        Opening opening = window.getOpening();
        if (opening == null) {
            opening = CommissionFactory.eINSTANCE.createOpening();
            window.setOpening(opening);
        }
        OpeningSizes sizes = plan.sizes();
        double[] panelBox = OpeningPlan.box(sizes.panel());
        opening.setKind(kind(measures.kind()));
        opening.setSightWidthMm(width(sizes.sight()));
        opening.setSightHeightMm(height(sizes.sight()));
        opening.setTightWidthMm(width(sizes.tight()));
        opening.setTightHeightMm(height(sizes.tight()));
        opening.setRiseMm(measures.kind().needsRise() ? measures.riseMm() : null);
        opening.setJambMm(plan.shape().springingMm() > 0 ? OpeningPlan.box(plan.shape().line(1))[3] - plan.shape().springingMm() : null);
        opening.setRebateMm(measures.rebateMm());
        opening.setClearanceMm(measures.clearanceMm());
        MeasuredFrame frame = measures.frame().orElse(null);
        opening.setTopMm(frame == null ? null : frame.topMm());
        opening.setRightMm(frame == null ? null : frame.rightMm());
        opening.setBottomMm(frame == null ? null : frame.bottomMm());
        opening.setLeftMm(frame == null ? null : frame.leftMm());
        opening.setDiagonalDownMm(frame == null ? null : frame.fallingMm());
        opening.setDiagonalUpMm(frame == null ? null : frame.risingMm());
        opening.setOutline(outline(sizes.sight(), -panelBox[0], -panelBox[1]));
        opening.getBarsMm().clear();
        opening.getDivisionsMm().clear();
        for (SaddleBar bar : plan.division().bars()) {
            opening.getBarsMm().add(bar.yMm() - panelBox[1]);
            if (bar.division()) {
                opening.getDivisionsMm().add(bar.yMm() - panelBox[1]);
            }
        }
        if (window.getPanels().isEmpty()) {
            window.getPanels().add(CommissionFactory.eINSTANCE.createPanel());
        }
        if (window.getPanels().size() == 1 && window.getPanels().get(0).getPieces().stream().allMatch(piece -> piece.isRetired())) {
            window.getPanels().get(0).setOutline(outline(sizes.panel(), -panelBox[0], -panelBox[1]));
        }
    }

    /** What was measured, as far as the window knows it: a new window's drawing gives its sight size. */
    public static OpeningMeasures measures(Window window, BarRule usualBars) {
        Opening opening = window.getOpening();
        if (opening == null) {
            return new OpeningMeasures(OpeningKinds.RECTANGLE, 0, 0, 0, Optional.empty(), false, USUAL_REBATE_MM, OpeningSizes.USUAL_CLEARANCE_MM, usualBars,
                    PanelDivision.USUAL_PERIMETER_MM);
        }
        Optional<MeasuredFrame> frame = Optional.empty();
        if (opening.getTopMm() != null && opening.getRightMm() != null && opening.getBottomMm() != null && opening.getLeftMm() != null
                && opening.getDiagonalDownMm() != null && opening.getDiagonalUpMm() != null) {
            frame = Optional.of(new MeasuredFrame(opening.getTopMm(), opening.getRightMm(), opening.getBottomMm(), opening.getLeftMm(),
                    opening.getDiagonalDownMm(), opening.getDiagonalUpMm()));
        }
        double rebate = opening.getRebateMm() != null ? opening.getRebateMm() : USUAL_REBATE_MM;
        double clearance = opening.getClearanceMm() != null ? opening.getClearanceMm() : OpeningSizes.USUAL_CLEARANCE_MM;
        OpeningKinds kind = frame.isPresent() ? OpeningKinds.RECTANGLE : kind(opening);
        return new OpeningMeasures(kind, opening.getSightWidthMm(), opening.getSightHeightMm(), opening.getRiseMm() == null ? 0 : opening.getRiseMm(), frame,
                false, rebate, clearance, opening.isInDoor() ? BarRule.DOOR : usualBars, PanelDivision.USUAL_PERIMETER_MM);
    }

    /** Whether the drawn panel is as large as the opening asks for; nothing where no opening was entered or nothing is drawn. */
    public static List<Problem> problems(Window window) {
        Opening opening = window.getOpening();
        List<Problem> problems = new ArrayList<>();
        if (opening == null || opening.getOutline() == null || opening.getTightWidthMm() <= 0 || window.getPanels().size() != 1) {
            return problems;
        }
        Panel panel = window.getPanels().get(0);
        if (panel.getOutline() == null || panel.getOutline().isEmpty()) {
            return problems;
        }
        double clearance = opening.getClearanceMm() == null ? 0 : opening.getClearanceMm();
        double[] box = box(panel.getOutline());
        double wide = box[2] - box[0] - (opening.getTightWidthMm() - 2 * clearance);
        double high = box[3] - box[1] - (opening.getTightHeightMm() - 2 * clearance);
        if (Math.abs(wide) > FITS_MM || Math.abs(high) > FITS_MM) {
            problems.add(Problem.of(PANEL_NOT_AS_OPENING, Severity.WARNING, window.getName(), String.format(Locale.ROOT,
                    "The drawn panel is %.1f x %.1f mm, and the opening asks for %.1f x %.1f mm: bring the drawing in that size, or measure the opening again",
                    box[2] - box[0], box[3] - box[1], box[2] - box[0] - wide, box[3] - box[1] - high)));
        }
        return problems;
    }

    private static double[] box(OutlineMm outline) {
        return OpeningPlan.box(new DrawnLine("panel", 0, outline.ring(0), true));
    }

    private static double width(DrawnLine line) {
        double[] box = OpeningPlan.box(line);
        return box[2] - box[0];
    }

    private static double height(DrawnLine line) {
        double[] box = OpeningPlan.box(line);
        return box[3] - box[1];
    }

    private static OutlineMm outline(DrawnLine line, double dx, double dy) {
        double[] xy = line.xy();
        for (int i = 0; i < xy.length; i += 2) {
            xy[i] += dx;
            xy[i + 1] += dy;
        }
        return OutlineMm.of(List.of(xy));
    }

    private static OpeningKind kind(OpeningKinds kind) {
        return switch (kind) {
            case RECTANGLE -> OpeningKind.RECTANGLE;
            case SEGMENTAL -> OpeningKind.SEGMENTAL_HEAD;
            case SEMICIRCULAR -> OpeningKind.ROUND_HEAD;
            case EQUILATERAL, POINTED -> OpeningKind.POINTED_HEAD;
            case THREE_CENTRED -> OpeningKind.THREE_CENTRED_HEAD;
            case OGEE -> OpeningKind.OGEE_HEAD;
            case ROUNDEL -> OpeningKind.ROUNDEL;
            case TREFOIL -> OpeningKind.TREFOIL;
            case QUATREFOIL -> OpeningKind.QUATREFOIL;
            case CINQUEFOIL -> OpeningKind.CINQUEFOIL;
        };
    }

    private static OpeningKinds kind(Opening opening) {
        return switch (opening.getKind()) {
            case RECTANGLE, SHAPED -> OpeningKinds.RECTANGLE;
            case SEGMENTAL_HEAD -> OpeningKinds.SEGMENTAL;
            case ROUND_HEAD -> OpeningKinds.SEMICIRCULAR;
            case POINTED_HEAD -> opening.getRiseMm() == null ? OpeningKinds.EQUILATERAL : OpeningKinds.POINTED;
            case THREE_CENTRED_HEAD -> OpeningKinds.THREE_CENTRED;
            case OGEE_HEAD -> OpeningKinds.OGEE;
            case ROUNDEL -> OpeningKinds.ROUNDEL;
            case TREFOIL -> OpeningKinds.TREFOIL;
            case QUATREFOIL -> OpeningKinds.QUATREFOIL;
            case CINQUEFOIL -> OpeningKinds.CINQUEFOIL;
        };
    }
}
