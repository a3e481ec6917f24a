package saddlebar.stencil.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import saddlebar.stencil.process.TonerSide;

/**
 * What must be taped or trimmed so that only stencils print. All that is open on the mesh outside the stencils lies in one of its areas: on a
 * sheet whose toner closes the mesh the margin that the printer cannot reach and the openings of the marks, on one whose toner opens it the marks.
 *
 * @param sheet    the sheet's name
 * @param areas    in the order of their kinds, captions in the order of the stencils
 * @param whatToDo a sentence for each kind that is there
 * @param notes    from where the plan is seen, what the signs beside the stencils mean, what lies beyond the sheet
 * @param cautions what can hurt while the sheet is brought to the mesh, and what is common practice; shown wherever the plan is shown
 */
public record TapePlan(String sheet, List<TapeArea> areas, Map<TapeArea.Kind, String> whatToDo, List<String> notes, List<String> cautions) {
    public TapePlan {
        areas = List.copyOf(areas);
        whatToDo = Collections.unmodifiableMap(new EnumMap<>(whatToDo));
        notes = List.copyOf(notes);
        cautions = List.copyOf(cautions);
    }

    public static TapePlan of(SheetPlan plan) throws IOException {
        return of(plan, SheetMarks.of(plan), new SheetWords());
    }

    static TapePlan of(SheetPlan plan, List<Mark> marks, SheetWords words) {
        List<TapeArea> areas = new ArrayList<>();
        SheetFrame frame = plan.frame();
        if (plan.process().printsWhite() && plan.marginMm() > 0) {
            edges(plan).forEach(edge -> areas.add(new TapeArea(TapeArea.Kind.EDGE, "", edge)));
        }
        areas.add(new TapeArea(TapeArea.Kind.HEAD, "", frame.headMm()));
        areas.add(new TapeArea(TapeArea.Kind.FOOT, "", frame.footMm()));
        marks.stream().filter(mark -> mark.kind() == Mark.Kind.CAPTION)
                .forEach(mark -> areas.add(new TapeArea(TapeArea.Kind.CAPTION, mark.words(), mark.boxMm())));
        Map<TapeArea.Kind, String> whatToDo = new EnumMap<>(TapeArea.Kind.class);
        areas.forEach(area -> whatToDo.computeIfAbsent(area.kind(), kind -> switch (kind) {
            case EDGE -> words.of("tape.edge");
            case HEAD -> words.of("tape.head");
            case FOOT -> words.of("tape.foot");
            case CAPTION -> words.of("tape.caption", String.valueOf(plan.stencils().size()));
        }));
        return new TapePlan(words.ofSheet(plan.label()), areas, whatToDo, notes(plan, words), cautions(plan, words));
    }

    private static List<RectMm> edges(SheetPlan plan) {
        double marginMm = plan.marginMm();
        double widthMm = plan.paper().widthMm();
        double heightMm = plan.paper().heightMm();
        return List.of(new RectMm(0, 0, widthMm, marginMm), new RectMm(0, heightMm - marginMm, widthMm, marginMm),
                new RectMm(0, marginMm, marginMm, heightMm - 2 * marginMm), new RectMm(widthMm - marginMm, marginMm, marginMm, heightMm - 2 * marginMm));
    }

    private static List<String> notes(SheetPlan plan, SheetWords words) {
        List<String> notes = new ArrayList<>();
        TonerSide other = plan.touches() == TonerSide.PRINT ? TonerSide.SQUEEGEE : TonerSide.PRINT;
        notes.add(words.of("tape.view", words.ofSide(other), words.ofSide(plan.touches())));
        if (!plan.stencils().isEmpty()) {
            notes.add(words.of("tape.signs"));
        }
        notes.add(words.of(plan.process().printsWhite() ? "tape.beyond" : "tape.beyondFilm"));
        return notes;
    }

    private static List<String> cautions(SheetPlan plan, SheetWords words) {
        List<String> cautions = new ArrayList<>(List.of(plan.process().caution()));
        words.ifAny("practice." + plan.process().key()).ifPresent(cautions::add);
        return cautions;
    }
}
