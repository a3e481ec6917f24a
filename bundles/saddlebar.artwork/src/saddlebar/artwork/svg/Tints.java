package saddlebar.artwork.svg;

import java.awt.Color;
import java.awt.Paint;
import java.awt.geom.AffineTransform;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.apache.batik.ext.awt.LinearGradientPaint;
import org.apache.batik.ext.awt.MultipleGradientPaint;
import org.apache.batik.ext.awt.RadialGradientPaint;
import org.w3c.dom.Element;

import saddlebar.artwork.drawing.Group;
import saddlebar.artwork.drawing.Ramp;
import saddlebar.artwork.drawing.Tiles;
import saddlebar.artwork.drawing.Tint;

/** Batik's paints as ours. Ramps that are alike are kept once. Belongs to one thread. */
final class Tints {
    /** Translates what a pattern shows. */
    interface Content {
        Group of(Bridges.TilePaint paint, AffineTransform contentToMm);
    }

    private record Stops(List<Float> offsets, List<Color> colours, Ramp.Spread spread, boolean linearRgb) {
    }

    private final Findings findings;
    private final Content content;
    private final Map<Stops, Ramp> ramps = new HashMap<>();

    Tints(Findings findings, Content content) {
        this.findings = findings;
        this.content = content;
    }

    /** @param toMm from the units of the painted shape to mm; empty if nothing is painted */
    Optional<Tint> of(Paint paint, AffineTransform toMm, Element element) {
        if (paint == null) {
            return Optional.empty();
        } else if (paint instanceof Color colour) {
            return colour.getAlpha() == 0 ? Optional.empty() : Optional.of(new Tint.Flat(colour.getRGB()));
        } else if (paint instanceof LinearGradientPaint linear) {
            return Optional.of(new Ramp.Linear(ramp(linear), linear.getStartPoint().getX(), linear.getStartPoint().getY(), linear.getEndPoint().getX(),
                    linear.getEndPoint().getY(), Tint.joined(toMm, linear.getTransform())));
        } else if (paint instanceof RadialGradientPaint radial) {
            return Optional.of(new Ramp.Radial(ramp(radial), radial.getCenterPoint().getX(), radial.getCenterPoint().getY(), radial.getRadius(),
                    radial.getFocusPoint().getX(), radial.getFocusPoint().getY(), Tint.joined(toMm, radial.getTransform())));
        } else if (paint instanceof Bridges.TilePaint tiles) {
            AffineTransform tileToMm = tiles.getPatternTransform() == null ? toMm : Tint.joined(toMm, tiles.getPatternTransform());
            return Optional.of(new Tiles(content.of(tiles, Tint.joined(tileToMm, tiles.contentToTile())), tiles.getPatternRect(), tileToMm,
                    tiles.getOverflow(), tiles.opacity()));
        }
        findings.warn("art-style", element, "paint", "it is painted in a way that is not known here, and is left out");
        return Optional.empty();
    }

    private Ramp ramp(MultipleGradientPaint gradient) {
        Float[] offsets = new Float[gradient.getFractions().length];
        for (int i = 0; i < offsets.length; i++) {
            offsets[i] = Math.max(0, Math.min(1, gradient.getFractions()[i]));
        }
        Ramp.Spread spread = gradient.getCycleMethod() == MultipleGradientPaint.REFLECT
                ? Ramp.Spread.REFLECT
                : gradient.getCycleMethod() == MultipleGradientPaint.REPEAT ? Ramp.Spread.REPEAT : Ramp.Spread.PAD;
        Stops stops = new Stops(Arrays.asList(offsets), Arrays.asList(gradient.getColors()), spread,
                gradient.getColorSpace() == MultipleGradientPaint.LINEAR_RGB);
        return ramps.computeIfAbsent(stops, one -> new Ramp(one.offsets.stream().mapToDouble(Float::doubleValue).toArray(),
                one.colours.stream().mapToInt(Color::getRGB).toArray(), one.spread, one.linearRgb));
    }
}
