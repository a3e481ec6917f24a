package saddlebar.artwork.pdf;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.filter.MissingImageReaderException;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDPattern;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDTransparencyGroup;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.graphics.pattern.PDAbstractPattern;
import org.apache.pdfbox.pdmodel.graphics.pattern.PDShadingPattern;
import org.apache.pdfbox.pdmodel.graphics.pattern.PDTilingPattern;
import org.apache.pdfbox.pdmodel.graphics.shading.PDShading;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;
import org.apache.pdfbox.pdmodel.graphics.state.PDSoftMask;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

import saddlebar.artwork.drawing.Blend;
import saddlebar.artwork.drawing.Figure;
import saddlebar.artwork.drawing.Group;
import saddlebar.artwork.drawing.Item;
import saddlebar.artwork.drawing.Line;
import saddlebar.artwork.drawing.Mask;
import saddlebar.artwork.drawing.Origin;
import saddlebar.artwork.drawing.Photo;
import saddlebar.artwork.drawing.Picture;
import saddlebar.artwork.drawing.Tiles;
import saddlebar.artwork.drawing.Tint;
import saddlebar.model.problem.Refusal;

/**
 * Runs the operators of one page and keeps what they draw as shapes in mm. What cannot be kept is told. Belongs to one thread; run once.
 */
final class PageWalk extends PDFGraphicsStreamEngine {
    private static final int MOST_ITEMS = 1_000_000;
    private static final int MOST_OPERATORS = 20_000_000;
    private static final long MOST_CONTENT_BYTES = 256L << 20;
    private static final int MOST_PATTERN_DEPTH = 8;
    /** A line of width 0 is "the thinnest that can be made" (ISO 32000-1, 8.4.3.2); on glass that is nothing, so it gets this many units. */
    private static final double THINNEST = 0.1;

    /** One open stretch of marked content; its pile is null if it is no layer. */
    private record Scope(Pile pile, PageLayers.Membership membership) {
    }

    private final AffineTransform pageToMm;
    private final PageLayers layers;
    private final PageFindings findings;
    private final PageColours colours;
    private final PageShadings shadings;
    private final PagePictures pictures;
    private final Rectangle2D pageBox;
    private final Deque<Pile> piles = new ArrayDeque<>();
    private final Deque<Scope> scopes = new ArrayDeque<>();
    private final Path2D.Double path = new Path2D.Double();
    private Path2D.Double letterClip;
    private int clipRule = -1;
    private int items;
    private int operators;
    private int patternDepth;
    private int uncounted;
    private int blends;
    private Area lastClip;
    private Area lastClipMm;

    PageWalk(PDPage page, AffineTransform pageToMm, PageLayers layers, PageFindings findings) {
        super(page);
        this.pageToMm = pageToMm;
        this.layers = layers;
        this.findings = findings;
        this.colours = new PageColours(findings);
        this.shadings = new PageShadings(colours, findings);
        this.pictures = new PagePictures(findings);
        this.pageBox = page.getCropBox().toGeneralPath().getBounds2D();
    }

    /** Everything on the page, switched off layers too, in mm; each layer has at least an empty group. */
    Group drawing() throws IOException {
        COSBase contents = getPage().getCOSObject().getDictionaryObject(COSName.CONTENTS);
        if (contents instanceof COSStream one) {
            Unpacked.require(one, MOST_CONTENT_BYTES, findings.where(), "the page's description is larger than any drawing");
        } else if (contents instanceof COSArray several) {
            for (int i = 0; i < several.size(); i++) {
                if (several.getObject(i) instanceof COSStream part) {
                    Unpacked.require(part, MOST_CONTENT_BYTES, findings.where(), "the page's description is larger than any drawing");
                }
            }
        }
        piles.push(new Pile());
        processPage(getPage());
        closeScopes(0);
        notes();
        List<Item> all = new ArrayList<>(piles.pop().items());
        for (String id : layers.ids()) {
            all.add(Group.of(new Origin("layer", 0), Optional.of(id), false, List.of(), Group.Looks.PLAIN));
        }
        return Group.plain(new Origin("page", 0), all);
    }

