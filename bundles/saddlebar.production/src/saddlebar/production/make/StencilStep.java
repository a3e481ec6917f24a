package saddlebar.production.make;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.locationtech.jts.geom.Geometry;

import saddlebar.model.art.GrayBands;
import saddlebar.model.commission.MirrorRule;
import saddlebar.model.commission.SightLineRule;
import saddlebar.model.problem.PlaceMm;
import saddlebar.model.work.Work;
import saddlebar.production.facts.LayerFacts;
import saddlebar.production.facts.RecipeFacts;
import saddlebar.stencil.BitBands;
import saddlebar.stencil.BitPicture;
import saddlebar.stencil.ClippedBands;
import saddlebar.stencil.ScreenedBands;
import saddlebar.stencil.ScreeningMethod;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.code.BitonalSettings;
import saddlebar.stencil.code.BitonalTiff;
import saddlebar.stencil.code.WrittenBits;
import saddlebar.stencil.limits.CheckedBands;
import saddlebar.stencil.limits.LimitsCheck;
import saddlebar.stencil.limits.LimitsFound;
import saddlebar.stencil.limits.PictureMending;
import saddlebar.stencil.process.Face;
import saddlebar.stencil.process.StencilProcess;
import saddlebar.stencil.process.StencilProcesses;
import saddlebar.stencil.process.TonerSide;

/**
 * Makes one stencil: its part of the layer in gray, tone, dots, cut to the pieces with bleed or sight line, limits counted, then polarity and
 * mirror of the process, and the file. A stencil is held whole at 1 bit, about 16 MB for a letter sheet at 1200 dpi; gray passes in bands.
 */
final class StencilStep {
    /** Units of work that one stencil tells for each row. */
    static final int UNITS_A_ROW = 2;

    private static final double OVERVIEW_DPI = 50;

    private final Path made;
    private final MadeIndex index;
    private final OpenArtworks artworks;
    private final LayerTones tones;
    private final ScreeningMethods methods;
    private final StencilProcesses processes;
    private final String software;

    StencilStep(Path made, MadeIndex index, OpenArtworks artworks, ScreeningMethods methods, StencilProcesses processes, String software) {
        this.made = made;
        this.index = index;
        this.artworks = artworks;
        this.tones = new LayerTones(artworks);
        this.methods = methods;
        this.processes = processes;
        this.software = software;
    }

    /** @param work told {@link #UNITS_A_ROW} units a row of the stencil, all at once if it is kept */
    MadeStencil run(PlannedLayerStencil planned, boolean afresh, Work work) throws IOException {
        LayerFacts layer = planned.facts();
        String file = file(planned);
        String key = key(planned);
        Optional<MadeFileFacts> kept = afresh ? Optional.empty() : index.kept(file, key);
        if (kept.isPresent()) {
            work.advance((long) UNITS_A_ROW * planned.place().heightPx());
            return MadeStencil.kept(planned, kept.get(), file);
        }
        long begun = System.nanoTime();
        work.say(planned.label());
        RecipeFacts recipe = layer.recipe();
        LimitsCheck check = new LimitsCheck(planned.place().widthPx(), planned.place().heightPx(), recipe.screening().dpi(), recipe.openMm(),
                recipe.bridgeMm());
        BitPicture paint = BitPicture.of(new CheckedBands(paint(planned, work), check));
        LimitsFound limits = check.finish();
        List<PictureMending.Wanted> wanted = mends(planned);
        PictureMending.Done mended = wanted.isEmpty()
                ? new PictureMending.Done(paint, List.of(), List.of())
                : PictureMending.places(paint, recipe.screening().dpi(), wanted);
        if (!wanted.isEmpty()) {
            paint = mended.bits();
            limits = limits(paint, recipe);
        }
        StencilProcess process = processes.process(layer.recipe().processKey());
        boolean mirrored = mirrored(layer, process);
        BitonalSettings settings = BitonalSettings.at(layer.recipe().screening().dpi()).withTitle(planned.label())
                .withDescription(recipeText(planned, mirrored))
                .withSoftware(software).replacing(true).onThreads(1);
        WrittenBits written = BitonalTiff.write(process.toner(paint.bands(), mirrored), made.resolve(file), settings, work);
        MadeStencil result = new MadeStencil(planned, key, file, written.sha256OfFile(), written.sha256OfBits(), mirrored, limits.coverage(),
                limits.tooFine(), limits.bridgesLost(), limits.looseIslands(), steps(mended, planned), mended.notFound().size(), true,
                (System.nanoTime() - begun) / 1e9);
        index.enter(file, key, written.sha256OfFile(), result.facts());
        return result;
    }

    /** The places to be widened that lie on this stencil, from its own top left. */
    private static List<PictureMending.Wanted> mends(PlannedLayerStencil planned) {
        RasterPlace place = planned.place();
        List<PictureMending.Wanted> mends = new ArrayList<>();
        for (PictureMending.Wanted mend : planned.facts().recipe().mends()) {
            boolean onPiece = planned.pieces().stream()
                    .anyMatch(piece -> piece.glass().getEnvelopeInternal().contains(mend.at().xMm(), mend.at().yMm()));
            if (onPiece) {
                PlaceMm at = new PlaceMm(mend.at().xMm() - place.originXMm(), mend.at().yMm() - place.originYMm());
                mends.add(new PictureMending.Wanted(mend.thicken(), at, mend.widthMm()));
            }
        }
        return mends;
    }

    private static LimitsFound limits(BitPicture paint, RecipeFacts recipe) throws IOException {
        LimitsCheck again = new LimitsCheck(paint.widthPx(), paint.heightPx(), recipe.screening().dpi(), recipe.openMm(), recipe.bridgeMm());
        BitPicture.of(new CheckedBands(paint.bands(), again));
        return again.finish();
    }

