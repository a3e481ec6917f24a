package saddlebar.kiln.read;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import saddlebar.model.problem.Refusal;

/**
 * Rows of a separated text file as loggers, controllers and spreadsheets write it: comma, semicolon or tab; quoted cells; UTF-8, UTF-16 with
 * its mark, or Latin-1 (for a degree sign); lines that are empty or begin with {@code #} left out. Which separator: the one that stands in most of
 * the first lines, outside of quotation marks; so a decimal comma, which is not in the line of column names, is none.
 */
public final class CsvRows {
    private static final long MOST_BYTES = 256L << 20;
    private static final int LOOK_LINES = 60;

    private final String name;
    private final List<Row> rows;
    private final char separator;

    private CsvRows(String name, List<Row> rows, char separator) {
        this.name = name;
        this.rows = rows;
        this.separator = separator;
    }

    /** One line that holds something: its number in the file from 1, and its cells without the blanks around them. */
    public record Row(int line, List<String> cells) {
        public String cell(int column) {
            return column < 0 || column >= cells.size() ? "" : cells.get(column);
        }
    }

    /** @throws Refusal if there is no such file, it is empty, or it is no text */
    public static CsvRows of(Path file) throws IOException {
        String name = String.valueOf(file.getFileName());
        if (Files.isDirectory(file)) {
            throw new Refusal(name, "this is a folder, not a file", "name the file in it");
        }
        if (!Files.exists(file)) {
            throw new Refusal(name, "there is no such file", "check the name and the folder");
        }
        if (Files.size(file) > MOST_BYTES) {
            throw new Refusal(name, "it is larger than 256 MB", "cut it into single firings");
        }
        return of(decoded(Files.readAllBytes(file), name), name);
    }

    public static CsvRows of(String text, String name) {
        if (text.isBlank()) {
            throw new Refusal(name, "it is empty", "write a line of column names and a line for each row");
        }
        char separator = separator(text);
        return new CsvRows(name, split(text.startsWith("\uFEFF") ? text.substring(1) : text, separator, name), separator);
    }

    public String name() {
        return name;
    }

    public List<Row> rows() {
        return rows;
    }

    /** True if a comma inside a number is its decimal point. */
    public boolean decimalComma() {
        return separator != ',';
    }

    public String where(Row row) {
        return name + ":" + row.line();
    }

    private static String decoded(byte[] bytes, String name) {
        if (bytes.length >= 2 && (bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF || bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE)) {
            return new String(bytes, StandardCharsets.UTF_16);
        }
        for (int i = 0; i < bytes.length; i++) {
            int b = bytes[i] & 0xFF;
            if (b < 32 && b != '\n' && b != '\r' && b != '\t' && b != '\f' && b != 0x1A) {
                throw new Refusal(name, "it is not text but a binary file", "export it as CSV");
            }
        }
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException latin) { // loggers with a degree sign of one byte
            return new String(bytes, StandardCharsets.ISO_8859_1);
        }
    }

    private static char separator(String text) {
        char[] candidates = {';', '\t', ','};
        int[] lines = new int[candidates.length];
        int[] all = new int[candidates.length];
        text.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).limit(LOOK_LINES).map(line -> line.replaceAll("\"[^\"]*\"", ""))
                .forEach(line -> {
                    for (int i = 0; i < candidates.length; i++) {
                        char candidate = candidates[i];
                        int count = (int) line.chars().filter(c -> c == candidate).count();
                        lines[i] += count > 0 ? 1 : 0;
                        all[i] += count;
                    }
                });
        int best = 2;
        for (int i = 1; i >= 0; i--) {
            best = lines[i] > lines[best] || lines[i] == lines[best] && all[i] > all[best] ? i : best;
        }
        return candidates[best];
    }

    private static List<Row> split(String text, char separator, String name) {
        List<Row> rows = new ArrayList<>();
        int line = 1;
        int at = 0;
        while (at < text.length()) {
            int began = line;
            List<String> cells = new ArrayList<>();
            StringBuilder cell = new StringBuilder();
            boolean remark = text.charAt(at) == '#';
            boolean quoted = false;
            boolean ended = false;
            while (at < text.length() && !ended) {
                char c = text.charAt(at++);
                line += c == '\n' || c == '\r' && !(at < text.length() && text.charAt(at) == '\n') ? 1 : 0;
                if (quoted) {
                    if (c == '"' && at < text.length() && text.charAt(at) == '"') {
                        cell.append('"');
                        at++;
                    } else if (c == '"') {
                        quoted = false;
                    } else {
                        cell.append(c);
                    }
                } else if (c == '"' && cell.toString().isBlank() && !remark) {
                    quoted = true;
                } else if (c == separator) {
                    cells.add(cell.toString().strip());
                    cell.setLength(0);
                } else if (c == '\n' || c == '\r' && !(at < text.length() && text.charAt(at) == '\n')) {
                    ended = true;
                } else if (c != '\r') {
                    cell.append(c);
                }
            }
            if (quoted) {
                throw new Refusal(name + ":" + began, "a quotation mark is never closed", "close it");
            }
            cells.add(cell.toString().strip());
            if (!remark && !cells.stream().allMatch(String::isEmpty)) {
                rows.add(new Row(began, List.copyOf(cells)));
            }
        }
        if (rows.isEmpty()) {
            throw new Refusal(name, "it holds no row", "write a line of column names and a line for each row");
        }
        return List.copyOf(rows);
    }
}
