package saddlebar.ui.opening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import saddlebar.cartoon.opening.BarRule;
import saddlebar.cartoon.opening.OpeningKinds;
import saddlebar.cartoon.opening.OpeningPlan;
import saddlebar.model.art.OutlineMm;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.OpeningKind;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.production.opening.OpeningBook;
import saddlebar.ui.Messages;
import saddlebar.ui.TypedLength;
import saddlebar.ui.easel.RulerScale;
import saddlebar.ui.opening.OpeningForm.Field;

/** What is typed of an opening, what is wrong with it, and what the window keeps of it. */
class OpeningFormTest {
    private final OpeningForm form = new OpeningForm(new TypedLength(RulerScale.Unit.MM));

    @BeforeEach
    void usual() {
        form.type(Field.REBATE, "10 mm");
        form.type(Field.CLEARANCE, "1/8 in");
    }

    @Test
    void wrongWordsAreToldUnderTheirField() {
        form.type(Field.WIDTH, "wide");
        form.type(Field.HEIGHT, "3 mm");
        assertEquals(Messages.Opening_noLength, form.wrong(Field.WIDTH).orElseThrow());
        assertEquals(Messages.Opening_outOfRange, form.wrong(Field.HEIGHT).orElseThrow());
        assertTrue(form.measures().isEmpty());
        form.type(Field.WIDTH, "24 in");
        form.type(Field.HEIGHT, "1.2 m");
        assertEquals(609.6, form.measures().orElseThrow().widthMm(), 1e-9);
        assertEquals(3.175, form.measures().orElseThrow().clearanceMm(), 1e-9);
    }

    @Test
    void onlyWhatTheShapeNeedsIsAskedFor() {
        assertFalse(form.asks(Field.RISE));
        form.take(OpeningKinds.OGEE);
        assertTrue(form.asks(Field.RISE));
        form.measureFrame(true);
        assertFalse(form.asks(Field.TOP), "only a rectangle is measured by its sides");
        form.take(OpeningKinds.RECTANGLE);
        assertTrue(form.asks(Field.TOP) && form.asks(Field.DOWN) && !form.asks(Field.WIDTH));
        form.take(OpeningKinds.ROUNDEL);
        assertFalse(form.asks(Field.HEIGHT));
    }

    /** 3, 4, 5: a frame with right corners, whatever unit it is typed in. */
    @Test
    void frameBecomesTheWindowsOpening() {
        form.measureFrame(true);
        form.type(Field.TOP, "400");
        form.type(Field.BOTTOM, "40 cm");
        form.type(Field.LEFT, "300 mm");
        form.type(Field.RIGHT, "0,3 m");
        form.type(Field.DOWN, "500");
        form.type(Field.UP, "500");
        OpeningPlan plan = OpeningForm.plan(form.measures().orElseThrow());
        assertEquals(0, plan.fit().orElseThrow().outOfSquareMm(), 1e-9);
        Window window = CommissionFactory.eINSTANCE.createWindow();
        window.setName("W01");
        OpeningBook.enter(window, form.measures().orElseThrow(), plan);
        assertEquals(OpeningKind.RECTANGLE, window.getOpening().getKind());
        assertEquals(400, window.getOpening().getSightWidthMm(), 1e-6);
        assertEquals(420, window.getOpening().getTightWidthMm(), 1e-6);
        double[] panel = window.getPanels().get(0).getOutline().boundsMm();
        assertEquals(0, panel[0], 1e-9);
        assertEquals(420 - 2 * 3.175, panel[2], 1e-6);
        // read back, it is what was typed
        assertEquals(form.measures().orElseThrow().frame(), OpeningBook.measures(window, BarRule.EXTERIOR).frame());
        assertEquals(3.175, OpeningBook.measures(window, BarRule.EXTERIOR).clearanceMm(), 1e-9);
    }

    @Test
    void measuresThatFitNoOpeningAreRefusedInWords() {
        form.measureFrame(true);
        for (Field field : new Field[] {Field.TOP, Field.BOTTOM, Field.LEFT, Field.RIGHT}) {
            form.type(field, "100");
        }
        form.type(Field.DOWN, "500");
        form.type(Field.UP, "100");
        assertThrows(Refusal.class, () -> OpeningForm.plan(form.measures().orElseThrow()));
    }

    @Test
    void panelThatDoesNotFitIsTold() {
        form.type(Field.WIDTH, "400");
        form.type(Field.HEIGHT, "300");
        Window window = CommissionFactory.eINSTANCE.createWindow();
        window.setName("W01");
        OpeningBook.enter(window, form.measures().orElseThrow(), OpeningForm.plan(form.measures().orElseThrow()));
        assertEquals(0, OpeningBook.problems(window).size());
        window.getPanels().get(0).setOutline(OutlineMm.of(List.of(new double[] {0, 0, 400, 0, 400, 300, 0, 300})));
        assertEquals(OpeningBook.PANEL_NOT_AS_OPENING, OpeningBook.problems(window).get(0).code());
    }
}
