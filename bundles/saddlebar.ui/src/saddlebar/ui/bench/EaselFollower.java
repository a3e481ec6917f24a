package saddlebar.ui.bench;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;

import saddlebar.ui.colourway.SideBySideEditor;

/** Tells a view which Easel is in front, and when another scene is on it. */
public final class EaselFollower implements IPartListener2 {
    private final IWorkbenchPage page;
    private final Consumer<Optional<EaselEditor>> follow;
    private Optional<EaselEditor> front = Optional.empty();

    public EaselFollower(IWorkbenchPage page, Consumer<Optional<EaselEditor>> follow) {
        this.page = page;
        this.follow = follow;
        page.addPartListener(this);
        update();
    }

    public Optional<EaselEditor> front() {
        return front;
    }

    public void dispose() {
        page.removePartListener(this);
    }

    private void update() {
        IEditorPart active = page.getActiveEditor();
        Optional<EaselEditor> now = active instanceof EaselEditor easel
                ? Optional.of(easel)
                : active instanceof SideBySideEditor ? stillOpen() : Optional.empty();
        if (!now.equals(front)) {
            front = now;
            now.ifPresent(this::watch);
            follow.accept(front);
        }
    }

    /** Colourways lie side by side in front of it: the parts stay with the Easel. */
    private Optional<EaselEditor> stillOpen() {
        return front.filter(easel -> Arrays.stream(page.getEditorReferences()).anyMatch(reference -> reference.getEditor(false) == easel));
    }

    private void watch(EaselEditor editor) {
        if (editor.easel().getData(key()) == null) { // once an Easel
            editor.easel().setData(key(), this);
            editor.easel().whenSceneChanges(() -> {
                if (front.isPresent() && front.get() == editor && !editor.easel().isDisposed()) {
                    follow.accept(front);
                }
            });
            editor.easel().addListener(SWT.Dispose, event -> {
                if (front.isPresent() && front.get() == editor) {
                    front = Optional.empty();
                    follow.accept(front);
                }
            });
        }
    }

    private String key() {
        return EaselFollower.class.getName() + System.identityHashCode(this);
    }

    @Override
    public void partActivated(IWorkbenchPartReference part) {
        update();
    }

    @Override
    public void partBroughtToTop(IWorkbenchPartReference part) {
        update();
    }

    @Override
    public void partOpened(IWorkbenchPartReference part) {
        update();
    }

    @Override
    public void partClosed(IWorkbenchPartReference part) {
        update();
    }
}
