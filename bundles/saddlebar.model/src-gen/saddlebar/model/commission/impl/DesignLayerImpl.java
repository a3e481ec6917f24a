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

import org.eclipse.emf.ecore.util.EObjectContainmentWithInverseEList;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.InternalEList;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.Face;
import saddlebar.model.commission.FiringSchedule;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.MakingState;
import saddlebar.model.commission.Medium;
import saddlebar.model.commission.Mesh;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.SightLineRule;
import saddlebar.model.commission.Stencil;
import saddlebar.model.commission.StencilRecipe;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Design Layer</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.DesignLayerImpl#getPanel <em>Panel</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DesignLayerImpl#getRole <em>Role</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DesignLayerImpl#getArtLayer <em>Art Layer</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DesignLayerImpl#getFace <em>Face</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DesignLayerImpl#getPaint <em>Paint</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DesignLayerImpl#getMedium <em>Medium</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DesignLayerImpl#getMesh <em>Mesh</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DesignLayerImpl#getSchedule <em>Schedule</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DesignLayerImpl#getFiringOrder <em>Firing Order</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DesignLayerImpl#getBleedMm <em>Bleed Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DesignLayerImpl#getSightLine <em>Sight Line</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DesignLayerImpl#getSightLineMm <em>Sight Line Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DesignLayerImpl#isByHand <em>By Hand</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DesignLayerImpl#getRecipe <em>Recipe</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DesignLayerImpl#getStencils <em>Stencils</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DesignLayerImpl#getState <em>State</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DesignLayerImpl#getContentKey <em>Content Key</em>}</li>
 * </ul>
 *
 * @generated
 */
public class DesignLayerImpl extends NamedImpl implements DesignLayer {
	/**
	 * The default value of the '{@link #getRole() <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRole()
	 * @generated
	 * @ordered
	 */
	protected static final LayerRole ROLE_EDEFAULT = LayerRole.CUTLINE;

	/**
	 * The cached value of the '{@link #getRole() <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRole()
	 * @generated
	 * @ordered
	 */
	protected LayerRole role = ROLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getArtLayer() <em>Art Layer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getArtLayer()
	 * @generated
	 * @ordered
	 */
	protected static final String ART_LAYER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getArtLayer() <em>Art Layer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getArtLayer()
	 * @generated
	 * @ordered
	 */
	protected String artLayer = ART_LAYER_EDEFAULT;

	/**
	 * The default value of the '{@link #getFace() <em>Face</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFace()
	 * @generated
	 * @ordered
	 */
	protected static final Face FACE_EDEFAULT = Face.INTERIOR;

	/**
	 * The cached value of the '{@link #getFace() <em>Face</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFace()
	 * @generated
	 * @ordered
	 */
	protected Face face = FACE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPaint() <em>Paint</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPaint()
	 * @generated
	 * @ordered
	 */
	protected Paint paint;

	/**
	 * The cached value of the '{@link #getMedium() <em>Medium</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMedium()
	 * @generated
	 * @ordered
	 */
	protected Medium medium;

	/**
	 * The cached value of the '{@link #getMesh() <em>Mesh</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMesh()
	 * @generated
	 * @ordered
	 */
	protected Mesh mesh;

	/**
	 * The cached value of the '{@link #getSchedule() <em>Schedule</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSchedule()
	 * @generated
	 * @ordered
	 */
	protected FiringSchedule schedule;

	/**
	 * The default value of the '{@link #getFiringOrder() <em>Firing Order</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFiringOrder()
	 * @generated
	 * @ordered
	 */
	protected static final int FIRING_ORDER_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getFiringOrder() <em>Firing Order</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFiringOrder()
	 * @generated
	 * @ordered
	 */
	protected int firingOrder = FIRING_ORDER_EDEFAULT;

	/**
	 * The default value of the '{@link #getBleedMm() <em>Bleed Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBleedMm()
	 * @generated
	 * @ordered
	 */
	protected static final double BLEED_MM_EDEFAULT = 1.5;

