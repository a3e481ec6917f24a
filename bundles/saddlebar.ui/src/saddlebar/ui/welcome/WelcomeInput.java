package saddlebar.ui.welcome;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

import saddlebar.ui.Messages;

/** There is but one welcome. */
public record WelcomeInput() implements IEditorInput {
    @Override
    public boolean exists() {
        return true;
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return ImageDescriptor.getMissingImageDescriptor();
    }

    @Override
    public String getName() {
        return Messages.Welcome_name;
    }

    @Override
    public IPersistableElement getPersistable() {
        return null; // shown again if it is needed again
    }

    @Override
    public String getToolTipText() {
        return Messages.Welcome_name;
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return null;
    }
}
