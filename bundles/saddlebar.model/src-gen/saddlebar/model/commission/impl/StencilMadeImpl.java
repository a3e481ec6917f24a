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
import saddlebar.model.commission.StencilMade;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Stencil Made</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.StencilMadeImpl#getWindowId <em>Window Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilMadeImpl#getLayerId <em>Layer Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilMadeImpl#getStencilId <em>Stencil Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilMadeImpl#getPaintId <em>Paint Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilMadeImpl#getPieceIds <em>Piece Ids</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilMadeImpl#getInputSha256 <em>Input Sha256</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilMadeImpl#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilMadeImpl#getCoverage <em>Coverage</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilMadeImpl#getTooFine <em>Too Fine</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilMadeImpl#getBridgesLost <em>Bridges Lost</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilMadeImpl#getWidthPx <em>Width Px</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilMadeImpl#getHeightPx <em>Height Px</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilMadeImpl#getFiles <em>Files</em>}</li>
 * </ul>
 *
 * @generated
 */
public class StencilMadeImpl extends MakingRecordImpl implements StencilMade {
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
	 * The default value of the '{@link #getLayerId() <em>Layer Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLayerId()
	 * @generated
	 * @ordered
	 */
	protected static final String LAYER_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLayerId() <em>Layer Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLayerId()
	 * @generated
	 * @ordered
	 */
	protected String layerId = LAYER_ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getStencilId() <em>Stencil Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStencilId()
	 * @generated
	 * @ordered
	 */
	protected static final String STENCIL_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStencilId() <em>Stencil Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStencilId()
	 * @generated
	 * @ordered
	 */
	protected String stencilId = STENCIL_ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getPaintId() <em>Paint Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPaintId()
	 * @generated
	 * @ordered
	 */
	protected static final String PAINT_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPaintId() <em>Paint Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPaintId()
	 * @generated
	 * @ordered
	 */
	protected String paintId = PAINT_ID_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPieceIds() <em>Piece Ids</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPieceIds()
	 * @generated
	 * @ordered
	 */
	protected EList<String> pieceIds;

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
	 * The default value of the '{@link #getCoverage() <em>Coverage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoverage()
	 * @generated
	 * @ordered
	 */
	protected static final Double COVERAGE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCoverage() <em>Coverage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoverage()
	 * @generated
	 * @ordered
	 */
	protected Double coverage = COVERAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #getTooFine() <em>Too Fine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTooFine()
	 * @generated
	 * @ordered
	 */
	protected static final int TOO_FINE_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getTooFine() <em>Too Fine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTooFine()
	 * @generated
	 * @ordered
	 */
	protected int tooFine = TOO_FINE_EDEFAULT;

	/**
	 * The default value of the '{@link #getBridgesLost() <em>Bridges Lost</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBridgesLost()
	 * @generated
	 * @ordered
	 */
	protected static final int BRIDGES_LOST_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getBridgesLost() <em>Bridges Lost</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBridgesLost()
	 * @generated
	 * @ordered
	 */
	protected int bridgesLost = BRIDGES_LOST_EDEFAULT;

