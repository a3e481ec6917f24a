/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import java.math.BigDecimal;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EcoreUtil;

import saddlebar.model.commission.BarStock;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.Studio;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Bar Stock</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.BarStockImpl#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.BarStockImpl#getWidthMm <em>Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.BarStockImpl#getDepthMm <em>Depth Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.BarStockImpl#isRound <em>Round</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.BarStockImpl#getPricePerM <em>Price Per M</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.BarStockImpl#getSource <em>Source</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.BarStockImpl#getSoldLengthMm <em>Sold Length Mm</em>}</li>
 * </ul>
 *
 * @generated
 */
public class BarStockImpl extends NamedImpl implements BarStock {
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
	 * The default value of the '{@link #getDepthMm() <em>Depth Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDepthMm()
	 * @generated
	 * @ordered
	 */
	protected static final double DEPTH_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getDepthMm() <em>Depth Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDepthMm()
	 * @generated
	 * @ordered
	 */
	protected double depthMm = DEPTH_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #isRound() <em>Round</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isRound()
	 * @generated
	 * @ordered
	 */
	protected static final boolean ROUND_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isRound() <em>Round</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isRound()
	 * @generated
	 * @ordered
	 */
	protected boolean round = ROUND_EDEFAULT;

	/**
	 * The default value of the '{@link #getPricePerM() <em>Price Per M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPricePerM()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal PRICE_PER_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPricePerM() <em>Price Per M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPricePerM()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal pricePerM = PRICE_PER_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected static final String SOURCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected String source = SOURCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSoldLengthMm() <em>Sold Length Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSoldLengthMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double SOLD_LENGTH_MM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSoldLengthMm() <em>Sold Length Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSoldLengthMm()
	 * @generated
	 * @ordered
	 */
	protected Double soldLengthMm = SOLD_LENGTH_MM_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected BarStockImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.BAR_STOCK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Studio getStudio() {
		if (eContainerFeatureID() != CommissionPackage.BAR_STOCK__STUDIO) return null;
		return (Studio)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetStudio(Studio newStudio, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newStudio, CommissionPackage.BAR_STOCK__STUDIO, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStudio(Studio newStudio) {
		if (newStudio != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.BAR_STOCK__STUDIO && newStudio != null)) {
			if (EcoreUtil.isAncestor(this, newStudio))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newStudio != null)
				msgs = ((InternalEObject)newStudio).eInverseAdd(this, CommissionPackage.STUDIO__BARS, Studio.class, msgs);
			msgs = basicSetStudio(newStudio, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.BAR_STOCK__STUDIO, newStudio, newStudio));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.BAR_STOCK__WIDTH_MM, oldWidthMm, widthMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getDepthMm() {
		return depthMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDepthMm(double newDepthMm) {
		double oldDepthMm = depthMm;
		depthMm = newDepthMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.BAR_STOCK__DEPTH_MM, oldDepthMm, depthMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isRound() {
		return round;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRound(boolean newRound) {
		boolean oldRound = round;
		round = newRound;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.BAR_STOCK__ROUND, oldRound, round));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getPricePerM() {
		return pricePerM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPricePerM(BigDecimal newPricePerM) {
		BigDecimal oldPricePerM = pricePerM;
		pricePerM = newPricePerM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.BAR_STOCK__PRICE_PER_M, oldPricePerM, pricePerM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSource() {
		return source;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSource(String newSource) {
		String oldSource = source;
		source = newSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.BAR_STOCK__SOURCE, oldSource, source));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSoldLengthMm() {
		return soldLengthMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSoldLengthMm(Double newSoldLengthMm) {
		Double oldSoldLengthMm = soldLengthMm;
		soldLengthMm = newSoldLengthMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.BAR_STOCK__SOLD_LENGTH_MM, oldSoldLengthMm, soldLengthMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.BAR_STOCK__STUDIO:
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
			case CommissionPackage.BAR_STOCK__STUDIO:
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
			case CommissionPackage.BAR_STOCK__STUDIO:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.STUDIO__BARS, Studio.class, msgs);
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
			case CommissionPackage.BAR_STOCK__STUDIO:
				return getStudio();
			case CommissionPackage.BAR_STOCK__WIDTH_MM:
				return getWidthMm();
			case CommissionPackage.BAR_STOCK__DEPTH_MM:
				return getDepthMm();
			case CommissionPackage.BAR_STOCK__ROUND:
				return isRound();
			case CommissionPackage.BAR_STOCK__PRICE_PER_M:
				return getPricePerM();
			case CommissionPackage.BAR_STOCK__SOURCE:
				return getSource();
			case CommissionPackage.BAR_STOCK__SOLD_LENGTH_MM:
				return getSoldLengthMm();
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
			case CommissionPackage.BAR_STOCK__STUDIO:
				setStudio((Studio)newValue);
				return;
			case CommissionPackage.BAR_STOCK__WIDTH_MM:
				setWidthMm((Double)newValue);
				return;
			case CommissionPackage.BAR_STOCK__DEPTH_MM:
				setDepthMm((Double)newValue);
				return;
			case CommissionPackage.BAR_STOCK__ROUND:
				setRound((Boolean)newValue);
				return;
			case CommissionPackage.BAR_STOCK__PRICE_PER_M:
				setPricePerM((BigDecimal)newValue);
				return;
			case CommissionPackage.BAR_STOCK__SOURCE:
				setSource((String)newValue);
				return;
			case CommissionPackage.BAR_STOCK__SOLD_LENGTH_MM:
				setSoldLengthMm((Double)newValue);
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
			case CommissionPackage.BAR_STOCK__STUDIO:
				setStudio((Studio)null);
				return;
			case CommissionPackage.BAR_STOCK__WIDTH_MM:
				setWidthMm(WIDTH_MM_EDEFAULT);
				return;
			case CommissionPackage.BAR_STOCK__DEPTH_MM:
				setDepthMm(DEPTH_MM_EDEFAULT);
				return;
			case CommissionPackage.BAR_STOCK__ROUND:
				setRound(ROUND_EDEFAULT);
				return;
			case CommissionPackage.BAR_STOCK__PRICE_PER_M:
				setPricePerM(PRICE_PER_M_EDEFAULT);
				return;
			case CommissionPackage.BAR_STOCK__SOURCE:
				setSource(SOURCE_EDEFAULT);
				return;
			case CommissionPackage.BAR_STOCK__SOLD_LENGTH_MM:
				setSoldLengthMm(SOLD_LENGTH_MM_EDEFAULT);
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
			case CommissionPackage.BAR_STOCK__STUDIO:
				return getStudio() != null;
			case CommissionPackage.BAR_STOCK__WIDTH_MM:
				return widthMm != WIDTH_MM_EDEFAULT;
			case CommissionPackage.BAR_STOCK__DEPTH_MM:
				return depthMm != DEPTH_MM_EDEFAULT;
			case CommissionPackage.BAR_STOCK__ROUND:
				return round != ROUND_EDEFAULT;
			case CommissionPackage.BAR_STOCK__PRICE_PER_M:
				return PRICE_PER_M_EDEFAULT == null ? pricePerM != null : !PRICE_PER_M_EDEFAULT.equals(pricePerM);
			case CommissionPackage.BAR_STOCK__SOURCE:
				return SOURCE_EDEFAULT == null ? source != null : !SOURCE_EDEFAULT.equals(source);
			case CommissionPackage.BAR_STOCK__SOLD_LENGTH_MM:
				return SOLD_LENGTH_MM_EDEFAULT == null ? soldLengthMm != null : !SOLD_LENGTH_MM_EDEFAULT.equals(soldLengthMm);
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
		result.append(" (widthMm: ");
		result.append(widthMm);
		result.append(", depthMm: ");
		result.append(depthMm);
		result.append(", round: ");
		result.append(round);
		result.append(", pricePerM: ");
		result.append(pricePerM);
		result.append(", source: ");
		result.append(source);
		result.append(", soldLengthMm: ");
		result.append(soldLengthMm);
		result.append(')');
		return result.toString();
	}

} //BarStockImpl
