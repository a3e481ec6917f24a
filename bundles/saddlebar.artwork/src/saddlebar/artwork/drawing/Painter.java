package saddlebar.artwork.drawing;

import java.awt.AlphaComposite;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.TexturePaint;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Rectangle2D;

import saddlebar.model.work.Work;

/**
 * Paints items on a canvas. Only what touches the canvas costs anything. Groups that are more than a list are painted by themselves on a
 * clear canvas no larger than they are, cut, and laid over.
 */
final class Painter {
    /** More tiles than this on one canvas are painted from a picture of one tile. */
    private static final int MOST_TILES = 20_000;
    private static final Rectangle2D UNIT = new Rectangle2D.Double(0, 0, 1, 1);

    private final Work work;

    Painter(Work work) {
        this.work = work;
    }

    void paint(Item item, Canvas canvas) {
        Rectangle touched = touched(item.boundsMm(), canvas);
        if (touched.isEmpty()) {
            return;
        }
        if (item instanceof Group group) {
            paint(group, touched, canvas);
        } else if (item instanceof Figure figure) {
            paint(figure, touched, canvas, 1);
        } else if (item instanceof Photo photo) {
            paint(photo, canvas);
        }
    }

    private void paint(Group group, Rectangle touched, Canvas canvas) {
        if (group.hidden() || group.opacity() <= 0) {
            return;
        }
        work.checkpoint();
        if (group.isPlain()) {
            for (Item child : group.children()) {
                paint(child, canvas);
            }
            return;
        }
        if (onlyFaded(group)) {
            paint((Figure) group.children().get(0), touched, canvas, group.opacity());
            return;
        }
        try (Canvas own = Canvas.clear(touched, device(canvas))) {
            if (group.effect().isPresent()) {
                Effect effect = group.effect().get();
                synchronized (effect) {
                    effect.paint(own.image(), own.graphics(), own.mmToPx());
                }
            } else {
                for (Item child : group.children()) {
                    paint(child, own);
                }
            }
            group.clipMm().filter(clip -> !holds(clip, own)).ifPresent(own::cut);
            group.mask().ifPresent(mask -> cut(own, mask));
            lay(own, canvas, group.opacity(), group.blend());
        }
    }

    /** One paint on one shape: fading the paint is the same as fading the whole. */
    private static boolean onlyFaded(Group group) {
        return group.blend() == Blend.NORMAL && group.clipMm().isEmpty() && group.mask().isEmpty() && group.effect().isEmpty() && group.children().size() == 1
                && group.children().get(0) instanceof Figure figure && figure.fill().isPresent() != figure.line().isPresent()
                && !(figure.fill().orElse(null) instanceof Tiles)
                && !(figure.line().map(Line::tint).orElse(null) instanceof Tiles);
    }

    private static boolean holds(Shape clipMm, Canvas canvas) {
        try {
            return clipMm.contains(canvas.mmToPx().createInverse()
                    .createTransformedShape(new Rectangle(0, 0, canvas.window().width, canvas.window().height)).getBounds2D());
        } catch (NoninvertibleTransformException e) {
            throw new IllegalStateException("a device has no size", e);
        }
    }

    private void cut(Canvas own, Mask mask) {
        try (Canvas through = Canvas.clear(own.window(), device(own))) {
            paint(mask.content(), through);
            through.cut(mask.regionMm());
            own.cut(through, mask);
        }
    }

    private static void lay(Canvas own, Canvas canvas, double opacity, Blend blend) {
        if (blend == Blend.NORMAL || blend == Blend.APART) {
            lay(own, canvas, opacity);
        } else {
            blend.lay(own.image(), canvas.image(), own.window().x - canvas.window().x, own.window().y - canvas.window().y, opacity);
        }
    }

    private static void lay(Canvas own, Canvas canvas, double opacity) {
        Graphics2D g = canvas.graphics();
        g.setTransform(new AffineTransform());
        g.setComposite(AlphaComposite.SrcOver.derive((float) opacity));
        g.drawImage(own.image(), own.window().x - canvas.window().x, own.window().y - canvas.window().y, null);
        g.setComposite(AlphaComposite.SrcOver);
    }

