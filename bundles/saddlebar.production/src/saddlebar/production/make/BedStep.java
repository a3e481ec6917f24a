package saddlebar.production.make;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

import saddlebar.model.commission.Face;
import saddlebar.model.file.Hashes;
import saddlebar.stencil.code.BitonalSettings;
import saddlebar.stencil.sheet.BedPage;
import saddlebar.stencil.sheet.BedPage.BedPiece;

/** The bed of each stencil as a page at true size: where the pieces lie under the screen, with stops and register crosses. */
final class BedStep {
    private final Path made;
    private final MadeIndex index;
    private final String software;

    BedStep(Path made, MadeIndex index, String software) {
        this.made = made;
        this.index = index;
        this.software = software;
    }

    MadeList run(PlannedLayerStencil planned, boolean afresh) throws IOException {
        long begun = System.nanoTime();
        String what = "bed plan";
        String file = file(planned);
        RasterPlace place = planned.place();
        boolean fromOutside = planned.facts().face() == Face.EXTERIOR;
        List<BedPiece> pieces = new ArrayList<>();
        for (int i = 0; i < planned.pieces().size(); i++) {
            CutPiece piece = planned.pieces().get(i);
            if (!piece.glass().isEmpty()) {
                pieces.add(new BedPiece(words(planned.alike().get(i)), Outlines.outline(laid(piece.glass(), place, fromOutside))));
            }
        }
        String key = ContentKey.of(what, planned.label(), pieces.stream().map(piece -> piece.number() + " " + piece.outlineMm()).toList(), place.widthMm(),
                place.heightMm(), software);
        Optional<MadeFileFacts> kept = afresh ? Optional.empty() : index.kept(file, key);
        if (kept.isPresent()) {
            return new MadeList(what, file, key, kept.get().sha256(), false, 0);
        }
        String title = planned.label() + ", bed, " + planned.facts().face().getLiteral() + " face up";
        BedPage.writePdf(pieces, place.widthMm(), place.heightMm(), title, made.resolve(file),
                BitonalSettings.at(place.dpi()).withTitle(title).withSoftware(software).replacing(true));
        String sha256 = Hashes.sha256(made.resolve(file));
        index.enter(file, key, sha256, Map.of());
        return new MadeList(what, file, key, sha256, true, (System.nanoTime() - begun) / 1e9);
    }

    static String file(PlannedLayerStencil planned) {
        return "beds/" + FileNames.of(planned.label()) + "-bed.pdf";
    }

    /** A bed for alike pieces is used for one after the other: the first is named, and how many there are. */
    private static String words(List<String> alike) {
        return alike.size() == 1 ? alike.get(0) : alike.get(0) + " and " + (alike.size() - 1) + " alike";
    }

    /** From the artwork's page to the stencil's place, seen from the side that is printed. */
    private static Polygon laid(Polygon glass, RasterPlace place, boolean fromOutside) {
        AffineTransformation move = AffineTransformation.translationInstance(-place.originXMm(), -place.originYMm());
        if (fromOutside) {
            move.compose(new AffineTransformation(-1, 0, place.widthMm(), 0, 1, 0));
        }
        return (Polygon) move.transform(glass);
    }
}
