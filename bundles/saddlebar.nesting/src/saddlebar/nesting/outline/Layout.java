package saddlebar.nesting.outline;

/** A copy of where everything lies, good or not. */
final class Layout {
    final int[] shape;
    final double[] x;
    final double[] y;
    final double loss;

    Layout(Board board, double loss) {
        shape = board.shape.clone();
        x = board.x.clone();
        y = board.y.clone();
        this.loss = loss;
    }

    void restore(Board board) {
        for (int i = 0; i < shape.length; i++) {
            board.put(i, shape[i], x[i], y[i]);
        }
        board.measure();
    }
}
