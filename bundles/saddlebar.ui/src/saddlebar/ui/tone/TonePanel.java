package saddlebar.ui.tone;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.resource.JFaceColors;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Group;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import saddlebar.model.commission.ToneCalibration;
import saddlebar.model.problem.Refusal;
import saddlebar.production.facts.CalibrationChoice;
import saddlebar.stencil.tone.Calibration;
import saddlebar.stencil.tone.WedgeReading;
import saddlebar.ui.Columns;
import saddlebar.ui.screening.ScreenWords;
import saddlebar.ui.screening.ScreeningWords;

/** Beside the curves: the points typed, the wedge written and its readings typed or read, and the calibrations that are kept. */
public final class TonePanel {
    private static final int WIDE_PT = 300;
    private static final int READINGS_PT = 150;

    /** What is asked of whoever holds the layer. */
    interface Orders {
        void curve(CurvePoints next);

        void curveOfMeasured();

        void typed(Optional<List<WedgeReading>> readings);

        void keep(List<WedgeReading> readings, String source);

        void writeWedge();

        void readFile();
    }

    private final Orders orders;
    private final ScrolledComposite scroll;
    private final Composite body;
    private final Text points;
    private final Label pointsWrong;
    private final Button straight;
    private final Button measured;
    private final Combo measure;
    private final Text readings;
    private final Label wrong;
    private final Button write;
    private final Button read;
    private final Button keep;
    private final TableViewer table;
    private String source = "";
    private Optional<ToneCalibration> inUse = Optional.empty();
    private boolean canEdit;

    TonePanel(Composite parent, Orders orders) {
        this.orders = orders;
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        body = new Composite(scroll, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(4, 0).spacing(0, 6).applyTo(body);
        scroll.setContent(body);
        Group curve = group(ScreenWords.Tone_groupCurve, 2);
        points = new Text(curve, SWT.BORDER | SWT.SINGLE);
        points.setMessage(ScreenWords.Tone_straight);
        points.setToolTipText(ScreenWords.Tone_pointsHelp);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(WIDE_PT / 2, SWT.DEFAULT).applyTo(points);
        points.addListener(SWT.DefaultSelection, event -> takePoints());
        points.addListener(SWT.FocusOut, event -> takePoints());
        pointsWrong = said(curve);
        measured = button(curve, ScreenWords.Tone_takeMeasured, orders::curveOfMeasured);
        straight = button(curve, ScreenWords.Tone_noCurve, () -> orders.curve(CurvePoints.of("")));
        Group wedge = group(ScreenWords.Tone_groupWedge, 2);
        write = button(wedge, ScreenWords.Tone_write, orders::writeWedge);
        read = button(wedge, ScreenWords.Tone_readFile, orders::readFile);
        Label help = new Label(wedge, SWT.WRAP);
        help.setText(ScreenWords.Tone_wedgeHelp);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(WIDE_PT, SWT.DEFAULT).applyTo(help);
        measure = new Combo(wedge, SWT.READ_ONLY | SWT.DROP_DOWN);
        measure.setItems(ScreenWords.Tone_density, ScreenWords.Tone_transmittance, ScreenWords.Tone_coverage);
        measure.select(0);
        measure.addListener(SWT.Selection, event -> takeReadings());
        GridDataFactory.fillDefaults().span(2, 1).applyTo(measure);
        readings = new Text(wedge, SWT.BORDER | SWT.MULTI | SWT.V_SCROLL);
        readings.setText(ReadingsText.empty());
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(WIDE_PT / 2, READINGS_PT).applyTo(readings);
        readings.addListener(SWT.Modify, event -> takeReadings());
        wrong = said(wedge);
        keep = button(wedge, ScreenWords.Tone_keep, this::keep);
        Group kept = group(ScreenWords.Tone_groupKept, 1);
        table = table(kept);
        scroll.addListener(SWT.Resize, event -> layOut());
    }

    private Group group(String name, int columns) {
        Group group = new Group(body, SWT.NONE);
        group.setText(name);
        GridLayoutFactory.fillDefaults().numColumns(columns).margins(6, 4).spacing(6, 4).applyTo(group);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(group);
        return group;
    }

    private Label said(Composite parent) {
        Label label = new Label(parent, SWT.WRAP);
        label.setForeground(JFaceColors.getErrorText(parent.getDisplay()));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(WIDE_PT, SWT.DEFAULT).applyTo(label);
        return label;
    }

    private static Button button(Composite parent, String words, Runnable what) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(words);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(button);
        button.addListener(SWT.Selection, event -> what.run());
        return button;
    }

