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

import saddlebar.model.commission.Commission;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.Site;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Site</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.SiteImpl#getCommission <em>Commission</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SiteImpl#getAddress <em>Address</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SiteImpl#getAccess <em>Access</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SiteImpl#getDistanceKm <em>Distance Km</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SiteImpl#getTrips <em>Trips</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SiteImpl extends NamedImpl implements Site {
	/**
	 * The default value of the '{@link #getAddress() <em>Address</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAddress()
	 * @generated
	 * @ordered
	 */
	protected static final String ADDRESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAddress() <em>Address</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAddress()
	 * @generated
	 * @ordered
	 */
	protected String address = ADDRESS_EDEFAULT;

	/**
	 * The default value of the '{@link #getAccess() <em>Access</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAccess()
	 * @generated
	 * @ordered
	 */
	protected static final String ACCESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAccess() <em>Access</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAccess()
	 * @generated
	 * @ordered
	 */
	protected String access = ACCESS_EDEFAULT;

	/**
	 * The default value of the '{@link #getDistanceKm() <em>Distance Km</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDistanceKm()
	 * @generated
	 * @ordered
	 */
	protected static final Double DISTANCE_KM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDistanceKm() <em>Distance Km</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDistanceKm()
	 * @generated
	 * @ordered
	 */
	protected Double distanceKm = DISTANCE_KM_EDEFAULT;

	/**
	 * The default value of the '{@link #getTrips() <em>Trips</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTrips()
	 * @generated
	 * @ordered
	 */
	protected static final int TRIPS_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getTrips() <em>Trips</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTrips()
	 * @generated
	 * @ordered
	 */
	protected int trips = TRIPS_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SiteImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.SITE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Commission getCommission() {
		if (eContainerFeatureID() != CommissionPackage.SITE__COMMISSION) return null;
		return (Commission)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetCommission(Commission newCommission, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newCommission, CommissionPackage.SITE__COMMISSION, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCommission(Commission newCommission) {
		if (newCommission != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.SITE__COMMISSION && newCommission != null)) {
			if (EcoreUtil.isAncestor(this, newCommission))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newCommission != null)
				msgs = ((InternalEObject)newCommission).eInverseAdd(this, CommissionPackage.COMMISSION__SITE, Commission.class, msgs);
			msgs = basicSetCommission(newCommission, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SITE__COMMISSION, newCommission, newCommission));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAddress() {
		return address;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAddress(String newAddress) {
		String oldAddress = address;
		address = newAddress;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SITE__ADDRESS, oldAddress, address));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAccess() {
		return access;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAccess(String newAccess) {
		String oldAccess = access;
		access = newAccess;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SITE__ACCESS, oldAccess, access));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDistanceKm() {
		return distanceKm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDistanceKm(Double newDistanceKm) {
		Double oldDistanceKm = distanceKm;
		distanceKm = newDistanceKm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SITE__DISTANCE_KM, oldDistanceKm, distanceKm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getTrips() {
		return trips;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTrips(int newTrips) {
		int oldTrips = trips;
		trips = newTrips;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SITE__TRIPS, oldTrips, trips));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.SITE__COMMISSION:
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
			case CommissionPackage.SITE__COMMISSION:
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
			case CommissionPackage.SITE__COMMISSION:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.COMMISSION__SITE, Commission.class, msgs);
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
			case CommissionPackage.SITE__COMMISSION:
				return getCommission();
			case CommissionPackage.SITE__ADDRESS:
				return getAddress();
			case CommissionPackage.SITE__ACCESS:
				return getAccess();
			case CommissionPackage.SITE__DISTANCE_KM:
				return getDistanceKm();
			case CommissionPackage.SITE__TRIPS:
				return getTrips();
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
			case CommissionPackage.SITE__COMMISSION:
				setCommission((Commission)newValue);
				return;
			case CommissionPackage.SITE__ADDRESS:
				setAddress((String)newValue);
				return;
			case CommissionPackage.SITE__ACCESS:
				setAccess((String)newValue);
				return;
			case CommissionPackage.SITE__DISTANCE_KM:
				setDistanceKm((Double)newValue);
				return;
			case CommissionPackage.SITE__TRIPS:
				setTrips((Integer)newValue);
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
			case CommissionPackage.SITE__COMMISSION:
				setCommission((Commission)null);
				return;
			case CommissionPackage.SITE__ADDRESS:
				setAddress(ADDRESS_EDEFAULT);
				return;
			case CommissionPackage.SITE__ACCESS:
				setAccess(ACCESS_EDEFAULT);
				return;
			case CommissionPackage.SITE__DISTANCE_KM:
				setDistanceKm(DISTANCE_KM_EDEFAULT);
				return;
			case CommissionPackage.SITE__TRIPS:
				setTrips(TRIPS_EDEFAULT);
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
			case CommissionPackage.SITE__COMMISSION:
				return getCommission() != null;
			case CommissionPackage.SITE__ADDRESS:
				return ADDRESS_EDEFAULT == null ? address != null : !ADDRESS_EDEFAULT.equals(address);
			case CommissionPackage.SITE__ACCESS:
				return ACCESS_EDEFAULT == null ? access != null : !ACCESS_EDEFAULT.equals(access);
			case CommissionPackage.SITE__DISTANCE_KM:
				return DISTANCE_KM_EDEFAULT == null ? distanceKm != null : !DISTANCE_KM_EDEFAULT.equals(distanceKm);
			case CommissionPackage.SITE__TRIPS:
				return trips != TRIPS_EDEFAULT;
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
		result.append(" (address: ");
		result.append(address);
		result.append(", access: ");
		result.append(access);
		result.append(", distanceKm: ");
		result.append(distanceKm);
		result.append(", trips: ");
		result.append(trips);
		result.append(')');
		return result.toString();
	}

} //SiteImpl
