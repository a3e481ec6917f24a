package saddlebar.artwork.svg;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.apache.batik.anim.dom.SVGOMDocument;
import org.apache.batik.gvt.CompositeGraphicsNode;
import org.apache.batik.gvt.GraphicsNode;
import org.osgi.service.component.annotations.Component;
import org.w3c.dom.Element;

import saddlebar.artwork.ArtLayer;
import saddlebar.artwork.Artwork;
import saddlebar.artwork.ArtworkReader;
import saddlebar.artwork.ReadSettings;
import saddlebar.artwork.drawing.DrawnArtwork;
import saddlebar.artwork.drawing.Group;
import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Units;

/** Reads SVG, packed or plain. */
@Component(service = ArtworkReader.class)
public final class SvgReader implements ArtworkReader {
    private static final double MOST_MM = 1e7;
    private static final double LEAST_MM = 0.01;

    @Override
    public String kinds() {
        return "SVG";
    }

    /** By content: XML of any kind, or packed; by name only what is text, so that a drawing that is none is told as one. */
    @Override
    public boolean canRead(String fileName, byte[] head) {
        String name = fileName.toLowerCase(Locale.ROOT);
        if (head.length >= 2 && head[0] == 0x1F && head[1] == (byte) 0x8B) {
            return name.endsWith(".svgz") || name.endsWith(".svg") || name.endsWith(".svg.gz");
        }
        String text = new String(head, StandardCharsets.ISO_8859_1).replace("\0", "").replaceFirst("^(\u00EF\u00BB\u00BF|\u00FF\u00FE|\u00FE\u00FF)", "")
                .strip();
        return text.startsWith("<") || name.endsWith(".svg") || name.endsWith(".svgz");
    }

    @Override
    public Artwork read(Path file, ReadSettings settings) throws IOException {
        Findings findings = new Findings(String.valueOf(file.getFileName()));
        SVGOMDocument document = SvgParser.parse(file, findings);
        try {
            return drawing(file, settings, findings, document);
        } catch (StackOverflowError e) {
            throw new Refusal(findings.fileName(), "its groups, copies or patterns lie in each other too deep", "take the drawing's groups apart", e);
        } catch (OutOfMemoryError e) {
            throw new Refusal(findings.fileName(), "the drawing is too large for the memory there is", "split it, or simplify what was traced", e);
        }
    }

    private static Artwork drawing(Path file, ReadSettings settings, Findings findings, SVGOMDocument document) {
        Element root = document.getDocumentElement();
        SvgContext context = SvgContext.of(document);
        SvgTidy tidy = new SvgTidy(document, context, findings);
        tidy.tidy();
        SvgSize size = SvgSize.of(root, findings);
        new References(document, findings).follow();
        context.use(tidy, new Pictures(file, findings));
        SvgBuilder builder = new SvgBuilder(findings);
        GraphicsNode page = page(builder.build(context, document), findings);

        double pxMm = Units.MM_PER_INCH / SvgSize.PX_PER_INCH;
        if (Double.isNaN(size.widthPx()) || Double.isNaN(size.heightPx())) {
            size = asDrawn(size, builder, findings, page, root);
        }
        double scale = pxMm * settings.scaleFor(size.widthPx() * pxMm);
        double widthMm = size.widthPx() * scale;
        double heightMm = size.heightPx() * scale;
        if (!(Math.max(widthMm, heightMm) <= MOST_MM && Math.min(widthMm, heightMm) >= LEAST_MM)) {
            throw new Refusal(findings.where(root), String.format(Locale.ROOT, "the page would be %.4g x %.4g mm", widthMm, heightMm),
                    "set the page size in the drawing, or give its width in mm");
        }
        LayerList layers = new LayerList(findings);
        Translator translator = new Translator(builder, findings, AffineTransform.getScaleInstance(scale, scale), layers);
        Group drawing = translator.translate(page);
        translator.detachHidden();
        List<ArtLayer> listed = layers.layers();
        return new DrawnArtwork(file, widthMm, heightMm, listed, findings.all(), drawing);
    }

    private static GraphicsNode page(GraphicsNode tree, Findings findings) {
        if (tree instanceof CompositeGraphicsNode root && !root.getChildren().isEmpty()) {
            return (GraphicsNode) root.getChildren().get(0);
        }
        throw new Refusal(findings.fileName(), "the drawing shows nothing", "check that it is visible and export it again");
    }

    /** No size at all: the page goes from its corner to the end of what is drawn. */
    private static SvgSize asDrawn(SvgSize known, SvgBuilder builder, Findings findings, GraphicsNode page, Element root) {
        Group trial = new Translator(builder, new Findings(findings.fileName()), new AffineTransform(), new LayerList(findings)).translate(page);
        Rectangle2D all = trial.boundsMm();
        double width = Double.isNaN(known.widthPx()) ? all.getMaxX() : known.widthPx();
        double height = Double.isNaN(known.heightPx()) ? all.getMaxY() : known.heightPx();
        if (!(width > 0 && height > 0)) {
            throw new Refusal(findings.where(root), "the drawing has no size, and nothing is drawn that could tell it", "set the page size in the drawing");
        }
        findings.warn("art-size", root, "absent", String.format(Locale.ROOT, "the drawing does not say how large its page is; it is taken to end with what"
                + " is drawn, at %.1f x %.1f mm", width * Units.MM_PER_INCH / SvgSize.PX_PER_INCH, height * Units.MM_PER_INCH / SvgSize.PX_PER_INCH));
        return new SvgSize(width, height);
    }
}
