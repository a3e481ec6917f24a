package saddlebar.kiln.table;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import saddlebar.kiln.fire.Kiln;
import saddlebar.kiln.glass.Glass;
import saddlebar.kiln.glass.Vft;
import saddlebar.kiln.paint.PaintFlux;
import saddlebar.kiln.paint.PaintKind;
import saddlebar.kiln.read.Cells;
import saddlebar.kiln.read.CsvRows;
import saddlebar.model.problem.Refusal;

/**
 * What the kiln needs of the studio's tables: {@code heat-models.csv}, {@code glasses.csv}, {@code kilns.csv}, {@code paints.csv}. A table that is not
 * there is empty; {@code float}, {@code srm-710a} and {@code srm-710} are always known. A glass that has no heat model of its own name is taken as float.
 */
public final class KilnTables {
    private final Map<String, Glass> glasses = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    private final Map<String, PaintFlux> paints = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    private final Map<String, Kiln> kilns = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);

    private KilnTables() {
        glasses.put("float", Glass.floatGlass());
        glasses.put("srm-710a", Glass.sodaLime("srm-710a", Glass.SRM_710A));
        glasses.put("srm-710", Glass.sodaLime("srm-710", Glass.SRM_710));
        kilns.put("small kiln", Kiln.small());
    }

    public static KilnTables builtIn() {
        return new KilnTables();
    }

    /** @throws Refusal if a table has a row that cannot be used */
    public static KilnTables read(Path folder) throws IOException {
        KilnTables tables = new KilnTables();
        for (Cell row : rows(folder.resolve("heat-models.csv"))) {
            tables.glasses.put(row.text("name"), row.glass());
        }
        for (Cell row : rows(folder.resolve("glasses.csv"))) {
            String name = row.text("name");
            tables.glasses.computeIfAbsent(name, n -> Glass.floatGlass().named(n));
        }
        for (Cell row : rows(folder.resolve("kilns.csv"))) {
            tables.kilns.put(row.text("name"), row.kiln());
        }
        for (Cell row : rows(folder.resolve("paints.csv"))) {
            tables.paints.put(row.text("name"), row.paint());
        }
        return tables;
    }

    public Optional<Glass> glass(String name) {
        return Optional.ofNullable(glasses.get(name.strip()));
    }

    public Optional<PaintFlux> paint(String name) {
        return Optional.ofNullable(paints.get(name.strip()));
    }

    public Optional<Kiln> kiln(String name) {
        return Optional.ofNullable(kilns.get(name.strip()));
    }

    public List<String> glassNames() {
        return List.copyOf(glasses.keySet());
    }

    public List<String> paintNames() {
        return List.copyOf(paints.keySet());
    }

    public List<String> kilnNames() {
        return List.copyOf(kilns.keySet());
    }

    private static List<Cell> rows(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            return List.of();
        }
        CsvRows table = CsvRows.of(file);
        List<String> headings = table.rows().get(0).cells().stream().map(cell -> cell.toLowerCase(Locale.ROOT)).toList();
        List<Cell> rows = new ArrayList<>();
        for (CsvRows.Row row : table.rows().subList(1, table.rows().size())) {
            rows.add(new Cell(table, headings, row));
        }
        return rows;
    }

    /** One row by the names of its columns. */
    private record Cell(CsvRows table, List<String> headings, CsvRows.Row row) {
        String text(String column) {
            String text = row.cell(headings.indexOf(column));
            if (text.isEmpty()) {
                throw new Refusal(table.where(row), column + " is empty or no column", "fill it in");
            }
            return text;
        }

        double number(String column) {
            return Cells.number(table, row, headings.indexOf(column), column, "write a number with a decimal point");
        }

        boolean has(String column) {
            return !row.cell(headings.indexOf(column)).isEmpty();
        }

        Glass glass() {
            try {
                Vft viscosity = has("a")
                        ? new Vft(number("a"), number("b_k"), number("t0_c"))
                        : Vft.through(new Vft.Point(1.5, number("t_1e1_5_c")), new Vft.Point(6.6, number("t_1e6_6_c")),
                                new Vft.Point(12, number("t_1e12_c")));
                Glass glass = Glass.sodaLime(text("name"), viscosity);
                return has("expansion_per_million_k") ? glass.withExpansion(number("expansion_per_million_k") / 1e6) : glass;
            } catch (IllegalArgumentException outOfRange) {
                throw refused(outOfRange);
            }
        }

        Kiln kiln() {
            try {
                double areaM2 = number("shelf_width_mm") * number("shelf_depth_mm") / 1e6 * (has("shelves") ? number("shelves") : 1);
                return Kiln.fromTable(text("name"), areaM2, number("max_c"), number("max_rate_k_per_h"), number("natural_fall_k_per_h"),
                        number("power_kw"));
            } catch (IllegalArgumentException outOfRange) {
                throw refused(outOfRange);
            }
        }

        PaintFlux paint() {
            PaintKind kind = PaintKind.of(text("kind"))
                    .orElseThrow(() -> new Refusal(table.where(row), "kind is " + row.cell(headings.indexOf("kind")),
                            "write trace, matt, lettering, enamel or stain"));
            try {
                return PaintFlux.of(text("name"), kind, number("maturing_from_c"), number("maturing_to_c"), Glass.DGG_I);
            } catch (IllegalArgumentException outOfRange) {
                throw refused(outOfRange);
            }
        }

        private Refusal refused(IllegalArgumentException outOfRange) {
            return new Refusal(table.where(row), outOfRange.getMessage(), "correct the row", outOfRange);
        }
    }
}
