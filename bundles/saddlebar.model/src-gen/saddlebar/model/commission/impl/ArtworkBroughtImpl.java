/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import saddlebar.model.commission.ArtworkBrought;
import saddlebar.model.commission.CommissionPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Artwork Brought</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.ArtworkBroughtImpl#getWindowId <em>Window Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ArtworkBroughtImpl#getPanelId <em>Panel Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ArtworkBroughtImpl#getArtworkFile <em>Artwork File</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ArtworkBroughtImpl#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ArtworkBroughtImpl#getRevision <em>Revision</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ArtworkBroughtImpl#getWidthMm <em>Width Mm</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ArtworkBroughtImpl extends MakingRecordImpl implements ArtworkBrought {
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
	 * The default value of the '{@link #getArtworkFile() <em>Artwork File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getArtworkFile()
	 * @generated
	 * @ordered
	 */
	protected static final String ARTWORK_FILE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getArtworkFile() <em>Artwork File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getArtworkFile()
	 * @generated
	 * @ordered
	 */
	protected String artworkFile = ARTWORK_FILE_EDEFAULT;

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
	 * The default value of the '{@link #getRevision() <em>Revision</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRevision()
	 * @generated
	 * @ordered
	 */
	protected static final int REVISION_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getRevision() <em>Revision</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRevision()
	 * @generated
	 * @ordered
	 */
	protected int revision = REVISION_EDEFAULT;

	/**
	 * The default value of the '{@link #getWidthMm() <em>Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidthMm()
	 * @generated
	 * @ordered
	 */
	protected static final double WIDTH_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getWidthMm() <em>Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidthMm()
	 * @generated
	 * @ordered
	 */
	protected double widthMm = WIDTH_MM_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ArtworkBroughtImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.ARTWORK_BROUGHT;
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ARTWORK_BROUGHT__WINDOW_ID, oldWindowId, windowId));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ARTWORK_BROUGHT__PANEL_ID, oldPanelId, panelId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getArtworkFile() {
		return artworkFile;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setArtworkFile(String newArtworkFile) {
		String oldArtworkFile = artworkFile;
		artworkFile = newArtworkFile;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ARTWORK_BROUGHT__ARTWORK_FILE, oldArtworkFile, artworkFile));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ARTWORK_BROUGHT__SHA256, oldSha256, sha256));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getRevision() {
		return revision;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRevision(int newRevision) {
		int oldRevision = revision;
		revision = newRevision;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ARTWORK_BROUGHT__REVISION, oldRevision, revision));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getWidthMm() {
		return widthMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWidthMm(double newWidthMm) {
		double oldWidthMm = widthMm;
		widthMm = newWidthMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ARTWORK_BROUGHT__WIDTH_MM, oldWidthMm, widthMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CommissionPackage.ARTWORK_BROUGHT__WINDOW_ID:
				return getWindowId();
			case CommissionPackage.ARTWORK_BROUGHT__PANEL_ID:
				return getPanelId();
			case CommissionPackage.ARTWORK_BROUGHT__ARTWORK_FILE:
				return getArtworkFile();
			case CommissionPackage.ARTWORK_BROUGHT__SHA256:
				return getSha256();
			case CommissionPackage.ARTWORK_BROUGHT__REVISION:
				return getRevision();
			case CommissionPackage.ARTWORK_BROUGHT__WIDTH_MM:
				return getWidthMm();
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
			case CommissionPackage.ARTWORK_BROUGHT__WINDOW_ID:
				setWindowId((String)newValue);
				return;
			case CommissionPackage.ARTWORK_BROUGHT__PANEL_ID:
				setPanelId((String)newValue);
				return;
			case CommissionPackage.ARTWORK_BROUGHT__ARTWORK_FILE:
				setArtworkFile((String)newValue);
				return;
			case CommissionPackage.ARTWORK_BROUGHT__SHA256:
				setSha256((String)newValue);
				return;
			case CommissionPackage.ARTWORK_BROUGHT__REVISION:
				setRevision((Integer)newValue);
				return;
			case CommissionPackage.ARTWORK_BROUGHT__WIDTH_MM:
				setWidthMm((Double)newValue);
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
			case CommissionPackage.ARTWORK_BROUGHT__WINDOW_ID:
				setWindowId(WINDOW_ID_EDEFAULT);
				return;
			case CommissionPackage.ARTWORK_BROUGHT__PANEL_ID:
				setPanelId(PANEL_ID_EDEFAULT);
				return;
			case CommissionPackage.ARTWORK_BROUGHT__ARTWORK_FILE:
				setArtworkFile(ARTWORK_FILE_EDEFAULT);
				return;
			case CommissionPackage.ARTWORK_BROUGHT__SHA256:
				setSha256(SHA256_EDEFAULT);
				return;
			case CommissionPackage.ARTWORK_BROUGHT__REVISION:
				setRevision(REVISION_EDEFAULT);
				return;
			case CommissionPackage.ARTWORK_BROUGHT__WIDTH_MM:
				setWidthMm(WIDTH_MM_EDEFAULT);
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
			case CommissionPackage.ARTWORK_BROUGHT__WINDOW_ID:
				return WINDOW_ID_EDEFAULT == null ? windowId != null : !WINDOW_ID_EDEFAULT.equals(windowId);
			case CommissionPackage.ARTWORK_BROUGHT__PANEL_ID:
				return PANEL_ID_EDEFAULT == null ? panelId != null : !PANEL_ID_EDEFAULT.equals(panelId);
			case CommissionPackage.ARTWORK_BROUGHT__ARTWORK_FILE:
				return ARTWORK_FILE_EDEFAULT == null ? artworkFile != null : !ARTWORK_FILE_EDEFAULT.equals(artworkFile);
			case CommissionPackage.ARTWORK_BROUGHT__SHA256:
				return SHA256_EDEFAULT == null ? sha256 != null : !SHA256_EDEFAULT.equals(sha256);
			case CommissionPackage.ARTWORK_BROUGHT__REVISION:
				return revision != REVISION_EDEFAULT;
			case CommissionPackage.ARTWORK_BROUGHT__WIDTH_MM:
				return widthMm != WIDTH_MM_EDEFAULT;
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
		result.append(", artworkFile: ");
		result.append(artworkFile);
		result.append(", sha256: ");
		result.append(sha256);
		result.append(", revision: ");
		result.append(revision);
		result.append(", widthMm: ");
		result.append(widthMm);
		result.append(')');
		return result.toString();
	}

} //ArtworkBroughtImpl
