import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** One window: its cartoon, its glass in two colourways and its painted layers, written as one SVG in millimetres. */
final class Sheet {
    /** Glass of the piece that holds the point, for the two colourways. */
    private record Seed(double x, double y, String first, String second) {
    }

    private static final double GLASS_MM = 0.03;

    private final String title;
    private final double widthMm;
    private final double heightMm;
    private final Curve panel;
    private final List<Seed> seeds = new ArrayList<>();

    final Cartoon cartoon;
    final Layer matt;
    final Layer stain;
    final Layer trace;
    final Layer lettering;

    /** @param mattStrength share of the densities of the matt that is laid on */
    Sheet(String title, double widthMm, double heightMm, Curve panel, double mattStrength) {
        this.title = title;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
        this.panel = panel;
        cartoon = new Cartoon(panel);
        matt = new Layer("matt", panel.path(), mattStrength);
        stain = new Layer("stain", panel.path(), 1);
        trace = new Layer("trace", panel.path(), 1);
        lettering = new Layer("lettering", panel.path(), 1);
    }

    Curve cut(double... points) {
        return cartoon.cut(points);
    }

    Curve cut(Curve line) {
        return cartoon.cut(line);
    }

    /** Chooses glass for the piece around a point. */
    void glass(double x, double y, String springTide, String neapLight) {
        seeds.add(new Seed(x, y, springTide, neapLight));
    }

    /** What is wrong with the sheet, and where; empty when all is well. */
    List<String> faults(List<Arrangement.Face> faces) {
        List<String> faults = new ArrayList<>(cartoon.faults());
        for (Arrangement.Face face : faces) {
            List<Seed> in = seeds.stream().filter(s -> face.path().contains(s.x, s.y)).toList();
            if (in.size() != 1) {
                faults.add(String.format(Locale.ROOT, "%d glasses %s for the piece around %.0f, %.0f of %.0f mm2", in.size(), in, face.labelX(),
                        face.labelY(), face.areaMm2()));
            }
        }
        for (Seed s : seeds) {
            if (faces.stream().noneMatch(f -> f.path().contains(s.x, s.y))) {
                faults.add("no piece around " + s);
            }
        }
        return faults;
    }

    List<Arrangement.Face> faces(List<Curve> lines) {
        return Arrangement.faces(lines.stream().map(Curve::samples).toList());
    }

    String svg(Palette palette, List<Curve> lines, List<Arrangement.Face> faces) {
        StringBuilder out = new StringBuilder();
        String size = SvgNumber.of(widthMm) + "mm\" height=\"" + SvgNumber.of(heightMm) + "mm\" viewBox=\"0 0 " + SvgNumber.of(widthMm) + " "
                + SvgNumber.of(heightMm);
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" width=\"").append(size).append("\">\n");
        out.append("<title>").append(title).append("</title>\n<defs>\n");
        for (Layer layer : List.of(matt, stain, trace, lettering)) {
            layer.gradients().forEach(g -> out.append(g).append('\n'));
        }
        out.append("</defs>\n");
        glass(out, "glass-neap-light", "Glass: Neap light", palette, faces, false);
        glass(out, "glass-spring-tide", "Glass: Spring tide", palette, faces, true);
        paint(out, "stain", "Stain", stain);
        paint(out, "matt", "Matt", matt);
        paint(out, "trace", "Trace", trace);
        if (!lettering.marks().isEmpty()) {
            paint(out, "lettering", "Lettering", lettering);
        }
        open(out, "cutline", "Cutline", " fill=\"none\" stroke=\"#000\" stroke-width=\"0.5\" stroke-linejoin=\"round\"");
        for (int i = 0; i < lines.size(); i++) {
            String id = i == 0 ? "panel" : "cut-" + i;
            out.append("<path id=\"").append(id).append("\" d=\"").append(Layer.data(lines.get(i).path().getPathIterator(null))).append("\"/>\n");
        }
        return out.append("</g>\n</svg>\n").toString();
    }

    private void glass(StringBuilder out, String id, String label, Palette palette, List<Arrangement.Face> faces, boolean first) {
        open(out, id, label, "");
        for (Arrangement.Face face : faces) {
            Seed seed = seeds.stream().filter(s -> face.path().contains(s.x, s.y)).findFirst().orElse(null);
            String name = seed == null ? "none" : first ? seed.first : seed.second;
            String colour = seed == null ? "#ff00ff" : palette.colour(name);
            Arrangement.Face drawn = thinned(face, GLASS_MM);
            out.append("<path fill=\"").append(colour).append("\" data-glass=\"").append(name).append("\" d=\"")
                    .append(Layer.data(drawn.path().getPathIterator(null))).append("\"/>\n");
        }
        out.append("</g>\n");
    }

    /** The face with no more points than its shape needs, to the tolerance given. */
    static Arrangement.Face thinned(Arrangement.Face face, double toleranceMm) {
        return new Arrangement.Face(simple(face.outline(), toleranceMm), face.areaMm2(), face.labelX(), face.labelY(), face.inradiusMm());
    }

    private static void paint(StringBuilder out, String id, String label, Layer layer) {
        open(out, id, label, "");
        layer.marks().forEach(m -> out.append(m).append('\n'));
        out.append("</g>\n");
    }

    private static void open(StringBuilder out, String id, String label, String more) {
        out.append("<g id=\"").append(id).append("\" data-name=\"").append(label).append('"').append(more).append(">\n<title>").append(label)
                .append("</title>\n");
    }

    /** The outline with the points left out that lie within the tolerance of the way between those that stay (Douglas and Peucker 1973). */
    private static double[][] simple(double[][] ring, double toleranceMm) {
        boolean[] keep = new boolean[ring.length];
        int far = 0;
        for (int i = 1; i < ring.length; i++) {
            if (distance(ring[i], ring[0]) > distance(ring[far], ring[0])) {
                far = i;
            }
        }
        keep[0] = true;
        keep[far] = true;
        thin(ring, 0, far, keep, toleranceMm);
        thin(ring, far, ring.length, keep, toleranceMm);
        List<double[]> kept = new ArrayList<>();
        for (int i = 0; i < ring.length; i++) {
            if (keep[i]) {
                kept.add(ring[i]);
            }
        }
        return kept.toArray(double[][]::new);
    }

    private static void thin(double[][] ring, int from, int to, boolean[] keep, double toleranceMm) {
        double[] a = ring[from];
        double[] b = ring[to % ring.length];
        double run = Math.max(1e-9, distance(a, b));
        double worst = toleranceMm;
        int at = -1;
        for (int i = from + 1; i < to; i++) {
            double off = Math.abs((ring[i][0] - a[0]) * (b[1] - a[1]) - (ring[i][1] - a[1]) * (b[0] - a[0])) / run;
            if (off > worst) {
                worst = off;
                at = i;
            }
        }
        if (at >= 0) {
            keep[at] = true;
            thin(ring, from, at, keep, toleranceMm);
            thin(ring, at, to, keep, toleranceMm);
        }
    }

    private static double distance(double[] a, double[] b) {
        return StrictMath.hypot(a[0] - b[0], a[1] - b[1]);
    }
}
