package saddlebar.model.index;

import java.util.List;
import java.util.Map;

import saddlebar.model.store.RecordLine;

/** What of a record is worth finding again. Says the same of the same line always. */
public interface RecordLens {
    /** Changes whenever this lens would say something else of a line: an index of another version is built again. */
    String version();

    /** Things that the record speaks of, each role and thing once. */
    List<Mention> mentions(RecordLine line);

    /** Finite numbers that were taken, by name. */
    Map<String, Double> measures(RecordLine line);
}
