package saddlebar.production.bring;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

import saddlebar.artwork.Artwork;
import saddlebar.artwork.ArtworkReaders;
import saddlebar.artwork.ColourArea;
import saddlebar.artwork.LayerChoice;
import saddlebar.artwork.ReadSettings;
import saddlebar.artwork.RegionMm;
import saddlebar.model.commission.ArtworkReference;
import saddlebar.model.commission.Commission;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.Opening;
import saddlebar.model.commission.OpeningKind;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.RoleAssignment;
import saddlebar.model.commission.Window;
import saddlebar.model.file.Hashes;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.problem.Severity;
import saddlebar.model.store.BroughtArtwork;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.RecordDraft;
import saddlebar.model.store.RecordKind;
import saddlebar.model.work.Work;
import saddlebar.production.facts.ArtFile;
import saddlebar.production.facts.CommissionFacts.PlacedPanel;
import saddlebar.production.facts.CutFacts;
import saddlebar.production.facts.PanelFacts;
import saddlebar.production.facts.PieceFacts;
import saddlebar.production.facts.WindowFacts;
import saddlebar.production.make.Heirs;
import saddlebar.production.make.MakeBook;
import saddlebar.production.make.Making;
import saddlebar.production.make.PanelPieces;

/**
 * Takes artwork into a commission, the first time or as a revision: pieces keep their numbers, layers their settings, choices of glass stay. All is
 * computed before anything is written, so a refusal leaves the commission as it was. The caller saves.
 */
@Component(service = Bringing.class)
public final class Bringing {
    /** Units of work that {@link #bring} tells. */
    public static final int WORK_UNITS = 100;

    private final ArtworkReaders readers;
    private final Making making;

    @Activate
    public Bringing(@Reference ArtworkReaders readers, @Reference Making making) {
        this.readers = readers;
        this.making = making;
    }

    /** @throws Refusal if the artwork cannot be read or nothing in its cutline closes */
    public Brought bring(CommissionFolder folder, BringRequest request, Work work) throws IOException {
        Optional<Window> known = folder.window(request.window());
        Optional<Panel> knownPanel = known.flatMap(window -> panel(window, request.panel()));
        Optional<ArtworkReference> last = knownPanel
                .flatMap(panel -> panel.getArtwork().stream().max(Comparator.comparingInt(ArtworkReference::getRevision)));
        try (Artwork artwork = readers.read(request.art(), request.size())) {
            LayerRoles roles = LayerRoles.of(request, artwork, last);
            ArtFile art = new ArtFile(request.art(), String.valueOf(request.art().getFileName()), Hashes.sha256(request.art()), artwork.widthMm(),
                    request.size().page());
            PanelPieces pieces = pieces(facts(folder.commission(), request, known, knownPanel, roles, art), art, work);
            Map<String, List<ColourArea>> glass = new LinkedHashMap<>();
            roles.glass().forEach((colourway, layer) -> glass.put(colourway, artwork.areas(LayerChoice.of(artwork.chosenLayer(layer)))));

            BroughtArtwork stored = folder.importArtwork(request.art());
            Window window = known.isPresent() ? known.get() : newWindow(folder, request, artwork);
            Panel panel = knownPanel.orElseGet(() -> newPanel(window, request.panel()));
            int revision = refer(panel, stored, artwork, request.size().page(), roles, last);
            List<Problem> problems = new ArrayList<>(artwork.warnings());
            problems.addAll(changes(artwork, roles, last));
            problems.addAll(pieces.problems());
            layers(panel, roles, folder.commission());
            if (pieces.cartoon().isPresent()) {
                MakeBook.enterPieces(folder, panel, pieces);
            }
            Optional<Revised> revised = pieces.cartoon().flatMap(cartoon -> cartoon.revision()).map(change -> Revised.of(change, panel));
            GlassColours colours = new GlassColours(folder.studio());
            glass.forEach((colourway, areas) -> colours.choose(window, panel, colourway, areas));
            if (window.getChosen() == null && !window.getColourways().isEmpty()) { // the one that is drawn on top is the one that is seen
                window.setChosen(window.getColourways().get(window.getColourways().size() - 1));
            }
            problems.addAll(colours.problems());
            Heirs.chooseGlass(panel);
            record(folder, window, panel, stored, artwork, revision, request, revised);
            return new Brought(window, stored.file(), stored.sha256(), revision, (int) panel.getPieces().stream().filter(p -> !p.isRetired()).count(),
                    panel.getLayers().stream().map(layer -> layer.getRole().getLiteral() + " from " + layer.getArtLayer()).toList(),
                    window.getColourways().stream().map(c -> c.getName()).toList(), roles.purposes(), revised,
                    problems);
        }
    }

