/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.Defect;
import saddlebar.model.commission.Disposition;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Defect</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.DefectImpl#getWindowId <em>Window Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DefectImpl#getPieceId <em>Piece Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DefectImpl#getLayerId <em>Layer Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DefectImpl#getDefectKind <em>Defect Kind</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DefectImpl#getFoundAt <em>Found At</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DefectImpl#getSeverity <em>Severity</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DefectImpl#getXMm <em>XMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DefectImpl#getYMm <em>YMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DefectImpl#getPhoto <em>Photo</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DefectImpl#getSuspectedCause <em>Suspected Cause</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.DefectImpl#getDisposition <em>Disposition</em>}</li>
 * </ul>
 *
 * @generated
 */
public class DefectImpl extends MakingRecordImpl implements Defect {
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
	 * The default value of the '{@link #getLayerId() <em>Layer Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLayerId()
	 * @generated
	 * @ordered
	 */
	protected static final String LAYER_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLayerId() <em>Layer Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLayerId()
	 * @generated
	 * @ordered
	 */
	protected String layerId = LAYER_ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getDefectKind() <em>Defect Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDefectKind()
	 * @generated
	 * @ordered
	 */
	protected static final String DEFECT_KIND_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDefectKind() <em>Defect Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDefectKind()
	 * @generated
	 * @ordered
	 */
	protected String defectKind = DEFECT_KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getFoundAt() <em>Found At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFoundAt()
	 * @generated
	 * @ordered
	 */
	protected static final String FOUND_AT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFoundAt() <em>Found At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFoundAt()
	 * @generated
	 * @ordered
	 */
	protected String foundAt = FOUND_AT_EDEFAULT;

	/**
	 * The default value of the '{@link #getSeverity() <em>Severity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeverity()
	 * @generated
	 * @ordered
	 */
	protected static final String SEVERITY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSeverity() <em>Severity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeverity()
	 * @generated
	 * @ordered
	 */
	protected String severity = SEVERITY_EDEFAULT;

	/**
	 * The default value of the '{@link #getXMm() <em>XMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getXMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double XMM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getXMm() <em>XMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getXMm()
	 * @generated
	 * @ordered
	 */
	protected Double xMm = XMM_EDEFAULT;

	/**
	 * The default value of the '{@link #getYMm() <em>YMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getYMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double YMM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getYMm() <em>YMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getYMm()
	 * @generated
	 * @ordered
	 */
	protected Double yMm = YMM_EDEFAULT;

	/**
	 * The default value of the '{@link #getPhoto() <em>Photo</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPhoto()
	 * @generated
	 * @ordered
	 */
	protected static final String PHOTO_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPhoto() <em>Photo</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPhoto()
	 * @generated
	 * @ordered
	 */
	protected String photo = PHOTO_EDEFAULT;

	/**
	 * The default value of the '{@link #getSuspectedCause() <em>Suspected Cause</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSuspectedCause()
	 * @generated
	 * @ordered
	 */
	protected static final String SUSPECTED_CAUSE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSuspectedCause() <em>Suspected Cause</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSuspectedCause()
	 * @generated
	 * @ordered
	 */
	protected String suspectedCause = SUSPECTED_CAUSE_EDEFAULT;

	/**
	 * The default value of the '{@link #getDisposition() <em>Disposition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDisposition()
	 * @generated
	 * @ordered
	 */
	protected static final Disposition DISPOSITION_EDEFAULT = Disposition.OPEN;

