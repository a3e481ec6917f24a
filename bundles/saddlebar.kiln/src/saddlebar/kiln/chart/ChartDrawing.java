package saddlebar.kiln.chart;

import java.util.List;

import saddlebar.model.units.Require;

/**
 * A chart as marks, for whoever draws it: a file of vectors, a picture, the screen. Immutable.
 *
 * @param widthPt  of the whole
 * @param heightPt of the whole
 * @param marks    in the order in which they are drawn
 * @param plots    where the diagrams lie, from the top, so that a place can be read back
 */
public record ChartDrawing(double widthPt, double heightPt, List<Mark> marks, List<Plot> plots) {
    public ChartDrawing {
        Require.within("widthPt", widthPt, 1, 1e5);
        Require.within("heightPt", heightPt, 1, 1e5);
        marks = List.copyOf(marks);
        plots = List.copyOf(plots);
    }

    /**
     * One diagram: hours from its left, values from its foot.
     *
     * @param hours at its right side
     * @param least at its foot
     * @param most  at its top
     */
    public record Plot(double left, double top, double width, double height, double hours, double least, double most) {
        public double x(double atHours) {
            return left + width * atHours / hours;
        }

        public double y(double value) {
            return top + height * (most - value) / (most - least);
        }

        /** The hour under a point; below 0 or above {@link #hours} beside the diagram. */
        public double hoursAt(double x) {
            return (x - left) / width * hours;
        }

        public boolean holds(double x, double y) {
            return x >= left && x <= left + width && y >= top && y <= top + height;
        }
    }
}
