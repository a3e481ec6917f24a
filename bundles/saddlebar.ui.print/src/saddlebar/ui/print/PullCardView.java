package saddlebar.ui.print;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;

import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.Piece;
import saddlebar.production.record.DeedBook;

/**
 * What was pulled, fired or found on the piece that is chosen. The fields stay as they are from one record to the next, so that a run of pulls is: choose the
 * piece, press the button.
 */
public final class PullCardView extends PrintPart implements ISelectionListener {
    private static final int NARROWEST_PT = 260;

    private Label piece;
    private Combo layer;
    private Combo who;
    private Combo screen;
    private Combo mix;
    private Text pull;
    private Text humidity;
    private Combo firing;
    private Combo place;
    private Text peak;
    private Combo defect;
    private Combo severity;
    private Text photo;
    private List<Button> buttons;
    private Optional<Piece> chosen = Optional.empty();

    @Override
    protected void createParts(Composite parent) {
        ScrolledComposite scrolled = new ScrolledComposite(parent, SWT.V_SCROLL | SWT.H_SCROLL);
        Composite body = new Composite(scrolled, SWT.NONE);
        scrolled.setContent(body);
        scrolled.setExpandHorizontal(true);
        scrolled.setExpandVertical(true);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(10, 8).spacing(8, 5).applyTo(body);
        piece = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(200, SWT.DEFAULT).applyTo(piece);
        layer = combo(body, Messages.Card_layer);
        who = combo(body, Messages.Card_who);
        line(body);
        screen = combo(body, Messages.Card_screen);
        mix = combo(body, Messages.Card_mix);
        pull = text(body, Messages.Card_pullNumber);
        humidity = text(body, Messages.Card_humidity);
        Button pulled = button(body, Messages.Card_pull, this::pulled);
        line(body);
        firing = combo(body, Messages.Card_firing);
        place = combo(body, Messages.Card_place);
        peak = text(body, Messages.Card_peak);
        Button fired = button(body, Messages.Card_fire, this::fired);
        line(body);
        defect = combo(body, Messages.Card_defect);
        defect.setItems(DeedBook.DEFECTS.toArray(String[]::new));
        severity = combo(body, Messages.Card_severity);
        severity.setItems(DeedBook.SEVERITIES.toArray(String[]::new));
        photo = text(body, Messages.Card_photo);
        new Label(body, SWT.NONE);
        Button choose = new Button(body, SWT.PUSH);
        choose.setText(Messages.Card_photoChoose);
        choose.addListener(SWT.Selection, event -> choosePhoto());
        Button found = button(body, Messages.Card_flaw, this::found);
        toldBelow(body, 2);
        buttons = List.of(pulled, fired, found);
        scrolled.setMinSize(body.computeSize(NARROWEST_PT, SWT.DEFAULT));
        getSite().getPage().addSelectionListener(this);
    }

    private static void line(Composite body) {
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(new Label(body, SWT.SEPARATOR | SWT.HORIZONTAL));
    }

    private static Button button(Composite body, String words, Runnable press) {
        Button button = new Button(body, SWT.PUSH);
        button.setText(words);
        button.addListener(SWT.Selection, event -> press.run());
        GridDataFactory.swtDefaults().span(2, 1).align(SWT.END, SWT.CENTER).applyTo(button);
        return button;
    }

    private void choosePhoto() {
        FileDialog dialog = new FileDialog(getSite().getShell(), SWT.OPEN);
        dialog.setFilterExtensions(new String[] {"*.jpg;*.jpeg;*.png;*.tif;*.tiff"});
        String file = dialog.open();
        if (file != null) {
            photo.setText(file);
        }
    }

    @Override
    public void selectionChanged(IWorkbenchPart part, ISelection selection) {
        if (selection instanceof IStructuredSelection structured && structured.getFirstElement() instanceof Piece one) {
            chosen = Optional.of(one);
            show();
        }
    }

    @Override
    protected void show() {
        chosen = chosen.filter(one -> one.eResource() != null && desk().commission().isPresent());
        boolean can = desk().canRecord();
        piece.setText(!can && desk().commission().isPresent()
                ? Messages.Card_readOnly
                : chosen.map(one -> Messages.Card_piece + " " + one.getPanel().getWindow().getName() + "/" + one.getNumber()).orElse(Messages.Card_none));
        buttons.forEach(button -> button.setEnabled(can && chosen.isPresent()));
        offer(layer, chosen.map(one -> one.getPanel().getLayers().stream().map(DesignLayer::getName).toList()).orElse(List.of()));
        offer(who, desk().state().people());
        offer(screen, desk().state().frames().stream().map(frame -> frame.name()).toList());
        offer(mix, desk().state().mixes());
        offer(firing, desk().state().firings());
        offer(place, desk().state().places());
        piece.getParent().layout();
    }

    private Map<String, String> words(String kind) {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("kind", kind);
        words.put("window", chosen.orElseThrow().getPanel().getWindow().getName());
        words.put("piece", String.valueOf(chosen.orElseThrow().getNumber()));
        words.put("layer", layer.getText().strip());
        words.put("who", who.getText().strip());
        return words;
    }

    private void pulled() {
        Map<String, String> words = words("pull");
        words.put("screen", screen.getText().strip());
        words.put("mix", mix.getText().strip());
        words.put("pull", pull.getText().strip());
        words.put("humidity", humidity.getText().strip().replace(',', '.'));
        enter(words, Messages.Card_pull + ", " + piece.getText());
        if (pull.getText().strip().matches("\\d{1,6}")) { // the next pull has the next number
            pull.setText(String.valueOf(Integer.parseInt(pull.getText().strip()) + 1));
        }
    }

    private void fired() {
        Map<String, String> words = words("fire");
        words.put("firing", firing.getText().strip());
        words.put("shelf_place", place.getText().strip());
        words.put("peak_c", peak.getText().strip().replace(',', '.'));
        enter(words, Messages.Card_fire + ", " + piece.getText());
    }

    private void found() {
        Map<String, String> words = words("defect");
        words.put("defect", defect.getText().strip());
        words.put("severity", severity.getText().strip());
        words.put("photo", photo.getText().strip());
        enter(words, Messages.Card_flaw + ", " + piece.getText());
    }

    @Override
    public void dispose() {
        getSite().getPage().removeSelectionListener(this);
        super.dispose();
    }
}
