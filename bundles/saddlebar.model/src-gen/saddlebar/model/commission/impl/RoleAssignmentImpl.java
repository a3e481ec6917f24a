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

import saddlebar.model.commission.ArtworkReference;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.RoleAssignment;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Role Assignment</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.RoleAssignmentImpl#getArtwork <em>Artwork</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.RoleAssignmentImpl#getRole <em>Role</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.RoleAssignmentImpl#getArtLayer <em>Art Layer</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RoleAssignmentImpl extends MinimalEObjectImpl.Container implements RoleAssignment {
	/**
	 * The default value of the '{@link #getRole() <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRole()
	 * @generated
	 * @ordered
	 */
	protected static final LayerRole ROLE_EDEFAULT = LayerRole.CUTLINE;

	/**
	 * The cached value of the '{@link #getRole() <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRole()
	 * @generated
	 * @ordered
	 */
	protected LayerRole role = ROLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getArtLayer() <em>Art Layer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getArtLayer()
	 * @generated
	 * @ordered
	 */
	protected static final String ART_LAYER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getArtLayer() <em>Art Layer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getArtLayer()
	 * @generated
	 * @ordered
	 */
	protected String artLayer = ART_LAYER_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RoleAssignmentImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.ROLE_ASSIGNMENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ArtworkReference getArtwork() {
		if (eContainerFeatureID() != CommissionPackage.ROLE_ASSIGNMENT__ARTWORK) return null;
		return (ArtworkReference)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetArtwork(ArtworkReference newArtwork, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newArtwork, CommissionPackage.ROLE_ASSIGNMENT__ARTWORK, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setArtwork(ArtworkReference newArtwork) {
		if (newArtwork != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.ROLE_ASSIGNMENT__ARTWORK && newArtwork != null)) {
			if (EcoreUtil.isAncestor(this, newArtwork))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newArtwork != null)
				msgs = ((InternalEObject)newArtwork).eInverseAdd(this, CommissionPackage.ARTWORK_REFERENCE__ROLES, ArtworkReference.class, msgs);
			msgs = basicSetArtwork(newArtwork, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ROLE_ASSIGNMENT__ARTWORK, newArtwork, newArtwork));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LayerRole getRole() {
		return role;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRole(LayerRole newRole) {
		LayerRole oldRole = role;
		role = newRole == null ? ROLE_EDEFAULT : newRole;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ROLE_ASSIGNMENT__ROLE, oldRole, role));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getArtLayer() {
		return artLayer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setArtLayer(String newArtLayer) {
		String oldArtLayer = artLayer;
		artLayer = newArtLayer;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ROLE_ASSIGNMENT__ART_LAYER, oldArtLayer, artLayer));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.ROLE_ASSIGNMENT__ARTWORK:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetArtwork((ArtworkReference)otherEnd, msgs);
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
			case CommissionPackage.ROLE_ASSIGNMENT__ARTWORK:
				return basicSetArtwork(null, msgs);
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
			case CommissionPackage.ROLE_ASSIGNMENT__ARTWORK:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.ARTWORK_REFERENCE__ROLES, ArtworkReference.class, msgs);
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
			case CommissionPackage.ROLE_ASSIGNMENT__ARTWORK:
				return getArtwork();
			case CommissionPackage.ROLE_ASSIGNMENT__ROLE:
				return getRole();
			case CommissionPackage.ROLE_ASSIGNMENT__ART_LAYER:
				return getArtLayer();
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
			case CommissionPackage.ROLE_ASSIGNMENT__ARTWORK:
				setArtwork((ArtworkReference)newValue);
				return;
			case CommissionPackage.ROLE_ASSIGNMENT__ROLE:
				setRole((LayerRole)newValue);
				return;
			case CommissionPackage.ROLE_ASSIGNMENT__ART_LAYER:
				setArtLayer((String)newValue);
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
			case CommissionPackage.ROLE_ASSIGNMENT__ARTWORK:
				setArtwork((ArtworkReference)null);
				return;
			case CommissionPackage.ROLE_ASSIGNMENT__ROLE:
				setRole(ROLE_EDEFAULT);
				return;
			case CommissionPackage.ROLE_ASSIGNMENT__ART_LAYER:
				setArtLayer(ART_LAYER_EDEFAULT);
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
			case CommissionPackage.ROLE_ASSIGNMENT__ARTWORK:
				return getArtwork() != null;
			case CommissionPackage.ROLE_ASSIGNMENT__ROLE:
				return role != ROLE_EDEFAULT;
			case CommissionPackage.ROLE_ASSIGNMENT__ART_LAYER:
				return ART_LAYER_EDEFAULT == null ? artLayer != null : !ART_LAYER_EDEFAULT.equals(artLayer);
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
		result.append(" (role: ");
		result.append(role);
		result.append(", artLayer: ");
		result.append(artLayer);
		result.append(')');
		return result.toString();
	}

} //RoleAssignmentImpl
