/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import java.time.LocalDate;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentWithInverseEList;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.InternalEList;

import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.GlassChoice;
import saddlebar.model.commission.Window;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Colourway</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.ColourwayImpl#getWindow <em>Window</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ColourwayImpl#isApproved <em>Approved</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ColourwayImpl#getApprovedOn <em>Approved On</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ColourwayImpl#getChoices <em>Choices</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ColourwayImpl extends NamedImpl implements Colourway {
	/**
	 * The default value of the '{@link #isApproved() <em>Approved</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isApproved()
	 * @generated
	 * @ordered
	 */
	protected static final boolean APPROVED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isApproved() <em>Approved</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isApproved()
	 * @generated
	 * @ordered
	 */
	protected boolean approved = APPROVED_EDEFAULT;

	/**
	 * The default value of the '{@link #getApprovedOn() <em>Approved On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getApprovedOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate APPROVED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getApprovedOn() <em>Approved On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getApprovedOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate approvedOn = APPROVED_ON_EDEFAULT;

	/**
	 * The cached value of the '{@link #getChoices() <em>Choices</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChoices()
	 * @generated
	 * @ordered
	 */
	protected EList<GlassChoice> choices;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ColourwayImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.COLOURWAY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Window getWindow() {
		if (eContainerFeatureID() != CommissionPackage.COLOURWAY__WINDOW) return null;
		return (Window)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetWindow(Window newWindow, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newWindow, CommissionPackage.COLOURWAY__WINDOW, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWindow(Window newWindow) {
		if (newWindow != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.COLOURWAY__WINDOW && newWindow != null)) {
			if (EcoreUtil.isAncestor(this, newWindow))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newWindow != null)
				msgs = ((InternalEObject)newWindow).eInverseAdd(this, CommissionPackage.WINDOW__COLOURWAYS, Window.class, msgs);
			msgs = basicSetWindow(newWindow, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COLOURWAY__WINDOW, newWindow, newWindow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isApproved() {
		return approved;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setApproved(boolean newApproved) {
		boolean oldApproved = approved;
		approved = newApproved;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COLOURWAY__APPROVED, oldApproved, approved));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getApprovedOn() {
		return approvedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setApprovedOn(LocalDate newApprovedOn) {
		LocalDate oldApprovedOn = approvedOn;
		approvedOn = newApprovedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COLOURWAY__APPROVED_ON, oldApprovedOn, approvedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<GlassChoice> getChoices() {
		if (choices == null) {
			choices = new EObjectContainmentWithInverseEList<GlassChoice>(GlassChoice.class, this, CommissionPackage.COLOURWAY__CHOICES, CommissionPackage.GLASS_CHOICE__COLOURWAY);
		}
		return choices;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.COLOURWAY__WINDOW:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetWindow((Window)otherEnd, msgs);
			case CommissionPackage.COLOURWAY__CHOICES:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getChoices()).basicAdd(otherEnd, msgs);
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
			case CommissionPackage.COLOURWAY__WINDOW:
				return basicSetWindow(null, msgs);
			case CommissionPackage.COLOURWAY__CHOICES:
				return ((InternalEList<?>)getChoices()).basicRemove(otherEnd, msgs);
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
			case CommissionPackage.COLOURWAY__WINDOW:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.WINDOW__COLOURWAYS, Window.class, msgs);
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
			case CommissionPackage.COLOURWAY__WINDOW:
				return getWindow();
			case CommissionPackage.COLOURWAY__APPROVED:
				return isApproved();
			case CommissionPackage.COLOURWAY__APPROVED_ON:
				return getApprovedOn();
			case CommissionPackage.COLOURWAY__CHOICES:
				return getChoices();
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
			case CommissionPackage.COLOURWAY__WINDOW:
				setWindow((Window)newValue);
				return;
			case CommissionPackage.COLOURWAY__APPROVED:
				setApproved((Boolean)newValue);
				return;
			case CommissionPackage.COLOURWAY__APPROVED_ON:
				setApprovedOn((LocalDate)newValue);
				return;
			case CommissionPackage.COLOURWAY__CHOICES:
				getChoices().clear();
				getChoices().addAll((Collection<? extends GlassChoice>)newValue);
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
			case CommissionPackage.COLOURWAY__WINDOW:
				setWindow((Window)null);
				return;
			case CommissionPackage.COLOURWAY__APPROVED:
				setApproved(APPROVED_EDEFAULT);
				return;
			case CommissionPackage.COLOURWAY__APPROVED_ON:
				setApprovedOn(APPROVED_ON_EDEFAULT);
				return;
			case CommissionPackage.COLOURWAY__CHOICES:
				getChoices().clear();
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
			case CommissionPackage.COLOURWAY__WINDOW:
				return getWindow() != null;
			case CommissionPackage.COLOURWAY__APPROVED:
				return approved != APPROVED_EDEFAULT;
			case CommissionPackage.COLOURWAY__APPROVED_ON:
				return APPROVED_ON_EDEFAULT == null ? approvedOn != null : !APPROVED_ON_EDEFAULT.equals(approvedOn);
			case CommissionPackage.COLOURWAY__CHOICES:
				return choices != null && !choices.isEmpty();
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
		result.append(" (approved: ");
		result.append(approved);
		result.append(", approvedOn: ");
		result.append(approvedOn);
		result.append(')');
		return result.toString();
	}

} //ColourwayImpl
