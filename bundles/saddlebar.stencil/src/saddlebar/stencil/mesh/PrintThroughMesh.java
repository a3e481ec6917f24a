package saddlebar.stencil.mesh;

import saddlebar.model.units.Require;
import saddlebar.model.units.Units;
import saddlebar.stencil.BitPicture;

/**
 * What a stencil prints through a mesh, foretold so that a beat can be seen before anything is printed. Paint passes where the stencil and the mesh are
 * both open; it spreads to its sides as a bell curve of the given width; glass is covered where what arrives is more than half of what a mesh without
 * a stencil lets pass, fading from bare to covered over a quarter of that to either side. Our own and simple: it knows no flow, pressure or drying,
 * and overstates the beat where paint levels.
 *
 * @param mesh         as woven or under tension
 * @param meshAngleDeg angle of the threads, x towards y
 * @param spreadUm     standard deviation of the bell curve, 1 to 500; about a thread's width for paint that hardly flows
 */
public record PrintThroughMesh(Mesh mesh, double meshAngleDeg, double spreadUm) {
    private static final int SUB = 3;

    public PrintThroughMesh {
        Require.finite("meshAngleDeg", meshAngleDeg);
        Require.within("spreadUm", spreadUm, 1, 500);
    }

    /** A spread of one thread. */
    public static PrintThroughMesh of(Mesh mesh, double meshAngleDeg) {
        return new PrintThroughMesh(mesh, meshAngleDeg, mesh.threadUm());
    }

    /** Share of each px that is covered, row by row. */
    public float[] covered(BitPicture stencil, double dpi) {
        int width = stencil.widthPx();
        int height = stencil.heightPx();
        double pxUm = Units.UM_PER_INCH / dpi;
        float[] paint = new float[Math.multiplyExact(width, height)];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                if (stencil.get(x, y)) {
                    paint[y * width + x] = open(x, y, pxUm);
                }
            }
        }
        float[] spread = spread(spread(paint, width, height, pxUm, true), width, height, pxUm, false);
        float half = (float) (mesh.openArea() / 2);
        for (int i = 0; i < spread.length; i++) {
            spread[i] = Math.max(0, Math.min(1, (spread[i] - half / 2) / half));
        }
        return spread;
    }

    /** Share of a px that the threads leave open, by 3 x 3 places in it. */
    private float open(int x, int y, double pxUm) {
        double angle = StrictMath.toRadians(meshAngleDeg);
        double c = StrictMath.cos(angle);
        double s = StrictMath.sin(angle);
        double pitch = mesh.pitchUm();
        double opening = mesh.openingUm();
        int open = 0;
        for (int j = 0; j < SUB; j++) {
            for (int i = 0; i < SUB; i++) {
                double px = (x + (i + 0.5) / SUB) * pxUm;
                double py = (y + (j + 0.5) / SUB) * pxUm;
                double u = px * c + py * s;
                double v = py * c - px * s;
                if (u - Math.floor(u / pitch) * pitch < opening && v - Math.floor(v / pitch) * pitch < opening) {
                    open++;
                }
            }
        }
        return (float) open / (SUB * SUB);
    }

    private float[] spread(float[] from, int width, int height, double pxUm, boolean across) {
        int reach = (int) Math.ceil(3 * spreadUm / pxUm);
        float[] bell = new float[2 * reach + 1];
        double sum = 0;
        for (int d = -reach; d <= reach; d++) {
            sum += StrictMath.exp(-d * d * pxUm * pxUm / (2 * spreadUm * spreadUm));
        }
        for (int d = -reach; d <= reach; d++) {
            bell[d + reach] = (float) (StrictMath.exp(-d * d * pxUm * pxUm / (2 * spreadUm * spreadUm)) / sum);
        }
        float[] to = new float[from.length];
        int step = across ? 1 : width;
        int last = (across ? width : height) - 1;
        for (int y = 0, i = 0; y < height; y++) {
            for (int x = 0; x < width; x++, i++) {
                int at = across ? x : y;
                float value = 0;
                for (int d = Math.max(-reach, -at); d <= Math.min(reach, last - at); d++) {
                    value += bell[d + reach] * from[i + d * step];
                }
                to[i] = value;
            }
        }
        return to;
    }
}
