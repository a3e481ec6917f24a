/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import java.time.LocalDate;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EcoreUtil;

import saddlebar.model.commission.Commission;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.Milestone;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Milestone</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.MilestoneImpl#getCommission <em>Commission</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MilestoneImpl#getDue <em>Due</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MilestoneImpl#getDone <em>Done</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MilestoneImpl#getWorkShare <em>Work Share</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MilestoneImpl#getPayShare <em>Pay Share</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MilestoneImpl extends NamedImpl implements Milestone {
	/**
	 * The default value of the '{@link #getDue() <em>Due</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDue()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate DUE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDue() <em>Due</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDue()
	 * @generated
	 * @ordered
	 */
	protected LocalDate due = DUE_EDEFAULT;

	/**
	 * The default value of the '{@link #getDone() <em>Done</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDone()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate DONE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDone() <em>Done</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDone()
	 * @generated
	 * @ordered
	 */
	protected LocalDate done = DONE_EDEFAULT;

	/**
	 * The default value of the '{@link #getWorkShare() <em>Work Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkShare()
	 * @generated
	 * @ordered
	 */
	protected static final Double WORK_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWorkShare() <em>Work Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorkShare()
	 * @generated
	 * @ordered
	 */
	protected Double workShare = WORK_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getPayShare() <em>Pay Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPayShare()
	 * @generated
	 * @ordered
	 */
	protected static final Double PAY_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPayShare() <em>Pay Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPayShare()
	 * @generated
	 * @ordered
	 */
	protected Double payShare = PAY_SHARE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MilestoneImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.MILESTONE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Commission getCommission() {
		if (eContainerFeatureID() != CommissionPackage.MILESTONE__COMMISSION) return null;
		return (Commission)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetCommission(Commission newCommission, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newCommission, CommissionPackage.MILESTONE__COMMISSION, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCommission(Commission newCommission) {
		if (newCommission != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.MILESTONE__COMMISSION && newCommission != null)) {
			if (EcoreUtil.isAncestor(this, newCommission))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newCommission != null)
				msgs = ((InternalEObject)newCommission).eInverseAdd(this, CommissionPackage.COMMISSION__MILESTONES, Commission.class, msgs);
			msgs = basicSetCommission(newCommission, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MILESTONE__COMMISSION, newCommission, newCommission));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getDue() {
		return due;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDue(LocalDate newDue) {
		LocalDate oldDue = due;
		due = newDue;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MILESTONE__DUE, oldDue, due));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getDone() {
		return done;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDone(LocalDate newDone) {
		LocalDate oldDone = done;
		done = newDone;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MILESTONE__DONE, oldDone, done));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getWorkShare() {
		return workShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWorkShare(Double newWorkShare) {
		Double oldWorkShare = workShare;
		workShare = newWorkShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MILESTONE__WORK_SHARE, oldWorkShare, workShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPayShare() {
		return payShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPayShare(Double newPayShare) {
		Double oldPayShare = payShare;
		payShare = newPayShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MILESTONE__PAY_SHARE, oldPayShare, payShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.MILESTONE__COMMISSION:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetCommission((Commission)otherEnd, msgs);
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
			case CommissionPackage.MILESTONE__COMMISSION:
				return basicSetCommission(null, msgs);
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
			case CommissionPackage.MILESTONE__COMMISSION:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.COMMISSION__MILESTONES, Commission.class, msgs);
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
			case CommissionPackage.MILESTONE__COMMISSION:
				return getCommission();
			case CommissionPackage.MILESTONE__DUE:
				return getDue();
			case CommissionPackage.MILESTONE__DONE:
				return getDone();
			case CommissionPackage.MILESTONE__WORK_SHARE:
				return getWorkShare();
			case CommissionPackage.MILESTONE__PAY_SHARE:
				return getPayShare();
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
			case CommissionPackage.MILESTONE__COMMISSION:
				setCommission((Commission)newValue);
				return;
			case CommissionPackage.MILESTONE__DUE:
				setDue((LocalDate)newValue);
				return;
			case CommissionPackage.MILESTONE__DONE:
				setDone((LocalDate)newValue);
				return;
			case CommissionPackage.MILESTONE__WORK_SHARE:
				setWorkShare((Double)newValue);
				return;
			case CommissionPackage.MILESTONE__PAY_SHARE:
				setPayShare((Double)newValue);
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
			case CommissionPackage.MILESTONE__COMMISSION:
				setCommission((Commission)null);
				return;
			case CommissionPackage.MILESTONE__DUE:
				setDue(DUE_EDEFAULT);
				return;
			case CommissionPackage.MILESTONE__DONE:
				setDone(DONE_EDEFAULT);
				return;
			case CommissionPackage.MILESTONE__WORK_SHARE:
				setWorkShare(WORK_SHARE_EDEFAULT);
				return;
			case CommissionPackage.MILESTONE__PAY_SHARE:
				setPayShare(PAY_SHARE_EDEFAULT);
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
			case CommissionPackage.MILESTONE__COMMISSION:
				return getCommission() != null;
			case CommissionPackage.MILESTONE__DUE:
				return DUE_EDEFAULT == null ? due != null : !DUE_EDEFAULT.equals(due);
			case CommissionPackage.MILESTONE__DONE:
				return DONE_EDEFAULT == null ? done != null : !DONE_EDEFAULT.equals(done);
			case CommissionPackage.MILESTONE__WORK_SHARE:
				return WORK_SHARE_EDEFAULT == null ? workShare != null : !WORK_SHARE_EDEFAULT.equals(workShare);
			case CommissionPackage.MILESTONE__PAY_SHARE:
				return PAY_SHARE_EDEFAULT == null ? payShare != null : !PAY_SHARE_EDEFAULT.equals(payShare);
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
		result.append(" (due: ");
		result.append(due);
		result.append(", done: ");
		result.append(done);
		result.append(", workShare: ");
		result.append(workShare);
		result.append(", payShare: ");
		result.append(payShare);
		result.append(')');
		return result.toString();
	}

} //MilestoneImpl
