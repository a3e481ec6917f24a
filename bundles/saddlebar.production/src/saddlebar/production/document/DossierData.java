package saddlebar.production.document;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;

import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.RecordLine;
import saddlebar.production.facts.PieceFacts;
import saddlebar.report.document.ReportMatter.Attachment;

/** The data that lie within a dossier, for whoever opens it when no program of today is left: pieces as JSON with outlines as well-known text, records line by line. */
final class DossierData {
    private static final Gson JSON = new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().serializeNulls().create();

    private static final Gson LINE = new GsonBuilder().disableHtmlEscaping().create();

    private DossierData() {
    }

    private record PieceRow(int number, String glass, double areaMm2, String outlineMm) {
    }

    private static Map<String, Object> row(RecordLine line) {
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("id", line.id());
        row.put("time", line.time().toString());
        row.put("kind", line.kind());
        row.put("who", line.who());
        row.put("used", line.used());
        row.put("made", line.made());
        row.put("settings", line.settings());
        row.put("note", line.note());
        row.put("sha256", line.sha256());
        return row;
    }

    static List<Attachment> of(CommissionFolder folder, List<Window> windows, RecordsRead records) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("commission", folder.commission().getTitle());
        all.put("number", folder.commission().getNumber());
        all.put("lengths", "mm, x to the right, y down from the top left of the panel's drawing");
        Map<String, List<PieceRow>> byPanel = new LinkedHashMap<>();
        for (Window window : windows) {
            for (Panel panel : window.getPanels()) {
                List<PieceRow> rows = new ArrayList<>();
                for (Piece piece : panel.getPieces()) {
                    if (!piece.isRetired() && piece.getNet() != null) {
                        rows.add(new PieceRow(piece.getNumber(), PieceFacts.of(piece).stock(), piece.getNetAreaMm2(), piece.getNet().toString()));
                    }
                }
                byPanel.put((window.getName() + " " + (panel.getName() == null ? "" : panel.getName())).strip(), rows);
            }
        }
        all.put("panels", byPanel);
        List<Attachment> data = new ArrayList<>();
        data.add(new Attachment("pieces.json", "application/json", "Pieces with glass and outline", JSON.toJson(all).getBytes(StandardCharsets.UTF_8)));
        if (!records.lines().isEmpty()) {
            StringBuilder lines = new StringBuilder();
            records.lines().forEach(line -> lines.append(LINE.toJson(row(line))).append('\n'));
            data.add(new Attachment("records.jsonl", "application/jsonl", "Records of the making, one a line",
                    lines.toString().getBytes(StandardCharsets.UTF_8)));
        }
        return data;
    }
}
