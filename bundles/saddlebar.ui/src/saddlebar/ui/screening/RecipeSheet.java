package saddlebar.ui.screening;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;

import saddlebar.model.commission.StencilRecipe;
import saddlebar.model.problem.Refusal;
import saddlebar.stencil.ActualScreen;
import saddlebar.ui.Messages;
import saddlebar.ui.desk.Edits;

/** A layer's recipe as fields: what each says, and what becomes of what is typed there. Every change is one step that can be taken back. */
public final class RecipeSheet {
    private final StencilRecipe recipe;
    private final Optional<Edits> edits;
    private final Locale locale;

    /** @param edits takes changes; empty while nothing may be changed */
    public RecipeSheet(StencilRecipe recipe, Optional<Edits> edits, Locale locale) {
        this.recipe = recipe;
        this.edits = edits;
        this.locale = locale;
    }

    public boolean canEdit() {
        return edits.isPresent();
    }

    /** What the field says: words with a unit, or the choice as the model has it; empty where layer or mesh decide. */
    public String value(RecipeField field) {
        Object value = recipe.eGet(field.attribute());
        if (value == null) {
            return "";
        }
        return field.typed().map(typed -> typed.words(((Number) value).doubleValue(), locale))
                .orElseGet(() -> EcoreUtil.convertToString((EDataType) field.attribute().getEType(), value));
    }

    /** Whether the recipe's method asks for this at all. */
    public boolean matters(RecipeField field) {
        if (!RecipeReading.isKnown(recipe.getMethod())) {
            return true;
        }
        try {
            ActualScreen actual = RecipeReading.method(recipe).actual(RecipeReading.screening(recipe));
            return switch (field) {
                case RULING, ANGLE -> actual.lpi().isPresent();
                case DOT -> actual.lpi().isPresent() && !"lines".equals(recipe.getMethod());
                case DOT_SIZE -> actual.dotMm().isPresent();
                case FILTER -> "diffusion".equals(recipe.getMethod());
                case COURSE, COURSE_LAYER -> "lines".equals(recipe.getMethod());
                case NOISE_SIDE -> "bluenoise".equals(recipe.getMethod());
                case CLUMP -> "greennoise".equals(recipe.getMethod());
                case SUPERCELL -> "am".equals(recipe.getMethod()) || "hybrid".equals(recipe.getMethod());
                default -> true;
            };
        } catch (Refusal e) {
            return true; // so that it can be mended
        }
    }

    /**
     * Takes what was typed or chosen.
     *
     * @return what is wrong with it, in words; empty if it was taken or nothing has changed
     */
    public Optional<String> take(RecipeField field, String typed) {
        if (typed.strip().equals(value(field))) {
            return Optional.empty();
        }
        Object value;
        try {
            value = read(field, typed.strip());
            StencilRecipe tried = EcoreUtil.copy(recipe);
            tried.eSet(field.attribute(), value);
            RecipeReading.require(tried);
        } catch (Refusal e) {
            return Optional.of(e.getMessage());
        }
        if (!Objects.equals(value, recipe.eGet(field.attribute()))) {
            edits.orElseThrow(() -> new IllegalStateException("nothing may be changed now"))
                    .perform(NLS.bind(Messages.Edit_recipe, field.label()), recipe, () -> recipe.eSet(field.attribute(), value));
        }
        return Optional.empty();
    }

    /** Ruling and angle at once, as one step. */
    public Optional<String> takePair(double lpi, double angleDeg) {
        try {
            StencilRecipe tried = EcoreUtil.copy(recipe);
            tried.setLpi(lpi);
            tried.setAngleDeg(angleDeg);
            RecipeReading.require(tried);
        } catch (Refusal e) {
            return Optional.of(e.getMessage());
        }
        edits.orElseThrow(() -> new IllegalStateException("nothing may be changed now")).perform(Messages.Edit_pair, recipe, () -> {
            recipe.setLpi(lpi);
            recipe.setAngleDeg(angleDeg);
        });
        return Optional.empty();
    }

    private static Object read(RecipeField field, String typed) {
        if (typed.isEmpty() && field == RecipeField.COURSE_LAYER) {
            return null;
        }
        if (field.typed().isEmpty()) {
            return EcoreUtil.createFromString((EDataType) field.attribute().getEType(), typed);
        }
        if (typed.isEmpty() && field.mayBeEmpty()) {
            return null;
        }
        OptionalDouble number = field.typed().get().read(typed);
        if (number.isEmpty()) {
            throw new Refusal(field.label(), NLS.bind(Messages.Recipe_noNumber, typed), Messages.Recipe_noNumberTry);
        }
        double value = number.getAsDouble();
        if (field == RecipeField.PIXELS) {
            if (value != Math.rint(value) || Math.abs(value) > 100_000) {
                throw new Refusal(field.label(), NLS.bind(Messages.Recipe_noNumber, typed), Messages.Recipe_wholePixels);
            }
            return (int) value;
        }
        return value;
    }
}
