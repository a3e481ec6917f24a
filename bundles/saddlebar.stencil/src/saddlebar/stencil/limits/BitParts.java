package saddlebar.stencil.limits;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;

import saddlebar.stencil.BitPicture;

/** Parts of a picture whose 1s touch, corners too. */
final class BitParts {
    private BitParts() {
    }

    /** First px, x and y, of each part, from the top; no more than {@code most}. */
    static List<int[]> firsts(BitPicture bits, int most) {
        int width = bits.widthPx();
        int height = bits.heightPx();
        boolean[] seen = new boolean[Math.multiplyExact(width, height)];
        List<int[]> firsts = new ArrayList<>();
        for (int start = 0; start < seen.length && firsts.size() < most; start++) {
            if (seen[start] || !bits.get(start % width, start / width)) {
                continue;
            }
            firsts.add(new int[] {start % width, start / width});
            ArrayDeque<Integer> open = new ArrayDeque<>(List.of(start));
            seen[start] = true;
            while (!open.isEmpty()) {
                int at = open.remove();
                for (int d = 0; d < 9; d++) {
                    int x = at % width + d % 3 - 1;
                    int y = at / width + d / 3 - 1;
                    if (x >= 0 && y >= 0 && x < width && y < height && !seen[y * width + x] && bits.get(x, y)) {
                        seen[y * width + x] = true;
                        open.add(y * width + x);
                    }
                }
            }
        }
        return firsts;
    }
}
