package saddlebar.ui.documents;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import saddlebar.model.work.Work;

/** What the desktop asks for: one document of a commission as it lies on the disk. */
public interface DocumentWriter {
    /** Units of work that {@link #write} tells. */
    int WORK_UNITS = 100;

    /** A file and what it could not say. */
    record Written(Path file, List<String> untold) {
    }

    /** @throws saddlebar.model.problem.Refusal if there is nothing to write about, or no such piece */
    Written write(Path commission, DocumentWish wish, Work work) throws IOException;
}