    /** Each step in words, its place on the panel's page: what the record keeps. */
    private static List<String> steps(PictureMending.Done mended, PlannedLayerStencil planned) {
        RasterPlace place = planned.place();
        return mended.steps().stream().map(step -> String.format(Locale.ROOT, "%s at %.2f, %.2f mm: %d px", step.kind(), step.at().xMm() + place.originXMm(),
                step.at().yMm() + place.originYMm(), step.px())).toList();
    }

    /** The stencil as it was made before, if that is still good. */
    Optional<MadeStencil> keptOnly(PlannedLayerStencil planned) throws IOException {
        return index.kept(file(planned), key(planned)).map(facts -> MadeStencil.kept(planned, facts, file(planned)));
    }

    private static String file(PlannedLayerStencil planned) {
        return planned.file() + ".tif";
    }

    private static String key(PlannedLayerStencil planned) {
        LayerFacts layer = planned.facts();
        return ContentKey.of("stencil", planned.label(), planned.alike(), planned.layer().art(), layer.printedAlike(), layer.artLayer(), planned.place(),
                planned.pieces().stream().map(piece -> Outlines.outline(piece.glass())).toList());
    }

    /** 1 where paint prints. */
    private BitBands paint(PlannedLayerStencil planned, Work work) throws IOException {
        LayerFacts layer = planned.facts();
        RecipeFacts recipe = layer.recipe();
        RasterPlace place = planned.place();
        GrayBands gray = artworks.gray(planned.layer().art(), layer.artLayer(), place, LayerTones.coding(recipe.tone()), work);
        if (layer.sightLine() == SightLineRule.FADE && layer.sightLineMm() > 0) {
            List<List<Geometry>> fades = planned.pieces().stream().map(piece -> SightLineMask.fade(piece.glass(), layer)).toList();
            gray = new FadedGray(gray, fades, place);
        }
        BitBands screened = new ScreenedBands(gray, tones.of(planned.layer(), work), method(planned, work), recipe.screening());
        List<Geometry> printed = planned.pieces().stream().map(piece -> SightLineMask.printed(piece.glass(), layer)).toList();
        return new ClippedBands(screened, new MaskBands(printed, place));
    }

    /** The recipe's method, which has looked the picture over first if it must. */
    private ScreeningMethod method(PlannedLayerStencil planned, Work work) throws IOException {
        LayerFacts layer = planned.facts();
        RecipeFacts recipe = layer.recipe();
        ScreeningMethod method = methods.method(recipe.screening().method());
        if (!method.looksAhead(recipe.screening())) {
            return method;
        }
        RasterPlace fine = planned.place();
        double share = OVERVIEW_DPI / fine.dpi();
        RasterPlace coarse = new RasterPlace((int) Math.floor(fine.leftPx() * share), (int) Math.floor(fine.topPx() * share),
                (int) Math.ceil(fine.widthPx() * share) + 1, (int) Math.ceil(fine.heightPx() * share) + 1, OVERVIEW_DPI);
        GrayBands overview = artworks.gray(planned.layer().art(), recipe.courseLayer().isEmpty() ? layer.artLayer() : recipe.courseLayer(), coarse,
                LayerTones.coding(recipe.tone()), new StopOnly(work));
        return method.having(overview, OVERVIEW_DPI, recipe.screening());
    }

    static boolean mirrored(LayerFacts layer, StencilProcess process) {
        MirrorRule rule = layer.recipe().mirror();
        if (rule != MirrorRule.AUTO) {
            return rule == MirrorRule.YES;
        }
        return process.mirrored(TonerSide.valueOf(layer.recipe().tonerSide().name()), Face.valueOf(layer.face().name()));
    }

    /** What the file says of itself: enough to make it again, and nothing of time or place. */
    private static String recipeText(PlannedLayerStencil planned, boolean mirrored) {
        LayerFacts layer = planned.facts();
        var screening = layer.recipe().screening();
        Map<String, Object> lines = new LinkedHashMap<>();
        lines.put("stencil", planned.label());
        lines.put("pieces", String.join(" ", planned.alike().stream().map(alike -> String.join("=", alike)).toList()));
        lines.put("prints", planned.prints());
        lines.put("paint", layer.paint());
        lines.put("mesh", layer.frame().mesh());
        lines.put("painted face", layer.face().getLiteral());
        lines.put("process", layer.recipe().processKey() + ", toner touches the " + layer.recipe().tonerSide().getLiteral() + " side");
        lines.put("mirrored", mirrored ? "yes" : "no");
        lines.put("method", screening.method());
        lines.put("ruling", String.format(Locale.ROOT, "%s lpi at %s degrees, %s dots", screening.lpi(), screening.angleDeg(), screening.dot()));
        lines.put("scattered dots", String.format(Locale.ROOT, "%s mm, %s", screening.dotMm(), screening.filter()));
        if (screening.method().equals("lines")) {
            lines.put("lines run", screening.course() + (layer.recipe().courseLayer().isEmpty() ? "" : " of layer " + layer.recipe().courseLayer()));
        }
        if (!layer.recipe().mends().isEmpty()) {
            lines.put("widened", layer.recipe().mends().size() + " places");
        }
        lines.put("resolution", String.format(Locale.ROOT, "%s dpi", screening.dpi()));
        lines.put("tone", layer.recipe().tone());
        lines.put("bleed", layer.bleedMm() + " mm, sight line " + layer.sightLine().getLiteral() + " " + layer.sightLineMm() + " mm");
        lines.put("artwork", planned.layer().art().sha256() + " layer " + layer.artLayer());
        StringBuilder text = new StringBuilder();
        lines.forEach((name, value) -> text.append(name).append(": ").append(value).append('\n'));
        return text.toString();
    }
}
