package saddlebar.production.make;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.common.util.ECollections;
import org.locationtech.jts.geom.Polygon;

import saddlebar.cartoon.Cartoon;
import saddlebar.cartoon.CartoonPiece;
import saddlebar.model.art.OutlineMm;
import saddlebar.model.commission.Commission;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.MadeFile;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Placement;
import saddlebar.model.commission.Sheet;
import saddlebar.model.commission.Stencil;
import saddlebar.model.commission.StencilPiece;
import saddlebar.model.commission.Window;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.RecordBook;
import saddlebar.model.store.RecordDraft;
import saddlebar.model.store.RecordKind;
import saddlebar.production.facts.CommissionFacts.PlacedPanel;
import saddlebar.production.facts.LayerFacts;

/**
 * Enters what was made: pieces, stencils and sheets in the model, and a record for each made thing with its settings of the day and the hashes of what
 * it was made from. Called on the thread that owns the model; the caller saves. What is gone from the drawing is retired, never deleted, since records
 * name it.
 */
public final class MakeBook {
    private static final String RECORDED = "recorded";

    private final CommissionFolder folder;
    private final Commission commission;
    private final Map<String, DesignLayer> layers = new HashMap<>();
    private final Map<String, Panel> panels = new HashMap<>();
    private final Map<String, Piece> pieces = new HashMap<>();
    private final Map<String, Stencil> stencils = new HashMap<>();

    private MakeBook(CommissionFolder folder) {
        this.folder = folder;
        this.commission = folder.commission();
    }

    /** Changes the model, appends the records, and remembers in the index that they are there. The caller saves the model. */
    public static void enter(CommissionFolder folder, MakeResult result) throws IOException {
        new MakeBook(folder).enter(result);
    }

    /**
     * Only the pieces of one panel, without a record, as somebody who edits it sees them at once; the next making makes them anew and records them.
     */
    public static void showPieces(CommissionFolder folder, Panel panel, PanelPieces pieces) {
        new MakeBook(folder).pieces(panel, pieces);
        panel.setContentKey(null);
    }

    /** Only the pieces of one panel, as bringing artwork needs it; appends its record. */
    public static void enterPieces(CommissionFolder folder, Panel panel, PanelPieces pieces) throws IOException {
        MakeBook book = new MakeBook(folder);
        book.pieces(panel, pieces);
        folder.records().append(piecesRecord(pieces, panel, List.of()));
    }

    private void enter(MakeResult result) throws IOException {
        for (Window window : commission.getWindows()) {
            for (Panel panel : window.getPanels()) {
                panels.put(panel.getId(), panel);
                panel.getLayers().forEach(layer -> layers.put(layer.getId(), layer));
            }
        }
        List<RecordDraft> drafts = new ArrayList<>();
        List<Runnable> whenRecorded = new ArrayList<>();
        for (PanelPieces made : result.pieces()) {
            Panel panel = panels.get(made.placed().panel().id());
            if (made.cartoon().isPresent()) {
                pieces(panel, made);
                drafts.add(piecesRecord(made, panel, result.lists()));
            }
            panel.getPieces().stream().filter(piece -> !piece.isRetired())
                    .forEach(piece -> pieces.put(made.placed().window().label(made.placed().panel(), piece.getNumber()), piece));
        }
        stencils(result);
        for (MadeStencil made : result.stencils()) {
            if (unrecorded(result.index(), made.file())) {
                drafts.add(stencilRecord(made));
                whenRecorded.add(() -> result.index().note(made.file(), RECORDED, "yes"));
            }
        }
        if (!result.sheets().isEmpty()) {
            sheets(result.sheets());
            for (MadeSheet made : result.sheets()) {
                if (made.files().stream().anyMatch(file -> unrecorded(result.index(), file))) {
                    drafts.add(sheetRecord(made));
                    made.files().forEach(file -> whenRecorded.add(() -> result.index().note(file, RECORDED, "yes")));
                }
            }
        }
        for (MadeList made : result.lists()) {
            if (unrecorded(result.index(), made.file())) {
                if (!made.what().equals("pieces")) { // its hash stands in the record of the pieces
                    drafts.add(RecordDraft.of(RecordKind.DOCUMENT).with(Map.of("what", made.what(), "inputSha256", made.key(), "sha256", made.sha256(), "file",
                            Making.FOLDER + "/" + made.file())));
                }
                whenRecorded.add(() -> result.index().note(made.file(), RECORDED, "yes"));
            }
        }
        RecordBook records = folder.records();
        if (!drafts.isEmpty()) {
            records.append(drafts);
        }
        whenRecorded.forEach(Runnable::run);
        result.index().write();
    }

