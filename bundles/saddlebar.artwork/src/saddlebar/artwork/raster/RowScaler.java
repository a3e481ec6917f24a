package saddlebar.artwork.raster;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Rows of a picture scaled to device rows, streamed: reduced, each device pixel is the mean of what it covers (shares of pixels counted);
 * enlarged, pixels run into each other (linear between centres); at the same size and place, unchanged. Only the source rows that the next
 * device row needs are kept.
 */
final class RowScaler {
    /** Gives the next source row as numbers, {@code channels} a pixel. */
    interface Rows {
        void next(float[] row) throws IOException;
    }

    /**
     * How device pixels lie on source pixels in one direction: device pixel i covers source from {@code start + i * step} to
     * {@code start + (i + 1) * step}.
     */
    record Axis(double start, double step, int sourceCount, int deviceCount) {
        /** Closer than this to whole source pixels is meant to be whole: 25.4 mm has no exact inverse. */
        private static final double SLACK = 1e-6;

        private double from(int device) {
            return snapped(start + device * step);
        }

        private static double snapped(double value) {
            return Math.abs(value - Math.rint(value)) < SLACK ? Math.rint(value) : value;
        }

        boolean holds(int device) {
            double centre = start + (device + 0.5) * step;
            return centre >= 0 && centre < sourceCount;
        }

        /** First source pixel that counts. */
        int first(int device) {
            return step > 1 + SLACK ? clamp((int) Math.floor(from(device))) : clamp((int) Math.floor(snapped(start + (device + 0.5) * step - 0.5)));
        }

        /** Last source pixel that counts. */
        int last(int device) {
            if (step > 1 + SLACK) {
                return clamp((int) Math.ceil(from(device + 1)) - 1);
            }
            return clamp((int) Math.ceil(snapped(start + (device + 0.5) * step - 0.5)));
        }

        /** How much a source pixel counts; all of a device pixel add up to 1. */
        float weight(int device, int source) {
            int first = first(device);
            int last = last(device);
            if (first == last) {
                return 1;
            }
            if (step > 1 + SLACK) {
                double low = Math.max(0, from(device));
                double high = Math.min(sourceCount, from(device + 1));
                return (float) ((Math.min(high, source + 1.0) - Math.max(low, source)) / (high - low));
            }
            double at = snapped(start + (device + 0.5) * step - 0.5);
            return (float) (source == first ? last - at : at - first);
        }

        private int clamp(int source) {
            return Math.max(0, Math.min(sourceCount - 1, source));
        }
    }

    private record Kept(int index, float[] values) {
    }

    private final Rows source;
    private final Axis across;
    private final Axis down;
    private final int channels;
    private final float[] sourceRow;
    private final Deque<Kept> kept = new ArrayDeque<>();
    private final int[] from;
    private final float[][] weights;
    private int sourceNext;

    RowScaler(Rows source, Axis across, Axis down, int channels) {
        this.source = source;
        this.across = across;
        this.down = down;
        this.channels = channels;
        this.sourceRow = new float[across.sourceCount * channels];
        this.from = new int[across.deviceCount];
        this.weights = new float[across.deviceCount][];
        for (int x = 0; x < across.deviceCount; x++) {
            if (across.holds(x)) {
                from[x] = across.first(x);
                weights[x] = new float[across.last(x) - from[x] + 1];
                for (int i = 0; i < weights[x].length; i++) {
                    weights[x][i] = across.weight(x, from[x] + i);
                }
            }
        }
    }

    /** Whether the device row shows anything of the picture. */
    boolean holds(int deviceRow) {
        return down.holds(deviceRow);
    }

    /** Whether the device pixel of a row that shows something shows something. */
    boolean holdsColumn(int deviceColumn) {
        return weights[deviceColumn] != null;
    }

    /** One device row, each further down than the one before; pixels beside the picture are left as they are. */
    void row(int deviceRow, float[] target) throws IOException {
        int first = down.first(deviceRow);
        int last = down.last(deviceRow);
        while (!kept.isEmpty() && kept.peekFirst().index < first) {
            kept.removeFirst();
        }
        while (sourceNext <= last) {
            source.next(sourceRow);
            if (sourceNext >= first) {
                kept.addLast(new Kept(sourceNext, across()));
            }
            sourceNext++;
        }
        boolean begun = false;
        for (Kept one : kept) {
            if (one.index > last) {
                break;
            }
            float weight = down.weight(deviceRow, one.index);
            for (int x = 0; x < across.deviceCount; x++) {
                if (weights[x] != null) {
                    for (int i = x * channels; i < (x + 1) * channels; i++) {
                        target[i] = (begun ? target[i] : 0) + weight * one.values[i];
                    }
                }
            }
            begun = true;
        }
    }

    private float[] across() {
        float[] scaled = new float[across.deviceCount * channels];
        for (int x = 0; x < across.deviceCount; x++) {
            float[] parts = weights[x];
            if (parts == null) {
                continue;
            }
            for (int c = 0; c < channels; c++) {
                float sum = 0;
                for (int i = 0; i < parts.length; i++) {
                    sum += parts[i] * sourceRow[(from[x] + i) * channels + c];
                }
                scaled[x * channels + c] = sum;
            }
        }
        return scaled;
    }
}
