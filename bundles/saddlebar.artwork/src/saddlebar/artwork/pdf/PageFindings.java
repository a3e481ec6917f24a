package saddlebar.artwork.pdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;

/** Gathers what was met on one page: of each kind the first, with how often it came. Belongs to one thread. */
final class PageFindings {
    private record Kind(String code, Severity severity, String sentence) {
    }

    private final String where;
    private final Map<Kind, Integer> counts = new LinkedHashMap<>();

    /** @param where file and page */
    PageFindings(String where) {
        this.where = where;
    }

    String where() {
        return where;
    }

    /** Something that will not look as meant. */
    void warn(String code, String sentence) {
        counts.merge(new Kind(code, Severity.WARNING, sentence), 1, Integer::sum);
    }

    /** Something good to know. */
    void note(String code, String sentence) {
        counts.merge(new Kind(code, Severity.NOTE, sentence), 1, Integer::sum);
    }

    List<Problem> all() {
        List<Problem> all = new ArrayList<>();
        counts.forEach((kind, count) -> all.add(Problem.of(kind.code, kind.severity, where, kind.sentence + (count > 1 ? " (" + count + " times)" : ""))));
        return all;
    }
}
