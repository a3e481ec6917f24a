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

import org.eclipse.emf.ecore.util.EDataTypeUniqueEList;
import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.MadeFile;
import saddlebar.model.commission.SheetMade;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Sheet Made</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.SheetMadeImpl#getSheetId <em>Sheet Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SheetMadeImpl#getNumber <em>Number</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SheetMadeImpl#getStencilIds <em>Stencil Ids</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SheetMadeImpl#getInputSha256 <em>Input Sha256</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SheetMadeImpl#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SheetMadeImpl#getFiles <em>Files</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SheetMadeImpl extends MakingRecordImpl implements SheetMade {
	/**
	 * The default value of the '{@link #getSheetId() <em>Sheet Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetId()
	 * @generated
	 * @ordered
	 */
	protected static final String SHEET_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSheetId() <em>Sheet Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetId()
	 * @generated
	 * @ordered
	 */
	protected String sheetId = SHEET_ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getNumber() <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNumber()
	 * @generated
	 * @ordered
	 */
	protected static final int NUMBER_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getNumber() <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNumber()
	 * @generated
	 * @ordered
	 */
	protected int number = NUMBER_EDEFAULT;

	/**
	 * The cached value of the '{@link #getStencilIds() <em>Stencil Ids</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStencilIds()
	 * @generated
	 * @ordered
	 */
	protected EList<String> stencilIds;

	/**
	 * The default value of the '{@link #getInputSha256() <em>Input Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInputSha256()
	 * @generated
	 * @ordered
	 */
	protected static final String INPUT_SHA256_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getInputSha256() <em>Input Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInputSha256()
	 * @generated
	 * @ordered
	 */
	protected String inputSha256 = INPUT_SHA256_EDEFAULT;

	/**
	 * The default value of the '{@link #getSha256() <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSha256()
	 * @generated
	 * @ordered
	 */
	protected static final String SHA256_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSha256() <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSha256()
	 * @generated
	 * @ordered
	 */
	protected String sha256 = SHA256_EDEFAULT;

	/**
	 * The cached value of the '{@link #getFiles() <em>Files</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFiles()
	 * @generated
	 * @ordered
	 */
	protected EList<MadeFile> files;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SheetMadeImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.SHEET_MADE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSheetId() {
		return sheetId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSheetId(String newSheetId) {
		String oldSheetId = sheetId;
		sheetId = newSheetId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHEET_MADE__SHEET_ID, oldSheetId, sheetId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getNumber() {
		return number;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNumber(int newNumber) {
		int oldNumber = number;
		number = newNumber;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHEET_MADE__NUMBER, oldNumber, number));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getStencilIds() {
		if (stencilIds == null) {
			stencilIds = new EDataTypeUniqueEList<String>(String.class, this, CommissionPackage.SHEET_MADE__STENCIL_IDS);
		}
		return stencilIds;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getInputSha256() {
		return inputSha256;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInputSha256(String newInputSha256) {
		String oldInputSha256 = inputSha256;
		inputSha256 = newInputSha256;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHEET_MADE__INPUT_SHA256, oldInputSha256, inputSha256));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSha256() {
		return sha256;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSha256(String newSha256) {
		String oldSha256 = sha256;
		sha256 = newSha256;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHEET_MADE__SHA256, oldSha256, sha256));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<MadeFile> getFiles() {
		if (files == null) {
			files = new EObjectContainmentEList<MadeFile>(MadeFile.class, this, CommissionPackage.SHEET_MADE__FILES);
		}
		return files;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.SHEET_MADE__FILES:
				return ((InternalEList<?>)getFiles()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CommissionPackage.SHEET_MADE__SHEET_ID:
				return getSheetId();
			case CommissionPackage.SHEET_MADE__NUMBER:
				return getNumber();
			case CommissionPackage.SHEET_MADE__STENCIL_IDS:
				return getStencilIds();
			case CommissionPackage.SHEET_MADE__INPUT_SHA256:
				return getInputSha256();
			case CommissionPackage.SHEET_MADE__SHA256:
				return getSha256();
			case CommissionPackage.SHEET_MADE__FILES:
				return getFiles();
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
			case CommissionPackage.SHEET_MADE__SHEET_ID:
				setSheetId((String)newValue);
				return;
			case CommissionPackage.SHEET_MADE__NUMBER:
				setNumber((Integer)newValue);
				return;
			case CommissionPackage.SHEET_MADE__STENCIL_IDS:
				getStencilIds().clear();
				getStencilIds().addAll((Collection<? extends String>)newValue);
				return;
			case CommissionPackage.SHEET_MADE__INPUT_SHA256:
				setInputSha256((String)newValue);
				return;
			case CommissionPackage.SHEET_MADE__SHA256:
				setSha256((String)newValue);
				return;
			case CommissionPackage.SHEET_MADE__FILES:
				getFiles().clear();
				getFiles().addAll((Collection<? extends MadeFile>)newValue);
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
			case CommissionPackage.SHEET_MADE__SHEET_ID:
				setSheetId(SHEET_ID_EDEFAULT);
				return;
			case CommissionPackage.SHEET_MADE__NUMBER:
				setNumber(NUMBER_EDEFAULT);
				return;
			case CommissionPackage.SHEET_MADE__STENCIL_IDS:
				getStencilIds().clear();
				return;
			case CommissionPackage.SHEET_MADE__INPUT_SHA256:
				setInputSha256(INPUT_SHA256_EDEFAULT);
				return;
			case CommissionPackage.SHEET_MADE__SHA256:
				setSha256(SHA256_EDEFAULT);
				return;
			case CommissionPackage.SHEET_MADE__FILES:
				getFiles().clear();
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
			case CommissionPackage.SHEET_MADE__SHEET_ID:
				return SHEET_ID_EDEFAULT == null ? sheetId != null : !SHEET_ID_EDEFAULT.equals(sheetId);
			case CommissionPackage.SHEET_MADE__NUMBER:
				return number != NUMBER_EDEFAULT;
			case CommissionPackage.SHEET_MADE__STENCIL_IDS:
				return stencilIds != null && !stencilIds.isEmpty();
			case CommissionPackage.SHEET_MADE__INPUT_SHA256:
				return INPUT_SHA256_EDEFAULT == null ? inputSha256 != null : !INPUT_SHA256_EDEFAULT.equals(inputSha256);
			case CommissionPackage.SHEET_MADE__SHA256:
				return SHA256_EDEFAULT == null ? sha256 != null : !SHA256_EDEFAULT.equals(sha256);
			case CommissionPackage.SHEET_MADE__FILES:
				return files != null && !files.isEmpty();
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
		result.append(" (sheetId: ");
		result.append(sheetId);
		result.append(", number: ");
		result.append(number);
		result.append(", stencilIds: ");
		result.append(stencilIds);
		result.append(", inputSha256: ");
		result.append(inputSha256);
		result.append(", sha256: ");
		result.append(sha256);
		result.append(')');
		return result.toString();
	}

} //SheetMadeImpl
