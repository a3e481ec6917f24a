package saddlebar.production.make;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

import saddlebar.artwork.ArtworkReaders;
import saddlebar.artwork.ReadSettings;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.Window;
import saddlebar.model.file.Hashes;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.NewCommission;
import saddlebar.model.store.StudioLibrary;
import saddlebar.model.work.Work;
import saddlebar.production.bring.BringRequest;
import saddlebar.production.bring.Bringing;
import saddlebar.production.bring.Brought;
import saddlebar.production.facts.FactsReader;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.process.StencilProcesses;

/** A commission in a folder of its own, with the making as it is wired in the product; screened at a low resolution, so that tests are quick. */
final class WorkBench {
    static final int DPI = 200;

    final Path folder;
    private final Path arts;
    private final Making making = new Making(ArtworkReaders.ownReaders(), ScreeningMethods.ownMethods(), StencilProcesses.ownProcesses());
    private final Bringing bringing = new Bringing(ArtworkReaders.ownReaders(), making);

    /** @param where an empty folder */
    WorkBench(Path where) throws IOException {
        folder = where.resolve("commission");
        arts = Files.createDirectories(where.resolve("arts"));
        StudioLibrary tables = StudioLibrary.of(Path.of("../../shared").toAbsolutePath().normalize());
        try (CommissionFolder made = CommissionFolder.create(folder, NewCommission.titled("A job").onPapers(List.of("letter")).stockedFrom(tables))) {
            made.save();
        }
    }

    /** A drawing in mm: cutline, and the groups given in between. */
    static String svg(int widthMm, int heightMm, String cuts, String painted) {
        return "<svg xmlns='http://www.w3.org/2000/svg' width='%1$dmm' height='%2$dmm' viewBox='0 0 %1$d %2$d'>%4$s<g id='cutline' fill='none' stroke='#000' stroke-width='.5'><rect width='%1$d' height='%2$d'/>%3$s</g></svg>"
                .formatted(widthMm, heightMm, cuts, painted);
    }

    /** Two pieces side by side with a line over both and, to the right, a gray. */
    static String twoPieces() {
        return svg(80, 50, "<path d='M40 0V50'/>", "<g id='matt'><rect x='45' y='5' width='30' height='40' fill='#888'/></g>"
                + "<g id='trace'><path d='M5 10H75' stroke='#000' stroke-width='3'/></g>");
    }

    Making making() {
        return making;
    }

    Brought bring(String window, String svg) throws IOException {
        Path art = Files.writeString(arts.resolve(window + ".svg"), svg, StandardCharsets.UTF_8);
        try (CommissionFolder open = CommissionFolder.open(folder, Access.WRITE)) {
            Brought brought = bringing.bring(open, new BringRequest(art, ReadSettings.asDrawn(), window, "", "", Map.of(), Map.of()), Work.UNWATCHED);
            for (Window each : open.windows()) {
                each.getPanels().forEach(panel -> panel.getLayers().forEach(layer -> layer.getRecipe().setDpi(DPI)));
            }
            open.save();
            return brought;
        }
    }

    /** What a test changes in a layer. */
    interface Change {
        void in(DesignLayer layer);
    }

    void change(String window, LayerRole role, Change change) throws IOException {
        edit(open -> open.window(window).orElseThrow().getPanels().get(0).getLayers().stream().filter(layer -> layer.getRole() == role).forEach(change::in));
    }

    /** What a test does with an open commission. */
    interface Deed {
        void with(CommissionFolder open) throws IOException;
    }

    void edit(Deed deed) throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.WRITE)) {
            deed.with(open);
            open.save();
        }
    }

    void look(Deed deed) throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.READ)) {
            deed.with(open);
        }
    }

    MakeResult make() throws IOException {
        return make(new MakeRequest(List.of(), Stage.CARDS, false, 2), Work.UNWATCHED);
    }

    MakeResult make(MakeRequest request, Work work) throws IOException {
        try (CommissionFolder open = CommissionFolder.open(folder, Access.WRITE)) {
            MakeResult result = making.make(FactsReader.read(open.commission(), open.path(), List.of()), request, work);
            MakeBook.enter(open, result);
            open.save();
            return result;
        }
    }

    Path made(String file) {
        return folder.resolve(Making.FOLDER).resolve(file);
    }

    /** Hash of each made file; without the index, which knows when files were written. */
    Map<String, String> hashes() throws IOException {
        Map<String, String> hashes = new TreeMap<>();
        Path made = folder.resolve(Making.FOLDER);
        if (Files.isDirectory(made)) {
            try (Stream<Path> all = Files.walk(made)) {
                for (Path file : all.filter(Files::isRegularFile).filter(file -> !file.endsWith(MadeIndex.FILE)).toList()) {
                    hashes.put(made.relativize(file).toString().replace('\\', '/'), Hashes.sha256(file));
                }
            }
        }
        return hashes;
    }

    /** Files that were begun and not ended; there must never be one. */
    List<Path> halfWritten() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(file -> file.getFileName().toString().endsWith(".pending")).toList();
        }
    }
}
