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

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.MadeFile;
import saddlebar.model.commission.PiecesMade;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Pieces Made</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.PiecesMadeImpl#getWindowId <em>Window Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PiecesMadeImpl#getPanelId <em>Panel Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PiecesMadeImpl#getInputSha256 <em>Input Sha256</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PiecesMadeImpl#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PiecesMadeImpl#getPieces <em>Pieces</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PiecesMadeImpl#getFiles <em>Files</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PiecesMadeImpl extends MakingRecordImpl implements PiecesMade {
	/**
	 * The default value of the '{@link #getWindowId() <em>Window Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWindowId()
	 * @generated
	 * @ordered
	 */
	protected static final String WINDOW_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWindowId() <em>Window Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWindowId()
	 * @generated
	 * @ordered
	 */
	protected String windowId = WINDOW_ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getPanelId() <em>Panel Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPanelId()
	 * @generated
	 * @ordered
	 */
	protected static final String PANEL_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPanelId() <em>Panel Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPanelId()
	 * @generated
	 * @ordered
	 */
	protected String panelId = PANEL_ID_EDEFAULT;

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
	 * The default value of the '{@link #getPieces() <em>Pieces</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPieces()
	 * @generated
	 * @ordered
	 */
	protected static final int PIECES_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getPieces() <em>Pieces</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPieces()
	 * @generated
	 * @ordered
	 */
	protected int pieces = PIECES_EDEFAULT;

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
	protected PiecesMadeImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.PIECES_MADE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWindowId() {
		return windowId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWindowId(String newWindowId) {
		String oldWindowId = windowId;
		windowId = newWindowId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECES_MADE__WINDOW_ID, oldWindowId, windowId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPanelId() {
		return panelId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPanelId(String newPanelId) {
		String oldPanelId = panelId;
		panelId = newPanelId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECES_MADE__PANEL_ID, oldPanelId, panelId));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECES_MADE__INPUT_SHA256, oldInputSha256, inputSha256));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECES_MADE__SHA256, oldSha256, sha256));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getPieces() {
		return pieces;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPieces(int newPieces) {
		int oldPieces = pieces;
		pieces = newPieces;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECES_MADE__PIECES, oldPieces, pieces));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<MadeFile> getFiles() {
		if (files == null) {
			files = new EObjectContainmentEList<MadeFile>(MadeFile.class, this, CommissionPackage.PIECES_MADE__FILES);
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
			case CommissionPackage.PIECES_MADE__FILES:
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
			case CommissionPackage.PIECES_MADE__WINDOW_ID:
				return getWindowId();
			case CommissionPackage.PIECES_MADE__PANEL_ID:
				return getPanelId();
			case CommissionPackage.PIECES_MADE__INPUT_SHA256:
				return getInputSha256();
			case CommissionPackage.PIECES_MADE__SHA256:
				return getSha256();
			case CommissionPackage.PIECES_MADE__PIECES:
				return getPieces();
			case CommissionPackage.PIECES_MADE__FILES:
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
			case CommissionPackage.PIECES_MADE__WINDOW_ID:
				setWindowId((String)newValue);
				return;
			case CommissionPackage.PIECES_MADE__PANEL_ID:
				setPanelId((String)newValue);
				return;
			case CommissionPackage.PIECES_MADE__INPUT_SHA256:
				setInputSha256((String)newValue);
				return;
			case CommissionPackage.PIECES_MADE__SHA256:
				setSha256((String)newValue);
				return;
			case CommissionPackage.PIECES_MADE__PIECES:
				setPieces((Integer)newValue);
				return;
			case CommissionPackage.PIECES_MADE__FILES:
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
			case CommissionPackage.PIECES_MADE__WINDOW_ID:
				setWindowId(WINDOW_ID_EDEFAULT);
				return;
			case CommissionPackage.PIECES_MADE__PANEL_ID:
				setPanelId(PANEL_ID_EDEFAULT);
				return;
			case CommissionPackage.PIECES_MADE__INPUT_SHA256:
				setInputSha256(INPUT_SHA256_EDEFAULT);
				return;
			case CommissionPackage.PIECES_MADE__SHA256:
				setSha256(SHA256_EDEFAULT);
				return;
			case CommissionPackage.PIECES_MADE__PIECES:
				setPieces(PIECES_EDEFAULT);
				return;
			case CommissionPackage.PIECES_MADE__FILES:
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
			case CommissionPackage.PIECES_MADE__WINDOW_ID:
				return WINDOW_ID_EDEFAULT == null ? windowId != null : !WINDOW_ID_EDEFAULT.equals(windowId);
			case CommissionPackage.PIECES_MADE__PANEL_ID:
				return PANEL_ID_EDEFAULT == null ? panelId != null : !PANEL_ID_EDEFAULT.equals(panelId);
			case CommissionPackage.PIECES_MADE__INPUT_SHA256:
				return INPUT_SHA256_EDEFAULT == null ? inputSha256 != null : !INPUT_SHA256_EDEFAULT.equals(inputSha256);
			case CommissionPackage.PIECES_MADE__SHA256:
				return SHA256_EDEFAULT == null ? sha256 != null : !SHA256_EDEFAULT.equals(sha256);
			case CommissionPackage.PIECES_MADE__PIECES:
				return pieces != PIECES_EDEFAULT;
			case CommissionPackage.PIECES_MADE__FILES:
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
		result.append(" (windowId: ");
		result.append(windowId);
		result.append(", panelId: ");
		result.append(panelId);
		result.append(", inputSha256: ");
		result.append(inputSha256);
		result.append(", sha256: ");
		result.append(sha256);
		result.append(", pieces: ");
		result.append(pieces);
		result.append(')');
		return result.toString();
	}

} //PiecesMadeImpl
