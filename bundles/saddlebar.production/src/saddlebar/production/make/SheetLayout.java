package saddlebar.production.make;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import saddlebar.model.commission.TonerSide;
import saddlebar.model.work.Work;
import saddlebar.nesting.Effort;
import saddlebar.nesting.NestItem;
import saddlebar.nesting.Nested;
import saddlebar.nesting.Placement;
import saddlebar.nesting.SheetArea;
import saddlebar.nesting.SheetNesting;
import saddlebar.nesting.Turns;
import saddlebar.production.facts.CommissionFacts;
import saddlebar.production.facts.PaperFacts;
import saddlebar.production.facts.RecipeFacts;
import saddlebar.stencil.sheet.Paper;
import saddlebar.stencil.sheet.RectMm;
import saddlebar.stencil.sheet.SheetFrame;

/**
 * Gangs stencils on sheets: those that go the same way to the mesh together, on as few sheets as can be found. Sheets are cut apart before they are
 * fused or exposed, so stencils of different paints may share one. The search counts rounds and not seconds: the same stencils lie alike on every
 * machine.
 */
final class SheetLayout {
    private static final int ROUNDS = 60;

    private SheetLayout() {
    }

    private record Way(String processKey, TonerSide tonerSide, double dpi) {
        static Way of(PlannedLayerStencil stencil) {
            RecipeFacts recipe = stencil.facts().recipe();
            return new Way(recipe.processKey(), recipe.tonerSide(), recipe.screening().dpi());
        }
    }

    static List<LaidSheet> lay(CommissionFacts commission, List<PlannedLayerStencil> stencils, Work work) {
        Map<Way, List<PlannedLayerStencil>> ways = new LinkedHashMap<>();
        stencils.forEach(stencil -> ways.computeIfAbsent(Way.of(stencil), way -> new ArrayList<>()).add(stencil));
        List<LaidSheet> sheets = new ArrayList<>();
        if (commission.papers().isEmpty()) {
            return sheets;
        }
        ways.forEach((way, ofWay) -> sheets.addAll(lay(commission, way, ofWay, work)));
        List<LaidSheet> numbered = new ArrayList<>();
        for (LaidSheet sheet : sheets) {
            numbered.add(new LaidSheet(numbered.size() + 1, sheets.size(), sheet.paper(), sheet.processKey(), sheet.tonerSide(), sheet.dpi(),
                    sheet.stencils()));
        }
        return numbered;
    }

    private static List<LaidSheet> lay(CommissionFacts commission, Way way, List<PlannedLayerStencil> stencils, Work work) {
        Map<SheetArea, PaperFacts> papers = new LinkedHashMap<>();
        for (PaperFacts paper : commission.papers()) {
            RectMm usable = usable(paper);
            papers.putIfAbsent(new SheetArea(usable.widthMm(), usable.heightMm()), paper);
        }
        Map<String, PlannedLayerStencil> byLabel = new LinkedHashMap<>();
        stencils.forEach(stencil -> byLabel.put(stencil.label(), stencil));
        List<NestItem> items = stencils.stream()
                .map(s -> NestItem.rectangle(s.label(), s.place().widthMm(), s.place().heightMm(), 1, Turns.QUARTER)).toList();
        double gapMm = Math.max(commission.sheetGapMm(), SheetFrame.CAPTION_MM);
        Nested nested = SheetNesting.place(items, List.copyOf(papers.keySet()), gapMm, Effort.rounds(ROUNDS), work.part(0, SheetNesting.WORK_UNITS),
                better -> {});
        List<LaidSheet> sheets = new ArrayList<>();
        for (int sheet = 0; sheet < nested.sheets(); sheet++) {
            PaperFacts paper = papers.get(nested.areas().get(sheet));
            RectMm usable = usable(paper);
            int wanted = sheet;
            List<LaidStencil> laid = nested.placements().stream().filter(p -> p.sheet() == wanted).map(p -> laid(p, byLabel.get(p.id()), usable))
                    .sorted(Comparator.comparingDouble(LaidStencil::yMm).thenComparingDouble(LaidStencil::xMm)).toList();
            sheets.add(new LaidSheet(1, 1, paper, way.processKey(), way.tonerSide(), way.dpi(), laid));
        }
        return sheets;
    }

    static RectMm usable(PaperFacts paper) {
        return SheetFrame.of(new Paper(paper.name(), paper.widthMm(), paper.heightMm()), paper.marginMm()).usableMm();
    }

    /** A placement turns about the rectangle's own corner; a sheet wants the top left of where it comes to lie. */
    private static LaidStencil laid(Placement p, PlannedLayerStencil stencil, RectMm usable) {
        double width = stencil.place().widthMm();
        double height = stencil.place().heightMm();
        int turns = (int) Math.round(p.rotationDeg() / 90) % 4;
        double left = switch (turns) {
            case 1 -> p.xMm() - height;
            case 2 -> p.xMm() - width;
            default -> p.xMm();
        };
        double top = switch (turns) {
            case 2 -> p.yMm() - height;
            case 3 -> p.yMm() - width;
            default -> p.yMm();
        };
        return new LaidStencil(stencil, usable.xMm() + left, usable.yMm() + top, turns);
    }
}
