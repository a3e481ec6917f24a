package saddlebar.stencil.code;

import java.util.Random;

import saddlebar.stencil.BitPicture;

/** Pictures for tests of coding. */
final class Fields {
    private Fields() {
    }

    /** Rows as text of 0 and 1. */
    static BitPicture of(String... rows) {
        BitPicture picture = new BitPicture(rows[0].length(), rows.length);
        for (int y = 0; y < rows.length; y++) {
            for (int x = 0; x < picture.widthPx(); x++) {
                picture.set(x, y, rows[y].charAt(x) == '1');
            }
        }
        return picture;
    }

    /** Runs of one row, white first. */
    static BitPicture row(int... runs) {
        StringBuilder row = new StringBuilder();
        for (int i = 0; i < runs.length; i++) {
            row.append((i % 2 == 0 ? "0" : "1").repeat(runs[i]));
        }
        return of(row.toString());
    }

    /** Each px black with this probability, apart from the others. */
    static BitPicture noise(int widthPx, int heightPx, double share, long seed) {
        Random random = new Random(seed);
        BitPicture picture = new BitPicture(widthPx, heightPx);
        for (int y = 0; y < heightPx; y++) {
            for (int x = 0; x < widthPx; x++) {
                picture.set(x, y, random.nextDouble() < share);
            }
        }
        return picture;
    }

    /** Runs of random length, each row the one above with its edges moved a little, so that every mode occurs. */
    static BitPicture drawn(int widthPx, int heightPx, long seed) {
        Random random = new Random(seed);
        BitPicture picture = new BitPicture(widthPx, heightPx);
        for (int y = 0; y < heightPx; y++) {
            if (y == 0 || random.nextInt(6) == 0) {
                boolean black = random.nextBoolean();
                int x = 0;
                while (x < widthPx) {
                    int run = 1 + (random.nextInt(4) == 0 ? random.nextInt(Math.max(1, widthPx)) : random.nextInt(12));
                    for (int end = Math.min(widthPx, x + run); x < end; x++) {
                        picture.set(x, y, black);
                    }
                    black = !black;
                }
            } else {
                int shift = random.nextInt(9) - 4;
                for (int x = 0; x < widthPx; x++) {
                    int from = x + shift;
                    picture.set(x, y, from >= 0 && from < widthPx && picture.get(from, y - 1) ^ random.nextInt(40) == 0);
                }
            }
        }
        return picture;
    }

    /** A clustered-dot screen: round dots that grow from left to right, on a grid of this pitch turned by 22.5 degrees. */
    static BitPicture dots(int widthPx, int heightPx, double pitchPx) {
        double cos = Math.cos(Math.toRadians(22.5)) / pitchPx;
        double sin = Math.sin(Math.toRadians(22.5)) / pitchPx;
        BitPicture picture = new BitPicture(widthPx, heightPx);
        for (int y = 0; y < heightPx; y++) {
            for (int x = 0; x < widthPx; x++) {
                double u = x * cos + y * sin;
                double v = y * cos - x * sin;
                double du = u - Math.rint(u);
                double dv = v - Math.rint(v);
                double radius = 0.7 * x / widthPx;
                picture.set(x, y, du * du + dv * dv < radius * radius);
            }
        }
        return picture;
    }
}
