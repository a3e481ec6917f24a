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

import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.GlassChoice;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.Piece;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Glass Choice</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.GlassChoiceImpl#getColourway <em>Colourway</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassChoiceImpl#getPiece <em>Piece</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassChoiceImpl#getGlass <em>Glass</em>}</li>
 * </ul>
 *
 * @generated
 */
public class GlassChoiceImpl extends MinimalEObjectImpl.Container implements GlassChoice {
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
	 * The cached value of the '{@link #getGlass() <em>Glass</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGlass()
	 * @generated
	 * @ordered
	 */
	protected GlassStock glass;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected GlassChoiceImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.GLASS_CHOICE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Colourway getColourway() {
		if (eContainerFeatureID() != CommissionPackage.GLASS_CHOICE__COLOURWAY) return null;
		return (Colourway)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetColourway(Colourway newColourway, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newColourway, CommissionPackage.GLASS_CHOICE__COLOURWAY, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setColourway(Colourway newColourway) {
		if (newColourway != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.GLASS_CHOICE__COLOURWAY && newColourway != null)) {
			if (EcoreUtil.isAncestor(this, newColourway))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newColourway != null)
				msgs = ((InternalEObject)newColourway).eInverseAdd(this, CommissionPackage.COLOURWAY__CHOICES, Colourway.class, msgs);
			msgs = basicSetColourway(newColourway, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_CHOICE__COLOURWAY, newColourway, newColourway));
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.GLASS_CHOICE__PIECE, oldPiece, piece));
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
	public NotificationChain basicSetPiece(Piece newPiece, NotificationChain msgs) {
		Piece oldPiece = piece;
		piece = newPiece;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_CHOICE__PIECE, oldPiece, newPiece);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPiece(Piece newPiece) {
		if (newPiece != piece) {
			NotificationChain msgs = null;
			if (piece != null)
				msgs = ((InternalEObject)piece).eInverseRemove(this, CommissionPackage.PIECE__CHOICES, Piece.class, msgs);
			if (newPiece != null)
				msgs = ((InternalEObject)newPiece).eInverseAdd(this, CommissionPackage.PIECE__CHOICES, Piece.class, msgs);
			msgs = basicSetPiece(newPiece, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_CHOICE__PIECE, newPiece, newPiece));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GlassStock getGlass() {
		if (glass != null && glass.eIsProxy()) {
			InternalEObject oldGlass = (InternalEObject)glass;
			glass = (GlassStock)eResolveProxy(oldGlass);
			if (glass != oldGlass) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.GLASS_CHOICE__GLASS, oldGlass, glass));
			}
		}
		return glass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public GlassStock basicGetGlass() {
		return glass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGlass(GlassStock newGlass) {
		GlassStock oldGlass = glass;
		glass = newGlass;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_CHOICE__GLASS, oldGlass, glass));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.GLASS_CHOICE__COLOURWAY:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetColourway((Colourway)otherEnd, msgs);
			case CommissionPackage.GLASS_CHOICE__PIECE:
				if (piece != null)
					msgs = ((InternalEObject)piece).eInverseRemove(this, CommissionPackage.PIECE__CHOICES, Piece.class, msgs);
				return basicSetPiece((Piece)otherEnd, msgs);
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
			case CommissionPackage.GLASS_CHOICE__COLOURWAY:
				return basicSetColourway(null, msgs);
			case CommissionPackage.GLASS_CHOICE__PIECE:
				return basicSetPiece(null, msgs);
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
			case CommissionPackage.GLASS_CHOICE__COLOURWAY:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.COLOURWAY__CHOICES, Colourway.class, msgs);
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
			case CommissionPackage.GLASS_CHOICE__COLOURWAY:
				return getColourway();
			case CommissionPackage.GLASS_CHOICE__PIECE:
				if (resolve) return getPiece();
				return basicGetPiece();
			case CommissionPackage.GLASS_CHOICE__GLASS:
				if (resolve) return getGlass();
				return basicGetGlass();
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
			case CommissionPackage.GLASS_CHOICE__COLOURWAY:
				setColourway((Colourway)newValue);
				return;
			case CommissionPackage.GLASS_CHOICE__PIECE:
				setPiece((Piece)newValue);
				return;
			case CommissionPackage.GLASS_CHOICE__GLASS:
				setGlass((GlassStock)newValue);
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
			case CommissionPackage.GLASS_CHOICE__COLOURWAY:
				setColourway((Colourway)null);
				return;
			case CommissionPackage.GLASS_CHOICE__PIECE:
				setPiece((Piece)null);
				return;
			case CommissionPackage.GLASS_CHOICE__GLASS:
				setGlass((GlassStock)null);
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
			case CommissionPackage.GLASS_CHOICE__COLOURWAY:
				return getColourway() != null;
			case CommissionPackage.GLASS_CHOICE__PIECE:
				return piece != null;
			case CommissionPackage.GLASS_CHOICE__GLASS:
				return glass != null;
		}
		return super.eIsSet(featureID);
	}

} //GlassChoiceImpl
