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
import saddlebar.model.commission.MendKind;
import saddlebar.model.commission.MendedPlace;
import saddlebar.model.commission.StencilRecipe;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Mended Place</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.MendedPlaceImpl#getRecipe <em>Recipe</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MendedPlaceImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MendedPlaceImpl#getXMm <em>XMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MendedPlaceImpl#getYMm <em>YMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MendedPlaceImpl#getWidthMm <em>Width Mm</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MendedPlaceImpl extends MinimalEObjectImpl.Container implements MendedPlace {
	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final MendKind KIND_EDEFAULT = MendKind.THICKEN;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected MendKind kind = KIND_EDEFAULT;

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
	protected MendedPlaceImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.MENDED_PLACE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StencilRecipe getRecipe() {
		if (eContainerFeatureID() != CommissionPackage.MENDED_PLACE__RECIPE) return null;
		return (StencilRecipe)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetRecipe(StencilRecipe newRecipe, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newRecipe, CommissionPackage.MENDED_PLACE__RECIPE, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRecipe(StencilRecipe newRecipe) {
		if (newRecipe != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.MENDED_PLACE__RECIPE && newRecipe != null)) {
			if (EcoreUtil.isAncestor(this, newRecipe))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newRecipe != null)
				msgs = ((InternalEObject)newRecipe).eInverseAdd(this, CommissionPackage.STENCIL_RECIPE__MENDS, StencilRecipe.class, msgs);
			msgs = basicSetRecipe(newRecipe, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MENDED_PLACE__RECIPE, newRecipe, newRecipe));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MendKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(MendKind newKind) {
		MendKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MENDED_PLACE__KIND, oldKind, kind));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MENDED_PLACE__XMM, oldXMm, xMm));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MENDED_PLACE__YMM, oldYMm, yMm));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MENDED_PLACE__WIDTH_MM, oldWidthMm, widthMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.MENDED_PLACE__RECIPE:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetRecipe((StencilRecipe)otherEnd, msgs);
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
			case CommissionPackage.MENDED_PLACE__RECIPE:
				return basicSetRecipe(null, msgs);
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
			case CommissionPackage.MENDED_PLACE__RECIPE:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.STENCIL_RECIPE__MENDS, StencilRecipe.class, msgs);
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
			case CommissionPackage.MENDED_PLACE__RECIPE:
				return getRecipe();
			case CommissionPackage.MENDED_PLACE__KIND:
				return getKind();
			case CommissionPackage.MENDED_PLACE__XMM:
				return getXMm();
			case CommissionPackage.MENDED_PLACE__YMM:
				return getYMm();
			case CommissionPackage.MENDED_PLACE__WIDTH_MM:
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
			case CommissionPackage.MENDED_PLACE__RECIPE:
				setRecipe((StencilRecipe)newValue);
				return;
			case CommissionPackage.MENDED_PLACE__KIND:
				setKind((MendKind)newValue);
				return;
			case CommissionPackage.MENDED_PLACE__XMM:
				setXMm((Double)newValue);
				return;
			case CommissionPackage.MENDED_PLACE__YMM:
				setYMm((Double)newValue);
				return;
			case CommissionPackage.MENDED_PLACE__WIDTH_MM:
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
			case CommissionPackage.MENDED_PLACE__RECIPE:
				setRecipe((StencilRecipe)null);
				return;
			case CommissionPackage.MENDED_PLACE__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case CommissionPackage.MENDED_PLACE__XMM:
				setXMm(XMM_EDEFAULT);
				return;
			case CommissionPackage.MENDED_PLACE__YMM:
				setYMm(YMM_EDEFAULT);
				return;
			case CommissionPackage.MENDED_PLACE__WIDTH_MM:
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
			case CommissionPackage.MENDED_PLACE__RECIPE:
				return getRecipe() != null;
			case CommissionPackage.MENDED_PLACE__KIND:
				return kind != KIND_EDEFAULT;
			case CommissionPackage.MENDED_PLACE__XMM:
				return xMm != XMM_EDEFAULT;
			case CommissionPackage.MENDED_PLACE__YMM:
				return yMm != YMM_EDEFAULT;
			case CommissionPackage.MENDED_PLACE__WIDTH_MM:
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
		result.append(" (kind: ");
		result.append(kind);
		result.append(", xMm: ");
		result.append(xMm);
		result.append(", yMm: ");
		result.append(yMm);
		result.append(", widthMm: ");
		result.append(widthMm);
		result.append(')');
		return result.toString();
	}

} //MendedPlaceImpl
