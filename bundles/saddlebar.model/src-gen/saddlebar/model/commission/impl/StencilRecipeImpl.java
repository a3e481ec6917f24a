/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import java.util.Collection;
import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentWithInverseEList;
import org.eclipse.emf.ecore.util.EcoreUtil;

import org.eclipse.emf.ecore.util.InternalEList;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.EndRule;
import saddlebar.model.commission.MendedPlace;
import saddlebar.model.commission.MirrorRule;
import saddlebar.model.commission.StencilRecipe;
import saddlebar.model.commission.ToneCalibration;
import saddlebar.model.commission.ToneMode;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Stencil Recipe</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getLayer <em>Layer</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getMethod <em>Method</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getDpi <em>Dpi</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getLpi <em>Lpi</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getAngleDeg <em>Angle Deg</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getDot <em>Dot</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getDotMm <em>Dot Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getFilter <em>Filter</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getSeed <em>Seed</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getToneMode <em>Tone Mode</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getToneFrom <em>Tone From</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getToneTo <em>Tone To</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getCalibration <em>Calibration</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getEndLow <em>End Low</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getEndHigh <em>End High</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getEndRule <em>End Rule</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getProcessKey <em>Process Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getMirror <em>Mirror</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getOpenMm <em>Open Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getBridgeMm <em>Bridge Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getCourse <em>Course</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getCourseLayer <em>Course Layer</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getNoiseSide <em>Noise Side</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getClump <em>Clump</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getSupercell <em>Supercell</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getCurve <em>Curve</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getTrapMm <em>Trap Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilRecipeImpl#getMends <em>Mends</em>}</li>
 * </ul>
 *
 * @generated
 */
public class StencilRecipeImpl extends MinimalEObjectImpl.Container implements StencilRecipe {
	/**
	 * The default value of the '{@link #getMethod() <em>Method</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMethod()
	 * @generated
	 * @ordered
	 */
	protected static final String METHOD_EDEFAULT = "am";

	/**
	 * The cached value of the '{@link #getMethod() <em>Method</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMethod()
	 * @generated
	 * @ordered
	 */
	protected String method = METHOD_EDEFAULT;

	/**
	 * The default value of the '{@link #getDpi() <em>Dpi</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDpi()
	 * @generated
	 * @ordered
	 */
	protected static final int DPI_EDEFAULT = 1200;

	/**
	 * The cached value of the '{@link #getDpi() <em>Dpi</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDpi()
	 * @generated
	 * @ordered
	 */
	protected int dpi = DPI_EDEFAULT;

	/**
	 * The default value of the '{@link #getLpi() <em>Lpi</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLpi()
	 * @generated
	 * @ordered
	 */
	protected static final double LPI_EDEFAULT = 40.0;

	/**
	 * The cached value of the '{@link #getLpi() <em>Lpi</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLpi()
	 * @generated
	 * @ordered
	 */
	protected double lpi = LPI_EDEFAULT;

	/**
	 * The default value of the '{@link #getAngleDeg() <em>Angle Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAngleDeg()
	 * @generated
	 * @ordered
	 */
	protected static final double ANGLE_DEG_EDEFAULT = 22.5;

	/**
	 * The cached value of the '{@link #getAngleDeg() <em>Angle Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAngleDeg()
	 * @generated
	 * @ordered
	 */
	protected double angleDeg = ANGLE_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getDot() <em>Dot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDot()
	 * @generated
	 * @ordered
	 */
	protected static final String DOT_EDEFAULT = "round";

	/**
	 * The cached value of the '{@link #getDot() <em>Dot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDot()
	 * @generated
	 * @ordered
	 */
	protected String dot = DOT_EDEFAULT;

	/**
	 * The default value of the '{@link #getDotMm() <em>Dot Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDotMm()
	 * @generated
	 * @ordered
	 */
	protected static final double DOT_MM_EDEFAULT = 0.254;

