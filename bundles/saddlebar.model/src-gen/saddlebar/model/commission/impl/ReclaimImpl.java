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
import saddlebar.model.commission.Reclaim;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Reclaim</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.ReclaimImpl#getFrameIds <em>Frame Ids</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ReclaimImpl#getScreenLoadIds <em>Screen Load Ids</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ReclaimImpl#getCleaner <em>Cleaner</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ReclaimImpl extends MakingRecordImpl implements Reclaim {
	/**
	 * The cached value of the '{@link #getFrameIds() <em>Frame Ids</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrameIds()
	 * @generated
	 * @ordered
	 */
	protected EList<String> frameIds;

	/**
	 * The cached value of the '{@link #getScreenLoadIds() <em>Screen Load Ids</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScreenLoadIds()
	 * @generated
	 * @ordered
	 */
	protected EList<String> screenLoadIds;

	/**
	 * The default value of the '{@link #getCleaner() <em>Cleaner</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCleaner()
	 * @generated
	 * @ordered
	 */
	protected static final String CLEANER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCleaner() <em>Cleaner</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCleaner()
	 * @generated
	 * @ordered
	 */
	protected String cleaner = CLEANER_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ReclaimImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.RECLAIM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getFrameIds() {
		if (frameIds == null) {
			frameIds = new EDataTypeUniqueEList<String>(String.class, this, CommissionPackage.RECLAIM__FRAME_IDS);
		}
		return frameIds;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getScreenLoadIds() {
		if (screenLoadIds == null) {
			screenLoadIds = new EDataTypeUniqueEList<String>(String.class, this, CommissionPackage.RECLAIM__SCREEN_LOAD_IDS);
		}
		return screenLoadIds;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCleaner() {
		return cleaner;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCleaner(String newCleaner) {
		String oldCleaner = cleaner;
		cleaner = newCleaner;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.RECLAIM__CLEANER, oldCleaner, cleaner));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CommissionPackage.RECLAIM__FRAME_IDS:
				return getFrameIds();
			case CommissionPackage.RECLAIM__SCREEN_LOAD_IDS:
				return getScreenLoadIds();
			case CommissionPackage.RECLAIM__CLEANER:
				return getCleaner();
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
			case CommissionPackage.RECLAIM__FRAME_IDS:
				getFrameIds().clear();
				getFrameIds().addAll((Collection<? extends String>)newValue);
				return;
			case CommissionPackage.RECLAIM__SCREEN_LOAD_IDS:
				getScreenLoadIds().clear();
				getScreenLoadIds().addAll((Collection<? extends String>)newValue);
				return;
			case CommissionPackage.RECLAIM__CLEANER:
				setCleaner((String)newValue);
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
			case CommissionPackage.RECLAIM__FRAME_IDS:
				getFrameIds().clear();
				return;
			case CommissionPackage.RECLAIM__SCREEN_LOAD_IDS:
				getScreenLoadIds().clear();
				return;
			case CommissionPackage.RECLAIM__CLEANER:
				setCleaner(CLEANER_EDEFAULT);
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
			case CommissionPackage.RECLAIM__FRAME_IDS:
				return frameIds != null && !frameIds.isEmpty();
			case CommissionPackage.RECLAIM__SCREEN_LOAD_IDS:
				return screenLoadIds != null && !screenLoadIds.isEmpty();
			case CommissionPackage.RECLAIM__CLEANER:
				return CLEANER_EDEFAULT == null ? cleaner != null : !CLEANER_EDEFAULT.equals(cleaner);
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
		result.append(" (frameIds: ");
		result.append(frameIds);
		result.append(", screenLoadIds: ");
		result.append(screenLoadIds);
		result.append(", cleaner: ");
		result.append(cleaner);
		result.append(')');
		return result.toString();
	}

} //ReclaimImpl
