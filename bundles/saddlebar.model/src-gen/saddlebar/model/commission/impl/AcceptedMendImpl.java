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

import saddlebar.model.commission.AcceptedMend;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.Panel;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Accepted Mend</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.AcceptedMendImpl#getPanel <em>Panel</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.AcceptedMendImpl#getKey <em>Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.AcceptedMendImpl#getWords <em>Words</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.AcceptedMendImpl#getXMm <em>XMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.AcceptedMendImpl#getYMm <em>YMm</em>}</li>
 * </ul>
 *
 * @generated
 */
public class AcceptedMendImpl extends MinimalEObjectImpl.Container implements AcceptedMend {
	/**
	 * The default value of the '{@link #getKey() <em>Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKey()
	 * @generated
	 * @ordered
	 */
	protected static final String KEY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getKey() <em>Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKey()
	 * @generated
	 * @ordered
	 */
	protected String key = KEY_EDEFAULT;

	/**
	 * The default value of the '{@link #getWords() <em>Words</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWords()
	 * @generated
	 * @ordered
	 */
	protected static final String WORDS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWords() <em>Words</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWords()
	 * @generated
	 * @ordered
	 */
	protected String words = WORDS_EDEFAULT;

	/**
	 * The default value of the '{@link #getXMm() <em>XMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getXMm()
	 * @generated
	 * @ordered
	 */
	protected static final double XMM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getXMm() <em>XMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getXMm()
	 * @generated
	 * @ordered
	 */
	protected double xMm = XMM_EDEFAULT;

	/**
	 * The default value of the '{@link #getYMm() <em>YMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getYMm()
	 * @generated
	 * @ordered
	 */
	protected static final double YMM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getYMm() <em>YMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getYMm()
	 * @generated
	 * @ordered
	 */
	protected double yMm = YMM_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected AcceptedMendImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.ACCEPTED_MEND;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Panel getPanel() {
		if (eContainerFeatureID() != CommissionPackage.ACCEPTED_MEND__PANEL) return null;
		return (Panel)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetPanel(Panel newPanel, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newPanel, CommissionPackage.ACCEPTED_MEND__PANEL, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPanel(Panel newPanel) {
		if (newPanel != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.ACCEPTED_MEND__PANEL && newPanel != null)) {
			if (EcoreUtil.isAncestor(this, newPanel))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newPanel != null)
				msgs = ((InternalEObject)newPanel).eInverseAdd(this, CommissionPackage.PANEL__MENDINGS, Panel.class, msgs);
			msgs = basicSetPanel(newPanel, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ACCEPTED_MEND__PANEL, newPanel, newPanel));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getKey() {
		return key;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKey(String newKey) {
		String oldKey = key;
		key = newKey;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ACCEPTED_MEND__KEY, oldKey, key));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWords() {
		return words;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWords(String newWords) {
		String oldWords = words;
		words = newWords;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ACCEPTED_MEND__WORDS, oldWords, words));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getXMm() {
		return xMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setXMm(double newXMm) {
		double oldXMm = xMm;
		xMm = newXMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ACCEPTED_MEND__XMM, oldXMm, xMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getYMm() {
		return yMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setYMm(double newYMm) {
		double oldYMm = yMm;
		yMm = newYMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ACCEPTED_MEND__YMM, oldYMm, yMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.ACCEPTED_MEND__PANEL:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetPanel((Panel)otherEnd, msgs);
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
			case CommissionPackage.ACCEPTED_MEND__PANEL:
				return basicSetPanel(null, msgs);
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
			case CommissionPackage.ACCEPTED_MEND__PANEL:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.PANEL__MENDINGS, Panel.class, msgs);
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
			case CommissionPackage.ACCEPTED_MEND__PANEL:
				return getPanel();
			case CommissionPackage.ACCEPTED_MEND__KEY:
				return getKey();
			case CommissionPackage.ACCEPTED_MEND__WORDS:
				return getWords();
			case CommissionPackage.ACCEPTED_MEND__XMM:
				return getXMm();
			case CommissionPackage.ACCEPTED_MEND__YMM:
				return getYMm();
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
			case CommissionPackage.ACCEPTED_MEND__PANEL:
				setPanel((Panel)newValue);
				return;
			case CommissionPackage.ACCEPTED_MEND__KEY:
				setKey((String)newValue);
				return;
			case CommissionPackage.ACCEPTED_MEND__WORDS:
				setWords((String)newValue);
				return;
			case CommissionPackage.ACCEPTED_MEND__XMM:
				setXMm((Double)newValue);
				return;
			case CommissionPackage.ACCEPTED_MEND__YMM:
				setYMm((Double)newValue);
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
			case CommissionPackage.ACCEPTED_MEND__PANEL:
				setPanel((Panel)null);
				return;
			case CommissionPackage.ACCEPTED_MEND__KEY:
				setKey(KEY_EDEFAULT);
				return;
			case CommissionPackage.ACCEPTED_MEND__WORDS:
				setWords(WORDS_EDEFAULT);
				return;
			case CommissionPackage.ACCEPTED_MEND__XMM:
				setXMm(XMM_EDEFAULT);
				return;
			case CommissionPackage.ACCEPTED_MEND__YMM:
				setYMm(YMM_EDEFAULT);
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
			case CommissionPackage.ACCEPTED_MEND__PANEL:
				return getPanel() != null;
			case CommissionPackage.ACCEPTED_MEND__KEY:
				return KEY_EDEFAULT == null ? key != null : !KEY_EDEFAULT.equals(key);
			case CommissionPackage.ACCEPTED_MEND__WORDS:
				return WORDS_EDEFAULT == null ? words != null : !WORDS_EDEFAULT.equals(words);
			case CommissionPackage.ACCEPTED_MEND__XMM:
				return xMm != XMM_EDEFAULT;
			case CommissionPackage.ACCEPTED_MEND__YMM:
				return yMm != YMM_EDEFAULT;
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
		result.append(" (key: ");
		result.append(key);
		result.append(", words: ");
		result.append(words);
		result.append(", xMm: ");
		result.append(xMm);
		result.append(", yMm: ");
		result.append(yMm);
		result.append(')');
		return result.toString();
	}

} //AcceptedMendImpl
