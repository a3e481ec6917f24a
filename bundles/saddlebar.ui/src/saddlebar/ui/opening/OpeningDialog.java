package saddlebar.ui.opening;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

import saddlebar.cartoon.opening.BarRule;
import saddlebar.cartoon.opening.MeasuredFrame;
import saddlebar.cartoon.opening.OpeningKinds;
import saddlebar.cartoon.opening.OpeningMeasures;
import saddlebar.cartoon.opening.OpeningPlan;
import saddlebar.model.art.DrawnLine;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.ui.FieldWords;
import saddlebar.ui.Lengths;
import saddlebar.ui.Messages;
import saddlebar.ui.TypedLength;
import saddlebar.ui.opening.OpeningForm.Field;

/** Asks what was measured of an opening, and shows at once what follows. */
final class OpeningDialog extends TitleAreaDialog {
    private static final int FIELD_CHARS = 18;
    private static final int WORDS_CHARS = 44;
    private static final int PICTURE_CHARS = 52;
    private static final int PICTURE_LINES = 26;

    private final String windowName;
    private final OpeningMeasures first;
    private final Lengths lengths;
    private final OpeningForm form;
    private final Map<Field, Text> texts = new EnumMap<>(Field.class);
    private final Map<Field, List<Control>> rows = new EnumMap<>(Field.class);
    private final Map<Field, FieldWords> words = new EnumMap<>(Field.class);
    private Combo kind;
    private Button framed;
    private Combo bars;
    private OpeningPicture picture;
    private Text facts;
    private Optional<OpeningMeasures> measured = Optional.empty();

    OpeningDialog(Shell shell, String windowName, OpeningMeasures first, Lengths lengths, TypedLength typed) {
        super(shell);
        this.windowName = windowName;
        this.first = first;
        this.lengths = lengths;
        this.form = new OpeningForm(typed);
        setHelpAvailable(false);
    }

    /** What was measured; only after OK. */
    OpeningMeasures measures() {
        return measured.orElseThrow();
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(Messages.Opening_title);
    }

    @Override
    protected boolean isResizable() {
        return true;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.Opening_set, true);
        createButton(parent, IDialogConstants.CANCEL_ID, Messages.Save_cancel, false);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        setTitle(NLS.bind(Messages.Opening_heading, windowName));
        setMessage(Messages.Opening_message);
        Composite body = new Composite(area, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(12, 12).spacing(16, 4).applyTo(body);
        Composite fields = new Composite(body, SWT.NONE);
        GridDataFactory.fillDefaults().applyTo(fields);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 2).applyTo(fields);
        createFields(fields);
        Composite shown = new Composite(body, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(shown);
        GridLayoutFactory.fillDefaults().spacing(4, 8).applyTo(shown);
        picture = new OpeningPicture(shown);
        GridDataFactory.fillDefaults().grab(true, true).hint(convertWidthInCharsToPixels(PICTURE_CHARS), convertHeightInCharsToPixels(PICTURE_LINES - 8))
                .applyTo(picture);
        facts = new Text(shown, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, false).hint(convertWidthInCharsToPixels(PICTURE_CHARS), convertHeightInCharsToPixels(8)).applyTo(facts);
        return area;
    }

    private void createFields(Composite parent) {
        new Label(parent, SWT.NONE).setText(Messages.Opening_shape);
        kind = new Combo(parent, SWT.READ_ONLY);
        for (OpeningKinds one : OpeningKinds.values()) {
            kind.add(OpeningWords.of(one));
        }
        kind.select(first.kind().ordinal());
        kind.addListener(SWT.Selection, event -> check());
        fill(kind);
        new Label(parent, SWT.NONE);
        framed = new Button(parent, SWT.CHECK);
        framed.setText(Messages.Opening_framed);
        framed.setSelection(first.frame().isPresent());
        framed.addListener(SWT.Selection, event -> check());
        MeasuredFrame frame = first.frame().orElse(null);
        field(parent, Field.WIDTH, Messages.Opening_width, first.widthMm());
        field(parent, Field.HEIGHT, Messages.Opening_height, first.heightMm());
        field(parent, Field.RISE, Messages.Opening_rise, first.riseMm());
        field(parent, Field.TOP, Messages.Opening_top, frame == null ? first.widthMm() : frame.topMm());
        field(parent, Field.RIGHT, Messages.Opening_right, frame == null ? first.heightMm() : frame.rightMm());
        field(parent, Field.BOTTOM, Messages.Opening_bottom, frame == null ? first.widthMm() : frame.bottomMm());
        field(parent, Field.LEFT, Messages.Opening_left, frame == null ? first.heightMm() : frame.leftMm());
        double diagonal = Math.hypot(first.widthMm(), first.heightMm());
        field(parent, Field.DOWN, Messages.Opening_down, frame == null ? diagonal : frame.fallingMm());
        field(parent, Field.UP, Messages.Opening_up, frame == null ? diagonal : frame.risingMm());
        new Label(parent, SWT.NONE);
        Button rebate = new Button(parent, SWT.CHECK);
        rebate.setText(Messages.Opening_inRebate);
        rebate.setSelection(first.inRebate());
        form.measureInRebate(first.inRebate());
        rebate.addListener(SWT.Selection, event -> {
            form.measureInRebate(rebate.getSelection());
            check();
        });
        field(parent, Field.REBATE, Messages.Opening_rebate, first.rebateMm());
        field(parent, Field.CLEARANCE, Messages.Opening_clearance, first.clearanceMm());
        new Label(parent, SWT.NONE).setText(Messages.Opening_bars);
        bars = new Combo(parent, SWT.READ_ONLY);
        Arrays.stream(BarRule.values()).forEach(rule -> bars.add(OpeningWords.of(rule)));
        bars.select(first.bars().ordinal());
        bars.addListener(SWT.Selection, event -> check());
        fill(bars);
    }

