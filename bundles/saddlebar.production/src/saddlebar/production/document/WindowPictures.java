package saddlebar.production.document;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import saddlebar.artwork.ArtworkReaders;
import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.Window;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.work.Work;
import saddlebar.production.facts.CommissionFacts;
import saddlebar.production.facts.FactsReader;
import saddlebar.production.make.LightPictures;
import saddlebar.report.document.ReportKind;
import saddlebar.report.document.ReportMatter;

/** Windows in the light, for documents: every colouring for a proposal, the chosen one else. */
final class WindowPictures {
    private static final int LARGE_PX = 1500;
    private static final int USUAL_PX = 1000;
    private final ArtworkReaders readers;

    WindowPictures(ArtworkReaders readers) {
        this.readers = readers;
    }

    /** @param work told one unit a window */
    List<ReportMatter.WindowPicture> of(CommissionFolder folder, List<Window> windows, ReportKind kind, Work work) throws IOException {
        CommissionFacts facts = FactsReader.read(folder.commission(), folder.path(), List.of());
        LightPictures light = new LightPictures(readers);
        List<ReportMatter.WindowPicture> pictures = new ArrayList<>();
        for (Window window : windows) {
            LightPictures.OfWindow painter = light.of(window, facts, kind == ReportKind.COMPETITION ? LARGE_PX : USUAL_PX, work);
            if (!painter.isEmpty()) {
                List<Colourway> ways = window.getColourways().stream().filter(way -> kind == ReportKind.PROPOSAL || way == window.getChosen()).toList();
                for (Colourway way : ways) {
                    pictures.add(picture(window, Optional.of(way), painter));
                }
                if (ways.isEmpty()) {
                    pictures.add(picture(window, Optional.empty(), painter));
                }
            }
            work.advance(1);
        }
        return pictures;
    }

    private static ReportMatter.WindowPicture picture(Window window, Optional<Colourway> way, LightPictures.OfWindow painter) throws IOException {
        BufferedImage image = painter.in(way);
        String name = way.map(Colourway::getName).orElse("");
        String title = window.getTitle() == null ? "" : window.getTitle();
        return new ReportMatter.WindowPicture(window.getName(), name, way.isEmpty() || way.get() == window.getChosen(),
                way.map(Colourway::isApproved).orElse(false),
                PictureShelf.png(image, (window.getName() + " " + title + " " + name).strip()));
    }
}
