package saddlebar.report.document;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import saddlebar.model.commission.Commission;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.Window;

/**
 * All that documents speak of: the model as it stands, and what other parts of the house found out. The model is read only, on one thread.
 *
 * @param day      on which the document is written
 * @param windows  those that it is about
 * @param mark     the studio's
 * @param pictures of windows in the light
 * @param money    price or estimate
 * @param panels   sizes, weights, bars
 * @param states   where windows stand
 * @param deeds    what the records say, in the order of time
 * @param photos   as taken
 * @param sheets   of glass with pieces laid on them
 * @param remake   to make a piece again
 * @param defects  found
 * @param data     files that lie within a dossier
 */
public record ReportMatter(ReportKind kind, LocalDate day, Commission commission, Studio studio, List<Window> windows, Optional<Picture> mark,
        List<WindowPicture> pictures, Optional<Money> money, List<PanelPart> panels, List<WindowState> states, List<Deed> deeds, List<Photo> photos,
        List<GlassSheet> sheets, Optional<Remake> remake, List<DefectFound> defects, List<Attachment> data) {
    public ReportMatter {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(day, "day");
        windows = List.copyOf(windows);
        pictures = List.copyOf(pictures);
        panels = List.copyOf(panels);
        states = List.copyOf(states);
        deeds = List.copyOf(deeds);
        photos = List.copyOf(photos);
        sheets = List.copyOf(sheets);
        defects = List.copyOf(defects);
        data = List.copyOf(data);
    }

    /** A window in one colouring; {@code colourway} is empty where it has none. */
    public record WindowPicture(String window, String colourway, boolean chosen, boolean approved, Picture picture) {
    }

    /**
     * What the client is asked.
     *
     * @param number     of a frozen quote, empty for an estimate
     * @param validUntil of a quote
     * @param tax        zero if there is none
     * @param low        a low end of an estimate's range
     * @param high       its high end
     */
    public record Money(String currency, String number, Optional<LocalDate> validUntil, List<Line> lines, BigDecimal net, BigDecimal tax, BigDecimal total,
            List<Part> parts, Optional<BigDecimal> low, Optional<BigDecimal> high) {
        public Money {
            lines = List.copyOf(lines);
            parts = List.copyOf(parts);
        }

        /** @param source key of what it is for; {@code window} is empty for the whole commission */
        public record Line(String window, String source, BigDecimal amount) {
        }

        public record Part(String milestone, BigDecimal amount) {
        }
    }

    /**
     * A panel as it is put together.
     *
     * @param barsMm heights of bars from its top
     */
    public record PanelPart(String window, String label, boolean leaded, double widthMm, double heightMm, int pieces, double massKg, String handling,
            List<Double> barsMm,
            double metalM) {
        public PanelPart {
            barsMm = List.copyOf(barsMm);
        }
    }

    /** How many pieces of a window stand where, by the words of the making. */
    public record WindowState(String window, String state, Map<String, Integer> pieces) {
        public WindowState {
            pieces = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(pieces));
        }
    }

    /** A record in words; {@code words} has its settings by the names of the record's columns. */
    public record Deed(LocalDate day, String kind, String who, Map<String, String> words, String note) {
        public Deed {
            words = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(words));
        }

        public String word(String key) {
            return words.getOrDefault(key, "");
        }
    }

    public record Photo(String name, Picture picture) {
    }

    /** A sheet of glass with the pieces that are cut from it. */
    public record GlassSheet(String glass, String name, boolean toBuy, double widthMm, double heightMm, List<String> pieces, double use) {
        public GlassSheet {
            pieces = List.copyOf(pieces);
        }
    }

    /**
     * To make a piece again.
     *
     * @param piece  such as {@code W01/12}
     * @param facts  what it is, row by row: what, how
     * @param rows   settings of the day it was made beside today's
     * @param shape  its outline
     */
    public record Remake(String piece, List<List<String>> facts, List<ThenAndNow> rows, Optional<Picture> shape) {
        public Remake {
            facts = List.copyOf(facts);
            rows = List.copyOf(rows);
        }

        public record ThenAndNow(String layer, String setting, String then, String now) {
            public boolean differs() {
                return !then.equals(now);
            }
        }
    }

    /**
     * Something wrong.
     *
     * @param wayBack step by step: what, which, when
     * @param exposed pieces that shared something with it
     */
    public record DefectFound(String piece, String layer, String kind, String severity, LocalDate day, String who, String note, String disposition,
            List<List<String>> wayBack, List<String> exposed) {
        public DefectFound {
            wayBack = List.copyOf(wayBack);
            exposed = List.copyOf(exposed);
        }
    }

    /** A file within the document (PDF/A-3). */
    public record Attachment(String name, String mime, String words, byte[] bytes) {
    }

    public List<WindowPicture> picturesOf(String window) {
        return pictures.stream().filter(picture -> picture.window().equals(window)).toList();
    }
}