	/**
	 * The cached value of the '{@link #getBleedMm() <em>Bleed Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBleedMm()
	 * @generated
	 * @ordered
	 */
	protected double bleedMm = BLEED_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getSightLine() <em>Sight Line</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSightLine()
	 * @generated
	 * @ordered
	 */
	protected static final SightLineRule SIGHT_LINE_EDEFAULT = SightLineRule.PRINT_UNDER;

	/**
	 * The cached value of the '{@link #getSightLine() <em>Sight Line</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSightLine()
	 * @generated
	 * @ordered
	 */
	protected SightLineRule sightLine = SIGHT_LINE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSightLineMm() <em>Sight Line Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSightLineMm()
	 * @generated
	 * @ordered
	 */
	protected static final double SIGHT_LINE_MM_EDEFAULT = 2.5;

	/**
	 * The cached value of the '{@link #getSightLineMm() <em>Sight Line Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSightLineMm()
	 * @generated
	 * @ordered
	 */
	protected double sightLineMm = SIGHT_LINE_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #isByHand() <em>By Hand</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isByHand()
	 * @generated
	 * @ordered
	 */
	protected static final boolean BY_HAND_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isByHand() <em>By Hand</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isByHand()
	 * @generated
	 * @ordered
	 */
	protected boolean byHand = BY_HAND_EDEFAULT;

	/**
	 * The cached value of the '{@link #getRecipe() <em>Recipe</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRecipe()
	 * @generated
	 * @ordered
	 */
	protected StencilRecipe recipe;

	/**
	 * The cached value of the '{@link #getStencils() <em>Stencils</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStencils()
	 * @generated
	 * @ordered
	 */
	protected EList<Stencil> stencils;

	/**
	 * The default value of the '{@link #getState() <em>State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getState()
	 * @generated
	 * @ordered
	 */
	protected static final MakingState STATE_EDEFAULT = MakingState.DRAWN;

