package saddlebar.ui.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.commands.operations.DefaultOperationHistory;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.impl.ResourceImpl;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.StencilRecipe;
import saddlebar.ui.desk.Edits;

class RecipeSheetTest {
    private final DefaultOperationHistory history = new DefaultOperationHistory();
    private final Edits edits = new Edits(history, "test");
    private final StencilRecipe recipe = CommissionFactory.eINSTANCE.createStencilRecipe();
    private final RecipeSheet sheet = new RecipeSheet(recipe, Optional.of(edits), Locale.ENGLISH);

    @BeforeEach
    void putInAFile() {
        new ResourceImpl(URI.createURI("memory:/W01")).getContents().add(recipe);
    }

    @Test
    void aValueIsTakenAndTakenBack() throws ExecutionException {
        assertEquals("40 lpi", sheet.value(RecipeField.RULING));
        assertEquals(Optional.empty(), sheet.take(RecipeField.RULING, "16 /cm"));
        assertEquals(40.64, recipe.getLpi(), 1e-9);
        assertEquals("Recipe: Ruling", history.getUndoOperation(edits.context()).getLabel());
        history.undo(edits.context(), null, null);
        assertEquals(40, recipe.getLpi(), 1e-9);
        history.redo(edits.context(), null, null);
        assertEquals(40.64, recipe.getLpi(), 1e-9);
    }

    @Test
    void whatCannotBeIsSaidInWordsAndChangesNothing() {
        assertTrue(sheet.take(RecipeField.RULING, "many").orElseThrow().contains("many"));
        assertTrue(sheet.take(RecipeField.RULING, "900 lpi").orElseThrow().contains("900"));
        assertTrue(sheet.take(RecipeField.PIXELS, "1200.5").isPresent());
        assertTrue(sheet.take(RecipeField.FROM, "100 %").isPresent());
        assertTrue(sheet.take(RecipeField.OPENING, "0 mm").isPresent());
        assertTrue(sheet.take(RecipeField.LEAST, "100 %").isPresent(), "no tone would be left between palest and darkest");
        assertEquals(40, recipe.getLpi());
        assertFalse(edits.isDirty());
    }

    @Test
    void choicesAreTaken() {
        assertEquals(Optional.empty(), sheet.take(RecipeField.METHOD, "diffusion"));
        assertEquals(Optional.empty(), sheet.take(RecipeField.TONE, "linear"));
        assertEquals("diffusion", recipe.getMethod());
        assertEquals("linear", sheet.value(RecipeField.TONE));
        for (RecipeField field : RecipeField.values()) {
            long kinds = Stream.of(field.typed().isPresent(), !field.choices().isEmpty(), field.isWords()).filter(is -> is).count();
            assertEquals(1, kinds, field.name() + " is a number, a choice or words");
            for (String choice : field.choices()) {
                assertEquals(Optional.empty(), sheet.take(field, choice), field + " " + choice);
            }
        }
    }

    @Test
    void emptyLeavesItToLayerOrMesh() {
        assertEquals("", sheet.value(RecipeField.TO));
        sheet.take(RecipeField.TO, "60 %");
        assertEquals(0.6, recipe.getToneTo(), 1e-12);
        sheet.take(RecipeField.TO, " ");
        assertNull(recipe.getToneTo());
        assertTrue(sheet.take(RecipeField.FROM, "").isPresent(), "a field that must say something");
    }

    @Test
    void onlyWhatTheMethodAsksForMatters() {
        assertTrue(sheet.matters(RecipeField.RULING));
        assertFalse(sheet.matters(RecipeField.DOT_SIZE));
        sheet.take(RecipeField.METHOD, "diffusion");
        assertFalse(sheet.matters(RecipeField.RULING));
        assertTrue(sheet.matters(RecipeField.DOT_SIZE));
        assertTrue(sheet.matters(RecipeField.FILTER));
    }

    @Test
    void aPairIsOneStep() throws ExecutionException {
        assertEquals(Optional.empty(), sheet.takePair(48, 7.5));
        assertEquals(48, recipe.getLpi());
        assertEquals(7.5, recipe.getAngleDeg());
        history.undo(edits.context(), null, null);
        assertEquals(40, recipe.getLpi());
        assertEquals(22.5, recipe.getAngleDeg());
    }
}
