package saddlebar.ui.problems;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;

class ProblemBoardTest {
    private static Problem problem(Severity severity, String where, String words) {
        return Problem.of("code", severity, where, words);
    }

    @Test
    void worstFirstAndWhatTwoHaveFoundStandsOnce() {
        ProblemBoard board = new ProblemBoard();
        Problem note = problem(Severity.NOTE, "W01", "Small.");
        Problem error = problem(Severity.ERROR, "W01", "Open end.");
        board.put("W01", ProblemBoard.of("W01", List.of(note, error)));
        board.put("make", ProblemBoard.of("W01", List.of(error)));
        assertEquals(List.of("Open end.", "Small."), board.all().stream().map(placed -> placed.problem().message()).toList());
    }

    @Test
    void aSourceReplacesWhatItHasSaidBefore() {
        int[] told = {0};
        ProblemBoard board = new ProblemBoard();
        board.addListener(() -> told[0]++);
        board.put("W01", ProblemBoard.of("W01", List.of(problem(Severity.NOTE, "W01", "Small."))));
        board.put("W01", List.of());
        assertEquals(List.of(), board.all());
        assertEquals(2, told[0]);
    }

    @Test
    void aPlaceIsToldWithItsWindow() {
        List<PlacedProblem> placed = ProblemBoard.of("W01", List.of(problem(Severity.NOTE, "piece 3", "a"), problem(Severity.NOTE, "W01 piece 3", "a"),
                problem(Severity.NOTE, "", "b"), problem(Severity.NOTE, "W01", "b")));
        assertEquals(placed.get(0), placed.get(1));
        assertEquals(placed.get(2), placed.get(3));
    }

    @Test
    void eachBelongsToTheWindowItsPlaceBeginsWith() {
        List<PlacedProblem> sorted = ProblemBoard.sorted(List.of("W1", "W10"), List.of(problem(Severity.NOTE, "W10 piece 3", "a"),
                problem(Severity.NOTE, "W1", "b"), problem(Severity.NOTE, "fused-sheet", "c"), problem(Severity.NOTE, "W1-left matt", "d")));
        assertEquals(List.of("W10", "W1", "", "W1"), sorted.stream().map(PlacedProblem::windowName).toList());
    }
}
