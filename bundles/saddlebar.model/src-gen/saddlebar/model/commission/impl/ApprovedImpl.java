/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import saddlebar.model.commission.Approved;
import saddlebar.model.commission.CommissionPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Approved</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.ApprovedImpl#getApprovalId <em>Approval Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ApprovedImpl#getQuoteId <em>Quote Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ApprovedImpl#getColourwayId <em>Colourway Id</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ApprovedImpl extends MakingRecordImpl implements Approved {
	/**
	 * The default value of the '{@link #getApprovalId() <em>Approval Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getApprovalId()
	 * @generated
	 * @ordered
	 */
	protected static final String APPROVAL_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getApprovalId() <em>Approval Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getApprovalId()
	 * @generated
	 * @ordered
	 */
	protected String approvalId = APPROVAL_ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getQuoteId() <em>Quote Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuoteId()
	 * @generated
	 * @ordered
	 */
	protected static final String QUOTE_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getQuoteId() <em>Quote Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuoteId()
	 * @generated
	 * @ordered
	 */
	protected String quoteId = QUOTE_ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getColourwayId() <em>Colourway Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getColourwayId()
	 * @generated
	 * @ordered
	 */
	protected static final String COLOURWAY_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getColourwayId() <em>Colourway Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getColourwayId()
	 * @generated
	 * @ordered
	 */
	protected String colourwayId = COLOURWAY_ID_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ApprovedImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.APPROVED;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getApprovalId() {
		return approvalId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setApprovalId(String newApprovalId) {
		String oldApprovalId = approvalId;
		approvalId = newApprovalId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.APPROVED__APPROVAL_ID, oldApprovalId, approvalId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getQuoteId() {
		return quoteId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setQuoteId(String newQuoteId) {
		String oldQuoteId = quoteId;
		quoteId = newQuoteId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.APPROVED__QUOTE_ID, oldQuoteId, quoteId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getColourwayId() {
		return colourwayId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setColourwayId(String newColourwayId) {
		String oldColourwayId = colourwayId;
		colourwayId = newColourwayId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.APPROVED__COLOURWAY_ID, oldColourwayId, colourwayId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CommissionPackage.APPROVED__APPROVAL_ID:
				return getApprovalId();
			case CommissionPackage.APPROVED__QUOTE_ID:
				return getQuoteId();
			case CommissionPackage.APPROVED__COLOURWAY_ID:
				return getColourwayId();
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
			case CommissionPackage.APPROVED__APPROVAL_ID:
				setApprovalId((String)newValue);
				return;
			case CommissionPackage.APPROVED__QUOTE_ID:
				setQuoteId((String)newValue);
				return;
			case CommissionPackage.APPROVED__COLOURWAY_ID:
				setColourwayId((String)newValue);
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
			case CommissionPackage.APPROVED__APPROVAL_ID:
				setApprovalId(APPROVAL_ID_EDEFAULT);
				return;
			case CommissionPackage.APPROVED__QUOTE_ID:
				setQuoteId(QUOTE_ID_EDEFAULT);
				return;
			case CommissionPackage.APPROVED__COLOURWAY_ID:
				setColourwayId(COLOURWAY_ID_EDEFAULT);
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
			case CommissionPackage.APPROVED__APPROVAL_ID:
				return APPROVAL_ID_EDEFAULT == null ? approvalId != null : !APPROVAL_ID_EDEFAULT.equals(approvalId);
			case CommissionPackage.APPROVED__QUOTE_ID:
				return QUOTE_ID_EDEFAULT == null ? quoteId != null : !QUOTE_ID_EDEFAULT.equals(quoteId);
			case CommissionPackage.APPROVED__COLOURWAY_ID:
				return COLOURWAY_ID_EDEFAULT == null ? colourwayId != null : !COLOURWAY_ID_EDEFAULT.equals(colourwayId);
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
		result.append(" (approvalId: ");
		result.append(approvalId);
		result.append(", quoteId: ");
		result.append(quoteId);
		result.append(", colourwayId: ");
		result.append(colourwayId);
		result.append(')');
		return result.toString();
	}

} //ApprovedImpl
