/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EcoreUtil;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.ProcessSetting;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.TonerSide;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Process Setting</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.ProcessSettingImpl#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ProcessSettingImpl#getProcessKey <em>Process Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ProcessSettingImpl#getTonerSide <em>Toner Side</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ProcessSettingImpl#isConfirmed <em>Confirmed</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ProcessSettingImpl#getPressC <em>Press C</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ProcessSettingImpl#getPressMin <em>Press Min</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ProcessSettingImpl#getCoolMin <em>Cool Min</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ProcessSettingImpl#getSource <em>Source</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ProcessSettingImpl extends NamedImpl implements ProcessSetting {
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
	 * The default value of the '{@link #getTonerSide() <em>Toner Side</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTonerSide()
	 * @generated
	 * @ordered
	 */
	protected static final TonerSide TONER_SIDE_EDEFAULT = TonerSide.PRINT;

	/**
	 * The cached value of the '{@link #getTonerSide() <em>Toner Side</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTonerSide()
	 * @generated
	 * @ordered
	 */
	protected TonerSide tonerSide = TONER_SIDE_EDEFAULT;

	/**
	 * The default value of the '{@link #isConfirmed() <em>Confirmed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isConfirmed()
	 * @generated
	 * @ordered
	 */
	protected static final boolean CONFIRMED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isConfirmed() <em>Confirmed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isConfirmed()
	 * @generated
	 * @ordered
	 */
	protected boolean confirmed = CONFIRMED_EDEFAULT;

	/**
	 * The default value of the '{@link #getPressC() <em>Press C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPressC()
	 * @generated
	 * @ordered
	 */
	protected static final double PRESS_C_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getPressC() <em>Press C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPressC()
	 * @generated
	 * @ordered
	 */
	protected double pressC = PRESS_C_EDEFAULT;

	/**
	 * The default value of the '{@link #getPressMin() <em>Press Min</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPressMin()
	 * @generated
	 * @ordered
	 */
	protected static final double PRESS_MIN_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getPressMin() <em>Press Min</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPressMin()
	 * @generated
	 * @ordered
	 */
	protected double pressMin = PRESS_MIN_EDEFAULT;

	/**
	 * The default value of the '{@link #getCoolMin() <em>Cool Min</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoolMin()
	 * @generated
	 * @ordered
	 */
	protected static final double COOL_MIN_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getCoolMin() <em>Cool Min</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoolMin()
	 * @generated
	 * @ordered
	 */
	protected double coolMin = COOL_MIN_EDEFAULT;

	/**
	 * The default value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected static final String SOURCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected String source = SOURCE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ProcessSettingImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.PROCESS_SETTING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Studio getStudio() {
		if (eContainerFeatureID() != CommissionPackage.PROCESS_SETTING__STUDIO) return null;
		return (Studio)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetStudio(Studio newStudio, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newStudio, CommissionPackage.PROCESS_SETTING__STUDIO, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStudio(Studio newStudio) {
		if (newStudio != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.PROCESS_SETTING__STUDIO && newStudio != null)) {
			if (EcoreUtil.isAncestor(this, newStudio))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newStudio != null)
				msgs = ((InternalEObject)newStudio).eInverseAdd(this, CommissionPackage.STUDIO__PROCESSES, Studio.class, msgs);
			msgs = basicSetStudio(newStudio, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PROCESS_SETTING__STUDIO, newStudio, newStudio));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PROCESS_SETTING__PROCESS_KEY, oldProcessKey, processKey));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TonerSide getTonerSide() {
		return tonerSide;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTonerSide(TonerSide newTonerSide) {
		TonerSide oldTonerSide = tonerSide;
		tonerSide = newTonerSide == null ? TONER_SIDE_EDEFAULT : newTonerSide;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PROCESS_SETTING__TONER_SIDE, oldTonerSide, tonerSide));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isConfirmed() {
		return confirmed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setConfirmed(boolean newConfirmed) {
		boolean oldConfirmed = confirmed;
		confirmed = newConfirmed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PROCESS_SETTING__CONFIRMED, oldConfirmed, confirmed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getPressC() {
		return pressC;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPressC(double newPressC) {
		double oldPressC = pressC;
		pressC = newPressC;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PROCESS_SETTING__PRESS_C, oldPressC, pressC));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getPressMin() {
		return pressMin;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPressMin(double newPressMin) {
		double oldPressMin = pressMin;
		pressMin = newPressMin;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PROCESS_SETTING__PRESS_MIN, oldPressMin, pressMin));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getCoolMin() {
		return coolMin;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCoolMin(double newCoolMin) {
		double oldCoolMin = coolMin;
		coolMin = newCoolMin;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PROCESS_SETTING__COOL_MIN, oldCoolMin, coolMin));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSource() {
		return source;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSource(String newSource) {
		String oldSource = source;
		source = newSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PROCESS_SETTING__SOURCE, oldSource, source));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.PROCESS_SETTING__STUDIO:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetStudio((Studio)otherEnd, msgs);
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
			case CommissionPackage.PROCESS_SETTING__STUDIO:
				return basicSetStudio(null, msgs);
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
			case CommissionPackage.PROCESS_SETTING__STUDIO:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.STUDIO__PROCESSES, Studio.class, msgs);
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
			case CommissionPackage.PROCESS_SETTING__STUDIO:
				return getStudio();
			case CommissionPackage.PROCESS_SETTING__PROCESS_KEY:
				return getProcessKey();
			case CommissionPackage.PROCESS_SETTING__TONER_SIDE:
				return getTonerSide();
			case CommissionPackage.PROCESS_SETTING__CONFIRMED:
				return isConfirmed();
			case CommissionPackage.PROCESS_SETTING__PRESS_C:
				return getPressC();
			case CommissionPackage.PROCESS_SETTING__PRESS_MIN:
				return getPressMin();
			case CommissionPackage.PROCESS_SETTING__COOL_MIN:
				return getCoolMin();
			case CommissionPackage.PROCESS_SETTING__SOURCE:
				return getSource();
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
			case CommissionPackage.PROCESS_SETTING__STUDIO:
				setStudio((Studio)newValue);
				return;
			case CommissionPackage.PROCESS_SETTING__PROCESS_KEY:
				setProcessKey((String)newValue);
				return;
			case CommissionPackage.PROCESS_SETTING__TONER_SIDE:
				setTonerSide((TonerSide)newValue);
				return;
			case CommissionPackage.PROCESS_SETTING__CONFIRMED:
				setConfirmed((Boolean)newValue);
				return;
			case CommissionPackage.PROCESS_SETTING__PRESS_C:
				setPressC((Double)newValue);
				return;
			case CommissionPackage.PROCESS_SETTING__PRESS_MIN:
				setPressMin((Double)newValue);
				return;
			case CommissionPackage.PROCESS_SETTING__COOL_MIN:
				setCoolMin((Double)newValue);
				return;
			case CommissionPackage.PROCESS_SETTING__SOURCE:
				setSource((String)newValue);
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
			case CommissionPackage.PROCESS_SETTING__STUDIO:
				setStudio((Studio)null);
				return;
			case CommissionPackage.PROCESS_SETTING__PROCESS_KEY:
				setProcessKey(PROCESS_KEY_EDEFAULT);
				return;
			case CommissionPackage.PROCESS_SETTING__TONER_SIDE:
				setTonerSide(TONER_SIDE_EDEFAULT);
				return;
			case CommissionPackage.PROCESS_SETTING__CONFIRMED:
				setConfirmed(CONFIRMED_EDEFAULT);
				return;
			case CommissionPackage.PROCESS_SETTING__PRESS_C:
				setPressC(PRESS_C_EDEFAULT);
				return;
			case CommissionPackage.PROCESS_SETTING__PRESS_MIN:
				setPressMin(PRESS_MIN_EDEFAULT);
				return;
			case CommissionPackage.PROCESS_SETTING__COOL_MIN:
				setCoolMin(COOL_MIN_EDEFAULT);
				return;
			case CommissionPackage.PROCESS_SETTING__SOURCE:
				setSource(SOURCE_EDEFAULT);
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
			case CommissionPackage.PROCESS_SETTING__STUDIO:
				return getStudio() != null;
			case CommissionPackage.PROCESS_SETTING__PROCESS_KEY:
				return PROCESS_KEY_EDEFAULT == null ? processKey != null : !PROCESS_KEY_EDEFAULT.equals(processKey);
			case CommissionPackage.PROCESS_SETTING__TONER_SIDE:
				return tonerSide != TONER_SIDE_EDEFAULT;
			case CommissionPackage.PROCESS_SETTING__CONFIRMED:
				return confirmed != CONFIRMED_EDEFAULT;
			case CommissionPackage.PROCESS_SETTING__PRESS_C:
				return pressC != PRESS_C_EDEFAULT;
			case CommissionPackage.PROCESS_SETTING__PRESS_MIN:
				return pressMin != PRESS_MIN_EDEFAULT;
			case CommissionPackage.PROCESS_SETTING__COOL_MIN:
				return coolMin != COOL_MIN_EDEFAULT;
			case CommissionPackage.PROCESS_SETTING__SOURCE:
				return SOURCE_EDEFAULT == null ? source != null : !SOURCE_EDEFAULT.equals(source);
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
		result.append(" (processKey: ");
		result.append(processKey);
		result.append(", tonerSide: ");
		result.append(tonerSide);
		result.append(", confirmed: ");
		result.append(confirmed);
		result.append(", pressC: ");
		result.append(pressC);
		result.append(", pressMin: ");
		result.append(pressMin);
		result.append(", coolMin: ");
		result.append(coolMin);
		result.append(", source: ");
		result.append(source);
		result.append(')');
		return result.toString();
	}

} //ProcessSettingImpl
