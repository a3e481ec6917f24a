package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import saddlebar.artwork.ReadSettings;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.production.bring.BringRequest;
import saddlebar.production.bring.Bringing;
import saddlebar.production.bring.Brought;
import saddlebar.production.bring.LayerPurpose;
import saddlebar.production.bring.Revised;

/** Artwork into a commission. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "bring", sortOptions = false,
        description = "Takes artwork into a commission: the first time, or later as a revision whose pieces keep their numbers.",
        footer = {"", "Example: saddlebar bring chapel-door door.svg --window W01 --roles cutline=Lead,trace=Lines,matt=Shading"})
public final class BringCommand implements BenchCommand {
    private final Bringing bringing;

    @Parameters(index = "0", paramLabel = "C", description = "Folder of the commission.")
    private Path folder;

    @Parameters(index = "1", paramLabel = "ART", description = "The artwork.")
    private Path art;

    @Option(names = "--window", required = true, paramLabel = "W", description = "Name of the window, such as W01; made if it is not there.")
    private String window;

    @Option(names = "--title", paramLabel = "T", defaultValue = "", description = "Title of a new window.")
    private String title;

    @Option(names = "--panel", paramLabel = "P", defaultValue = "", description = "Panel of a window that has several.")
    private String panel;

    @Option(names = "--width-mm", paramLabel = "W", description = "Real width of the artwork's page in mm; as the file says if not given.")
    private Double widthMm;

    @Option(names = "--page", paramLabel = "N", description = "Page of a PDF of several, from 1; at a revision that of last time, else the first.")
    private Integer page;

    @Option(names = "--roles", paramLabel = "ROLE=NAME", split = ",",
            description = "What layers are for: cutline, trace, matt, lettering, stain, enamel, glass, none; remembered for the next revision. If not given,"
                    + " as at the last bringing, else guessed from their names and from what is drawn in them.")
    private List<String> roles = List.of();

    @Mixin
    private CommonOptions common;

    @Activate
    public BringCommand(@Reference Bringing bringing) {
        this.bringing = bringing;
    }

    /** The JSON document. */
    record Answer(String window, String file, String sha256, int revision, int page, int pieces, List<String> layers, List<String> colourways,
            List<RoleRow> roles, RevisedRow revised, List<ProblemRow> problems) {
    }

    /** What a revision made of the pieces. */
    record RevisedRow(List<Double> shiftMm, int kept, List<BecameRow> became, List<Integer> moved, List<Integer> gone,
            List<Integer> newNumbers) {
        static RevisedRow of(Revised revised) {
            return new RevisedRow(List.of(revised.shiftXMm(), revised.shiftYMm()), revised.kept(), revised.became().stream().map(BecameRow::of).toList(),
                    revised.moved(), revised.gone(), revised.fresh());
        }
    }

    /** An old piece and a new one that share glass. */
    record BecameRow(int before, int now, double shareOfBefore, double shareOfNow, boolean takesOver) {
        static BecameRow of(Revised.Row row) {
            return new BecameRow(row.before(), row.now(), row.shareOfBefore(), row.shareOfNow(), row.takesOver());
        }
    }

    /** What a layer of the artwork is for; by: said, remembered or guessed. */
    record RoleRow(String layer, String label, String role, String by, String why) {
        static RoleRow of(LayerPurpose purpose) {
            return new RoleRow(purpose.id(), purpose.label(), purpose.purpose(), purpose.source().name().toLowerCase(Locale.ROOT), purpose.why());
        }
    }

    @Override
    public Integer call() throws IOException {
        Map<LayerRole, String> painted = new EnumMap<>(LayerRole.class);
        Map<String, String> glass = new LinkedHashMap<>();
        Set<String> unused = new LinkedHashSet<>();
        readRoles(painted, glass, unused);
        if (page != null && page < 1) {
            throw common.wrong("--page takes a whole number from 1, not " + page + ".");
        }
        ReadSettings size;
        try {
            size = widthMm == null ? ReadSettings.asDrawn() : ReadSettings.ofWidth(widthMm);
        } catch (IllegalArgumentException outOfRange) {
            throw common.wrong("--width-mm takes 0.1 to 1000000 mm, not " + widthMm + ".");
        }
        if (!window.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,39}")) {
            throw common.wrong("--window takes a short name of letters, digits, dots and dashes such as W01, not '" + window + "'.");
        }
        try (CommissionFolder commission = CommissionFolder.open(folder, Access.WRITE)) {
            int taken = page != null ? page : bringing.lastPage(commission, window, panel);
            Brought brought = bringing.bring(commission,
                    new BringRequest(art, size.onPage(taken), window, title, panel, painted, glass, unused, !roles.isEmpty()),
                    common.work(Bringing.WORK_UNITS));
            commission.save();
            common.answer(
                    new Answer(window, brought.file(), brought.sha256(), brought.revision(), taken, brought.pieces(), brought.layers(), brought.colourways(),
                            brought.roles().stream().map(RoleRow::of).toList(), brought.revised().map(RevisedRow::of).orElse(null),
                            brought.problems().stream().map(ProblemRow::of).toList()),
                    words(brought));
            List<Problem> problems = brought.problems();
            common.tell(problems);
            return problems.stream().anyMatch(problem -> problem.severity() != Severity.NOTE) ? ATTENTION : DONE;
        }
    }

    private void readRoles(Map<LayerRole, String> painted, Map<String, String> glass, Set<String> unused) {
        for (String pair : roles) {
            int equals = pair.indexOf('=');
            if (equals < 1 || equals == pair.length() - 1) {
                throw common.wrong("--roles takes pairs such as cutline=NAME, not '" + pair + "'.");
            }
            String word = pair.substring(0, equals).strip().toLowerCase(Locale.ROOT);
            String name = pair.substring(equals + 1).strip();
            if (word.equals("glass")) {
                glass.put(name, name);
                continue;
            }
            if (word.equals(LayerPurpose.NONE)) {
                unused.add(name);
                continue;
            }
            LayerRole role = LayerRole.get(word);
            if (role == null) {
                throw common.wrong("--roles knows cutline, trace, matt, lettering, stain, enamel, glass and none, not '" + word + "'.");
            }
            painted.put(role, name);
        }
    }

    private static List<String> words(Brought brought) {
        List<String> words = new ArrayList<>();
        words.add(
                String.format(Locale.ROOT, "%s: %s, revision %d, %d pieces", brought.window().getName(), brought.file(), brought.revision(), brought.pieces()));
        brought.layers().forEach(layer -> words.add("  layer " + layer));
        brought.roles().stream().filter(role -> role.source() == LayerPurpose.Source.GUESSED && !role.purpose().equals(LayerPurpose.NONE))
                .forEach(role -> words.add("  taken \"" + role.label() + "\" for " + role.purpose() + ": " + role.why()));
        if (!brought.colourways().isEmpty()) {
            words.add("  colourways " + String.join(", ", brought.colourways()));
        }
        brought.revised().ifPresent(revised -> words.addAll(words(revised)));
        return words;
    }

    /** What became of what, a line a piece; nothing is said of pieces that are what they were. */
    private static List<String> words(Revised revised) {
        List<String> words = new ArrayList<>();
        words.add(String.format(Locale.ROOT, "  %d pieces keep their numbers, %d are new, %d old numbers are no more", revised.kept(), revised.fresh().size(),
                revised.gone().size()));
        if (revised.shiftXMm() != 0 || revised.shiftYMm() != 0) {
            words.add(String.format(Locale.ROOT, "  the drawing was moved by %.1f, %.1f mm, and the numbers with it", revised.shiftXMm(), revised.shiftYMm()));
        }
        revised.moved().forEach(number -> words.add("  piece " + number + " lies elsewhere now and keeps its number"));
        for (Revised.Row row : revised.became()) {
            words.add(String.format(Locale.ROOT, "  %.0f %% of piece %d is now %.0f %% of piece %d%s", 100 * row.shareOfBefore(), row.before(),
                    100 * row.shareOfNow(), row.now(), row.takesOver() ? ", which takes over its records" : ""));
        }
        return words;
    }
}
