package saddlebar.ui.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;

import saddlebar.cartoon.NarrowestWidth;
import saddlebar.model.commission.ArtworkReference;
import saddlebar.model.commission.Client;
import saddlebar.model.commission.Commission;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.Face;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.JoinKind;
import saddlebar.model.commission.JoinRule;
import saddlebar.model.commission.MadeFile;
import saddlebar.model.commission.Named;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.ScreenFrame;
import saddlebar.model.commission.Sheet;
import saddlebar.model.commission.Stencil;
import saddlebar.model.commission.StencilRecipe;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.production.make.Outlines;
import saddlebar.production.pieces.PieceMarks;
import saddlebar.production.pieces.PieceNumbering;
import saddlebar.ui.Lengths;
import saddlebar.ui.Messages;
import saddlebar.ui.bench.DrawnPiece;
import saddlebar.ui.colourway.ColourWords;
import saddlebar.ui.desk.Edits;
import saddlebar.ui.tree.MakingStates;
import saddlebar.ui.tree.MakingWords;
import saddlebar.ui.tree.NodeWords;

/** Says what is known of a thing, as rows. Edits go through the undoable way; without it all rows are for looking only. */
public final class RowsOf {
    private final Lengths lengths;
    private final Optional<Edits> edits;
    private final MakingStates states;
    private final Supplier<Set<String>> recorded;

    /** As {@link #RowsOf(Lengths, Optional, MakingStates, Supplier)} where no record names a piece. */
    public RowsOf(Lengths lengths, Optional<Edits> edits, MakingStates states) {
        this(lengths, edits, states, Set::of);
    }

    /**
     * @param edits    takes changes; empty while nothing may be changed
     * @param recorded ids of pieces that records name; asked when a number is given by hand
     */
    public RowsOf(Lengths lengths, Optional<Edits> edits, MakingStates states, Supplier<Set<String>> recorded) {
        this.recorded = recorded;
        this.lengths = lengths;
        this.edits = edits;
        this.states = states;
    }

    /** What the thing is. */
    public List<Row> general(Object thing) {
        if (thing instanceof Commission commission) {
            return commission(commission);
        }
        if (thing instanceof Window window) {
            return window(window);
        }
        if (thing instanceof Panel panel) {
            return panel(panel);
        }
        if (thing instanceof DesignLayer layer) {
            return layer(layer);
        }
        if (thing instanceof Piece piece) {
            return piece(piece);
        }
        if (thing instanceof Stencil stencil) {
            return List.of(Row.fact(Messages.Property_size, lengths.size(stencil.getWidthMm(), stencil.getHeightMm())),
                    Row.fact(Messages.Property_frame, stencil.getFrame() == null ? "" : stencil.getFrame().getName()),
                    Row.fact(Messages.Property_prints, String.valueOf(stencil.getPrints())),
                    Row.fact(Messages.Property_pieces, stencil.getPieces().stream().filter(p -> p.getPiece() != null)
                            .map(p -> String.valueOf(p.getPiece().getNumber())).collect(Collectors.joining(Messages.List_comma))));
        }
        if (thing instanceof Sheet sheet) {
            return List.of(Row.fact(Messages.Property_paper, sheet.getPaper()),
                    Row.fact(Messages.Property_size, lengths.size(sheet.getWidthMm(), sheet.getHeightMm())),
                    Row.fact(Messages.Property_stencils, String.valueOf(sheet.getPlacements().size())));
        }
        if (thing instanceof DrawnPiece drawn) {
            return List.of(Row.fact(Messages.Property_number, drawn.piece().number()),
                    Row.fact(Messages.Property_size, lengths.size(drawn.piece().contour().bounds().widthMm(), drawn.piece().contour().bounds().heightMm())),
                    Row.fact(Messages.Property_area, lengths.area(drawn.piece().contour().areaMm2())),
                    Row.fact(Messages.Property_state, Messages.State_notMade));
        }
        if (thing instanceof ChosenThings chosen) {
            return several(chosen.things());
        }
        return thing instanceof Named named ? named(named) : List.of();
    }

    private List<Row> several(List<Object> things) {
        if (things.isEmpty()) {
            return List.of(Row.fact(ColourWords.Chosen_label, ColourWords.Chosen_none));
        }
        List<Row> rows = new ArrayList<>();
        rows.add(Row.fact(ColourWords.Chosen_label, NLS.bind(ColourWords.Chosen_many, things.size())));
        List<Piece> pieces = things.stream().filter(Piece.class::isInstance).map(Piece.class::cast).toList();
        if (pieces.size() == things.size()) {
            rows.add(Row.fact(Messages.Property_pieces, pieces.stream().map(Piece::getNumber).sorted().map(String::valueOf)
                    .collect(Collectors.joining(Messages.List_comma))));
            rows.add(Row.fact(Messages.Property_area, lengths.area(pieces.stream().mapToDouble(Piece::getNetAreaMm2).sum())));
        }
        return rows;
    }

