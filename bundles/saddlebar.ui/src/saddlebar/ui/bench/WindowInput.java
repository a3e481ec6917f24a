package saddlebar.ui.bench;

import java.nio.file.Path;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IPersistableElement;

import saddlebar.ui.Ids;

/**
 * Names a window that lies on the Easel.
 *
 * @param commission folder of its commission
 * @param windowName its name there, such as W01
 */
public record WindowInput(Path commission, String windowName) implements IEditorInput, IPersistableElement {
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
        return windowName;
    }

    @Override
    public IPersistableElement getPersistable() {
        return this;
    }

    @Override
    public String getToolTipText() {
        return commission.getFileName() + ": " + windowName;
    }

    @Override
    public String getFactoryId() {
        return Ids.WINDOW_INPUT_FACTORY;
    }

    @Override
    public void saveState(IMemento memento) {
        memento.putString(WindowInputFactory.COMMISSION, commission.toString());
        memento.putString(WindowInputFactory.WINDOW, windowName);
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return null;
    }
}
