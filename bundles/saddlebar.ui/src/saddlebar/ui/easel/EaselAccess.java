package saddlebar.ui.easel;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;

import saddlebar.ui.Messages;

/** Tells a screen reader what lies on the Easel and which piece is chosen. */
final class EaselAccess {
    private final EaselCanvas easel;

    EaselAccess(EaselCanvas easel) {
        this.easel = easel;
        easel.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = name();
            }

            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = description();
            }
        });
        easel.getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = ACC.ROLE_CANVAS;
            }

            @Override
            public void getValue(AccessibleControlEvent event) {
                event.result = description();
            }
        });
    }

    void changed() {
        easel.getAccessible().sendEvent(ACC.EVENT_NAME_CHANGED, null);
    }

    void chosen() {
        easel.getAccessible().sendEvent(ACC.EVENT_DESCRIPTION_CHANGED, null);
        easel.getAccessible().sendEvent(ACC.EVENT_VALUE_CHANGED, null);
    }

    private String name() {
        return easel.scene().map(scene -> NLS.bind(Messages.Easel_accessibleName, scene.name(), scene.pieces().size()))
                .orElse(Messages.Easel_accessibleEmpty);
    }

    private String description() {
        return easel.chosen().map(piece -> {
            String glass = piece.glass(easel.look().colourway()).name();
            return NLS.bind(Messages.Easel_accessiblePiece, piece.number(), glass.isEmpty() ? Messages.Glass_unchosen : glass);
        }).orElse("");
    }
}
