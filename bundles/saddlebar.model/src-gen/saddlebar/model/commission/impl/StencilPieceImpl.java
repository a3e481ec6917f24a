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

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Stencil;
import saddlebar.model.commission.StencilPiece;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Stencil Piece</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.StencilPieceImpl#getStencil <em>Stencil</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilPieceImpl#getPiece <em>Piece</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilPieceImpl#getXMm <em>XMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilPieceImpl#getYMm <em>YMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilPieceImpl#getRotationDeg <em>Rotation Deg</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilPieceImpl#getSpot <em>Spot</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StencilPieceImpl#getPrints <em>Prints</em>}</li>
 * </ul>
 *
 * @generated
 */
public class StencilPieceImpl extends MinimalEObjectImpl.Container implements StencilPiece {
	/**
	 * The cached value of the '{@link #getPiece() <em>Piece</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPiece()
	 * @generated
	 * @ordered
	 */
	protected Piece piece;

	/**
	 * The default value of the '{@link #getXMm() <em>XMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getXMm()
	 * @generated
	 * @ordered
	 */
	protected static final double XMM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getXMm() <em>XMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getXMm()
	 * @generated
	 * @ordered
	 */
	protected double xMm = XMM_EDEFAULT;

	/**
	 * The default value of the '{@link #getYMm() <em>YMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getYMm()
	 * @generated
	 * @ordered
	 */
	protected static final double YMM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getYMm() <em>YMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getYMm()
	 * @generated
	 * @ordered
	 */
	protected double yMm = YMM_EDEFAULT;

