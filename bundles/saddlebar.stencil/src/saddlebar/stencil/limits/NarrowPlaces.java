package saddlebar.stencil.limits;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds where the 1s of a bit picture are narrower than a disc. Opening by the disc takes away the narrow places and, as dust, the tips of
 * corners and steps that no disc fills. What was taken away is gathered into places (px that touch by sides or corners); a place counts if
 * <ul>
 * <li>no disc is left beside it: the whole part is gone;</li>
 * <li>it holds a px farther from what is left than the disc's radius: a run, not a tip;</li>
 * <li>it is a neck, where necks are asked for: with it gone the 0s join, or close a ring. Told by the change of the Euler number of the 0s,
 * summed over squares of 2 x 2 px: (Q1 - Q3 - 2 QD)/4, 0s connected by corners too.</li>
 * </ul>
 * Streamed, memory proportional to the disc's rows.
 *
 * <p>Sources: Serra, Image Analysis and Mathematical Morphology, Academic Press, 1982 (opening); Gray, Local properties of binary images in two
 * dimensions, IEEE Trans. Computers C-20(5), 1971, 551-561 (Euler number). The three rules are our own.
 */
final class NarrowPlaces {
    private static final int MOST_PLACES = 100;
    /** Four times the part of a 2 x 2 square in the Euler number, by its bits, for 8-connected 1s. */
    private static final int[] EULER = {0, 1, 1, 0, 1, 0, -2, -1, 1, -2, 0, -1, 0, -1, -1, 0};

    private final int widthPx;
    private final int heightPx;
    private final Disc disc;
    private final boolean necksCount;
    private final long fill;
    private final int padPx;
    private final int padWords;
    private final int words;
    private final DiscOpening opening;
    private final long[][] rows;
    private final long[][] opened;
    private final long[] outside;
    private int rowsIn;
    private int openedOut;
    private int labelled;

    private Runs above = new Runs();
    private Runs here = new Runs();
    private Parts parts = new Parts();
    private Parts next = new Parts();
    private long[] narrowAbove;
    private long[] narrow;

    private long count;
    private long wholeParts;
    private final List<int[]> places = new ArrayList<>();

    /**
     * @param outsideIsOne whether the 1s go on outside the picture
     * @param necksCount   whether a narrow neck between two wide parts counts, however short
     */
    NarrowPlaces(int widthPx, int heightPx, Disc disc, boolean outsideIsOne, boolean necksCount) {
        this.widthPx = widthPx;
        this.heightPx = heightPx;
        this.disc = disc;
        this.necksCount = necksCount;
        this.fill = outsideIsOne ? -1 : 0;
        this.padWords = (2 * disc.sizePx() + 63 >> 6) + 1;
        this.padPx = padWords << 6;
        this.words = (widthPx + 63 >> 6) + 2 * padWords;
        this.opening = new DiscOpening(disc, words, fill);
        this.rows = new long[disc.sizePx() + disc.reach() + 2][words];
        this.opened = new long[2 * disc.reach() + 3][words];
        this.outside = new long[words];
        this.narrow = new long[words];
        this.narrowAbove = new long[words];
        Arrays.fill(outside, fill);
        for (long[] row : rows) {
            Arrays.fill(row, fill);
        }
        for (long[] row : opened) {
            Arrays.fill(row, fill);
        }
        for (int y = 0; y < margin(); y++) {
            pushRow(outside);
        }
    }

    /** Rows outside the picture that are taken above it. */
    private int margin() {
        return 2 * disc.sizePx();
    }

    /** Takes the next row, laid out as {@link saddlebar.stencil.BitBands} from word {@code from}; {@code flip} is 0, or -1 to find narrow 0s. */
    void add(long[] bits, int from, long flip) {
        long[] row = rows[rowsIn % rows.length];
        int inner = words - 2 * padWords;
        Arrays.fill(row, 0, padWords, fill);
        for (int i = 0; i < inner; i++) {
            row[padWords + i] = bits[from + i] ^ flip;
        }
        int past = inner * 64 - widthPx;
        long pastBits = past == 0 ? 0 : -1L >>> 64 - past;
        row[padWords + inner - 1] = row[padWords + inner - 1] & ~pastBits | fill & pastBits;
        Arrays.fill(row, padWords + inner, words, fill);
        pushRow(row);
    }