    private void field(Composite parent, Field field, String label, double mm) {
        Label name = new Label(parent, SWT.NONE);
        name.setText(label);
        Text text = new Text(parent, SWT.BORDER);
        text.setText(mm > 0 || field == Field.CLEARANCE || field == Field.REBATE ? lengths.words(mm) : "");
        fill(text);
        int before = parent.getChildren().length;
        words.put(field, new FieldWords(parent, 2).width(convertWidthInCharsToPixels(WORDS_CHARS)));
        texts.put(field, text);
        Control[] all = parent.getChildren();
        rows.put(field, List.of(name, text, all[before], all[before + 1]));
        text.addListener(SWT.Modify, event -> check());
    }

    private void fill(Control control) {
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(convertWidthInCharsToPixels(FIELD_CHARS), SWT.DEFAULT)
                .applyTo(control);
    }

    @Override
    protected Control createContents(Composite parent) {
        Control contents = super.createContents(parent);
        check();
        return contents;
    }

    private void check() {
        form.take(OpeningKinds.values()[kind.getSelectionIndex()]);
        form.measureFrame(framed.getSelection());
        form.take(BarRule.values()[bars.getSelectionIndex()]);
        framed.setEnabled(kind.getSelectionIndex() == OpeningKinds.RECTANGLE.ordinal());
        texts.forEach((field, text) -> form.type(field, text.getText()));
        boolean moved = false;
        for (Field field : Field.values()) {
            boolean asked = form.asks(field);
            for (Control control : rows.get(field)) {
                GridData data = (GridData) control.getLayoutData();
                if (data == null) {
                    data = new GridData();
                    control.setLayoutData(data);
                }
                moved |= data.exclude == asked;
                data.exclude = !asked;
                control.setVisible(asked);
            }
            Optional<String> wrong = form.wrong(field);
            if (wrong.isPresent()) {
                words.get(field).wrong(wrong.get());
            } else {
                words.get(field).hint("");
            }
        }
        if (moved) {
            kind.getParent().getParent().layout(true, true);
        }
        growToFit();
        measured = form.measures();
        show(measured);
    }

    /** More fields may need more room than there is; a dialog that somebody made larger is left so. */
    private void growToFit() {
        Point size = getShell().getSize();
        int height = getShell().isVisible() ? getShell().computeSize(size.x, SWT.DEFAULT).y : size.y;
        if (height > size.y) {
            getShell().setSize(size.x, height);
        }
    }

    private void show(Optional<OpeningMeasures> measures) {
        OpeningPlan plan = null;
        if (measures.isPresent()) {
            try {
                plan = OpeningForm.plan(measures.get());
                List<Problem> problems = plan.problems();
                setMessage(problems.isEmpty() ? Messages.Opening_message : problems.get(0).message(), problems.isEmpty()
                        ? IMessageProvider.NONE
                        : IMessageProvider.WARNING);
            } catch (Refusal refusal) {
                setMessage(refusal.getMessage(), IMessageProvider.ERROR);
            }
        } else {
            setMessage(Messages.Opening_message);
        }
        measured = plan == null ? Optional.empty() : measures;
        picture.show(plan);
        facts.setText(plan == null ? "" : told(plan));
        Button ok = getButton(OK);
        if (ok != null) {
            ok.setEnabled(plan != null);
        }
    }

    private String told(OpeningPlan plan) {
        StringBuilder told = new StringBuilder();
        told.append(NLS.bind(Messages.Opening_sizes, new Object[] {size(plan.sizes().sight()), size(plan.sizes().tight()), size(plan.sizes().panel())}));
        plan.fit().ifPresent(fit -> told.append('\n').append(NLS.bind(Messages.Opening_outOfSquare, lengths.words(fit.outOfSquareMm()),
                lengths.words(fit.disagreementMm()))));
        told.append('\n').append(NLS.bind(Messages.Opening_division, plan.division().bars().size(), plan.division().panels().size()));
        plan.problems().stream().skip(1).forEach(problem -> told.append('\n').append(problem.message()));
        return told.append('\n').append(Messages.Opening_caution).toString();
    }

    private String size(DrawnLine outline) {
        double[] box = OpeningPlan.box(outline);
        return lengths.size(box[2] - box[0], box[3] - box[1]);
    }
}