    private static boolean unrecorded(MadeIndex index, String file) {
        return index.facts(file).map(facts -> !facts.facts().containsKey(RECORDED)).orElse(true);
    }

    private void pieces(Panel panel, PanelPieces made) {
        Cartoon cartoon = made.cartoon().orElseThrow();
        Map<Integer, Piece> byNumber = new HashMap<>();
        panel.getPieces().stream().filter(piece -> !piece.isRetired()).forEach(piece -> byNumber.put(piece.getNumber(), piece));
        Map<Integer, Piece> now = new LinkedHashMap<>();
        for (CartoonPiece cut : cartoon.pieces()) {
            Piece piece = byNumber.remove(cut.number());
            if (piece == null) {
                piece = CommissionFactory.eINSTANCE.createPiece();
                piece.setNumber(cut.number());
                panel.getPieces().add(piece);
            }
            fill(piece, cut);
            now.put(cut.number(), piece);
        }
        byNumber.values().forEach(gone -> {
            gone.setRetired(true);
            gone.getNeighbours().clear();
        });
        for (CartoonPiece cut : cartoon.pieces()) {
            List<Piece> beside = cut.neighbours().stream().map(now::get).filter(Objects::nonNull).toList();
            ECollections.setEList(now.get(cut.number()).getNeighbours(), beside);
        }
        cartoon.revision().ifPresent(revision -> Heirs.enter(panel, revision));
        panel.getMendings().removeIf(mend -> made.droppedMends().contains(mend.getKey()));
        if (cartoon.panel() instanceof Polygon outline) {
            panel.setOutline(Outlines.outline(outline));
        }
        panel.setContentKey(made.key());
    }

    private static void fill(Piece piece, CartoonPiece cut) {
        OutlineMm net = Outlines.outline(cut.glass());
        piece.setFace(Outlines.outline(cut.face()));
        piece.setNet(net);
        piece.setLabelXMm(cut.label().xMm());
        piece.setLabelYMm(cut.label().yMm());
        piece.setInradiusMm(cut.inradiusMm());
        piece.setAreaMm2(cut.areaMm2());
        piece.setNetAreaMm2(cut.netAreaMm2());
        piece.setPerimeterMm(cut.perimeterMm());
        piece.setShapeKey(ContentKey.of("shape", net));
        ECollections.setEList(piece.getProblems(), cut.problems());
    }

    private void stencils(MakeResult result) {
        Map<DesignLayer, Set<Integer>> seen = new HashMap<>();
        for (MadeStencil made : result.stencils()) {
            PlannedLayerStencil planned = made.planned();
            DesignLayer layer = layers.get(planned.facts().id());
            Stencil stencil = layer.getStencils().stream().filter(s -> s.getNumber() == planned.number()).findFirst().orElseGet(() -> {
                Stencil fresh = CommissionFactory.eINSTANCE.createStencil();
                fresh.setNumber(planned.number());
                layer.getStencils().add(fresh);
                return fresh;
            });
            seen.computeIfAbsent(layer, l -> new HashSet<>()).add(planned.number());
            if (!made.key().equals(stencil.getContentKey()) || !made.sha256().equals(stencil.getSha256()) || stencil.isRetired()) {
                fill(stencil, made);
            }
            stencils.put(planned.label(), stencil);
        }
        Set<String> wanted = new HashSet<>(result.stencils().stream().map(made -> made.planned().layer().placed().window().id()).toList());
        for (DesignLayer layer : layers.values()) {
            boolean made = wanted.contains(layer.getPanel().getWindow().getId());
            for (Stencil stencil : layer.getStencils()) {
                if (made && !seen.getOrDefault(layer, Set.of()).contains(stencil.getNumber()) && !stencil.isRetired()) {
                    stencil.setRetired(true);
                }
            }
        }
    }