    /** Notes, stamps and form fields as they look (ISO 32000-1, 12.5.5), but for those that are not to be seen. */
    private void notes() throws IOException {
        int shown = 0;
        for (PDAnnotation note : getPage().getAnnotations()) {
            if (note.isHidden() || note.isNoView()) {
                continue;
            }
            if (note.getNormalAppearanceStream() == null) {
                findings.note("art-page", "the page has notes or form fields (annotations) that do not say how they look; they are left out");
                continue;
            }
            shown++;
            open(note.getOptionalContent());
            showAnnotation(note);
            closeScopes(0);
        }
        if (shown > 0) {
            findings.note("art-page", "notes, stamps or form fields of the page are drawn as they look; take them off before exporting if they do not belong");
        }
    }

    // ---- what is drawn goes onto the pile, with the clip and mask of now

    private void put(Item item, boolean lineOnly, boolean letters) throws IOException {
        if (++items > MOST_ITEMS) {
            throw new Refusal(findings.where(), "the page has more than a million elements", "draw what repeats as a picture, or split the drawing");
        }
        if (uncounted == 0) {
            layers.count(scopes.stream().filter(scope -> scope.pile != null).flatMap(scope -> scope.membership.id().stream()).toList(), lineOnly, letters);
        }
        PDGraphicsState state = getGraphicsState();
        Blend blend = PageMasks.blend(state.getBlendMode());
        Item masked = state.getSoftMask() == null ? item : masked(item, state.getSoftMask());
        Optional<Area> clip = clipMm();
        if (blend != Blend.NORMAL) { // its clip goes with it: what is clipped together is painted by itself first
            blends++;
            findings.note("art-blend", "something is laid over what is below in the way " + state.getBlendMode().getCOSName().getName()
                    + "; a layer taken by itself shows it without what is below");
            Group.Looks looks = new Group.Looks(1, clip.map(Shape.class::cast), Optional.empty(), Optional.empty(), blend);
            piles.peek().add(Group.of(new Origin("blend", 0), Optional.empty(), false, List.of(masked), looks));
        } else if (clip.isPresent()) {
            piles.peek().add(masked, clip.get());
        } else {
            piles.peek().add(masked);
        }
    }

    /** The clip in mm, empty if it is the page's edge: what reaches over that is kept, since whoever asks says what part he wants. */
    private Optional<Area> clipMm() {
        Area clip = getGraphicsState().getCurrentClippingPath();
        if (clip.isRectangular() && clip.getBounds2D().contains(pageBox)) {
            return Optional.empty();
        }
        if (clip != lastClip && (lastClip == null || !clip.equals(lastClip))) {
            lastClip = clip;
            lastClipMm = clip.createTransformedArea(pageToMm);
        }
        return Optional.of(lastClipMm);
    }

    private Item masked(Item item, PDSoftMask mask) throws IOException {
        PDTransparencyGroup group = mask.getGroup();
        if (group == null) {
            return item;
        }
        List<Item> content = apart(() -> processSoftMask(group));
        findings.note("art-mask", "a mask is painted, but lines taken from what it covers are whole");
        Mask shown = PageMasks.of(mask, Group.plain(new Origin("mask", 0), content), pageToMm.createTransformedShape(farAround()), colours);
        return Group.of(new Origin("masked", 0), Optional.empty(), false, List.of(item),
                new Group.Looks(1, Optional.empty(), Optional.of(shown), Optional.empty()));
    }

    private Rectangle2D farAround() {
        double reach = 10 * Math.max(pageBox.getWidth(), pageBox.getHeight());
        return new Rectangle2D.Double(pageBox.getX() - reach, pageBox.getY() - reach, pageBox.getWidth() + 2 * reach, pageBox.getHeight() + 2 * reach);
    }

    private interface Drawing {
        void run() throws IOException;
    }

    /** What is drawn meanwhile, uncounted and apart from the page; the path and the clip rule that are being made go on afterwards. */
    private List<Item> apart(Drawing drawing) throws IOException {
        Path2D.Double kept = new Path2D.Double(path);
        int keptRule = clipRule;
        path.reset();
        clipRule = -1;
        Pile own = new Pile();
        int depth = scopes.size();
        piles.push(own);
        uncounted++;
        try {
            drawing.run();
            closeScopes(depth);
        } finally {
            uncounted--;
            piles.remove(own);
            path.reset();
            path.append(kept, false);
            clipRule = keptRule;
        }
        return own.items();
    }

