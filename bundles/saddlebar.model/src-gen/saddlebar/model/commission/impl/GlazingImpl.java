/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EDataTypeUniqueEList;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.Glazing;
import saddlebar.model.commission.JoinKind;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Glazing</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.GlazingImpl#getWindowId <em>Window Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlazingImpl#getPanelId <em>Panel Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlazingImpl#getPieceIds <em>Piece Ids</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlazingImpl#getJoin <em>Join</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlazingImpl#getMassKg <em>Mass Kg</em>}</li>
 * </ul>
 *
 * @generated
 */
public class GlazingImpl extends MakingRecordImpl implements Glazing {
	/**
	 * The default value of the '{@link #getWindowId() <em>Window Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWindowId()
	 * @generated
	 * @ordered
	 */
	protected static final String WINDOW_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWindowId() <em>Window Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWindowId()
	 * @generated
	 * @ordered
	 */
	protected String windowId = WINDOW_ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getPanelId() <em>Panel Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPanelId()
	 * @generated
	 * @ordered
	 */
	protected static final String PANEL_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPanelId() <em>Panel Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPanelId()
	 * @generated
	 * @ordered
	 */
	protected String panelId = PANEL_ID_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPieceIds() <em>Piece Ids</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPieceIds()
	 * @generated
	 * @ordered
	 */
	protected EList<String> pieceIds;

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
	 * The default value of the '{@link #getMassKg() <em>Mass Kg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMassKg()
	 * @generated
	 * @ordered
	 */
	protected static final Double MASS_KG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMassKg() <em>Mass Kg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMassKg()
	 * @generated
	 * @ordered
	 */
	protected Double massKg = MASS_KG_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected GlazingImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.GLAZING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWindowId() {
		return windowId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWindowId(String newWindowId) {
		String oldWindowId = windowId;
		windowId = newWindowId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLAZING__WINDOW_ID, oldWindowId, windowId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPanelId() {
		return panelId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPanelId(String newPanelId) {
		String oldPanelId = panelId;
		panelId = newPanelId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLAZING__PANEL_ID, oldPanelId, panelId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getPieceIds() {
		if (pieceIds == null) {
			pieceIds = new EDataTypeUniqueEList<String>(String.class, this, CommissionPackage.GLAZING__PIECE_IDS);
		}
		return pieceIds;
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLAZING__JOIN, oldJoin, join));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMassKg() {
		return massKg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMassKg(Double newMassKg) {
		Double oldMassKg = massKg;
		massKg = newMassKg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLAZING__MASS_KG, oldMassKg, massKg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CommissionPackage.GLAZING__WINDOW_ID:
				return getWindowId();
			case CommissionPackage.GLAZING__PANEL_ID:
				return getPanelId();
			case CommissionPackage.GLAZING__PIECE_IDS:
				return getPieceIds();
			case CommissionPackage.GLAZING__JOIN:
				return getJoin();
			case CommissionPackage.GLAZING__MASS_KG:
				return getMassKg();
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
			case CommissionPackage.GLAZING__WINDOW_ID:
				setWindowId((String)newValue);
				return;
			case CommissionPackage.GLAZING__PANEL_ID:
				setPanelId((String)newValue);
				return;
			case CommissionPackage.GLAZING__PIECE_IDS:
				getPieceIds().clear();
				getPieceIds().addAll((Collection<? extends String>)newValue);
				return;
			case CommissionPackage.GLAZING__JOIN:
				setJoin((JoinKind)newValue);
				return;
			case CommissionPackage.GLAZING__MASS_KG:
				setMassKg((Double)newValue);
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
			case CommissionPackage.GLAZING__WINDOW_ID:
				setWindowId(WINDOW_ID_EDEFAULT);
				return;
			case CommissionPackage.GLAZING__PANEL_ID:
				setPanelId(PANEL_ID_EDEFAULT);
				return;
			case CommissionPackage.GLAZING__PIECE_IDS:
				getPieceIds().clear();
				return;
			case CommissionPackage.GLAZING__JOIN:
				setJoin(JOIN_EDEFAULT);
				return;
			case CommissionPackage.GLAZING__MASS_KG:
				setMassKg(MASS_KG_EDEFAULT);
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
			case CommissionPackage.GLAZING__WINDOW_ID:
				return WINDOW_ID_EDEFAULT == null ? windowId != null : !WINDOW_ID_EDEFAULT.equals(windowId);
			case CommissionPackage.GLAZING__PANEL_ID:
				return PANEL_ID_EDEFAULT == null ? panelId != null : !PANEL_ID_EDEFAULT.equals(panelId);
			case CommissionPackage.GLAZING__PIECE_IDS:
				return pieceIds != null && !pieceIds.isEmpty();
			case CommissionPackage.GLAZING__JOIN:
				return join != JOIN_EDEFAULT;
			case CommissionPackage.GLAZING__MASS_KG:
				return MASS_KG_EDEFAULT == null ? massKg != null : !MASS_KG_EDEFAULT.equals(massKg);
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
		result.append(" (windowId: ");
		result.append(windowId);
		result.append(", panelId: ");
		result.append(panelId);
		result.append(", pieceIds: ");
		result.append(pieceIds);
		result.append(", join: ");
		result.append(join);
		result.append(", massKg: ");
		result.append(massKg);
		result.append(')');
		return result.toString();
	}

} //GlazingImpl
