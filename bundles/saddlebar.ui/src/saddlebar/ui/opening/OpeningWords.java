package saddlebar.ui.opening;

import saddlebar.cartoon.opening.BarRule;
import saddlebar.cartoon.opening.OpeningKinds;
import saddlebar.ui.Messages;

/** Words for shapes and rules. */
final class OpeningWords {
    private OpeningWords() {
    }

    static String of(OpeningKinds kind) {
        return switch (kind) {
            case RECTANGLE -> Messages.Opening_rectangle;
            case SEGMENTAL -> Messages.Opening_segmental;
            case SEMICIRCULAR -> Messages.Opening_semicircular;
            case EQUILATERAL -> Messages.Opening_equilateral;
            case POINTED -> Messages.Opening_pointed;
            case THREE_CENTRED -> Messages.Opening_threeCentred;
            case OGEE -> Messages.Opening_ogee;
            case ROUNDEL -> Messages.Opening_roundel;
            case TREFOIL -> Messages.Opening_trefoil;
            case QUATREFOIL -> Messages.Opening_quatrefoil;
            case CINQUEFOIL -> Messages.Opening_cinquefoil;
        };
    }

    static String of(BarRule rule) {
        return switch (rule) {
            case EXTERIOR -> Messages.Opening_exterior;
            case DOOR -> Messages.Opening_door;
            case INTERIOR -> Messages.Opening_interior;
        };
    }
}
