package saddlebar.materials.job;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

import saddlebar.materials.paint.PrintedArea;
import saddlebar.model.art.OutlineMm;
import saddlebar.model.commission.Commission;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.GlassChoice;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.JoinKind;
import saddlebar.model.commission.JoinStock;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Sheet;
import saddlebar.model.commission.Site;
import saddlebar.model.commission.SolderStock;
import saddlebar.model.commission.Stencil;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.RecordLine;
import saddlebar.stencil.mesh.Mesh;

/** Reads a commission as far as it costs. Coverage is that of the bits as they were written, by the records of the stencils. */
public final class JobReader {
    /** Share of a piece that a layer covers where no stencil tells (studio setting, no source). */
    public static final double ASSUMED_COVERAGE = 0.35;
    private static final double USUAL_MESH_CM3_PER_M2 = 25;
    private static final double USUAL_FOIL_MM = 5.55625;
    private static final int MOST_ALIKE = 10_000;
    private static final double MOST_KM = 100_000;
    private static final String POSITIVE_PROCESS = "film-positive";

    private final Commission commission;
    private final Studio studio;
    private final JobRecords records;
    private final Map<String, RecordLine> stencilRecords = new HashMap<>();
    private final List<String> assumed = new ArrayList<>();

    private JobReader(CommissionFolder folder, JobRecords records) {
        this.commission = folder.commission();
        this.studio = folder.studio();
        this.records = records;
        records.all("stencil").forEach(line -> stencilRecords.put(JobRecords.text(line, "stencilId"), line));
    }

    public static CostJob read(CommissionFolder folder, JobRecords records) throws IOException {
        return new JobReader(folder, records).read(folder.windows());
    }

    private CostJob read(List<Window> windows) {
        StudioJob studioJob = new StudioReader(studio, records, assumed).read();
        List<WindowJob> jobs = windows.stream().sorted(Comparator.comparing(Window::getName)).map(this::window).toList();
        List<SheetJob> sheets = sheets(jobs);
        return new CostJob(commission.getTitle() == null ? "" : commission.getTitle(), studioJob, jobs, sheets, assumed, site(), CostHints.NONE);
    }

    private SiteJob site() {
        Map<String, Double> onHand = new TreeMap<>();
        for (GlassStock glass : studio.getGlass()) {
            double moved = records.all("stock")
                    .filter(line -> glass.getId().equals(JobRecords.text(line, "itemId")) && "m2".equals(JobRecords.text(line, "unit")))
                    .mapToDouble(line -> JobRecords.number(line, "quantity", 0)).sum();
            if (glass.getName() != null && glass.getStockM2() + moved > 0) {
                onHand.merge(glass.getName(), glass.getStockM2() + moved, Double::sum);
            }
        }
        Site site = commission.getSite();
        double km = site == null || site.getDistanceKm() == null ? 0 : 2 * site.getDistanceKm() * Math.max(1, site.getTrips());
        if (!(km >= 0 && km <= MOST_KM)) {
            throw new Refusal("site", "the way of all journeys is " + km + " km", "put in 0 to " + MOST_KM + " km");
        }
        return new SiteJob(km, onHand);
    }

    private List<SheetJob> sheets(List<WindowJob> windows) {
        Map<String, Map<String, Integer>> counts = new TreeMap<>();
        for (Sheet sheet : commission.getSheets()) {
            counts.computeIfAbsent(material(sheet.getProcessKey()), key -> new TreeMap<>()).merge(sheet.getPaper(), 1, Integer::sum);
        }
        List<SheetJob> sheets = new ArrayList<>();
        counts.forEach((material, papers) -> papers.forEach((paper, count) -> sheets.add(new SheetJob(material, paper, count))));
        if (sheets.isEmpty() && !commission.getPapers().isEmpty()) { // not laid out yet: a sheet a screen
            Map<String, Integer> screens = new TreeMap<>();
            windows.stream().flatMap(window -> window.panels().stream()).flatMap(panel -> panel.layers().stream()).filter(layer -> layer.screens() > 0)
                    .forEach(layer -> screens.merge(layer.material(), layer.screens(), Integer::sum));
            String paper = commission.getPapers().get(0);
            screens.forEach((material, count) -> sheets.add(new SheetJob(material, paper, count)));
            if (!screens.isEmpty()) {
                assumed.add("The sheets are not laid out yet; one " + paper + " sheet a screen is taken. Run make first.");
            }
        }
        return sheets;
    }

