package saddlebar.artwork.drawing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.index.strtree.STRtree;

import saddlebar.artwork.ArtLayer;
import saddlebar.artwork.LayerGuess;
import saddlebar.artwork.LayerGuess.Ground;
import saddlebar.artwork.LayerHint;
import saddlebar.artwork.svg.LayerHints;
import saddlebar.model.art.DrawnLine;

/**
 * Guesses what the layers of a drawing are for: by their names, and where a name says nothing by what is drawn (common practice among makers, no source).
 * Cutlines are thin lines without fill whose ends meet; letters are lettering; ramps, pictures and half clear areas are shading; opaque areas of several
 * colours are glass; solid dark areas and thick lines are trace.
 */
final class LayerGuesses {
    /** A line up to this wide is drawn as a line and not as a shape. */
    private static final double THIN_MM = 1.5;
    /** Ends nearer to another line than this meet it. */
    private static final double MEET_MM = 0.5;
    private static final double MOST_LOOSE_ENDS = 0.1;
    private static final double FLATNESS_MM = 0.1;
    /** Darker than this in every colour is black on glass. */
    private static final int DARK = 72;
    private static final int GRAY_SPAN = 24;

    private final Group drawing;
    private final List<ArtLayer> layers;

    private LayerGuesses(Group drawing, List<ArtLayer> layers) {
        this.drawing = drawing;
        this.layers = layers;
    }

    static List<LayerGuess> of(Group drawing, List<ArtLayer> layers) {
        return new LayerGuesses(drawing, layers).guesses();
    }

    /** What is drawn in one layer. */
    private static final class Look {
        private int thin;
        private int thick;
        private int letters;
        private int tones;
        private int dark;
        private int others;
        private final Set<Integer> colours = new HashSet<>();

        int all() {
            return thin + thick + letters + tones + dark + others;
        }
    }

    private List<LayerGuess> guesses() {
        int depth = depthThatCounts();
        List<LayerGuess> all = new ArrayList<>();
        for (ArtLayer layer : layers) {
            LayerHint named = LayerHints.of(layer.label());
            if (named != LayerHint.NONE) {
                all.add(new LayerGuess(layer, named, Ground.NAME));
            } else if (layer.depth() == depth && layer.elementCount() > 0) {
                all.add(byLook(layer));
            } else {
                all.add(new LayerGuess(layer, LayerHint.NONE, Ground.NOTHING));
            }
        }
        return oneCutline(all);
    }

    /** Groups side by side are layers; one group around all is none. */
    private int depthThatCounts() {
        int depth = 0;
        while (count(depth) == 1 && count(depth + 1) > 0) {
            depth++;
        }
        return depth;
    }

    private long count(int depth) {
        return layers.stream().filter(layer -> layer.depth() == depth).count();
    }

    private LayerGuess byLook(ArtLayer layer) {
        Group group = drawing.only(layer.id());
        Look look = new Look();
        look(group, 1, look);
        int all = Math.max(1, look.all());
        if (look.letters > 0.7 * all) {
            return new LayerGuess(layer, LayerHint.LETTERING, Ground.LETTERS);
        } else if (look.thin > 0 && look.thin + look.letters == look.all()) {
            return new LayerGuess(layer, LayerHint.CUTLINE, meets(group) ? Ground.CLOSED_HAIRLINES : Ground.LINES);
        } else if (look.tones > 0.3 * all) {
            return new LayerGuess(layer, LayerHint.MATT, Ground.TONES);
        } else if (look.colours.size() > 1 && look.others > 0.7 * all) {
            return new LayerGuess(layer, LayerHint.GLASS, Ground.COLOURS);
        } else if (look.dark + look.thick + look.thin > 0.9 * all) {
            return new LayerGuess(layer, LayerHint.TRACE, Ground.DARK);
        }
        return new LayerGuess(layer, LayerHint.NONE, Ground.NOTHING);
    }

    private static void look(Group group, double opacity, Look look) {
        double here = opacity * group.opacity();
        for (Item item : group.children()) {
            if (item instanceof Group inner) {
                if (!inner.hidden()) {
                    look(inner, here, look);
                }
            } else if (item instanceof Photo) {
                look.tones++;
            } else if (item instanceof Figure figure) {
                look(figure, here, look);
            }
        }
    }

