package saddlebar.model.store;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Pattern;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;

import saddlebar.model.commission.BarStock;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.FiringSchedule;
import saddlebar.model.commission.FiringSegment;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.JoinKind;
import saddlebar.model.commission.JoinStock;
import saddlebar.model.commission.Kiln;
import saddlebar.model.commission.Medium;
import saddlebar.model.commission.MediumBase;
import saddlebar.model.commission.Mesh;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.PaintKind;
import saddlebar.model.commission.PaperSize;
import saddlebar.model.commission.PriceBook;
import saddlebar.model.commission.PriceItem;
import saddlebar.model.commission.Printer;
import saddlebar.model.commission.ProcessSetting;
import saddlebar.model.commission.ScreenFrame;
import saddlebar.model.commission.SheetMaterial;
import saddlebar.model.commission.SheetStock;
import saddlebar.model.commission.SolderStock;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.TonerSide;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.CsvTable.Row;

/**
 * The reference tables from which a new studio is stocked: plain text, one row a thing, each with its source. What is in a studio afterwards is
 * the studio's own; the tables are not looked at again.
 */
public final class StudioLibrary {
    /** Where the launcher says that the tables lie. */
    public static final String PROPERTY = "saddlebar.shared";

    private static final CommissionFactory NEW = CommissionFactory.eINSTANCE;
    private static final Pattern COLOUR = Pattern.compile("#[0-9a-f]{6}");

    private final Map<String, List<Row>> tables;

    private StudioLibrary(Map<String, List<Row>> tables) {
        this.tables = tables;
    }

    /** Reads the tables of a folder. */
    public static StudioLibrary of(Path folder) throws IOException {
        Map<String, List<Row>> tables = new TreeMap<>();
        for (String name : List.of("papers", "meshes", "frames", "media", "paints", "glasses", "joins", "solders", "bars", "kilns",
                "firing-profiles", "prices", "printers", "films", "processes")) {
            tables.put(name, CsvTable.read(folder.resolve(name + ".csv")).rows());
        }
        return new StudioLibrary(tables);
    }

    /** The tables that came with the program, if the launcher named their folder. */
    public static Optional<StudioLibrary> installed() throws IOException {
        String folder = System.getProperty(PROPERTY);
        return folder == null || folder.isBlank() || !Files.isDirectory(Path.of(folder)) ? Optional.empty() : Optional.of(of(Path.of(folder)));
    }

    /** Stocks a studio that is still empty. */
    public void fill(Studio studio) {
        studio.getPapers().addAll(each("papers", StudioLibrary::paper));
        studio.getMeshes().addAll(each("meshes", StudioLibrary::mesh));
        Map<String, Mesh> meshes = new HashMap<>();
        studio.getMeshes().forEach(mesh -> meshes.put(mesh.getName(), mesh));
        studio.getFrames().addAll(each("frames", row -> frame(row, meshes)));
        studio.getMedia().addAll(each("media", StudioLibrary::medium));
        Map<String, Medium> media = new HashMap<>();
        studio.getMedia().forEach(medium -> media.put(medium.getName(), medium));
        studio.getPaints().addAll(each("paints", row -> paint(row, media)));
        studio.getGlass().addAll(each("glasses", StudioLibrary::glass));
        studio.getJoins().addAll(each("joins", StudioLibrary::join));
        studio.getSolders().addAll(each("solders", StudioLibrary::solder));
        studio.getBars().addAll(each("bars", StudioLibrary::bar));
        studio.getKilns().addAll(each("kilns", StudioLibrary::kiln));
        studio.getSchedules().addAll(schedules());
        studio.setPriceBook(prices());
        studio.getPrinters().addAll(each("printers", StudioLibrary::printer));
        studio.getSheetStock().addAll(each("films", StudioLibrary::film));
        studio.getProcesses().addAll(each("processes", StudioLibrary::process));
    }

    private <T> List<T> each(String table, Function<Row, T> make) {
        return tables.get(table).stream().map(make).toList();
    }

    private static PaperSize paper(Row row) {
        PaperSize paper = NEW.createPaperSize();
        paper.setName(row.needed("name"));
        paper.setWidthMm(row.number("width_mm"));
        paper.setHeightMm(row.number("height_mm"));
        paper.setInUse(row.yes("in_use"));
        paper.setSource(row.needed("source"));
        return paper;
    }

    /** Named by count and thread, such as 220-48. */
    private static Mesh mesh(Row row) {
        Mesh mesh = NEW.createMesh();
        mesh.setThreadsPerInch(row.number("threads_per_inch"));
        mesh.setThreadUm(row.number("thread_um"));
        mesh.setName(row.needed("threads_per_inch") + "-" + row.needed("thread_um"));
        mesh.setSource(row.needed("source"));
        return mesh;
    }

    private static ScreenFrame frame(Row row, Map<String, Mesh> meshes) {
        ScreenFrame frame = NEW.createScreenFrame();
        frame.setName(row.needed("name"));
        frame.setMesh(named(row, "mesh", meshes));
        frame.setImageWidthMm(row.number("image_width_mm"));
        frame.setImageHeightMm(row.number("image_height_mm"));
        frame.setSqueegeeMarginMm(row.number("squeegee_margin_mm"));
        frame.setMeshTurnDeg(row.number("mesh_turn_deg"));
        return frame;
    }