    private void paint(Figure figure, Rectangle touched, Canvas canvas, double opacity) {
        if (figure.lineFirst()) {
            stroke(figure, touched, canvas, opacity);
        }
        figure.fill().ifPresent(tint -> fill(figure.fillMm(), tint, touched, canvas, opacity));
        if (!figure.lineFirst()) {
            stroke(figure, touched, canvas, opacity);
        }
    }

    private void stroke(Figure figure, Rectangle touched, Canvas canvas, double opacity) {
        figure.line().ifPresent(line -> fill(figure.strokeMm(), line.tint(), touched, canvas, opacity));
    }

    private void fill(Shape shapeMm, Tint tint, Rectangle touched, Canvas canvas, double opacity) {
        if (tint instanceof Tiles tiles) {
            try (Canvas own = Canvas.clear(touched, device(canvas))) {
                tile(tiles, own);
                own.cut(shapeMm);
                lay(own, canvas, tiles.opacity() * opacity);
            }
            return;
        }
        Graphics2D g = canvas.graphics();
        g.setTransform(canvas.mmToPx());
        g.setPaint(paint(tint, canvas));
        g.setComposite(AlphaComposite.SrcOver.derive((float) opacity));
        g.fill(shapeMm);
        g.setComposite(AlphaComposite.SrcOver);
    }

    private static Paint paint(Tint tint, Canvas canvas) {
        if (tint instanceof Tint.Flat flat) {
            return flat.paint();
        } else if (tint instanceof Ramp.Linear linear) {
            return RampPaint.of(linear, canvas.mmToPx());
        } else if (tint instanceof Ramp.Radial radial) {
            return RampPaint.of(radial, canvas.mmToPx());
        }
        throw new IllegalArgumentException("tiles are no single paint");
    }

    private static void paint(Photo photo, Canvas canvas) {
        canvas.graphics().setTransform(canvas.mmToPx());
        Sketch.paint(photo, canvas.graphics());
    }

    /** Paints all tiles that touch the canvas; in mm, a step from tile to tile is a plain move. */
    private void tile(Tiles tiles, Canvas canvas) {
        AffineTransform tileToPx = Tint.joined(canvas.mmToPx(), tiles.tileToMm());
        tileToPx.translate(tiles.tile().getX(), tiles.tile().getY());
        tileToPx.scale(tiles.tile().getWidth(), tiles.tile().getHeight());
        Rectangle2D inTiles;
        try {
            inTiles = tileToPx.createInverse().createTransformedShape(new Rectangle(0, 0, canvas.window().width, canvas.window().height))
                    .getBounds2D();
        } catch (NoninvertibleTransformException e) {
            return;
        }
        long left = (long) Math.floor(inTiles.getMinX());
        long right = (long) Math.ceil(inTiles.getMaxX());
        long top = (long) Math.floor(inTiles.getMinY());
        long bottom = (long) Math.ceil(inTiles.getMaxY());
        int over = tiles.overflow() ? 1 : 0; // what reaches over by more than a tile's size is not looked for
        if ((double) (right - left) * (bottom - top) > MOST_TILES) {
            texture(tiles, tileToPx, canvas);
            return;
        }
        for (long row = top - over; row < bottom + over; row++) {
            for (long column = left - over; column < right + over; column++) {
                oneTile(tiles, tileToPx, column, row, canvas);
            }
        }
    }

