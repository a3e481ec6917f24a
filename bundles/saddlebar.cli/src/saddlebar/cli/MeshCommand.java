package saddlebar.cli;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import saddlebar.model.problem.LockedException;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.units.Units;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.ScreeningRecipe;
import saddlebar.stencil.code.BitonalSettings;
import saddlebar.stencil.code.ProofPng;
import saddlebar.stencil.mesh.Eye;
import saddlebar.stencil.mesh.GridBanding;
import saddlebar.stencil.mesh.Mesh;
import saddlebar.stencil.mesh.MeshAdvice;
import saddlebar.stencil.mesh.MeshBeat;
import saddlebar.stencil.mesh.MeshBeats;
import saddlebar.stencil.mesh.PrintThroughMesh;
import saddlebar.stencil.mesh.ScoredRuling;
import saddlebar.stencil.wedge.FlatTone;

/** What a mesh carries, and how it beats with a ruling. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "mesh", sortOptions = false, description = "Tells a mesh's opening, volume and finest dot, its beat with a ruling, and better rulings.",
        footer = {"", "Example: saddlebar mesh --count 220 --thread-um 48 --lpi 40 --angle 22.5"})
public final class MeshCommand implements BenchCommand {
    private static final int BETTER = 8;
    private static final double PICTURE_MM = 30;

    private final ScreeningMethods methods;

    @Option(names = "--count", required = true, paramLabel = "N", description = "Threads an inch.")
    private double count;

    @Option(names = "--thread-um", required = true, paramLabel = "D", description = "Diameter of a thread in um.")
    private double threadUm;

    @Option(names = "--tension", paramLabel = "SHARE", defaultValue = "0", description = "Share of the threads an inch that tension takes, such as 0.02.")
    private double tension;

    @Option(names = "--lpi", paramLabel = "L", description = "Ruling whose beat is asked for.")
    private Double lpi;

    @Option(names = "--angle", paramLabel = "A", defaultValue = "22.5", description = "Angle of the ruling; 22.5 if not given.")
    private double angleDeg;

    @Option(names = "--mesh-angle", paramLabel = "A", defaultValue = "0", description = "Angle of the threads to the sheet; 0 if not given.")
    private double meshAngleDeg;

    @Option(names = "--dpi", paramLabel = "D", defaultValue = "1200", description = "Device px an inch; 1200 if not given.")
    private double dpi;

    @Option(names = "--distance-m", paramLabel = "V", defaultValue = "2", description = "Viewing distance in m; 2 if not given.")
    private double distanceM;

    @Option(names = "--map", description = "In the JSON document: every ruling and angle with its score.")
    private boolean map;

    @Option(names = "--picture", paramLabel = "FILE", description = "Draw the print of a 30 %% tone through the mesh as foretold, 30 x 30 mm: .png.")
    private Path picture;

    @Option(names = "--replace", description = "Replace FILE if it exists.")
    private boolean replace;

    @Mixin
    private CommonOptions common;

    @Activate
    public MeshCommand(@Reference ScreeningMethods methods) {
        this.methods = methods;
    }

    /** The JSON document; beat and banding are null without a ruling. */
    record Answer(double count, double threadUm, double pitchUm, double openingUm, double openArea, double fabricUm, double volumeCm3PerM2,
            double finestDotUm, double finestBridgeUm, double finestLpi, Beat beat, Banding banding, List<ScoredRuling> better, List<ScoredRuling> map,
            List<ProblemRow> problems) {
    }

    /** Period null where ruling and mesh are locked. */
    record Beat(Double periodMm, double contrast, boolean visible, int[] order, double score) {
    }

    record Banding(double periodMm, int cells, boolean even) {
    }

    @Override
    public Integer call() throws IOException {
        check("--dpi", dpi, 72, 4800);
        check("--distance-m", distanceM, 0.1, 100);
        check("--angle", angleDeg, -360, 360);
        check("--mesh-angle", meshAngleDeg, -360, 360);
        Mesh mesh = common.ofWords(() -> new Mesh(count, threadUm).underTension(tension));
        MeshBeats beats = new MeshBeats(mesh, meshAngleDeg);
        List<Problem> problems = new ArrayList<>(mesh.advice());
        Beat beat = null;
        Banding banding = null;
        List<String> words = new ArrayList<>();
        words.add(
                String.format(Locale.ROOT, "Opening %.1f um of a pitch of %.1f um: %.1f %% open; %.1f cm3/m2; fabric %.0f um", mesh.openingUm(), mesh.pitchUm(),
                        100 * mesh.openArea(), mesh.volumeCm3PerM2(), mesh.fabricUm()));
        words.add(String.format(Locale.ROOT, "Finest dot %.0f um, finest bridge %.0f um, finest ruling %.0f lines an inch (common practice, no source)",
                mesh.finestDotUm(), mesh.finestBridgeUm(), Math.floor(mesh.finestLpi())));
        if (lpi != null) {
            requireCarried(mesh);
            MeshBeat slowest = beats.slowest(lpi, angleDeg);
            boolean visible = slowest.visible(new Eye(distanceM));
            double score = beats.score(lpi, angleDeg);
            beat = new Beat(slowest.locked() ? null : slowest.periodMm(), slowest.contrast(), visible,
                    new int[] {slowest.i(), slowest.j(), slowest.u(), slowest.v()}, score);
            GridBanding grid = GridBanding.of(dpi, lpi);
            banding = new Banding(grid.periodMm(), grid.cells(), grid.even());
            words.add(slowest.locked()
                    ? "Ruling and mesh are locked: no beat, but uneven dots."
                    : String.format(Locale.ROOT, "Beat every %.2f mm, contrast %.1f %%, %s from %s m (overstated: paint flows); score %.3f", slowest.periodMm(),
                            100 * slowest.contrast(), visible ? "visible" : "not visible", Units.plain(distanceM), score));
            words.add(grid.even()
                    ? "The ruling divides the device grid."
                    : String.format(Locale.ROOT, "Rounded cell by cell at 0 degrees the ruling would band every %.2f mm; am lays exact cells and does not.",
                            grid.periodMm()));
            ScreeningRecipe recipe = common.ofWords(() -> ScreeningRecipe.withDefaults().withDpiAndLpi(dpi, lpi).withAngleDeg(angleDeg));
            problems.clear();
            problems.addAll(MeshAdvice.of(mesh, methods.method("am").actual(recipe)));
        }
        List<ScoredRuling> better = beats.better(dpi, BETTER);
        better.forEach(ruling -> words
                .add(String.format(Locale.ROOT, "  better: %.2f lines at %.1f degrees (%.3f)", ruling.lpi(), ruling.angleDeg(), ruling.score())));
        List<ScoredRuling> whole = map ? beats.map(dpi, Math.max(dpi / 500, mesh.threadsPerInch() / 8), mesh.finestLpi()) : List.of();
        if (picture != null) {
            draw(mesh);
            words.add(picture + ": the print foretold");
        }
        common.answer(new Answer(mesh.threadsPerInch(), mesh.threadUm(), mesh.pitchUm(), mesh.openingUm(), mesh.openArea(), mesh.fabricUm(),
                mesh.volumeCm3PerM2(), mesh.finestDotUm(), mesh.finestBridgeUm(), mesh.finestLpi(), beat, banding, better, whole,
                problems.stream().map(ProblemRow::of).toList()), words);
        common.tell(problems);
        return problems.stream().anyMatch(problem -> problem.severity() != Severity.NOTE) ? ATTENTION : DONE;
    }

    private void requireCarried(Mesh mesh) {
        if (!(lpi >= dpi / 512 && lpi <= dpi / 4)) {
            throw common.wrong(
                    "--lpi takes " + Units.plain(Math.ceil(dpi / 512 * 100) / 100) + " to " + Units.plain(dpi / 4) + " at " + Units.plain(dpi) + " dpi, not "
                            + Units.plain(lpi) + ".");
        }
        if (lpi > mesh.finestLpi()) {
            throw common.wrong(String.format(Locale.ROOT,
                    "--lpi: a mesh of %s threads an inch does not carry %s lines an inch; take %.0f lines or fewer, or a mesh of %.0f threads or more.",
                    Units.plain(mesh.threadsPerInch()), Units.plain(lpi), Math.floor(mesh.finestLpi()), Math.ceil(4 * lpi)));
        }
    }

    private void check(String option, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw common.wrong(option + " takes " + Units.plain(least) + " to " + Units.plain(most) + ", not " + Units.plain(value) + ".");
        }
    }

    private void draw(Mesh mesh) throws IOException {
        if (lpi == null) {
            throw common.wrong("--picture needs --lpi.");
        }
        if (!String.valueOf(picture.getFileName()).toLowerCase(Locale.ROOT).endsWith(".png")) {
            throw common.wrong("--picture takes a name that ends in .png, not '" + picture + "'.");
        }
        if (Files.exists(picture) && !replace) {
            throw new LockedException(picture + " exists already; nothing was written. Give --replace to replace it, or another name.");
        }
        ScreeningRecipe recipe = common.ofWords(() -> ScreeningRecipe.withDefaults().withDpiAndLpi(dpi, lpi).withAngleDeg(angleDeg));
        int side = Units.pxOfMm(PICTURE_MM, dpi);
        float[] covered = PrintThroughMesh.of(mesh, meshAngleDeg).covered(FlatTone.bits(methods.method("am"), recipe, 0.3, side, side), dpi);
        BufferedImage image = new BufferedImage(side, side, BufferedImage.TYPE_BYTE_GRAY);
        for (int i = 0; i < covered.length; i++) {
            image.getRaster().setSample(i % side, i / side, 0, Math.round(255 * (1 - covered[i])));
        }
        ProofPng.write(image, dpi, picture, BitonalSettings.at(dpi).withTitle("Print foretold").replacing(replace));
    }
}