    private TableViewer table(Composite parent) {
        Composite frame = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).hint(WIDE_PT / 2, READINGS_PT * 2 / 3).applyTo(frame);
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        TableViewer viewer = new TableViewer(frame, SWT.FULL_SELECTION | SWT.SINGLE | SWT.BORDER | SWT.V_SCROLL);
        viewer.getTable().setHeaderVisible(true);
        Columns columns = new Columns(viewer, layout);
        columns.add(ScreenWords.Tone_columnDay, 1, "2026-12-30",
                ColumnLabelProvider.createTextProvider(one -> String.valueOf(((ToneCalibration) one).getMeasured())));
        columns.add(ScreenWords.Tone_columnMethod, 1, "bluenoise", ColumnLabelProvider.createTextProvider(one -> ((ToneCalibration) one).getMethod()));
        columns.add(ScreenWords.Tone_columnGain, 1, "+14.5", ColumnLabelProvider.createTextProvider(TonePanel::gain));
        columns.add(ScreenWords.Tone_columnState, 2, ScreenWords.Tone_superseded, ColumnLabelProvider.createTextProvider(this::state));
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        return viewer;
    }

    private static String gain(Object one) {
        try {
            double gain = Calibration.of(CalibrationChoice.readings((ToneCalibration) one)).gainAt50();
            return (gain > 0 ? "+" : "") + ScreeningWords.number(100 * gain, 1);
        } catch (Refusal e) {
            return "";
        }
    }

    private String state(Object one) {
        if (inUse.isPresent() && inUse.get() == one) {
            return ScreenWords.Tone_used;
        }
        ToneCalibration newer = ((ToneCalibration) one).getSupersededBy();
        return newer == null ? ScreenWords.Tone_ready : NLS.bind(ScreenWords.Tone_superseded, newer.getMeasured());
    }

    private void takePoints() {
        try {
            orders.curve(CurvePoints.typed(points.getText()));
            say(pointsWrong, "");
        } catch (Refusal e) {
            say(pointsWrong, e.getMessage());
        }
    }

    private ReadingsText.Measure measure() {
        return ReadingsText.Measure.values()[Math.max(0, measure.getSelectionIndex())];
    }

    private void takeReadings() {
        boolean blank = readings.getText().isBlank() || readings.getText().strip().equals(ReadingsText.empty().strip());
        try {
            List<WedgeReading> typed = blank ? List.of() : ReadingsText.read(readings.getText(), measure());
            String problem = "";
            if (!typed.isEmpty()) {
                Calibration made = Calibration.of(typed);
                problem = made.problems().isEmpty() ? "" : made.problems().get(0).message();
            }
            orders.typed(typed.isEmpty() ? Optional.empty() : Optional.of(typed));
            say(wrong, problem);
            keep.setEnabled(canEdit && !typed.isEmpty());
        } catch (Refusal e) {
            orders.typed(Optional.empty());
            say(wrong, e.getMessage());
            keep.setEnabled(false);
        }
    }

    private void keep() {
        try {
            orders.keep(ReadingsText.read(readings.getText(), measure()), source.isEmpty() ? ScreenWords.Tone_typed : source);
            source = "";
            readings.setText(ReadingsText.empty());
        } catch (Refusal e) {
            say(wrong, e.getMessage());
        }
    }

    /** Readings that came from a file, to be looked at and kept. */
    void readings(List<WedgeReading> read, String from, String told) {
        if (!body.isDisposed()) {
            source = from;
            measure.select(ReadingsText.Measure.COVERAGE.ordinal());
            readings.setText(ReadingsText.of(read));
            if (!told.isEmpty()) {
                say(wrong, told);
            }
        }
    }

    /** What could not be done. */
    void wrong(String words) {
        if (!body.isDisposed()) {
            say(wrong, words);
        }
    }

    void show(Optional<CurvePoints> curve, List<ToneCalibration> kept, Optional<ToneCalibration> used, boolean edits, boolean anyMeasured) {
        canEdit = edits;
        inUse = used;
        if (!points.isFocusControl() || pointsWrong.getText().isEmpty()) {
            String words = curve.map(CurvePoints::typed).orElse("");
            if (!words.equals(points.getText())) {
                points.setText(words);
            }
        }
        points.setEnabled(edits);
        straight.setEnabled(edits && curve.filter(found -> !found.words().isEmpty()).isPresent());
        measured.setEnabled(edits && anyMeasured);
        write.setEnabled(curve.isPresent());
        read.setEnabled(edits);
        readings.setEnabled(edits);
        measure.setEnabled(edits);
        if (!edits) {
            keep.setEnabled(false);
        }
        table.setInput(kept);
    }

    /** What a person types: the readings, one line a step. */
    public void type(ReadingsText.Measure of, String text) {
        measure.select(of.ordinal());
        readings.setText(text);
    }

    /** What a test presses. */
    public Button keepButton() {
        return keep;
    }

    /** What is wrong with the readings, in words; empty if nothing is. */
    public String wrong() {
        return wrong.getText();
    }

    private void say(Label where, String words) {
        if (!words.equals(where.getText())) {
            where.setText(words);
            layOut();
        }
    }

    private void layOut() {
        scroll.setMinSize(WIDE_PT, body.computeSize(Math.max(WIDE_PT, scroll.getClientArea().width), SWT.DEFAULT, true).y);
        body.layout(true, true);
    }
}
