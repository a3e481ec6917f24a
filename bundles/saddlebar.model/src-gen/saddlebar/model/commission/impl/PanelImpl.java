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

import saddlebar.model.art.OutlineMm;

import saddlebar.model.commission.AcceptedMend;
import saddlebar.model.commission.ArtworkReference;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.JoinKind;
import saddlebar.model.commission.JoinRule;
import saddlebar.model.commission.JoinStock;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Window;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Panel</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.PanelImpl#getWindow <em>Window</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PanelImpl#getXMm <em>XMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PanelImpl#getYMm <em>YMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PanelImpl#getOutline <em>Outline</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PanelImpl#getJoin <em>Join</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PanelImpl#getGapMm <em>Gap Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PanelImpl#getJoinStock <em>Join Stock</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PanelImpl#getArtwork <em>Artwork</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PanelImpl#getPieces <em>Pieces</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PanelImpl#getLayers <em>Layers</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PanelImpl#getContentKey <em>Content Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PanelImpl#getEdgeAllowanceMm <em>Edge Allowance Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PanelImpl#getOutlineElement <em>Outline Element</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PanelImpl#getMendings <em>Mendings</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PanelImpl#getJoinRules <em>Join Rules</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PanelImpl extends NamedImpl implements Panel {
	/**
	 * The default value of the '{@link #getXMm() <em>XMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getXMm()
	 * @generated
	 * @ordered
	 */
	protected static final double XMM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getXMm() <em>XMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getXMm()
	 * @generated
	 * @ordered
	 */
	protected double xMm = XMM_EDEFAULT;

	/**
	 * The default value of the '{@link #getYMm() <em>YMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getYMm()
	 * @generated
	 * @ordered
	 */
	protected static final double YMM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getYMm() <em>YMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getYMm()
	 * @generated
	 * @ordered
	 */
	protected double yMm = YMM_EDEFAULT;

	/**
	 * The default value of the '{@link #getOutline() <em>Outline</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutline()
	 * @generated
	 * @ordered
	 */
	protected static final OutlineMm OUTLINE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOutline() <em>Outline</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutline()
	 * @generated
	 * @ordered
	 */
	protected OutlineMm outline = OUTLINE_EDEFAULT;

	/**
	 * The default value of the '{@link #getJoin() <em>Join</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getJoin()
	 * @generated
	 * @ordered
	 */
	protected static final JoinKind JOIN_EDEFAULT = JoinKind.FOIL;

	/**
	 * The cached value of the '{@link #getJoin() <em>Join</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getJoin()
	 * @generated
	 * @ordered
	 */
	protected JoinKind join = JOIN_EDEFAULT;

	/**
	 * The default value of the '{@link #getGapMm() <em>Gap Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGapMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double GAP_MM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGapMm() <em>Gap Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGapMm()
	 * @generated
	 * @ordered
	 */
	protected Double gapMm = GAP_MM_EDEFAULT;

	/**
	 * The cached value of the '{@link #getJoinStock() <em>Join Stock</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getJoinStock()
	 * @generated
	 * @ordered
	 */
	protected JoinStock joinStock;

	/**
	 * The cached value of the '{@link #getArtwork() <em>Artwork</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getArtwork()
	 * @generated
	 * @ordered
	 */
	protected EList<ArtworkReference> artwork;

	/**
	 * The cached value of the '{@link #getPieces() <em>Pieces</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPieces()
	 * @generated
	 * @ordered
	 */
	protected EList<Piece> pieces;

	/**
	 * The cached value of the '{@link #getLayers() <em>Layers</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLayers()
	 * @generated
	 * @ordered
	 */
	protected EList<DesignLayer> layers;

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
	 * The default value of the '{@link #getEdgeAllowanceMm() <em>Edge Allowance Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEdgeAllowanceMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double EDGE_ALLOWANCE_MM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEdgeAllowanceMm() <em>Edge Allowance Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEdgeAllowanceMm()
	 * @generated
	 * @ordered
	 */
	protected Double edgeAllowanceMm = EDGE_ALLOWANCE_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getOutlineElement() <em>Outline Element</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutlineElement()
	 * @generated
	 * @ordered
	 */
	protected static final String OUTLINE_ELEMENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOutlineElement() <em>Outline Element</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutlineElement()
	 * @generated
	 * @ordered
	 */
	protected String outlineElement = OUTLINE_ELEMENT_EDEFAULT;

	/**
	 * The cached value of the '{@link #getMendings() <em>Mendings</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMendings()
	 * @generated
	 * @ordered
	 */
	protected EList<AcceptedMend> mendings;

	/**
	 * The cached value of the '{@link #getJoinRules() <em>Join Rules</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getJoinRules()
	 * @generated
	 * @ordered
	 */
	protected EList<JoinRule> joinRules;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PanelImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.PANEL;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Window getWindow() {
		if (eContainerFeatureID() != CommissionPackage.PANEL__WINDOW) return null;
		return (Window)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetWindow(Window newWindow, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newWindow, CommissionPackage.PANEL__WINDOW, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWindow(Window newWindow) {
		if (newWindow != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.PANEL__WINDOW && newWindow != null)) {
			if (EcoreUtil.isAncestor(this, newWindow))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newWindow != null)
				msgs = ((InternalEObject)newWindow).eInverseAdd(this, CommissionPackage.WINDOW__PANELS, Window.class, msgs);
			msgs = basicSetWindow(newWindow, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PANEL__WINDOW, newWindow, newWindow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getXMm() {
		return xMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setXMm(double newXMm) {
		double oldXMm = xMm;
		xMm = newXMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PANEL__XMM, oldXMm, xMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getYMm() {
		return yMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setYMm(double newYMm) {
		double oldYMm = yMm;
		yMm = newYMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PANEL__YMM, oldYMm, yMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public OutlineMm getOutline() {
		return outline;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOutline(OutlineMm newOutline) {
		OutlineMm oldOutline = outline;
		outline = newOutline;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PANEL__OUTLINE, oldOutline, outline));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public JoinKind getJoin() {
		return join;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setJoin(JoinKind newJoin) {
		JoinKind oldJoin = join;
		join = newJoin == null ? JOIN_EDEFAULT : newJoin;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PANEL__JOIN, oldJoin, join));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getGapMm() {
		return gapMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGapMm(Double newGapMm) {
		Double oldGapMm = gapMm;
		gapMm = newGapMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PANEL__GAP_MM, oldGapMm, gapMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public JoinStock getJoinStock() {
		if (joinStock != null && joinStock.eIsProxy()) {
			InternalEObject oldJoinStock = (InternalEObject)joinStock;
			joinStock = (JoinStock)eResolveProxy(oldJoinStock);
			if (joinStock != oldJoinStock) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.PANEL__JOIN_STOCK, oldJoinStock, joinStock));
			}
		}
		return joinStock;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public JoinStock basicGetJoinStock() {
		return joinStock;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setJoinStock(JoinStock newJoinStock) {
		JoinStock oldJoinStock = joinStock;
		joinStock = newJoinStock;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PANEL__JOIN_STOCK, oldJoinStock, joinStock));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ArtworkReference> getArtwork() {
		if (artwork == null) {
			artwork = new EObjectContainmentWithInverseEList<ArtworkReference>(ArtworkReference.class, this, CommissionPackage.PANEL__ARTWORK, CommissionPackage.ARTWORK_REFERENCE__PANEL);
		}
		return artwork;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Piece> getPieces() {
		if (pieces == null) {
			pieces = new EObjectContainmentWithInverseEList<Piece>(Piece.class, this, CommissionPackage.PANEL__PIECES, CommissionPackage.PIECE__PANEL);
		}
		return pieces;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<DesignLayer> getLayers() {
		if (layers == null) {
			layers = new EObjectContainmentWithInverseEList<DesignLayer>(DesignLayer.class, this, CommissionPackage.PANEL__LAYERS, CommissionPackage.DESIGN_LAYER__PANEL);
		}
		return layers;
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PANEL__CONTENT_KEY, oldContentKey, contentKey));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getEdgeAllowanceMm() {
		return edgeAllowanceMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEdgeAllowanceMm(Double newEdgeAllowanceMm) {
		Double oldEdgeAllowanceMm = edgeAllowanceMm;
		edgeAllowanceMm = newEdgeAllowanceMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PANEL__EDGE_ALLOWANCE_MM, oldEdgeAllowanceMm, edgeAllowanceMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getOutlineElement() {
		return outlineElement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOutlineElement(String newOutlineElement) {
		String oldOutlineElement = outlineElement;
		outlineElement = newOutlineElement;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PANEL__OUTLINE_ELEMENT, oldOutlineElement, outlineElement));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<AcceptedMend> getMendings() {
		if (mendings == null) {
			mendings = new EObjectContainmentWithInverseEList<AcceptedMend>(AcceptedMend.class, this, CommissionPackage.PANEL__MENDINGS, CommissionPackage.ACCEPTED_MEND__PANEL);
		}
		return mendings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<JoinRule> getJoinRules() {
		if (joinRules == null) {
			joinRules = new EObjectContainmentWithInverseEList<JoinRule>(JoinRule.class, this, CommissionPackage.PANEL__JOIN_RULES, CommissionPackage.JOIN_RULE__PANEL);
		}
		return joinRules;
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
			case CommissionPackage.PANEL__WINDOW:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetWindow((Window)otherEnd, msgs);
			case CommissionPackage.PANEL__ARTWORK:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getArtwork()).basicAdd(otherEnd, msgs);
			case CommissionPackage.PANEL__PIECES:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getPieces()).basicAdd(otherEnd, msgs);
			case CommissionPackage.PANEL__LAYERS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getLayers()).basicAdd(otherEnd, msgs);
			case CommissionPackage.PANEL__MENDINGS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getMendings()).basicAdd(otherEnd, msgs);
			case CommissionPackage.PANEL__JOIN_RULES:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getJoinRules()).basicAdd(otherEnd, msgs);
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
			case CommissionPackage.PANEL__WINDOW:
				return basicSetWindow(null, msgs);
			case CommissionPackage.PANEL__ARTWORK:
				return ((InternalEList<?>)getArtwork()).basicRemove(otherEnd, msgs);
			case CommissionPackage.PANEL__PIECES:
				return ((InternalEList<?>)getPieces()).basicRemove(otherEnd, msgs);
			case CommissionPackage.PANEL__LAYERS:
				return ((InternalEList<?>)getLayers()).basicRemove(otherEnd, msgs);
			case CommissionPackage.PANEL__MENDINGS:
				return ((InternalEList<?>)getMendings()).basicRemove(otherEnd, msgs);
			case CommissionPackage.PANEL__JOIN_RULES:
				return ((InternalEList<?>)getJoinRules()).basicRemove(otherEnd, msgs);
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
			case CommissionPackage.PANEL__WINDOW:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.WINDOW__PANELS, Window.class, msgs);
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
			case CommissionPackage.PANEL__WINDOW:
				return getWindow();
			case CommissionPackage.PANEL__XMM:
				return getXMm();
			case CommissionPackage.PANEL__YMM:
				return getYMm();
			case CommissionPackage.PANEL__OUTLINE:
				return getOutline();
			case CommissionPackage.PANEL__JOIN:
				return getJoin();
			case CommissionPackage.PANEL__GAP_MM:
				return getGapMm();
			case CommissionPackage.PANEL__JOIN_STOCK:
				if (resolve) return getJoinStock();
				return basicGetJoinStock();
			case CommissionPackage.PANEL__ARTWORK:
				return getArtwork();
			case CommissionPackage.PANEL__PIECES:
				return getPieces();
			case CommissionPackage.PANEL__LAYERS:
				return getLayers();
			case CommissionPackage.PANEL__CONTENT_KEY:
				return getContentKey();
			case CommissionPackage.PANEL__EDGE_ALLOWANCE_MM:
				return getEdgeAllowanceMm();
			case CommissionPackage.PANEL__OUTLINE_ELEMENT:
				return getOutlineElement();
			case CommissionPackage.PANEL__MENDINGS:
				return getMendings();
			case CommissionPackage.PANEL__JOIN_RULES:
				return getJoinRules();
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
			case CommissionPackage.PANEL__WINDOW:
				setWindow((Window)newValue);
				return;
			case CommissionPackage.PANEL__XMM:
				setXMm((Double)newValue);
				return;
			case CommissionPackage.PANEL__YMM:
				setYMm((Double)newValue);
				return;
			case CommissionPackage.PANEL__OUTLINE:
				setOutline((OutlineMm)newValue);
				return;
			case CommissionPackage.PANEL__JOIN:
				setJoin((JoinKind)newValue);
				return;
			case CommissionPackage.PANEL__GAP_MM:
				setGapMm((Double)newValue);
				return;
			case CommissionPackage.PANEL__JOIN_STOCK:
				setJoinStock((JoinStock)newValue);
				return;
			case CommissionPackage.PANEL__ARTWORK:
				getArtwork().clear();
				getArtwork().addAll((Collection<? extends ArtworkReference>)newValue);
				return;
			case CommissionPackage.PANEL__PIECES:
				getPieces().clear();
				getPieces().addAll((Collection<? extends Piece>)newValue);
				return;
			case CommissionPackage.PANEL__LAYERS:
				getLayers().clear();
				getLayers().addAll((Collection<? extends DesignLayer>)newValue);
				return;
			case CommissionPackage.PANEL__CONTENT_KEY:
				setContentKey((String)newValue);
				return;
			case CommissionPackage.PANEL__EDGE_ALLOWANCE_MM:
				setEdgeAllowanceMm((Double)newValue);
				return;
			case CommissionPackage.PANEL__OUTLINE_ELEMENT:
				setOutlineElement((String)newValue);
				return;
			case CommissionPackage.PANEL__MENDINGS:
				getMendings().clear();
				getMendings().addAll((Collection<? extends AcceptedMend>)newValue);
				return;
			case CommissionPackage.PANEL__JOIN_RULES:
				getJoinRules().clear();
				getJoinRules().addAll((Collection<? extends JoinRule>)newValue);
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
			case CommissionPackage.PANEL__WINDOW:
				setWindow((Window)null);
				return;
			case CommissionPackage.PANEL__XMM:
				setXMm(XMM_EDEFAULT);
				return;
			case CommissionPackage.PANEL__YMM:
				setYMm(YMM_EDEFAULT);
				return;
			case CommissionPackage.PANEL__OUTLINE:
				setOutline(OUTLINE_EDEFAULT);
				return;
			case CommissionPackage.PANEL__JOIN:
				setJoin(JOIN_EDEFAULT);
				return;
			case CommissionPackage.PANEL__GAP_MM:
				setGapMm(GAP_MM_EDEFAULT);
				return;
			case CommissionPackage.PANEL__JOIN_STOCK:
				setJoinStock((JoinStock)null);
				return;
			case CommissionPackage.PANEL__ARTWORK:
				getArtwork().clear();
				return;
			case CommissionPackage.PANEL__PIECES:
				getPieces().clear();
				return;
			case CommissionPackage.PANEL__LAYERS:
				getLayers().clear();
				return;
			case CommissionPackage.PANEL__CONTENT_KEY:
				setContentKey(CONTENT_KEY_EDEFAULT);
				return;
			case CommissionPackage.PANEL__EDGE_ALLOWANCE_MM:
				setEdgeAllowanceMm(EDGE_ALLOWANCE_MM_EDEFAULT);
				return;
			case CommissionPackage.PANEL__OUTLINE_ELEMENT:
				setOutlineElement(OUTLINE_ELEMENT_EDEFAULT);
				return;
			case CommissionPackage.PANEL__MENDINGS:
				getMendings().clear();
				return;
			case CommissionPackage.PANEL__JOIN_RULES:
				getJoinRules().clear();
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
			case CommissionPackage.PANEL__WINDOW:
				return getWindow() != null;
			case CommissionPackage.PANEL__XMM:
				return xMm != XMM_EDEFAULT;
			case CommissionPackage.PANEL__YMM:
				return yMm != YMM_EDEFAULT;
			case CommissionPackage.PANEL__OUTLINE:
				return OUTLINE_EDEFAULT == null ? outline != null : !OUTLINE_EDEFAULT.equals(outline);
			case CommissionPackage.PANEL__JOIN:
				return join != JOIN_EDEFAULT;
			case CommissionPackage.PANEL__GAP_MM:
				return GAP_MM_EDEFAULT == null ? gapMm != null : !GAP_MM_EDEFAULT.equals(gapMm);
			case CommissionPackage.PANEL__JOIN_STOCK:
				return joinStock != null;
			case CommissionPackage.PANEL__ARTWORK:
				return artwork != null && !artwork.isEmpty();
			case CommissionPackage.PANEL__PIECES:
				return pieces != null && !pieces.isEmpty();
			case CommissionPackage.PANEL__LAYERS:
				return layers != null && !layers.isEmpty();
			case CommissionPackage.PANEL__CONTENT_KEY:
				return CONTENT_KEY_EDEFAULT == null ? contentKey != null : !CONTENT_KEY_EDEFAULT.equals(contentKey);
			case CommissionPackage.PANEL__EDGE_ALLOWANCE_MM:
				return EDGE_ALLOWANCE_MM_EDEFAULT == null ? edgeAllowanceMm != null : !EDGE_ALLOWANCE_MM_EDEFAULT.equals(edgeAllowanceMm);
			case CommissionPackage.PANEL__OUTLINE_ELEMENT:
				return OUTLINE_ELEMENT_EDEFAULT == null ? outlineElement != null : !OUTLINE_ELEMENT_EDEFAULT.equals(outlineElement);
			case CommissionPackage.PANEL__MENDINGS:
				return mendings != null && !mendings.isEmpty();
			case CommissionPackage.PANEL__JOIN_RULES:
				return joinRules != null && !joinRules.isEmpty();
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
		result.append(" (xMm: ");
		result.append(xMm);
		result.append(", yMm: ");
		result.append(yMm);
		result.append(", outline: ");
		result.append(outline);
		result.append(", join: ");
		result.append(join);
		result.append(", gapMm: ");
		result.append(gapMm);
		result.append(", contentKey: ");
		result.append(contentKey);
		result.append(", edgeAllowanceMm: ");
		result.append(edgeAllowanceMm);
		result.append(", outlineElement: ");
		result.append(outlineElement);
		result.append(')');
		return result.toString();
	}

} //PanelImpl
