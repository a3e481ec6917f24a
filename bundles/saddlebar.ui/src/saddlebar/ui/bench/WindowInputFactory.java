package saddlebar.ui.bench;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;

import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.ui.IElementFactory;
import org.eclipse.ui.IMemento;

/** Remembers over a restart which windows lay on Easels. */
public final class WindowInputFactory implements IElementFactory {
    static final String COMMISSION = "commission";
    static final String WINDOW = "window";

    @Override
    public IAdaptable createElement(IMemento memento) {
        String commission = memento.getString(COMMISSION);
        String window = memento.getString(WINDOW);
        if (commission == null || window == null) {
            return null;
        }
        try {
            return new WindowInput(Path.of(commission), window);
        } catch (InvalidPathException e) {
            return null; // written on another system
        }
    }
}
