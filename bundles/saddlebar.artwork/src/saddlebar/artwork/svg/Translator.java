package saddlebar.artwork.svg;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Composite;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.lang.ref.WeakReference;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.apache.batik.bridge.TextNode;
import org.apache.batik.ext.awt.RenderingHintsKeyExt;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.CompositeShapePainter;
import org.apache.batik.gvt.FillShapePainter;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.ImageNode;
import org.apache.batik.gvt.MarkerShapePainter;
import org.apache.batik.gvt.ProxyGraphicsNode;
import org.apache.batik.gvt.ShapeNode;
import org.apache.batik.gvt.ShapePainter;
import org.apache.batik.gvt.StrokeShapePainter;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

import saddlebar.artwork.drawing.Effect;
import saddlebar.artwork.drawing.Figure;
import saddlebar.artwork.drawing.Group;
import saddlebar.artwork.drawing.Item;
import saddlebar.artwork.drawing.Line;
import saddlebar.artwork.drawing.Mask;
import saddlebar.artwork.drawing.Origin;
import saddlebar.artwork.drawing.Photo;
import saddlebar.artwork.drawing.Tint;
import saddlebar.model.problem.Refusal;

/** Batik's graphics tree as a drawing of ours, in mm. After this nothing of Batik is kept but nodes with filters. Belongs to one thread. */
final class Translator {
    private static final double MOST_MM = 1e7;
    private static final double MOST_DASHES = 200_000;

    private final SvgBuilder builder;
    private final Findings findings;
    private final AffineTransform pxToMm;
    private final LayerList layers;
    private final Tints tints;
    private final List<GraphicsNode> hiddenNodes = new ArrayList<>();
    private int items;

    Translator(SvgBuilder builder, Findings findings, AffineTransform pxToMm, LayerList layers) {
        this.builder = builder;
        this.findings = findings;
        this.pxToMm = pxToMm;
        this.layers = layers;
        this.tints = new Tints(findings,
                (paint, contentToMm) -> Group.plain(new Origin("pattern", 0), uncounted((CompositeGraphicsNode) paint.content(), contentToMm)));
    }

    private List<Item> uncounted(CompositeGraphicsNode node, AffineTransform toMm) {
        layers.pause(true);
        List<Item> all = children(node, toMm, true);
        layers.pause(false);
        return all;
    }

    /** The node of the outermost element; what reaches over the page's edge is kept, since whoever asks says what part he wants. */
    Group translate(GraphicsNode page) {
        page.setClip(null);
        List<Item> all = new ArrayList<>();
        add(page, pxToMm, false, all);
        return Group.plain(new Origin("svg", 1), all);
    }

    /** Takes hidden groups out of Batik's tree when nothing more is translated, so that a filter around them does not paint them. */
    void detachHidden() {
        for (GraphicsNode node : hiddenNodes) {
            if (node.getParent() != null) {
                node.getParent().getChildren().remove(node);
            }
        }
    }

    private List<Item> children(CompositeGraphicsNode node, AffineTransform toMm, boolean copied) {
        List<Item> all = new ArrayList<>();
        for (Object child : node.getChildren()) {
            add((GraphicsNode) child, toMm, copied, all);
        }
        return all;
    }

    private void add(GraphicsNode node, AffineTransform parentToMm, boolean copied, List<Item> target) {
        if (++items > 2 * SvgBuilder.MOST_NODES) {
            throw new Refusal(findings.fileName(), "with all copies, patterns and markers the drawing has more than a million elements",
                    "draw what repeats as a picture, or split the drawing");
        }
        Element element = builder.element(node);
        AffineTransform toMm = Tint.joined(parentToMm, SvgBuilder.transform(node));
        boolean group = element != null && "g".equals(element.getLocalName());
        boolean hidden = group && !Source.get(element, Source.Note.HIDDEN).isEmpty();
        boolean copies = copied || element != null && "use".equals(element.getLocalName());
        Optional<String> layer = group && !copied ? Optional.of(layers.begin(element, hidden)) : Optional.empty();
        List<Item> inside = new ArrayList<>();
        content(node, element, toMm, copies, inside);
        if (layer.isPresent()) {
            layers.end();
        }
        if (hidden) {
            hiddenNodes.add(node);
        }
        Group.Looks looks = looks(node, toMm);
        Origin origin = Source.origin(element);
        if (node.getFilter() != null) {
            Item plain = Group.of(origin, Optional.empty(), false, inside, looks);
            target.add(Group.of(origin, layer, hidden, List.of(plain),
                    new Group.Looks(1, Optional.empty(), Optional.empty(), Optional.of(new Filtered(node, parentToMm, toMm)), looks.blend())));
            if (element != null) {
                findings.note("art-filter", element, "lines", "its filter is painted, but lines taken from it are as drawn");
            }
        } else if (layer.isPresent() || hidden || !looks.equals(Group.Looks.PLAIN)) {
            target.add(Group.of(origin, layer, hidden, inside, looks));
        } else {
            target.addAll(inside);
        }
    }

