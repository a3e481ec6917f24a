package saddlebar.stencil.wedge;

import java.util.ArrayList;
import java.util.List;

import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Require;
import saddlebar.stencil.sheet.RectMm;
import saddlebar.stencil.tone.WedgeReading;

/**
 * Where things stand on one printed wedge, mm from its top left: a frame of solid paint; within it one row of patches with bare glass around each,
 * their figures, and a bare window in which a step tablet of known densities is laid when the wedge is photographed.
 *
 * @param steps    nominal coverages, rising, at least 5, with 0 and 1
 * @param patchMm  side of a patch, 4 to 40
 * @param gapMm    bare glass between patches, 2 to 20
 * @param frameMm  width of the frame's sides, 1 to 10
 * @param windowMm height of the window for the known steps, 0 (none) to 60
 */
public record WedgeLayout(List<Double> steps, double patchMm, double gapMm, double frameMm, double windowMm) {
    private static final double FIGURES_MM = 4;

    public WedgeLayout {
        steps = List.copyOf(steps);
        Require.within("patchMm", patchMm, 4, 40);
        Require.within("gapMm", gapMm, 2, 20);
        Require.within("frameMm", frameMm, 1, 10);
        Require.within("windowMm", windowMm, 0, 60);
        if (steps.size() < 5 || steps.get(0) != 0 || steps.get(steps.size() - 1) != 1) {
            throw new Refusal("steps", "a wedge needs five steps at least, the bare glass (0) first and the solid (1) last", "add what is missing");
        }
        for (int i = 1; i < steps.size(); i++) {
            if (!(steps.get(i) > steps.get(i - 1))) {
                throw new Refusal("steps", "step " + steps.get(i) + " follows " + steps.get(i - 1), "let them rise from 0 to 1");
            }
        }
    }

    /** The usual steps in patches of 8 mm with a window of 10 mm: fits across letter and A4. */
    public static WedgeLayout usual() {
        return new WedgeLayout(WedgeReading.STEPS, 8, 4, 2, 10);
    }

    public double widthMm() {
        return 2 * frameMm + gapMm + steps.size() * (patchMm + gapMm);
    }

    public double heightMm() {
        return window().bottomMm() + gapMm + frameMm;
    }

    public RectMm patch(int step) {
        return new RectMm(frameMm + gapMm + step * (patchMm + gapMm), frameMm + gapMm, patchMm, patchMm);
    }

    /** Where the figures of a patch stand. */
    public RectMm figures(int step) {
        RectMm patch = patch(step);
        return new RectMm(patch.xMm(), patch.bottomMm() + 0.7, patchMm, FIGURES_MM - 1);
    }

    /** Where one of the known steps lies: side by side, the first against the window's left end. */
    public RectMm known(int knownSteps, double knownStepMm, int step) {
        if (knownSteps * knownStepMm > window().widthMm() + 1e-9) {
            throw new Refusal("known steps", knownSteps + " steps of " + knownStepMm + " mm are longer than the window of " + window().widthMm() + " mm",
                    "leave the last ones out");
        }
        return new RectMm(window().xMm() + step * knownStepMm, window().yMm(), knownStepMm, windowMm);
    }

    /** The bare window below the patches. */
    public RectMm window() {
        double widthMm = steps.size() * (patchMm + gapMm) - gapMm;
        return new RectMm(frameMm + gapMm, frameMm + gapMm + patchMm + FIGURES_MM, widthMm, windowMm);
    }

    /** Boxes of bare glass all over the wedge, from which the light of the box is told. */
    List<RectMm> bare() {
        List<RectMm> boxes = new ArrayList<>();
        double sideMm = gapMm / 2;
        for (int step = 0; step < steps.size(); step++) {
            RectMm patch = patch(step);
            double middle = patch.xMm() + patchMm / 2 - sideMm / 2;
            boxes.add(new RectMm(middle, frameMm + gapMm / 4, sideMm, sideMm));
            boxes.add(new RectMm(middle, heightMm() - frameMm - gapMm * 3 / 4, sideMm, sideMm));
            for (int part = 0; part < 3; part++) {
                boxes.add(new RectMm(patch.xMm() - gapMm * 3 / 4, patch.yMm() + part * patchMm / 3, sideMm, sideMm));
            }
        }
        return boxes;
    }
}
