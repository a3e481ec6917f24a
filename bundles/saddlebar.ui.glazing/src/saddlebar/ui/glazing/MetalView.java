package saddlebar.ui.glazing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

import saddlebar.materials.cost.PanelList;
import saddlebar.materials.cost.ShoppingList;
import saddlebar.materials.metal.CutPattern;
import saddlebar.production.cost.CommissionCosts;

/** What metal each panel takes, how came and bar are cut from lengths, what panels weigh and who carries them. */
public final class MetalView extends CostPart {
    private static final Set<String> METAL = Set.of("foil", "came", "bar", "solder");

    private LineTable<PanelList.Row> panels;
    private LineTable<ShoppingList.Row> metal;
    private LineTable<Cut> cuts;

    /** One way to cut lengths of one stock. */
    private record Cut(String stock, CutPattern pattern) {
    }

    @Override
    void fill(Composite parent) {
        SashForm parts = new SashForm(parent, SWT.VERTICAL);
        GridDataFactory.fillDefaults().grab(true, true).hint(NARROW_PT, NARROW_PT).applyTo(parts);
        panels = new LineTable<>(parts, PanelList.Row.class).text(Messages.Metal_panel, 2, "W01 east", PanelList.Row::panel)
                .number(Messages.Metal_alike, 1, "00", row -> String.valueOf(row.alike()))
                .number(Messages.Metal_glass, 1, "00.00", row -> CostWords.number(row.weight().glassKg(), 2))
                .number(Messages.Metal_metal, 1, "00.00", row -> CostWords.number(row.weight().metalKg(), 2))
                .number(Messages.Metal_cement, 1, "00.00", row -> CostWords.number(row.weight().cementKg(), 2))
                .number(Messages.Metal_total, 1, "00.00", row -> CostWords.number(row.weight().totalKg(), 2))
                .number(Messages.Metal_index, 1, "0.00", row -> CostWords.number(row.liftingIndex(), 2))
                .text(Messages.Metal_handling, 4, "", PanelList.Row::handling);
        metal = new LineTable<>(parts, ShoppingList.Row.class).text(Messages.Metal_kind, 1, "solder", row -> kind(row.kind()))
                .text(Messages.Metal_what, 3, "foil 7/32 in 1.25 mil", ShoppingList.Row::what)
                .number(Messages.Metal_need, 2, "0000.0 m", row -> CostWords.number(row.need(), 1) + " " + row.unit())
                .text(Messages.Metal_packs, 2, "00 lengths", ShoppingList.Row::packs);
        cuts = new LineTable<>(parts, Cut.class).text(Messages.Metal_stock, 2, "came 6 mm", Cut::stock)
                .number(Messages.Metal_times, 1, "00 x", cut -> cut.pattern().times() + " \u00d7")
                .text(Messages.Metal_lengths, 5, "", cut -> cut.pattern().lengthsHmm().stream().map(hmm -> CostWords.number(hmm / 100.0, 1))
                        .collect(Collectors.joining(" + ")))
                .number(Messages.Metal_rest, 1, "0000.0", cut -> CostWords.number(cut.pattern().restHmm() / 100.0, 1));
    }

    private static String kind(String kind) {
        return switch (kind) {
            case "foil" -> Messages.Metal_foil;
            case "came" -> Messages.Metal_came;
            case "bar" -> Messages.Metal_bar;
            default -> Messages.Metal_solder;
        };
    }

    @Override
    String show(CommissionCosts now) {
        panels.show(now.panels().rows());
        metal.show(now.shopping().rows().stream().filter(row -> METAL.contains(row.kind())).toList());
        List<Cut> all = new ArrayList<>();
        StringBuilder bounds = new StringBuilder();
        for (PanelList.Cuts plan : now.panels().cuts()) {
            plan.plan().patterns().forEach(pattern -> all.add(new Cut(plan.stock(), pattern)));
            bounds.append(' ').append(NLS.bind(plan.plan().proven() ? Messages.Metal_proven : Messages.Metal_bound, new Object[] {plan.stock(),
                    String.valueOf(plan.plan().stocks()), CostWords.number(plan.plan().stockHmm() / 100.0, 0), String.valueOf(plan.plan().lowerBound())}));
        }
        cuts.show(all);
        double kg = now.panels().rows().stream().mapToDouble(row -> row.weight().totalKg() * row.alike()).sum();
        boolean lead = now.job().windows().stream().flatMap(window -> window.panels().stream()).anyMatch(panel -> panel.leaded() || panel.solder().lead());
        return now.panels().rows().isEmpty()
                ? Messages.Metal_none
                : NLS.bind(Messages.Metal_sum, CostWords.number(kg, 1)) + bounds + (lead ? " " + Messages.Metal_lead : "");
    }

    @Override
    void clear() {
        panels.show(List.of());
        metal.show(List.of());
        cuts.show(List.of());
    }
}
