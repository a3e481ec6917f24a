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
import org.eclipse.emf.ecore.util.EObjectContainmentWithInverseEList;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.InternalEList;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.MadeFile;
import saddlebar.model.commission.ScreenFrame;
import saddlebar.model.commission.Stencil;
import saddlebar.model.commission.StencilPiece;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Stencil</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.StencilImpl#getLayer <em>Layer</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilImpl#getNumber <em>Number</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilImpl#getFrame <em>Frame</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilImpl#getWidthMm <em>Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilImpl#getHeightMm <em>Height Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilImpl#getOriginXMm <em>Origin XMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilImpl#getOriginYMm <em>Origin YMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilImpl#getWidthPx <em>Width Px</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilImpl#getHeightPx <em>Height Px</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilImpl#getPrints <em>Prints</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilImpl#getPieces <em>Pieces</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilImpl#getFiles <em>Files</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilImpl#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilImpl#getContentKey <em>Content Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilImpl#getCoverage <em>Coverage</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilImpl#getTooFine <em>Too Fine</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilImpl#getBridgesLost <em>Bridges Lost</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilImpl#isRetired <em>Retired</em>}</li>
 * </ul>
 *
 * @generated
 */
public class StencilImpl extends IdentifiedImpl implements Stencil {
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
	 * The cached value of the '{@link #getFrame() <em>Frame</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrame()
	 * @generated
	 * @ordered
	 */
	protected ScreenFrame frame;

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
	 * The default value of the '{@link #getHeightMm() <em>Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeightMm()
	 * @generated
	 * @ordered
	 */
	protected static final double HEIGHT_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getHeightMm() <em>Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeightMm()
	 * @generated
	 * @ordered
	 */
	protected double heightMm = HEIGHT_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getOriginXMm() <em>Origin XMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOriginXMm()
	 * @generated
	 * @ordered
	 */
	protected static final double ORIGIN_XMM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getOriginXMm() <em>Origin XMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOriginXMm()
	 * @generated
	 * @ordered
	 */
	protected double originXMm = ORIGIN_XMM_EDEFAULT;

