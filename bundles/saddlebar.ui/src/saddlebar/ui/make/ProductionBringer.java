package saddlebar.ui.make;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

import saddlebar.artwork.ReadSettings;
import saddlebar.model.commission.ArtworkReference;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.work.Work;
import saddlebar.production.bring.ArtLook;
import saddlebar.production.bring.BringRequest;
import saddlebar.production.bring.Bringing;
import saddlebar.production.bring.Brought;

/** Brings artwork by production, on the commission's folder, opened for this alone. */
@Component(service = Bringer.class)
public final class ProductionBringer implements Bringer {
    private final Bringing bringing;

    @Activate
    public ProductionBringer(@Reference Bringing bringing) {
        this.bringing = bringing;
    }

    @Override
    public ArtLook look(Path art, Optional<ArtworkReference> last, int page, int previewPx) throws IOException {
        return bringing.look(art, last, page, previewPx);
    }

    @Override
    public Result bring(Path commission, BringChoice choice, Work work) throws IOException {
        try (CommissionFolder folder = CommissionFolder.open(commission, Access.WRITE)) {
            ReadSettings size = choice.widthMm().isPresent() ? ReadSettings.ofWidth(choice.widthMm().getAsDouble()) : ReadSettings.asDrawn();
            Brought brought = bringing.bring(folder,
                    BringRequest.settled(choice.art(), size.onPage(choice.page()), choice.windowName(), choice.title(), "", choice.layers()),
                    work.part(WORK_UNITS, Bringing.WORK_UNITS));
            folder.save();
            return new Result(brought.window().getName(), brought.pieces(), brought.problems());
        }
    }
}
