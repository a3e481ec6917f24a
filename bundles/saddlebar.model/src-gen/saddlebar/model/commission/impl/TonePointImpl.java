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
import saddlebar.model.commission.ToneCalibration;
import saddlebar.model.commission.TonePoint;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Tone Point</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.TonePointImpl#getCalibration <em>Calibration</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.TonePointImpl#getNominal <em>Nominal</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.TonePointImpl#getEffective <em>Effective</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TonePointImpl extends MinimalEObjectImpl.Container implements TonePoint {
	/**
	 * The default value of the '{@link #getNominal() <em>Nominal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNominal()
	 * @generated
	 * @ordered
	 */
	protected static final double NOMINAL_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getNominal() <em>Nominal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNominal()
	 * @generated
	 * @ordered
	 */
	protected double nominal = NOMINAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getEffective() <em>Effective</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEffective()
	 * @generated
	 * @ordered
	 */
	protected static final double EFFECTIVE_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getEffective() <em>Effective</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEffective()
	 * @generated
	 * @ordered
	 */
	protected double effective = EFFECTIVE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected TonePointImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.TONE_POINT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ToneCalibration getCalibration() {
		if (eContainerFeatureID() != CommissionPackage.TONE_POINT__CALIBRATION) return null;
		return (ToneCalibration)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetCalibration(ToneCalibration newCalibration, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newCalibration, CommissionPackage.TONE_POINT__CALIBRATION, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCalibration(ToneCalibration newCalibration) {
		if (newCalibration != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.TONE_POINT__CALIBRATION && newCalibration != null)) {
			if (EcoreUtil.isAncestor(this, newCalibration))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newCalibration != null)
				msgs = ((InternalEObject)newCalibration).eInverseAdd(this, CommissionPackage.TONE_CALIBRATION__POINTS, ToneCalibration.class, msgs);
			msgs = basicSetCalibration(newCalibration, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.TONE_POINT__CALIBRATION, newCalibration, newCalibration));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getNominal() {
		return nominal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNominal(double newNominal) {
		double oldNominal = nominal;
		nominal = newNominal;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.TONE_POINT__NOMINAL, oldNominal, nominal));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getEffective() {
		return effective;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEffective(double newEffective) {
		double oldEffective = effective;
		effective = newEffective;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.TONE_POINT__EFFECTIVE, oldEffective, effective));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.TONE_POINT__CALIBRATION:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetCalibration((ToneCalibration)otherEnd, msgs);
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
			case CommissionPackage.TONE_POINT__CALIBRATION:
				return basicSetCalibration(null, msgs);
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
			case CommissionPackage.TONE_POINT__CALIBRATION:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.TONE_CALIBRATION__POINTS, ToneCalibration.class, msgs);
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
			case CommissionPackage.TONE_POINT__CALIBRATION:
				return getCalibration();
			case CommissionPackage.TONE_POINT__NOMINAL:
				return getNominal();
			case CommissionPackage.TONE_POINT__EFFECTIVE:
				return getEffective();
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
			case CommissionPackage.TONE_POINT__CALIBRATION:
				setCalibration((ToneCalibration)newValue);
				return;
			case CommissionPackage.TONE_POINT__NOMINAL:
				setNominal((Double)newValue);
				return;
			case CommissionPackage.TONE_POINT__EFFECTIVE:
				setEffective((Double)newValue);
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
			case CommissionPackage.TONE_POINT__CALIBRATION:
				setCalibration((ToneCalibration)null);
				return;
			case CommissionPackage.TONE_POINT__NOMINAL:
				setNominal(NOMINAL_EDEFAULT);
				return;
			case CommissionPackage.TONE_POINT__EFFECTIVE:
				setEffective(EFFECTIVE_EDEFAULT);
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
			case CommissionPackage.TONE_POINT__CALIBRATION:
				return getCalibration() != null;
			case CommissionPackage.TONE_POINT__NOMINAL:
				return nominal != NOMINAL_EDEFAULT;
			case CommissionPackage.TONE_POINT__EFFECTIVE:
				return effective != EFFECTIVE_EDEFAULT;
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
		result.append(" (nominal: ");
		result.append(nominal);
		result.append(", effective: ");
		result.append(effective);
		result.append(')');
		return result.toString();
	}

} //TonePointImpl