    private void fill(Stencil stencil, MadeStencil made) {
        PlannedLayerStencil planned = made.planned();
        RasterPlace place = planned.place();
        stencil.setRetired(false);
        stencil.setWidthMm(place.widthMm());
        stencil.setHeightMm(place.heightMm());
        stencil.setOriginXMm(place.originXMm());
        stencil.setOriginYMm(place.originYMm());
        stencil.setWidthPx(place.widthPx());
        stencil.setHeightPx(place.heightPx());
        stencil.setPrints(planned.prints());
        stencil.setContentKey(made.key());
        stencil.setSha256(made.sha256());
        stencil.setCoverage(made.coverage());
        stencil.setTooFine((int) Math.min(Integer.MAX_VALUE, made.tooFine()));
        stencil.setBridgesLost((int) Math.min(Integer.MAX_VALUE, made.bridgesLost()));
        stencil.getFiles().clear();
        stencil.getFiles().add(madeFile("stencil", made.file(), made.sha256()));
        commission.getStudio().getFrames().stream().filter(frame -> frame.getName().equals(planned.facts().frame().name())).findFirst()
                .ifPresent(stencil::setFrame);
        stencil.getPieces().clear();
        for (int spot = 0; spot < planned.pieces().size(); spot++) {
            List<String> alike = planned.alike().get(spot);
            for (String label : alike) {
                Piece piece = pieces.get(label);
                StencilPiece entry = CommissionFactory.eINSTANCE.createStencilPiece();
                entry.setPiece(piece);
                entry.setSpot(spot);
                entry.setPrints(alike.size());
                var box = planned.pieces().get(spot).glass().getEnvelopeInternal();
                entry.setXMm(box.getMinX() - place.originXMm());
                entry.setYMm(box.getMinY() - place.originYMm());
                stencil.getPieces().add(entry);
            }
        }
    }

    private void sheets(List<MadeSheet> made) {
        Set<Integer> numbers = new HashSet<>();
        for (MadeSheet one : made) {
            LaidSheet laid = one.laid();
            numbers.add(laid.number());
            Optional<Sheet> known = commission.getSheets().stream().filter(sheet -> sheet.getNumber() == laid.number()).findFirst();
            if (known.isPresent() && one.key().equals(known.get().getContentKey())) {
                continue;
            }
            Sheet sheet = known.orElseGet(() -> {
                Sheet fresh = CommissionFactory.eINSTANCE.createSheet();
                fresh.setNumber(laid.number());
                commission.getSheets().add(fresh);
                return fresh;
            });
            sheet.setPaper(laid.paper().name());
            sheet.setWidthMm(laid.paper().widthMm());
            sheet.setHeightMm(laid.paper().heightMm());
            sheet.setMarginMm(laid.paper().marginMm());
            sheet.setProcessKey(laid.processKey());
            sheet.setTonerSide(laid.tonerSide());
            sheet.setDpi((int) Math.rint(laid.dpi()));
            sheet.setContentKey(one.key());
            sheet.getPlacements().clear();
            for (LaidStencil stencil : laid.stencils()) {
                Placement placement = CommissionFactory.eINSTANCE.createPlacement();
                placement.setStencil(entered(stencil.stencil()));
                placement.setXMm(stencil.xMm());
                placement.setYMm(stencil.yMm());
                placement.setRotationDeg(90.0 * stencil.quarterTurns());
                sheet.getPlacements().add(placement);
            }
            sheet.getFiles().clear();
            for (int i = 0; i < one.files().size(); i++) {
                sheet.getFiles().add(madeFile("sheet", one.files().get(i), one.sha256s().get(i)));
            }
        }
        int of = made.get(0).laid().of();
        commission.getSheets().removeIf(sheet -> sheet.getNumber() > of);
    }

    /** A stencil as it stands in the model: entered now, or by an earlier making. */
    private Stencil entered(PlannedLayerStencil planned) {
        Stencil now = stencils.get(planned.label());
        if (now != null) {
            return now;
        }
        DesignLayer layer = layers.get(planned.facts().id());
        return layer == null ? null : layer.getStencils().stream().filter(s -> s.getNumber() == planned.number()).findFirst().orElse(null);
    }