    /** What the revision has more or less than was said of the one before. */
    private static List<Problem> changes(Artwork artwork, LayerRoles roles, Optional<ArtworkReference> last) {
        List<Problem> changes = new ArrayList<>();
        if (last.filter(ArtworkReference::isRolesConfirmed).isEmpty()) {
            return changes;
        }
        String file = String.valueOf(artwork.file().getFileName());
        for (RoleAssignment role : last.get().getRoles()) {
            if (artwork.layer(role.getArtLayer()).isEmpty()) {
                changes.add(Problem.of("layer-gone", Severity.WARNING, file, "the layer \"" + role.getArtLayer() + "\", which was the "
                        + role.getRole().getLiteral() + ", is not there any more; say which layer is it now"));
            }
        }
        for (LayerPurpose purpose : roles.purposes()) {
            if (purpose.source() == LayerPurpose.Source.GUESSED && !purpose.purpose().equals(LayerPurpose.NONE)) {
                changes.add(Problem.of("layer-new", Severity.NOTE, file, "the layer \"" + purpose.label() + "\" is new and is taken as " + purpose.purpose()
                        + ", since " + purpose.why()));
            }
        }
        return changes;
    }

    /** The page of the last revision, 1 for the first. */
    public int lastPage(CommissionFolder folder, String window, String panel) {
        return folder.window(window).flatMap(known -> panel(known, panel))
                .flatMap(known -> known.getArtwork().stream().max(Comparator.comparingInt(ArtworkReference::getRevision)))
                .map(reference -> Math.max(1, reference.getPage())).orElse(1);
    }

    /**
     * What a file shows and what its layers may be for, before it is brought.
     *
     * @param last      the panel's last artwork, whose roles count
     * @param page      which page, from 1
     * @param previewPx longer side of the preview
     * @throws Refusal if the artwork cannot be read
     */
    public ArtLook look(Path art, Optional<ArtworkReference> last, int page, int previewPx) throws IOException {
        int pages = readers.pages(art);
        try (Artwork artwork = readers.read(art, ReadSettings.asDrawn().onPage(page))) {
            double scale = previewPx / Math.max(artwork.widthMm(), artwork.heightMm());
            return new ArtLook(pages, page, artwork.widthMm(), artwork.heightMm(), LayerRoles.purposes(artwork, last), artwork.picture(LayerChoice.all(),
                    (int) Math.max(1, Math.rint(artwork.widthMm() * scale)), (int) Math.max(1, Math.rint(artwork.heightMm() * scale)),
                    RegionMm.ofPage(artwork)));
        }
    }

    /** What is wrong with lines is told with the file that they come from. */
    private PanelPieces pieces(PlacedPanel facts, ArtFile art, Work work) throws IOException {
        try {
            return making.pieces(facts, work);
        } catch (Refusal ofTheLines) {
            if (ofTheLines.where().startsWith(art.file())) {
                throw ofTheLines;
            }
            throw new Refusal(art.file() + ": " + ofTheLines.where(), ofTheLines.what(), ofTheLines.remedy(), ofTheLines);
        }
    }

    private static Optional<Panel> panel(Window window, String name) {
        if (name.isEmpty()) {
            if (window.getPanels().size() > 1) {
                throw new Refusal(window.getName(), "it has several panels", "name the one meant: "
                        + String.join(", ", window.getPanels().stream().map(Panel::getName).toList()));
            }
            return window.getPanels().stream().findFirst();
        }
        return window.getPanels().stream().filter(panel -> name.equals(panel.getName())).findFirst();
    }

    private static PlacedPanel facts(Commission commission, BringRequest request, Optional<Window> window, Optional<Panel> panel, LayerRoles roles,
            ArtFile art) {
        List<PieceFacts> pieces = panel.map(known -> known.getPieces().stream().filter(piece -> !piece.isRetired() && piece.getFace() != null)
                .map(PieceFacts::of).toList()).orElse(List.of());
        int highest = panel.map(known -> known.getPieces().stream().mapToInt(Piece::getNumber).max().orElse(0)).orElse(0);
        double gapMm = panel.map(Panel::getGapMm).orElse(commission.getGapMm());
        var join = panel.filter(known -> known.eIsSet(CommissionPackage.Literals.PANEL__JOIN)).map(Panel::getJoin)
                .orElse(commission.getJoin());
        PanelFacts facts = new PanelFacts(panel.map(Panel::getId).orElse("new"), panel.map(Panel::getName).filter(name -> name != null).orElse(request.panel()),
                Optional.of(art), roles.cutline(), join, gapMm, pieces, highest, panel.map(Panel::getContentKey).filter(key -> key != null).orElse(""),
                List.of(), panel.map(CutFacts::of).orElse(CutFacts.PLAIN));
        WindowFacts ofWindow = new WindowFacts(window.map(Window::getId).orElse("new"), request.window(), request.title(), List.of(facts));
        return new PlacedPanel(ofWindow, facts);
    }

