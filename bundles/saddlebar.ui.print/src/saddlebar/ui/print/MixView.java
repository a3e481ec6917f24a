package saddlebar.ui.print;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** A mix of paint: what was weighed, with the medium that the paint asks for. */
public final class MixView extends PrintPart {
    private Text name;
    private Combo paint;
    private Combo lot;
    private Text powder;
    private Text medium;
    private Label suggestion;
    private Button record;

    @Override
    protected void createParts(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(10, 8).spacing(8, 5).applyTo(body);
        name = text(body, Messages.Mix_name);
        paint = combo(body, Messages.Mix_paint);
        lot = combo(body, Messages.Mix_lot);
        powder = text(body, Messages.Mix_powderG);
        medium = text(body, Messages.Mix_mediumG);
        suggestion = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(200, SWT.DEFAULT).applyTo(suggestion);
        Label caution = new Label(body, SWT.WRAP);
        caution.setText(Messages.Mix_caution);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(200, SWT.DEFAULT).applyTo(caution);
        record = new Button(body, SWT.PUSH);
        record.setText(Messages.Mix_record);
        GridDataFactory.swtDefaults().span(2, 1).align(SWT.END, SWT.CENTER).applyTo(record);
        record.addListener(SWT.Selection, event -> record());
        toldBelow(body, 2);
        powder.addListener(SWT.Modify, event -> suggest());
        paint.addListener(SWT.Modify, event -> suggest());
    }

    @Override
    protected void show() {
        if (name.getText().isEmpty() || desk().state().mixes().contains(name.getText())) {
            name.setText(desk().state().nextMix());
        }
        offer(paint, desk().state().paints().stream().map(BenchState.PaintChoice::name).toList());
        offer(lot, desk().state().paints().stream().filter(one -> one.name().equals(paint.getText())).findFirst().map(BenchState.PaintChoice::lots)
                .orElse(List.of()));
        record.setEnabled(desk().canRecord());
    }

    private void suggest() {
        String typed = powder.getText().strip().replace(',', '.');
        suggestion.setText(desk().state().paints().stream().filter(one -> one.name().equals(paint.getText()) && one.powderToMedium() > 0
                && typed.matches("\\d{1,6}(\\.\\d+)?")).findFirst().map(one -> NLS.bind(Messages.Mix_suggest,
                        new Object[] {one.name(),
                                String.format(Locale.getDefault(), "%.1f", Double.parseDouble(typed) / one.powderToMedium()), typed}))
                .orElse(""));
        suggestion.getParent().layout();
    }

    private void record() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("kind", "mix");
        words.put("mix", name.getText().strip());
        words.put("paint", paint.getText().strip());
        words.put("lot", lot.getText().strip());
        words.put("powder_g", powder.getText().strip().replace(',', '.'));
        words.put("medium_g", medium.getText().strip().replace(',', '.'));
        enter(words, name.getText());
    }
}
