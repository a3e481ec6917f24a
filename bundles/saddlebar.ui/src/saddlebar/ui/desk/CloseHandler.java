package saddlebar.ui.desk;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** File, Close Commission. */
public final class CloseHandler extends AbstractHandler {
    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        new CommissionOpening(HandlerUtil.getActiveWorkbenchWindowChecked(event)).close();
        return null;
    }
}
