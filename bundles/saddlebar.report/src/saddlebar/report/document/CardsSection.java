package saddlebar.report.document;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.osgi.service.component.annotations.Component;

import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.FiringSchedule;
import saddlebar.model.commission.FiringSegment;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Placement;
import saddlebar.model.commission.ProcessSetting;
import saddlebar.model.commission.Sheet;
import saddlebar.model.commission.Stencil;
import saddlebar.model.commission.StencilPiece;
import saddlebar.model.commission.Window;
import saddlebar.report.document.Leaf.Column;

/** A card for each act at the bench: what, with which settings, with its caution, room to write, and a code that a phone reads. */
@Component(service = ReportSection.class)
public final class CardsSection implements ReportSection {
    @Override
    public Set<ReportKind> kinds() {
        return Set.of(ReportKind.WORKSHOP);
    }

    @Override
    public int order() {
        return 300;
    }

    @Override
    public boolean speaks(ReportMatter matter) {
        return !matter.windows().isEmpty();
    }

    @Override
    public void write(ReportMatter matter, Leaf leaf) {
        Words words = leaf.words();
        String commission = Leaf.text(matter.commission().getNumber()).isEmpty() ? Reports.title(matter, words) : Leaf.text(matter.commission().getNumber());
        leaf.headingOnNewPage(words.of("cards"));
        leaf.paragraph(words.of("cards.lead"));
        matter.commission().getSheets().stream().sorted(Comparator.comparingInt(Sheet::getNumber)).forEach(sheet -> fuse(matter, leaf, commission, sheet));
        Map<String, Paint> paints = new TreeMap<>();
        for (Window window : matter.windows()) {
            for (Panel panel : window.getPanels()) {
                panel.getLayers().stream().filter(layer -> layer.getPaint() != null)
                        .forEach(layer -> paints.put(Leaf.text(layer.getPaint().getName()), layer.getPaint()));
            }
        }
        paints.values().forEach(paint -> mix(leaf, commission, paint));
        Map<String, DesignLayer> firings = new TreeMap<>();
        for (Window window : matter.windows()) {
            for (Panel panel : window.getPanels()) {
                for (DesignLayer layer : panel.getLayers()) {
                    if (layer.getRole() != LayerRole.CUTLINE && !layer.getStencils().isEmpty()) {
                        pull(leaf, commission, window, layer);
                    }
                    if (layer.getPaint() != null) {
                        firings.putIfAbsent(String.format(java.util.Locale.ROOT, "%03d %s", layer.getFiringOrder(),
                                layer.getSchedule() == null ? "" : layer.getSchedule().getName()), layer);
                    }
                }
            }
        }
        firings.values().forEach(layer -> kiln(leaf, commission, layer));
        matter.panels().forEach(panel -> glaze(leaf, commission, panel));
    }

