package saddlebar.ui.kiln;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import saddlebar.model.commission.Named;
import saddlebar.ui.TypedLength;
import saddlebar.ui.easel.RulerScale;

/** What is chosen above the segments: schedule, kiln, glass, paint, thickness, largest piece. */
final class ScheduleHead extends Composite {
    private static final int NUMBER_PT = 70;

    private final KilnDesk kiln;
    private final Consumer<String> wrong;
    private final Combo schedules;
    private final Combo kilns;
    private final Combo glasses;
    private final Combo paints;
    private final Text thickness;
    private final Text largest;
    private List<String> scheduleIds = List.of();
    private List<String> kilnIds = List.of();
    private List<String> glassIds = List.of();
    private List<String> paintIds = List.of();

    /** @param wrong is told what is wrong with what was typed, empty if nothing is */
    ScheduleHead(Composite parent, KilnDesk kiln, Consumer<String> wrong) {
        super(parent, SWT.NONE);
        this.kiln = kiln;
        this.wrong = wrong;
        GridLayoutFactory.fillDefaults().numColumns(6).spacing(6, 3).applyTo(this);
        schedules = combo(Messages.Schedule_schedule, index -> kiln.choose(kiln.choice().withSchedule(scheduleIds.get(index))));
        kilns = combo(Messages.Schedule_kiln, index -> kiln.choose(kiln.choice().withKiln(kilnIds.get(index))));
        thickness = number(Messages.Schedule_thickness, KilnChoice.LEAST_THICKNESS_MM, KilnChoice.MOST_THICKNESS_MM,
                mm -> kiln.choice().withThickness(mm));
        glasses = combo(Messages.Schedule_glass, index -> kiln.choose(kiln.choice().withGlass(glassIds.get(index))));
        paints = combo(Messages.Schedule_paint, index -> kiln.choose(kiln.choice().withPaint(paintIds.get(index))));
        largest = number(Messages.Schedule_largest, KilnChoice.LEAST_LARGEST_MM, KilnChoice.MOST_LARGEST_MM, mm -> kiln.choice().withLargest(mm));
    }

    private Combo combo(String label, Consumer<Integer> taken) {
        new Label(this, SWT.NONE).setText(label);
        Combo combo = new Combo(this, SWT.READ_ONLY | SWT.DROP_DOWN);
        GridDataFactory.fillDefaults().grab(true, false).hint(NUMBER_PT, SWT.DEFAULT).applyTo(combo);
        combo.addListener(SWT.Selection, event -> {
            if (combo.getSelectionIndex() >= 0) {
                taken.accept(combo.getSelectionIndex());
            }
        });
        combo.addListener(SWT.MouseVerticalWheel, event -> event.doit = false);
        return combo;
    }

    private Text number(String label, double least, double most, DoubleFunction<KilnChoice> with) {
        new Label(this, SWT.NONE).setText(label);
        Text text = new Text(this, SWT.BORDER | SWT.SINGLE);
        GridDataFactory.swtDefaults().hint(NUMBER_PT, SWT.DEFAULT).applyTo(text);
        Runnable take = () -> {
            OptionalDouble mm = new TypedLength(RulerScale.Unit.MM).mm(text.getText());
            if (mm.isEmpty() || mm.getAsDouble() < least || mm.getAsDouble() > most) {
                wrong.accept(NLS.bind(Messages.Wrong_length, new Object[] {text.getText(), KilnWords.number(least, 1), KilnWords.number(most, 0)}));
            } else {
                wrong.accept("");
                kiln.choose(with.apply(mm.getAsDouble()));
            }
        };
        text.addListener(SWT.DefaultSelection, event -> take.run());
        text.addListener(SWT.FocusOut, event -> take.run());
        return text;
    }

    void refresh() {
        scheduleIds = fill(schedules, kiln.studio().map(studio -> studio.getSchedules()).orElse(null), Optional.empty(), kiln.choice().scheduleId());
        kilnIds = fill(kilns, kiln.studio().map(studio -> studio.getKilns()).orElse(null), Optional.empty(), kiln.choice().kilnId());
        glassIds = fill(glasses, kiln.studio().map(studio -> studio.getGlass()).orElse(null), Optional.of(Messages.Schedule_floatGlass),
                kiln.choice().glassId());
        paintIds = fill(paints, kiln.studio().map(studio -> studio.getPaints()).orElse(null), Optional.of(Messages.Schedule_noPaint), kiln.choice().paintId());
        show(thickness, kiln.choice().thicknessMm());
        show(largest, kiln.choice().largestMm());
    }

    private void show(Text text, double mm) {
        String words = KilnWords.number(mm, mm == Math.rint(mm) ? 0 : 1) + " mm";
        if (!text.isFocusControl() && !words.equals(text.getText())) {
            text.setText(words);
        }
        text.setEnabled(kiln.commission().isPresent());
    }

    private static List<String> fill(Combo combo, List<? extends Named> things, Optional<String> none, String chosen) {
        List<String> ids = new ArrayList<>();
        List<String> names = new ArrayList<>();
        if (things != null) {
            none.ifPresent(words -> {
                ids.add("");
                names.add(words);
            });
            things.forEach(thing -> {
                ids.add(thing.getId());
                names.add(thing.getName() == null ? "" : thing.getName());
            });
        }
        if (!List.of(combo.getItems()).equals(names)) {
            combo.setItems(names.toArray(String[]::new));
        }
        if (ids.contains(chosen)) {
            combo.select(ids.indexOf(chosen));
        } else {
            combo.deselectAll();
        }
        combo.setEnabled(!ids.isEmpty());
        return ids;
    }
}
