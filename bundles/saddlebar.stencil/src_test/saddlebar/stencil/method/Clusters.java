package saddlebar.stencil.method;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;

import saddlebar.stencil.BitPicture;

/** Clusters of painted px that touch by sides or corners. */
final class Clusters {
    private Clusters() {
    }

    static double meanSize(BitPicture bits) {
        return (double) bits.count() / count(bits);
    }

    static int count(BitPicture bits) {
        return sizes(bits, false).size();
    }

    /** Sizes of those that do not touch the picture's edge. */
    static List<Integer> sizesInside(BitPicture bits) {
        return sizes(bits, true);
    }

    private static List<Integer> sizes(BitPicture bits, boolean inside) {
        int width = bits.widthPx();
        int height = bits.heightPx();
        boolean[] seen = new boolean[width * height];
        List<Integer> sizes = new ArrayList<>();
        for (int start = 0; start < seen.length; start++) {
            if (seen[start] || !bits.get(start % width, start / width)) {
                continue;
            }
            int size = 0;
            boolean atEdge = false;
            ArrayDeque<Integer> open = new ArrayDeque<>();
            open.add(start);
            seen[start] = true;
            while (!open.isEmpty()) {
                int at = open.remove();
                size++;
                atEdge |= at % width == 0 || at % width == width - 1 || at / width == 0 || at / width == height - 1;
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
            if (!inside || !atEdge) {
                sizes.add(size);
            }
        }
        return sizes;
    }
}
