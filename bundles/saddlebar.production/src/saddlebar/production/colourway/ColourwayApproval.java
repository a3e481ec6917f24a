package saddlebar.production.colourway;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import saddlebar.model.commission.Approval;
import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.Commission;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.RecordDraft;
import saddlebar.model.store.RecordKind;
import saddlebar.model.store.RecordLine;
import saddlebar.model.store.RecordReading;

/**
 * What the client agreed to is frozen: the colourway with its day, an approval with the person's name, and a record that holds every piece's glass and every
 * layer's paint as they were that day. One colourway a window. Withdrawing supersedes the record and thaws the colourway; nothing is erased.
 */
public final class ColourwayApproval {
    private static final int LONGEST_NAME = 120;
    private static final int MOST_NAMED = 12;

    private ColourwayApproval() {
    }

    /**
     * Freezes, saves and appends the record. The approved colourway becomes the one that is made.
     *
     * @param who the person who agreed
     * @throws Refusal if a piece has no glass, or another colourway is approved
     */
    public static Approval approve(CommissionFolder folder, Colourway colourway, String who, LocalDate day) throws IOException {
        Window window = colourway.getWindow();
        String person = person(who);
        Optional<Colourway> already = Colourways.approved(window);
        if (already.isPresent()) {
            throw new Refusal(window.getName(), "its colourway '" + Colourways.name(already.get()) + "' is approved already", "withdraw that approval first");
        }
        requireGlass(window, colourway);
        Colourways.writeOut(colourway);
        colourway.setApproved(true);
        colourway.setApprovedOn(day);
        Colourways.make(colourway);
        Approval approval = CommissionFactory.eINSTANCE.createApproval();
        approval.setId(java.util.UUID.randomUUID().toString());
        approval.setName(window.getName() + " " + Colourways.name(colourway));
        approval.setOn(day);
        approval.setBy(person);
        approval.setColourway(colourway);
        Commission commission = folder.commission();
        commission.getApprovals().add(approval);
        folder.save();
        folder.records().append(RecordDraft.of(RecordKind.APPROVE).using(List.of(colourway.getId())).with(settings(window, colourway, approval)));
        return approval;
    }

    /**
     * Takes an approval back.
     *
     * @param who the person who says so
     * @param why in words, may be empty
     */
    public static void withdraw(CommissionFolder folder, Colourway colourway, String who, LocalDate day, String why) throws IOException {
        String person = person(who);
        if (!colourway.isApproved()) {
            throw new Refusal(colourway.getWindow().getName() + " " + Colourways.name(colourway), "it is not approved", "there is nothing to withdraw");
        }
        List<String> records = standing(folder, colourway);
        colourway.setApproved(false);
        colourway.setApprovedOn(null);
        folder.commission().getApprovals().removeIf(approval -> approval.getColourway() == colourway);
        folder.save();
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("colourwayId", colourway.getId());
        settings.put("window", colourway.getWindow().getName());
        settings.put("colourway", Colourways.name(colourway));
        settings.put("withdrawnBy", person);
        settings.put("withdrawnOn", day.toString());
        folder.records().append(RecordDraft.of(RecordKind.APPROVE).using(List.of(colourway.getId())).with(settings).superseding(records).noting(why));
    }

    /** Who approved it, if it is approved. */
    public static Optional<Approval> of(Colourway colourway, Commission commission) {
        return colourway.isApproved()
                ? commission.getApprovals().stream().filter(approval -> approval.getColourway() == colourway).reduce((first, last) -> last)
                : Optional.empty();
    }

    private static String person(String who) {
        String person = who == null ? "" : who.strip();
        if (person.isEmpty() || person.length() > LONGEST_NAME || person.chars().anyMatch(Character::isISOControl)) {
            throw new Refusal("approval", "nobody is named who agreed", "give the person's name, 1 to " + LONGEST_NAME + " letters");
        }
        return person;
    }

    private static void requireGlass(Window window, Colourway colourway) {
        List<Piece> pieces = Colourways.pieces(window);
        if (pieces.isEmpty()) {
            throw new Refusal(window.getName(), "it has no pieces yet", "bring its artwork first");
        }
        List<String> bare = pieces.stream().filter(piece -> Colourways.glass(piece, colourway).isEmpty()).map(piece -> String.valueOf(piece.getNumber()))
                .toList();
        if (!bare.isEmpty()) {
            throw new Refusal(window.getName() + " " + Colourways.name(colourway), "no glass is chosen for " + (bare.size() == 1 ? "piece " : "pieces ")
                    + String.join(", ", bare.subList(0, Math.min(MOST_NAMED, bare.size()))) + (bare.size() > MOST_NAMED ? " and others" : ""),
                    "choose it, so that it is plain what is agreed to");
        }
    }

    private static Map<String, Object> settings(Window window, Colourway colourway, Approval approval) {
        Map<String, Object> settings = new LinkedHashMap<>();
        settings.put("approvalId", approval.getId());
        settings.put("colourwayId", colourway.getId());
        settings.put("window", window.getName());
        settings.put("colourway", Colourways.name(colourway));
        settings.put("approvedBy", approval.getBy());
        settings.put("approvedOn", approval.getOn().toString());
        List<Object> glass = new ArrayList<>();
        for (Piece piece : Colourways.pieces(window)) {
            GlassStock stock = Colourways.glass(piece, colourway).orElseThrow();
            glass.add(entry("piece", piece.getNumber(), "pieceId", piece.getId(), "glass", stock.getName(), "glassId", stock.getId(), "colour",
                    stock.getColour(), "thicknessMm", stock.getThicknessMm()));
        }
        settings.put("glass", glass);
        List<Object> paints = new ArrayList<>();
        for (DesignLayer layer : Colourways.paintedLayers(window)) {
            if (layer.getPaint() != null) {
                paints.add(entry("layer", layer.getName(), "layerId", layer.getId(), "paint", layer.getPaint().getName(), "paintId",
                        layer.getPaint().getId(), "colour", layer.getPaint().getColour()));
            }
        }
        settings.put("paints", paints);
        return settings;
    }

    private static Map<String, Object> entry(Object... keysAndValues) {
        Map<String, Object> entry = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            entry.put((String) keysAndValues[i], keysAndValues[i + 1] == null ? "" : keysAndValues[i + 1]);
        }
        return entry;
    }

    /** Ids of its records that no later record corrects. */
    private static List<String> standing(CommissionFolder folder, Colourway colourway) throws IOException {
        List<String> ids = new ArrayList<>();
        Set<String> superseded = new HashSet<>();
        try (RecordReading reading = folder.records().read()) {
            for (RecordLine line : reading.toList()) {
                superseded.addAll(line.supersedes());
                if (line.kind().equals(RecordKind.APPROVE.key()) && colourway.getId().equals(line.settings().get("colourwayId"))) {
                    ids.add(line.id());
                }
            }
        }
        ids.removeAll(superseded);
        return ids;
    }
}