    /** How it is made and what has been made of it. */
    public List<Row> making(Object thing) {
        if (thing instanceof DesignLayer layer && layer.getRecipe() != null) {
            return recipe(layer.getRecipe());
        }
        if (thing instanceof Stencil stencil) {
            List<Row> rows = new ArrayList<>();
            rows.add(Row.fact(Messages.Property_pixels, stencil.getWidthPx() + " × " + stencil.getHeightPx()));
            rows.add(Row.fact(Messages.Property_coverage, stencil.getCoverage() == null ? "" : percent(stencil.getCoverage())));
            rows.add(Row.fact(Messages.Property_tooFine, String.valueOf(stencil.getTooFine())));
            rows.add(Row.fact(Messages.Property_bridgesLost, String.valueOf(stencil.getBridgesLost())));
            rows.addAll(files(stencil.getFiles()));
            rows.addAll(FileRecipe.rows(stencil));
            return rows;
        }
        if (thing instanceof Sheet sheet) {
            return files(sheet.getFiles());
        }
        if (thing instanceof Panel panel) {
            List<Row> rows = new ArrayList<>(panel.getArtwork().stream().map(RowsOf::artwork).toList());
            panel.getMendings().forEach(mend -> rows.add(Row.fact(NLS.bind(Messages.Property_mendedAt, lengths.plain(mend.getXMm()),
                    lengths.words(mend.getYMm())), mend.getWords())));
            return rows;
        }
        return List.of();
    }

    private List<Row> commission(Commission commission) {
        String client = commission.getClient() == null ? "" : commission.getClient().getName();
        return List.of(text(Messages.Property_title, Messages.Edit_commissionTitle, commission, CommissionPackage.Literals.COMMISSION__TITLE, 1),
                text(Messages.Property_number, Messages.Edit_commissionNumber, commission, CommissionPackage.Literals.COMMISSION__NUMBER, 1),
                row(Messages.Property_client, client, name -> edit(Messages.Edit_client, commission, () -> setClient(commission, name)), 1),
                text(Messages.Property_note, Messages.Edit_note, commission, CommissionPackage.Literals.COMMISSION__NOTE, 3),
                Row.fact(Messages.Property_windows, String.valueOf(commission.getWindows().size())));
    }

    private static void setClient(Commission commission, String name) {
        if (name.isBlank() && commission.getClient() == null) {
            return;
        }
        Client client = commission.getClient();
        if (client == null) {
            client = CommissionFactory.eINSTANCE.createClient();
            commission.setClient(client);
        }
        client.setName(name);
    }

    private List<Row> window(Window window) {
        List<Row> rows = new ArrayList<>();
        rows.add(Row.fact(Messages.Property_name, window.getName()));
        rows.add(text(Messages.Property_title, Messages.Edit_windowTitle, window, CommissionPackage.Literals.WINDOW__TITLE, 1));
        rows.add(text(Messages.Property_note, Messages.Edit_note, window, CommissionPackage.Literals.WINDOW__NOTE, 3));
        if (window.getOpening() != null) {
            rows.add(Row.fact(Messages.Property_sightSize, lengths.size(window.getOpening().getSightWidthMm(), window.getOpening().getSightHeightMm())));
        }
        rows.add(Row.fact(Messages.Property_colourways, window.getColourways().stream().map(Named::getName).collect(Collectors.joining(Messages.List_comma))));
        if (window.getChosen() != null) {
            rows.add(Row.fact(Messages.Property_chosenColourway, window.getChosen().getName()));
        }
        return rows;
    }

    private List<Row> panel(Panel panel) {
        List<Row> rows = new ArrayList<>();
        rows.add(text(Messages.Property_name, Messages.Edit_panelName, panel, CommissionPackage.Literals.NAMED__NAME, 1));
        rows.add(text(Messages.Property_note, Messages.Edit_note, panel, CommissionPackage.Literals.NAMED__NOTE, 3));
        long pieces = panel.getPieces().stream().filter(piece -> !piece.isRetired()).count();
        rows.add(Row.fact(Messages.Property_pieces, String.valueOf(pieces)));
        double area = panel.getPieces().stream().filter(piece -> !piece.isRetired()).mapToDouble(Piece::getNetAreaMm2).sum();
        rows.add(Row.fact(Messages.Property_glassArea, lengths.area(area)));
        rows.add(measure(Messages.Property_edgeAllowance, Messages.Edit_edgeAllowance, panel, CommissionPackage.Literals.PANEL__EDGE_ALLOWANCE_MM, true, 20));
        for (JoinRule rule : panel.getJoinRules()) {
            rows.add(Row.fact(Messages.Property_joinRule, joint(rule)));
        }
        return rows;
    }

