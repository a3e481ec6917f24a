package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import saddlebar.model.commission.PaperSize;
import saddlebar.model.commission.Studio;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.StudioFolder;

/** A studio by its own folder, or by that of a commission. */
final class StudioAccess implements AutoCloseable {
    private final CommissionFolder commission;
    private final StudioFolder alone;

    private StudioAccess(CommissionFolder commission, StudioFolder alone) {
        this.commission = commission;
        this.alone = alone;
    }

    static StudioAccess open(Path folder, Access access) throws IOException {
        boolean studio = Files.isRegularFile(folder.resolve("studio.saddlebar")) && !Files.isRegularFile(folder.resolve("commission.saddlebar"));
        return studio ? new StudioAccess(null, StudioFolder.open(folder, access)) : new StudioAccess(CommissionFolder.open(folder, access), null);
    }

    Studio studio() {
        return commission != null ? commission.studio() : alone.studio();
    }

    /** The paper of that name, or the first that is in use. */
    PaperSize paper(Optional<String> name) {
        List<PaperSize> papers = studio().getPapers();
        return papers.stream().filter(paper -> name.isPresent() ? name.get().equalsIgnoreCase(paper.getName()) : paper.isInUse()).findFirst()
                .orElseThrow(() -> new Refusal("paper " + name.orElse(""), "the studio has no such paper",
                        "take one of " + String.join(", ", papers.stream().map(PaperSize::getName).toList())));
    }

    void save() throws IOException {
        if (commission != null) {
            commission.save();
        } else {
            alone.save();
        }
    }

    @Override
    public void close() throws IOException {
        if (commission != null) {
            commission.close();
        } else {
            alone.close();
        }
    }
}