	/**
	 * The default value of the '{@link #getRotationDeg() <em>Rotation Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRotationDeg()
	 * @generated
	 * @ordered
	 */
	protected static final double ROTATION_DEG_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getRotationDeg() <em>Rotation Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRotationDeg()
	 * @generated
	 * @ordered
	 */
	protected double rotationDeg = ROTATION_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getSpot() <em>Spot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpot()
	 * @generated
	 * @ordered
	 */
	protected static final int SPOT_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getSpot() <em>Spot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSpot()
	 * @generated
	 * @ordered
	 */
	protected int spot = SPOT_EDEFAULT;

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
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected StencilPieceImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.STENCIL_PIECE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Stencil getStencil() {
		if (eContainerFeatureID() != CommissionPackage.STENCIL_PIECE__STENCIL) return null;
		return (Stencil)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetStencil(Stencil newStencil, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newStencil, CommissionPackage.STENCIL_PIECE__STENCIL, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStencil(Stencil newStencil) {
		if (newStencil != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.STENCIL_PIECE__STENCIL && newStencil != null)) {
			if (EcoreUtil.isAncestor(this, newStencil))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newStencil != null)
				msgs = ((InternalEObject)newStencil).eInverseAdd(this, CommissionPackage.STENCIL__PIECES, Stencil.class, msgs);
			msgs = basicSetStencil(newStencil, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_PIECE__STENCIL, newStencil, newStencil));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Piece getPiece() {
		if (piece != null && piece.eIsProxy()) {
			InternalEObject oldPiece = (InternalEObject)piece;
			piece = (Piece)eResolveProxy(oldPiece);
			if (piece != oldPiece) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.STENCIL_PIECE__PIECE, oldPiece, piece));
			}
		}
		return piece;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Piece basicGetPiece() {
		return piece;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPiece(Piece newPiece) {
		Piece oldPiece = piece;
		piece = newPiece;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_PIECE__PIECE, oldPiece, piece));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getXMm() {
		return xMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setXMm(double newXMm) {
		double oldXMm = xMm;
		xMm = newXMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_PIECE__XMM, oldXMm, xMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getYMm() {
		return yMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setYMm(double newYMm) {
		double oldYMm = yMm;
		yMm = newYMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_PIECE__YMM, oldYMm, yMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getRotationDeg() {
		return rotationDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRotationDeg(double newRotationDeg) {
		double oldRotationDeg = rotationDeg;
		rotationDeg = newRotationDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_PIECE__ROTATION_DEG, oldRotationDeg, rotationDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getSpot() {
		return spot;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpot(int newSpot) {
		int oldSpot = spot;
		spot = newSpot;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_PIECE__SPOT, oldSpot, spot));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STENCIL_PIECE__PRINTS, oldPrints, prints));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.STENCIL_PIECE__STENCIL:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetStencil((Stencil)otherEnd, msgs);
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
			case CommissionPackage.STENCIL_PIECE__STENCIL:
				return basicSetStencil(null, msgs);
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
			case CommissionPackage.STENCIL_PIECE__STENCIL:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.STENCIL__PIECES, Stencil.class, msgs);
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
			case CommissionPackage.STENCIL_PIECE__STENCIL:
				return getStencil();
			case CommissionPackage.STENCIL_PIECE__PIECE:
				if (resolve) return getPiece();
				return basicGetPiece();
			case CommissionPackage.STENCIL_PIECE__XMM:
				return getXMm();
			case CommissionPackage.STENCIL_PIECE__YMM:
				return getYMm();
			case CommissionPackage.STENCIL_PIECE__ROTATION_DEG:
				return getRotationDeg();
			case CommissionPackage.STENCIL_PIECE__SPOT:
				return getSpot();
			case CommissionPackage.STENCIL_PIECE__PRINTS:
				return getPrints();
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
			case CommissionPackage.STENCIL_PIECE__STENCIL:
				setStencil((Stencil)newValue);
				return;
			case CommissionPackage.STENCIL_PIECE__PIECE:
				setPiece((Piece)newValue);
				return;
			case CommissionPackage.STENCIL_PIECE__XMM:
				setXMm((Double)newValue);
				return;
			case CommissionPackage.STENCIL_PIECE__YMM:
				setYMm((Double)newValue);
				return;
			case CommissionPackage.STENCIL_PIECE__ROTATION_DEG:
				setRotationDeg((Double)newValue);
				return;
			case CommissionPackage.STENCIL_PIECE__SPOT:
				setSpot((Integer)newValue);
				return;
			case CommissionPackage.STENCIL_PIECE__PRINTS:
				setPrints((Integer)newValue);
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
			case CommissionPackage.STENCIL_PIECE__STENCIL:
				setStencil((Stencil)null);
				return;
			case CommissionPackage.STENCIL_PIECE__PIECE:
				setPiece((Piece)null);
				return;
			case CommissionPackage.STENCIL_PIECE__XMM:
				setXMm(XMM_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_PIECE__YMM:
				setYMm(YMM_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_PIECE__ROTATION_DEG:
				setRotationDeg(ROTATION_DEG_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_PIECE__SPOT:
				setSpot(SPOT_EDEFAULT);
				return;
			case CommissionPackage.STENCIL_PIECE__PRINTS:
				setPrints(PRINTS_EDEFAULT);
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
			case CommissionPackage.STENCIL_PIECE__STENCIL:
				return getStencil() != null;
			case CommissionPackage.STENCIL_PIECE__PIECE:
				return piece != null;
			case CommissionPackage.STENCIL_PIECE__XMM:
				return xMm != XMM_EDEFAULT;
			case CommissionPackage.STENCIL_PIECE__YMM:
				return yMm != YMM_EDEFAULT;
			case CommissionPackage.STENCIL_PIECE__ROTATION_DEG:
				return rotationDeg != ROTATION_DEG_EDEFAULT;
			case CommissionPackage.STENCIL_PIECE__SPOT:
				return spot != SPOT_EDEFAULT;
			case CommissionPackage.STENCIL_PIECE__PRINTS:
				return prints != PRINTS_EDEFAULT;
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
		result.append(" (xMm: ");
		result.append(xMm);
		result.append(", yMm: ");
		result.append(yMm);
		result.append(", rotationDeg: ");
		result.append(rotationDeg);
		result.append(", spot: ");
		result.append(spot);
		result.append(", prints: ");
		result.append(prints);
		result.append(')');
		return result.toString();
	}

} //StencilPieceImpl