    private static String material(String processKey) {
        return POSITIVE_PROCESS.equals(processKey) ? "positive film" : "fused film";
    }

    private WindowJob window(Window window) {
        int alike = window.getOpening() == null ? 1 : Math.max(1, window.getOpening().getCount());
        if (alike > MOST_ALIKE) {
            throw new Refusal(window.getName(), "it has " + alike + " openings alike", "put in at most " + MOST_ALIKE);
        }
        boolean overhead = window.getOpening() != null && window.getOpening().isOverhead();
        boolean inDoor = window.getOpening() != null && window.getOpening().isInDoor();
        return new WindowJob(window.getId(), window.getName(), alike, overhead, inDoor,
                window.getPanels().stream().map(panel -> panel(window, panel)).toList());
    }

    private PanelJob panel(Window window, Panel panel) {
        List<Piece> pieces = panel.getPieces().stream().filter(piece -> !piece.isRetired()).sorted(Comparator.comparingInt(Piece::getNumber)).toList();
        String label = window.getName() + (panel.getName() == null || panel.getName().isBlank() ? "" : " " + panel.getName());
        JointLengths lengths = JointLengths.of(pieces.stream().map(Piece::getFace).toList());
        double[] size = size(panel.getOutline(), pieces);
        JoinKind kind = panel.eIsSet(CommissionPackage.Literals.PANEL__JOIN) ? panel.getJoin() : commission.getJoin();
        boolean leaded = kind == JoinKind.LEAD;
        double areaM2 = pieces.stream().mapToDouble(piece -> piece.getFace().areaMm2()).sum() / 1e6;
        List<PieceJob> jobs = pieces.stream().map(piece -> piece(window, label, piece)).toList();
        if (pieces.isEmpty()) {
            assumed.add(label + " has no pieces yet; bring its artwork.");
        }
        return new PanelJob(label, leaded, joints(panel, leaded), solder(), size[0], size[1], areaM2, lengths.edgeMm(), lengths.innerMm(),
                lengths.jointsMm(), jobs, panel.getLayers().stream().filter(JobReader::painted).map(layer -> layer(label, layer, pieces)).toList());
    }

    private static boolean painted(DesignLayer layer) {
        return layer.getRole() != LayerRole.CUTLINE;
    }

    private static double[] size(OutlineMm outline, List<Piece> pieces) {
        double[] box = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        List<OutlineMm> all = outline == null || outline.isEmpty() ? pieces.stream().map(Piece::getFace).toList() : List.of(outline);
        for (OutlineMm one : all) {
            double[] bounds = one.boundsMm();
            box = new double[] {Math.min(box[0], bounds[0]), Math.min(box[1], bounds[1]), Math.max(box[2], bounds[2]), Math.max(box[3], bounds[3])};
        }
        return all.isEmpty() ? new double[] {0, 0} : new double[] {box[2] - box[0], box[3] - box[1]};
    }

    private PanelJob.Metal joints(Panel panel, boolean leaded) {
        JoinKind wanted = leaded ? JoinKind.LEAD : JoinKind.FOIL;
        Optional<JoinStock> stock = Optional.ofNullable(panel.getJoinStock()).or(() -> studio.getJoins().stream().filter(join -> join.getKind() == wanted)
                .min(Comparator.comparingDouble(join -> leaded ? 0 : Math.abs(join.getWidthMm() - USUAL_FOIL_MM) + Math.abs(join.getThicknessUm() - 31.75))));
        return stock.map(join -> new PanelJob.Metal(join.getName(), leaded ? join.getFaceMm() : join.getWidthMm(), join.getMassGPerM(),
                Optional.ofNullable(join.getPricePerM()), Optional.ofNullable(join.getSoldLengthMm()).filter(mm -> mm > 0)))
                .orElse(new PanelJob.Metal(leaded ? "came" : "foil", 0, 0, Optional.empty(), Optional.empty()));
    }

