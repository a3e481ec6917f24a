package saddlebar.ui.sheets;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceColors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import saddlebar.model.commission.PaperSize;
import saddlebar.model.commission.Printer;
import saddlebar.model.problem.Refusal;
import saddlebar.production.studio.PrinterBook;
import saddlebar.stencil.printer.PrinterTestPage;
import saddlebar.stencil.sheet.Paper;
import saddlebar.stencil.sheet.PrinterFit;
import saddlebar.stencil.sheet.SheetPlan;
import saddlebar.ui.screening.ScreenWords;

/** The printer: what is known of it, its test page, and the fields in which its lengths are typed. */
public final class PrinterPanel {
    private static final int WIDE_PT = 260;
    private static final int FIELD_PT = 70;

    private final Consumer<Runnable> edit;
    private final Composite body;
    private final Label known;
    private final Text across;
    private final Text down;
    private final Text falling;
    private final Text rising;
    private final Text bands;
    private final Text density;
    private final Label wrong;
    private final Button test;
    private final Button keep;
    private Optional<Printer> printer = Optional.empty();
    private Optional<PaperSize> paper = Optional.empty();

    /** @param edit makes a change of the studio as one step that can be taken back */
    PrinterPanel(Composite parent, Consumer<Runnable> edit, Runnable writeTest) {
        this.edit = edit;
        Group group = new Group(parent, SWT.NONE);
        group.setText(ScreenWords.Printer_group);
        GridLayoutFactory.fillDefaults().numColumns(4).margins(6, 4).spacing(6, 3).applyTo(group);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(group);
        body = group;
        known = wide(group);
        across = field(group, ScreenWords.Printer_across);
        down = field(group, ScreenWords.Printer_down);
        falling = field(group, ScreenWords.Printer_falling);
        rising = field(group, ScreenWords.Printer_rising);
        bands = field(group, ScreenWords.Printer_bands);
        density = field(group, ScreenWords.Printer_density);
        wrong = wide(group);
        wrong.setForeground(JFaceColors.getErrorText(group.getDisplay()));
        test = button(group, ScreenWords.Printer_test, writeTest);
        keep = button(group, ScreenWords.Printer_keep, this::keep);
    }

    private static Label wide(Composite parent) {
        Label label = new Label(parent, SWT.WRAP);
        GridDataFactory.fillDefaults().span(4, 1).grab(true, false).hint(WIDE_PT, SWT.DEFAULT).applyTo(label);
        return label;
    }

    private static Text field(Composite parent, String name) {
        new Label(parent, SWT.NONE).setText(name);
        Text text = new Text(parent, SWT.BORDER | SWT.SINGLE);
        GridDataFactory.fillDefaults().grab(true, false).hint(FIELD_PT, SWT.DEFAULT).applyTo(text);
        return text;
    }

    private static Button button(Composite parent, String words, Runnable what) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(words);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(button);
        button.addListener(SWT.Selection, event -> what.run());
        return button;
    }

    void show(Optional<Printer> of, Optional<PaperSize> on, boolean canEdit) {
        printer = of;
        paper = on;
        known.setText(of.map(SheetWords::printer).orElse(ScreenWords.Printer_none));
        for (Text text : new Text[] {across, down, falling, rising, bands, density}) {
            text.setEnabled(canEdit && of.isPresent());
        }
        keep.setEnabled(canEdit && of.isPresent() && on.isPresent());
        test.setEnabled(of.isPresent() && on.isPresent());
        page().ifPresent(plan -> {
            across.setMessage(String.format("%.1f mm", PrinterFit.wantedAcrossMm(plan)));
            down.setMessage(String.format("%.1f mm", PrinterFit.wantedDownMm(plan)));
        });
        body.layout(true, true);
    }

    private Optional<SheetPlan> page() {
        try {
            return printer.flatMap(of -> paper.map(on -> PrinterTestPage.empty(of.getName(), new Paper(on.getName(), on.getWidthMm(), on.getHeightMm()),
                    of.getMarginMm(), of.getDpi())));
        } catch (Refusal e) {
            return Optional.empty();
        }
    }

    private void keep() {
        keep(new PrinterTyped(across.getText(), down.getText(), falling.getText(), rising.getText(), bands.getText(), density.getText()));
    }

    /** Takes what was typed; what is wrong is said below the fields. */
    public void keep(PrinterTyped typed) {
        try {
            Printer of = printer.orElseThrow();
            SheetPlan plan = page().orElseThrow(() -> new Refusal(ScreenWords.Printer_group, ScreenWords.Printer_noPaper, ScreenWords.Printer_otherPaper));
            Optional<PrinterFit> fit = typed.hasLengths()
                    ? Optional.of(typed.fit(PrinterFit.wantedAcrossMm(plan), PrinterFit.wantedDownMm(plan)))
                    : Optional.empty();
            var periods = typed.bandsMm();
            var toner = typed.toner();
            edit.accept(() -> {
                fit.ifPresent(found -> PrinterBook.measured(of, found, LocalDate.now()));
                if (!periods.isEmpty()) {
                    PrinterBook.bands(of, periods);
                }
                toner.ifPresent(found -> PrinterBook.toner(of, found));
            });
            say("");
        } catch (Refusal e) {
            say(e.getMessage());
        }
    }

    /** What is wrong with what was typed; empty if nothing is. */
    public String wrong() {
        return wrong.getText();
    }

    void say(String words) {
        wrong.setText(words);
        body.getParent().layout(true, true);
    }
}
