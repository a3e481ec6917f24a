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
import saddlebar.model.commission.Remake;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Remake</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.RemakeImpl#getWindowId <em>Window Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.RemakeImpl#getPieceId <em>Piece Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.RemakeImpl#getLayerIds <em>Layer Ids</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.RemakeImpl#getDefectId <em>Defect Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.RemakeImpl#getReason <em>Reason</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RemakeImpl extends MakingRecordImpl implements Remake {
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
	 * The default value of the '{@link #getPieceId() <em>Piece Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPieceId()
	 * @generated
	 * @ordered
	 */
	protected static final String PIECE_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPieceId() <em>Piece Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPieceId()
	 * @generated
	 * @ordered
	 */
	protected String pieceId = PIECE_ID_EDEFAULT;

	/**
	 * The cached value of the '{@link #getLayerIds() <em>Layer Ids</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLayerIds()
	 * @generated
	 * @ordered
	 */
	protected EList<String> layerIds;

	/**
	 * The default value of the '{@link #getDefectId() <em>Defect Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDefectId()
	 * @generated
	 * @ordered
	 */
	protected static final String DEFECT_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDefectId() <em>Defect Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDefectId()
	 * @generated
	 * @ordered
	 */
	protected String defectId = DEFECT_ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getReason() <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReason()
	 * @generated
	 * @ordered
	 */
	protected static final String REASON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReason() <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReason()
	 * @generated
	 * @ordered
	 */
	protected String reason = REASON_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RemakeImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.REMAKE;
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.REMAKE__WINDOW_ID, oldWindowId, windowId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPieceId() {
		return pieceId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPieceId(String newPieceId) {
		String oldPieceId = pieceId;
		pieceId = newPieceId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.REMAKE__PIECE_ID, oldPieceId, pieceId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getLayerIds() {
		if (layerIds == null) {
			layerIds = new EDataTypeUniqueEList<String>(String.class, this, CommissionPackage.REMAKE__LAYER_IDS);
		}
		return layerIds;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDefectId() {
		return defectId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDefectId(String newDefectId) {
		String oldDefectId = defectId;
		defectId = newDefectId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.REMAKE__DEFECT_ID, oldDefectId, defectId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getReason() {
		return reason;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReason(String newReason) {
		String oldReason = reason;
		reason = newReason;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.REMAKE__REASON, oldReason, reason));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CommissionPackage.REMAKE__WINDOW_ID:
				return getWindowId();
			case CommissionPackage.REMAKE__PIECE_ID:
				return getPieceId();
			case CommissionPackage.REMAKE__LAYER_IDS:
				return getLayerIds();
			case CommissionPackage.REMAKE__DEFECT_ID:
				return getDefectId();
			case CommissionPackage.REMAKE__REASON:
				return getReason();
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
			case CommissionPackage.REMAKE__WINDOW_ID:
				setWindowId((String)newValue);
				return;
			case CommissionPackage.REMAKE__PIECE_ID:
				setPieceId((String)newValue);
				return;
			case CommissionPackage.REMAKE__LAYER_IDS:
				getLayerIds().clear();
				getLayerIds().addAll((Collection<? extends String>)newValue);
				return;
			case CommissionPackage.REMAKE__DEFECT_ID:
				setDefectId((String)newValue);
				return;
			case CommissionPackage.REMAKE__REASON:
				setReason((String)newValue);
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
			case CommissionPackage.REMAKE__WINDOW_ID:
				setWindowId(WINDOW_ID_EDEFAULT);
				return;
			case CommissionPackage.REMAKE__PIECE_ID:
				setPieceId(PIECE_ID_EDEFAULT);
				return;
			case CommissionPackage.REMAKE__LAYER_IDS:
				getLayerIds().clear();
				return;
			case CommissionPackage.REMAKE__DEFECT_ID:
				setDefectId(DEFECT_ID_EDEFAULT);
				return;
			case CommissionPackage.REMAKE__REASON:
				setReason(REASON_EDEFAULT);
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
			case CommissionPackage.REMAKE__WINDOW_ID:
				return WINDOW_ID_EDEFAULT == null ? windowId != null : !WINDOW_ID_EDEFAULT.equals(windowId);
			case CommissionPackage.REMAKE__PIECE_ID:
				return PIECE_ID_EDEFAULT == null ? pieceId != null : !PIECE_ID_EDEFAULT.equals(pieceId);
			case CommissionPackage.REMAKE__LAYER_IDS:
				return layerIds != null && !layerIds.isEmpty();
			case CommissionPackage.REMAKE__DEFECT_ID:
				return DEFECT_ID_EDEFAULT == null ? defectId != null : !DEFECT_ID_EDEFAULT.equals(defectId);
			case CommissionPackage.REMAKE__REASON:
				return REASON_EDEFAULT == null ? reason != null : !REASON_EDEFAULT.equals(reason);
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
		result.append(", pieceId: ");
		result.append(pieceId);
		result.append(", layerIds: ");
		result.append(layerIds);
		result.append(", defectId: ");
		result.append(defectId);
		result.append(", reason: ");
		result.append(reason);
		result.append(')');
		return result.toString();
	}

} //RemakeImpl
