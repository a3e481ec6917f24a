package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.production.pieces.NumberOrder;
import saddlebar.production.pieces.PieceMarks;
import saddlebar.production.pieces.PieceNumbering;
import saddlebar.production.pieces.RecordedPieces;

/** Numbers of pieces given anew: in an order, or by hand. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "number", sortOptions = false,
        description = "Numbers the pieces of a window anew. Locked pieces, pieces numbered by hand and pieces that records name keep their numbers.",
        footer = {"", "Example: saddlebar number chapel-door W01 --by glass"})
public final class NumberCommand implements BenchCommand {
    @Parameters(index = "0", paramLabel = "C", description = "Folder of the commission.")
    private Path folder;

    @Parameters(index = "1", paramLabel = "WINDOW", description = "Name of the window, such as W01.")
    private String windowName;

    @Option(names = "--by", paramLabel = "ORDER",
            description = "reading (rows from the top), columns, size (largest first), glass (what is cut from one glass in a row).")
    private String by;

    @Option(names = "--panel", paramLabel = "P", description = "Only this panel of a window that has several.")
    private String panelName;

    @Option(names = "--through", description = "Let the numbers run through all panels; else each panel begins with 1.")
    private boolean through;

    @Option(names = "--piece", paramLabel = "OLD=NEW", split = ",", description = "Give these pieces numbers by hand; they keep them.")
    private List<String> byHand = List.of();

    @Mixin
    private CommonOptions common;

    /** The JSON document. */
    record Answer(String window, List<Change> changed, List<Kept> kept) {
    }

    /** A piece that got another number. */
    record Change(String panel, int before, int now) {
    }

    /** A piece that keeps its number, and why. */
    record Kept(String panel, int number, String because) {
    }

    @Override
    public Integer call() throws IOException {
        NumberOrder order = by == null
                ? null
                : NumberOrder.ofWord(by.strip().toLowerCase(Locale.ROOT))
                        .orElseThrow(() -> common.wrong("--by takes reading, columns, size or glass, not '" + by + "'."));
        if (order == null && byHand.isEmpty()) {
            throw common.wrong("Give --by ORDER, or --piece OLD=NEW.");
        }
        List<int[]> pairs = byHand.stream().map(this::pair).toList();
        try (CommissionFolder commission = CommissionFolder.open(folder, Access.WRITE)) {
            List<Panel> panels = panels(WindowOf.named(commission, windowName), panelName);
            Set<String> recorded = RecordedPieces.ids(commission);
            List<Change> changed = new ArrayList<>();
            List<Kept> kept = new ArrayList<>();
            for (int[] pair : pairs) {
                List<Piece> found = PieceMarks.pieces(panels, List.of(String.valueOf(pair[0])));
                if (found.size() > 1) {
                    throw new Refusal("piece " + pair[0], "several panels have a piece of this number", "name the panel with --panel");
                }
                PieceNumbering.byHand(found.get(0), pair[1], recorded);
                changed.add(new Change(name(found.get(0)), pair[0], pair[1]));
            }
            if (order != null) {
                PieceNumbering plan = PieceNumbering.plan(panels, order, through, recorded);
                plan.changed().forEach((piece, number) -> changed.add(new Change(name(piece), piece.getNumber(), number)));
                plan.kept().forEach((piece, reason) -> kept.add(new Kept(name(piece), piece.getNumber(), reason.words())));
                plan.enter();
            }
            commission.save();
            kept.sort(Comparator.comparing(Kept::panel).thenComparingInt(Kept::number));
            common.answer(new Answer(windowName, changed, kept), words(changed, kept));
            return DONE;
        }
    }

    private int[] pair(String words) {
        if (!words.strip().matches("\\d{1,6}=\\d{1,6}")) {
            throw common.wrong("--piece takes OLD=NEW such as 12=30, not '" + words + "'.");
        }
        String[] sides = words.strip().split("=");
        return new int[] {Integer.parseInt(sides[0]), Integer.parseInt(sides[1])};
    }

    static List<Panel> panels(Window window, String panelName) {
        List<Panel> panels = window.getPanels().stream().filter(panel -> panelName == null || panelName.equals(panel.getName())).toList();
        if (panels.isEmpty()) {
            throw new Refusal(window.getName(), panelName == null ? "it has no panel yet" : "it has no panel " + panelName, "bring its artwork first");
        }
        return panels;
    }

    private static String name(Piece piece) {
        return piece.getPanel().getName() == null ? "" : piece.getPanel().getName();
    }

    private static List<String> words(List<Change> changed, List<Kept> kept) {
        List<String> words = new ArrayList<>();
        words.add(changed.isEmpty() ? "No number changes." : "Other numbers: " + changed.size() + " (cards and stencils follow when they are made)");
        changed.forEach(change -> words.add("  " + change.before() + " is now " + change.now()));
        kept.forEach(piece -> words.add("  " + piece.number() + " stays: it " + piece.because()));
        return words;
    }
}