	/**
	 * The cached value of the '{@link #getDisposition() <em>Disposition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDisposition()
	 * @generated
	 * @ordered
	 */
	protected Disposition disposition = DISPOSITION_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected DefectImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.DEFECT;
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DEFECT__WINDOW_ID, oldWindowId, windowId));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DEFECT__PIECE_ID, oldPieceId, pieceId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLayerId() {
		return layerId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLayerId(String newLayerId) {
		String oldLayerId = layerId;
		layerId = newLayerId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DEFECT__LAYER_ID, oldLayerId, layerId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDefectKind() {
		return defectKind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDefectKind(String newDefectKind) {
		String oldDefectKind = defectKind;
		defectKind = newDefectKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DEFECT__DEFECT_KIND, oldDefectKind, defectKind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFoundAt() {
		return foundAt;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFoundAt(String newFoundAt) {
		String oldFoundAt = foundAt;
		foundAt = newFoundAt;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DEFECT__FOUND_AT, oldFoundAt, foundAt));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSeverity() {
		return severity;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSeverity(String newSeverity) {
		String oldSeverity = severity;
		severity = newSeverity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DEFECT__SEVERITY, oldSeverity, severity));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getXMm() {
		return xMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setXMm(Double newXMm) {
		Double oldXMm = xMm;
		xMm = newXMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DEFECT__XMM, oldXMm, xMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getYMm() {
		return yMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setYMm(Double newYMm) {
		Double oldYMm = yMm;
		yMm = newYMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DEFECT__YMM, oldYMm, yMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPhoto() {
		return photo;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPhoto(String newPhoto) {
		String oldPhoto = photo;
		photo = newPhoto;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DEFECT__PHOTO, oldPhoto, photo));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSuspectedCause() {
		return suspectedCause;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSuspectedCause(String newSuspectedCause) {
		String oldSuspectedCause = suspectedCause;
		suspectedCause = newSuspectedCause;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DEFECT__SUSPECTED_CAUSE, oldSuspectedCause, suspectedCause));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Disposition getDisposition() {
		return disposition;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDisposition(Disposition newDisposition) {
		Disposition oldDisposition = disposition;
		disposition = newDisposition == null ? DISPOSITION_EDEFAULT : newDisposition;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.DEFECT__DISPOSITION, oldDisposition, disposition));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CommissionPackage.DEFECT__WINDOW_ID:
				return getWindowId();
			case CommissionPackage.DEFECT__PIECE_ID:
				return getPieceId();
			case CommissionPackage.DEFECT__LAYER_ID:
				return getLayerId();
			case CommissionPackage.DEFECT__DEFECT_KIND:
				return getDefectKind();
			case CommissionPackage.DEFECT__FOUND_AT:
				return getFoundAt();
			case CommissionPackage.DEFECT__SEVERITY:
				return getSeverity();
			case CommissionPackage.DEFECT__XMM:
				return getXMm();
			case CommissionPackage.DEFECT__YMM:
				return getYMm();
			case CommissionPackage.DEFECT__PHOTO:
				return getPhoto();
			case CommissionPackage.DEFECT__SUSPECTED_CAUSE:
				return getSuspectedCause();
			case CommissionPackage.DEFECT__DISPOSITION:
				return getDisposition();
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
			case CommissionPackage.DEFECT__WINDOW_ID:
				setWindowId((String)newValue);
				return;
			case CommissionPackage.DEFECT__PIECE_ID:
				setPieceId((String)newValue);
				return;
			case CommissionPackage.DEFECT__LAYER_ID:
				setLayerId((String)newValue);
				return;
			case CommissionPackage.DEFECT__DEFECT_KIND:
				setDefectKind((String)newValue);
				return;
			case CommissionPackage.DEFECT__FOUND_AT:
				setFoundAt((String)newValue);
				return;
			case CommissionPackage.DEFECT__SEVERITY:
				setSeverity((String)newValue);
				return;
			case CommissionPackage.DEFECT__XMM:
				setXMm((Double)newValue);
				return;
			case CommissionPackage.DEFECT__YMM:
				setYMm((Double)newValue);
				return;
			case CommissionPackage.DEFECT__PHOTO:
				setPhoto((String)newValue);
				return;
			case CommissionPackage.DEFECT__SUSPECTED_CAUSE:
				setSuspectedCause((String)newValue);
				return;
			case CommissionPackage.DEFECT__DISPOSITION:
				setDisposition((Disposition)newValue);
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
			case CommissionPackage.DEFECT__WINDOW_ID:
				setWindowId(WINDOW_ID_EDEFAULT);
				return;
			case CommissionPackage.DEFECT__PIECE_ID:
				setPieceId(PIECE_ID_EDEFAULT);
				return;
			case CommissionPackage.DEFECT__LAYER_ID:
				setLayerId(LAYER_ID_EDEFAULT);
				return;
			case CommissionPackage.DEFECT__DEFECT_KIND:
				setDefectKind(DEFECT_KIND_EDEFAULT);
				return;
			case CommissionPackage.DEFECT__FOUND_AT:
				setFoundAt(FOUND_AT_EDEFAULT);
				return;
			case CommissionPackage.DEFECT__SEVERITY:
				setSeverity(SEVERITY_EDEFAULT);
				return;
			case CommissionPackage.DEFECT__XMM:
				setXMm(XMM_EDEFAULT);
				return;
			case CommissionPackage.DEFECT__YMM:
				setYMm(YMM_EDEFAULT);
				return;
			case CommissionPackage.DEFECT__PHOTO:
				setPhoto(PHOTO_EDEFAULT);
				return;
			case CommissionPackage.DEFECT__SUSPECTED_CAUSE:
				setSuspectedCause(SUSPECTED_CAUSE_EDEFAULT);
				return;
			case CommissionPackage.DEFECT__DISPOSITION:
				setDisposition(DISPOSITION_EDEFAULT);
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
			case CommissionPackage.DEFECT__WINDOW_ID:
				return WINDOW_ID_EDEFAULT == null ? windowId != null : !WINDOW_ID_EDEFAULT.equals(windowId);
			case CommissionPackage.DEFECT__PIECE_ID:
				return PIECE_ID_EDEFAULT == null ? pieceId != null : !PIECE_ID_EDEFAULT.equals(pieceId);
			case CommissionPackage.DEFECT__LAYER_ID:
				return LAYER_ID_EDEFAULT == null ? layerId != null : !LAYER_ID_EDEFAULT.equals(layerId);
			case CommissionPackage.DEFECT__DEFECT_KIND:
				return DEFECT_KIND_EDEFAULT == null ? defectKind != null : !DEFECT_KIND_EDEFAULT.equals(defectKind);
			case CommissionPackage.DEFECT__FOUND_AT:
				return FOUND_AT_EDEFAULT == null ? foundAt != null : !FOUND_AT_EDEFAULT.equals(foundAt);
			case CommissionPackage.DEFECT__SEVERITY:
				return SEVERITY_EDEFAULT == null ? severity != null : !SEVERITY_EDEFAULT.equals(severity);
			case CommissionPackage.DEFECT__XMM:
				return XMM_EDEFAULT == null ? xMm != null : !XMM_EDEFAULT.equals(xMm);
			case CommissionPackage.DEFECT__YMM:
				return YMM_EDEFAULT == null ? yMm != null : !YMM_EDEFAULT.equals(yMm);
			case CommissionPackage.DEFECT__PHOTO:
				return PHOTO_EDEFAULT == null ? photo != null : !PHOTO_EDEFAULT.equals(photo);
			case CommissionPackage.DEFECT__SUSPECTED_CAUSE:
				return SUSPECTED_CAUSE_EDEFAULT == null ? suspectedCause != null : !SUSPECTED_CAUSE_EDEFAULT.equals(suspectedCause);
			case CommissionPackage.DEFECT__DISPOSITION:
				return disposition != DISPOSITION_EDEFAULT;
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
		result.append(", layerId: ");
		result.append(layerId);
		result.append(", defectKind: ");
		result.append(defectKind);
		result.append(", foundAt: ");
		result.append(foundAt);
		result.append(", severity: ");
		result.append(severity);
		result.append(", xMm: ");
		result.append(xMm);
		result.append(", yMm: ");
		result.append(yMm);
		result.append(", photo: ");
		result.append(photo);
		result.append(", suspectedCause: ");
		result.append(suspectedCause);
		result.append(", disposition: ");
		result.append(disposition);
		result.append(')');
		return result.toString();
	}

} //DefectImpl
