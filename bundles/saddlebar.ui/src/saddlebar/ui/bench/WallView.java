package saddlebar.ui.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.part.ViewPart;

import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.ui.Messages;
import saddlebar.ui.StudioPreferences;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.CommissionOpening;
import saddlebar.ui.desk.FileDrop;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.production.light.WindowSketch;
import saddlebar.production.light.WindowSketcher;
import saddlebar.ui.tree.NodeWords;
import saddlebar.ui.tree.StateBoard;
import saddlebar.ui.tree.WindowNode;

/** All windows of the commission as small pictures in the light, each with its name and how far it is made. Enter or a double click opens one. */
public final class WallView extends ViewPart {
    private CommissionDesk desk;
    private ScrolledComposite scrolled;
    private Composite wall;
    private StateBoard states;
    private final Runnable onStates = this::describeAll;
    private final Map<String, WallPicture> pictures = new LinkedHashMap<>();
    private final Map<String, WindowSketch> sketches = new LinkedHashMap<>();
    private final CommissionDesk.Listener onDesk = new CommissionDesk.Listener() {
        @Override
        public void opened(OpenCommission commission) {
            hang(commission);
        }

        @Override
        public void closing(OpenCommission commission) {
            takeDown();
        }

        @Override
        public void changed(OpenCommission commission) {
            refresh(commission);
        }
    };

    @Override
    public void createPartControl(Composite parent) {
        desk = getSite().getService(CommissionDesk.class);
        scrolled = new ScrolledComposite(parent, SWT.V_SCROLL);
        scrolled.setExpandHorizontal(true);
        scrolled.setExpandVertical(true);
        wall = new Composite(scrolled, SWT.NONE);
        RowLayout row = new RowLayout(SWT.HORIZONTAL);
        row.spacing = 12;
        row.marginWidth = 8;
        row.marginHeight = 8;
        wall.setLayout(row);
        scrolled.setContent(wall);
        scrolled.addListener(SWT.Resize, event -> layout());
        new FileDrop(getSite().getWorkbenchWindow()).on(wall);
        states = getSite().getService(StateBoard.class);
        states.addListener(onStates);
        desk.addListener(onDesk);
        desk.commission().ifPresentOrElse(this::hang, this::takeDown);
    }

    private void hang(OpenCommission commission) {
        takeDown();
        for (Control words : wall.getChildren()) {
            words.dispose();
        }
        List<String> names = commission.windowNames();
        if (names.isEmpty()) {
            say(Messages.Wall_noWindows);
        }
        NodeWords words = words();
        for (String name : names) {
            Composite frame = new Composite(wall, SWT.NONE);
            GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(frame);
            WallPicture picture = new WallPicture(frame, () -> open(commission, name));
            GridDataFactory.fillDefaults().align(SWT.CENTER, SWT.CENTER).applyTo(picture);
            Label label = new Label(frame, SWT.CENTER | SWT.WRAP);
            GridDataFactory.fillDefaults().hint(WallPicture.WIDTH_PT, SWT.DEFAULT).applyTo(label);
            picture.setData(label);
            pictures.put(name, picture);
            describe(picture, words, name);
        }
        layout();
        refresh(commission);
    }

    private static void describe(WallPicture picture, NodeWords words, String name) {
        WindowNode node = new WindowNode(name);
        String state = words.state(node);
        String text = words.name(node) + (state.isEmpty() ? "" : "\n" + state);
        ((Label) picture.getData()).setText(text);
        picture.setDescription(text.replace("\n", Messages.List_comma));
    }

    private void open(OpenCommission commission, String name) {
        new CommissionOpening(getSite().getWorkbenchWindow()).showWindow(commission, name);
    }

    private void takeDown() {
        pictures.clear();
        sketches.clear();
        for (Control child : wall.getChildren()) {
            child.dispose();
        }
        say(Messages.Wall_empty);
        layout();
    }

    private void say(String words) {
        new Label(wall, SWT.WRAP).setText(words);
    }

    /** One after the other, between two breaths of the screen: what has changed is painted anew. */
    private void refresh(OpenCommission commission) {
        refresh(commission, List.copyOf(pictures.keySet()), 0);
    }

    private void refresh(OpenCommission commission, List<String> names, int at) {
        if (at < names.size()) {
            wall.getDisplay().asyncExec(() -> {
                if (!wall.isDisposed() && desk.commission().filter(open -> open == commission).isPresent()) {
                    refresh(commission, names.get(at));
                    refresh(commission, names, at + 1);
                }
            });
        } else {
            layout();
        }
    }

    private void refresh(OpenCommission commission, String name) {
        WallPicture picture = pictures.get(name);
        if (picture == null || picture.isDisposed()) {
            return;
        }
        try {
            Optional<Window> window = commission.window(name);
            if (window.isPresent()) {
                WindowSketch sketch = new WindowSketcher(commission.path(), commission.commission()).sketch(window.get());
                if (!sketch.equals(sketches.put(name, sketch))) {
                    int colourway = window.get().getChosen() == null ? 0 : Math.max(0, window.get().getColourways().indexOf(window.get().getChosen()));
                    picture.paint(commission.shelf(), commission.colours(), sketch, colourway, StudioPreferences.light());
                }
            }
        } catch (Refusal e) {
            picture.setToolTipText(e.getMessage());
        }
        describe(picture, words(), name);
    }

    private NodeWords words() {
        return new NodeWords(desk::commission, StudioPreferences::lengths, states::states);
    }

    private void describeAll() {
        if (!wall.isDisposed()) {
            pictures.forEach((name, picture) -> describe(picture, words(), name));
            layout();
        }
    }

    private void layout() {
        int width = Math.max(1, scrolled.getClientArea().width);
        wall.layout(true, true);
        scrolled.setMinSize(wall.computeSize(width, SWT.DEFAULT));
    }

    @Override
    public void setFocus() {
        if (pictures.isEmpty()) {
            wall.setFocus();
        } else {
            pictures.values().iterator().next().setFocus();
        }
    }

    @Override
    public void dispose() {
        if (desk != null) {
            desk.removeListener(onDesk);
            states.removeListener(onStates);
        }
        super.dispose();
    }
}