    // ---- paths

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        path.moveTo(p0.getX(), p0.getY());
        path.lineTo(p1.getX(), p1.getY());
        path.lineTo(p2.getX(), p2.getY());
        path.lineTo(p3.getX(), p3.getY());
        path.closePath();
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.getCurrentPoint();
    }

    @Override
    public void closePath() {
        if (path.getCurrentPoint() != null) {
            path.closePath();
        }
    }

    @Override
    public void clip(int windingRule) {
        clipRule = windingRule;
    }

    @Override
    public void endPath() {
        if (clipRule >= 0 && path.getCurrentPoint() != null) {
            path.setWindingRule(clipRule);
            getGraphicsState().intersectClippingPath(new Area(path));
        }
        clipRule = -1;
        path.reset();
    }

    @Override
    public void strokePath() throws IOException {
        draw(-1, true);
    }

    @Override
    public void fillPath(int windingRule) throws IOException {
        draw(windingRule, false);
    }

    @Override
    public void fillAndStrokePath(int windingRule) throws IOException {
        draw(windingRule, true);
    }

    private void draw(int fillRule, boolean stroke) throws IOException {
        if (path.getCurrentPoint() != null) {
            path.setWindingRule(fillRule < 0 ? Path2D.WIND_NON_ZERO : fillRule);
            figure(new Path2D.Double(path), fillRule >= 0, stroke, false, "path");
        }
        endPath();
    }

    /** @param shape in default user space; not to be changed */
    private void figure(Path2D shape, boolean filled, boolean stroke, boolean letters, String kind) throws IOException {
        PDGraphicsState state = getGraphicsState();
        boolean fill = filled && !mesh(shape, state);
        Optional<Tint> inside = fill ? tint(state.getNonStrokingColor(), state.getNonStrokeAlphaConstant()) : Optional.empty();
        Optional<Tint> edge = stroke ? tint(state.getStrokingColor(), state.getAlphaConstant()) : Optional.empty();
        if (inside.isEmpty() && edge.isEmpty()) {
            return;
        }
        Shape outline = shape;
        AffineTransform toMm = pageToMm;
        if (edge.isPresent()) { // a stroke is as wide as user space says, which may be stretched
            AffineTransform user = state.getCurrentTransformationMatrix().createAffineTransform();
            try {
                outline = user.createInverse().createTransformedShape(shape);
                toMm = new AffineTransform(pageToMm);
                toMm.concatenate(user);
            } catch (NoninvertibleTransformException e) {
                edge = Optional.empty(); // squeezed flat: no width anywhere
            }
        }
        Optional<Line> line = edge.map(tint -> Line.of(pen(state), tint));
        Figure figure = new Figure(new Origin(kind + "-" + (items + 1), 0), outline, toMm, inside, line, false, letters);
        inBounds(figure.boundsMm());
        put(figure, inside.isEmpty(), letters);
    }

    /** Fills a shape with a shading that is kept as a picture; whether it was one. */
    private boolean mesh(Path2D shape, PDGraphicsState state) throws IOException {
        PDColor color = state.getNonStrokingColor();
        if (!(color.getColorSpace() instanceof PDPattern patterns && color.isPattern() && patterns.getPattern(color) instanceof PDShadingPattern shaded)
                || shaded.getShading() == null || shadings.isRamp(shaded.getShading())) {
            return false;
        }
        mesh(shaded.getShading(), Matrix.concatenate(getInitialMatrix(), shaded.getMatrix()), shape);
        return true;
    }

    private void mesh(PDShading shading, Matrix toPage, Path2D shape) throws IOException {
        Rectangle2D box = shape.getBounds2D().createIntersection(pageBox);
        Optional<Photo> picture;
        try {
            if (!shading.getCOSObject().containsKey(COSName.FUNCTION) && shading.getShadingType() < PDShading.SHADING_TYPE4) {
                throw new IllegalArgumentException("a shading without the function that colours it");
            }
            picture = PageMeshes.picture(new Origin("shading-" + (items + 1), 0), shading, toPage, box, pageToMm);
        } catch (RuntimeException e) { // what the library answers to values that cannot be
            findings.warn("art-shading", "a shading of the kind " + shading.getShadingType() + " cannot be read and is left out; turn it into a picture");
            return;
        }
        if (picture.isPresent()) {
            Shape edge = pageToMm.createTransformedShape(shape);
            put(Group.of(new Origin("shading", 0), Optional.empty(), false, List.of(picture.get()),
                    new Group.Looks(getGraphicsState().getNonStrokeAlphaConstant(), Optional.of(edge), Optional.empty(), Optional.empty())), false, false);
        }
    }

    private void inBounds(Rectangle2D mm) {
        double far = 1e7;
        if (!(mm.getMinX() > -far && mm.getMinY() > -far && mm.getMaxX() < far && mm.getMaxY() < far)) {
            throw new Refusal(findings.where(), "something reaches more than ten kilometres away, or nobody knows where",
                    "delete or redraw it and export again");
        }
    }

    private BasicStroke pen(PDGraphicsState state) {
        float width = state.getLineWidth() > 0 ? state.getLineWidth() : (float) THINNEST;
        float limit = Math.max(1, state.getMiterLimit());
        int cap = Math.max(0, Math.min(2, state.getLineCap())); // the numbers are the platform's
        int join = Math.max(0, Math.min(2, state.getLineJoin()));
        float[] dashes = state.getLineDashPattern() == null ? new float[0] : state.getLineDashPattern().getDashArray();
        float sum = 0;
        for (float dash : dashes) {
            sum += dash < 0 ? Float.NaN : dash;
        }
        if (!(sum > 0)) {
            return new BasicStroke(width, cap, join, limit);
        }
        if (sum < THINNEST / 10) {
            findings.warn("art-style", "a line has more dashes than can be seen; it is drawn whole");
            return new BasicStroke(width, cap, join, limit);
        }
        int phase = state.getLineDashPattern().getPhase();
        return new BasicStroke(width, cap, join, limit, dashes, phase < 0 ? phase % (2 * sum) + 2 * sum : phase % (2 * sum));
    }

    // ---- colours

    private Optional<Tint> tint(PDColor color, double opacity) throws IOException {
        if (!(color.getColorSpace() instanceof PDPattern patterns)) {
            return Optional.of(new Tint.Flat(colours.argb(color, opacity)));
        }
        PDAbstractPattern pattern = color.isPattern() ? patterns.getPattern(color) : null;
        if (pattern == null) {
            findings.warn("art-reference", "a pattern is named that is not in the file; what it fills is left out");
            return Optional.empty();
        }
        Matrix matrix = Matrix.concatenate(getInitialMatrix(), pattern.getMatrix());
        AffineTransform toMm = new AffineTransform(pageToMm);
        toMm.concatenate(matrix.createAffineTransform());
        if (pattern instanceof PDShadingPattern shaded) {
            PDShading shading = shaded.getShading();
            return shading == null ? Optional.empty() : shadings.tint(shading, toMm, opacity);
        }
        return pattern instanceof PDTilingPattern tiling ? tiles(tiling, color, patterns, matrix, toMm, opacity) : Optional.empty();
    }

    private Optional<Tint> tiles(PDTilingPattern tiling, PDColor color, PDPattern patterns, Matrix matrix, AffineTransform toMm, double opacity)
            throws IOException {
        double stepX = Math.abs(tiling.getXStep());
        double stepY = Math.abs(tiling.getYStep());
        if (patternDepth >= MOST_PATTERN_DEPTH || !(stepX > 0 && stepY > 0) || tiling.getBBox() == null) {
            findings.warn("art-pattern", "a pattern has no size, or is made of itself; what it fills is left out");
            return Optional.empty();
        }
        patternDepth++;
        Area keptClip = lastClip;
        Area keptClipMm = lastClipMm;
        try {
            List<Item> content = apart(() -> processTilingPattern(tiling, color, patterns.getUnderlyingColorSpace(), matrix));
            Rectangle2D box = tiling.getBBox().toGeneralPath().getBounds2D();
            boolean over = box.getWidth() > stepX * 1.0001 || box.getHeight() > stepY * 1.0001;
            return Optional.of(new Tiles(Group.plain(new Origin("pattern", 0), content),
                    new Rectangle2D.Double(box.getX(), box.getY(), stepX, stepY), toMm, over, opacity));
        } finally {
            patternDepth--;
            lastClip = keptClip;
            lastClipMm = keptClipMm;
        }
    }

    @Override
    public void shadingFill(COSName name) throws IOException {
        PDShading shading = getResources().getShading(name);
        if (shading == null) {
            findings.warn("art-reference", "a shading is named that is not in the file; it is left out");
            return;
        }
        PDGraphicsState state = getGraphicsState();
        AffineTransform toMm = new AffineTransform(pageToMm);
        toMm.concatenate(state.getCurrentTransformationMatrix().createAffineTransform());
        Path2D where = new Path2D.Double(state.getCurrentClippingPath());
        if (!shadings.isRamp(shading)) {
            mesh(shading, state.getCurrentTransformationMatrix(), where);
            return;
        }
        Optional<Tint> tint = shadings.tint(shading, toMm, state.getNonStrokeAlphaConstant());
        if (tint.isPresent() && where.getCurrentPoint() != null) {
            put(new Figure(new Origin("shading-" + (items + 1), 0), where, pageToMm, tint, Optional.empty(), false, true), false, false);
        }
    }

    // ---- pictures, letters

    @Override
    public void drawImage(PDImage image) throws IOException {
        if (image instanceof PDImageXObject stored && stored.getOptionalContent() != null) {
            int depth = scopes.size();
            open(stored.getOptionalContent());
            photo(image);
            closeScopes(depth);
        } else {
            photo(image);
        }
    }

    private void photo(PDImage image) throws IOException {
        PDGraphicsState state = getGraphicsState();
        int rgb = 0;
        if (image.isStencil()) {
            rgb = tint(state.getNonStrokingColor(), 1).map(Tint::meanArgb).orElse(0) & 0xFFFFFF;
            if (state.getNonStrokingColor().getColorSpace() instanceof PDPattern) {
                findings.warn("art-picture", "a picture is painted with a pattern or shading; it is painted in one colour instead");
            }
        }
        Picture picture = pictures.of(image, rgb);
        AffineTransform pxToMm = new AffineTransform(pageToMm);
        pxToMm.concatenate(state.getCurrentTransformationMatrix().createAffineTransform());
        pxToMm.concatenate(new AffineTransform(1.0 / picture.widthPx(), 0, 0, -1.0 / picture.heightPx(), 0, 1));
        Photo photo = Photo.of(new Origin("picture-" + (items + 1), 0), picture, pxToMm, image.getInterpolate());
        inBounds(photo.boundsMm());
        put(faded(photo, state.getNonStrokeAlphaConstant()), false, false);
    }

    private static Item faded(Item item, double opacity) {
        return opacity >= 1
                ? item
                : Group.of(new Origin("faded", 0), Optional.empty(), false, List.of(item), Group.Looks.faded(opacity));
    }

    @Override
    public void beginText() {
        letterClip = null;
    }

    @Override
    public void endText() {
        if (letterClip != null) {
            getGraphicsState().intersectClippingPath(new Area(letterClip));
            letterClip = null;
        }
    }

    @Override
    protected void showFontGlyph(Matrix textToPage, PDFont font, int code, Vector displacement) throws IOException {
        RenderingMode mode = getGraphicsState().getTextState().getRenderingMode();
        if (!(font instanceof PDVectorFont drawn)) {
            findings.warn("art-font", "letters of the font " + font.getName() + " have no outlines and are left out; turn the text into paths");
            return;
        }
        if (!font.isEmbedded()) {
            findings.warn("art-font", "the font " + font.getName() + " is not in the file, so its letters are drawn in another; embed it, or turn the text"
                    + " into paths before exporting");
        }
        Path2D glyph = drawn.getNormalizedPath(code);
        if (glyph == null || glyph.getCurrentPoint() == null || mode == RenderingMode.NEITHER) {
            return;
        }
        AffineTransform at = textToPage.createAffineTransform();
        at.concatenate(font.getFontMatrix().createAffineTransform());
        Path2D.Double placed = new Path2D.Double(glyph, at);
        placed.setWindingRule(Path2D.WIND_NON_ZERO);
        if (mode.isFill() || mode.isStroke()) {
            figure(placed, mode.isFill(), mode.isStroke(), true, "letter");
        }
        if (mode.isClip()) {
            letterClip = letterClip == null ? new Path2D.Double() : letterClip;
            letterClip.append(placed, false);
        }
    }

    // ---- parts in parts, layers

    @Override
    public void showForm(PDFormXObject form) throws IOException {
        within(form, () -> super.showForm(form));
    }

    @Override
    public void showTransparencyGroup(PDTransparencyGroup group) throws IOException {
        PDGraphicsState state = getGraphicsState();
        boolean plain = state.getNonStrokeAlphaConstant() >= 1 && state.getSoftMask() == null && PageMasks.blend(state.getBlendMode()) == Blend.NORMAL;
        boolean isolated = group.getGroup() != null && group.getGroup().isIsolated();
        within(group, () -> {
            if (plain && !isolated) { // nothing is done to it as a whole, so it is a part like any other
                processTransparencyGroup(group);
                return;
            }
            int before = blends;
            Pile own = new Pile();
            int depth = scopes.size();
            piles.push(own);
            try {
                processTransparencyGroup(group);
                closeScopes(depth);
            } finally {
                piles.remove(own);
            }
            if (plain) {
                Group.Looks looks = Group.Looks.PLAIN.blended(blends > before ? Blend.APART : Blend.NORMAL);
                piles.peek().add(Group.of(new Origin("group", 0), Optional.empty(), false, own.items(), looks));
            } else {
                put(faded(Group.plain(new Origin("group", 0), own.items()), state.getNonStrokeAlphaConstant()), false, false);
            }
        });
    }

    private void within(PDFormXObject form, Drawing drawing) throws IOException {
        Unpacked.require(form.getCOSObject(), MOST_CONTENT_BYTES, findings.where(), "a part of the page is larger than any drawing");
        int depth = scopes.size();
        if (form.getOptionalContent() != null) {
            open(form.getOptionalContent());
        }
        drawing.run();
        closeScopes(depth);
    }

    @Override
    protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
        if (++operators > MOST_OPERATORS) {
            throw new Refusal(findings.where(), "with all its parts repeated the page has more than " + MOST_OPERATORS + " steps",
                    "draw what repeats as a picture, or split the drawing");
        }
        switch (operator.getName()) {
            case "BMC" -> scopes.push(new Scope(null, null));
            case "BDC" -> begin(operands);
            case "EMC" -> {
                if (!scopes.isEmpty()) {
                    closeScopes(scopes.size() - 1);
                }
            }
            default -> super.processOperator(operator, operands);
        }
    }

    private void begin(List<COSBase> operands) {
        PDPropertyList properties = null;
        if (operands.size() > 1 && COSName.OC.equals(operands.get(0))) {
            if (operands.get(1) instanceof COSName name && getResources() != null) {
                properties = getResources().getProperties(name);
            } else if (operands.get(1) instanceof COSDictionary inline) {
                properties = PDPropertyList.create(inline);
            }
        }
        open(properties);
    }

    private void open(PDPropertyList properties) {
        Optional<PageLayers.Membership> membership = properties == null ? Optional.empty() : layers.membership(properties);
        if (membership.isEmpty()) {
            scopes.push(new Scope(null, null));
            return;
        }
        Pile own = new Pile();
        piles.push(own);
        scopes.push(new Scope(own, membership.get()));
    }

    /** Ends what was begun and not ended, down to a depth: marks that a page forgets must not swallow the rest. */
    private void closeScopes(int depth) {
        while (scopes.size() > depth) {
            Scope scope = scopes.pop();
            if (scope.pile != null) {
                piles.remove(scope.pile);
                Item group = Group.of(new Origin("layer", 0), scope.membership.id(), scope.membership.hidden(), scope.pile.items(), Group.Looks.PLAIN);
                piles.peek().add(group);
            }
        }
    }

    @Override
    protected void operatorException(Operator operator, List<COSBase> operands, IOException e) throws IOException {
        if (e instanceof MissingImageReaderException) {
            findings.warn("art-picture", "a picture of a kind that cannot be read (JPEG 2000 or JBIG2) is left out; place it as PNG or JPEG");
        } else if ("Do".equals(operator.getName()) || "BI".equals(operator.getName())) {
            throw new Refusal(findings.where(), "a picture or part of the page is damaged", "export the page again", e);
        } else {
            findings.warn("art-damaged", "a step of the page (" + operator.getName() + ") cannot be read and is left out");
        }
    }

    @Override
    protected void unsupportedOperator(Operator operator, List<COSBase> operands) {
        findings.warn("art-damaged", "the page has a step (" + operator.getName() + ") that is not in the standard; it is left out");
    }
}
