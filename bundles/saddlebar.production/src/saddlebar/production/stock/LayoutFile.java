package saddlebar.production.stock;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonParseException;

import saddlebar.model.art.OutlineMm;
import saddlebar.model.file.PendingFile;
import saddlebar.model.problem.Refusal;

/** The last layout of a commission's pieces on glass, kept under {@code made/} so that cutting and costing can follow it. */
public final class LayoutFile {
    /** Folder under {@code made/}. */
    public static final String FOLDER = "glass";
    private static final Gson JSON = new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

    private LayoutFile() {
    }

    private record Form(List<SheetForm> sheets, Map<String, Double> yields) {
    }

    private record SheetForm(String glass, String id, String name, boolean toBuy, double widthMm, double heightMm, String outline, boolean alongWidth,
            boolean offcut, List<String> flaws, List<PieceForm> pieces, List<LaidGlass.Offcut> offcuts) {
        static SheetForm of(LaidGlass laid) {
            ShelfSheet sheet = laid.sheet();
            return new SheetForm(laid.glass(), sheet.id(), sheet.name(), laid.toBuy(), sheet.widthMm(), sheet.heightMm(),
                    sheet.outline().map(OutlineMm::toString).orElse(""), sheet.alongWidth(), sheet.offcut(),
                    sheet.flaws().stream().map(OutlineMm::toString).toList(),
                    laid.pieces().stream().map(piece -> new PieceForm(piece.label(), piece.outline().toString(), piece.rotationDeg())).toList(),
                    laid.offcuts());
        }

        LaidGlass laid() {
            ShelfSheet sheet = new ShelfSheet(id, name, widthMm, heightMm, outline.isEmpty() ? Optional.empty() : Optional.of(OutlineMm.parse(outline)),
                    alongWidth, offcut, flaws.stream().map(OutlineMm::parse).toList());
            return new LaidGlass(glass, sheet, toBuy,
                    pieces.stream().map(piece -> new LaidPiece(piece.label, OutlineMm.parse(piece.outline), piece.rotationDeg)).toList(), offcuts);
        }
    }

    private record PieceForm(String label, String outline, double rotationDeg) {
    }

    private static Path file(Path commission) {
        return commission.resolve("made").resolve(FOLDER).resolve("layout.json");
    }

    public static void write(Path commission, GlassLaying.Result result) throws IOException {
        Path file = file(commission);
        Files.createDirectories(file.getParent());
        try (PendingFile pending = PendingFile.beside(file)) {
            pending.out().write(JSON.toJson(new Form(result.sheets().stream().map(SheetForm::of).toList(), new TreeMap<>(result.yields())))
                    .getBytes(StandardCharsets.UTF_8));
            pending.commit();
        }
    }

    /** Empty if nothing was laid yet. */
    public static List<LaidGlass> read(Path commission) throws IOException {
        return form(commission).map(form -> form.sheets().stream().map(SheetForm::laid).toList()).orElse(List.of());
    }

    /** For each glass that was laid the share of the sheets that became pieces, off-cuts that are kept not counted; empty if nothing was laid yet. */
    public static Map<String, Double> yields(Path commission) throws IOException {
        return form(commission).map(Form::yields).orElse(Map.of());
    }

    private static Optional<Form> form(Path commission) throws IOException {
        Path file = file(commission);
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        try {
            Form form = JSON.fromJson(Files.readString(file), Form.class);
            if (form == null || form.sheets() == null || form.yields() == null) {
                throw new JsonParseException("it holds no layout");
            }
            return Optional.of(form);
        } catch (JsonParseException e) {
            throw new Refusal("made/" + FOLDER + "/layout.json", "it cannot be read: " + e.getMessage(), "lay the pieces again, which writes it anew", e);
        }
    }
}