    private void content(GraphicsNode node, Element element, AffineTransform toMm, boolean copied, List<Item> target) {
        if (node instanceof CompositeGraphicsNode composite) {
            target.addAll(children(composite, toMm, copied));
        } else if (node instanceof ProxyGraphicsNode proxy) {
            add(proxy.getSource(), toMm, true, target);
        } else if (!node.isVisible()) {
            return;
        } else if (node instanceof ShapeNode shape) {
            shape(shape, element, toMm, target);
        } else if (node instanceof TextNode text) {
            text(text, element, toMm, target);
        } else if (node instanceof ImageNode image && image.getImage() != null) {
            add(image.getImage(), toMm, true, target);
        } else if (node instanceof PhotoNode photo) {
            Element named = element == null && node.getParent() != null ? builder.element(node.getParent()) : element;
            target.add(Photo.of(Source.origin(named), photo.picture(), toMm, photo.smooth()));
            layers.other();
        }
    }

    private Group.Looks looks(GraphicsNode node, AffineTransform toMm) {
        Optional<Shape> clip = Optional.ofNullable(node.getClip()).map(one -> toMm.createTransformedShape(one.getClipPath()));
        Optional<Mask> mask = Optional.empty();
        if (node.getMask() != null) {
            List<Item> drawn = uncounted((CompositeGraphicsNode) node.getMask().getMaskNode(), toMm);
            mask = Optional.of(Mask.ofLight(Group.plain(new Origin("mask", 0), drawn), toMm.createTransformedShape(node.getMask().getFilterRegion())));
            Element element = builder.element(node);
            if (element != null) {
                findings.note("art-mask", element, "lines", "its mask is painted, but lines taken from it are whole");
            }
        }
        Group.Looks looks = new Group.Looks(opacity(node.getComposite()), clip, mask, Optional.empty());
        Element element = builder.element(node);
        return element == null ? looks : looks.blended(ModernStyle.blend(Source.get(element, Source.Note.BLEND)));
    }

    private static double opacity(Composite composite) {
        return composite instanceof AlphaComposite alpha ? alpha.getAlpha() : 1;
    }

    private void shape(ShapeNode node, Element element, AffineTransform toMm, List<Item> target) {
        Shape outline = node.getShape();
        if (outline == null || outline.getPathIterator(null).isDone()) {
            return;
        }
        Paints paints = new Paints();
        paints.take(node.getShapePainter());
        figure(element, outline, toMm, paints, false, target);
        if (paints.markers != null) {
            for (GraphicsNode marker : new OpenMarkers(paints.markers).drawn()) {
                add(marker, toMm, true, target);
            }
        }
    }

    private void text(TextNode node, Element element, AffineTransform toMm, List<Item> target) {
        List<Letters.Outline> outlines;
        try {
            outlines = Letters.of(node);
        } catch (RuntimeException | LinkageError | InternalError e) { // the platform's fonts, or their absence
            findings.warn("art-font", element, "failed", "its letters cannot be made with the fonts of this computer; turn the text into paths");
            return;
        }
        for (Letters.Outline one : outlines) {
            Paints paints = new Paints();
            paints.fill = one.fill();
            paints.stroke = one.stroke();
            paints.pen = one.pen();
            List<Item> own = new ArrayList<>();
            figure(element, one.shape(), toMm, paints, true, own);
            double opacity = opacity(one.composite());
            target.addAll(opacity >= 1
                    ? own
                    : List.of(Group.of(Source.origin(element), Optional.empty(), false, own,
                            Group.Looks.faded(opacity))));
        }
    }

    /** What a shape is painted with, gathered from Batik's painters. */
    private static final class Paints {
        private Paint fill;
        private Paint stroke;
        private BasicStroke pen;
        private MarkerShapePainter markers;

        void take(ShapePainter painter) {
            if (painter instanceof CompositeShapePainter several) {
                for (int i = 0; i < several.getShapePainterCount(); i++) {
                    take(several.getShapePainter(i));
                }
            } else if (painter instanceof FillShapePainter filled) {
                fill = filled.getPaint();
            } else if (painter instanceof StrokeShapePainter stroked && stroked.getStroke() instanceof BasicStroke basic) {
                stroke = stroked.getPaint();
                pen = basic;
            } else if (painter instanceof MarkerShapePainter marked) {
                markers = marked;
            }
        }
    }

    private void figure(Element element, Shape outline, AffineTransform toMm, Paints paints, boolean letters, List<Item> target) {
        inBounds(outline.getBounds2D(), toMm, element);
        Optional<Tint> fill = tints.of(paints.fill, toMm, element);
        Optional<Tint> stroke = paints.pen == null ? Optional.empty() : tints.of(paints.stroke, toMm, element);
        if (fill.isEmpty() && stroke.isEmpty()) {
            return;
        }
        boolean fixed = element != null && !Source.get(element, Source.Note.VECTOR).isEmpty();
        Optional<Line> line = stroke.map(tint -> new Line(withFewDashes(paints.pen, outline, element), tint, fixed, pxToMm.getScaleX()));
        Figure figure = new Figure(Source.origin(element), outline, toMm, fill, line, strokeFirst(element), letters);
        inBounds(figure.boundsMm(), new AffineTransform(), element);
        target.add(figure);
        if (letters) {
            layers.letters();
        } else if (fill.isEmpty()) {
            layers.line();
        } else {
            layers.other();
        }
    }

