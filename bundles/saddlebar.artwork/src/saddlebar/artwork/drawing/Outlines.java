package saddlebar.artwork.drawing;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

import saddlebar.artwork.Artwork;
import saddlebar.artwork.ColourArea;
import saddlebar.model.art.DrawnLine;

/** Walks a drawing for its lines and for its coloured areas; clips are applied, masks and effects are not; text is left out. */
final class Outlines {
    private final double flatnessMm;
    private final List<DrawnLine> lines = new ArrayList<>();
    private final List<ColourArea> areas = new ArrayList<>();

    private Outlines(double flatnessMm) {
        this.flatnessMm = flatnessMm;
    }

    static List<DrawnLine> lines(Group drawing, double flatnessMm) {
        Outlines outlines = new Outlines(flatnessMm);
        outlines.walk(drawing, null, 1, true);
        return List.copyOf(outlines.lines);
    }

    static List<ColourArea> areas(Group drawing) {
        Outlines outlines = new Outlines(Artwork.CUT_FLATNESS_MM);
        outlines.walk(drawing, null, 1, false);
        return List.copyOf(outlines.areas);
    }

    private void walk(Group group, Clip around, double opacity, boolean forLines) {
        if (group.hidden() || group.opacity() <= 0) {
            return;
        }
        Clip clip = around;
        if (group.clipMm().isPresent()) {
            Clip own = Clip.of(group.clipMm().get());
            clip = around == null ? own : around.and(own);
        }
        for (Item child : group.children()) {
            if (child instanceof Group inner) {
                walk(inner, clip, opacity * group.opacity(), forLines);
            } else if (child instanceof Figure figure && !figure.letters()) {
                if (forLines) {
                    line(figure, clip);
                } else if (figure.fill().isPresent()) {
                    area(figure, figure.fill().get(), clip, opacity * group.opacity());
                }
            }
        }
    }

    private void line(Figure figure, Clip clip) {
        boolean stroked = figure.line().isPresent();
        for (CurveSteps.Part part : CurveSteps.of(figure.outline(), figure.toMm(), flatnessMm)) {
            // a filled part is closed by its fill even where the path leaves it open
            CurveSteps.Part whole = stroked || part.closed() || part.xy().length < 6 ? part : new CurveSteps.Part(part.xy(), true);
            for (CurveSteps.Part left : clip == null ? List.of(whole) : clip.lines(whole)) {
                lines.add(new DrawnLine(figure.origin().element(), figure.origin().line(), left.xy(), left.closed()));
            }
        }
    }

    private void area(Figure figure, Tint tint, Clip clip, double opacity) {
        List<CurveSteps.Part> rings = new ArrayList<>();
        for (CurveSteps.Part part : CurveSteps.of(figure.outline(), figure.toMm(), flatnessMm)) {
            if (part.xy().length >= 6) {
                rings.add(part);
            }
        }
        boolean even = figure.outline().getPathIterator(null).getWindingRule() == Path2D.WIND_EVEN_ODD;
        if (clip != null) {
            List<CurveSteps.Part> left = clip.area(new Path2D.Double(figure.outline(), new AffineTransform(figure.toMm())), rings);
            if (left != null) {
                rings = left;
                even = true;
            }
        }
        if (!rings.isEmpty()) {
            int argb = tint.meanArgb();
            areas.add(new ColourArea(figure.origin().element(), figure.origin().line(), argb & 0xFFFFFF, opacity * (argb >>> 24) / 255.0, even,
                    rings.stream().map(CurveSteps.Part::xy).toList()));
        }
    }
}
