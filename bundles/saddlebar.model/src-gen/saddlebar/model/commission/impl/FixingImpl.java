/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.Fixing;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Fixing</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.FixingImpl#getWindowId <em>Window Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.FixingImpl#getPanelId <em>Panel Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.FixingImpl#getPlace <em>Place</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FixingImpl extends MakingRecordImpl implements Fixing {
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
	 * The default value of the '{@link #getPlace() <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected static final String PLACE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlace() <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected String place = PLACE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FixingImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.FIXING;
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.FIXING__WINDOW_ID, oldWindowId, windowId));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.FIXING__PANEL_ID, oldPanelId, panelId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPlace() {
		return place;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlace(String newPlace) {
		String oldPlace = place;
		place = newPlace;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.FIXING__PLACE, oldPlace, place));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CommissionPackage.FIXING__WINDOW_ID:
				return getWindowId();
			case CommissionPackage.FIXING__PANEL_ID:
				return getPanelId();
			case CommissionPackage.FIXING__PLACE:
				return getPlace();
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
			case CommissionPackage.FIXING__WINDOW_ID:
				setWindowId((String)newValue);
				return;
			case CommissionPackage.FIXING__PANEL_ID:
				setPanelId((String)newValue);
				return;
			case CommissionPackage.FIXING__PLACE:
				setPlace((String)newValue);
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
			case CommissionPackage.FIXING__WINDOW_ID:
				setWindowId(WINDOW_ID_EDEFAULT);
				return;
			case CommissionPackage.FIXING__PANEL_ID:
				setPanelId(PANEL_ID_EDEFAULT);
				return;
			case CommissionPackage.FIXING__PLACE:
				setPlace(PLACE_EDEFAULT);
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
			case CommissionPackage.FIXING__WINDOW_ID:
				return WINDOW_ID_EDEFAULT == null ? windowId != null : !WINDOW_ID_EDEFAULT.equals(windowId);
			case CommissionPackage.FIXING__PANEL_ID:
				return PANEL_ID_EDEFAULT == null ? panelId != null : !PANEL_ID_EDEFAULT.equals(panelId);
			case CommissionPackage.FIXING__PLACE:
				return PLACE_EDEFAULT == null ? place != null : !PLACE_EDEFAULT.equals(place);
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
		result.append(", place: ");
		result.append(place);
		result.append(')');
		return result.toString();
	}

} //FixingImpl
