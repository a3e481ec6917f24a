package saddlebar.production.document;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.RecordLine;
import saddlebar.production.facts.CommissionFacts;
import saddlebar.production.facts.CommissionFacts.PlacedPanel;
import saddlebar.production.facts.FactsReader;
import saddlebar.production.facts.LayerFacts;
import saddlebar.production.facts.PieceFacts;
import saddlebar.report.document.Picture;
import saddlebar.report.document.ReportMatter.Remake;
import saddlebar.report.document.Words;

/** A piece to be made again: its stencils' settings as recorded beside today's recipe. */
final class RemakeTold {
    private static final int SHAPE_PX = 900;

    private RemakeTold() {
    }

    /** @throws Refusal if there is no such piece */
    static Remake of(CommissionFolder folder, List<Window> windows, String label, RecordsRead records, Words words) throws IOException {
        CommissionFacts facts = FactsReader.read(folder.commission(), folder.path(), List.of());
        for (Window window : windows) {
            for (PlacedPanel placed : facts.panels().filter(p -> p.window().name().equals(window.getName())).toList()) {
                Panel panel = window.getPanels().stream().filter(p -> placed.panel().id().equals(p.getId())).findFirst().orElseThrow();
                for (Piece piece : panel.getPieces()) {
                    if (!piece.isRetired() && placed.window().label(placed.panel(), piece.getNumber()).equals(label)) {
                        return of(placed, piece, label, records, words);
                    }
                }
            }
        }
        throw new Refusal("piece " + (label.isEmpty() ? "\u2013" : label), "there is no such piece", "name one that exists, such as W01/12 (--piece)");
    }

    private static Remake of(PlacedPanel placed, Piece piece, String label, RecordsRead records, Words words) throws IOException {
        double[] box = piece.getNet().boundsMm();
        List<List<String>> rows = new ArrayList<>();
        String glass = PieceFacts.of(piece).stock();
        rows.add(List.of(words.of("glass"), glass.isEmpty() ? words.of("no.glass") : glass));
        rows.add(List.of(words.of("size"), words.size(box[2] - box[0], box[3] - box[1]) + ", " + words.number(piece.getNetAreaMm2() / 100, 1) + " cm\u00b2"));
        List<Remake.ThenAndNow> settings = new ArrayList<>();
        List<String> layers = new ArrayList<>();
        for (LayerFacts layer : placed.panel().layers()) {
            Optional<RecordLine> made = records.lines().stream()
                    .filter(line -> line.kind().equals("stencil") && layer.id().equals(RecordsRead.word(line, "layerId"))
                            && line.settings().get("pieceIds") instanceof List<?> ids && ids.contains(piece.getId()))
                    .reduce((a, b) -> b);
            if (made.isEmpty()) {
                continue;
            }
            layers.add(layer.name());
            Map<String, String> now = new TreeMap<>();
            flatten("", layer.settings(), now);
            Map<String, String> then = new TreeMap<>();
            flatten("", made.get().settings(), then);
            now.forEach((key, value) -> settings.add(new Remake.ThenAndNow(layer.name(), key, then.getOrDefault(key, "\u2013"), value)));
            settings.add(new Remake.ThenAndNow(layer.name(), "artwork", shortened(then.getOrDefault("artworkSha256", "\u2013")),
                    shortened(placed.panel().art().map(art -> art.sha256()).orElse("\u2013"))));
        }
        rows.add(List.of(words.of("painted"), layers.isEmpty() ? "\u2013" : String.join(", ", layers)));
        return new Remake(label, rows, settings, Optional.of(shape(piece, label)));
    }

    private static void flatten(String before, Map<?, ?> map, Map<String, String> into) {
        map.forEach((key, value) -> {
            if (value instanceof Map<?, ?> inner) {
                flatten(before + key + " ", inner, into);
            } else if (value != null && !(value instanceof List)) {
                into.put(before + key, value instanceof Number number ? plain(number.doubleValue()) : String.valueOf(value));
            }
        });
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15 ? String.valueOf((long) value) : String.valueOf(Math.rint(value * 1e6) / 1e6); // as fine as anything is set
    }

    private static String shortened(String sha256) {
        return sha256.length() > 12 ? sha256.substring(0, 12) : sha256;
    }

    private static Picture shape(Piece piece, String label) throws IOException {
        double[] box = piece.getNet().boundsMm();
        double scale = (SHAPE_PX - 20) / Math.max(box[2] - box[0], box[3] - box[1]);
        BufferedImage image = new BufferedImage((int) Math.ceil((box[2] - box[0]) * scale) + 20, (int) Math.ceil((box[3] - box[1]) * scale) + 20,
                BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.setColor(Color.BLACK);
        graphics.setStroke(new BasicStroke(4));
        Path2D path = new Path2D.Double();
        for (int ring = 0; ring < piece.getNet().rings(); ring++) {
            double[] xy = piece.getNet().ring(ring);
            for (int i = 0; i < xy.length; i += 2) {
                double x = 10 + (xy[i] - box[0]) * scale;
                double y = 10 + (xy[i + 1] - box[1]) * scale;
                if (i == 0) {
                    path.moveTo(x, y);
                } else {
                    path.lineTo(x, y);
                }
            }
            path.closePath();
        }
        graphics.draw(path);
        graphics.dispose();
        return PictureShelf.png(image, label);
    }
}
