package saddlebar.cartoon.opening;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.units.Require;

/**
 * An opening divided by level bars into panels that can be made, carried and held. A bar stands on the springing line where a shape has one; below
 * and above, bars are spread evenly, as few as the rule allows. Then the fewest of them become divisions, as near to equal heights as the bars stand,
 * for which no panel has more perimeter than the limit.
 *
 * @param bars     from the top down
 * @param panels   from the top down
 * @param problems with their places
 * @param caution  to be shown beside the figures, always
 */
public record PanelDivision(List<SaddleBar> bars, List<StackedPanel> panels, List<Problem> problems, String caution) {
    /** Perimeter of a panel without reinforcement: 2 to 4 m in trade texts. */
    public static final double USUAL_PERIMETER_MM = 4000;
    /** A springing line nearer to crown or sill than this share of the rule needs no bar of its own. */
    private static final double NEAR = 0.25;

    public PanelDivision {
        bars = List.copyOf(bars);
        panels = List.copyOf(panels);
        problems = List.copyOf(problems);
        Require.text("caution", caution);
    }

    /**
     * @param outline         closed outline of the opening's panel size
     * @param springingMm     y of the springing line, 0 or outside of the outline if there is none
     * @param rule            how far apart bars may be
     * @param mostPerimeterMm limit of one panel, 500 to 20000
     * @throws saddlebar.model.problem.Refusal if the outline is not closed or crosses itself
     */
    public static PanelDivision of(DrawnLine outline, double springingMm, BarRule rule, double mostPerimeterMm) {
        Require.within("mostPerimeterMm", mostPerimeterMm, 500, 20_000);
        Polygon area = OutlineArea.of(outline);
        Envelope box = area.getEnvelopeInternal();
        List<Double> levels = levels(box.getMinY(), box.getMaxY(), springingMm, rule.mostMm());
        List<Problem> problems = new ArrayList<>();
        TreeSet<Integer> divisions = divisions(area, levels, mostPerimeterMm, problems);
        List<SaddleBar> bars = new ArrayList<>();
        for (int i = 1; i + 1 < levels.size(); i++) {
            bars.add(bar(area, levels.get(i), divisions.contains(i)));
        }
        return new PanelDivision(bars, panels(area, levels, divisions), problems, BarRule.CAUTION);
    }

    /** Heights of crown, bars and sill, from the top. */
    private static List<Double> levels(double topMm, double bottomMm, double springingMm, double mostMm) {
        List<Double> levels = new ArrayList<>();
        boolean springs = springingMm > topMm + NEAR * mostMm && springingMm < bottomMm - NEAR * mostMm;
        levels.add(topMm);
        if (springs && bottomMm - topMm > mostMm) {
            spread(levels, springingMm, mostMm);
        }
        spread(levels, bottomMm, mostMm);
        return levels;
    }

    private static void spread(List<Double> levels, double toMm, double mostMm) {
        double fromMm = levels.get(levels.size() - 1);
        int fields = (int) Math.max(1, Math.ceil((toMm - fromMm) / mostMm - 1e-9));
        for (int i = 1; i < fields; i++) {
            levels.add(fromMm + (toMm - fromMm) * i / fields);
        }
        levels.add(toMm);
    }

    private static TreeSet<Integer> divisions(Polygon area, List<Double> levels, double mostPerimeterMm, List<Problem> problems) {
        int fields = levels.size() - 1;
        for (int count = 1; count <= fields; count++) {
            TreeSet<Integer> chosen = evenly(levels, count);
            if (panels(area, levels, chosen).stream().allMatch(panel -> panel.perimeterMm() <= mostPerimeterMm)) {
                return chosen;
            }
        }
        TreeSet<Integer> all = evenly(levels, fields);
        StackedPanel worst = panels(area, levels, all).stream().max((a, b) -> Double.compare(a.perimeterMm(), b.perimeterMm())).orElseThrow();
        problems.add(Problem.at("panel-too-large", Severity.WARNING, area.getEnvelopeInternal().centre().x, (worst.topMm() + worst.bottomMm()) / 2,
                String.format(Locale.ROOT,
                        "a panel from bar to bar still has a perimeter of %.0f mm, over the limit of %.0f: "
                                + "plan a mullion or a frame, with a professional's design",
                        worst.perimeterMm(),
                        mostPerimeterMm)));
        return all;
    }

    /** Bars nearest to equal heights; each at most once. */
    private static TreeSet<Integer> evenly(List<Double> levels, int panels) {
        TreeSet<Integer> chosen = new TreeSet<>();
        double top = levels.get(0);
        double height = levels.get(levels.size() - 1) - top;
        for (int cut = 1; cut < panels; cut++) {
            double wanted = top + height * cut / panels;
            int best = -1;
            for (int i = 1; i + 1 < levels.size(); i++) {
                if (!chosen.contains(i) && (best < 0 || Math.abs(levels.get(i) - wanted) < Math.abs(levels.get(best) - wanted))) {
                    best = i;
                }
            }
            if (best > 0) {
                chosen.add(best);
            }
        }
        return chosen;
    }

    private static List<StackedPanel> panels(Polygon area, List<Double> levels, TreeSet<Integer> divisions) {
        List<StackedPanel> panels = new ArrayList<>();
        double top = levels.get(0);
        List<Integer> ends = new ArrayList<>(divisions);
        ends.add(levels.size() - 1);
        for (int end : ends) {
            double bottom = levels.get(end);
            Geometry part = OutlineArea.between(area, top, bottom);
            panels.add(new StackedPanel(top, bottom, part.getEnvelopeInternal().getWidth(), part.getArea(), part.getLength()));
            top = bottom;
        }
        return panels;
    }

    private static SaddleBar bar(Polygon area, double yMm, boolean division) {
        Envelope reach = OutlineArea.level(area, yMm).getEnvelopeInternal();
        return new SaddleBar(yMm, reach.getMinX(), reach.getMaxX(), division);
    }
}
