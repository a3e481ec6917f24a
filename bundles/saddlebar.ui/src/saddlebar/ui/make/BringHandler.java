package saddlebar.ui.make;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** File, Bring Artwork. */
public final class BringHandler extends AbstractHandler {
    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        new BringingArtwork(HandlerUtil.getActiveWorkbenchWindowChecked(event)).choose();
        return null;
    }
}
