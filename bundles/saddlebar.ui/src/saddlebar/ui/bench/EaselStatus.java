package saddlebar.ui.bench;

import java.util.Optional;

import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;

import saddlebar.ui.Lengths;
import saddlebar.ui.Messages;
import saddlebar.ui.StudioPreferences;
import saddlebar.ui.easel.EaselCanvas;
import saddlebar.production.light.GlassLook;
import saddlebar.production.light.ScenePiece;

/** The status line under the Easel: scale, the place under the pointer, the chosen piece. */
final class EaselStatus {
    private final IStatusLineManager line;
    private final EaselCanvas easel;
    private Optional<double[]> pointerMm = Optional.empty();

    EaselStatus(EaselEditor editor, EaselCanvas easel) {
        this.line = editor.getEditorSite().getActionBars().getStatusLineManager();
        this.easel = easel;
        easel.whenViewChanges(this::update);
        easel.whenLookChanges(this::update);
        easel.whenChosen(piece -> update());
        easel.addListener(SWT.MouseMove, event -> {
            pointerMm = Optional.of(easel.placeMm(event.x, event.y));
            update();
        });
        easel.addListener(SWT.MouseExit, event -> {
            pointerMm = Optional.empty();
            update();
        });
    }

    private void update() {
        if (easel.scene().isEmpty()) {
            line.setMessage(null);
            return;
        }
        Lengths lengths = StudioPreferences.lengths();
        StringBuilder words = new StringBuilder(NLS.bind(Messages.Easel_scale, Math.round(easel.magnification() * 100)));
        pointerMm.ifPresent(place -> words.append("   ").append(NLS.bind(Messages.Easel_place, lengths.plain(place[0]), lengths.words(place[1]))));
        easel.chosen().ifPresent(piece -> words.append("   ").append(piece(piece)));
        line.setMessage(words.toString());
    }

    private String piece(ScenePiece piece) {
        GlassLook glass = piece.glass(easel.look().colourway());
        return NLS.bind(Messages.Easel_accessiblePiece, piece.number(), glass.name().isEmpty() ? Messages.Glass_unchosen : glass.name());
    }
}