	/**
	 * The cached value of the '{@link #getDotMm() <em>Dot Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDotMm()
	 * @generated
	 * @ordered
	 */
	protected double dotMm = DOT_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getFilter() <em>Filter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFilter()
	 * @generated
	 * @ordered
	 */
	protected static final String FILTER_EDEFAULT = "floyd-steinberg";

	/**
	 * The cached value of the '{@link #getFilter() <em>Filter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFilter()
	 * @generated
	 * @ordered
	 */
	protected String filter = FILTER_EDEFAULT;

	/**
	 * The default value of the '{@link #getSeed() <em>Seed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeed()
	 * @generated
	 * @ordered
	 */
	protected static final long SEED_EDEFAULT = 1L;

	/**
	 * The cached value of the '{@link #getSeed() <em>Seed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeed()
	 * @generated
	 * @ordered
	 */
	protected long seed = SEED_EDEFAULT;

	/**
	 * The default value of the '{@link #getToneMode() <em>Tone Mode</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToneMode()
	 * @generated
	 * @ordered
	 */
	protected static final ToneMode TONE_MODE_EDEFAULT = ToneMode.STRETCH;

	/**
	 * The cached value of the '{@link #getToneMode() <em>Tone Mode</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToneMode()
	 * @generated
	 * @ordered
	 */
	protected ToneMode toneMode = TONE_MODE_EDEFAULT;

	/**
	 * The default value of the '{@link #getToneFrom() <em>Tone From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToneFrom()
	 * @generated
	 * @ordered
	 */
	protected static final double TONE_FROM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getToneFrom() <em>Tone From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToneFrom()
	 * @generated
	 * @ordered
	 */
	protected double toneFrom = TONE_FROM_EDEFAULT;

	/**
	 * The default value of the '{@link #getToneTo() <em>Tone To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToneTo()
	 * @generated
	 * @ordered
	 */
	protected static final Double TONE_TO_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getToneTo() <em>Tone To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToneTo()
	 * @generated
	 * @ordered
	 */
	protected Double toneTo = TONE_TO_EDEFAULT;

	/**
	 * The cached value of the '{@link #getCalibration() <em>Calibration</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCalibration()
	 * @generated
	 * @ordered
	 */
	protected ToneCalibration calibration;

	/**
	 * The default value of the '{@link #getEndLow() <em>End Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEndLow()
	 * @generated
	 * @ordered
	 */
	protected static final double END_LOW_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getEndLow() <em>End Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEndLow()
	 * @generated
	 * @ordered
	 */
	protected double endLow = END_LOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getEndHigh() <em>End High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEndHigh()
	 * @generated
	 * @ordered
	 */
	protected static final double END_HIGH_EDEFAULT = 1.0;

	/**
	 * The cached value of the '{@link #getEndHigh() <em>End High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEndHigh()
	 * @generated
	 * @ordered
	 */
	protected double endHigh = END_HIGH_EDEFAULT;

	/**
	 * The default value of the '{@link #getEndRule() <em>End Rule</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEndRule()
	 * @generated
	 * @ordered
	 */
	protected static final EndRule END_RULE_EDEFAULT = EndRule.CUT_OR_LIFT;

	/**
	 * The cached value of the '{@link #getEndRule() <em>End Rule</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEndRule()
	 * @generated
	 * @ordered
	 */
	protected EndRule endRule = END_RULE_EDEFAULT;

	/**
	 * The default value of the '{@link #getProcessKey() <em>Process Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProcessKey()
	 * @generated
	 * @ordered
	 */
	protected static final String PROCESS_KEY_EDEFAULT = "fused-sheet";

	/**
	 * The cached value of the '{@link #getProcessKey() <em>Process Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProcessKey()
	 * @generated
	 * @ordered
	 */
	protected String processKey = PROCESS_KEY_EDEFAULT;

