package saddlebar.ui.bench;

import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.handlers.HandlerUtil;

import saddlebar.ui.Messages;
import saddlebar.ui.easel.EaselCanvas;
import saddlebar.ui.easel.PieceWalk.Way;
import saddlebar.production.light.ScenePiece;
import saddlebar.ui.easel.Viewport;

/** Looks at the Easel another way; which way, {@code plugin.xml} says after the colon of the class name. */
public final class EaselHandler extends AbstractHandler implements IExecutableExtension {
    /** What can be done. */
    public enum Deed {
        FIT, TRUE_SIZE, NEARER, FARTHER, NEXT_PIECE, PREVIOUS_PIECE, GO_TO_PIECE, CHOOSE_NONE
    }

    private Deed deed = Deed.FIT;

    @Override
    public void setInitializationData(IConfigurationElement config, String property, Object data) {
        deed = Deed.valueOf((String) data);
    }

    @Override
    public Object execute(ExecutionEvent event) {
        if (HandlerUtil.getActiveEditor(event) instanceof EaselEditor editor) {
            EaselCanvas easel = editor.easel();
            switch (deed) {
                case FIT -> easel.fit();
                case TRUE_SIZE -> easel.showTrueSize();
                case NEARER -> easel.zoom(Viewport.STEP);
                case FARTHER -> easel.zoom(1 / Viewport.STEP);
                case NEXT_PIECE -> easel.walk(Way.NEXT);
                case PREVIOUS_PIECE -> easel.walk(Way.PREVIOUS);
                case GO_TO_PIECE -> goToPiece(event, easel);
                case CHOOSE_NONE -> easel.chooseHere(Optional.empty(), false);
                default -> throw new IllegalStateException("nobody knows how to " + deed);
            }
        }
        return null;
    }

    private static void goToPiece(ExecutionEvent event, EaselCanvas easel) {
        InputDialog dialog = new InputDialog(HandlerUtil.getActiveShell(event), Messages.GoToPiece_title, Messages.GoToPiece_message, "",
                number -> number.isEmpty() || find(easel, number).isPresent() ? null : NLS.bind(Messages.GoToPiece_none, number));
        if (dialog.open() == Window.OK && !dialog.getValue().isBlank()) {
            easel.chooseHere(find(easel, dialog.getValue()), true);
            easel.setFocus();
        }
    }

    private static Optional<ScenePiece> find(EaselCanvas easel, String number) {
        return easel.scene().stream().flatMap(scene -> scene.pieces().stream()).filter(piece -> piece.number().equals(number.strip())).findFirst();
    }
}
