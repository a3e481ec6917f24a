package saddlebar.cartoon;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

import com.sun.management.OperatingSystemMXBean;

import saddlebar.model.art.DrawnLine;

/**
 * Prints the table of growth of docs/algorithms/cartoon.md: cells with bent joints, strokes to checked pieces. Processor time of the whole
 * process on all cores, so that what else runs on the machine changes little. Argument: how often each.
 */
final class MeasureCartoon {
    private static final int[] CELLS_ACROSS = {21, 41, 82, 164};
    private static final double CELL_MM = 35;

    private MeasureCartoon() {
    }

    public static void main(String[] args) {
        int times = Integer.parseInt(args[0]);
        System.out.println("| strokes | points | pieces | processor seconds (median of " + times + ") | exponent to the row before | seconds by the clock |");
        System.out.println("| --- | --- | --- | --- | --- | --- |");
        double strokesBefore = 0;
        double secondsBefore = 0;
        for (int across : CELLS_ACROSS) {
            List<DrawnLine> lines = drawing(across);
            double[] seconds = new double[times];
            double[] clock = new double[times];
            int pieces = 0;
            for (int k = -1; k < times; k++) { // the first is not counted
                long start = cpuNs();
                long startClock = System.nanoTime();
                pieces = Drawings.make(lines).pieces().size();
                seconds[Math.max(0, k)] = (cpuNs() - start) / 1e9;
                clock[Math.max(0, k)] = (System.nanoTime() - startClock) / 1e9;
            }
            Arrays.sort(seconds);
            Arrays.sort(clock);
            double median = seconds[times / 2];
            String exponent = secondsBefore == 0
                    ? ""
                    : String.format(Locale.ROOT, "%.2f", Math.log(median / secondsBefore) / Math.log(lines.size() / strokesBefore));
            System.out.printf(Locale.ROOT, "| %d | %d | %d | %.2f | %s | %.2f |%n", lines.size(), lines.stream().mapToInt(DrawnLine::points).sum(), pieces,
                    median, exponent, clock[times / 2]);
            strokesBefore = lines.size();
            secondsBefore = median;
        }
    }

    private static long cpuNs() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }

    /** About three strokes a cell. */
    static List<DrawnLine> drawing(int across) {
        return Drawings.cells(across, across * CELL_MM, across * CELL_MM, 14, 0.25, 7);
    }
}