	/**
	 * The default value of the '{@link #getMirror() <em>Mirror</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMirror()
	 * @generated
	 * @ordered
	 */
	protected static final MirrorRule MIRROR_EDEFAULT = MirrorRule.AUTO;

	/**
	 * The cached value of the '{@link #getMirror() <em>Mirror</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMirror()
	 * @generated
	 * @ordered
	 */
	protected MirrorRule mirror = MIRROR_EDEFAULT;

	/**
	 * The default value of the '{@link #getOpenMm() <em>Open Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpenMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double OPEN_MM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOpenMm() <em>Open Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpenMm()
	 * @generated
	 * @ordered
	 */
	protected Double openMm = OPEN_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getBridgeMm() <em>Bridge Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBridgeMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double BRIDGE_MM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBridgeMm() <em>Bridge Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBridgeMm()
	 * @generated
	 * @ordered
	 */
	protected Double bridgeMm = BRIDGE_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getCourse() <em>Course</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCourse()
	 * @generated
	 * @ordered
	 */
	protected static final String COURSE_EDEFAULT = "straight";

	/**
	 * The cached value of the '{@link #getCourse() <em>Course</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCourse()
	 * @generated
	 * @ordered
	 */
	protected String course = COURSE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCourseLayer() <em>Course Layer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCourseLayer()
	 * @generated
	 * @ordered
	 */
	protected static final String COURSE_LAYER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCourseLayer() <em>Course Layer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCourseLayer()
	 * @generated
	 * @ordered
	 */
	protected String courseLayer = COURSE_LAYER_EDEFAULT;

	/**
	 * The default value of the '{@link #getNoiseSide() <em>Noise Side</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNoiseSide()
	 * @generated
	 * @ordered
	 */
	protected static final int NOISE_SIDE_EDEFAULT = 64;

	/**
	 * The cached value of the '{@link #getNoiseSide() <em>Noise Side</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNoiseSide()
	 * @generated
	 * @ordered
	 */
	protected int noiseSide = NOISE_SIDE_EDEFAULT;

	/**
	 * The default value of the '{@link #getClump() <em>Clump</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClump()
	 * @generated
	 * @ordered
	 */
	protected static final double CLUMP_EDEFAULT = 1.0;

	/**
	 * The cached value of the '{@link #getClump() <em>Clump</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClump()
	 * @generated
	 * @ordered
	 */
	protected double clump = CLUMP_EDEFAULT;

	/**
	 * The default value of the '{@link #getSupercell() <em>Supercell</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupercell()
	 * @generated
	 * @ordered
	 */
	protected static final int SUPERCELL_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getSupercell() <em>Supercell</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupercell()
	 * @generated
	 * @ordered
	 */
	protected int supercell = SUPERCELL_EDEFAULT;

	/**
	 * The default value of the '{@link #getCurve() <em>Curve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurve()
	 * @generated
	 * @ordered
	 */
	protected static final String CURVE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCurve() <em>Curve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurve()
	 * @generated
	 * @ordered
	 */
	protected String curve = CURVE_EDEFAULT;

	/**
	 * The default value of the '{@link #getTrapMm() <em>Trap Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTrapMm()
	 * @generated
	 * @ordered
	 */
	protected static final double TRAP_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getTrapMm() <em>Trap Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTrapMm()
	 * @generated
	 * @ordered
	 */
	protected double trapMm = TRAP_MM_EDEFAULT;

