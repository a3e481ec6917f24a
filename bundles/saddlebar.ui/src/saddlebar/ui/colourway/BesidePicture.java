package saddlebar.ui.colourway;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import saddlebar.production.light.ColourShelf;
import saddlebar.production.light.EaselLook.Overlay;
import saddlebar.production.light.EaselScene;
import saddlebar.production.light.ScenePiece;
import saddlebar.ui.Messages;
import saddlebar.ui.StudioPreferences;
import saddlebar.ui.easel.EaselCanvas;
import saddlebar.ui.easel.Viewport;

/** One of several Easels beside each other: which colourway lies on it, and what it costs beside the first. */
final class BesidePicture {
    private final Composite frame;
    private final Combo which;
    private final EaselCanvas easel;
    private final Label told;
    private final List<BesidePicture> linked = new ArrayList<>();
    private boolean following;

    BesidePicture(Composite parent, int colourway, Runnable whenOther) {
        frame = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(frame);
        which = new Combo(frame, SWT.READ_ONLY | SWT.DROP_DOWN);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(which);
        easel = new EaselCanvas(frame);
        easel.setRuler(Optional.empty());
        easel.setLook(easel.look().withColourway(colourway).with(Overlay.PROBLEMS, false));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(easel);
        told = new Label(frame, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).applyTo(told);
        which.addListener(SWT.Selection, event -> {
            easel.setLook(easel.look().withColourway(Math.max(0, which.getSelectionIndex())));
            whenOther.run();
        });
        easel.whenViewChanges(() -> {
            if (!following) {
                linked.forEach(other -> other.follow(this));
            }
        });
    }

    void link(BesidePicture other) {
        linked.add(other);
    }

    void unlink(BesidePicture other) {
        linked.remove(other);
    }

    private void follow(BesidePicture leader) {
        following = true;
        try {
            if (leader.easel.isFitted()) {
                easel.fit();
            } else if (leader.easel.scene().isPresent()) {
                Viewport view = leader.easel.view();
                easel.look(easel.view().scaled(view.ptPerMm()).centredOn(view.xMm(view.widthPt() / 2.0), view.yMm(view.heightPt() / 2.0)));
            }
        } finally {
            following = false;
        }
    }

    void whenChosen(Consumer<String> listener) {
        easel.whenChosen(piece -> listener.accept(piece.map(ScenePiece::id).orElse("")));
    }

    /** @param pieceId empty: none */
    void choose(String pieceId) {
        easel.choose(Optional.of(pieceId).filter(id -> !id.isEmpty()), true);
    }

    int colourway() {
        return easel.look().colourway();
    }

    void show(EaselScene scene, ColourShelf colours) {
        which.setItems(scene.colourways().stream().map(name -> name.isEmpty() ? Messages.Colourway_unnamed : name).toArray(String[]::new));
        int index = Math.min(colourway(), scene.colourways().size() - 1);
        which.select(index);
        easel.setColours(colours);
        easel.setLook(easel.look().withColourway(index).withLight(StudioPreferences.light()).withSurroundRgb(StudioPreferences.surroundRgb(easel)));
        easel.setScreenDpi(StudioPreferences.screenDpi());
        if (easel.scene().filter(scene::equals).isEmpty()) {
            easel.show(scene);
        }
    }

    void say(String words) {
        if (!words.equals(told.getText())) {
            told.setText(words);
            frame.layout(true);
        }
    }

    void clear(String words) {
        easel.clear();
        easel.say(words);
    }

    void setFocus() {
        easel.setFocus();
    }

    void dispose() {
        frame.dispose();
    }
}
