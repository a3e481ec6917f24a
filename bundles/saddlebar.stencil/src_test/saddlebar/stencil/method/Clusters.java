package saddlebar.stencil.method;

import java.util.ArrayDeque;

import saddlebar.stencil.BitPicture;

/** Clusters of painted px that touch by sides or corners. */
final class Clusters {
    private Clusters() {
    }

    static double meanSize(BitPicture bits) {
        return (double) bits.count() / count(bits);
    }

    static int count(BitPicture bits) {
        int width = bits.widthPx();
        int height = bits.heightPx();
        boolean[] seen = new boolean[width * height];
        int clusters = 0;
        for (int start = 0; start < seen.length; start++) {
            if (seen[start] || !bits.get(start % width, start / width)) {
                continue;
            }
            clusters++;
            ArrayDeque<Integer> open = new ArrayDeque<>();
            open.add(start);
            seen[start] = true;
            while (!open.isEmpty()) {
                int at = open.remove();
                for (int dy = -1; dy <= 1; dy++) {
                    for (int dx = -1; dx <= 1; dx++) {
                        int x = at % width + dx;
                        int y = at / width + dy;
                        if (x >= 0 && x < width && y >= 0 && y < height && !seen[y * width + x] && bits.get(x, y)) {
                            seen[y * width + x] = true;
                            open.add(y * width + x);
                        }
                    }
                }
            }
        }
        return clusters;
    }
}