	/**
	 * The cached value of the '{@link #getMends() <em>Mends</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMends()
	 * @generated
	 * @ordered
	 */
	protected EList<MendedPlace> mends;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected StencilRecipeImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.STENCIL_RECIPE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public DesignLayer getLayer() {
		if (eContainerFeatureID() != CommissionPackage.STENCIL_RECIPE__LAYER) return null;
		return (DesignLayer)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetLayer(DesignLayer newLayer, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newLayer, CommissionPackage.STENCIL_RECIPE__LAYER, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLayer(DesignLayer newLayer) {
		if (newLayer != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.STENCIL_RECIPE__LAYER && newLayer != null)) {
			if (EcoreUtil.isAncestor(this, newLayer))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newLayer != null)
				msgs = ((InternalEObject)newLayer).eInverseAdd(this, CommissionPackage.DESIGN_LAYER__RECIPE, DesignLayer.class, msgs);
			msgs = basicSetLayer(newLayer, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__LAYER, newLayer, newLayer));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMethod() {
		return method;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMethod(String newMethod) {
		String oldMethod = method;
		method = newMethod;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__METHOD, oldMethod, method));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getDpi() {
		return dpi;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDpi(int newDpi) {
		int oldDpi = dpi;
		dpi = newDpi;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__DPI, oldDpi, dpi));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getLpi() {
		return lpi;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLpi(double newLpi) {
		double oldLpi = lpi;
		lpi = newLpi;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__LPI, oldLpi, lpi));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getAngleDeg() {
		return angleDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAngleDeg(double newAngleDeg) {
		double oldAngleDeg = angleDeg;
		angleDeg = newAngleDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__ANGLE_DEG, oldAngleDeg, angleDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDot() {
		return dot;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDot(String newDot) {
		String oldDot = dot;
		dot = newDot;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__DOT, oldDot, dot));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getDotMm() {
		return dotMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDotMm(double newDotMm) {
		double oldDotMm = dotMm;
		dotMm = newDotMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__DOT_MM, oldDotMm, dotMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFilter() {
		return filter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFilter(String newFilter) {
		String oldFilter = filter;
		filter = newFilter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__FILTER, oldFilter, filter));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public long getSeed() {
		return seed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSeed(long newSeed) {
		long oldSeed = seed;
		seed = newSeed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__SEED, oldSeed, seed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ToneMode getToneMode() {
		return toneMode;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setToneMode(ToneMode newToneMode) {
		ToneMode oldToneMode = toneMode;
		toneMode = newToneMode == null ? TONE_MODE_EDEFAULT : newToneMode;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__TONE_MODE, oldToneMode, toneMode));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getToneFrom() {
		return toneFrom;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setToneFrom(double newToneFrom) {
		double oldToneFrom = toneFrom;
		toneFrom = newToneFrom;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__TONE_FROM, oldToneFrom, toneFrom));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getToneTo() {
		return toneTo;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setToneTo(Double newToneTo) {
		Double oldToneTo = toneTo;
		toneTo = newToneTo;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__TONE_TO, oldToneTo, toneTo));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ToneCalibration getCalibration() {
		if (calibration != null && calibration.eIsProxy()) {
			InternalEObject oldCalibration = (InternalEObject)calibration;
			calibration = (ToneCalibration)eResolveProxy(oldCalibration);
			if (calibration != oldCalibration) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.STENCIL_RECIPE__CALIBRATION, oldCalibration, calibration));
			}
		}
		return calibration;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ToneCalibration basicGetCalibration() {
		return calibration;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCalibration(ToneCalibration newCalibration) {
		ToneCalibration oldCalibration = calibration;
		calibration = newCalibration;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__CALIBRATION, oldCalibration, calibration));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getEndLow() {
		return endLow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEndLow(double newEndLow) {
		double oldEndLow = endLow;
		endLow = newEndLow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__END_LOW, oldEndLow, endLow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getEndHigh() {
		return endHigh;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEndHigh(double newEndHigh) {
		double oldEndHigh = endHigh;
		endHigh = newEndHigh;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__END_HIGH, oldEndHigh, endHigh));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EndRule getEndRule() {
		return endRule;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEndRule(EndRule newEndRule) {
		EndRule oldEndRule = endRule;
		endRule = newEndRule == null ? END_RULE_EDEFAULT : newEndRule;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__END_RULE, oldEndRule, endRule));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getProcessKey() {
		return processKey;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProcessKey(String newProcessKey) {
		String oldProcessKey = processKey;
		processKey = newProcessKey;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__PROCESS_KEY, oldProcessKey, processKey));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MirrorRule getMirror() {
		return mirror;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMirror(MirrorRule newMirror) {
		MirrorRule oldMirror = mirror;
		mirror = newMirror == null ? MIRROR_EDEFAULT : newMirror;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__MIRROR, oldMirror, mirror));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getOpenMm() {
		return openMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOpenMm(Double newOpenMm) {
		Double oldOpenMm = openMm;
		openMm = newOpenMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__OPEN_MM, oldOpenMm, openMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getBridgeMm() {
		return bridgeMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBridgeMm(Double newBridgeMm) {
		Double oldBridgeMm = bridgeMm;
		bridgeMm = newBridgeMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__BRIDGE_MM, oldBridgeMm, bridgeMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCourse() {
		return course;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCourse(String newCourse) {
		String oldCourse = course;
		course = newCourse;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__COURSE, oldCourse, course));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCourseLayer() {
		return courseLayer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCourseLayer(String newCourseLayer) {
		String oldCourseLayer = courseLayer;
		courseLayer = newCourseLayer;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__COURSE_LAYER, oldCourseLayer, courseLayer));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getNoiseSide() {
		return noiseSide;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNoiseSide(int newNoiseSide) {
		int oldNoiseSide = noiseSide;
		noiseSide = newNoiseSide;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__NOISE_SIDE, oldNoiseSide, noiseSide));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getClump() {
		return clump;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setClump(double newClump) {
		double oldClump = clump;
		clump = newClump;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__CLUMP, oldClump, clump));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getSupercell() {
		return supercell;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSupercell(int newSupercell) {
		int oldSupercell = supercell;
		supercell = newSupercell;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__SUPERCELL, oldSupercell, supercell));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCurve() {
		return curve;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCurve(String newCurve) {
		String oldCurve = curve;
		curve = newCurve;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__CURVE, oldCurve, curve));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getTrapMm() {
		return trapMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTrapMm(double newTrapMm) {
		double oldTrapMm = trapMm;
		trapMm = newTrapMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_RECIPE__TRAP_MM, oldTrapMm, trapMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<MendedPlace> getMends() {
		if (mends == null) {
			mends = new EObjectContainmentWithInverseEList<MendedPlace>(MendedPlace.class, this, CommissionPackage.STENCIL_RECIPE__MENDS, CommissionPackage.MENDED_PLACE__RECIPE);
		}
		return mends;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.STENCIL_RECIPE__LAYER:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetLayer((DesignLayer)otherEnd, msgs);
			case CommissionPackage.STENCIL_RECIPE__MENDS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getMends()).basicAdd(otherEnd, msgs);
		}
		return super.eInverseAdd(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.STENCIL_RECIPE__LAYER:
				return basicSetLayer(null, msgs);
			case CommissionPackage.STENCIL_RECIPE__MENDS:
				return ((InternalEList<?>)getMends()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eBasicRemoveFromContainerFeature(NotificationChain msgs) {
		switch (eContainerFeatureID()) {
			case CommissionPackage.STENCIL_RECIPE__LAYER:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.DESIGN_LAYER__RECIPE, DesignLayer.class, msgs);
		}
		return super.eBasicRemoveFromContainerFeature(msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CommissionPackage.STENCIL_RECIPE__LAYER:
				return getLayer();
			case CommissionPackage.STENCIL_RECIPE__METHOD:
				return getMethod();
			case CommissionPackage.STENCIL_RECIPE__DPI:
				return getDpi();
			case CommissionPackage.STENCIL_RECIPE__LPI:
				return getLpi();
			case CommissionPackage.STENCIL_RECIPE__ANGLE_DEG:
				return getAngleDeg();
			case CommissionPackage.STENCIL_RECIPE__DOT:
				return getDot();
			case CommissionPackage.STENCIL_RECIPE__DOT_MM:
				return getDotMm();
			case CommissionPackage.STENCIL_RECIPE__FILTER:
				return getFilter();
			case CommissionPackage.STENCIL_RECIPE__SEED:
				return getSeed();
			case CommissionPackage.STENCIL_RECIPE__TONE_MODE:
				return getToneMode();
			case CommissionPackage.STENCIL_RECIPE__TONE_FROM:
				return getToneFrom();
			case CommissionPackage.STENCIL_RECIPE__TONE_TO:
				return getToneTo();
			case CommissionPackage.STENCIL_RECIPE__CALIBRATION:
				if (resolve) return getCalibration();
				return basicGetCalibration();
			case CommissionPackage.STENCIL_RECIPE__END_LOW:
				return getEndLow();
			case CommissionPackage.STENCIL_RECIPE__END_HIGH:
				return getEndHigh();
			case CommissionPackage.STENCIL_RECIPE__END_RULE:
				return getEndRule();
			case CommissionPackage.STENCIL_RECIPE__PROCESS_KEY:
				return getProcessKey();
			case CommissionPackage.STENCIL_RECIPE__MIRROR:
				return getMirror();
			case CommissionPackage.STENCIL_RECIPE__OPEN_MM:
				return getOpenMm();
			case CommissionPackage.STENCIL_RECIPE__BRIDGE_MM:
				return getBridgeMm();
			case CommissionPackage.STENCIL_RECIPE__COURSE:
				return getCourse();
			case CommissionPackage.STENCIL_RECIPE__COURSE_LAYER:
				return getCourseLayer();
			case CommissionPackage.STENCIL_RECIPE__NOISE_SIDE:
				return getNoiseSide();
			case CommissionPackage.STENCIL_RECIPE__CLUMP:
				return getClump();
			case CommissionPackage.STENCIL_RECIPE__SUPERCELL:
				return getSupercell();
			case CommissionPackage.STENCIL_RECIPE__CURVE:
				return getCurve();
			case CommissionPackage.STENCIL_RECIPE__TRAP_MM:
				return getTrapMm();
			case CommissionPackage.STENCIL_RECIPE__MENDS:
				return getMends();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case CommissionPackage.STENCIL_RECIPE__LAYER:
				setLayer((DesignLayer)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__METHOD:
				setMethod((String)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__DPI:
				setDpi((Integer)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__LPI:
				setLpi((Double)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__ANGLE_DEG:
				setAngleDeg((Double)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__DOT:
				setDot((String)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__DOT_MM:
				setDotMm((Double)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__FILTER:
				setFilter((String)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__SEED:
				setSeed((Long)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__TONE_MODE:
				setToneMode((ToneMode)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__TONE_FROM:
				setToneFrom((Double)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__TONE_TO:
				setToneTo((Double)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__CALIBRATION:
				setCalibration((ToneCalibration)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__END_LOW:
				setEndLow((Double)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__END_HIGH:
				setEndHigh((Double)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__END_RULE:
				setEndRule((EndRule)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__PROCESS_KEY:
				setProcessKey((String)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__MIRROR:
				setMirror((MirrorRule)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__OPEN_MM:
				setOpenMm((Double)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__BRIDGE_MM:
				setBridgeMm((Double)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__COURSE:
				setCourse((String)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__COURSE_LAYER:
				setCourseLayer((String)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__NOISE_SIDE:
				setNoiseSide((Integer)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__CLUMP:
				setClump((Double)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__SUPERCELL:
				setSupercell((Integer)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__CURVE:
				setCurve((String)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__TRAP_MM:
				setTrapMm((Double)newValue);
				return;
			case CommissionPackage.STENCIL_RECIPE__MENDS:
				getMends().clear();
				getMends().addAll((Collection<? extends MendedPlace>)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case CommissionPackage.STENCIL_RECIPE__LAYER:
				setLayer((DesignLayer)null);
				return;
			case CommissionPackage.STENCIL_RECIPE__METHOD:
				setMethod(METHOD_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__DPI:
				setDpi(DPI_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__LPI:
				setLpi(LPI_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__ANGLE_DEG:
				setAngleDeg(ANGLE_DEG_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__DOT:
				setDot(DOT_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__DOT_MM:
				setDotMm(DOT_MM_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__FILTER:
				setFilter(FILTER_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__SEED:
				setSeed(SEED_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__TONE_MODE:
				setToneMode(TONE_MODE_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__TONE_FROM:
				setToneFrom(TONE_FROM_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__TONE_TO:
				setToneTo(TONE_TO_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__CALIBRATION:
				setCalibration((ToneCalibration)null);
				return;
			case CommissionPackage.STENCIL_RECIPE__END_LOW:
				setEndLow(END_LOW_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__END_HIGH:
				setEndHigh(END_HIGH_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__END_RULE:
				setEndRule(END_RULE_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__PROCESS_KEY:
				setProcessKey(PROCESS_KEY_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__MIRROR:
				setMirror(MIRROR_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__OPEN_MM:
				setOpenMm(OPEN_MM_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__BRIDGE_MM:
				setBridgeMm(BRIDGE_MM_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__COURSE:
				setCourse(COURSE_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__COURSE_LAYER:
				setCourseLayer(COURSE_LAYER_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__NOISE_SIDE:
				setNoiseSide(NOISE_SIDE_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__CLUMP:
				setClump(CLUMP_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__SUPERCELL:
				setSupercell(SUPERCELL_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__CURVE:
				setCurve(CURVE_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__TRAP_MM:
				setTrapMm(TRAP_MM_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_RECIPE__MENDS:
				getMends().clear();
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case CommissionPackage.STENCIL_RECIPE__LAYER:
				return getLayer() != null;
			case CommissionPackage.STENCIL_RECIPE__METHOD:
				return METHOD_EDEFAULT == null ? method != null : !METHOD_EDEFAULT.equals(method);
			case CommissionPackage.STENCIL_RECIPE__DPI:
				return dpi != DPI_EDEFAULT;
			case CommissionPackage.STENCIL_RECIPE__LPI:
				return lpi != LPI_EDEFAULT;
			case CommissionPackage.STENCIL_RECIPE__ANGLE_DEG:
				return angleDeg != ANGLE_DEG_EDEFAULT;
			case CommissionPackage.STENCIL_RECIPE__DOT:
				return DOT_EDEFAULT == null ? dot != null : !DOT_EDEFAULT.equals(dot);
			case CommissionPackage.STENCIL_RECIPE__DOT_MM:
				return dotMm != DOT_MM_EDEFAULT;
			case CommissionPackage.STENCIL_RECIPE__FILTER:
				return FILTER_EDEFAULT == null ? filter != null : !FILTER_EDEFAULT.equals(filter);
			case CommissionPackage.STENCIL_RECIPE__SEED:
				return seed != SEED_EDEFAULT;
			case CommissionPackage.STENCIL_RECIPE__TONE_MODE:
				return toneMode != TONE_MODE_EDEFAULT;
			case CommissionPackage.STENCIL_RECIPE__TONE_FROM:
				return toneFrom != TONE_FROM_EDEFAULT;
			case CommissionPackage.STENCIL_RECIPE__TONE_TO:
				return TONE_TO_EDEFAULT == null ? toneTo != null : !TONE_TO_EDEFAULT.equals(toneTo);
			case CommissionPackage.STENCIL_RECIPE__CALIBRATION:
				return calibration != null;
			case CommissionPackage.STENCIL_RECIPE__END_LOW:
				return endLow != END_LOW_EDEFAULT;
			case CommissionPackage.STENCIL_RECIPE__END_HIGH:
				return endHigh != END_HIGH_EDEFAULT;
			case CommissionPackage.STENCIL_RECIPE__END_RULE:
				return endRule != END_RULE_EDEFAULT;
			case CommissionPackage.STENCIL_RECIPE__PROCESS_KEY:
				return PROCESS_KEY_EDEFAULT == null ? processKey != null : !PROCESS_KEY_EDEFAULT.equals(processKey);
			case CommissionPackage.STENCIL_RECIPE__MIRROR:
				return mirror != MIRROR_EDEFAULT;
			case CommissionPackage.STENCIL_RECIPE__OPEN_MM:
				return OPEN_MM_EDEFAULT == null ? openMm != null : !OPEN_MM_EDEFAULT.equals(openMm);
			case CommissionPackage.STENCIL_RECIPE__BRIDGE_MM:
				return BRIDGE_MM_EDEFAULT == null ? bridgeMm != null : !BRIDGE_MM_EDEFAULT.equals(bridgeMm);
			case CommissionPackage.STENCIL_RECIPE__COURSE:
				return COURSE_EDEFAULT == null ? course != null : !COURSE_EDEFAULT.equals(course);
			case CommissionPackage.STENCIL_RECIPE__COURSE_LAYER:
				return COURSE_LAYER_EDEFAULT == null ? courseLayer != null : !COURSE_LAYER_EDEFAULT.equals(courseLayer);
			case CommissionPackage.STENCIL_RECIPE__NOISE_SIDE:
				return noiseSide != NOISE_SIDE_EDEFAULT;
			case CommissionPackage.STENCIL_RECIPE__CLUMP:
				return clump != CLUMP_EDEFAULT;
			case CommissionPackage.STENCIL_RECIPE__SUPERCELL:
				return supercell != SUPERCELL_EDEFAULT;
			case CommissionPackage.STENCIL_RECIPE__CURVE:
				return CURVE_EDEFAULT == null ? curve != null : !CURVE_EDEFAULT.equals(curve);
			case CommissionPackage.STENCIL_RECIPE__TRAP_MM:
				return trapMm != TRAP_MM_EDEFAULT;
			case CommissionPackage.STENCIL_RECIPE__MENDS:
				return mends != null && !mends.isEmpty();
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (method: ");
		result.append(method);
		result.append(", dpi: ");
		result.append(dpi);
		result.append(", lpi: ");
		result.append(lpi);
		result.append(", angleDeg: ");
		result.append(angleDeg);
		result.append(", dot: ");
		result.append(dot);
		result.append(", dotMm: ");
		result.append(dotMm);
		result.append(", filter: ");
		result.append(filter);
		result.append(", seed: ");
		result.append(seed);
		result.append(", toneMode: ");
		result.append(toneMode);
		result.append(", toneFrom: ");
		result.append(toneFrom);
		result.append(", toneTo: ");
		result.append(toneTo);
		result.append(", endLow: ");
		result.append(endLow);
		result.append(", endHigh: ");
		result.append(endHigh);
		result.append(", endRule: ");
		result.append(endRule);
		result.append(", processKey: ");
		result.append(processKey);
		result.append(", mirror: ");
		result.append(mirror);
		result.append(", openMm: ");
		result.append(openMm);
		result.append(", bridgeMm: ");
		result.append(bridgeMm);
		result.append(", course: ");
		result.append(course);
		result.append(", courseLayer: ");
		result.append(courseLayer);
		result.append(", noiseSide: ");
		result.append(noiseSide);
		result.append(", clump: ");
		result.append(clump);
		result.append(", supercell: ");
		result.append(supercell);
		result.append(", curve: ");
		result.append(curve);
		result.append(", trapMm: ");
		result.append(trapMm);
		result.append(')');
		return result.toString();
	}

} //StencilRecipeImpl
