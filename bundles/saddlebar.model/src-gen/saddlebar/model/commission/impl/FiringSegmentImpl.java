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
import saddlebar.model.commission.FiringSchedule;
import saddlebar.model.commission.FiringSegment;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Firing Segment</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.FiringSegmentImpl#getSchedule <em>Schedule</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.FiringSegmentImpl#getName <em>Name</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.FiringSegmentImpl#getRateKPerH <em>Rate KPer H</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.FiringSegmentImpl#getTargetC <em>Target C</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.FiringSegmentImpl#getSoakMin <em>Soak Min</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.FiringSegmentImpl#isVent <em>Vent</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.FiringSegmentImpl#getNote <em>Note</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FiringSegmentImpl extends MinimalEObjectImpl.Container implements FiringSegment {
	/**
	 * The default value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected static final String NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected String name = NAME_EDEFAULT;

	/**
	 * The default value of the '{@link #getRateKPerH() <em>Rate KPer H</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRateKPerH()
	 * @generated
	 * @ordered
	 */
	protected static final Double RATE_KPER_H_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRateKPerH() <em>Rate KPer H</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRateKPerH()
	 * @generated
	 * @ordered
	 */
	protected Double rateKPerH = RATE_KPER_H_EDEFAULT;

	/**
	 * The default value of the '{@link #getTargetC() <em>Target C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTargetC()
	 * @generated
	 * @ordered
	 */
	protected static final double TARGET_C_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getTargetC() <em>Target C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTargetC()
	 * @generated
	 * @ordered
	 */
	protected double targetC = TARGET_C_EDEFAULT;

	/**
	 * The default value of the '{@link #getSoakMin() <em>Soak Min</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSoakMin()
	 * @generated
	 * @ordered
	 */
	protected static final double SOAK_MIN_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getSoakMin() <em>Soak Min</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSoakMin()
	 * @generated
	 * @ordered
	 */
	protected double soakMin = SOAK_MIN_EDEFAULT;

	/**
	 * The default value of the '{@link #isVent() <em>Vent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isVent()
	 * @generated
	 * @ordered
	 */
	protected static final boolean VENT_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isVent() <em>Vent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isVent()
	 * @generated
	 * @ordered
	 */
	protected boolean vent = VENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected static final String NOTE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected String note = NOTE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FiringSegmentImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.FIRING_SEGMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FiringSchedule getSchedule() {
		if (eContainerFeatureID() != CommissionPackage.FIRING_SEGMENT__SCHEDULE) return null;
		return (FiringSchedule)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetSchedule(FiringSchedule newSchedule, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newSchedule, CommissionPackage.FIRING_SEGMENT__SCHEDULE, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSchedule(FiringSchedule newSchedule) {
		if (newSchedule != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.FIRING_SEGMENT__SCHEDULE && newSchedule != null)) {
			if (EcoreUtil.isAncestor(this, newSchedule))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newSchedule != null)
				msgs = ((InternalEObject)newSchedule).eInverseAdd(this, CommissionPackage.FIRING_SCHEDULE__SEGMENTS, FiringSchedule.class, msgs);
			msgs = basicSetSchedule(newSchedule, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.FIRING_SEGMENT__SCHEDULE, newSchedule, newSchedule));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
		return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName) {
		String oldName = name;
		name = newName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.FIRING_SEGMENT__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getRateKPerH() {
		return rateKPerH;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRateKPerH(Double newRateKPerH) {
		Double oldRateKPerH = rateKPerH;
		rateKPerH = newRateKPerH;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.FIRING_SEGMENT__RATE_KPER_H, oldRateKPerH, rateKPerH));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getTargetC() {
		return targetC;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTargetC(double newTargetC) {
		double oldTargetC = targetC;
		targetC = newTargetC;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.FIRING_SEGMENT__TARGET_C, oldTargetC, targetC));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getSoakMin() {
		return soakMin;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSoakMin(double newSoakMin) {
		double oldSoakMin = soakMin;
		soakMin = newSoakMin;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.FIRING_SEGMENT__SOAK_MIN, oldSoakMin, soakMin));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isVent() {
		return vent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVent(boolean newVent) {
		boolean oldVent = vent;
		vent = newVent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.FIRING_SEGMENT__VENT, oldVent, vent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNote() {
		return note;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNote(String newNote) {
		String oldNote = note;
		note = newNote;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.FIRING_SEGMENT__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.FIRING_SEGMENT__SCHEDULE:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetSchedule((FiringSchedule)otherEnd, msgs);
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
			case CommissionPackage.FIRING_SEGMENT__SCHEDULE:
				return basicSetSchedule(null, msgs);
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
			case CommissionPackage.FIRING_SEGMENT__SCHEDULE:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.FIRING_SCHEDULE__SEGMENTS, FiringSchedule.class, msgs);
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
			case CommissionPackage.FIRING_SEGMENT__SCHEDULE:
				return getSchedule();
			case CommissionPackage.FIRING_SEGMENT__NAME:
				return getName();
			case CommissionPackage.FIRING_SEGMENT__RATE_KPER_H:
				return getRateKPerH();
			case CommissionPackage.FIRING_SEGMENT__TARGET_C:
				return getTargetC();
			case CommissionPackage.FIRING_SEGMENT__SOAK_MIN:
				return getSoakMin();
			case CommissionPackage.FIRING_SEGMENT__VENT:
				return isVent();
			case CommissionPackage.FIRING_SEGMENT__NOTE:
				return getNote();
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
			case CommissionPackage.FIRING_SEGMENT__SCHEDULE:
				setSchedule((FiringSchedule)newValue);
				return;
			case CommissionPackage.FIRING_SEGMENT__NAME:
				setName((String)newValue);
				return;
			case CommissionPackage.FIRING_SEGMENT__RATE_KPER_H:
				setRateKPerH((Double)newValue);
				return;
			case CommissionPackage.FIRING_SEGMENT__TARGET_C:
				setTargetC((Double)newValue);
				return;
			case CommissionPackage.FIRING_SEGMENT__SOAK_MIN:
				setSoakMin((Double)newValue);
				return;
			case CommissionPackage.FIRING_SEGMENT__VENT:
				setVent((Boolean)newValue);
				return;
			case CommissionPackage.FIRING_SEGMENT__NOTE:
				setNote((String)newValue);
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
			case CommissionPackage.FIRING_SEGMENT__SCHEDULE:
				setSchedule((FiringSchedule)null);
				return;
			case CommissionPackage.FIRING_SEGMENT__NAME:
				setName(NAME_EDEFAULT);
				return;
			case CommissionPackage.FIRING_SEGMENT__RATE_KPER_H:
				setRateKPerH(RATE_KPER_H_EDEFAULT);
				return;
			case CommissionPackage.FIRING_SEGMENT__TARGET_C:
				setTargetC(TARGET_C_EDEFAULT);
				return;
			case CommissionPackage.FIRING_SEGMENT__SOAK_MIN:
				setSoakMin(SOAK_MIN_EDEFAULT);
				return;
			case CommissionPackage.FIRING_SEGMENT__VENT:
				setVent(VENT_EDEFAULT);
				return;
			case CommissionPackage.FIRING_SEGMENT__NOTE:
				setNote(NOTE_EDEFAULT);
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
			case CommissionPackage.FIRING_SEGMENT__SCHEDULE:
				return getSchedule() != null;
			case CommissionPackage.FIRING_SEGMENT__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case CommissionPackage.FIRING_SEGMENT__RATE_KPER_H:
				return RATE_KPER_H_EDEFAULT == null ? rateKPerH != null : !RATE_KPER_H_EDEFAULT.equals(rateKPerH);
			case CommissionPackage.FIRING_SEGMENT__TARGET_C:
				return targetC != TARGET_C_EDEFAULT;
			case CommissionPackage.FIRING_SEGMENT__SOAK_MIN:
				return soakMin != SOAK_MIN_EDEFAULT;
			case CommissionPackage.FIRING_SEGMENT__VENT:
				return vent != VENT_EDEFAULT;
			case CommissionPackage.FIRING_SEGMENT__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
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
		result.append(" (name: ");
		result.append(name);
		result.append(", rateKPerH: ");
		result.append(rateKPerH);
		result.append(", targetC: ");
		result.append(targetC);
		result.append(", soakMin: ");
		result.append(soakMin);
		result.append(", vent: ");
		result.append(vent);
		result.append(", note: ");
		result.append(note);
		result.append(')');
		return result.toString();
	}

} //FiringSegmentImpl
