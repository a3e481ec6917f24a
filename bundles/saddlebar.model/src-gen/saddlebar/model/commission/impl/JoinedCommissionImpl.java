/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import java.time.Instant;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EcoreUtil;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.JoinedCommission;
import saddlebar.model.commission.Studio;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Joined Commission</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.JoinedCommissionImpl#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.JoinedCommissionImpl#getFolder <em>Folder</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.JoinedCommissionImpl#getCommissionId <em>Commission Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.JoinedCommissionImpl#getJoined <em>Joined</em>}</li>
 * </ul>
 *
 * @generated
 */
public class JoinedCommissionImpl extends NamedImpl implements JoinedCommission {
	/**
	 * The default value of the '{@link #getFolder() <em>Folder</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFolder()
	 * @generated
	 * @ordered
	 */
	protected static final String FOLDER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFolder() <em>Folder</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFolder()
	 * @generated
	 * @ordered
	 */
	protected String folder = FOLDER_EDEFAULT;

	/**
	 * The default value of the '{@link #getCommissionId() <em>Commission Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCommissionId()
	 * @generated
	 * @ordered
	 */
	protected static final String COMMISSION_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCommissionId() <em>Commission Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCommissionId()
	 * @generated
	 * @ordered
	 */
	protected String commissionId = COMMISSION_ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getJoined() <em>Joined</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getJoined()
	 * @generated
	 * @ordered
	 */
	protected static final Instant JOINED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getJoined() <em>Joined</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getJoined()
	 * @generated
	 * @ordered
	 */
	protected Instant joined = JOINED_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected JoinedCommissionImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.JOINED_COMMISSION;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Studio getStudio() {
		if (eContainerFeatureID() != CommissionPackage.JOINED_COMMISSION__STUDIO) return null;
		return (Studio)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetStudio(Studio newStudio, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newStudio, CommissionPackage.JOINED_COMMISSION__STUDIO, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStudio(Studio newStudio) {
		if (newStudio != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.JOINED_COMMISSION__STUDIO && newStudio != null)) {
			if (EcoreUtil.isAncestor(this, newStudio))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newStudio != null)
				msgs = ((InternalEObject)newStudio).eInverseAdd(this, CommissionPackage.STUDIO__COMMISSIONS, Studio.class, msgs);
			msgs = basicSetStudio(newStudio, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.JOINED_COMMISSION__STUDIO, newStudio, newStudio));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFolder() {
		return folder;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFolder(String newFolder) {
		String oldFolder = folder;
		folder = newFolder;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.JOINED_COMMISSION__FOLDER, oldFolder, folder));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCommissionId() {
		return commissionId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCommissionId(String newCommissionId) {
		String oldCommissionId = commissionId;
		commissionId = newCommissionId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.JOINED_COMMISSION__COMMISSION_ID, oldCommissionId, commissionId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getJoined() {
		return joined;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setJoined(Instant newJoined) {
		Instant oldJoined = joined;
		joined = newJoined;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.JOINED_COMMISSION__JOINED, oldJoined, joined));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.JOINED_COMMISSION__STUDIO:
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
			case CommissionPackage.JOINED_COMMISSION__STUDIO:
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
			case CommissionPackage.JOINED_COMMISSION__STUDIO:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.STUDIO__COMMISSIONS, Studio.class, msgs);
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
			case CommissionPackage.JOINED_COMMISSION__STUDIO:
				return getStudio();
			case CommissionPackage.JOINED_COMMISSION__FOLDER:
				return getFolder();
			case CommissionPackage.JOINED_COMMISSION__COMMISSION_ID:
				return getCommissionId();
			case CommissionPackage.JOINED_COMMISSION__JOINED:
				return getJoined();
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
			case CommissionPackage.JOINED_COMMISSION__STUDIO:
				setStudio((Studio)newValue);
				return;
			case CommissionPackage.JOINED_COMMISSION__FOLDER:
				setFolder((String)newValue);
				return;
			case CommissionPackage.JOINED_COMMISSION__COMMISSION_ID:
				setCommissionId((String)newValue);
				return;
			case CommissionPackage.JOINED_COMMISSION__JOINED:
				setJoined((Instant)newValue);
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
			case CommissionPackage.JOINED_COMMISSION__STUDIO:
				setStudio((Studio)null);
				return;
			case CommissionPackage.JOINED_COMMISSION__FOLDER:
				setFolder(FOLDER_EDEFAULT);
				return;
			case CommissionPackage.JOINED_COMMISSION__COMMISSION_ID:
				setCommissionId(COMMISSION_ID_EDEFAULT);
				return;
			case CommissionPackage.JOINED_COMMISSION__JOINED:
				setJoined(JOINED_EDEFAULT);
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
			case CommissionPackage.JOINED_COMMISSION__STUDIO:
				return getStudio() != null;
			case CommissionPackage.JOINED_COMMISSION__FOLDER:
				return FOLDER_EDEFAULT == null ? folder != null : !FOLDER_EDEFAULT.equals(folder);
			case CommissionPackage.JOINED_COMMISSION__COMMISSION_ID:
				return COMMISSION_ID_EDEFAULT == null ? commissionId != null : !COMMISSION_ID_EDEFAULT.equals(commissionId);
			case CommissionPackage.JOINED_COMMISSION__JOINED:
				return JOINED_EDEFAULT == null ? joined != null : !JOINED_EDEFAULT.equals(joined);
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
		result.append(" (folder: ");
		result.append(folder);
		result.append(", commissionId: ");
		result.append(commissionId);
		result.append(", joined: ");
		result.append(joined);
		result.append(')');
		return result.toString();
	}

} //JoinedCommissionImpl