	/**
	 * The cached value of the '{@link #getState() <em>State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getState()
	 * @generated
	 * @ordered
	 */
	protected MakingState state = STATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getContentKey() <em>Content Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getContentKey()
	 * @generated
	 * @ordered
	 */
	protected static final String CONTENT_KEY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getContentKey() <em>Content Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getContentKey()
	 * @generated
	 * @ordered
	 */
	protected String contentKey = CONTENT_KEY_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected DesignLayerImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.DESIGN_LAYER;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Panel getPanel() {
		if (eContainerFeatureID() != CommissionPackage.DESIGN_LAYER__PANEL) return null;
		return (Panel)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetPanel(Panel newPanel, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newPanel, CommissionPackage.DESIGN_LAYER__PANEL, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPanel(Panel newPanel) {
		if (newPanel != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.DESIGN_LAYER__PANEL && newPanel != null)) {
			if (EcoreUtil.isAncestor(this, newPanel))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newPanel != null)
				msgs = ((InternalEObject)newPanel).eInverseAdd(this, CommissionPackage.PANEL__LAYERS, Panel.class, msgs);
			msgs = basicSetPanel(newPanel, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DESIGN_LAYER__PANEL, newPanel, newPanel));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LayerRole getRole() {
		return role;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRole(LayerRole newRole) {
		LayerRole oldRole = role;
		role = newRole == null ? ROLE_EDEFAULT : newRole;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DESIGN_LAYER__ROLE, oldRole, role));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getArtLayer() {
		return artLayer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setArtLayer(String newArtLayer) {
		String oldArtLayer = artLayer;
		artLayer = newArtLayer;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DESIGN_LAYER__ART_LAYER, oldArtLayer, artLayer));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Face getFace() {
		return face;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFace(Face newFace) {
		Face oldFace = face;
		face = newFace == null ? FACE_EDEFAULT : newFace;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DESIGN_LAYER__FACE, oldFace, face));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Paint getPaint() {
		if (paint != null && paint.eIsProxy()) {
			InternalEObject oldPaint = (InternalEObject)paint;
			paint = (Paint)eResolveProxy(oldPaint);
			if (paint != oldPaint) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.DESIGN_LAYER__PAINT, oldPaint, paint));
			}
		}
		return paint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Paint basicGetPaint() {
		return paint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPaint(Paint newPaint) {
		Paint oldPaint = paint;
		paint = newPaint;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DESIGN_LAYER__PAINT, oldPaint, paint));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Medium getMedium() {
		if (medium != null && medium.eIsProxy()) {
			InternalEObject oldMedium = (InternalEObject)medium;
			medium = (Medium)eResolveProxy(oldMedium);
			if (medium != oldMedium) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.DESIGN_LAYER__MEDIUM, oldMedium, medium));
			}
		}
		return medium;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Medium basicGetMedium() {
		return medium;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMedium(Medium newMedium) {
		Medium oldMedium = medium;
		medium = newMedium;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DESIGN_LAYER__MEDIUM, oldMedium, medium));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Mesh getMesh() {
		if (mesh != null && mesh.eIsProxy()) {
			InternalEObject oldMesh = (InternalEObject)mesh;
			mesh = (Mesh)eResolveProxy(oldMesh);
			if (mesh != oldMesh) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.DESIGN_LAYER__MESH, oldMesh, mesh));
			}
		}
		return mesh;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Mesh basicGetMesh() {
		return mesh;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMesh(Mesh newMesh) {
		Mesh oldMesh = mesh;
		mesh = newMesh;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DESIGN_LAYER__MESH, oldMesh, mesh));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FiringSchedule getSchedule() {
		if (schedule != null && schedule.eIsProxy()) {
			InternalEObject oldSchedule = (InternalEObject)schedule;
			schedule = (FiringSchedule)eResolveProxy(oldSchedule);
			if (schedule != oldSchedule) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.DESIGN_LAYER__SCHEDULE, oldSchedule, schedule));
			}
		}
		return schedule;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public FiringSchedule basicGetSchedule() {
		return schedule;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSchedule(FiringSchedule newSchedule) {
		FiringSchedule oldSchedule = schedule;
		schedule = newSchedule;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DESIGN_LAYER__SCHEDULE, oldSchedule, schedule));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getFiringOrder() {
		return firingOrder;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFiringOrder(int newFiringOrder) {
		int oldFiringOrder = firingOrder;
		firingOrder = newFiringOrder;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DESIGN_LAYER__FIRING_ORDER, oldFiringOrder, firingOrder));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getBleedMm() {
		return bleedMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBleedMm(double newBleedMm) {
		double oldBleedMm = bleedMm;
		bleedMm = newBleedMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DESIGN_LAYER__BLEED_MM, oldBleedMm, bleedMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SightLineRule getSightLine() {
		return sightLine;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSightLine(SightLineRule newSightLine) {
		SightLineRule oldSightLine = sightLine;
		sightLine = newSightLine == null ? SIGHT_LINE_EDEFAULT : newSightLine;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DESIGN_LAYER__SIGHT_LINE, oldSightLine, sightLine));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getSightLineMm() {
		return sightLineMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSightLineMm(double newSightLineMm) {
		double oldSightLineMm = sightLineMm;
		sightLineMm = newSightLineMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DESIGN_LAYER__SIGHT_LINE_MM, oldSightLineMm, sightLineMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isByHand() {
		return byHand;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setByHand(boolean newByHand) {
		boolean oldByHand = byHand;
		byHand = newByHand;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DESIGN_LAYER__BY_HAND, oldByHand, byHand));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StencilRecipe getRecipe() {
		return recipe;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetRecipe(StencilRecipe newRecipe, NotificationChain msgs) {
		StencilRecipe oldRecipe = recipe;
		recipe = newRecipe;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, CommissionPackage.DESIGN_LAYER__RECIPE, oldRecipe, newRecipe);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRecipe(StencilRecipe newRecipe) {
		if (newRecipe != recipe) {
			NotificationChain msgs = null;
			if (recipe != null)
				msgs = ((InternalEObject)recipe).eInverseRemove(this, CommissionPackage.STENCIL_RECIPE__LAYER, StencilRecipe.class, msgs);
			if (newRecipe != null)
				msgs = ((InternalEObject)newRecipe).eInverseAdd(this, CommissionPackage.STENCIL_RECIPE__LAYER, StencilRecipe.class, msgs);
			msgs = basicSetRecipe(newRecipe, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DESIGN_LAYER__RECIPE, newRecipe, newRecipe));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Stencil> getStencils() {
		if (stencils == null) {
			stencils = new EObjectContainmentWithInverseEList<Stencil>(Stencil.class, this, CommissionPackage.DESIGN_LAYER__STENCILS, CommissionPackage.STENCIL__LAYER);
		}
		return stencils;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MakingState getState() {
		return state;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setState(MakingState newState) {
		MakingState oldState = state;
		state = newState == null ? STATE_EDEFAULT : newState;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DESIGN_LAYER__STATE, oldState, state));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getContentKey() {
		return contentKey;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setContentKey(String newContentKey) {
		String oldContentKey = contentKey;
		contentKey = newContentKey;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DESIGN_LAYER__CONTENT_KEY, oldContentKey, contentKey));
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
			case CommissionPackage.DESIGN_LAYER__PANEL:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetPanel((Panel)otherEnd, msgs);
			case CommissionPackage.DESIGN_LAYER__RECIPE:
				if (recipe != null)
					msgs = ((InternalEObject)recipe).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - CommissionPackage.DESIGN_LAYER__RECIPE, null, msgs);
				return basicSetRecipe((StencilRecipe)otherEnd, msgs);
			case CommissionPackage.DESIGN_LAYER__STENCILS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getStencils()).basicAdd(otherEnd, msgs);
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
			case CommissionPackage.DESIGN_LAYER__PANEL:
				return basicSetPanel(null, msgs);
			case CommissionPackage.DESIGN_LAYER__RECIPE:
				return basicSetRecipe(null, msgs);
			case CommissionPackage.DESIGN_LAYER__STENCILS:
				return ((InternalEList<?>)getStencils()).basicRemove(otherEnd, msgs);
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
			case CommissionPackage.DESIGN_LAYER__PANEL:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.PANEL__LAYERS, Panel.class, msgs);
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
			case CommissionPackage.DESIGN_LAYER__PANEL:
				return getPanel();
			case CommissionPackage.DESIGN_LAYER__ROLE:
				return getRole();
			case CommissionPackage.DESIGN_LAYER__ART_LAYER:
				return getArtLayer();
			case CommissionPackage.DESIGN_LAYER__FACE:
				return getFace();
			case CommissionPackage.DESIGN_LAYER__PAINT:
				if (resolve) return getPaint();
				return basicGetPaint();
			case CommissionPackage.DESIGN_LAYER__MEDIUM:
				if (resolve) return getMedium();
				return basicGetMedium();
			case CommissionPackage.DESIGN_LAYER__MESH:
				if (resolve) return getMesh();
				return basicGetMesh();
			case CommissionPackage.DESIGN_LAYER__SCHEDULE:
				if (resolve) return getSchedule();
				return basicGetSchedule();
			case CommissionPackage.DESIGN_LAYER__FIRING_ORDER:
				return getFiringOrder();
			case CommissionPackage.DESIGN_LAYER__BLEED_MM:
				return getBleedMm();
			case CommissionPackage.DESIGN_LAYER__SIGHT_LINE:
				return getSightLine();
			case CommissionPackage.DESIGN_LAYER__SIGHT_LINE_MM:
				return getSightLineMm();
			case CommissionPackage.DESIGN_LAYER__BY_HAND:
				return isByHand();
			case CommissionPackage.DESIGN_LAYER__RECIPE:
				return getRecipe();
			case CommissionPackage.DESIGN_LAYER__STENCILS:
				return getStencils();
			case CommissionPackage.DESIGN_LAYER__STATE:
				return getState();
			case CommissionPackage.DESIGN_LAYER__CONTENT_KEY:
				return getContentKey();
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
			case CommissionPackage.DESIGN_LAYER__PANEL:
				setPanel((Panel)newValue);
				return;
			case CommissionPackage.DESIGN_LAYER__ROLE:
				setRole((LayerRole)newValue);
				return;
			case CommissionPackage.DESIGN_LAYER__ART_LAYER:
				setArtLayer((String)newValue);
				return;
			case CommissionPackage.DESIGN_LAYER__FACE:
				setFace((Face)newValue);
				return;
			case CommissionPackage.DESIGN_LAYER__PAINT:
				setPaint((Paint)newValue);
				return;
			case CommissionPackage.DESIGN_LAYER__MEDIUM:
				setMedium((Medium)newValue);
				return;
			case CommissionPackage.DESIGN_LAYER__MESH:
				setMesh((Mesh)newValue);
				return;
			case CommissionPackage.DESIGN_LAYER__SCHEDULE:
				setSchedule((FiringSchedule)newValue);
				return;
			case CommissionPackage.DESIGN_LAYER__FIRING_ORDER:
				setFiringOrder((Integer)newValue);
				return;
			case CommissionPackage.DESIGN_LAYER__BLEED_MM:
				setBleedMm((Double)newValue);
				return;
			case CommissionPackage.DESIGN_LAYER__SIGHT_LINE:
				setSightLine((SightLineRule)newValue);
				return;
			case CommissionPackage.DESIGN_LAYER__SIGHT_LINE_MM:
				setSightLineMm((Double)newValue);
				return;
			case CommissionPackage.DESIGN_LAYER__BY_HAND:
				setByHand((Boolean)newValue);
				return;
			case CommissionPackage.DESIGN_LAYER__RECIPE:
				setRecipe((StencilRecipe)newValue);
				return;
			case CommissionPackage.DESIGN_LAYER__STENCILS:
				getStencils().clear();
				getStencils().addAll((Collection<? extends Stencil>)newValue);
				return;
			case CommissionPackage.DESIGN_LAYER__STATE:
				setState((MakingState)newValue);
				return;
			case CommissionPackage.DESIGN_LAYER__CONTENT_KEY:
				setContentKey((String)newValue);
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
			case CommissionPackage.DESIGN_LAYER__PANEL:
				setPanel((Panel)null);
				return;
			case CommissionPackage.DESIGN_LAYER__ROLE:
				setRole(ROLE_EDEFAULT);
				return;
			case CommissionPackage.DESIGN_LAYER__ART_LAYER:
				setArtLayer(ART_LAYER_EDEFAULT);
				return;
			case CommissionPackage.DESIGN_LAYER__FACE:
				setFace(FACE_EDEFAULT);
				return;
			case CommissionPackage.DESIGN_LAYER__PAINT:
				setPaint((Paint)null);
				return;
			case CommissionPackage.DESIGN_LAYER__MEDIUM:
				setMedium((Medium)null);
				return;
			case CommissionPackage.DESIGN_LAYER__MESH:
				setMesh((Mesh)null);
				return;
			case CommissionPackage.DESIGN_LAYER__SCHEDULE:
				setSchedule((FiringSchedule)null);
				return;
			case CommissionPackage.DESIGN_LAYER__FIRING_ORDER:
				setFiringOrder(FIRING_ORDER_EDEFAULT);
				return;
			case CommissionPackage.DESIGN_LAYER__BLEED_MM:
				setBleedMm(BLEED_MM_EDEFAULT);
				return;
			case CommissionPackage.DESIGN_LAYER__SIGHT_LINE:
				setSightLine(SIGHT_LINE_EDEFAULT);
				return;
			case CommissionPackage.DESIGN_LAYER__SIGHT_LINE_MM:
				setSightLineMm(SIGHT_LINE_MM_EDEFAULT);
				return;
			case CommissionPackage.DESIGN_LAYER__BY_HAND:
				setByHand(BY_HAND_EDEFAULT);
				return;
			case CommissionPackage.DESIGN_LAYER__RECIPE:
				setRecipe((StencilRecipe)null);
				return;
			case CommissionPackage.DESIGN_LAYER__STENCILS:
				getStencils().clear();
				return;
			case CommissionPackage.DESIGN_LAYER__STATE:
				setState(STATE_EDEFAULT);
				return;
			case CommissionPackage.DESIGN_LAYER__CONTENT_KEY:
				setContentKey(CONTENT_KEY_EDEFAULT);
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
			case CommissionPackage.DESIGN_LAYER__PANEL:
				return getPanel() != null;
			case CommissionPackage.DESIGN_LAYER__ROLE:
				return role != ROLE_EDEFAULT;
			case CommissionPackage.DESIGN_LAYER__ART_LAYER:
				return ART_LAYER_EDEFAULT == null ? artLayer != null : !ART_LAYER_EDEFAULT.equals(artLayer);
			case CommissionPackage.DESIGN_LAYER__FACE:
				return face != FACE_EDEFAULT;
			case CommissionPackage.DESIGN_LAYER__PAINT:
				return paint != null;
			case CommissionPackage.DESIGN_LAYER__MEDIUM:
				return medium != null;
			case CommissionPackage.DESIGN_LAYER__MESH:
				return mesh != null;
			case CommissionPackage.DESIGN_LAYER__SCHEDULE:
				return schedule != null;
			case CommissionPackage.DESIGN_LAYER__FIRING_ORDER:
				return firingOrder != FIRING_ORDER_EDEFAULT;
			case CommissionPackage.DESIGN_LAYER__BLEED_MM:
				return bleedMm != BLEED_MM_EDEFAULT;
			case CommissionPackage.DESIGN_LAYER__SIGHT_LINE:
				return sightLine != SIGHT_LINE_EDEFAULT;
			case CommissionPackage.DESIGN_LAYER__SIGHT_LINE_MM:
				return sightLineMm != SIGHT_LINE_MM_EDEFAULT;
			case CommissionPackage.DESIGN_LAYER__BY_HAND:
				return byHand != BY_HAND_EDEFAULT;
			case CommissionPackage.DESIGN_LAYER__RECIPE:
				return recipe != null;
			case CommissionPackage.DESIGN_LAYER__STENCILS:
				return stencils != null && !stencils.isEmpty();
			case CommissionPackage.DESIGN_LAYER__STATE:
				return state != STATE_EDEFAULT;
			case CommissionPackage.DESIGN_LAYER__CONTENT_KEY:
				return CONTENT_KEY_EDEFAULT == null ? contentKey != null : !CONTENT_KEY_EDEFAULT.equals(contentKey);
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
		result.append(" (role: ");
		result.append(role);
		result.append(", artLayer: ");
		result.append(artLayer);
		result.append(", face: ");
		result.append(face);
		result.append(", firingOrder: ");
		result.append(firingOrder);
		result.append(", bleedMm: ");
		result.append(bleedMm);
		result.append(", sightLine: ");
		result.append(sightLine);
		result.append(", sightLineMm: ");
		result.append(sightLineMm);
		result.append(", byHand: ");
		result.append(byHand);
		result.append(", state: ");
		result.append(state);
		result.append(", contentKey: ");
		result.append(contentKey);
		result.append(')');
		return result.toString();
	}

} //DesignLayerImpl
