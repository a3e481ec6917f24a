package saddlebar.ui.easel;

import saddlebar.production.light.ScenePiece;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.GestureEvent;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.events.MouseEvent;

/**
 * Hands and keys on the Easel. Wheel: nearer or farther about the pointer; with Shift sideways. Drag: moves the window. Click: chooses a piece.
 * Arrow keys move the view, with Shift by a page, with Ctrl (Command) they go to the nearest piece that way; Page Up and Page Down go through
 * the pieces by number, plus and minus zoom, 0 shows all, 1 is true size, Escape chooses none.
 */
final class EaselGestures {
    private static final int DRAG_STARTS_PT = 4;
    private static final int KEY_STEP_PT = 48;

    private final EaselCanvas easel;
    private int pressedX;
    private int pressedY;
    private boolean pressed;
    private boolean dragging;
    private Viewport viewAtPress;
    private Viewport viewAtGesture;

    EaselGestures(EaselCanvas easel) {
        this.easel = easel;
        easel.addListener(SWT.MouseDown, event -> press(new MouseEvent(event)));
        easel.addListener(SWT.MouseMove, event -> move(new MouseEvent(event)));
        easel.addListener(SWT.MouseUp, event -> release(new MouseEvent(event)));
        easel.addListener(SWT.MouseVerticalWheel, event -> {
            if (easel.scene().isPresent()) {
                wheel(event.x, event.y, event.count, (event.stateMask & SWT.SHIFT) != 0);
                event.doit = false;
            }
        });
        easel.addListener(SWT.MouseHorizontalWheel, event -> {
            if (easel.scene().isPresent()) {
                easel.look(easel.view().draggedBy(event.count * (double) KEY_STEP_PT / 3, 0));
                event.doit = false;
            }
        });
        easel.addGestureListener(this::gesture);
        easel.addListener(SWT.KeyDown, event -> key(new KeyEvent(event)));
        easel.addListener(SWT.Traverse, event -> event.doit = event.detail != SWT.TRAVERSE_PAGE_NEXT
                && event.detail != SWT.TRAVERSE_PAGE_PREVIOUS && event.detail != SWT.TRAVERSE_ARROW_NEXT
                && event.detail != SWT.TRAVERSE_ARROW_PREVIOUS);
    }

    private void press(MouseEvent event) {
        easel.forceFocus();
        if ((event.button == 1 || event.button == 2) && easel.scene().isPresent()) {
            pressed = true;
            dragging = false;
            pressedX = event.x;
            pressedY = event.y;
            viewAtPress = easel.view();
        }
    }

    private void move(MouseEvent event) {
        if (pressed) {
            if (!dragging && Math.max(Math.abs(event.x - pressedX), Math.abs(event.y - pressedY)) >= DRAG_STARTS_PT) {
                dragging = true;
                easel.setCursor(easel.getDisplay().getSystemCursor(SWT.CURSOR_SIZEALL));
            }
            if (dragging) {
                easel.look(viewAtPress.draggedBy(event.x - pressedX, event.y - pressedY));
            }
        }
    }

    private void release(MouseEvent event) {
        if (pressed && !dragging && event.button == 1) {
            easel.chooseHere(pieceAt(event.x, event.y), false);
        }
        pressed = false;
        dragging = false;
        easel.setCursor(null);
    }

    private Optional<ScenePiece> pieceAt(int x, int y) {
        Viewport view = easel.view();
        return easel.scene().flatMap(scene -> scene.pieceAt(view.xMm(x - easel.rulerPt()), view.yMm(y - easel.rulerPt())));
    }

    private void wheel(int x, int y, int count, boolean sideways) {
        if (sideways) {
            easel.look(easel.view().draggedBy(Integer.signum(count) * KEY_STEP_PT, 0));
        } else if (count != 0) {
            easel.look(easel.view().zoomedAt(x - easel.rulerPt(), y - easel.rulerPt(), Math.pow(Viewport.STEP, Integer.signum(count))));
        }
    }

    private void gesture(GestureEvent event) {
        if (easel.scene().isEmpty()) {
            return;
        }
        if (event.detail == SWT.GESTURE_BEGIN) {
            viewAtGesture = easel.view();
        } else if (event.detail == SWT.GESTURE_MAGNIFY && viewAtGesture != null) {
            easel.look(viewAtGesture.zoomedAt(event.x - easel.rulerPt(), event.y - easel.rulerPt(), event.magnification));
        } else if (event.detail == SWT.GESTURE_PAN) {
            easel.look(easel.view().draggedBy(event.xDirection, event.yDirection));
        }
    }

    private void key(KeyEvent event) {
        if (easel.scene().isEmpty() || (event.stateMask & SWT.ALT) != 0) {
            return;
        }
        boolean walk = (event.stateMask & SWT.MOD1) != 0;
        boolean page = (event.stateMask & SWT.SHIFT) != 0;
        Viewport view = easel.view();
        double across = page ? view.widthPt() * 0.9 : KEY_STEP_PT;
        double down = page ? view.heightPt() * 0.9 : KEY_STEP_PT;
        switch (event.keyCode) {
            case SWT.ARROW_LEFT -> go(walk, PieceWalk.Way.LEFT, across, 0);
            case SWT.ARROW_RIGHT -> go(walk, PieceWalk.Way.RIGHT, -across, 0);
            case SWT.ARROW_UP -> go(walk, PieceWalk.Way.UP, 0, down);
            case SWT.ARROW_DOWN -> go(walk, PieceWalk.Way.DOWN, 0, -down);
            case SWT.PAGE_DOWN -> step(walk, PieceWalk.Way.NEXT);
            case SWT.PAGE_UP -> step(walk, PieceWalk.Way.PREVIOUS);
            case SWT.KEYPAD_ADD -> easel.zoom(Viewport.STEP);
            case SWT.KEYPAD_SUBTRACT -> easel.zoom(1 / Viewport.STEP);
            default -> {
                if (!walk) {
                    character(event.character);
                }
            }
        }
    }

    private void character(char typed) {
        switch (typed) {
            case '+', '=' -> easel.zoom(Viewport.STEP);
            case '-' -> easel.zoom(1 / Viewport.STEP);
            case '0' -> easel.fit();
            case '1' -> easel.showTrueSize();
            case SWT.ESC -> easel.chooseHere(Optional.empty(), false);
            default -> {
                return; // not ours
            }
        }
    }

    private void go(boolean walk, PieceWalk.Way way, double xPt, double yPt) {
        if (walk) {
            easel.walk(way);
        } else {
            easel.look(easel.view().draggedBy(xPt, yPt));
        }
    }

    private void step(boolean modified, PieceWalk.Way way) {
        if (!modified) { // with Ctrl the key goes from one open window to the next, as everywhere
            easel.walk(way);
        }
    }
}
