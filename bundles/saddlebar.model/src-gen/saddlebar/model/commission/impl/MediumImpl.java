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

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.Medium;
import saddlebar.model.commission.MediumBase;
import saddlebar.model.commission.Studio;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Medium</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.MediumImpl#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MediumImpl#getBase <em>Base</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MediumImpl#getDensityGPerCm3 <em>Density GPer Cm3</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MediumImpl#getPricePerKg <em>Price Per Kg</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MediumImpl#getSource <em>Source</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MediumImpl extends NamedImpl implements Medium {
	/**
	 * The default value of the '{@link #getBase() <em>Base</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBase()
	 * @generated
	 * @ordered
	 */
	protected static final MediumBase BASE_EDEFAULT = MediumBase.OIL;

	/**
	 * The cached value of the '{@link #getBase() <em>Base</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBase()
	 * @generated
	 * @ordered
	 */
	protected MediumBase base = BASE_EDEFAULT;

	/**
	 * The default value of the '{@link #getDensityGPerCm3() <em>Density GPer Cm3</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDensityGPerCm3()
	 * @generated
	 * @ordered
	 */
	protected static final double DENSITY_GPER_CM3_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getDensityGPerCm3() <em>Density GPer Cm3</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDensityGPerCm3()
	 * @generated
	 * @ordered
	 */
	protected double densityGPerCm3 = DENSITY_GPER_CM3_EDEFAULT;

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
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MediumImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.MEDIUM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Studio getStudio() {
		if (eContainerFeatureID() != CommissionPackage.MEDIUM__STUDIO) return null;
		return (Studio)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetStudio(Studio newStudio, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newStudio, CommissionPackage.MEDIUM__STUDIO, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStudio(Studio newStudio) {
		if (newStudio != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.MEDIUM__STUDIO && newStudio != null)) {
			if (EcoreUtil.isAncestor(this, newStudio))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newStudio != null)
				msgs = ((InternalEObject)newStudio).eInverseAdd(this, CommissionPackage.STUDIO__MEDIA, Studio.class, msgs);
			msgs = basicSetStudio(newStudio, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MEDIUM__STUDIO, newStudio, newStudio));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MediumBase getBase() {
		return base;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBase(MediumBase newBase) {
		MediumBase oldBase = base;
		base = newBase == null ? BASE_EDEFAULT : newBase;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MEDIUM__BASE, oldBase, base));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getDensityGPerCm3() {
		return densityGPerCm3;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDensityGPerCm3(double newDensityGPerCm3) {
		double oldDensityGPerCm3 = densityGPerCm3;
		densityGPerCm3 = newDensityGPerCm3;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MEDIUM__DENSITY_GPER_CM3, oldDensityGPerCm3, densityGPerCm3));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MEDIUM__PRICE_PER_KG, oldPricePerKg, pricePerKg));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MEDIUM__SOURCE, oldSource, source));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.MEDIUM__STUDIO:
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
			case CommissionPackage.MEDIUM__STUDIO:
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
			case CommissionPackage.MEDIUM__STUDIO:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.STUDIO__MEDIA, Studio.class, msgs);
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
			case CommissionPackage.MEDIUM__STUDIO:
				return getStudio();
			case CommissionPackage.MEDIUM__BASE:
				return getBase();
			case CommissionPackage.MEDIUM__DENSITY_GPER_CM3:
				return getDensityGPerCm3();
			case CommissionPackage.MEDIUM__PRICE_PER_KG:
				return getPricePerKg();
			case CommissionPackage.MEDIUM__SOURCE:
				return getSource();
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
			case CommissionPackage.MEDIUM__STUDIO:
				setStudio((Studio)newValue);
				return;
			case CommissionPackage.MEDIUM__BASE:
				setBase((MediumBase)newValue);
				return;
			case CommissionPackage.MEDIUM__DENSITY_GPER_CM3:
				setDensityGPerCm3((Double)newValue);
				return;
			case CommissionPackage.MEDIUM__PRICE_PER_KG:
				setPricePerKg((BigDecimal)newValue);
				return;
			case CommissionPackage.MEDIUM__SOURCE:
				setSource((String)newValue);
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
			case CommissionPackage.MEDIUM__STUDIO:
				setStudio((Studio)null);
				return;
			case CommissionPackage.MEDIUM__BASE:
				setBase(BASE_EDEFAULT);
				return;
			case CommissionPackage.MEDIUM__DENSITY_GPER_CM3:
				setDensityGPerCm3(DENSITY_GPER_CM3_EDEFAULT);
				return;
			case CommissionPackage.MEDIUM__PRICE_PER_KG:
				setPricePerKg(PRICE_PER_KG_EDEFAULT);
				return;
			case CommissionPackage.MEDIUM__SOURCE:
				setSource(SOURCE_EDEFAULT);
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
			case CommissionPackage.MEDIUM__STUDIO:
				return getStudio() != null;
			case CommissionPackage.MEDIUM__BASE:
				return base != BASE_EDEFAULT;
			case CommissionPackage.MEDIUM__DENSITY_GPER_CM3:
				return densityGPerCm3 != DENSITY_GPER_CM3_EDEFAULT;
			case CommissionPackage.MEDIUM__PRICE_PER_KG:
				return PRICE_PER_KG_EDEFAULT == null ? pricePerKg != null : !PRICE_PER_KG_EDEFAULT.equals(pricePerKg);
			case CommissionPackage.MEDIUM__SOURCE:
				return SOURCE_EDEFAULT == null ? source != null : !SOURCE_EDEFAULT.equals(source);
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
		result.append(" (base: ");
		result.append(base);
		result.append(", densityGPerCm3: ");
		result.append(densityGPerCm3);
		result.append(", pricePerKg: ");
		result.append(pricePerKg);
		result.append(", source: ");
		result.append(source);
		result.append(')');
		return result.toString();
	}

} //MediumImpl
