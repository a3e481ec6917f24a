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
import saddlebar.model.commission.SolderStock;
import saddlebar.model.commission.Studio;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Solder Stock</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.SolderStockImpl#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SolderStockImpl#getTinShare <em>Tin Share</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SolderStockImpl#isContainsLead <em>Contains Lead</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SolderStockImpl#getDensityGPerCm3 <em>Density GPer Cm3</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SolderStockImpl#getPricePerKg <em>Price Per Kg</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SolderStockImpl#getSource <em>Source</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SolderStockImpl extends NamedImpl implements SolderStock {
	/**
	 * The default value of the '{@link #getTinShare() <em>Tin Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTinShare()
	 * @generated
	 * @ordered
	 */
	protected static final double TIN_SHARE_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getTinShare() <em>Tin Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTinShare()
	 * @generated
	 * @ordered
	 */
	protected double tinShare = TIN_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #isContainsLead() <em>Contains Lead</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isContainsLead()
	 * @generated
	 * @ordered
	 */
	protected static final boolean CONTAINS_LEAD_EDEFAULT = true;

	/**
	 * The cached value of the '{@link #isContainsLead() <em>Contains Lead</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isContainsLead()
	 * @generated
	 * @ordered
	 */
	protected boolean containsLead = CONTAINS_LEAD_EDEFAULT;

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
	protected SolderStockImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.SOLDER_STOCK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Studio getStudio() {
		if (eContainerFeatureID() != CommissionPackage.SOLDER_STOCK__STUDIO) return null;
		return (Studio)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetStudio(Studio newStudio, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newStudio, CommissionPackage.SOLDER_STOCK__STUDIO, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStudio(Studio newStudio) {
		if (newStudio != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.SOLDER_STOCK__STUDIO && newStudio != null)) {
			if (EcoreUtil.isAncestor(this, newStudio))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newStudio != null)
				msgs = ((InternalEObject)newStudio).eInverseAdd(this, CommissionPackage.STUDIO__SOLDERS, Studio.class, msgs);
			msgs = basicSetStudio(newStudio, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SOLDER_STOCK__STUDIO, newStudio, newStudio));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getTinShare() {
		return tinShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTinShare(double newTinShare) {
		double oldTinShare = tinShare;
		tinShare = newTinShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SOLDER_STOCK__TIN_SHARE, oldTinShare, tinShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isContainsLead() {
		return containsLead;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setContainsLead(boolean newContainsLead) {
		boolean oldContainsLead = containsLead;
		containsLead = newContainsLead;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SOLDER_STOCK__CONTAINS_LEAD, oldContainsLead, containsLead));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SOLDER_STOCK__DENSITY_GPER_CM3, oldDensityGPerCm3, densityGPerCm3));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SOLDER_STOCK__PRICE_PER_KG, oldPricePerKg, pricePerKg));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SOLDER_STOCK__SOURCE, oldSource, source));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.SOLDER_STOCK__STUDIO:
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
			case CommissionPackage.SOLDER_STOCK__STUDIO:
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
			case CommissionPackage.SOLDER_STOCK__STUDIO:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.STUDIO__SOLDERS, Studio.class, msgs);
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
			case CommissionPackage.SOLDER_STOCK__STUDIO:
				return getStudio();
			case CommissionPackage.SOLDER_STOCK__TIN_SHARE:
				return getTinShare();
			case CommissionPackage.SOLDER_STOCK__CONTAINS_LEAD:
				return isContainsLead();
			case CommissionPackage.SOLDER_STOCK__DENSITY_GPER_CM3:
				return getDensityGPerCm3();
			case CommissionPackage.SOLDER_STOCK__PRICE_PER_KG:
				return getPricePerKg();
			case CommissionPackage.SOLDER_STOCK__SOURCE:
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
			case CommissionPackage.SOLDER_STOCK__STUDIO:
				setStudio((Studio)newValue);
				return;
			case CommissionPackage.SOLDER_STOCK__TIN_SHARE:
				setTinShare((Double)newValue);
				return;
			case CommissionPackage.SOLDER_STOCK__CONTAINS_LEAD:
				setContainsLead((Boolean)newValue);
				return;
			case CommissionPackage.SOLDER_STOCK__DENSITY_GPER_CM3:
				setDensityGPerCm3((Double)newValue);
				return;
			case CommissionPackage.SOLDER_STOCK__PRICE_PER_KG:
				setPricePerKg((BigDecimal)newValue);
				return;
			case CommissionPackage.SOLDER_STOCK__SOURCE:
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
			case CommissionPackage.SOLDER_STOCK__STUDIO:
				setStudio((Studio)null);
				return;
			case CommissionPackage.SOLDER_STOCK__TIN_SHARE:
				setTinShare(TIN_SHARE_EDEFAULT);
				return;
			case CommissionPackage.SOLDER_STOCK__CONTAINS_LEAD:
				setContainsLead(CONTAINS_LEAD_EDEFAULT);
				return;
			case CommissionPackage.SOLDER_STOCK__DENSITY_GPER_CM3:
				setDensityGPerCm3(DENSITY_GPER_CM3_EDEFAULT);
				return;
			case CommissionPackage.SOLDER_STOCK__PRICE_PER_KG:
				setPricePerKg(PRICE_PER_KG_EDEFAULT);
				return;
			case CommissionPackage.SOLDER_STOCK__SOURCE:
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
			case CommissionPackage.SOLDER_STOCK__STUDIO:
				return getStudio() != null;
			case CommissionPackage.SOLDER_STOCK__TIN_SHARE:
				return tinShare != TIN_SHARE_EDEFAULT;
			case CommissionPackage.SOLDER_STOCK__CONTAINS_LEAD:
				return containsLead != CONTAINS_LEAD_EDEFAULT;
			case CommissionPackage.SOLDER_STOCK__DENSITY_GPER_CM3:
				return densityGPerCm3 != DENSITY_GPER_CM3_EDEFAULT;
			case CommissionPackage.SOLDER_STOCK__PRICE_PER_KG:
				return PRICE_PER_KG_EDEFAULT == null ? pricePerKg != null : !PRICE_PER_KG_EDEFAULT.equals(pricePerKg);
			case CommissionPackage.SOLDER_STOCK__SOURCE:
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
		result.append(" (tinShare: ");
		result.append(tinShare);
		result.append(", containsLead: ");
		result.append(containsLead);
		result.append(", densityGPerCm3: ");
		result.append(densityGPerCm3);
		result.append(", pricePerKg: ");
		result.append(pricePerKg);
		result.append(", source: ");
		result.append(source);
		result.append(')');
		return result.toString();
	}

} //SolderStockImpl
