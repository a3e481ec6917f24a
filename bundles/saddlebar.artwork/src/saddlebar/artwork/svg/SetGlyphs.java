package saddlebar.artwork.svg;

import java.awt.Font;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphJustificationInfo;
import java.awt.font.GlyphMetrics;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** Glyphs whose places stay as they were set: who asks for the plain layout again gets these places and not such without kerning. */
final class SetGlyphs extends GlyphVector {
    private final GlyphVector set;
    private final float[] places;

    SetGlyphs(GlyphVector set) {
        this.set = set;
        this.places = set.getGlyphPositions(0, set.getNumGlyphs() + 1, null);
    }

    @Override
    public void performDefaultLayout() {
        for (int i = 0; i <= set.getNumGlyphs(); i++) {
            set.setGlyphPosition(i, new Point2D.Float(places[2 * i], places[2 * i + 1]));
        }
    }

    @Override
    public Font getFont() {
        return set.getFont();
    }

    @Override
    public FontRenderContext getFontRenderContext() {
        return set.getFontRenderContext();
    }

    @Override
    public int getNumGlyphs() {
        return set.getNumGlyphs();
    }

    @Override
    public int getGlyphCode(int glyph) {
        return set.getGlyphCode(glyph);
    }

    @Override
    public int[] getGlyphCodes(int from, int count, int[] target) {
        return set.getGlyphCodes(from, count, target);
    }

    @Override
    public Rectangle2D getLogicalBounds() {
        return set.getLogicalBounds();
    }

    @Override
    public Rectangle2D getVisualBounds() {
        return set.getVisualBounds();
    }

    @Override
    public Rectangle getPixelBounds(FontRenderContext context, float x, float y) {
        return set.getPixelBounds(context, x, y);
    }

    @Override
    public Shape getOutline() {
        return set.getOutline();
    }

    @Override
    public Shape getOutline(float x, float y) {
        return set.getOutline(x, y);
    }

    @Override
    public Shape getGlyphOutline(int glyph) {
        return set.getGlyphOutline(glyph);
    }

    @Override
    public Point2D getGlyphPosition(int glyph) {
        return set.getGlyphPosition(glyph);
    }

    @Override
    public void setGlyphPosition(int glyph, Point2D place) {
        set.setGlyphPosition(glyph, place);
    }

    @Override
    public AffineTransform getGlyphTransform(int glyph) {
        return set.getGlyphTransform(glyph);
    }

    @Override
    public void setGlyphTransform(int glyph, AffineTransform transform) {
        set.setGlyphTransform(glyph, transform);
    }

    @Override
    public float[] getGlyphPositions(int from, int count, float[] target) {
        return set.getGlyphPositions(from, count, target);
    }

    @Override
    public Shape getGlyphLogicalBounds(int glyph) {
        return set.getGlyphLogicalBounds(glyph);
    }

    @Override
    public Shape getGlyphVisualBounds(int glyph) {
        return set.getGlyphVisualBounds(glyph);
    }

    @Override
    public GlyphMetrics getGlyphMetrics(int glyph) {
        return set.getGlyphMetrics(glyph);
    }

    @Override
    public GlyphJustificationInfo getGlyphJustificationInfo(int glyph) {
        return set.getGlyphJustificationInfo(glyph);
    }

    @Override
    public boolean equals(GlyphVector other) {
        return other instanceof SetGlyphs glyphs && set.equals(glyphs.set);
    }
}