    private static <T> T named(Row row, String column, Map<String, T> known) {
        T found = known.get(row.needed(column));
        if (found == null) {
            throw new Refusal(row.where(), column + " is " + row.text(column) + ", which its own table does not have",
                    "add it there, or choose one of " + String.join(", ", known.keySet().stream().sorted().toList()));
        }
        return found;
    }

    private static Medium medium(Row row) {
        Medium medium = NEW.createMedium();
        medium.setName(row.needed("name"));
        medium.setBase((MediumBase) word(row, "base", CommissionPackage.Literals.MEDIUM_BASE));
        medium.setDensityGPerCm3(row.number("density_g_per_cm3"));
        medium.setPricePerKg(money(row, "price_per_kg"));
        medium.setSource(row.needed("source"));
        return medium;
    }

    private static Paint paint(Row row, Map<String, Medium> media) {
        Paint paint = NEW.createPaint();
        paint.setName(row.needed("name"));
        paint.setFamily(row.needed("family"));
        paint.setKind((PaintKind) word(row, "kind", CommissionPackage.Literals.PAINT_KIND));
        paint.setColour(colour(row));
        paint.setSolidTransmittance(row.number("solid_transmittance"));
        paint.setDensityGPerCm3(row.number("density_g_per_cm3"));
        paint.setMaturingFromC(row.number("maturing_from_c"));
        paint.setMaturingToC(row.number("maturing_to_c"));
        paint.setPowderToMedium(row.number("powder_to_medium"));
        paint.setMedium(named(row, "medium", media));
        paint.setContainsLead(row.yes("lead"));
        paint.setContainsCadmium(row.yes("cadmium"));
        paint.setGoldBearing(row.yes("gold"));
        paint.setPricePerKg(money(row, "price_per_kg"));
        paint.setSource(row.needed("source"));
        return paint;
    }

    private static GlassStock glass(Row row) {
        GlassStock glass = NEW.createGlassStock();
        glass.setName(row.needed("name"));
        glass.setFamily(row.needed("family"));
        glass.setColour(colour(row));
        glass.setThicknessMm(row.number("thickness_mm"));
        glass.setTextured(row.yes("textured"));
        glass.setGrained(row.yes("grained"));
        glass.setOpal(row.yes("opal"));
        glass.setSheetWidthMm(row.number("sheet_width_mm"));
        glass.setSheetHeightMm(row.number("sheet_height_mm"));
        glass.setPricePerM2(money(row, "price_per_m2"));
        glass.setSource(row.needed("source"));
        return glass;
    }

    private static JoinStock join(Row row) {
        JoinStock join = NEW.createJoinStock();
        join.setName(row.needed("name"));
        join.setKind((JoinKind) word(row, "kind", CommissionPackage.Literals.JOIN_KIND));
        row.optional("thickness_um").ifPresent(join::setThicknessUm);
        row.optional("width_mm").ifPresent(join::setWidthMm);
        row.optional("heart_mm").ifPresent(join::setHeartMm);
        join.setFaceMm(row.number("face_mm"));
        join.setMassGPerM(row.number("mass_g_per_m"));
        join.setPricePerM(money(row, "price_per_m"));
        join.setSoldLengthMm(sold(row));
        join.setSource(row.needed("source"));
        return join;
    }

    private static SolderStock solder(Row row) {
        SolderStock solder = NEW.createSolderStock();
        solder.setName(row.needed("name"));
        solder.setTinShare(row.number("tin_share"));
        solder.setContainsLead(row.yes("lead"));
        solder.setDensityGPerCm3(row.number("density_g_per_cm3"));
        solder.setPricePerKg(money(row, "price_per_kg"));
        solder.setSource(row.needed("source"));
        return solder;
    }

    private static BarStock bar(Row row) {
        BarStock bar = NEW.createBarStock();
        bar.setName(row.needed("name"));
        bar.setWidthMm(row.number("width_mm"));
        bar.setDepthMm(row.number("depth_mm"));
        bar.setRound(row.yes("round"));
        bar.setPricePerM(money(row, "price_per_m"));
        bar.setSoldLengthMm(sold(row));
        bar.setSource(row.needed("source"));
        return bar;
    }

    private static Kiln kiln(Row row) {
        Kiln kiln = NEW.createKiln();
        kiln.setName(row.needed("name"));
        kiln.setShelfWidthMm(row.number("shelf_width_mm"));
        kiln.setShelfDepthMm(row.number("shelf_depth_mm"));
        kiln.setShelves((int) row.number("shelves"));
        kiln.setMaxC(row.number("max_c"));
        kiln.setMaxRateKPerH(row.number("max_rate_k_per_h"));
        kiln.setNaturalFallKPerH(row.number("natural_fall_k_per_h"));
        kiln.setPowerKw(row.number("power_kw"));
        kiln.setSource(row.needed("source"));
        return kiln;
    }