    private PanelJob.Solder solder() {
        Optional<SolderStock> stock = studio.getSolders().stream().filter(solder -> "60/40".equals(solder.getName())).findFirst()
                .or(() -> studio.getSolders().stream().findFirst());
        return stock.map(solder -> new PanelJob.Solder(solder.getName(), solder.isContainsLead(), solder.getDensityGPerCm3(),
                Optional.ofNullable(solder.getPricePerKg()))).orElse(new PanelJob.Solder("solder", true, 8.5, Optional.empty()));
    }

    private PieceJob piece(Window window, String label, Piece piece) {
        Optional<GlassStock> chosen = piece.getChoices().stream().filter(choice -> choice.getColourway() == window.getChosen()).map(GlassChoice::getGlass)
                .filter(Objects::nonNull).findFirst().or(() -> Optional.ofNullable(piece.getGlass()));
        if (chosen.isEmpty()) {
            assumed.add(label + "/" + piece.getNumber() + " has no glass chosen; its glass is not in the estimate.");
        }
        return PieceJob.of(piece, chosen);
    }

    private LayerJob layer(String label, DesignLayer layer, List<Piece> pieces) {
        double volume = layer.getMesh() == null
                ? USUAL_MESH_CM3_PER_M2
                : new Mesh(layer.getMesh().getThreadsPerInch(), layer.getMesh().getThreadUm()).volumeCm3PerM2();
        List<Stencil> stencils = layer.getStencils().stream().filter(stencil -> !stencil.isRetired()).toList();
        String paint = layer.getPaint() == null ? "" : layer.getPaint().getId();
        if (paint.isEmpty()) {
            assumed.add(label + " " + layer.getName() + " has no paint chosen; its paint is not in the estimate.");
        }
        String material = material(layer.getRecipe() == null ? "" : layer.getRecipe().getProcessKey());
        if (layer.isByHand() || stencils.isEmpty()) {
            assumed.add(label + " " + layer.getName() + (layer.isByHand() ? " is painted by hand" : " has no stencils yet") + "; " + ASSUMED_COVERAGE
                    + " of its glass is taken as covered.");
            double area = pieces.stream().mapToDouble(Piece::getNetAreaMm2).sum() / 1e6;
            return new LayerJob(layer.getName(), paint, material, layer.getFiringOrder(), layer.isByHand(),
                    List.of(new PrintedArea(area, ASSUMED_COVERAGE, 1, volume)), true);
        }
        return new LayerJob(layer.getName(), paint, material, layer.getFiringOrder(), false,
                stencils.stream().map(stencil -> printed(stencil, volume)).toList(), false);
    }

    private PrintedArea printed(Stencil stencil, double volume) {
        RecordLine line = stencilRecords.get(stencil.getId());
        double coverage = stencil.getCoverage() == null ? ASSUMED_COVERAGE : stencil.getCoverage();
        int prints = Math.max(1, stencil.getPrints());
        if (line == null || !(line.settings().get("dpi") instanceof Number)) {
            return new PrintedArea(stencil.getWidthMm() * stencil.getHeightMm() / 1e6, coverage, prints, volume);
        }
        double written = JobRecords.number(line, "coverage", coverage);
        double dpi = JobRecords.number(line, "dpi", 0);
        if (!(written >= 0 && written <= 1 && dpi >= 1 && dpi <= 1e5)) {
            throw new Refusal(line.file() + ":" + line.line(), "the record of a stencil has coverage " + written + " at " + dpi + " dpi",
                    "make the stencil again, or correct the record");
        }
        return PrintedArea.ofBits((int) JobRecords.number(line, "widthPx", stencil.getWidthPx()), (int) JobRecords.number(line, "heightPx",
                stencil.getHeightPx()), dpi, written, prints, volume);
    }
}
