package saddlebar.ui.tracing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the steps of a trail are drawn: a column for each step of the work from the drawing at the left to the defect at the right, in each the earliest on top.
 * Columns that nothing stands in take no room.
 *
 * @param boxes   one a step, in the order of the steps
 * @param columns how many there are
 * @param rows    of the fullest column
 */
record WayBackLayout(List<Box> boxes, int columns, int rows) {
    private static final List<String> ORDER = List.of("bring", "pieces", "stencil", "sheet", "fuse", "mix", "pull", "fire", "glaze", "fix", "defect");

    /** Column and row, from 0. */
    record Box(int column, int row) {
    }

    static WayBackLayout of(Trail trail) {
        List<Integer> used = trail.steps().stream().map(step -> rank(step.kind())).distinct().sorted().toList();
        Map<Integer, Integer> filled = new HashMap<>();
        List<Box> boxes = new ArrayList<>();
        for (Trail.Step step : trail.steps()) {
            int column = used.indexOf(rank(step.kind()));
            boxes.add(new Box(column, filled.merge(column, 1, Integer::sum) - 1));
        }
        return new WayBackLayout(List.copyOf(boxes), used.size(), filled.values().stream().mapToInt(Integer::intValue).max().orElse(0));
    }

    private static int rank(String kind) {
        int rank = ORDER.indexOf(kind);
        return rank < 0 ? ORDER.size() : rank;
    }

    /** The step that lies next in a direction, or the same: by arrows one gets everywhere. */
    int next(int from, int columns, int rows) {
        Box at = boxes.get(from);
        int best = from;
        double near = Double.MAX_VALUE;
        for (int i = 0; i < boxes.size(); i++) {
            int over = boxes.get(i).column - at.column;
            int down = boxes.get(i).row - at.row;
            boolean there = columns != 0 ? Integer.signum(over) == columns : over == 0 && Integer.signum(down) == rows;
            double far = columns != 0 ? Math.abs(over) * 1000.0 + Math.abs(down) : Math.abs(down);
            if (there && far < near) {
                near = far;
                best = i;
            }
        }
        return best;
    }
}