    private static Picture code(String... pairs) {
        Map<String, String> values = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            values.put(pairs[i], pairs[i + 1].replace('\n', ' '));
        }
        return new CardCode(values).picture();
    }

    private static void fuse(ReportMatter matter, Leaf leaf, String commission, Sheet sheet) {
        Words words = leaf.words();
        leaf.card(words.of("sheet.n", sheet.getNumber()), words.of("card.fuse"),
                code("card", "fuse", "commission", commission, "sheet", String.valueOf(sheet.getNumber())));
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(words.of("paper"), Leaf.text(sheet.getPaper()) + ", " + words.size(sheet.getWidthMm(), sheet.getHeightMm())));
        rows.add(List.of(words.of("process"), words.known("process.", Leaf.text(sheet.getProcessKey()))));
        ProcessSetting setting = matter.studio().getProcesses().stream().filter(process -> Leaf.text(sheet.getProcessKey()).equals(process.getProcessKey()))
                .findFirst().orElse(null);
        if (setting != null && setting.getPressC() > 0) {
            rows.add(List.of(words.of("press"), words.of("press.words", setting.getPressC(), setting.getPressMin(), setting.getCoolMin())));
        }
        rows.add(List.of(words.of("stencils"), String.join(", ",
                sheet.getPlacements().stream().map(Placement::getStencil).filter(stencil -> stencil != null).map(PieceWords::stencil).toList())));
        leaf.facts(rows);
        leaf.caution(words.of("caution.fuse"));
        leaf.blanks(List.of(words.of("frame"), words.of("day"), words.of("who"))).endCard();
    }

    private static void mix(Leaf leaf, String commission, Paint paint) {
        Words words = leaf.words();
        leaf.card(Leaf.text(paint.getName()), words.of("card.mix"), code("card", "mix", "commission", commission, "paint", Leaf.text(paint.getName())));
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(words.of("family"), Leaf.text(paint.getFamily())));
        rows.add(List.of(words.of("powder.to.medium"), words.number(paint.getPowderToMedium(), 1) + " : 1"));
        rows.add(List.of(words.of("medium"), paint.getMedium() == null ? "\u2013" : Leaf.text(paint.getMedium().getName())));
        if (paint.getMaturingToC() > 0) {
            rows.add(List.of(words.of("matures"), words.number(paint.getMaturingFromC(), 0) + " \u2013 " + words.number(paint.getMaturingToC(), 0) + " °C"));
        }
        rows.add(List.of(words.of("holds"), paint.isContainsLead() || paint.isContainsCadmium()
                ? String.join(", ",
                        java.util.stream.Stream.of(paint.isContainsLead() ? words.of("lead") : "", paint.isContainsCadmium() ? words.of("cadmium") : "")
                                .filter(s -> !s.isEmpty()).toList())
                : words.of("no.lead")));
        leaf.facts(rows);
        leaf.caution(words.of("caution.mix"));
        leaf.blanks(List.of(words.of("lot"), words.of("powder.g"), words.of("medium.g"), words.of("day"), words.of("who"))).endCard();
    }

    private static void pull(Leaf leaf, String commission, Window window, DesignLayer layer) {
        Words words = leaf.words();
        leaf.card(window.getName() + "  " + Leaf.text(layer.getName()), words.of("card.pull"),
                code("card", "pull", "commission", commission, "window", Leaf.text(window.getName()), "layer", Leaf.text(layer.getName())));
        leaf.facts(List.of(List.of(words.of("paint"), layer.getPaint() == null ? "\u2013" : Leaf.text(layer.getPaint().getName())),
                List.of(words.of("face"), words.known("face.", layer.getFace().getLiteral())),
                List.of(words.of("firing"), words.number(layer.getFiringOrder(), 0))));
        List<List<String>> rows = new ArrayList<>();
        for (Stencil stencil : layer.getStencils()) {
            if (!stencil.isRetired()) {
                rows.add(List.of(String.valueOf(stencil.getNumber()), stencil.getFrame() == null ? "\u2013" : Leaf.text(stencil.getFrame().getName()),
                        words.size(stencil.getWidthMm(), stencil.getHeightMm()), String.valueOf(Math.max(1, stencil.getPrints())),
                        String.join(", ", stencil.getPieces().stream().map(StencilPiece::getPiece).filter(piece -> piece != null)
                                .map(piece -> String.valueOf(piece.getNumber())).toList())));
            }
        }
        leaf.table(List.of(words.of("stencil"), words.of("frame"), words.of("size"), words.of("pulls"), words.of("pieces")),
                List.of(Column.KEY, Column.TEXT, Column.NARROW, Column.NUMBER, Column.TEXT), rows);
        leaf.caution(words.of("caution.pull"));
        leaf.blanks(List.of(words.of("mix"), words.of("humidity"), words.of("day"), words.of("who"))).endCard();
    }

    private static void kiln(Leaf leaf, String commission, DesignLayer layer) {
        Words words = leaf.words();
        FiringSchedule schedule = layer.getSchedule();
        String name = schedule == null
                ? words.of("firing.n", layer.getFiringOrder())
                : words.of("firing.n", layer.getFiringOrder()) + ": " + Leaf.text(schedule.getName());
        leaf.card(name, words.of("card.kiln"), code("card", "fire", "commission", commission, "firing", String.valueOf(layer.getFiringOrder())));
        if (schedule == null) {
            leaf.paragraph(words.of("no.schedule"));
        } else {
            List<List<String>> rows = new ArrayList<>();
            for (FiringSegment segment : schedule.getSegments()) {
                rows.add(List.of(Leaf.text(segment.getName()),
                        segment.getRateKPerH() == null || segment.getRateKPerH() == 0 ? words.of("full") : words.number(segment.getRateKPerH(), 0),
                        words.number(segment.getTargetC(), 0), words.number(segment.getSoakMin(), 0), segment.isVent() ? words.of("vent.open") : ""));
            }
            leaf.table(List.of(words.of("segment"), words.of("rate"), words.of("target"), words.of("soak"), words.of("vent")),
                    List.of(Column.TEXT, Column.NUMBER, Column.NUMBER, Column.NUMBER, Column.TEXT), rows);
        }
        leaf.caution(words.of("caution.kiln"));
        leaf.blanks(List.of(words.of("kiln"), words.of("peak"), words.of("day"), words.of("who"))).endCard();
    }

    private static void glaze(Leaf leaf, String commission, ReportMatter.PanelPart panel) {
        Words words = leaf.words();
        leaf.card(panel.label(), words.of("card.glaze"), code("card", "glaze", "commission", commission, "panel", panel.label()));
        leaf.facts(List.of(List.of(words.of("panel.size"), words.size(panel.widthMm(), panel.heightMm())),
                List.of(words.of("joined"), words.of(panel.leaded() ? "leaded" : "foiled")),
                List.of(words.of(panel.leaded() ? "came.length" : "foil.length"), words.number(panel.metalM(), 1) + " m"),
                List.of(words.of("weight"), words.number(panel.massKg(), 1) + " kg, " + words.known("handling.", panel.handling())),
                List.of(words.of("bars"),
                        panel.barsMm().isEmpty()
                                ? words.of("no.bars")
                                : words.of("bars.at", String.join(", ", panel.barsMm().stream().map(mm -> words.number(mm, 0)).toList())))));
        leaf.caution(words.of("caution.glaze"));
        leaf.caution(words.of("caution.building"));
        leaf.blanks(List.of(words.of("measured.kg"), words.of("day"), words.of("who"))).endCard();
    }
}
