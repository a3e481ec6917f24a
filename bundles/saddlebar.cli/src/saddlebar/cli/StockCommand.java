package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import saddlebar.model.art.OutlineMm;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.StockSheet;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.nesting.Effort;
import saddlebar.production.stock.GlassLaying;
import saddlebar.production.stock.LaidGlass;
import saddlebar.production.stock.LayoutDrawings;
import saddlebar.production.stock.LayoutFile;
import saddlebar.production.stock.ShelfGlass;
import saddlebar.production.stock.ShelfSheet;
import saddlebar.production.stock.StockBook;
import saddlebar.production.stock.WantedPiece;

/** The shelf of glass: what is there, and pieces laid on it. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "stock", sortOptions = false,
        description = {"Sheets and off-cuts of glass, and pieces laid on them.",
                "list: what is on the shelf. add: sheets come in. flaw: a place on a sheet to keep clear.",
                "lay: pieces of the windows laid on sheets, off-cuts first, around flaws and along the grain; a drawing a sheet. take: the sheets laid last are cut up, what is left goes back on the shelf."},
        footer = {"", "Cutting and carrying glass: gloves, eyes and shoes; carry sheets upright.", "",
                "Example: saddlebar stock lay demo-projects/first-panel --buy --try"})
public final class StockCommand implements BenchCommand {
    @Parameters(index = "0", paramLabel = "DEED", description = "list, add, flaw, lay or take.")
    private String deed;

    @Parameters(index = "1", paramLabel = "C", description = "Folder of the commission whose studio it is.")
    private Path folder;

    @Parameters(index = "2..*", paramLabel = "NAME",
            description = "lay: windows, all if none is named. flaw: the sheet. take: sheets, all that were laid if none is named.")
    private List<String> names = List.of();

    @Option(names = "--glass", paramLabel = "G", description = "add: name of the glass. list: only this one.")
    private String glass;

    @Option(names = "--size", paramLabel = "WxH", description = "add: size in mm; as it is bought if not given.")
    private String size;

    @Option(names = "--name", paramLabel = "N", defaultValue = "", description = "add: what is chalked on it; the next free one if not given.")
    private String name;

    @Option(names = "--count", paramLabel = "N", defaultValue = "1", description = "add: so many alike; 1 if not given.")
    private int count;

    @Option(names = "--grain", paramLabel = "WAY", defaultValue = "height",
            description = "add: width or height, along which the grain runs; height if not given.")
    private String grain;

    @Option(names = "--offcut", description = "add: it is left of another sheet.")
    private boolean offcut;

    @Option(names = "--kind", paramLabel = "K", defaultValue = "flaw", description = "flaw: bubble, scratch, stone, chip, or another word.")
    private String kind;

    @Option(names = "--at", paramLabel = "X,Y", description = "flaw: its middle in mm from the sheet's top left, with --radius.")
    private String at;

    @Option(names = "--radius", paramLabel = "R", description = "flaw: how far around it to keep clear, in mm.")
    private Double radius;

    @Option(names = "--box", paramLabel = "X,Y,W,H", description = "flaw: a rectangle instead.")
    private String box;

    @Option(names = "--gap-mm", paramLabel = "G", description = "lay: between pieces, and from flaws; 3 if not given.")
    private Double gapMm;

    @Option(names = "--edge-mm", paramLabel = "E", description = "lay: kept off the edge of a sheet; 5 if not given.")
    private Double edgeMm;

    @Option(names = "--buy", description = "lay: what has no room goes on sheets to be bought.")
    private boolean buy;

    @Option(names = "--orders", paramLabel = "N", defaultValue = "20",
            description = "lay: orders tried a glass; 20 if not given. The same number gives the same layout.")
    private int orders;

    @Option(names = "--out", paramLabel = "DIR", description = "lay: folder for the drawings; made/glass of the commission if not given.")
    private Path out;

    @Option(names = "--try", description = "lay: only say how it would lie; nothing is written.")
    private boolean tryOnly;

    @Mixin
    private CommonOptions common;

    record SheetRow(String glass, String name, double widthMm, double heightMm, boolean offcut, String grain, int flaws, boolean toBuy, List<String> pieces,
            Double use, List<LaidGlass.Offcut> offcuts) {
        static SheetRow of(String glass, ShelfSheet sheet) {
            return new SheetRow(glass, sheet.name(), sheet.widthMm(), sheet.heightMm(), sheet.offcut(), sheet.alongWidth() ? "width" : "height",
                    sheet.flaws().size(), false, List.of(), null, List.of());
        }

        static SheetRow of(LaidGlass laid) {
            ShelfSheet sheet = laid.sheet();
            return new SheetRow(laid.glass(), sheet.name(), sheet.widthMm(), sheet.heightMm(), sheet.offcut(), sheet.alongWidth() ? "width" : "height",
                    sheet.flaws().size(), laid.toBuy(), laid.pieces().stream().map(piece -> piece.label()).toList(), laid.use(), laid.offcuts());
        }

        String words() {
            return String.format(Locale.ROOT, "%s: %s, %.0f x %.0f mm%s%s%s%s", glass, name, widthMm, heightMm, offcut ? ", off-cut" : "",
                    flaws == 0 ? "" : ", " + flaws + (flaws == 1 ? " flaw" : " flaws"),
                    use == null ? ", grain along its " + grain : String.format(Locale.ROOT, ", %d pieces, %.0f %% used", pieces.size(), 100 * use),
                    offcuts.isEmpty()
                            ? ""
                            : ", keeps " + String.join(" and ",
                                    offcuts.stream().map(o -> String.format(Locale.ROOT, "%.0f x %.0f", o.widthMm(), o.heightMm())).toList()));
        }
    }

    /** The JSON document. */
    record Answer(String deed, List<SheetRow> sheets, List<String> leftOut, Map<String, Double> yields, List<String> files) {
    }

    @Override
    public Integer call() throws IOException {
        return switch (deed) {
            case "list" -> list();
            case "add" -> add();
            case "flaw" -> flaw();
            case "lay" -> lay();
            case "take" -> take();
            default -> throw common.wrong("stock takes list, add, flaw, lay or take, not '" + deed + "'.");
        };
    }

    private int list() throws IOException {
        try (CommissionFolder commission = CommissionFolder.open(folder, Access.READ)) {
            StockBook book = new StockBook(commission.studio());
            List<ShelfGlass> shelf = glass == null ? book.shelf() : List.of(ShelfGlass.of(book.glass(glass)));
            List<SheetRow> rows = new ArrayList<>();
            shelf.forEach(each -> each.sheets().forEach(sheet -> rows.add(SheetRow.of(each.name(), sheet))));
            List<String> words = new ArrayList<>(rows.stream().map(SheetRow::words).toList());
            if (rows.isEmpty()) {
                words.add("No sheet is on the shelf; add one with stock add --glass NAME.");
            }
            common.answer(new Answer(deed, rows, List.of(), Map.of(), List.of()), words);
            return DONE;
        }
    }

    private int add() throws IOException {
        if (glass == null) {
            throw common.wrong("Which glass? Give --glass NAME.");
        }
        if (count < 1 || count > 1000) {
            throw common.wrong("--count takes 1 to 1000, not " + count + ".");
        }
        if (count > 1 && !name.isEmpty()) {
            throw common.wrong("Several sheets cannot have one name: leave --name or --count out.");
        }
        if (!grain.equals("width") && !grain.equals("height")) {
            throw common.wrong("--grain takes width or height, not '" + grain + "'.");
        }
        try (CommissionFolder commission = CommissionFolder.open(folder, Access.WRITE)) {
            StockBook book = new StockBook(commission.studio());
            GlassStock stock = book.glass(glass);
            double[] sides = size == null ? new double[] {stock.getSheetWidthMm(), stock.getSheetHeightMm()} : numbers("--size", size, "x", 2);
            List<SheetRow> rows = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                StockSheet sheet = book.add(stock, name, sides[0], sides[1], Optional.empty(), grain.equals("width"), offcut);
                rows.add(new SheetRow(glass, sheet.getName(), sides[0], sides[1], offcut, grain, 0, false, List.of(), null, List.of()));
            }
            commission.save();
            common.answer(new Answer(deed, rows, List.of(), Map.of(), List.of()), rows.stream().map(SheetRow::words).toList());
            return DONE;
        }
    }

    private int flaw() throws IOException {
        if (names.size() != 1) {
            throw common.wrong("Name one sheet: stock flaw C SHEET.");
        }
        if ((at == null || radius == null) == (box == null)) {
            throw common.wrong("Where is the flaw? Give --at X,Y and --radius R, or --box X,Y,W,H.");
        }
        OutlineMm outline;
        if (box != null) {
            double[] sides = numbers("--box", box, ",", 4);
            if (!(sides[2] > 0 && sides[3] > 0)) {
                throw common.wrong("--box takes a width and a height above 0, not '" + box + "'.");
            }
            outline = OutlineMm.rectangle(sides[0], sides[1], sides[2], sides[3]);
        } else {
            double[] middle = numbers("--at", at, ",", 2);
            if (!(radius > 0 && radius <= 5000)) {
                throw common.wrong("--radius takes a length above 0 and up to 5000 mm, not " + radius + ".");
            }
            outline = StockBook.round(middle[0], middle[1], radius);
        }
        try (CommissionFolder commission = CommissionFolder.open(folder, Access.WRITE)) {
            StockBook book = new StockBook(commission.studio());
            StockSheet sheet = book.sheet(names.get(0));
            book.flaw(sheet, kind, outline);
            commission.save();
            SheetRow row = new SheetRow(sheet.getGlass().getName(), sheet.getName(), sheet.getWidthMm(), sheet.getHeightMm(), sheet.isOffcut(),
                    sheet.getGrainDeg() == 0 ? "width" : "height", sheet.getFlaws().size(), false, List.of(), null, List.of());
            common.answer(new Answer(deed, List.of(row), List.of(), Map.of(), List.of()), List.of(row.words()));
            return DONE;
        }
    }

    private int lay() throws IOException {
        if (orders < 0 || orders > 100_000) {
            throw common.wrong("--orders takes 0 to 100000, not " + orders + ".");
        }
        double gap = within("--gap-mm", gapMm == null ? GlassLaying.USUAL_GAP_MM : gapMm);
        double edge = within("--edge-mm", edgeMm == null ? GlassLaying.USUAL_EDGE_MM : edgeMm);
        try (CommissionFolder commission = CommissionFolder.open(folder, tryOnly ? Access.READ : Access.WRITE)) {
            List<Window> windows = new ArrayList<>();
            for (Window window : commission.windows()) {
                if (names.isEmpty() || names.contains(window.getName())) {
                    windows.add(window);
                }
            }
            for (String wanted : names) {
                if (windows.stream().noneMatch(window -> wanted.equals(window.getName()))) {
                    throw new Refusal(wanted, "the commission has no window of this name", "take one of " + String.join(", ", commission.windowNames()));
                }
            }
            List<WantedPiece> pieces = StockBook.wanted(windows);
            if (pieces.isEmpty()) {
                throw new Refusal(commission.commission().getTitle(), "no piece has a glass yet", "make the pieces and choose their glass first");
            }
            int glasses = (int) pieces.stream().map(WantedPiece::glass).distinct().count();
            GlassLaying.Result result = new GlassLaying(gap, edge, buy, Effort.rounds(orders)).lay(pieces, new StockBook(commission.studio()).shelf(),
                    common.work((long) glasses * GlassLaying.WORK_UNITS));
            List<String> files = new ArrayList<>();
            if (!tryOnly) {
                LayoutFile.write(commission.path(), result);
                Path into = out == null ? commission.path().resolve("made").resolve(LayoutFile.FOLDER) : out;
                LayoutDrawings.write(result.sheets(), into, common.work(result.sheets().size())).forEach(file -> files.add(file.toString()));
            }
            List<SheetRow> rows = result.sheets().stream().map(SheetRow::of).toList();
            List<String> left = result.leftOut().stream().map(WantedPiece::label).toList();
            List<String> words = new ArrayList<>(rows.stream().map(SheetRow::words).toList());
            result.yields().forEach(
                    (kindOfGlass, yield) -> words.add(String.format(Locale.ROOT, "%s: %.0f %% of what is taken becomes pieces", kindOfGlass, 100 * yield)));
            if (!left.isEmpty()) {
                words.add("No room for " + String.join(", ", left) + ": add sheets, or give --buy.");
            }
            common.answer(new Answer(deed, rows, left, result.yields(), files), words);
            return left.isEmpty() ? DONE : ATTENTION;
        }
    }

    private int take() throws IOException {
        try (CommissionFolder commission = CommissionFolder.open(folder, Access.WRITE)) {
            List<LaidGlass> laid = LayoutFile.read(commission.path()).stream().filter(sheet -> !sheet.toBuy())
                    .filter(sheet -> names.isEmpty() || names.contains(sheet.sheet().name())).toList();
            for (String wanted : names) {
                if (laid.stream().noneMatch(sheet -> sheet.sheet().name().equals(wanted))) {
                    throw new Refusal("sheet " + wanted, "nothing was laid on it", "lay pieces first: stock lay");
                }
            }
            if (laid.isEmpty()) {
                throw new Refusal(commission.commission().getTitle(), "no pieces lie on sheets at hand",
                        "lay pieces first: stock lay; sheets to buy must be added when they are there");
            }
            StockBook book = new StockBook(commission.studio());
            List<List<String>> offcuts = laid.stream().map(book::cut).toList();
            commission.save();
            for (int i = 0; i < laid.size(); i++) {
                book.record(commission, laid.get(i), offcuts.get(i));
            }
            List<SheetRow> rows = laid.stream().map(SheetRow::of).toList();
            common.answer(new Answer(deed, rows, List.of(), Map.of(), List.of()), rows.stream().map(SheetRow::words).toList());
            return DONE;
        }
    }

    private double within(String option, double mm) {
        if (!(mm >= 0 && mm <= 50)) {
            throw common.wrong(option + " takes 0 to 50 mm, not " + mm + ".");
        }
        return mm;
    }

    private double[] numbers(String option, String text, String between, int wanted) {
        String[] parts = text.toLowerCase(Locale.ROOT).split(between, -1);
        double[] found = new double[parts.length];
        try {
            for (int i = 0; i < parts.length; i++) {
                found[i] = Double.parseDouble(parts[i].strip());
            }
        } catch (NumberFormatException e) {
            throw common.wrong(option + " takes " + wanted + " numbers, not '" + text + "'.");
        }
        if (parts.length != wanted || !Double.isFinite(found[0] + found[wanted - 1])) {
            throw common.wrong(option + " takes " + wanted + " numbers, not '" + text + "'.");
        }
        return found;
    }
}