    /** Rows of one profile stand together, in the order of firing. */
    private List<FiringSchedule> schedules() {
        List<FiringSchedule> schedules = new ArrayList<>();
        for (Row row : tables.get("firing-profiles")) {
            String name = row.needed("profile");
            if (schedules.isEmpty() || !schedules.get(schedules.size() - 1).getName().equals(name)) {
                FiringSchedule schedule = NEW.createFiringSchedule();
                schedule.setName(name);
                schedule.setPurpose((PaintKind) word(row, "purpose", CommissionPackage.Literals.PAINT_KIND));
                schedule.setSource(row.needed("source"));
                schedules.add(schedule);
            }
            FiringSegment segment = NEW.createFiringSegment();
            segment.setName(row.needed("segment"));
            segment.setRateKPerH(row.optional("rate_k_per_h").orElse(null));
            segment.setTargetC(row.number("target_c"));
            segment.setSoakMin(row.number("soak_min"));
            segment.setVent(row.yes("vent"));
            segment.setNote(row.text("note").isEmpty() ? null : row.text("note"));
            schedules.get(schedules.size() - 1).getSegments().add(segment);
        }
        return schedules;
    }

    private PriceBook prices() {
        PriceBook book = NEW.createPriceBook();
        for (Row row : tables.get("prices")) {
            switch (row.needed("key")) {
                case "labour" -> book.setLabourPerHour(money(row, "price"));
                case "energy" -> book.setEnergyPerKwh(money(row, "price"));
                case "overhead-share" -> book.setOverheadShare(row.number("price"));
                case "margin-share" -> book.setMarginShare(row.number("price"));
                case "tax-share" -> book.setTaxShare(row.number("price"));
                default -> {
                    PriceItem item = NEW.createPriceItem();
                    item.setKey(row.needed("key"));
                    item.setName(row.needed("name"));
                    item.setUnit(row.needed("unit"));
                    item.setPrice(money(row, "price"));
                    item.setFrom(day(row, "from"));
                    item.setCurrency(row.given("currency").isEmpty() ? null : row.given("currency"));
                    book.getItems().add(item);
                }
            }
        }
        return book;
    }

    private static Printer printer(Row row) {
        Printer printer = NEW.createPrinter();
        printer.setName(row.needed("name"));
        printer.setDpi((int) row.number("dpi"));
        printer.setMarginMm(row.number("margin_mm"));
        printer.setSource(row.needed("source"));
        return printer;
    }

    private static SheetStock film(Row row) {
        SheetStock film = NEW.createSheetStock();
        film.setName(row.needed("name"));
        film.setMaterial((SheetMaterial) word(row, "material", CommissionPackage.Literals.SHEET_MATERIAL));
        film.setPaper(row.needed("paper"));
        film.setPricePerSheet(money(row, "price_per_sheet"));
        return film;
    }

    private static ProcessSetting process(Row row) {
        ProcessSetting process = NEW.createProcessSetting();
        process.setName(row.needed("name"));
        process.setProcessKey(row.needed("key"));
        process.setTonerSide((TonerSide) word(row, "toner_side", CommissionPackage.Literals.TONER_SIDE));
        row.optional("press_c").ifPresent(process::setPressC);
        row.optional("press_min").ifPresent(process::setPressMin);
        row.optional("cool_min").ifPresent(process::setCoolMin);
        process.setNote(row.text("note").isEmpty() ? null : row.text("note"));
        process.setSource(row.needed("source"));
        return process;
    }

    private static String colour(Row row) {
        String colour = row.needed("colour").toLowerCase(Locale.ROOT);
        if (!COLOUR.matcher(colour).matches()) {
            throw new Refusal(row.where(), "colour is " + row.text("colour"), "write sRGB as # and six hexadecimal digits");
        }
        return colour;
    }

    private static BigDecimal money(Row row, String column) {
        BigDecimal amount;
        try {
            amount = row.text(column).isEmpty() ? null : new BigDecimal(row.text(column));
        } catch (NumberFormatException e) {
            throw new Refusal(row.where(), column + " is " + row.text(column) + ", which is no amount", "write an amount with a decimal point", e);
        }
        if (amount != null && amount.signum() < 0) {
            throw new Refusal(row.where(), column + " is " + row.text(column), "a price is 0 or more");
        }
        return amount;
    }

    private static LocalDate day(Row row, String column) {
        try {
            return row.given(column).isEmpty() ? null : LocalDate.parse(row.given(column));
        } catch (DateTimeParseException e) {
            throw new Refusal(row.where(), column + " is " + row.given(column) + ", which is no day", "write it as 2026-01-31", e);
        }
    }

    /** A length in which something is sold; null where the table does not say. */
    private static Double sold(Row row) {
        return row.given("sold_length_mm").isEmpty() ? null : row.number("sold_length_mm");
    }

    private static Enumerator word(Row row, String column, EEnum words) {
        EEnumLiteral literal = words.getEEnumLiteralByLiteral(row.needed(column));
        if (literal == null) {
            throw new Refusal(row.where(), column + " is " + row.text(column), "write one of "
                    + String.join(", ", words.getELiterals().stream().map(EEnumLiteral::getLiteral).toList()));
        }
        return literal.getInstance();
    }
}
