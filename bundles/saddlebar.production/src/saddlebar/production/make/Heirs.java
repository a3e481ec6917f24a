package saddlebar.production.make;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import saddlebar.cartoon.Became;
import saddlebar.cartoon.Revision;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.GlassChoice;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;

/**
 * What pieces take over from pieces of an earlier revision: the former piece itself, under whose id its records stand, its note, its group, and its
 * glass where nobody has chosen one.
 */
public final class Heirs {
    private Heirs() {
    }

    /** Ties new pieces to the former ones; called when the pieces of the revision stand in the model. */
    static void enter(Panel panel, Revision revision) {
        for (Became became : revision.became()) {
            if (became.inherits()) {
                Optional<Piece> former = piece(panel, became.before(), true);
                Optional<Piece> heir = piece(panel, became.now(), false);
                if (former.isPresent() && heir.isPresent() && former.get() != heir.get() && !former.get().getCameFrom().contains(heir.get())
                        && !heir.get().getCameFrom().contains(former.get())) {
                    heir.get().getCameFrom().add(former.get());
                    takeOver(heir.get(), former.get());
                }
            }
        }
    }

    private static Optional<Piece> piece(Panel panel, int number, boolean alsoRetired) {
        return panel.getPieces().stream().filter(piece -> piece.getNumber() == number && (alsoRetired || !piece.isRetired()))
                .min(Comparator.comparing(Piece::isRetired));
    }

    private static void takeOver(Piece heir, Piece former) {
        if (heir.getGroup() == null) {
            heir.setGroup(former.getGroup());
        }
        String note = former.getNote();
        if (note != null && !note.isBlank()) {
            String carried = "Piece " + former.getNumber() + ": " + note;
            if (heir.getNote() == null || heir.getNote().isBlank()) {
                heir.setNote(carried);
            } else if (!heir.getNote().contains(carried)) {
                heir.setNote(heir.getNote() + "\n" + carried);
            }
        }
    }

    /** For pieces without a glass: that of the former piece, in each colourway. Called after the drawing had its say. */
    public static void chooseGlass(Panel panel) {
        for (Piece heir : panel.getPieces()) {
            if (!heir.isRetired()) {
                for (Piece former : heir.getCameFrom()) {
                    chooseGlass(heir, former);
                }
            }
        }
    }

    private static void chooseGlass(Piece heir, Piece former) {
        if (heir.getGlass() == null) {
            heir.setGlass(former.getGlass());
        }
        for (GlassChoice choice : List.copyOf(former.getChoices())) {
            boolean known = heir.getChoices().stream().anyMatch(own -> own.getColourway() == choice.getColourway());
            if (!known && choice.getColourway() != null && !choice.getColourway().isApproved()) {
                GlassChoice same = CommissionFactory.eINSTANCE.createGlassChoice();
                same.setPiece(heir);
                same.setGlass(choice.getGlass());
                choice.getColourway().getChoices().add(same);
            }
        }
    }
}
