package saddlebar.ui.tracing;

import saddlebar.trace.lineage.ExposedPiece;
import saddlebar.trace.suspect.Standing;

/** Kinds of records, states and verdicts in the language of the desktop. */
final class KindWords {
    private KindWords() {
    }

    static String of(String kind) {
        return switch (kind) {
            case "bring" -> Messages.Kind_bring;
            case "pieces" -> Messages.Kind_pieces;
            case "stencil" -> Messages.Kind_stencil;
            case "sheet" -> Messages.Kind_sheet;
            case "fuse" -> Messages.Kind_fuse;
            case "reclaim" -> Messages.Kind_reclaim;
            case "mix" -> Messages.Kind_mix;
            case "pull" -> Messages.Kind_pull;
            case "fire" -> Messages.Kind_fire;
            case "glaze" -> Messages.Kind_glaze;
            case "fix" -> Messages.Kind_fix;
            case "defect" -> Messages.Kind_defect;
            case "remake" -> Messages.Kind_remake;
            default -> kind;
        };
    }

    static String of(ExposedPiece.State state) {
        return switch (state) {
            case PRINTED -> Messages.State_printed;
            case FIRED -> Messages.State_fired;
            case GLAZED -> Messages.State_glazed;
            case FIXED -> Messages.State_fixed;
            case TO_REMAKE -> Messages.State_toRemake;
            case REMADE -> Messages.State_remade;
        };
    }

    static String of(Standing standing) {
        return switch (standing) {
            case LEADING -> Messages.Follows_leading;
            case ALSO -> Messages.Follows_also;
            case EXPLAINED -> Messages.Follows_explained;
            case INSEPARABLE -> Messages.Follows_inseparable;
            case CLEAR -> Messages.Follows_clear;
            case TOO_FEW -> Messages.Follows_tooFew;
        };
    }
}