    private void oneTile(Tiles tiles, AffineTransform tileToPx, long column, long row, Canvas canvas) {
        double dx = tileToPx.getScaleX() * column + tileToPx.getShearX() * row; // px
        double dy = tileToPx.getShearY() * column + tileToPx.getScaleY() * row;
        AffineTransform moved = AffineTransform.getTranslateInstance(dx, dy);
        moved.concatenate(device(canvas));
        Shape edgePx = AffineTransform.getTranslateInstance(dx, dy).createTransformedShape(tileToPx.createTransformedShape(UNIT));
        Rectangle touched = tiles.overflow()
                ? new Rectangle(canvas.window().width, canvas.window().height)
                : grown(edgePx.getBounds2D()).intersection(new Rectangle(canvas.window().width, canvas.window().height));
        touched.translate(canvas.window().x, canvas.window().y);
        if (touched.isEmpty()) {
            return;
        }
        if (tiles.overflow() || inside(tiles)) {
            try (Canvas shifted = canvas.movedTo(moved)) {
                paint(tiles.content(), shifted);
            }
            return;
        }
        try (Canvas own = Canvas.clear(touched, moved)) {
            paint(tiles.content(), own);
            own.cut(tiles.tileToMm().createTransformedShape(tiles.tile()));
            lay(own, canvas, 1);
        }
    }

    /** Whether nothing of the content reaches over the edge of its tile, so that no cut is needed. */
    private static boolean inside(Tiles tiles) {
        Rectangle2D content = tiles.content().boundsMm();
        return content.getWidth() < 0 || tiles.tileToMm().createTransformedShape(tiles.tile()).contains(content);
    }

    private void texture(Tiles tiles, AffineTransform tileToPx, Canvas canvas) {
        int w = (int) Math.min(256, Math.max(1, Math.ceil(4 * Math.hypot(tileToPx.getScaleX(), tileToPx.getShearY()))));
        int h = (int) Math.min(256, Math.max(1, Math.ceil(4 * Math.hypot(tileToPx.getShearX(), tileToPx.getScaleY()))));
        AffineTransform toPicture = AffineTransform.getScaleInstance(w, h);
        try {
            AffineTransform pxToTile = tileToPx.createInverse();
            toPicture.concatenate(pxToTile);
        } catch (NoninvertibleTransformException e) {
            return;
        }
        toPicture.concatenate(canvas.mmToPx());
        try (Canvas one = Canvas.clear(new Rectangle(w, h), toPicture)) {
            paint(tiles.content(), one);
            Graphics2D g = canvas.graphics();
            g.setTransform(tileToPx);
            g.setPaint(new TexturePaint(one.image(), UNIT));
            try {
                g.fill(tileToPx.createInverse().createTransformedShape(new Rectangle(0, 0, canvas.window().width, canvas.window().height)));
            } catch (NoninvertibleTransformException e) {
                throw new IllegalStateException("inverted a moment ago", e);
            }
        }
    }

    private static AffineTransform device(Canvas canvas) {
        AffineTransform device = AffineTransform.getTranslateInstance(canvas.window().x, canvas.window().y);
        device.concatenate(canvas.mmToPx());
        return device;
    }

    /** Device pixels of the canvas that something in mm can touch. */
    private static Rectangle touched(Rectangle2D boundsMm, Canvas canvas) {
        if (!(boundsMm.getWidth() >= 0 && boundsMm.getHeight() >= 0)) {
            return new Rectangle();
        }
        Rectangle2D px = canvas.mmToPx().createTransformedShape(boundsMm).getBounds2D();
        Rectangle touched = grown(px).intersection(new Rectangle(canvas.window().width, canvas.window().height));
        touched.translate(canvas.window().x, canvas.window().y);
        return touched;
    }

    /** Whole pixels around, one more on each side, within int. */
    private static Rectangle grown(Rectangle2D px) {
        double far = 1 << 29;
        int x0 = (int) Math.max(-far, Math.min(far, Math.floor(px.getMinX()) - 1));
        int y0 = (int) Math.max(-far, Math.min(far, Math.floor(px.getMinY()) - 1));
        int x1 = (int) Math.max(-far, Math.min(far, Math.ceil(px.getMaxX()) + 1));
        int y1 = (int) Math.max(-far, Math.min(far, Math.ceil(px.getMaxY()) + 1));
        return new Rectangle(x0, y0, x1 - x0, y1 - y0);
    }
}
