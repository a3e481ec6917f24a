/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EcoreUtil;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.JoinKind;
import saddlebar.model.commission.JoinRule;
import saddlebar.model.commission.JoinStock;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Join Rule</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.JoinRuleImpl#getPanel <em>Panel</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.JoinRuleImpl#getArtLayer <em>Art Layer</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.JoinRuleImpl#getFirst <em>First</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.JoinRuleImpl#getSecond <em>Second</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.JoinRuleImpl#getJoin <em>Join</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.JoinRuleImpl#getJoinStock <em>Join Stock</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.JoinRuleImpl#getGapMm <em>Gap Mm</em>}</li>
 * </ul>
 *
 * @generated
 */
public class JoinRuleImpl extends MinimalEObjectImpl.Container implements JoinRule {
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
	 * The cached value of the '{@link #getFirst() <em>First</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFirst()
	 * @generated
	 * @ordered
	 */
	protected Piece first;

	/**
	 * The cached value of the '{@link #getSecond() <em>Second</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSecond()
	 * @generated
	 * @ordered
	 */
	protected Piece second;

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
	 * The cached value of the '{@link #getJoinStock() <em>Join Stock</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getJoinStock()
	 * @generated
	 * @ordered
	 */
	protected JoinStock joinStock;

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
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected JoinRuleImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.JOIN_RULE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Panel getPanel() {
		if (eContainerFeatureID() != CommissionPackage.JOIN_RULE__PANEL) return null;
		return (Panel)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetPanel(Panel newPanel, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newPanel, CommissionPackage.JOIN_RULE__PANEL, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPanel(Panel newPanel) {
		if (newPanel != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.JOIN_RULE__PANEL && newPanel != null)) {
			if (EcoreUtil.isAncestor(this, newPanel))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newPanel != null)
				msgs = ((InternalEObject)newPanel).eInverseAdd(this, CommissionPackage.PANEL__JOIN_RULES, Panel.class, msgs);
			msgs = basicSetPanel(newPanel, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.JOIN_RULE__PANEL, newPanel, newPanel));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.JOIN_RULE__ART_LAYER, oldArtLayer, artLayer));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Piece getFirst() {
		if (first != null && first.eIsProxy()) {
			InternalEObject oldFirst = (InternalEObject)first;
			first = (Piece)eResolveProxy(oldFirst);
			if (first != oldFirst) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.JOIN_RULE__FIRST, oldFirst, first));
			}
		}
		return first;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Piece basicGetFirst() {
		return first;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFirst(Piece newFirst) {
		Piece oldFirst = first;
		first = newFirst;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.JOIN_RULE__FIRST, oldFirst, first));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Piece getSecond() {
		if (second != null && second.eIsProxy()) {
			InternalEObject oldSecond = (InternalEObject)second;
			second = (Piece)eResolveProxy(oldSecond);
			if (second != oldSecond) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.JOIN_RULE__SECOND, oldSecond, second));
			}
		}
		return second;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Piece basicGetSecond() {
		return second;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSecond(Piece newSecond) {
		Piece oldSecond = second;
		second = newSecond;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.JOIN_RULE__SECOND, oldSecond, second));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.JOIN_RULE__JOIN, oldJoin, join));
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.JOIN_RULE__JOIN_STOCK, oldJoinStock, joinStock));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.JOIN_RULE__JOIN_STOCK, oldJoinStock, joinStock));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.JOIN_RULE__GAP_MM, oldGapMm, gapMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.JOIN_RULE__PANEL:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetPanel((Panel)otherEnd, msgs);
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
			case CommissionPackage.JOIN_RULE__PANEL:
				return basicSetPanel(null, msgs);
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
			case CommissionPackage.JOIN_RULE__PANEL:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.PANEL__JOIN_RULES, Panel.class, msgs);
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
			case CommissionPackage.JOIN_RULE__PANEL:
				return getPanel();
			case CommissionPackage.JOIN_RULE__ART_LAYER:
				return getArtLayer();
			case CommissionPackage.JOIN_RULE__FIRST:
				if (resolve) return getFirst();
				return basicGetFirst();
			case CommissionPackage.JOIN_RULE__SECOND:
				if (resolve) return getSecond();
				return basicGetSecond();
			case CommissionPackage.JOIN_RULE__JOIN:
				return getJoin();
			case CommissionPackage.JOIN_RULE__JOIN_STOCK:
				if (resolve) return getJoinStock();
				return basicGetJoinStock();
			case CommissionPackage.JOIN_RULE__GAP_MM:
				return getGapMm();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case CommissionPackage.JOIN_RULE__PANEL:
				setPanel((Panel)newValue);
				return;
			case CommissionPackage.JOIN_RULE__ART_LAYER:
				setArtLayer((String)newValue);
				return;
			case CommissionPackage.JOIN_RULE__FIRST:
				setFirst((Piece)newValue);
				return;
			case CommissionPackage.JOIN_RULE__SECOND:
				setSecond((Piece)newValue);
				return;
			case CommissionPackage.JOIN_RULE__JOIN:
				setJoin((JoinKind)newValue);
				return;
			case CommissionPackage.JOIN_RULE__JOIN_STOCK:
				setJoinStock((JoinStock)newValue);
				return;
			case CommissionPackage.JOIN_RULE__GAP_MM:
				setGapMm((Double)newValue);
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
			case CommissionPackage.JOIN_RULE__PANEL:
				setPanel((Panel)null);
				return;
			case CommissionPackage.JOIN_RULE__ART_LAYER:
				setArtLayer(ART_LAYER_EDEFAULT);
				return;
			case CommissionPackage.JOIN_RULE__FIRST:
				setFirst((Piece)null);
				return;
			case CommissionPackage.JOIN_RULE__SECOND:
				setSecond((Piece)null);
				return;
			case CommissionPackage.JOIN_RULE__JOIN:
				setJoin(JOIN_EDEFAULT);
				return;
			case CommissionPackage.JOIN_RULE__JOIN_STOCK:
				setJoinStock((JoinStock)null);
				return;
			case CommissionPackage.JOIN_RULE__GAP_MM:
				setGapMm(GAP_MM_EDEFAULT);
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
			case CommissionPackage.JOIN_RULE__PANEL:
				return getPanel() != null;
			case CommissionPackage.JOIN_RULE__ART_LAYER:
				return ART_LAYER_EDEFAULT == null ? artLayer != null : !ART_LAYER_EDEFAULT.equals(artLayer);
			case CommissionPackage.JOIN_RULE__FIRST:
				return first != null;
			case CommissionPackage.JOIN_RULE__SECOND:
				return second != null;
			case CommissionPackage.JOIN_RULE__JOIN:
				return join != JOIN_EDEFAULT;
			case CommissionPackage.JOIN_RULE__JOIN_STOCK:
				return joinStock != null;
			case CommissionPackage.JOIN_RULE__GAP_MM:
				return GAP_MM_EDEFAULT == null ? gapMm != null : !GAP_MM_EDEFAULT.equals(gapMm);
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
		result.append(" (artLayer: ");
		result.append(artLayer);
		result.append(", join: ");
		result.append(join);
		result.append(", gapMm: ");
		result.append(gapMm);
		result.append(')');
		return result.toString();
	}

} //JoinRuleImpl