    private void inBounds(Rectangle2D bounds, AffineTransform toMm, Element element) {
        Rectangle2D mm = toMm.createTransformedShape(bounds).getBounds2D();
        if (!(mm.getMinX() > -MOST_MM && mm.getMinY() > -MOST_MM && mm.getMaxX() < MOST_MM && mm.getMaxY() < MOST_MM)) {
            throw new Refusal(findings.where(element), (element == null ? "a shape" : Source.tag(element))
                    + " reaches more than ten kilometres away, or nobody knows where", "delete or redraw this element and export again");
        }
    }

    private BasicStroke withFewDashes(BasicStroke pen, Shape outline, Element element) {
        float[] dashes = pen.getDashArray();
        if (dashes == null) {
            return pen;
        }
        double period = 0;
        for (float dash : dashes) {
            period += dash;
        }
        if (length(outline) / period * dashes.length <= MOST_DASHES) {
            return pen;
        }
        findings.warn("art-style", element, "dashes", "it has more dashes than can be seen; its line is drawn whole");
        return new BasicStroke(pen.getLineWidth(), pen.getEndCap(), pen.getLineJoin(), pen.getMiterLimit());
    }

    /** At least the length: that of the control points' line. */
    private static double length(Shape outline) {
        double length = 0;
        double[] c = new double[6];
        double x = 0;
        double y = 0;
        for (PathIterator path = outline.getPathIterator(null); !path.isDone(); path.next()) {
            int kind = path.currentSegment(c);
            int points = kind == PathIterator.SEG_CUBICTO ? 3 : kind == PathIterator.SEG_QUADTO ? 2 : kind == PathIterator.SEG_CLOSE ? 0 : 1;
            for (int i = 0; i < points; i++) {
                length += kind == PathIterator.SEG_MOVETO ? 0 : Math.hypot(c[2 * i] - x, c[2 * i + 1] - y);
                x = c[2 * i];
                y = c[2 * i + 1];
            }
        }
        return length;
    }

    /** paint-order goes down from group to shape. */
    private static boolean strokeFirst(Element element) {
        Node node = element;
        while (node instanceof Element one) {
            String order = Source.get(one, Source.Note.ORDER);
            if (!order.isEmpty()) {
                int stroke = order.indexOf("stroke");
                int fill = order.indexOf("fill");
                return stroke >= 0 && (fill < 0 || stroke < fill);
            }
            node = node.getParentNode();
        }
        return false;
    }

    /** Markers as nodes with their place; Batik keeps them to itself otherwise. */
    private static final class OpenMarkers extends MarkerShapePainter {
        OpenMarkers(MarkerShapePainter like) {
            super(like.getShape());
            setStartMarker(like.getStartMarker());
            setMiddleMarker(like.getMiddleMarker());
            setEndMarker(like.getEndMarker());
        }

        List<GraphicsNode> drawn() {
            List<GraphicsNode> all = new ArrayList<>();
            if (getStartMarker() != null) {
                addIfThere(all, buildStartMarkerProxy());
            }
            if (getMiddleMarker() != null) {
                for (GraphicsNode one : buildMiddleMarkerProxies()) {
                    addIfThere(all, one);
                }
            }
            if (getEndMarker() != null) {
                addIfThere(all, buildEndMarkerProxy());
            }
            return all;
        }

        private static void addIfThere(List<GraphicsNode> all, GraphicsNode node) {
            if (node != null) {
                all.add(node);
            }
        }
    }

    /** A node painted by Batik with its filter, clip, mask and opacity. */
    private static final class Filtered implements Effect {
        private final GraphicsNode node;
        private final AffineTransform parentToMm;
        private final Rectangle2D boundsMm;

        Filtered(GraphicsNode node, AffineTransform parentToMm, AffineTransform toMm) {
            this.node = node;
            this.parentToMm = parentToMm;
            Rectangle2D own = node.getBounds();
            this.boundsMm = own == null ? new Rectangle2D.Double(0, 0, -1, -1) : toMm.createTransformedShape(own).getBounds2D();
        }

        @Override
        public Rectangle2D boundsMm() {
            return boundsMm;
        }

        @Override
        public void paint(BufferedImage image, Graphics2D graphics, AffineTransform mmToPx) {
            graphics.setRenderingHint(RenderingHintsKeyExt.KEY_BUFFERED_IMAGE, new WeakReference<>(image)); // Batik asks the image for its colours
            graphics.setTransform(Tint.joined(mmToPx, parentToMm));
            node.paint(graphics);
        }
    }
}