    private static MadeFile madeFile(String what, String file, String sha256) {
        MadeFile entry = CommissionFactory.eINSTANCE.createMadeFile();
        entry.setWhat(what);
        entry.setFile(Making.FOLDER + "/" + file);
        entry.setSha256(sha256);
        return entry;
    }

    private static RecordDraft piecesRecord(PanelPieces made, Panel panel, List<MadeList> lists) {
        PlacedPanel placed = made.placed();
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("windowId", placed.window().id());
        settings.put("panelId", panel.getId());
        settings.put("inputSha256", made.key());
        settings.put("pieces", made.pieces().size());
        settings.put("gapMm", placed.panel().gapMm());
        settings.put("join", placed.panel().join().getLiteral());
        settings.put("cutlineLayer", placed.panel().cutlineLayer());
        placed.panel().art().ifPresent(art -> {
            settings.put("artworkFile", art.file());
            settings.put("artworkSha256", art.sha256());
            settings.put("artworkWidthMm", art.widthMm());
        });
        lists.stream().filter(list -> list.what().equals("pieces") && list.file().contains(FileNames.of(placed.label()) + "-pieces"))
                .forEach(list -> settings.put("sha256", list.sha256()));
        List<String> ids = panel.getPieces().stream().filter(piece -> !piece.isRetired()).map(Piece::getId).filter(Objects::nonNull).toList();
        return RecordDraft.of(RecordKind.PIECES).using(List.of(panel.getId())).making(ids).with(settings);
    }

    private RecordDraft stencilRecord(MadeStencil made) {
        PlannedLayerStencil planned = made.planned();
        LayerFacts layer = planned.facts();
        Stencil stencil = stencils.get(planned.label());
        List<String> pieceIds = stencil.getPieces().stream().map(StencilPiece::getPiece).filter(Objects::nonNull).map(Piece::getId).toList();
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("windowId", planned.layer().placed().window().id());
        settings.put("layerId", layer.id());
        settings.put("stencilId", stencil.getId());
        settings.put("paintId", layer.paintId());
        settings.put("pieceIds", pieceIds);
        settings.put("inputSha256", made.key());
        settings.put("sha256", made.sha256());
        settings.put("sha256OfBits", made.sha256OfBits());
        settings.put("file", Making.FOLDER + "/" + made.file());
        settings.put("coverage", made.coverage());
        settings.put("tooFine", made.tooFine());
        settings.put("bridgesLost", made.bridgesLost());
        settings.put("looseIslands", made.looseIslands());
        settings.put("widened", made.mended());
        settings.put("widthPx", planned.place().widthPx());
        settings.put("heightPx", planned.place().heightPx());
        settings.put("label", planned.label());
        settings.put("prints", planned.prints());
        settings.put("mirrored", made.mirrored());
        settings.putAll(layer.settings());
        settings.put("artworkSha256", planned.layer().art().sha256());
        settings.put("artLayer", layer.artLayer());
        return RecordDraft.of(RecordKind.STENCIL).using(List.of(layer.id(), layer.paintId())).making(List.of(stencil.getId())).with(settings);
    }

    private RecordDraft sheetRecord(MadeSheet made) {
        LaidSheet laid = made.laid();
        Sheet sheet = commission.getSheets().stream().filter(s -> s.getNumber() == laid.number()).findFirst().orElseThrow();
        List<String> ids = laid.stencils().stream().map(stencil -> entered(stencil.stencil())).filter(Objects::nonNull).map(Stencil::getId).toList();
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("sheetId", sheet.getId());
        settings.put("number", laid.number());
        settings.put("stencilIds", ids);
        settings.put("inputSha256", made.key());
        settings.put("sha256", made.sha256s().get(0));
        Map<String, Object> files = new LinkedHashMap<>();
        for (int i = 0; i < made.files().size(); i++) {
            files.put(Making.FOLDER + "/" + made.files().get(i), made.sha256s().get(i));
        }
        settings.put("fileSha256", files);
        settings.put("paper", laid.paper().name());
        settings.put("processKey", laid.processKey());
        settings.put("tonerSide", laid.tonerSide().getLiteral());
        settings.put("dpi", laid.dpi());
        return RecordDraft.of(RecordKind.SHEET).using(ids).making(List.of(sheet.getId())).with(settings);
    }
}