    private String joint(JoinRule rule) {
        String where = rule.getFirst() == null
                ? rule.getArtLayer()
                : rule.getSecond() == null
                        ? String.valueOf(rule.getFirst().getNumber())
                        : rule.getFirst().getNumber() + " / " + rule.getSecond().getNumber();
        String how = rule.getJoin() == JoinKind.LEAD ? Messages.Join_lead : Messages.Join_foil;
        return rule.getGapMm() == null ? where + ": " + how : where + ": " + how + ", " + lengths.words(rule.getGapMm());
    }

    private List<Row> layer(DesignLayer layer) {
        return List.of(text(Messages.Property_name, Messages.Edit_layerName, layer, CommissionPackage.Literals.NAMED__NAME, 1),
                Row.fact(Messages.Property_role, NodeWords.role(layer.getRole())), Row.fact(Messages.Property_artLayer, layer.getArtLayer()),
                Row.fact(Messages.Property_paint, layer.getPaint() == null ? Messages.State_noPaint : layer.getPaint().getName()),
                Row.fact(Messages.Property_face, layer.getFace() == Face.EXTERIOR ? Messages.Face_exterior : Messages.Face_interior),
                Row.fact(Messages.Property_firingOrder, String.valueOf(layer.getFiringOrder())),
                Row.fact(Messages.Property_state, MakingWords.of(states.of(layer))),
                text(Messages.Property_note, Messages.Edit_note, layer, CommissionPackage.Literals.NAMED__NOTE, 3));
    }

    private List<Row> piece(Piece piece) {
        List<Row> rows = new ArrayList<>();
        rows.add(row(Messages.Property_number, String.valueOf(piece.getNumber()), typed -> number(piece, typed), 1));
        if (piece.isLocked()) {
            rows.add(Row.fact(Messages.Pieces_lock, Messages.Pieces_locked));
        }
        piece.getChoices().stream().filter(choice -> choice.getColourway() != null && choice.getGlass() != null)
                .forEach(choice -> rows.add(Row.fact(NLS.bind(Messages.Property_glassIn, choice.getColourway().getName()), choice.getGlass().getName())));
        if (piece.getChoices().isEmpty()) {
            rows.add(Row.fact(Messages.Property_glass, piece.getGlass() == null ? Messages.Glass_unchosen : piece.getGlass().getName()));
        }
        if (piece.getNet() != null && !piece.getNet().isEmpty()) {
            double[] box = piece.getNet().boundsMm();
            rows.add(Row.fact(Messages.Property_size, lengths.size(box[2] - box[0], box[3] - box[1])));
        }
        rows.add(Row.fact(Messages.Property_area, lengths.area(piece.getNetAreaMm2())));
        if (piece.getFace() != null && !piece.getFace().isEmpty()) {
            rows.add(Row.fact(Messages.Property_narrowest, lengths.words(NarrowestWidth.of(Outlines.polygon(piece.getFace())).widthMm())));
        }
        rows.add(Row.fact(Messages.Property_perimeter, lengths.words(piece.getPerimeterMm())));
        rows.add(Row.fact(Messages.Property_neighbours, piece.getNeighbours().stream().map(Piece::getNumber).sorted().map(String::valueOf)
                .collect(Collectors.joining(Messages.List_comma))));
        rows.add(Row.fact(Messages.Property_state, MakingWords.of(states.of(piece))));
        if (!piece.getCameFrom().isEmpty()) {
            rows.add(Row.fact(Messages.Property_cameFrom, piece.getCameFrom().stream().map(Piece::getNumber).sorted().map(String::valueOf)
                    .collect(Collectors.joining(Messages.List_comma))));
        }
        rows.add(row(Messages.Pieces_group, piece.getGroup(), typed -> edit(Messages.Edit_group, piece, () -> piece.setGroup(PieceMarks.group(typed))), 1));
        rows.add(text(Messages.Property_note, Messages.Edit_note, piece, CommissionPackage.Literals.PIECE__NOTE, 3));
        return rows;
    }

    /** @throws Refusal if it is no number, or one that the piece cannot have */
    private void number(Piece piece, String typed) {
        if (!typed.strip().matches("\\d{1,6}")) {
            throw new Refusal(typed.strip(), Messages.Pieces_noNumber, Messages.Pieces_noNumberRemedy);
        }
        Set<String> named = recorded.get();
        edit(Messages.Edit_number, piece, () -> PieceNumbering.byHand(piece, Integer.parseInt(typed.strip()), named));
    }