	/**
	 * The default value of the '{@link #getWidthPx() <em>Width Px</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidthPx()
	 * @generated
	 * @ordered
	 */
	protected static final int WIDTH_PX_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getWidthPx() <em>Width Px</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidthPx()
	 * @generated
	 * @ordered
	 */
	protected int widthPx = WIDTH_PX_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeightPx() <em>Height Px</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeightPx()
	 * @generated
	 * @ordered
	 */
	protected static final int HEIGHT_PX_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getHeightPx() <em>Height Px</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeightPx()
	 * @generated
	 * @ordered
	 */
	protected int heightPx = HEIGHT_PX_EDEFAULT;

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
	protected StencilMadeImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.STENCIL_MADE;
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_MADE__WINDOW_ID, oldWindowId, windowId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLayerId() {
		return layerId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLayerId(String newLayerId) {
		String oldLayerId = layerId;
		layerId = newLayerId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_MADE__LAYER_ID, oldLayerId, layerId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getStencilId() {
		return stencilId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStencilId(String newStencilId) {
		String oldStencilId = stencilId;
		stencilId = newStencilId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_MADE__STENCIL_ID, oldStencilId, stencilId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPaintId() {
		return paintId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPaintId(String newPaintId) {
		String oldPaintId = paintId;
		paintId = newPaintId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_MADE__PAINT_ID, oldPaintId, paintId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getPieceIds() {
		if (pieceIds == null) {
			pieceIds = new EDataTypeUniqueEList<String>(String.class, this, CommissionPackage.STENCIL_MADE__PIECE_IDS);
		}
		return pieceIds;
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_MADE__INPUT_SHA256, oldInputSha256, inputSha256));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_MADE__SHA256, oldSha256, sha256));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getCoverage() {
		return coverage;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCoverage(Double newCoverage) {
		Double oldCoverage = coverage;
		coverage = newCoverage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_MADE__COVERAGE, oldCoverage, coverage));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getTooFine() {
		return tooFine;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTooFine(int newTooFine) {
		int oldTooFine = tooFine;
		tooFine = newTooFine;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_MADE__TOO_FINE, oldTooFine, tooFine));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getBridgesLost() {
		return bridgesLost;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBridgesLost(int newBridgesLost) {
		int oldBridgesLost = bridgesLost;
		bridgesLost = newBridgesLost;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_MADE__BRIDGES_LOST, oldBridgesLost, bridgesLost));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getWidthPx() {
		return widthPx;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWidthPx(int newWidthPx) {
		int oldWidthPx = widthPx;
		widthPx = newWidthPx;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_MADE__WIDTH_PX, oldWidthPx, widthPx));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getHeightPx() {
		return heightPx;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeightPx(int newHeightPx) {
		int oldHeightPx = heightPx;
		heightPx = newHeightPx;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_MADE__HEIGHT_PX, oldHeightPx, heightPx));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<MadeFile> getFiles() {
		if (files == null) {
			files = new EObjectContainmentEList<MadeFile>(MadeFile.class, this, CommissionPackage.STENCIL_MADE__FILES);
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
			case CommissionPackage.STENCIL_MADE__FILES:
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
			case CommissionPackage.STENCIL_MADE__WINDOW_ID:
				return getWindowId();
			case CommissionPackage.STENCIL_MADE__LAYER_ID:
				return getLayerId();
			case CommissionPackage.STENCIL_MADE__STENCIL_ID:
				return getStencilId();
			case CommissionPackage.STENCIL_MADE__PAINT_ID:
				return getPaintId();
			case CommissionPackage.STENCIL_MADE__PIECE_IDS:
				return getPieceIds();
			case CommissionPackage.STENCIL_MADE__INPUT_SHA256:
				return getInputSha256();
			case CommissionPackage.STENCIL_MADE__SHA256:
				return getSha256();
			case CommissionPackage.STENCIL_MADE__COVERAGE:
				return getCoverage();
			case CommissionPackage.STENCIL_MADE__TOO_FINE:
				return getTooFine();
			case CommissionPackage.STENCIL_MADE__BRIDGES_LOST:
				return getBridgesLost();
			case CommissionPackage.STENCIL_MADE__WIDTH_PX:
				return getWidthPx();
			case CommissionPackage.STENCIL_MADE__HEIGHT_PX:
				return getHeightPx();
			case CommissionPackage.STENCIL_MADE__FILES:
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
			case CommissionPackage.STENCIL_MADE__WINDOW_ID:
				setWindowId((String)newValue);
				return;
			case CommissionPackage.STENCIL_MADE__LAYER_ID:
				setLayerId((String)newValue);
				return;
			case CommissionPackage.STENCIL_MADE__STENCIL_ID:
				setStencilId((String)newValue);
				return;
			case CommissionPackage.STENCIL_MADE__PAINT_ID:
				setPaintId((String)newValue);
				return;
			case CommissionPackage.STENCIL_MADE__PIECE_IDS:
				getPieceIds().clear();
				getPieceIds().addAll((Collection<? extends String>)newValue);
				return;
			case CommissionPackage.STENCIL_MADE__INPUT_SHA256:
				setInputSha256((String)newValue);
				return;
			case CommissionPackage.STENCIL_MADE__SHA256:
				setSha256((String)newValue);
				return;
			case CommissionPackage.STENCIL_MADE__COVERAGE:
				setCoverage((Double)newValue);
				return;
			case CommissionPackage.STENCIL_MADE__TOO_FINE:
				setTooFine((Integer)newValue);
				return;
			case CommissionPackage.STENCIL_MADE__BRIDGES_LOST:
				setBridgesLost((Integer)newValue);
				return;
			case CommissionPackage.STENCIL_MADE__WIDTH_PX:
				setWidthPx((Integer)newValue);
				return;
			case CommissionPackage.STENCIL_MADE__HEIGHT_PX:
				setHeightPx((Integer)newValue);
				return;
			case CommissionPackage.STENCIL_MADE__FILES:
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
			case CommissionPackage.STENCIL_MADE__WINDOW_ID:
				setWindowId(WINDOW_ID_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_MADE__LAYER_ID:
				setLayerId(LAYER_ID_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_MADE__STENCIL_ID:
				setStencilId(STENCIL_ID_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_MADE__PAINT_ID:
				setPaintId(PAINT_ID_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_MADE__PIECE_IDS:
				getPieceIds().clear();
				return;
			case CommissionPackage.STENCIL_MADE__INPUT_SHA256:
				setInputSha256(INPUT_SHA256_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_MADE__SHA256:
				setSha256(SHA256_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_MADE__COVERAGE:
				setCoverage(COVERAGE_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_MADE__TOO_FINE:
				setTooFine(TOO_FINE_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_MADE__BRIDGES_LOST:
				setBridgesLost(BRIDGES_LOST_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_MADE__WIDTH_PX:
				setWidthPx(WIDTH_PX_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_MADE__HEIGHT_PX:
				setHeightPx(HEIGHT_PX_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_MADE__FILES:
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
			case CommissionPackage.STENCIL_MADE__WINDOW_ID:
				return WINDOW_ID_EDEFAULT == null ? windowId != null : !WINDOW_ID_EDEFAULT.equals(windowId);
			case CommissionPackage.STENCIL_MADE__LAYER_ID:
				return LAYER_ID_EDEFAULT == null ? layerId != null : !LAYER_ID_EDEFAULT.equals(layerId);
			case CommissionPackage.STENCIL_MADE__STENCIL_ID:
				return STENCIL_ID_EDEFAULT == null ? stencilId != null : !STENCIL_ID_EDEFAULT.equals(stencilId);
			case CommissionPackage.STENCIL_MADE__PAINT_ID:
				return PAINT_ID_EDEFAULT == null ? paintId != null : !PAINT_ID_EDEFAULT.equals(paintId);
			case CommissionPackage.STENCIL_MADE__PIECE_IDS:
				return pieceIds != null && !pieceIds.isEmpty();
			case CommissionPackage.STENCIL_MADE__INPUT_SHA256:
				return INPUT_SHA256_EDEFAULT == null ? inputSha256 != null : !INPUT_SHA256_EDEFAULT.equals(inputSha256);
			case CommissionPackage.STENCIL_MADE__SHA256:
				return SHA256_EDEFAULT == null ? sha256 != null : !SHA256_EDEFAULT.equals(sha256);
			case CommissionPackage.STENCIL_MADE__COVERAGE:
				return COVERAGE_EDEFAULT == null ? coverage != null : !COVERAGE_EDEFAULT.equals(coverage);
			case CommissionPackage.STENCIL_MADE__TOO_FINE:
				return tooFine != TOO_FINE_EDEFAULT;
			case CommissionPackage.STENCIL_MADE__BRIDGES_LOST:
				return bridgesLost != BRIDGES_LOST_EDEFAULT;
			case CommissionPackage.STENCIL_MADE__WIDTH_PX:
				return widthPx != WIDTH_PX_EDEFAULT;
			case CommissionPackage.STENCIL_MADE__HEIGHT_PX:
				return heightPx != HEIGHT_PX_EDEFAULT;
			case CommissionPackage.STENCIL_MADE__FILES:
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
		result.append(", layerId: ");
		result.append(layerId);
		result.append(", stencilId: ");
		result.append(stencilId);
		result.append(", paintId: ");
		result.append(paintId);
		result.append(", pieceIds: ");
		result.append(pieceIds);
		result.append(", inputSha256: ");
		result.append(inputSha256);
		result.append(", sha256: ");
		result.append(sha256);
		result.append(", coverage: ");
		result.append(coverage);
		result.append(", tooFine: ");
		result.append(tooFine);
		result.append(", bridgesLost: ");
		result.append(bridgesLost);
		result.append(", widthPx: ");
		result.append(widthPx);
		result.append(", heightPx: ");
		result.append(heightPx);
		result.append(')');
		return result.toString();
	}

} //StencilMadeImpl
