package saddlebar.production.record;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.problem.Severity;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.RecordBook;
import saddlebar.model.store.RecordDraft;
import saddlebar.model.store.RecordKind;
import saddlebar.model.store.RecordLine;
import saddlebar.model.store.RecordReading;
import saddlebar.model.work.Work;

/**
 * Enters deeds into a commission's record: each window, piece and layer that a deed names is looked up, and the record holds both the person's words and the
 * ids, so that it can be read in any later year. Nothing is appended unless every deed can be.
 */
public final class DeedBook {
    /** Words for what can be wrong with fired paint on glass (words of the trade; common practice, no source). Others are taken in with a warning. */
    public static final List<String> DEFECTS = List.of("band", "burned out", "blister", "crack", "dirt", "faint", "matt rubs off", "missing", "out of register",
            "pinholes", "scratch", "smear", "stain wrong", "thin", "too dark", "chipped");
    public static final List<String> SEVERITIES = List.of("light", "middle", "heavy");

    private final CommissionFolder folder;
    private final boolean create;
    private final List<Problem> warnings = new ArrayList<>();
    private final List<String> created = new ArrayList<>();
    private final List<PhotoFile> photos = new ArrayList<>();
    private Map<String, String> known;

    /** @param create whether windows, pieces and layers that an old notebook names and the commission lacks are made */
    public DeedBook(CommissionFolder folder, boolean create) {
        this.folder = folder;
        this.create = create;
    }

    /** What happened on entering; {@code ids} of the records that were appended, in their order. */
    public record Entered(int records, List<String> ids, List<String> created, List<Problem> warnings, List<Refusal> refused) {
        public Entered {
            ids = List.copyOf(ids);
            created = List.copyOf(created);
            warnings = List.copyOf(warnings);
            refused = List.copyOf(refused);
        }
    }

    /**
     * Looks every deed up, and appends all of them if none is refused. Without {@code write} nothing is appended and nothing saved.
     *
     * @param write false for a trial
     */
    public Entered enter(List<Deed> deeds, boolean write) throws IOException {
        List<RecordDraft> drafts = new ArrayList<>();
        List<Refusal> refused = new ArrayList<>();
        for (Deed deed : deeds) {
            try {
                drafts.add(draft(deed));
            } catch (Refusal refusal) {
                refused.add(refusal);
            }
        }
        List<String> ids = List.of();
        if (write && refused.isEmpty()) {
            if (!created.isEmpty()) {
                folder.save();
            }
            for (PhotoFile photo : photos) {
                folder.importPhoto(photo.file(), photo.extension());
            }
            ids = folder.records().append(drafts).stream().map(RecordLine::id).toList();
        }
        return new Entered(refused.isEmpty() ? drafts.size() : 0, ids, created, warnings, refused);
    }

    private RecordDraft draft(Deed deed) throws IOException {
        Map<String, Object> settings = new LinkedHashMap<>();
        List<String> used = new ArrayList<>();
        deed.words().forEach((column, word) -> settings.put(column,
                DeedReader.NUMBERS.contains(column) || column.equals("pull") && word.matches("\\d+(\\.\\d+)?")
                        ? (Object) DeedReader.number(deed.where(), column, word)
                        : word));
        settings.keySet().removeAll(List.of("note", "photo", "at", "corrects"));
        if (!deed.word("window").isEmpty()) {
            ids(deed, settings, used);
        }
        new StudioWords(folder).name(deed, settings);
        if (deed.kind().equals("defect")) {
            settings.put("defectKind", deed.word("defect"));
            known(deed, "defect", DEFECTS);
            known(deed, "severity", SEVERITIES);
        }
        photo(deed, settings);
        RecordDraft draft = RecordDraft.of(RecordKind.ofKey(deed.kind()).orElseThrow()).at(deed.when()).using(used).with(settings).noting(deed.word("note"));
        if (!deed.word("corrects").isEmpty()) {
            draft = draft.superseding(List.of(corrected(deed)));
        }
        return deed.who().isEmpty() ? draft : draft.by(deed.who());
    }

    /** The photo is looked at now and taken in only when every deed can be entered. */
    private void photo(Deed deed, Map<String, Object> settings) throws IOException {
        if (!deed.word("at").isEmpty()) {
            String[] at = deed.word("at").split("[,; ]+");
            if (at.length != 2) {
                throw new Refusal(deed.where(), "the place '" + deed.word("at") + "' is none", "write it as X,Y in mm of the panel, such as 120.5,80");
            }
            settings.put("xMm", DeedReader.number(deed.where(), "at", at[0]));
            settings.put("yMm", DeedReader.number(deed.where(), "at", at[1]));
        }
        if (!deed.word("photo").isEmpty()) {
            PhotoFile photo = PhotoFile.look(deed.where(), Path.of(deed.word("photo")));
            settings.put("photo", "photos/" + photo.sha256() + "." + photo.extension());
            settings.put("photoSha256", photo.sha256());
            photos.add(photo);
        }
    }