    private List<Row> recipe(StencilRecipe recipe) {
        List<Row> rows = new ArrayList<>();
        rows.add(Row.fact(Messages.Property_method, recipe.getMethod()));
        rows.add(Row.fact(Messages.Property_dpi, String.valueOf(recipe.getDpi())));
        rows.add(Row.fact(Messages.Property_lpi, String.valueOf(recipe.getLpi())));
        rows.add(Row.fact(Messages.Property_angle, recipe.getAngleDeg() + "°"));
        rows.add(Row.fact(Messages.Property_dot, recipe.getDot()));
        rows.add(Row.fact(Messages.Property_process, recipe.getProcessKey()));
        return rows;
    }

    private static Row artwork(ArtworkReference reference) {
        return Row.fact(NLS.bind(Messages.Property_revision, reference.getRevision()), reference.getFile());
    }

    private static List<Row> files(List<MadeFile> files) {
        return files.stream().map(file -> Row.fact(file.getWhat(), file.getFile())).toList();
    }

    private List<Row> named(Named thing) {
        List<Row> rows = new ArrayList<>();
        rows.add(Row.fact(Messages.Property_name, thing.getName()));
        if (thing instanceof GlassStock glass) {
            rows.add(Row.fact(Messages.Property_family, glass.getFamily()));
            rows.add(Row.fact(Messages.Property_thickness, lengths.words(glass.getThicknessMm())));
            rows.addAll(limits(glass));
        } else if (thing instanceof ScreenFrame frame) {
            rows.add(Row.fact(Messages.Property_size, lengths.size(frame.getImageWidthMm(), frame.getImageHeightMm())));
            rows.add(Row.fact(Messages.Property_mesh, frame.getMesh() == null ? "" : frame.getMesh().getName()));
        }
        rows.add(Row.fact(Messages.Property_note, thing.getNote()));
        return rows;
    }

    /** What is hard to cut from a glass; empty is common practice. */
    private List<Row> limits(GlassStock glass) {
        return List.of(
                measure(Messages.Property_limitNarrow, Messages.Edit_limit, glass, CommissionPackage.Literals.GLASS_STOCK__NARROW_MM, true, 100),
                measure(Messages.Property_limitNeedle, Messages.Edit_limit, glass, CommissionPackage.Literals.GLASS_STOCK__NEEDLE_DEG, false, 90),
                measure(Messages.Property_limitInside, Messages.Edit_limit, glass, CommissionPackage.Literals.GLASS_STOCK__INSIDE_CURVE, false, 10),
                measure(Messages.Property_limitRadius, Messages.Edit_limit, glass, CommissionPackage.Literals.GLASS_STOCK__INSIDE_RADIUS_MM, true, 100));
    }

    /** A number that may be left out, a length with its unit or a plain one. */
    private Row measure(String label, String step, EObject thing, EAttribute attribute, boolean isLength, double most) {
        Double now = (Double) thing.eGet(attribute);
        String shown = now == null ? "" : isLength ? lengths.words(now) : String.valueOf(now);
        return row(label, shown, typed -> {
            Double wanted = typed.isBlank() ? null : number(label, typed.strip(), isLength, most);
            edit(step, thing, () -> thing.eSet(attribute, wanted));
        }, 1);
    }

    /** @throws Refusal if it is no number from 0 to the most */
    private double number(String label, String typed, boolean isLength, double most) {
        OptionalDouble found = OptionalDouble.empty();
        if (isLength) {
            found = lengths.typed().mm(typed);
        } else if (typed.matches("\\d{1,4}([.,]\\d{1,6})?")) {
            found = OptionalDouble.of(Double.parseDouble(typed.replace(',', '.')));
        }
        if (found.isEmpty() || found.getAsDouble() > most) {
            throw new Refusal(label, NLS.bind(Messages.Property_noNumber, typed), NLS.bind(Messages.Property_numberRemedy, isLength
                    ? lengths.words(most)
                    : String.valueOf((int) most)));
        }
        return found.getAsDouble();
    }

    private Row text(String label, String step, EObject thing, EAttribute attribute, int lines) {
        String now = (String) thing.eGet(attribute);
        return row(label, now, value -> edit(step, thing, () -> thing.eSet(attribute, value.isEmpty() ? null : value)), lines);
    }

    private Row row(String label, String value, Consumer<String> change, int lines) {
        return new Row(label, value, edits.map(open -> change), lines);
    }

    private void edit(String step, EObject thing, Runnable change) {
        edits.orElseThrow().perform(step, thing, change);
    }

    private static String percent(double share) {
        return Math.round(share * 1000) / 10.0 + " %";
    }
}