    private static Window newWindow(CommissionFolder folder, BringRequest request, Artwork artwork) throws IOException {
        String fileName = String.valueOf(request.art().getFileName()).replaceFirst("\\.[^.]*$", "");
        Window window = folder.addWindow(request.window(), request.title().isEmpty() ? fileName : request.title());
        Opening opening = window.getOpening() != null ? window.getOpening() : CommissionFactory.eINSTANCE.createOpening();
        opening.setKind(OpeningKind.RECTANGLE);
        opening.setSightWidthMm(artwork.widthMm());
        opening.setSightHeightMm(artwork.heightMm());
        window.setOpening(opening);
        return window;
    }

    private static Panel newPanel(Window window, String name) {
        Panel panel = CommissionFactory.eINSTANCE.createPanel();
        panel.setName(name);
        window.getPanels().add(panel);
        return panel;
    }

    private static int refer(Panel panel, BroughtArtwork stored, Artwork artwork, int page, LayerRoles roles, Optional<ArtworkReference> last) {
        boolean same = last.isPresent() && stored.sha256().equals(last.get().getSha256()) && page == Math.max(1, last.get().getPage());
        ArtworkReference reference = same ? last.get() : CommissionFactory.eINSTANCE.createArtworkReference();
        if (!same) {
            reference.setRevision(last.map(ArtworkReference::getRevision).orElse(0) + 1);
            panel.getArtwork().add(reference);
        }
        reference.setFile(stored.file());
        reference.setOriginalName(stored.originalName());
        reference.setSha256(stored.sha256());
        reference.setWidthMm(artwork.widthMm());
        reference.setHeightMm(artwork.heightMm());
        reference.setPage(page);
        reference.setRolesConfirmed(roles.confirmed());
        reference.getGlassLayers().clear();
        reference.getUnusedLayers().clear();
        if (roles.confirmed()) {
            reference.getGlassLayers().addAll(new LinkedHashSet<>(roles.glass().values()));
            reference.getUnusedLayers().addAll(roles.unused());
        }
        reference.getRoles().clear();
        reference.getRoles().add(role(LayerRole.CUTLINE, roles.cutline()));
        roles.painted().forEach((role, layer) -> reference.getRoles().add(role(role, layer)));
        return reference.getRevision();
    }

    private static RoleAssignment role(LayerRole role, String layer) {
        RoleAssignment assignment = CommissionFactory.eINSTANCE.createRoleAssignment();
        assignment.setRole(role);
        assignment.setArtLayer(layer);
        return assignment;
    }

    /** A layer of a role that is there keeps all its settings; only where it is drawn may have changed. */
    private static void layers(Panel panel, LayerRoles roles, Commission commission) {
        roles.painted().forEach((role, artLayer) -> {
            Optional<DesignLayer> known = panel.getLayers().stream().filter(layer -> layer.getRole() == role).findFirst();
            if (known.isPresent()) {
                known.get().setArtLayer(artLayer);
            } else {
                panel.getLayers().add(UsualLayers.of(role, artLayer, commission.getStudio()));
            }
        });
    }

    private static void record(CommissionFolder folder, Window window, Panel panel, BroughtArtwork stored, Artwork artwork, int revision, BringRequest request,
            Optional<Revised> revised) throws IOException {
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("windowId", window.getId());
        settings.put("panelId", panel.getId());
        settings.put("artworkFile", stored.file());
        settings.put("originalName", String.valueOf(request.art().getFileName()));
        settings.put("sha256", stored.sha256());
        settings.put("revision", revision);
        if (request.size().page() > 1) {
            settings.put("page", request.size().page());
        }
        settings.put("widthMm", artwork.widthMm());
        settings.put("heightMm", artwork.heightMm());
        revised.filter(Revised::changedAny).ifPresent(change -> settings.put("becamePieces", change.became().stream().map(Revised.Row::setting).toList()));
        folder.records().append(RecordDraft.of(RecordKind.BRING).making(List.of(panel.getId())).with(settings));
    }
}
