package saddlebar.stencil.limits;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;

import saddlebar.stencil.BitPicture;

/** The limits by definition, slowly, on a picture with a wide rim of stencil around it. */
final class SlowLimits {
    private final int rim;
    private final int width;
    private final int height;
    private final int n;
    private final boolean[][] paint;

    SlowLimits(BitPicture picture, int n) {
        this.n = n;
        this.rim = 2 * n + 2;
        this.width = picture.widthPx() + 2 * rim;
        this.height = picture.heightPx() + 2 * rim;
        this.paint = new boolean[height][width];
        for (int y = 0; y < picture.heightPx(); y++) {
            for (int x = 0; x < picture.widthPx(); x++) {
                paint[y + rim][x + rim] = picture.get(x, y);
            }
        }
    }

    long tooFine() {
        boolean[][] left = opened(paint, false);
        return parts(paint, left).stream().filter(part -> !touches(part, left) || isRun(part, left)).count();
    }

    long bridgesLost() {
        boolean[][] bare = not(paint);
        boolean[][] left = opened(bare, true);
        return parts(bare, left).stream().filter(part -> !touches(part, left) || isRun(part, left) || eulerChange(part) < 0).count();
    }

    long looseIslands() {
        boolean[][] bare = not(paint);
        boolean[][] left = opened(bare, true);
        return parts(bare, left).stream().filter(part -> !touches(part, left)).count();
    }

    private boolean inDisc(int dx, int dy) {
        double x = dx - (n - 1) / 2.0;
        double y = dy - (n - 1) / 2.0;
        return x * x + y * y <= n * n / 4.0;
    }

    private boolean[][] opened(boolean[][] ones, boolean outside) {
        boolean[][] opened = new boolean[height][width];
        for (int y = -n; y < height; y++) {
            for (int x = -n; x < width; x++) {
                boolean fits = true;
                for (int dy = 0; dy < n && fits; dy++) {
                    for (int dx = 0; dx < n && fits; dx++) {
                        fits = !inDisc(dx, dy) || at(ones, x + dx, y + dy, outside);
                    }
                }
                for (int dy = 0; dy < n && fits; dy++) {
                    for (int dx = 0; dx < n; dx++) {
                        if (inDisc(dx, dy) && x + dx >= 0 && x + dx < width && y + dy >= 0 && y + dy < height) {
                            opened[y + dy][x + dx] = true;
                        }
                    }
                }
            }
        }
        return opened;
    }

    private boolean at(boolean[][] ones, int x, int y, boolean outside) {
        return x < 0 || y < 0 || x >= width || y >= height ? outside : ones[y][x];
    }

    private List<List<int[]>> parts(boolean[][] ones, boolean[][] left) {
        boolean[][] gone = new boolean[height][width];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                gone[y][x] = ones[y][x] && !left[y][x];
            }
        }
        return flood(gone, true);
    }

    private List<List<int[]>> flood(boolean[][] ones, boolean corners) {
        boolean[][] seen = new boolean[height][width];
        List<List<int[]>> parts = new ArrayList<>();
        for (int y0 = 0; y0 < height; y0++) {
            for (int x0 = 0; x0 < width; x0++) {
                if (!ones[y0][x0] || seen[y0][x0]) {
                    continue;
                }
                List<int[]> part = new ArrayList<>();
                ArrayDeque<int[]> open = new ArrayDeque<>();
                open.add(new int[] {x0, y0});
                seen[y0][x0] = true;
                while (!open.isEmpty()) {
                    int[] px = open.remove();
                    part.add(px);
                    for (int dy = -1; dy <= 1; dy++) {
                        for (int dx = -1; dx <= 1; dx++) {
                            int x = px[0] + dx;
                            int y = px[1] + dy;
                            if ((corners || dx == 0 || dy == 0) && at(ones, x, y, false) && !seen[y][x]) {
                                seen[y][x] = true;
                                open.add(new int[] {x, y});
                            }
                        }
                    }
                }
                parts.add(part);
            }
        }
        return parts;
    }

    private boolean touches(List<int[]> part, boolean[][] left) {
        return part.stream().anyMatch(px -> at(left, px[0] - 1, px[1], false) || at(left, px[0] + 1, px[1], false)
                || at(left, px[0], px[1] - 1, false) || at(left, px[0], px[1] + 1, false));
    }

    private boolean isRun(List<int[]> part, boolean[][] left) {
        for (int[] px : part) {
            boolean near = false;
            for (int y = px[1] - n; y <= px[1] + n; y++) {
                for (int x = px[0] - n; x <= px[0] + n; x++) {
                    near |= at(left, x, y, false) && 4 * ((x - px[0]) * (x - px[0]) + (y - px[1]) * (y - px[1])) <= n * n;
                }
            }
            if (!near) {
                return true;
            }
        }
        return false;
    }

    /** Painted parts less rings, with the part painted too, less the same as it is. */
    private int eulerChange(List<int[]> part) {
        boolean[][] filled = new boolean[height][];
        for (int y = 0; y < height; y++) {
            filled[y] = paint[y].clone();
        }
        for (int[] px : part) {
            filled[px[1]][px[0]] = true;
        }
        return euler(filled) - euler(paint);
    }

    private int euler(boolean[][] ones) {
        return flood(ones, true).size() - (flood(not(ones), false).size() - 1);
    }

    private boolean[][] not(boolean[][] ones) {
        boolean[][] not = new boolean[height][width];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                not[y][x] = !ones[y][x];
            }
        }
        return not;
    }
}
