package saddlebar.ui.make;

import java.io.IOException;
import java.nio.file.Path;

import saddlebar.model.work.Work;

/** What the desktop asks of production: the main job on one commission, from artwork to sheets and cards. */
public interface Maker {
    /** Units of work that {@link #make} tells. */
    int WORK_UNITS = 1000;

    /**
     * Makes everything that has changed, enters it in the commission and its records, and saves. Stopped or failed, the commission is as it was, and
     * every made file is whole.
     *
     * @throws saddlebar.model.problem.Refusal         if something cannot be worked with
     * @throws saddlebar.model.problem.LockedException if somebody else is writing
     */
    MakeSummary make(Path commission, Work work) throws IOException;
}
