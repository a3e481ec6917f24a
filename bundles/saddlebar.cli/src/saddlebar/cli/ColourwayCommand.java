package saddlebar.cli;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import saddlebar.materials.cost.BookReader;
import saddlebar.materials.money.Prices;
import saddlebar.model.commission.Approval;
import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.LockedException;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.work.Work;
import saddlebar.production.colourway.ColourwayApproval;
import saddlebar.production.colourway.ColourwayComparison;
import saddlebar.production.colourway.Colourways;
import saddlebar.production.colourway.Vidimus;
import saddlebar.production.colourway.VidimusOrder;
import saddlebar.production.colourway.VidimusWords;
import saddlebar.production.light.ColourShelf;
import saddlebar.production.light.LightBehind;
import saddlebar.production.light.LightLook;

/** The colourways of a window: listed, made, compared, approved, shown. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "colourway", sortOptions = false, description = {"Tells and changes which glass each piece of a window is cut from.",
        "  list                      all colourways with their glass and its cost",
        "  new NAME                  an empty one; copy FROM NAME: one that begins as another",
        "  rename OLD NAME           delete NAME           choose NAME: the one that is made",
        "  set NAME PIECES=GLASS …   pieces such as 3 or 3,5-7 or all; without a glass: as the piece is usually cut",
        "  compare A B               each piece's difference in the light, and what B costs more",
        "  approve NAME --by WHO     freezes it with the day and the name; withdraw NAME --by WHO thaws it",
        "  picture [NAME] --out PNG  the window in the light over its captions"},
        footer = {"", "Example: saddlebar colourway demo-projects/first-panel compare \"Neap light\" \"Spring tide\" --light A --json"})
public final class ColourwayCommand implements BenchCommand {
    private static final int USUAL_SIDE_PX = 1600;

    @Parameters(index = "0", paramLabel = "C", description = "Folder of the commission.")
    private Path folder;

    @Parameters(index = "1", paramLabel = "DEED", description = "What to do, see above.")
    private String deed;

    @Parameters(index = "2..*", paramLabel = "WORD", description = "Names, or pieces and their glass.")
    private List<String> words = new ArrayList<>();

    @Option(names = "--window", paramLabel = "W", description = "The window; not needed where there is one only.")
    private String windowName;

    @Option(names = "--light", paramLabel = "L", defaultValue = "D65",
            description = "Behind the window: D65 (north light), A (lamp) or dusk. D65 if not given.")
    private String lightWord;

    @Option(names = "--by", paramLabel = "WHO", description = "Who agreed, or who withdraws.")
    private String by;

    @Option(names = "--note", paramLabel = "WORDS", defaultValue = "", description = "Why an approval is withdrawn.")
    private String note;

    @Option(names = "--day", paramLabel = "D", description = "Day of an approval or of prices, such as 2026-01-31; today if not given.")
    private LocalDate day;

    @Option(names = "--out", paramLabel = "PNG", description = "File of the picture.")
    private Path out;

    @Option(names = "--side-px", paramLabel = "N", defaultValue = "" + USUAL_SIDE_PX,
            description = "Longer side of the window in the picture; 1600 if not given.")
    private int sidePx;

    @Option(names = "--plain", description = "The picture without captions.")
    private boolean plain;

    @Option(names = "--replace", description = "Replace PNG if it exists.")
    private boolean replace;

    @Mixin
    private CommonOptions common;

    /** JSON of what was changed. */
    record Changed(String window, String deed, String colourway, int pieces, String approvedBy, String approvedOn) {
    }

    /** JSON of a picture. */
    record Shown(String file, String window, String colourway, String light, int widthPx, int heightPx) {
    }

    @Override
    public Integer call() throws IOException {
        LocalDate on = day == null ? LocalDate.now() : day;
        LightBehind light = LightBehind.of(lightWord).orElseThrow(() -> common.wrong("--light takes D65, A or dusk, not '" + lightWord + "'."));
        return switch (deed.toLowerCase(Locale.ROOT)) {
            case "list" -> list(on);
            case "compare" -> compare(light, on);
            case "picture" -> picture(light);
            case "new", "copy", "rename", "delete", "choose", "set", "approve", "withdraw" -> change(deed.toLowerCase(Locale.ROOT), on);
            default -> throw common.wrong("'" + deed + "' is none of list, new, copy, rename, delete, choose, set, compare, approve, withdraw, picture.");
        };
    }

    private int list(LocalDate on) throws IOException {
        take(0, 0, "nothing");
        try (CommissionFolder commission = CommissionFolder.open(folder, Access.READ)) {
            List<Window> windows = windowName == null ? commission.windows() : List.of(window(commission));
            ColourwayAnswer.Listed answer = ColourwayAnswer.listed(commission, windows, prices(commission, on));
            common.answer(answer, answer.words());
            return DONE;
        }
    }

    private int compare(LightBehind light, LocalDate on) throws IOException {
        take(2, 2, "two names");
        try (CommissionFolder commission = CommissionFolder.open(folder, Access.READ)) {
            Window window = window(commission);
            Colourway first = Colourways.named(window, words.get(0));
            Colourway second = Colourways.named(window, words.get(1));
            ColourwayComparison comparison = ColourwayComparison.of(first, second, light, new ColourShelf(), prices(commission, on));
            ColourwayAnswer.Compared answer = ColourwayAnswer.compared(window.getName(), Colourways.name(first), Colourways.name(second), light,
                    comparison);
            common.answer(answer, answer.words());
            return comparison.costsMore().isPresent() && comparison.cost().withoutGlass() + comparison.other().withoutGlass() == 0 ? DONE : ATTENTION;
        }
    }

    private int picture(LightBehind light) throws IOException {
        take(0, 1, "at most one name");
        if (out == null) {
            throw common.wrong("picture takes --out PNG.");
        }
        if (sidePx < VidimusOrder.LEAST_PX || sidePx > VidimusOrder.MOST_PX) {
            throw common.wrong("--side-px takes " + VidimusOrder.LEAST_PX + " to " + VidimusOrder.MOST_PX + ", not " + sidePx + ".");
        }
        if (Files.exists(out) && !replace) {
            throw new LockedException(out + " exists already; nothing was written. Give --replace to replace it, or another name.");
        }
        try (CommissionFolder commission = CommissionFolder.open(folder, Access.READ); Vidimus vidimus = new Vidimus()) {
            Window window = window(commission);
            Optional<Colourway> colourway = words.isEmpty() ? Optional.empty() : Optional.of(Colourways.named(window, words.get(0)));
            VidimusOrder order = VidimusOrder.of(commission.path(), commission.commission(), window, colourway, LightLook.USUAL.withBehind(light), sidePx);
            Work work = common.work(Vidimus.units(order));
            BufferedImage picture = plain ? vidimus.picture(order, work) : vidimus.captioned(order, VidimusWords.ENGLISH, work);
            String name = order.name().orElse("");
            Vidimus.write(picture, out, (window.getName() + " " + name).strip(), replace);
            common.answer(new Shown(out.toString(), window.getName(), name, light.word(), picture.getWidth(), picture.getHeight()),
                    List.of("Wrote " + out + ", " + picture.getWidth() + " x " + picture.getHeight() + " px."));
            return DONE;
        }
    }

    private int change(String what, LocalDate on) throws IOException {
        take(what.equals("copy") || what.equals("rename") || what.equals("set") ? 2 : 1, what.equals("set")
                ? Integer.MAX_VALUE
                : what.equals("copy") || what.equals("rename") ? 2 : 1, "the names that it is about");
        try (CommissionFolder commission = CommissionFolder.open(folder, Access.WRITE)) {
            Window window = window(commission);
            Changed answer = switch (what) {
                case "new" -> changed(window, Colourways.create(window, words.get(0)), 0);
                case "copy" -> changed(window, Colourways.copy(Colourways.named(window, words.get(0)), words.get(1)), 0);
                case "approve" -> approved(commission, window, on);
                case "withdraw" -> withdrawn(commission, window, on);
                default -> changedOne(commission, window, Colourways.named(window, words.get(0)), what);
            };
            commission.save();
            common.answer(answer, List.of(told(answer)));
            return DONE;
        }
    }

    private Changed changedOne(CommissionFolder commission, Window window, Colourway colourway, String what) {
        int pieces = 0;
        switch (what) {
            case "rename" -> Colourways.rename(colourway, words.get(1));
            case "choose" -> Colourways.make(colourway);
            case "delete" -> {
                String name = Colourways.name(colourway);
                Colourways.delete(colourway);
                return new Changed(window.getName(), deed, name, 0, null, null);
            }
            default -> pieces = new PiecesOfGlass(window, commission.studio()).cut(colourway, words.subList(1, words.size()));
        }
        return changed(window, colourway, pieces);
    }

    private Changed approved(CommissionFolder commission, Window window, LocalDate on) throws IOException {
        if (by == null) {
            throw common.wrong("approve takes --by WHO, the person who agreed.");
        }
        Colourway colourway = Colourways.named(window, words.get(0));
        Approval approval = ColourwayApproval.approve(commission, colourway, by, on);
        return new Changed(window.getName(), deed, Colourways.name(colourway), Colourways.pieces(window).size(), approval.getBy(),
                approval.getOn().toString());
    }

    private Changed withdrawn(CommissionFolder commission, Window window, LocalDate on) throws IOException {
        if (by == null) {
            throw common.wrong("withdraw takes --by WHO, the person who says so.");
        }
        Colourway colourway = Colourways.named(window, words.get(0));
        ColourwayApproval.withdraw(commission, colourway, by, on, note);
        return changed(window, colourway, 0);
    }

    private Changed changed(Window window, Colourway colourway, int pieces) {
        return new Changed(window.getName(), deed, Colourways.name(colourway), pieces, null, null);
    }

    private static String told(Changed changed) {
        String what = changed.window() + " " + changed.colourway() + ": ";
        return what + switch (changed.deed().toLowerCase(Locale.ROOT)) {
            case "new", "copy" -> "made.";
            case "rename" -> "has its new name.";
            case "delete" -> "deleted.";
            case "choose" -> "is the one that is made.";
            case "set" -> changed.pieces() + (changed.pieces() == 1 ? " piece set." : " pieces set.");
            case "approve" -> "approved by " + changed.approvedBy() + " on " + changed.approvedOn() + ", and frozen.";
            default -> "no longer approved.";
        };
    }

    private Window window(CommissionFolder commission) {
        List<String> names = commission.windowNames();
        if (windowName == null && names.size() != 1) {
            throw common.wrong(names.isEmpty()
                    ? "The commission has no window yet; bring artwork first."
                    : "Give --window, one of "
                            + String.join(", ", names) + ".");
        }
        String name = windowName == null ? names.get(0) : windowName;
        return commission.window(name).orElseThrow(() -> new Refusal(folder.toString(), "it has no window '" + name + "'",
                "it has " + String.join(", ", names)));
    }

    private static Prices prices(CommissionFolder commission, LocalDate on) {
        return BookReader.read(commission.studio(), on, commission.studio().getCurrency());
    }

    private void take(int least, int most, String what) {
        if (words.size() < least || words.size() > most) {
            throw common.wrong(deed + " takes " + what + ".");
        }
    }
}