	/**
	 * The default value of the '{@link #getOriginYMm() <em>Origin YMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOriginYMm()
	 * @generated
	 * @ordered
	 */
	protected static final double ORIGIN_YMM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getOriginYMm() <em>Origin YMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOriginYMm()
	 * @generated
	 * @ordered
	 */
	protected double originYMm = ORIGIN_YMM_EDEFAULT;

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
	 * The default value of the '{@link #getPrints() <em>Prints</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrints()
	 * @generated
	 * @ordered
	 */
	protected static final int PRINTS_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getPrints() <em>Prints</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrints()
	 * @generated
	 * @ordered
	 */
	protected int prints = PRINTS_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPieces() <em>Pieces</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPieces()
	 * @generated
	 * @ordered
	 */
	protected EList<StencilPiece> pieces;

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
	 * The default value of the '{@link #getContentKey() <em>Content Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getContentKey()
	 * @generated
	 * @ordered
	 */
	protected static final String CONTENT_KEY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getContentKey() <em>Content Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getContentKey()
	 * @generated
	 * @ordered
	 */
	protected String contentKey = CONTENT_KEY_EDEFAULT;

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
	 * The default value of the '{@link #isRetired() <em>Retired</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isRetired()
	 * @generated
	 * @ordered
	 */
	protected static final boolean RETIRED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isRetired() <em>Retired</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isRetired()
	 * @generated
	 * @ordered
	 */
	protected boolean retired = RETIRED_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected StencilImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.STENCIL;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public DesignLayer getLayer() {
		if (eContainerFeatureID() != CommissionPackage.STENCIL__LAYER) return null;
		return (DesignLayer)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetLayer(DesignLayer newLayer, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newLayer, CommissionPackage.STENCIL__LAYER, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLayer(DesignLayer newLayer) {
		if (newLayer != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.STENCIL__LAYER && newLayer != null)) {
			if (EcoreUtil.isAncestor(this, newLayer))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newLayer != null)
				msgs = ((InternalEObject)newLayer).eInverseAdd(this, CommissionPackage.DESIGN_LAYER__STENCILS, DesignLayer.class, msgs);
			msgs = basicSetLayer(newLayer, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL__LAYER, newLayer, newLayer));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL__NUMBER, oldNumber, number));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ScreenFrame getFrame() {
		if (frame != null && frame.eIsProxy()) {
			InternalEObject oldFrame = (InternalEObject)frame;
			frame = (ScreenFrame)eResolveProxy(oldFrame);
			if (frame != oldFrame) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.STENCIL__FRAME, oldFrame, frame));
			}
		}
		return frame;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ScreenFrame basicGetFrame() {
		return frame;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrame(ScreenFrame newFrame) {
		ScreenFrame oldFrame = frame;
		frame = newFrame;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL__FRAME, oldFrame, frame));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL__WIDTH_MM, oldWidthMm, widthMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getHeightMm() {
		return heightMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeightMm(double newHeightMm) {
		double oldHeightMm = heightMm;
		heightMm = newHeightMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL__HEIGHT_MM, oldHeightMm, heightMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getOriginXMm() {
		return originXMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOriginXMm(double newOriginXMm) {
		double oldOriginXMm = originXMm;
		originXMm = newOriginXMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL__ORIGIN_XMM, oldOriginXMm, originXMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getOriginYMm() {
		return originYMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOriginYMm(double newOriginYMm) {
		double oldOriginYMm = originYMm;
		originYMm = newOriginYMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL__ORIGIN_YMM, oldOriginYMm, originYMm));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL__WIDTH_PX, oldWidthPx, widthPx));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL__HEIGHT_PX, oldHeightPx, heightPx));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getPrints() {
		return prints;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPrints(int newPrints) {
		int oldPrints = prints;
		prints = newPrints;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL__PRINTS, oldPrints, prints));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<StencilPiece> getPieces() {
		if (pieces == null) {
			pieces = new EObjectContainmentWithInverseEList<StencilPiece>(StencilPiece.class, this, CommissionPackage.STENCIL__PIECES, CommissionPackage.STENCIL_PIECE__STENCIL);
		}
		return pieces;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<MadeFile> getFiles() {
		if (files == null) {
			files = new EObjectContainmentEList<MadeFile>(MadeFile.class, this, CommissionPackage.STENCIL__FILES);
		}
		return files;
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL__SHA256, oldSha256, sha256));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getContentKey() {
		return contentKey;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setContentKey(String newContentKey) {
		String oldContentKey = contentKey;
		contentKey = newContentKey;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL__CONTENT_KEY, oldContentKey, contentKey));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL__COVERAGE, oldCoverage, coverage));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL__TOO_FINE, oldTooFine, tooFine));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL__BRIDGES_LOST, oldBridgesLost, bridgesLost));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isRetired() {
		return retired;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRetired(boolean newRetired) {
		boolean oldRetired = retired;
		retired = newRetired;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL__RETIRED, oldRetired, retired));
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
			case CommissionPackage.STENCIL__LAYER:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetLayer((DesignLayer)otherEnd, msgs);
			case CommissionPackage.STENCIL__PIECES:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getPieces()).basicAdd(otherEnd, msgs);
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
			case CommissionPackage.STENCIL__LAYER:
				return basicSetLayer(null, msgs);
			case CommissionPackage.STENCIL__PIECES:
				return ((InternalEList<?>)getPieces()).basicRemove(otherEnd, msgs);
			case CommissionPackage.STENCIL__FILES:
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
	public NotificationChain eBasicRemoveFromContainerFeature(NotificationChain msgs) {
		switch (eContainerFeatureID()) {
			case CommissionPackage.STENCIL__LAYER:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.DESIGN_LAYER__STENCILS, DesignLayer.class, msgs);
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
			case CommissionPackage.STENCIL__LAYER:
				return getLayer();
			case CommissionPackage.STENCIL__NUMBER:
				return getNumber();
			case CommissionPackage.STENCIL__FRAME:
				if (resolve) return getFrame();
				return basicGetFrame();
			case CommissionPackage.STENCIL__WIDTH_MM:
				return getWidthMm();
			case CommissionPackage.STENCIL__HEIGHT_MM:
				return getHeightMm();
			case CommissionPackage.STENCIL__ORIGIN_XMM:
				return getOriginXMm();
			case CommissionPackage.STENCIL__ORIGIN_YMM:
				return getOriginYMm();
			case CommissionPackage.STENCIL__WIDTH_PX:
				return getWidthPx();
			case CommissionPackage.STENCIL__HEIGHT_PX:
				return getHeightPx();
			case CommissionPackage.STENCIL__PRINTS:
				return getPrints();
			case CommissionPackage.STENCIL__PIECES:
				return getPieces();
			case CommissionPackage.STENCIL__FILES:
				return getFiles();
			case CommissionPackage.STENCIL__SHA256:
				return getSha256();
			case CommissionPackage.STENCIL__CONTENT_KEY:
				return getContentKey();
			case CommissionPackage.STENCIL__COVERAGE:
				return getCoverage();
			case CommissionPackage.STENCIL__TOO_FINE:
				return getTooFine();
			case CommissionPackage.STENCIL__BRIDGES_LOST:
				return getBridgesLost();
			case CommissionPackage.STENCIL__RETIRED:
				return isRetired();
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
			case CommissionPackage.STENCIL__LAYER:
				setLayer((DesignLayer)newValue);
				return;
			case CommissionPackage.STENCIL__NUMBER:
				setNumber((Integer)newValue);
				return;
			case CommissionPackage.STENCIL__FRAME:
				setFrame((ScreenFrame)newValue);
				return;
			case CommissionPackage.STENCIL__WIDTH_MM:
				setWidthMm((Double)newValue);
				return;
			case CommissionPackage.STENCIL__HEIGHT_MM:
				setHeightMm((Double)newValue);
				return;
			case CommissionPackage.STENCIL__ORIGIN_XMM:
				setOriginXMm((Double)newValue);
				return;
			case CommissionPackage.STENCIL__ORIGIN_YMM:
				setOriginYMm((Double)newValue);
				return;
			case CommissionPackage.STENCIL__WIDTH_PX:
				setWidthPx((Integer)newValue);
				return;
			case CommissionPackage.STENCIL__HEIGHT_PX:
				setHeightPx((Integer)newValue);
				return;
			case CommissionPackage.STENCIL__PRINTS:
				setPrints((Integer)newValue);
				return;
			case CommissionPackage.STENCIL__PIECES:
				getPieces().clear();
				getPieces().addAll((Collection<? extends StencilPiece>)newValue);
				return;
			case CommissionPackage.STENCIL__FILES:
				getFiles().clear();
				getFiles().addAll((Collection<? extends MadeFile>)newValue);
				return;
			case CommissionPackage.STENCIL__SHA256:
				setSha256((String)newValue);
				return;
			case CommissionPackage.STENCIL__CONTENT_KEY:
				setContentKey((String)newValue);
				return;
			case CommissionPackage.STENCIL__COVERAGE:
				setCoverage((Double)newValue);
				return;
			case CommissionPackage.STENCIL__TOO_FINE:
				setTooFine((Integer)newValue);
				return;
			case CommissionPackage.STENCIL__BRIDGES_LOST:
				setBridgesLost((Integer)newValue);
				return;
			case CommissionPackage.STENCIL__RETIRED:
				setRetired((Boolean)newValue);
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
			case CommissionPackage.STENCIL__LAYER:
				setLayer((DesignLayer)null);
				return;
			case CommissionPackage.STENCIL__NUMBER:
				setNumber(NUMBER_EDEFAULT);
				return;
			case CommissionPackage.STENCIL__FRAME:
				setFrame((ScreenFrame)null);
				return;
			case CommissionPackage.STENCIL__WIDTH_MM:
				setWidthMm(WIDTH_MM_EDEFAULT);
				return;
			case CommissionPackage.STENCIL__HEIGHT_MM:
				setHeightMm(HEIGHT_MM_EDEFAULT);
				return;
			case CommissionPackage.STENCIL__ORIGIN_XMM:
				setOriginXMm(ORIGIN_XMM_EDEFAULT);
				return;
			case CommissionPackage.STENCIL__ORIGIN_YMM:
				setOriginYMm(ORIGIN_YMM_EDEFAULT);
				return;
			case CommissionPackage.STENCIL__WIDTH_PX:
				setWidthPx(WIDTH_PX_EDEFAULT);
				return;
			case CommissionPackage.STENCIL__HEIGHT_PX:
				setHeightPx(HEIGHT_PX_EDEFAULT);
				return;
			case CommissionPackage.STENCIL__PRINTS:
				setPrints(PRINTS_EDEFAULT);
				return;
			case CommissionPackage.STENCIL__PIECES:
				getPieces().clear();
				return;
			case CommissionPackage.STENCIL__FILES:
				getFiles().clear();
				return;
			case CommissionPackage.STENCIL__SHA256:
				setSha256(SHA256_EDEFAULT);
				return;
			case CommissionPackage.STENCIL__CONTENT_KEY:
				setContentKey(CONTENT_KEY_EDEFAULT);
				return;
			case CommissionPackage.STENCIL__COVERAGE:
				setCoverage(COVERAGE_EDEFAULT);
				return;
			case CommissionPackage.STENCIL__TOO_FINE:
				setTooFine(TOO_FINE_EDEFAULT);
				return;
			case CommissionPackage.STENCIL__BRIDGES_LOST:
				setBridgesLost(BRIDGES_LOST_EDEFAULT);
				return;
			case CommissionPackage.STENCIL__RETIRED:
				setRetired(RETIRED_EDEFAULT);
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
			case CommissionPackage.STENCIL__LAYER:
				return getLayer() != null;
			case CommissionPackage.STENCIL__NUMBER:
				return number != NUMBER_EDEFAULT;
			case CommissionPackage.STENCIL__FRAME:
				return frame != null;
			case CommissionPackage.STENCIL__WIDTH_MM:
				return widthMm != WIDTH_MM_EDEFAULT;
			case CommissionPackage.STENCIL__HEIGHT_MM:
				return heightMm != HEIGHT_MM_EDEFAULT;
			case CommissionPackage.STENCIL__ORIGIN_XMM:
				return originXMm != ORIGIN_XMM_EDEFAULT;
			case CommissionPackage.STENCIL__ORIGIN_YMM:
				return originYMm != ORIGIN_YMM_EDEFAULT;
			case CommissionPackage.STENCIL__WIDTH_PX:
				return widthPx != WIDTH_PX_EDEFAULT;
			case CommissionPackage.STENCIL__HEIGHT_PX:
				return heightPx != HEIGHT_PX_EDEFAULT;
			case CommissionPackage.STENCIL__PRINTS:
				return prints != PRINTS_EDEFAULT;
			case CommissionPackage.STENCIL__PIECES:
				return pieces != null && !pieces.isEmpty();
			case CommissionPackage.STENCIL__FILES:
				return files != null && !files.isEmpty();
			case CommissionPackage.STENCIL__SHA256:
				return SHA256_EDEFAULT == null ? sha256 != null : !SHA256_EDEFAULT.equals(sha256);
			case CommissionPackage.STENCIL__CONTENT_KEY:
				return CONTENT_KEY_EDEFAULT == null ? contentKey != null : !CONTENT_KEY_EDEFAULT.equals(contentKey);
			case CommissionPackage.STENCIL__COVERAGE:
				return COVERAGE_EDEFAULT == null ? coverage != null : !COVERAGE_EDEFAULT.equals(coverage);
			case CommissionPackage.STENCIL__TOO_FINE:
				return tooFine != TOO_FINE_EDEFAULT;
			case CommissionPackage.STENCIL__BRIDGES_LOST:
				return bridgesLost != BRIDGES_LOST_EDEFAULT;
			case CommissionPackage.STENCIL__RETIRED:
				return retired != RETIRED_EDEFAULT;
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
		result.append(" (number: ");
		result.append(number);
		result.append(", widthMm: ");
		result.append(widthMm);
		result.append(", heightMm: ");
		result.append(heightMm);
		result.append(", originXMm: ");
		result.append(originXMm);
		result.append(", originYMm: ");
		result.append(originYMm);
		result.append(", widthPx: ");
		result.append(widthPx);
		result.append(", heightPx: ");
		result.append(heightPx);
		result.append(", prints: ");
		result.append(prints);
		result.append(", sha256: ");
		result.append(sha256);
		result.append(", contentKey: ");
		result.append(contentKey);
		result.append(", coverage: ");
		result.append(coverage);
		result.append(", tooFine: ");
		result.append(tooFine);
		result.append(", bridgesLost: ");
		result.append(bridgesLost);
		result.append(", retired: ");
		result.append(retired);
		result.append(')');
		return result.toString();
	}

} //StencilImpl
