package saddlebar.ui.opening;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;

import saddlebar.cartoon.opening.BarRule;
import saddlebar.cartoon.opening.OpeningMeasures;
import saddlebar.model.commission.Window;
import saddlebar.production.opening.OpeningBook;
import saddlebar.ui.Messages;
import saddlebar.ui.StudioPreferences;
import saddlebar.ui.TypedLength;
import saddlebar.ui.bench.EaselEditor;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;

/** The opening of the window on the Easel. */
public final class OpeningHandler extends AbstractHandler {
    @Override
    public Object execute(ExecutionEvent event) {
        CommissionDesk desk = HandlerUtil.getActiveWorkbenchWindow(event).getService(CommissionDesk.class);
        if (HandlerUtil.getActiveEditor(event) instanceof EaselEditor editor && desk.canEdit()) {
            OpenCommission open = desk.commission().orElseThrow();
            open.window(editor.window().windowName()).ifPresent(window -> ask(HandlerUtil.getActiveShell(event), open, window));
        }
        return null;
    }

    private static void ask(Shell shell, OpenCommission open, Window window) {
        OpeningDialog dialog = new OpeningDialog(shell, window.getName(), OpeningBook.measures(window, BarRule.EXTERIOR), StudioPreferences.lengths(),
                new TypedLength(StudioPreferences.unit()));
        if (dialog.open() == org.eclipse.jface.window.Window.OK) {
            OpeningMeasures measures = dialog.measures();
            open.edits().perform(NLS.bind(Messages.Opening_step, window.getName()), window,
                    () -> OpeningBook.enter(window, measures, OpeningForm.plan(measures)));
        }
    }
}
