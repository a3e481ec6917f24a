/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import java.math.BigDecimal;

import java.time.LocalDate;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EcoreUtil;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.PaintLot;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Paint Lot</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.PaintLotImpl#getPaint <em>Paint</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintLotImpl#getReceived <em>Received</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintLotImpl#getMassG <em>Mass G</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintLotImpl#getPricePerKg <em>Price Per Kg</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PaintLotImpl extends NamedImpl implements PaintLot {
	/**
	 * The default value of the '{@link #getReceived() <em>Received</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReceived()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate RECEIVED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReceived() <em>Received</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReceived()
	 * @generated
	 * @ordered
	 */
	protected LocalDate received = RECEIVED_EDEFAULT;

	/**
	 * The default value of the '{@link #getMassG() <em>Mass G</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMassG()
	 * @generated
	 * @ordered
	 */
	protected static final double MASS_G_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getMassG() <em>Mass G</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMassG()
	 * @generated
	 * @ordered
	 */
	protected double massG = MASS_G_EDEFAULT;

	/**
	 * The default value of the '{@link #getPricePerKg() <em>Price Per Kg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPricePerKg()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal PRICE_PER_KG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPricePerKg() <em>Price Per Kg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPricePerKg()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal pricePerKg = PRICE_PER_KG_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PaintLotImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.PAINT_LOT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Paint getPaint() {
		if (eContainerFeatureID() != CommissionPackage.PAINT_LOT__PAINT) return null;
		return (Paint)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetPaint(Paint newPaint, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newPaint, CommissionPackage.PAINT_LOT__PAINT, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPaint(Paint newPaint) {
		if (newPaint != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.PAINT_LOT__PAINT && newPaint != null)) {
			if (EcoreUtil.isAncestor(this, newPaint))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newPaint != null)
				msgs = ((InternalEObject)newPaint).eInverseAdd(this, CommissionPackage.PAINT__LOTS, Paint.class, msgs);
			msgs = basicSetPaint(newPaint, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT_LOT__PAINT, newPaint, newPaint));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getReceived() {
		return received;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReceived(LocalDate newReceived) {
		LocalDate oldReceived = received;
		received = newReceived;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT_LOT__RECEIVED, oldReceived, received));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getMassG() {
		return massG;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMassG(double newMassG) {
		double oldMassG = massG;
		massG = newMassG;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT_LOT__MASS_G, oldMassG, massG));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getPricePerKg() {
		return pricePerKg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPricePerKg(BigDecimal newPricePerKg) {
		BigDecimal oldPricePerKg = pricePerKg;
		pricePerKg = newPricePerKg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT_LOT__PRICE_PER_KG, oldPricePerKg, pricePerKg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.PAINT_LOT__PAINT:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetPaint((Paint)otherEnd, msgs);
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
			case CommissionPackage.PAINT_LOT__PAINT:
				return basicSetPaint(null, msgs);
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
			case CommissionPackage.PAINT_LOT__PAINT:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.PAINT__LOTS, Paint.class, msgs);
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
			case CommissionPackage.PAINT_LOT__PAINT:
				return getPaint();
			case CommissionPackage.PAINT_LOT__RECEIVED:
				return getReceived();
			case CommissionPackage.PAINT_LOT__MASS_G:
				return getMassG();
			case CommissionPackage.PAINT_LOT__PRICE_PER_KG:
				return getPricePerKg();
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
			case CommissionPackage.PAINT_LOT__PAINT:
				setPaint((Paint)newValue);
				return;
			case CommissionPackage.PAINT_LOT__RECEIVED:
				setReceived((LocalDate)newValue);
				return;
			case CommissionPackage.PAINT_LOT__MASS_G:
				setMassG((Double)newValue);
				return;
			case CommissionPackage.PAINT_LOT__PRICE_PER_KG:
				setPricePerKg((BigDecimal)newValue);
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
			case CommissionPackage.PAINT_LOT__PAINT:
				setPaint((Paint)null);
				return;
			case CommissionPackage.PAINT_LOT__RECEIVED:
				setReceived(RECEIVED_EDEFAULT);
				return;
			case CommissionPackage.PAINT_LOT__MASS_G:
				setMassG(MASS_G_EDEFAULT);
				return;
			case CommissionPackage.PAINT_LOT__PRICE_PER_KG:
				setPricePerKg(PRICE_PER_KG_EDEFAULT);
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
			case CommissionPackage.PAINT_LOT__PAINT:
				return getPaint() != null;
			case CommissionPackage.PAINT_LOT__RECEIVED:
				return RECEIVED_EDEFAULT == null ? received != null : !RECEIVED_EDEFAULT.equals(received);
			case CommissionPackage.PAINT_LOT__MASS_G:
				return massG != MASS_G_EDEFAULT;
			case CommissionPackage.PAINT_LOT__PRICE_PER_KG:
				return PRICE_PER_KG_EDEFAULT == null ? pricePerKg != null : !PRICE_PER_KG_EDEFAULT.equals(pricePerKg);
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
		result.append(" (received: ");
		result.append(received);
		result.append(", massG: ");
		result.append(massG);
		result.append(", pricePerKg: ");
		result.append(pricePerKg);
		result.append(')');
		return result.toString();
	}

} //PaintLotImpl
