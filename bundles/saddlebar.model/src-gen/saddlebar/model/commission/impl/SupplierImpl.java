/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectWithInverseResolvingEList;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.InternalEList;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.Supplier;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Supplier</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.SupplierImpl#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SupplierImpl#getContact <em>Contact</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SupplierImpl#getPaints <em>Paints</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SupplierImpl#getGlass <em>Glass</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SupplierImpl extends NamedImpl implements Supplier {
	/**
	 * The default value of the '{@link #getContact() <em>Contact</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getContact()
	 * @generated
	 * @ordered
	 */
	protected static final String CONTACT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getContact() <em>Contact</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getContact()
	 * @generated
	 * @ordered
	 */
	protected String contact = CONTACT_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPaints() <em>Paints</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPaints()
	 * @generated
	 * @ordered
	 */
	protected EList<Paint> paints;

	/**
	 * The cached value of the '{@link #getGlass() <em>Glass</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGlass()
	 * @generated
	 * @ordered
	 */
	protected EList<GlassStock> glass;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SupplierImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.SUPPLIER;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Studio getStudio() {
		if (eContainerFeatureID() != CommissionPackage.SUPPLIER__STUDIO) return null;
		return (Studio)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetStudio(Studio newStudio, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newStudio, CommissionPackage.SUPPLIER__STUDIO, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStudio(Studio newStudio) {
		if (newStudio != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.SUPPLIER__STUDIO && newStudio != null)) {
			if (EcoreUtil.isAncestor(this, newStudio))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newStudio != null)
				msgs = ((InternalEObject)newStudio).eInverseAdd(this, CommissionPackage.STUDIO__SUPPLIERS, Studio.class, msgs);
			msgs = basicSetStudio(newStudio, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SUPPLIER__STUDIO, newStudio, newStudio));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getContact() {
		return contact;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setContact(String newContact) {
		String oldContact = contact;
		contact = newContact;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SUPPLIER__CONTACT, oldContact, contact));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Paint> getPaints() {
		if (paints == null) {
			paints = new EObjectWithInverseResolvingEList<Paint>(Paint.class, this, CommissionPackage.SUPPLIER__PAINTS, CommissionPackage.PAINT__SUPPLIER);
		}
		return paints;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<GlassStock> getGlass() {
		if (glass == null) {
			glass = new EObjectWithInverseResolvingEList<GlassStock>(GlassStock.class, this, CommissionPackage.SUPPLIER__GLASS, CommissionPackage.GLASS_STOCK__SUPPLIER);
		}
		return glass;
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
			case CommissionPackage.SUPPLIER__STUDIO:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetStudio((Studio)otherEnd, msgs);
			case CommissionPackage.SUPPLIER__PAINTS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getPaints()).basicAdd(otherEnd, msgs);
			case CommissionPackage.SUPPLIER__GLASS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getGlass()).basicAdd(otherEnd, msgs);
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
			case CommissionPackage.SUPPLIER__STUDIO:
				return basicSetStudio(null, msgs);
			case CommissionPackage.SUPPLIER__PAINTS:
				return ((InternalEList<?>)getPaints()).basicRemove(otherEnd, msgs);
			case CommissionPackage.SUPPLIER__GLASS:
				return ((InternalEList<?>)getGlass()).basicRemove(otherEnd, msgs);
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
			case CommissionPackage.SUPPLIER__STUDIO:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.STUDIO__SUPPLIERS, Studio.class, msgs);
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
			case CommissionPackage.SUPPLIER__STUDIO:
				return getStudio();
			case CommissionPackage.SUPPLIER__CONTACT:
				return getContact();
			case CommissionPackage.SUPPLIER__PAINTS:
				return getPaints();
			case CommissionPackage.SUPPLIER__GLASS:
				return getGlass();
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
			case CommissionPackage.SUPPLIER__STUDIO:
				setStudio((Studio)newValue);
				return;
			case CommissionPackage.SUPPLIER__CONTACT:
				setContact((String)newValue);
				return;
			case CommissionPackage.SUPPLIER__PAINTS:
				getPaints().clear();
				getPaints().addAll((Collection<? extends Paint>)newValue);
				return;
			case CommissionPackage.SUPPLIER__GLASS:
				getGlass().clear();
				getGlass().addAll((Collection<? extends GlassStock>)newValue);
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
			case CommissionPackage.SUPPLIER__STUDIO:
				setStudio((Studio)null);
				return;
			case CommissionPackage.SUPPLIER__CONTACT:
				setContact(CONTACT_EDEFAULT);
				return;
			case CommissionPackage.SUPPLIER__PAINTS:
				getPaints().clear();
				return;
			case CommissionPackage.SUPPLIER__GLASS:
				getGlass().clear();
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
			case CommissionPackage.SUPPLIER__STUDIO:
				return getStudio() != null;
			case CommissionPackage.SUPPLIER__CONTACT:
				return CONTACT_EDEFAULT == null ? contact != null : !CONTACT_EDEFAULT.equals(contact);
			case CommissionPackage.SUPPLIER__PAINTS:
				return paints != null && !paints.isEmpty();
			case CommissionPackage.SUPPLIER__GLASS:
				return glass != null && !glass.isEmpty();
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
		result.append(" (contact: ");
		result.append(contact);
		result.append(')');
		return result.toString();
	}

} //SupplierImpl
