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
import saddlebar.model.commission.ScreenLoad;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Screen Load</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.ScreenLoadImpl#getFrameId <em>Frame Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ScreenLoadImpl#getSheetId <em>Sheet Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ScreenLoadImpl#getStencilIds <em>Stencil Ids</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ScreenLoadImpl#getProcessKey <em>Process Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ScreenLoadImpl#getPressC <em>Press C</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ScreenLoadImpl#getPressMin <em>Press Min</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ScreenLoadImpl#getCoolMin <em>Cool Min</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ScreenLoadImpl extends MakingRecordImpl implements ScreenLoad {
	/**
	 * The default value of the '{@link #getFrameId() <em>Frame Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrameId()
	 * @generated
	 * @ordered
	 */
	protected static final String FRAME_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFrameId() <em>Frame Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrameId()
	 * @generated
	 * @ordered
	 */
	protected String frameId = FRAME_ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getSheetId() <em>Sheet Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetId()
	 * @generated
	 * @ordered
	 */
	protected static final String SHEET_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSheetId() <em>Sheet Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetId()
	 * @generated
	 * @ordered
	 */
	protected String sheetId = SHEET_ID_EDEFAULT;

	/**
	 * The cached value of the '{@link #getStencilIds() <em>Stencil Ids</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStencilIds()
	 * @generated
	 * @ordered
	 */
	protected EList<String> stencilIds;

	/**
	 * The default value of the '{@link #getProcessKey() <em>Process Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProcessKey()
	 * @generated
	 * @ordered
	 */
	protected static final String PROCESS_KEY_EDEFAULT = null;

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
	 * The default value of the '{@link #getPressC() <em>Press C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPressC()
	 * @generated
	 * @ordered
	 */
	protected static final Double PRESS_C_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPressC() <em>Press C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPressC()
	 * @generated
	 * @ordered
	 */
	protected Double pressC = PRESS_C_EDEFAULT;

	/**
	 * The default value of the '{@link #getPressMin() <em>Press Min</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPressMin()
	 * @generated
	 * @ordered
	 */
	protected static final Double PRESS_MIN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPressMin() <em>Press Min</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPressMin()
	 * @generated
	 * @ordered
	 */
	protected Double pressMin = PRESS_MIN_EDEFAULT;

	/**
	 * The default value of the '{@link #getCoolMin() <em>Cool Min</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoolMin()
	 * @generated
	 * @ordered
	 */
	protected static final Double COOL_MIN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCoolMin() <em>Cool Min</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoolMin()
	 * @generated
	 * @ordered
	 */
	protected Double coolMin = COOL_MIN_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ScreenLoadImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.SCREEN_LOAD;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFrameId() {
		return frameId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrameId(String newFrameId) {
		String oldFrameId = frameId;
		frameId = newFrameId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SCREEN_LOAD__FRAME_ID, oldFrameId, frameId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSheetId() {
		return sheetId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSheetId(String newSheetId) {
		String oldSheetId = sheetId;
		sheetId = newSheetId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SCREEN_LOAD__SHEET_ID, oldSheetId, sheetId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getStencilIds() {
		if (stencilIds == null) {
			stencilIds = new EDataTypeUniqueEList<String>(String.class, this, CommissionPackage.SCREEN_LOAD__STENCIL_IDS);
		}
		return stencilIds;
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SCREEN_LOAD__PROCESS_KEY, oldProcessKey, processKey));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPressC() {
		return pressC;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPressC(Double newPressC) {
		Double oldPressC = pressC;
		pressC = newPressC;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SCREEN_LOAD__PRESS_C, oldPressC, pressC));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPressMin() {
		return pressMin;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPressMin(Double newPressMin) {
		Double oldPressMin = pressMin;
		pressMin = newPressMin;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SCREEN_LOAD__PRESS_MIN, oldPressMin, pressMin));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getCoolMin() {
		return coolMin;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCoolMin(Double newCoolMin) {
		Double oldCoolMin = coolMin;
		coolMin = newCoolMin;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SCREEN_LOAD__COOL_MIN, oldCoolMin, coolMin));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CommissionPackage.SCREEN_LOAD__FRAME_ID:
				return getFrameId();
			case CommissionPackage.SCREEN_LOAD__SHEET_ID:
				return getSheetId();
			case CommissionPackage.SCREEN_LOAD__STENCIL_IDS:
				return getStencilIds();
			case CommissionPackage.SCREEN_LOAD__PROCESS_KEY:
				return getProcessKey();
			case CommissionPackage.SCREEN_LOAD__PRESS_C:
				return getPressC();
			case CommissionPackage.SCREEN_LOAD__PRESS_MIN:
				return getPressMin();
			case CommissionPackage.SCREEN_LOAD__COOL_MIN:
				return getCoolMin();
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
			case CommissionPackage.SCREEN_LOAD__FRAME_ID:
				setFrameId((String)newValue);
				return;
			case CommissionPackage.SCREEN_LOAD__SHEET_ID:
				setSheetId((String)newValue);
				return;
			case CommissionPackage.SCREEN_LOAD__STENCIL_IDS:
				getStencilIds().clear();
				getStencilIds().addAll((Collection<? extends String>)newValue);
				return;
			case CommissionPackage.SCREEN_LOAD__PROCESS_KEY:
				setProcessKey((String)newValue);
				return;
			case CommissionPackage.SCREEN_LOAD__PRESS_C:
				setPressC((Double)newValue);
				return;
			case CommissionPackage.SCREEN_LOAD__PRESS_MIN:
				setPressMin((Double)newValue);
				return;
			case CommissionPackage.SCREEN_LOAD__COOL_MIN:
				setCoolMin((Double)newValue);
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
			case CommissionPackage.SCREEN_LOAD__FRAME_ID:
				setFrameId(FRAME_ID_EDEFAULT);
				return;
			case CommissionPackage.SCREEN_LOAD__SHEET_ID:
				setSheetId(SHEET_ID_EDEFAULT);
				return;
			case CommissionPackage.SCREEN_LOAD__STENCIL_IDS:
				getStencilIds().clear();
				return;
			case CommissionPackage.SCREEN_LOAD__PROCESS_KEY:
				setProcessKey(PROCESS_KEY_EDEFAULT);
				return;
			case CommissionPackage.SCREEN_LOAD__PRESS_C:
				setPressC(PRESS_C_EDEFAULT);
				return;
			case CommissionPackage.SCREEN_LOAD__PRESS_MIN:
				setPressMin(PRESS_MIN_EDEFAULT);
				return;
			case CommissionPackage.SCREEN_LOAD__COOL_MIN:
				setCoolMin(COOL_MIN_EDEFAULT);
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
			case CommissionPackage.SCREEN_LOAD__FRAME_ID:
				return FRAME_ID_EDEFAULT == null ? frameId != null : !FRAME_ID_EDEFAULT.equals(frameId);
			case CommissionPackage.SCREEN_LOAD__SHEET_ID:
				return SHEET_ID_EDEFAULT == null ? sheetId != null : !SHEET_ID_EDEFAULT.equals(sheetId);
			case CommissionPackage.SCREEN_LOAD__STENCIL_IDS:
				return stencilIds != null && !stencilIds.isEmpty();
			case CommissionPackage.SCREEN_LOAD__PROCESS_KEY:
				return PROCESS_KEY_EDEFAULT == null ? processKey != null : !PROCESS_KEY_EDEFAULT.equals(processKey);
			case CommissionPackage.SCREEN_LOAD__PRESS_C:
				return PRESS_C_EDEFAULT == null ? pressC != null : !PRESS_C_EDEFAULT.equals(pressC);
			case CommissionPackage.SCREEN_LOAD__PRESS_MIN:
				return PRESS_MIN_EDEFAULT == null ? pressMin != null : !PRESS_MIN_EDEFAULT.equals(pressMin);
			case CommissionPackage.SCREEN_LOAD__COOL_MIN:
				return COOL_MIN_EDEFAULT == null ? coolMin != null : !COOL_MIN_EDEFAULT.equals(coolMin);
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
		result.append(" (frameId: ");
		result.append(frameId);
		result.append(", sheetId: ");
		result.append(sheetId);
		result.append(", stencilIds: ");
		result.append(stencilIds);
		result.append(", processKey: ");
		result.append(processKey);
		result.append(", pressC: ");
		result.append(pressC);
		result.append(", pressMin: ");
		result.append(pressMin);
		result.append(", coolMin: ");
		result.append(coolMin);
		result.append(')');
		return result.toString();
	}

} //ScreenLoadImpl