    private static void look(Figure figure, double opacity, Look look) {
        if (figure.letters()) {
            look.letters++;
        } else if (figure.fill().isEmpty()) {
            Line line = figure.line().orElseThrow();
            double scale = line.fixedWidth() ? line.penMm() : Math.sqrt(Math.abs(figure.toMm().getDeterminant()));
            if (line.pen().getLineWidth() * scale <= THIN_MM) {
                look.thin++;
            } else {
                look.thick++;
            }
        } else if (figure.fill().get() instanceof Tint.Flat flat) {
            flat(flat.argb(), opacity, look);
        } else {
            look.tones++;
        }
    }

    private static void flat(int argb, double opacity, Look look) {
        int r = argb >> 16 & 0xFF;
        int g = argb >> 8 & 0xFF;
        int b = argb & 0xFF;
        int most = Math.max(r, Math.max(g, b));
        boolean gray = most - Math.min(r, Math.min(g, b)) < GRAY_SPAN;
        if ((argb >>> 24) * opacity < 250) {
            look.tones++;
        } else if (most < DARK) {
            look.dark++;
        } else if (gray && most < 250) {
            look.tones++;
        } else {
            look.others++;
            look.colours.add(argb & 0xFFFFFF);
        }
    }

    /** Whether nearly all ends of open lines lie on another line, or on another part of the same. */
    private static boolean meets(Group group) {
        List<DrawnLine> lines = Outlines.lines(group, FLATNESS_MM);
        STRtree segments = new STRtree();
        for (DrawnLine line : lines) {
            double[] xy = line.xy();
            int n = xy.length / 2;
            for (int i = 0; i + 1 < n + (line.closed() ? 1 : 0); i++) {
                LineSegment segment = new LineSegment(xy[2 * i], xy[2 * i + 1], xy[2 * ((i + 1) % n)], xy[2 * ((i + 1) % n) + 1]);
                segments.insert(new Envelope(segment.p0, segment.p1), segment);
            }
        }
        int ends = 0;
        int loose = 0;
        for (DrawnLine line : lines) {
            double[] xy = line.xy();
            if (!line.closed() && xy.length >= 4) {
                ends += 2;
                loose += meets(segments, xy[0], xy[1]) ? 0 : 1;
                loose += meets(segments, xy[xy.length - 2], xy[xy.length - 1]) ? 0 : 1;
            }
        }
        return loose <= MOST_LOOSE_ENDS * ends;
    }

    private static boolean meets(STRtree segments, double x, double y) {
        Coordinate end = new Coordinate(x, y);
        Envelope around = new Envelope(x - MEET_MM, x + MEET_MM, y - MEET_MM, y + MEET_MM);
        for (Object one : segments.query(around)) {
            LineSegment segment = (LineSegment) one;
            boolean own = segment.p0.equals2D(end) || segment.p1.equals2D(end);
            if (!own && segment.distance(end) <= MEET_MM) {
                return true;
            }
        }
        return touches(segments, around, end) > 1;
    }

    /** How many steps begin or end just here: more than one, and lines join. */
    private static int touches(STRtree segments, Envelope around, Coordinate end) {
        int count = 0;
        for (Object one : segments.query(around)) {
            LineSegment segment = (LineSegment) one;
            count += segment.p0.equals2D(end) || segment.p1.equals2D(end) ? 1 : 0;
        }
        return count;
    }

    /** A name goes before a look, closed lines before others, and more lines before fewer; of the rest, lines are trace. */
    private static List<LayerGuess> oneCutline(List<LayerGuess> all) {
        LayerGuess best = null;
        for (LayerGuess guess : all) {
            if (guess.hint() == LayerHint.CUTLINE && !guess.layer().hidden() && (best == null || rank(guess) > rank(best))) {
                best = guess;
            }
        }
        List<LayerGuess> settled = new ArrayList<>();
        for (LayerGuess guess : all) {
            boolean second = guess.hint() == LayerHint.CUTLINE && guess != best && guess.ground() != Ground.NAME;
            settled.add(second ? new LayerGuess(guess.layer(), LayerHint.TRACE, Ground.LINES) : guess);
        }
        return List.copyOf(settled);
    }

    private static int rank(LayerGuess guess) {
        return switch (guess.ground()) {
            case NAME -> 3;
            case CLOSED_HAIRLINES -> 2;
            default -> 1;
        };
    }
}
