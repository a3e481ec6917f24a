package saddlebar.artwork.svg;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.w3c.dom.Element;

import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;

/** Gathers what was met in one file. Of one kind the first places are told each, the rest as a number. Belongs to one thread. */
final class Findings {
    private static final int MOST_OF_A_KIND = 8;

    private final String fileName;
    private final Map<String, Integer> counts = new LinkedHashMap<>();
    private final Map<String, Problem> last = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    Findings(String fileName) {
        this.fileName = fileName;
    }

    String fileName() {
        return fileName;
    }

    String where(int line) {
        return line > 0 ? fileName + ":" + line : fileName;
    }

    String where(Element element) {
        return where(Source.line(element));
    }

    /** Something that will not look as meant. */
    void warn(String code, Element element, String kind, String sentence) {
        add(code, Severity.WARNING, Source.line(element), kind, Source.tag(element) + ": " + sentence);
    }

    /** Something good to know. */
    void note(String code, Element element, String kind, String sentence) {
        add(code, Severity.NOTE, Source.line(element), kind, Source.tag(element) + ": " + sentence);
    }

    void add(String code, Severity severity, int line, String kind, String sentence) {
        String key = code + " " + kind;
        int count = counts.merge(key, 1, Integer::sum);
        Problem problem = Problem.of(code, severity, where(line), sentence);
        if (count <= MOST_OF_A_KIND) {
            problems.add(problem);
        }
        last.put(key, problem);
    }

    List<Problem> all() {
        List<Problem> all = new ArrayList<>(problems);
        counts.forEach((key, count) -> {
            if (count > MOST_OF_A_KIND) {
                Problem one = last.get(key);
                int more = count - MOST_OF_A_KIND;
                all.add(Problem.of(one.code(), one.severity(), one.where(),
                        "and " + more + (more == 1 ? " more place like this, the last" : " more places like this, the last") + " here: " + one.message()));
            }
        });
        return all;
    }
}
