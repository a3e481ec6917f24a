package saddlebar.ui.make;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import saddlebar.model.commission.ArtworkReference;
import saddlebar.model.problem.Problem;
import saddlebar.model.work.Work;
import saddlebar.production.bring.ArtLook;

/** What the desktop asks for when artwork is brought. */
public interface Bringer {
    /** Units of work that {@link #bring} tells. */
    int WORK_UNITS = 100;

    /**
     * What came of it.
     *
     * @param windowName where it went
     * @param pieces     pieces of its panel
     * @param problems   what somebody should look at
     */
    record Result(String windowName, int pieces, List<Problem> problems) {
        public Result {
            problems = List.copyOf(problems);
        }
    }

    /**
     * What a file shows before it is brought.
     *
     * @param last      the panel's last artwork, a copy, whose roles count
     * @param page      from 1
     * @param previewPx longer side of the preview
     * @throws saddlebar.model.problem.Refusal if the artwork cannot be read
     */
    ArtLook look(Path art, Optional<ArtworkReference> last, int page, int previewPx) throws IOException;

    /**
     * Takes artwork into a commission and saves. Refused, stopped or failed, the commission is as it was.
     *
     * @throws saddlebar.model.problem.Refusal if the artwork cannot be worked with
     */
    Result bring(Path commission, BringChoice choice, Work work) throws IOException;
}