    private String corrected(Deed deed) throws IOException {
        if (known == null) {
            known = new HashMap<>();
            for (RecordBook book : List.of(folder.records(), folder.studioFolder().records())) {
                try (RecordReading reading = book.read()) {
                    reading.forEach(line -> known.put(line.id(), line.kind()), Work.UNWATCHED);
                }
            }
        }
        String id = deed.word("corrects");
        String kind = known.get(id);
        if (kind == null) {
            throw new Refusal(deed.where(), "there is no record " + id + " to correct", "copy the id of the record from trace or from the record file");
        }
        if (!kind.equals(deed.kind())) {
            throw new Refusal(deed.where(), "the record " + id + " is of kind " + kind + ", not " + deed.kind(), "correct it by a " + kind);
        }
        return id;
    }

    private void known(Deed deed, String column, List<String> catalogue) {
        String word = deed.word(column);
        if (!word.isEmpty() && !catalogue.contains(word)) {
            warnings.add(Problem.of("word-not-in-catalogue", Severity.NOTE, deed.where(), "'" + word + "' is no " + column + " of the catalogue ("
                    + String.join(", ", catalogue) + "); it is taken in as it stands"));
        }
    }

    private void ids(Deed deed, Map<String, Object> settings, List<String> used) throws IOException {
        Window window = window(deed);
        settings.put("windowId", window.getId());
        if (deed.word("piece").isEmpty()) {
            return;
        }
        Piece piece = piece(deed, window);
        settings.put("pieceId", piece.getId());
        settings.put("pieceIds", List.of(piece.getId()));
        used.add(piece.getId());
        if (!deed.word("layer").isEmpty()) {
            DesignLayer layer = layer(deed, piece.getPanel());
            settings.put("layerId", layer.getId());
            used.add(layer.getId());
        }
    }

    private Window window(Deed deed) throws IOException {
        String name = deed.word("window");
        Optional<Window> found = folder.window(name);
        if (found.isPresent()) {
            return found.get();
        }
        if (!create) {
            throw new Refusal(deed.where(), "there is no window " + name, "take one of " + String.join(", ", folder.windowNames()) + ", or give --create");
        }
        created.add("window " + name);
        return folder.addWindow(name, "");
    }

    private Piece piece(Deed deed, Window window) {
        String word = deed.word("piece");
        int number;
        try {
            number = Integer.parseInt(word);
        } catch (NumberFormatException e) {
            throw new Refusal(deed.where(), "piece '" + word + "' is no number", "write the number that stands on the cutline", e);
        }
        for (Panel panel : window.getPanels()) {
            for (Piece piece : panel.getPieces()) {
                if (piece.getNumber() == number) {
                    return piece;
                }
            }
        }
        if (!create || number < 1) {
            throw new Refusal(deed.where(), "window " + window.getName() + " has no piece " + number, "mend the number, or give --create");
        }
        Piece piece = CommissionFactory.eINSTANCE.createPiece();
        piece.setNumber(number);
        panel(window).getPieces().add(piece);
        created.add("piece " + window.getName() + "/" + number);
        return piece;
    }

    private static Panel panel(Window window) {
        if (window.getPanels().isEmpty()) {
            window.getPanels().add(CommissionFactory.eINSTANCE.createPanel());
        }
        return window.getPanels().get(0);
    }

    private DesignLayer layer(Deed deed, Panel panel) {
        String name = deed.word("layer");
        for (DesignLayer layer : panel.getLayers()) {
            if (name.equalsIgnoreCase(layer.getName())) {
                return layer;
            }
        }
        if (!create) {
            throw new Refusal(deed.where(), "window " + panel.getWindow().getName() + " has no layer '" + name + "'", "take one of "
                    + String.join(", ", panel.getLayers().stream().map(DesignLayer::getName).toList()) + ", or give --create");
        }
        DesignLayer layer = CommissionFactory.eINSTANCE.createDesignLayer();
        layer.setName(name);
        layer.setByHand(true); // an old notebook tells what was printed, not from which drawing
        LayerRole role = LayerRole.get(name.toLowerCase(Locale.ROOT));
        layer.setRole(role == null || role == LayerRole.CUTLINE ? LayerRole.MATT : role);
        panel.getLayers().add(layer);
        created.add("layer " + panel.getWindow().getName() + " " + name);
        return layer;
    }
}
