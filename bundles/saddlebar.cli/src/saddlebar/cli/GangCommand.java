package saddlebar.cli;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import saddlebar.artwork.Artwork;
import saddlebar.artwork.ArtworkReaders;
import saddlebar.artwork.LayerChoice;
import saddlebar.artwork.ReadSettings;
import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Units;
import saddlebar.nesting.Effort;
import saddlebar.nesting.NestItem;
import saddlebar.nesting.Nested;
import saddlebar.nesting.Placement;
import saddlebar.nesting.SheetArea;
import saddlebar.nesting.SheetNesting;
import saddlebar.nesting.StripNesting;
import saddlebar.nesting.Turns;
import saddlebar.nesting.read.RectangleList;
import saddlebar.nesting.read.StripFile;

/** Shapes placed on sheets or on a strip, without a commission. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "gang", sortOptions = false, description = "Places shapes on sheets or along a strip.",
        footer = {"", "Example: saddlebar gang stencils.csv --sheet 216x279 --gap-mm 5 --json"})
public final class GangCommand implements BenchCommand {
    private static final double SHEET_GAP_MM = 5;
    private final ArtworkReaders readers;

    @Parameters(index = "0", paramLabel = "ITEMS", description = "CSV (id,width_mm,height_mm,quantity,rotate), strip JSON, or SVG with closed outlines.")
    private Path items;

    @Option(names = "--sheet", paramLabel = "WxH", description = "Usable size of a sheet in mm; several may be given.")
    private List<String> sheets = List.of();

    @Option(names = "--strip", paramLabel = "H", description = "Height of a strip in mm instead of sheets; a strip file has its own.")
    private Double stripMm;

    @Option(names = "--gap-mm", paramLabel = "G", description = "Least distance between shapes; 5 on sheets and 0 on a strip if not given.")
    private Double gapMm;

    @Option(names = "--seconds", paramLabel = "S", defaultValue = "10", description = "How long to look for a better layout; 10 if not given.")
    private double seconds;

    @Mixin
    private CommonOptions common;

    @Activate
    public GangCommand(@Reference ArtworkReaders readers) {
        this.readers = readers;
    }

    /** The JSON document. */
    record Answer(int sheets, double lengthMm, double use, List<PlacementRow> placements, boolean valid, String method) {
    }

    record PlacementRow(String id, int copy, int sheet, double xMm, double yMm, double rotationDeg) {
        static PlacementRow of(Placement p) {
            return new PlacementRow(p.id(), p.copy(), p.sheet(), p.xMm(), p.yMm(), p.rotationDeg());
        }
    }

    /** What is to be placed, and the strip's height where the file says so. */
    private record Input(List<NestItem> items, Double stripHeightMm) {
    }

    @Override
    public Integer call() throws IOException {
        if (!(seconds >= 0 && seconds <= 86_400)) {
            throw common.wrong("--seconds takes 0 to 86400, not " + seconds + ".");
        }
        if (gapMm != null && !(gapMm >= 0 && gapMm <= 1000)) {
            throw common.wrong("--gap-mm takes 0 to 1000 mm, not " + gapMm + ".");
        }
        if (stripMm != null && !sheets.isEmpty()) {
            throw common.wrong("Shapes go on sheets or on a strip: give --sheet or --strip, not both.");
        }
        if (stripMm != null && !(stripMm >= NestItem.SMALLEST_MM && stripMm <= SheetArea.LARGEST_MM)) {
            throw common.wrong("--strip takes " + NestItem.SMALLEST_MM + " to " + Units.plain(SheetArea.LARGEST_MM) + " mm, not " + stripMm + ".");
        }
        List<SheetArea> areas = sheets.stream().map(this::area).toList();
        Input input = read();
        Double height = stripMm != null ? stripMm : areas.isEmpty() ? input.stripHeightMm : null;
        if (height == null && areas.isEmpty()) {
            throw common.wrong("On what? Give --sheet WxH, or --strip H.");
        }
        double gap = gapMm != null ? gapMm : height != null ? 0 : SHEET_GAP_MM;
        Nested nested = place(input.items, height, areas, gap);
        common.answer(new Answer(nested.sheets(), nested.lengthMm(), nested.use(), nested.placements().stream().map(PlacementRow::of).toList(),
                nested.valid(), nested.method()), words(nested, height != null));
        return DONE;
    }

    private Nested place(List<NestItem> shapes, Double stripHeightMm, List<SheetArea> areas, double gap) {
        try {
            return stripHeightMm != null
                    ? StripNesting.place(shapes, stripHeightMm, gap, Effort.seconds(seconds), common.work(StripNesting.WORK_UNITS), better -> {})
                    : SheetNesting.place(shapes, areas, gap, Effort.seconds(seconds), common.work(SheetNesting.WORK_UNITS), better -> {});
        } catch (Refusal ofAnItem) {
            throw new Refusal(items.getFileName() + ": " + ofAnItem.where(), ofAnItem.what(), ofAnItem.remedy(), ofAnItem);
        }
    }

    private SheetArea area(String words) {
        String[] sides = words.toLowerCase(Locale.ROOT).split("x", -1);
        try {
            if (sides.length == 2) {
                double widthMm = Double.parseDouble(sides[0]);
                double heightMm = Double.parseDouble(sides[1]);
                return common.ofWords(() -> new SheetArea(widthMm, heightMm));
            }
        } catch (NumberFormatException noNumber) {
            throw common.wrong("--sheet takes a size in mm such as 216x279, not '" + words + "'.");
        }
        throw common.wrong("--sheet takes a size in mm such as 216x279, not '" + words + "'.");
    }

    private Input read() throws IOException {
        String name = String.valueOf(items.getFileName());
        String lower = name.toLowerCase(Locale.ROOT);
        if (Files.isDirectory(items)) {
            throw new Refusal(name, "this is a folder, not a file", "name the list in it");
        }
        try {
            if (lower.endsWith(".csv")) {
                try (Reader in = Files.newBufferedReader(items, StandardCharsets.UTF_8)) {
                    return new Input(RectangleList.read(in, name), null);
                }
            }
            if (lower.endsWith(".json")) {
                try (Reader in = Files.newBufferedReader(items, StandardCharsets.UTF_8)) {
                    StripFile strip = StripFile.read(in, name);
                    return new Input(strip.items(), strip.stripHeightMm());
                }
            }
        } catch (NoSuchFileException absent) {
            throw new Refusal(name, "there is no such file", "check the name and the folder", absent);
        } catch (CharacterCodingException notText) {
            throw new Refusal(name, "it is not text in UTF-8", "save it as UTF-8", notText);
        }
        return new Input(outlines(), null);
    }

    /** Closed outlines of a drawing, each an item turned as the maker of a pattern would: by quarters. */
    private List<NestItem> outlines() throws IOException {
        try (Artwork artwork = readers.read(items, ReadSettings.asDrawn())) {
            List<NestItem> found = new ArrayList<>();
            for (DrawnLine line : artwork.lines(LayerChoice.all(), Artwork.CUT_FLATNESS_MM)) {
                if (line.closed() && line.points() >= 3) {
                    found.add(NestItem.of(idOf(line, found), ring(line), 1, Turns.QUARTER));
                }
            }
            if (found.isEmpty()) {
                throw new Refusal(String.valueOf(items.getFileName()), "it holds no closed outline", "draw each shape as one closed path");
            }
            return found;
        }
    }

    private static String idOf(DrawnLine line, List<NestItem> before) {
        String id = line.element().isBlank() ? "line-" + line.line() : line.element();
        long same = before.stream().filter(item -> item.id().equals(id) || item.id().startsWith(id + " ")).count();
        return same == 0 ? id : id + " " + (same + 1);
    }

    private static LinearRing ring(DrawnLine line) {
        Coordinate[] points = new Coordinate[line.points() + 1];
        for (int i = 0; i < line.points(); i++) {
            points[i] = new Coordinate(line.x(i), line.y(i));
        }
        points[line.points()] = points[0].copy();
        return new GeometryFactory().createLinearRing(points);
    }

    private static List<String> words(Nested nested, boolean strip) {
        List<String> words = new ArrayList<>();
        words.add(strip
                ? String.format(Locale.ROOT, "%d shapes on %.3f mm of strip, %.2f %% used", nested.placements().size(), nested.lengthMm(),
                        100 * nested.use())
                : String.format(Locale.ROOT, "%d shapes on %d sheets, %.2f %% used; last sheet to %.1f mm", nested.placements().size(), nested.sheets(),
                        100 * nested.use(), nested.lengthMm()));
        for (Placement p : nested.placements()) {
            words.add(String.format(Locale.ROOT, "%s%s: sheet %d, x %.3f mm, y %.3f mm, turned %s degrees", p.id(),
                    p.copy() == 0 ? "" : " (" + (p.copy() + 1) + ")",
                    p.sheet() + 1, p.xMm(), p.yMm(), p.rotationDeg() == Math.rint(p.rotationDeg())
                            ? String.format(Locale.ROOT, "%.0f", p.rotationDeg())
                            : String.valueOf(p.rotationDeg())));
        }
        return words;
    }
}
