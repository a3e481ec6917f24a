package saddlebar.ui.begin;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** File, New Commission. */
public final class NewHandler extends AbstractHandler {
    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        new BeginningCommission(HandlerUtil.getActiveWorkbenchWindowChecked(event)).choose();
        return null;
    }
}
