package saddlebar.ui.screening;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.EndRule;
import saddlebar.model.commission.MirrorRule;
import saddlebar.model.commission.ToneMode;
import saddlebar.stencil.DiffusionFilter;
import saddlebar.stencil.ScreeningMethods;
import saddlebar.stencil.SpotFunction;
import saddlebar.stencil.process.StencilProcesses;
import saddlebar.ui.Messages;

/** One thing that a recipe says, and how it is typed or chosen. */
public enum RecipeField {
    METHOD(Messages.Recipe_method, CommissionPackage.Literals.STENCIL_RECIPE__METHOD, null, false),
    RULING(Messages.Recipe_ruling, CommissionPackage.Literals.STENCIL_RECIPE__LPI, TypedNumber.RULING, false),
    ANGLE(Messages.Recipe_angle, CommissionPackage.Literals.STENCIL_RECIPE__ANGLE_DEG, TypedNumber.ANGLE, false),
    DOT(Messages.Recipe_dot, CommissionPackage.Literals.STENCIL_RECIPE__DOT, null, false),
    DOT_SIZE(Messages.Recipe_dotSize, CommissionPackage.Literals.STENCIL_RECIPE__DOT_MM, TypedNumber.FINE_LENGTH, false),
    FILTER(Messages.Recipe_filter, CommissionPackage.Literals.STENCIL_RECIPE__FILTER, null, false),
    COURSE(ScreenWords.Recipe_course, CommissionPackage.Literals.STENCIL_RECIPE__COURSE, null, false),
    COURSE_LAYER(ScreenWords.Recipe_courseLayer, CommissionPackage.Literals.STENCIL_RECIPE__COURSE_LAYER, null, true),
    NOISE_SIDE(ScreenWords.Recipe_noiseSide, CommissionPackage.Literals.STENCIL_RECIPE__NOISE_SIDE, null, false),
    CLUMP(ScreenWords.Recipe_clump, CommissionPackage.Literals.STENCIL_RECIPE__CLUMP, TypedNumber.PLAIN, false),
    SUPERCELL(ScreenWords.Recipe_supercell, CommissionPackage.Literals.STENCIL_RECIPE__SUPERCELL, null, false),
    PIXELS(Messages.Recipe_pixels, CommissionPackage.Literals.STENCIL_RECIPE__DPI, TypedNumber.PIXELS, false),
    PROCESS(Messages.Recipe_process, CommissionPackage.Literals.STENCIL_RECIPE__PROCESS_KEY, null, false),
    MIRROR(Messages.Recipe_mirror, CommissionPackage.Literals.STENCIL_RECIPE__MIRROR, null, false),
    TONE(Messages.Recipe_tone, CommissionPackage.Literals.STENCIL_RECIPE__TONE_MODE, null, false),
    FROM(Messages.Recipe_from, CommissionPackage.Literals.STENCIL_RECIPE__TONE_FROM, TypedNumber.SHARE, false),
    TO(Messages.Recipe_to, CommissionPackage.Literals.STENCIL_RECIPE__TONE_TO, TypedNumber.SHARE, true),
    LEAST(Messages.Recipe_least, CommissionPackage.Literals.STENCIL_RECIPE__END_LOW, TypedNumber.SHARE, false),
    MOST(Messages.Recipe_most, CommissionPackage.Literals.STENCIL_RECIPE__END_HIGH, TypedNumber.SHARE, false),
    ENDS(Messages.Recipe_ends, CommissionPackage.Literals.STENCIL_RECIPE__END_RULE, null, false),
    OPENING(Messages.Recipe_opening, CommissionPackage.Literals.STENCIL_RECIPE__OPEN_MM, TypedNumber.FINE_LENGTH, true),
    BRIDGE(Messages.Recipe_bridge, CommissionPackage.Literals.STENCIL_RECIPE__BRIDGE_MM, TypedNumber.FINE_LENGTH, true),
    TRAP(ScreenWords.Recipe_trap, CommissionPackage.Literals.STENCIL_RECIPE__TRAP_MM, TypedNumber.FINE_LENGTH, false);

    private final String label;
    private final EAttribute attribute;
    private final TypedNumber typed;
    private final boolean mayBeEmpty;

    RecipeField(String label, EAttribute attribute, TypedNumber typed, boolean mayBeEmpty) {
        this.label = label;
        this.attribute = attribute;
        this.typed = typed;
        this.mayBeEmpty = mayBeEmpty;
    }

    public String label() {
        return label;
    }

    EAttribute attribute() {
        return attribute;
    }

    /** How it is typed; empty where it is chosen. */
    public Optional<TypedNumber> typed() {
        return Optional.ofNullable(typed);
    }

    /** Whether it is typed as words that the recipe keeps as they are. */
    public boolean isWords() {
        return this == COURSE || this == COURSE_LAYER;
    }

    /** Whether it may be left empty: the layer or the mesh then decides. */
    boolean mayBeEmpty() {
        return mayBeEmpty;
    }

    /** What holds where it is left empty. */
    String emptyMeans() {
        return this == TO ? Messages.Recipe_measured : this == COURSE_LAYER ? ScreenWords.Recipe_ownLayer : Messages.Recipe_fromMesh;
    }

    /** What can be chosen, as the model has it; empty where a value or words are typed. */
    public List<String> choices() {
        return switch (this) {
            case METHOD -> ScreeningMethods.ownMethods().keys();
            case DOT -> SpotFunction.names();
            case NOISE_SIDE -> List.of("64", "128");
            case SUPERCELL -> List.of("0", "1", "2", "3", "4");
            case FILTER -> DiffusionFilter.names();
            case PROCESS -> StencilProcesses.ownProcesses().keys();
            case TONE -> Arrays.stream(ToneMode.values()).map(ToneMode::getLiteral).toList();
            case ENDS -> Arrays.stream(EndRule.values()).map(EndRule::getLiteral).toList();
            case MIRROR -> Arrays.stream(MirrorRule.values()).map(MirrorRule::getLiteral).toList();
            default -> List.of();
        };
    }

    /** A choice in words. */
    public String words(String choice) {
        if (this == SUPERCELL && choice.equals("0")) {
            return ScreenWords.Recipe_automatic;
        }
        return switch (choice) {
            case "am" -> Messages.Method_am;
            case "bluenoise" -> Messages.Method_blueNoise;
            case "diffusion" -> Messages.Method_diffusion;
            case "greennoise" -> Messages.Method_greenNoise;
            case "hybrid" -> Messages.Method_hybrid;
            case "lines" -> Messages.Method_lines;
            case "solid" -> Messages.Method_solid;
            case "stipple" -> Messages.Method_stipple;
            case "fused-sheet" -> Messages.Process_fusedSheet;
            case "film-positive" -> Messages.Process_filmPositive;
            case "stretch" -> Messages.Tone_stretch;
            case "linear" -> Messages.Tone_linear;
            case "calibrated" -> Messages.Tone_calibrated;
            case "cut or lift" -> Messages.Ends_nearest;
            case "cut" -> Messages.Ends_cut;
            case "lift" -> Messages.Ends_lift;
            case "auto" -> Messages.Mirror_auto;
            case "yes" -> Messages.Mirror_yes;
            case "no" -> Messages.Mirror_no;
            default -> choice;
        };
    }
}