    /** Ends the picture: one row more is looked at, in which every part ends. */
    void finish() {
        while (labelled <= heightPx) {
            System.arraycopy(outside, 0, rows[rowsIn % rows.length], 0, words);
            pushRow(outside);
        }
    }

    private void pushRow(long[] row) {
        rowsIn++;
        if (opening.push(row, opened[openedOut % opened.length])) {
            openedOut++;
            int y = openedOut - 1 - margin() - disc.reach() - 1; // picture row below and above which all that is asked for is there
            if (y >= 0 && y <= heightPx) {
                label(y);
                labelled = y + 1;
            }
        }
    }

    private long[] openedAt(int y) {
        return opened[(y + margin()) % opened.length];
    }

    private long[] rowAt(int y) {
        return rows[(y + margin()) % rows.length];
    }

    private void label(int y) {
        long[] row = rowAt(y);
        long[] left = openedAt(y);
        for (int i = 0; i < words; i++) {
            narrow[i] = row[i] & ~left[i];
        }
        here.collect(narrow);
        for (int r = 0, a = 0; r < here.count; r++) {
            int start = here.start[r];
            int end = here.end[r];
            while (a < above.count && above.end[a] < start) {
                a++;
            }
            int part = -1;
            for (int b = a; b < above.count && above.start[b] <= end; b++) {
                int other = parts.root(above.part[b]);
                part = part < 0 ? other : parts.join(part, other);
            }
            if (part < 0) {
                part = parts.open(start - padPx, y);
            }
            here.part[r] = part;
            look(part, y, start, end);
        }
        if (necksCount) {
            euler(y);
        }
        endParts();
        Runs swap = above;
        above = here;
        here = swap;
        long[] swapRow = narrowAbove;
        narrowAbove = narrow;
        narrow = swapRow;
    }

    private void look(int part, int y, int start, int end) {
        long[] left = openedAt(y);
        if (!parts.touches[part]) {
            parts.touches[part] = BitRow.get(left, start - 1) || BitRow.get(left, end) || BitRow.any(openedAt(y - 1), start, end)
                    || BitRow.any(openedAt(y + 1), start, end);
        }
        for (int x = start; x < end && !parts.runs[part]; x++) {
            parts.runs[part] = farFromWhatIsLeft(x, y);
        }
    }

    /** Looks outwards from the middle row: what is left is mostly near. */
    private boolean farFromWhatIsLeft(int x, int y) {
        for (int dy = 0; dy <= disc.reach(); dy++) {
            int side = disc.near(dy);
            if (BitRow.any(openedAt(y + dy), x - side, x + side + 1) || dy > 0 && BitRow.any(openedAt(y - dy), x - side, x + side + 1)) {
                return false;
            }
        }
        return true;
    }

    /** Squares of rows y - 1 and y. All narrow px of a square touch, so that they belong to one part. */
    private void euler(int y) {
        long[] rowHere = rowAt(y);
        long[] rowAbove = y == 0 ? outside : rowAt(y - 1);
        for (int r = 0; r < here.count; r++) {
            int part = parts.root(here.part[r]);
            for (int x = here.start[r]; x <= here.end[r]; x++) {
                parts.euler[part] += change(rowAbove, rowHere, x);
            }
        }
        for (int r = 0; r < above.count; r++) {
            int part = parts.root(above.part[r]);
            for (int x = above.start[r]; x <= above.end[r]; x++) {
                if (!BitRow.get(narrow, x - 1) && !BitRow.get(narrow, x)) { // else counted above
                    parts.euler[part] += change(rowAbove, rowHere, x);
                }
            }
        }
    }

    private int change(long[] rowAbove, long[] rowHere, int x) {
        int zeros = square(rowAbove, rowHere, x) ^ 15;
        int taken = square(narrowAbove, narrow, x);
        return EULER[zeros | taken] - EULER[zeros];
    }

    private static int square(long[] rowAbove, long[] rowHere, int x) {
        return (BitRow.get(rowAbove, x - 1) ? 8 : 0) | (BitRow.get(rowAbove, x) ? 4 : 0) | (BitRow.get(rowHere, x - 1) ? 2 : 0)
                | (BitRow.get(rowHere, x) ? 1 : 0);
    }

