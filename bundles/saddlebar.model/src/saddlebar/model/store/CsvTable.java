package saddlebar.model.store;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import saddlebar.model.problem.Refusal;

/** A table of plain text: comma separated (RFC 4180), UTF-8, the first row names the columns, lines that begin with {@code #} are remarks. */
final class CsvTable {
    private final Path file;
    private final List<Row> rows = new ArrayList<>();

    private CsvTable(Path file) {
        this.file = file;
    }

    /** @throws Refusal if the table is missing or a row does not fit the columns */
    static CsvTable read(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new Refusal(file.toString(), "is missing", "put the table back; the tables of the studio library belong together");
        }
        CsvTable table = new CsvTable(file);
        String text;
        try {
            text = Files.readString(file, StandardCharsets.UTF_8);
        } catch (MalformedInputException e) {
            throw new Refusal(file.toString(), "is not UTF-8 text", "save it as UTF-8", e);
        }
        table.parse(text.startsWith("\uFEFF") ? text.substring(1) : text);
        return table;
    }

    List<Row> rows() {
        return rows;
    }

    private void parse(String text) {
        List<String> columns = null;
        int line = 1;
        for (int at = 0; at < text.length();) {
            int started = line;
            List<String> cells = new ArrayList<>();
            boolean remark = text.charAt(at) == '#';
            StringBuilder cell = new StringBuilder();
            boolean quoted = false;
            boolean ended = false;
            while (at < text.length() && !ended) {
                char c = text.charAt(at++);
                line += c == '\n' ? 1 : 0;
                if (quoted) {
                    if (c == '"' && at < text.length() && text.charAt(at) == '"') {
                        cell.append('"');
                        at++;
                    } else if (c == '"') {
                        quoted = false;
                    } else {
                        cell.append(c);
                    }
                } else if (c == '"' && cell.isEmpty() && !remark) {
                    quoted = true;
                } else if (c == ',') {
                    cells.add(cell.toString().strip());
                    cell.setLength(0);
                } else if (c == '\n') {
                    ended = true;
                } else if (c != '\r') {
                    cell.append(c);
                }
            }
            if (quoted) {
                throw new Refusal(file + ":" + started, "has a quotation mark that is never closed", "close it");
            }
            cells.add(cell.toString().strip());
            if (remark || cells.size() == 1 && cells.get(0).isEmpty()) {
                continue;
            }
            if (columns == null) {
                columns = cells;
            } else {
                rows.add(row(columns, cells, started));
            }
        }
        if (columns == null) {
            throw new Refusal(file.toString(), "holds no row", "the first row names the columns");
        }
    }

    private Row row(List<String> columns, List<String> cells, int line) {
        if (cells.size() != columns.size()) {
            throw new Refusal(file + ":" + line, "has " + cells.size() + " cells where the first row names " + columns.size() + " columns",
                    "give every row as many cells");
        }
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < cells.size(); i++) {
            map.put(columns.get(i), cells.get(i));
        }
        return new Row(file + ":" + line, map);
    }

    /** One row by the names of the columns. */
    record Row(String where, Map<String, String> cells) {
        String text(String column) {
            String cell = cells.get(column);
            if (cell == null) {
                throw new Refusal(where, "the table has no column " + column, "add it");
            }
            return cell;
        }

        /** Empty also where an older table has no such column. */
        String given(String column) {
            return cells.getOrDefault(column, "");
        }

        String needed(String column) {
            String cell = text(column);
            if (cell.isEmpty()) {
                throw new Refusal(where, column + " is empty", "fill it in");
            }
            return cell;
        }

        double number(String column) {
            return optional(column).orElseThrow(() -> new Refusal(where, column + " is empty", "write a number with a decimal point"));
        }

        Optional<Double> optional(String column) {
            String cell = text(column);
            if (cell.isEmpty()) {
                return Optional.empty();
            }
            try {
                double value = Double.parseDouble(cell);
                if (Double.isFinite(value)) {
                    return Optional.of(value);
                }
            } catch (NumberFormatException e) {
                throw new Refusal(where, column + " is " + cell + ", which is no number", "write a number with a decimal point", e);
            }
            throw new Refusal(where, column + " is " + cell, "write a finite number");
        }

        boolean yes(String column) {
            return switch (text(column)) {
                case "yes" -> true;
                case "no", "" -> false;
                default -> throw new Refusal(where, column + " is " + text(column), "write yes or no");
            };
        }
    }
}
