package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import saddlebar.cartoon.opening.BarRule;
import saddlebar.cartoon.opening.FrameFit;
import saddlebar.cartoon.opening.MeasuredFrame;
import saddlebar.cartoon.opening.OpeningKinds;
import saddlebar.cartoon.opening.OpeningMeasures;
import saddlebar.cartoon.opening.OpeningPlan;
import saddlebar.cartoon.opening.PanelDivision;
import saddlebar.model.art.DrawnLine;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.LockedException;
import saddlebar.model.problem.Severity;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.production.opening.OpeningBook;
import saddlebar.production.opening.OpeningSvg;

/** What was measured of an opening, to outlines, bars and panels. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "opening", sortOptions = false,
        description = "Solves an opening from what was measured: how far it is out of square, sight and tight size, the panel, bars and divisions.",
        footer = {"", "Example: saddlebar opening --shape pointed --width-mm 600 --height-mm 1800 --rise-mm 620",
                "Example: saddlebar opening --sides 612,1204,610,1201 --diagonals 1352,1345"})
public final class OpeningCommand implements BenchCommand {
    @Option(names = "--shape", paramLabel = "S", description = "rectangle (if not given), segmental, semicircular, equilateral, pointed, three-centred, ogee, "
            + "roundel, trefoil, quatrefoil, cinquefoil.")
    private String shape = "rectangle";

    @Option(names = "--width-mm", paramLabel = "W", description = "Between the jambs, or across a round one.")
    private Double widthMm;

    @Option(names = "--height-mm", paramLabel = "H", description = "From the sill to the crown.")
    private Double heightMm;

    @Option(names = "--rise-mm", paramLabel = "R", description = "From the springing line to the crown, of segmental, pointed, three-centred and ogee heads.")
    private Double riseMm;

    @Option(names = "--sides", paramLabel = "T,R,B,L", split = ",", description = "The four sides of a frame: top, right, bottom, left.")
    private List<Double> sides;

    @Option(names = "--diagonals", paramLabel = "D,U", split = ",", description = "Its diagonals: down from the top left, up from the bottom left.")
    private List<Double> diagonals;

    @Option(names = "--in-rebate", description = "Measured in the rebate (tight size), not of what shows (sight size).")
    private boolean inRebate;

    @Option(names = "--rebate-mm", paramLabel = "D", defaultValue = "10", description = "Depth of the rebate, each side; 10 if not given.")
    private double rebateMm;

    @Option(names = "--clearance-mm", paramLabel = "C", defaultValue = "3", description = "Air between panel and rebate, each side; 3 if not given.")
    private double clearanceMm;

    @Option(names = "--bars", paramLabel = "RULE", defaultValue = "exterior", description = "exterior or door (at most 450 mm apart), interior (600).")
    private String bars;

    @Option(names = "--most-perimeter-mm", paramLabel = "P", defaultValue = "4000", description = "Limit of one panel; 4000 if not given.")
    private double mostPerimeterMm;

    @Option(names = "--svg", paramLabel = "OUT", description = "Draw the outlines and the bars at true size.")
    private Path svg;

    @Option(names = "--replace", description = "Replace OUT if it exists.")
    private boolean replace;

    @Option(names = "--into", paramLabel = "C", description = "Enter it into this commission.")
    private Path into;

    @Option(names = "--window", paramLabel = "W", description = "The window of the commission; made if it is not there.")
    private String windowName;

    @Mixin
    private CommonOptions common;

    /** The JSON document. */
    record Answer(String shape, Size sight, Size tight, Size panel, double springingMm, Square square, List<Bar> bars, List<Part> panels,
            List<ProblemRow> problems, String caution) {
    }

    /** An outline by its box, its area and its points x, y in mm. */
    record Size(double widthMm, double heightMm, double areaMm2, List<Double> outline) {
    }

    /** How far a measured frame is from square. */
    record Square(double outOfSquareMm, double outOfSquareDeg, List<Double> cornersDeg, double diagonalsDifferMm, double disagreementMm,
            List<Double> missesMm) {
    }

    /** A bar from the left to the right edge of the panel. */
    record Bar(double belowTopMm, double clearMm, boolean divides) {
    }

    /** A panel from the top down. */
    record Part(double topMm, double bottomMm, double widthMm, double areaMm2, double perimeterMm) {
    }

    @Override
    public Integer call() throws IOException {
        if ((into == null) != (windowName == null)) {
            throw common.wrong("--into C and --window W go together.");
        }
        if (svg != null && Files.exists(svg) && !replace) {
            throw new LockedException(svg + " exists already; nothing was written. Give --replace to replace it, or another name.");
        }
        OpeningMeasures measures = measures();
        OpeningPlan plan = common.ofWords(() -> OpeningPlan.of(measures));
        if (svg != null) {
            OpeningSvg.write(svg, plan);
        }
        if (into != null) {
            if (!windowName.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,39}")) {
                throw common.wrong("--window takes a short name of letters, digits, dots and dashes such as W01, not '" + windowName + "'.");
            }
            try (CommissionFolder commission = CommissionFolder.open(into, Access.WRITE)) {
                Optional<Window> known = commission.window(windowName);
                Window window = known.isPresent() ? known.get() : commission.addWindow(windowName, "");
                OpeningBook.enter(window, measures, plan);
                commission.save();
            }
        }
        Answer answer = answer(plan);
        common.answer(answer, words(answer));
        common.tell(plan.problems());
        return plan.problems().stream().anyMatch(problem -> problem.severity() != Severity.NOTE) ? ATTENTION : DONE;
    }

    private OpeningMeasures measures() {
        OpeningKinds kind = OpeningKinds.ofWord(shape.strip().toLowerCase(Locale.ROOT)).orElseThrow(() -> common.wrong("--shape takes "
                + String.join(", ", Arrays.stream(OpeningKinds.values()).map(OpeningKinds::word).toList()) + ", not '" + shape + "'."));
        BarRule rule = Arrays.stream(BarRule.values()).filter(one -> one.name().equalsIgnoreCase(bars.strip())).findFirst()
                .orElseThrow(() -> common.wrong("--bars takes exterior, door or interior, not '" + bars + "'."));
        if ((sides == null) != (diagonals == null)) {
            throw common.wrong("--sides and --diagonals go together: six measures tell how far a frame is out of square.");
        }
        try {
            Optional<MeasuredFrame> frame = frame(kind);
            if (frame.isEmpty() && (widthMm == null || heightMm == null && !kind.isRound())) {
                throw common.wrong("Give --width-mm" + (kind.isRound() ? "" : " and --height-mm") + ", or --sides and --diagonals of a frame.");
            }
            if (kind.needsRise() && riseMm == null) {
                throw common.wrong("--shape " + kind.word() + " needs --rise-mm.");
            }
            return new OpeningMeasures(kind, widthMm == null ? 0 : widthMm, heightMm == null ? 0 : heightMm, riseMm == null ? 0 : riseMm, frame, inRebate,
                    rebateMm, clearanceMm, rule, mostPerimeterMm);
        } catch (IllegalArgumentException outOfRange) {
            throw common.wrong("A measure is out of range: " + outOfRange.getMessage() + ".");
        }
    }

    private Optional<MeasuredFrame> frame(OpeningKinds kind) {
        if (sides == null) {
            return Optional.empty();
        }
        if (sides.size() != 4 || diagonals.size() != 2) {
            throw common.wrong("--sides takes four lengths (top, right, bottom, left), --diagonals two (down from the top left, up from the bottom left).");
        }
        if (kind != OpeningKinds.RECTANGLE) {
            throw common.wrong("--sides and --diagonals measure a frame of four sides, not a " + kind.word() + " opening.");
        }
        return Optional.of(new MeasuredFrame(sides.get(0), sides.get(1), sides.get(2), sides.get(3), diagonals.get(0), diagonals.get(1)));
    }

    private static Answer answer(OpeningPlan plan) {
        double top = OpeningPlan.box(plan.sizes().panel())[1];
        PanelDivision division = plan.division();
        return new Answer(plan.shape().name(), size(plan.sizes().sight()), size(plan.sizes().tight()), size(plan.sizes().panel()), plan.shape().springingMm(),
                plan.fit().map(OpeningCommand::square).orElse(null),
                division.bars().stream().map(bar -> new Bar(bar.yMm() - top, bar.clearMm(), bar.division())).toList(),
                division.panels().stream().map(one -> new Part(one.topMm() - top, one.bottomMm() - top, one.widthMm(), one.areaMm2(), one.perimeterMm()))
                        .toList(),
                plan.problems().stream().map(ProblemRow::of).toList(), division.caution());
    }

    private static Square square(FrameFit fit) {
        return new Square(fit.outOfSquareMm(), fit.outOfSquareDeg(), Arrays.stream(fit.cornersDeg()).boxed().toList(), fit.diagonalsDifferMm(),
                fit.disagreementMm(), Arrays.stream(fit.missesMm()).boxed().toList());
    }

    private static Size size(DrawnLine line) {
        double[] box = OpeningPlan.box(line);
        double twice = 0;
        for (int i = 0; i < line.points(); i++) {
            int next = (i + 1) % line.points();
            twice += line.x(i) * line.y(next) - line.x(next) * line.y(i);
        }
        return new Size(box[2] - box[0], box[3] - box[1], Math.abs(twice) / 2, Arrays.stream(line.xy()).boxed().toList());
    }

    private static List<String> words(Answer answer) {
        List<String> words = new ArrayList<>();
        words.add(answer.shape());
        words.add(line("  sight size", answer.sight()));
        words.add(line("  tight size", answer.tight()));
        words.add(line("  panel     ", answer.panel()));
        if (answer.square() != null) {
            words.add(String.format(Locale.ROOT, "  out of square by %.1f mm (%.2f degrees); corners %s degrees; the six measures disagree by %.1f mm",
                    answer.square().outOfSquareMm(), answer.square().outOfSquareDeg(),
                    String.join(", ", answer.square().cornersDeg().stream().map(deg -> String.format(Locale.ROOT, "%.2f", deg)).toList()),
                    answer.square().disagreementMm()));
        }
        answer.bars().forEach(bar -> words.add(String.format(Locale.ROOT, "  %s %.0f mm below the panel's top, %.0f mm clear", bar.divides()
                ? "panels meet on a bar"
                : "saddle bar", bar.belowTopMm(), bar.clearMm())));
        answer.panels().forEach(part -> words.add(String.format(Locale.ROOT, "  panel from %.0f to %.0f mm, %.0f mm wide, perimeter %.0f mm", part.topMm(),
                part.bottomMm(), part.widthMm(), part.perimeterMm())));
        words.add(answer.caution());
        return words;
    }

    private static String line(String what, Size size) {
        return String.format(Locale.ROOT, "%s %.1f x %.1f mm, %.0f cm2", what, size.widthMm(), size.heightMm(), size.areaMm2() / 100);
    }
}
