package saddlebar.ui.colourway;

import java.util.Optional;

import saddlebar.model.commission.Colourway;
import saddlebar.ui.bench.EaselEditor;

/** The colourway that lies on an Easel. */
final class ShownColourway {
    private ShownColourway() {
    }

    static Optional<Colourway> of(Optional<EaselEditor> editor) {
        return editor.flatMap(EaselEditor::modelWindow).flatMap(window -> {
            int index = editor.get().easel().look().colourway();
            return index < window.getColourways().size() ? Optional.of(window.getColourways().get(index)) : Optional.empty();
        });
    }

    static void show(EaselEditor editor, Colourway colourway) {
        int index = editor.modelWindow().map(window -> window.getColourways().indexOf(colourway)).orElse(-1);
        if (index >= 0) {
            editor.easel().setLook(editor.easel().look().withColourway(index));
        }
    }
}
