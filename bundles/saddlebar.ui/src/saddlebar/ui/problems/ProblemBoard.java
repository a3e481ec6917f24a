package saddlebar.ui.problems;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

import saddlebar.cartoon.CutlineProblems;
import saddlebar.model.problem.Problem;
import saddlebar.production.light.PlacedMend;

/** Where all problems of the open commission hang, by who found them: each Easel, production. On the screen's thread. */
public final class ProblemBoard {
    private final Map<String, List<PlacedProblem>> bySource = new TreeMap<>();
    private final Map<String, List<PlacedMend>> mendsBySource = new TreeMap<>();
    private final List<Runnable> listeners = new ArrayList<>();

    /** Replaces what this source has found before. */
    public void put(String source, List<PlacedProblem> problems) {
        bySource.put(source, List.copyOf(problems));
        changed();
    }

    /** Replaces what this source has found before, with what it proposes against it. */
    public void put(String source, List<PlacedProblem> problems, List<PlacedMend> mends) {
        mendsBySource.put(source, List.copyOf(mends));
        put(source, problems);
    }

    /**
     * A window's cutline was mended: what others than its Easel have found of its lines before is not so any more; the Easel looks again by itself.
     */
    public void mended(String windowName) {
        Set<String> ofLines = Set.of(CutlineProblems.OPEN_END, CutlineProblems.CROSSING_END, CutlineProblems.DOUBLED_LINE, CutlineProblems.CUT_ENDS_INSIDE,
                CutlineProblems.DIVIDES_NOTHING);
        bySource.replaceAll((source, problems) -> source.equals(windowName)
                ? problems
                : problems.stream().filter(placed -> !placed.windowName().equals(windowName) || !ofLines.contains(placed.problem().code())).toList());
        changed();
    }

    /** All proposals, in the order in which they were made. */
    public List<PlacedMend> mends() {
        return mendsBySource.values().stream().flatMap(List::stream).toList();
    }

    /** The nearest proposal that answers a problem. */
    public Optional<PlacedMend> mend(PlacedProblem problem) {
        return mends().stream().filter(mend -> mend.answers(problem.windowName(), problem.problem()))
                .min(Comparator.comparingDouble(mend -> mend.distance(problem.problem().at().orElseThrow())));
    }

    /** Another commission: nothing is known of it yet. */
    public void clear() {
        bySource.clear();
        mendsBySource.clear();
        changed();
    }

    /** Worst first; what several have found stands once. */
    public List<PlacedProblem> all() {
        Set<PlacedProblem> all = new LinkedHashSet<>();
        bySource.values().forEach(all::addAll);
        return all.stream().sorted(Comparator.comparing(PlacedProblem::problem, Problem.WORST_FIRST).thenComparing(PlacedProblem::windowName)).toList();
    }

    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }

    private void changed() {
        List.copyOf(listeners).forEach(Runnable::run);
    }

    /** Problems that all belong to one window; a place that does not name the window is told with it, so that all tell the same place alike. */
    public static List<PlacedProblem> of(String windowName, List<Problem> problems) {
        return problems.stream().map(problem -> new PlacedProblem(windowName, placed(windowName, problem))).toList();
    }

    private static Problem placed(String windowName, Problem problem) {
        if (belongsTo(windowName, problem)) {
            return problem;
        }
        String where = problem.where().isEmpty() ? windowName : windowName + " " + problem.where();
        return new Problem(problem.code(), problem.severity(), where, problem.at(), problem.message());
    }

    private static boolean belongsTo(String windowName, Problem problem) {
        return problem.where().equals(windowName) || problem.where().startsWith(windowName + " ") || problem.where().startsWith(windowName + "-");
    }

    /** Problems of several windows: each belongs to the window whose name its place begins with, or to none. */
    public static List<PlacedProblem> sorted(List<String> windowNames, List<Problem> problems) {
        return problems.stream().map(problem -> new PlacedProblem(windowNames.stream()
                .filter(name -> belongsTo(name, problem))
                .findFirst().orElse(""), problem)).toList();
    }
}