    /** Counts the parts that did not reach this row, and numbers the others anew. */
    private void endParts() {
        int[] renumbered = new int[parts.count];
        Arrays.fill(renumbered, -1);
        next.count = 0;
        for (int r = 0; r < here.count; r++) {
            int root = parts.root(here.part[r]);
            if (renumbered[root] < 0) {
                renumbered[root] = next.take(parts, root);
            }
            here.part[r] = renumbered[root];
        }
        for (int part = 0; part < parts.count; part++) {
            if (parts.parent[part] == part && renumbered[part] < 0) {
                judge(part);
            }
        }
        Parts swap = parts;
        parts = next;
        next = swap;
    }

    private void judge(int part) {
        boolean whole = !parts.touches[part];
        if (whole) {
            wholeParts++;
        }
        if (whole || parts.runs[part] || necksCount && parts.euler[part] < 0) {
            count++;
            if (places.size() < MOST_PLACES) {
                places.add(new int[] {parts.firstX[part], parts.firstY[part]});
            }
        }
    }

    long count() {
        return count;
    }

    /** Those counted beside which nothing is left. */
    long wholeParts() {
        return wholeParts;
    }

    /** First px, x and y, of the first places whose end was reached. */
    List<int[]> places() {
        return places;
    }

    /** Runs of 1s of a row, from start to before end. */
    private static final class Runs {
        private int[] start = new int[64];
        private int[] end = new int[64];
        private int[] part = new int[64];
        private int count;

        private void collect(long[] row) {
            count = 0;
            for (int word = 0; word < row.length; word++) {
                long bits = row[word];
                while (bits != 0) {
                    int first = Long.numberOfLeadingZeros(bits);
                    int length = Long.numberOfLeadingZeros(~(bits << first));
                    add((word << 6) + first, (word << 6) + Math.min(64, first + length));
                    bits = first + length >= 64 ? 0 : bits & -1L >>> first + length;
                }
            }
        }

        private void add(int from, int to) {
            if (count > 0 && end[count - 1] == from) {
                end[count - 1] = to;
                return;
            }
            if (count == start.length) {
                start = Arrays.copyOf(start, 2 * count);
                end = Arrays.copyOf(end, 2 * count);
                part = Arrays.copyOf(part, 2 * count);
            }
            start[count] = from;
            end[count++] = to;
        }
    }

    /** Parts that are still growing: union-find with what was seen of each. */
    private static final class Parts {
        private int[] parent = new int[64];
        private boolean[] touches = new boolean[64];
        private boolean[] runs = new boolean[64];
        private int[] euler = new int[64];
        private int[] firstX = new int[64];
        private int[] firstY = new int[64];
        private int count;

        private int open(int x, int y) {
            if (count == parent.length) {
                int size = 2 * count;
                parent = Arrays.copyOf(parent, size);
                touches = Arrays.copyOf(touches, size);
                runs = Arrays.copyOf(runs, size);
                euler = Arrays.copyOf(euler, size);
                firstX = Arrays.copyOf(firstX, size);
                firstY = Arrays.copyOf(firstY, size);
            }
            parent[count] = count;
            touches[count] = false;
            runs[count] = false;
            euler[count] = 0;
            firstX[count] = x;
            firstY[count] = y;
            return count++;
        }

        private int take(Parts others, int root) {
            int part = open(others.firstX[root], others.firstY[root]);
            touches[part] = others.touches[root];
            runs[part] = others.runs[root];
            euler[part] = others.euler[root];
            return part;
        }

        private int root(int part) {
            int root = part;
            while (parent[root] != root) {
                parent[root] = parent[parent[root]];
                root = parent[root];
            }
            return root;
        }

        private int join(int first, int second) {
            int a = root(first);
            int b = root(second);
            if (a == b) {
                return a;
            }
            int keep = Math.min(a, b);
            int gone = Math.max(a, b);
            parent[gone] = keep;
            touches[keep] |= touches[gone];
            runs[keep] |= runs[gone];
            euler[keep] += euler[gone];
            if (firstY[gone] < firstY[keep] || firstY[gone] == firstY[keep] && firstX[gone] < firstX[keep]) {
                firstX[keep] = firstX[gone];
                firstY[keep] = firstY[gone];
            }
            return keep;
        }
    }
}
