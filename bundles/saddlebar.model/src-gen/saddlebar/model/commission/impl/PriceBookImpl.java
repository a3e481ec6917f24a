/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import java.math.BigDecimal;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentWithInverseEList;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.InternalEList;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.PriceBook;
import saddlebar.model.commission.PriceItem;
import saddlebar.model.commission.Studio;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Price Book</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.PriceBookImpl#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PriceBookImpl#getLabourPerHour <em>Labour Per Hour</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PriceBookImpl#getEnergyPerKwh <em>Energy Per Kwh</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PriceBookImpl#getOverheadShare <em>Overhead Share</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PriceBookImpl#getMarginShare <em>Margin Share</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PriceBookImpl#getTaxShare <em>Tax Share</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PriceBookImpl#getItems <em>Items</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PriceBookImpl extends IdentifiedImpl implements PriceBook {
	/**
	 * The default value of the '{@link #getLabourPerHour() <em>Labour Per Hour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLabourPerHour()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal LABOUR_PER_HOUR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLabourPerHour() <em>Labour Per Hour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLabourPerHour()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal labourPerHour = LABOUR_PER_HOUR_EDEFAULT;

	/**
	 * The default value of the '{@link #getEnergyPerKwh() <em>Energy Per Kwh</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEnergyPerKwh()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal ENERGY_PER_KWH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEnergyPerKwh() <em>Energy Per Kwh</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEnergyPerKwh()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal energyPerKwh = ENERGY_PER_KWH_EDEFAULT;

	/**
	 * The default value of the '{@link #getOverheadShare() <em>Overhead Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOverheadShare()
	 * @generated
	 * @ordered
	 */
	protected static final Double OVERHEAD_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOverheadShare() <em>Overhead Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOverheadShare()
	 * @generated
	 * @ordered
	 */
	protected Double overheadShare = OVERHEAD_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMarginShare() <em>Margin Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMarginShare()
	 * @generated
	 * @ordered
	 */
	protected static final Double MARGIN_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMarginShare() <em>Margin Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMarginShare()
	 * @generated
	 * @ordered
	 */
	protected Double marginShare = MARGIN_SHARE_EDEFAULT;

	/**
	 * The default value of the '{@link #getTaxShare() <em>Tax Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTaxShare()
	 * @generated
	 * @ordered
	 */
	protected static final Double TAX_SHARE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTaxShare() <em>Tax Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTaxShare()
	 * @generated
	 * @ordered
	 */
	protected Double taxShare = TAX_SHARE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getItems() <em>Items</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getItems()
	 * @generated
	 * @ordered
	 */
	protected EList<PriceItem> items;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PriceBookImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.PRICE_BOOK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Studio getStudio() {
		if (eContainerFeatureID() != CommissionPackage.PRICE_BOOK__STUDIO) return null;
		return (Studio)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetStudio(Studio newStudio, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newStudio, CommissionPackage.PRICE_BOOK__STUDIO, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStudio(Studio newStudio) {
		if (newStudio != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.PRICE_BOOK__STUDIO && newStudio != null)) {
			if (EcoreUtil.isAncestor(this, newStudio))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newStudio != null)
				msgs = ((InternalEObject)newStudio).eInverseAdd(this, CommissionPackage.STUDIO__PRICE_BOOK, Studio.class, msgs);
			msgs = basicSetStudio(newStudio, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRICE_BOOK__STUDIO, newStudio, newStudio));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getLabourPerHour() {
		return labourPerHour;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLabourPerHour(BigDecimal newLabourPerHour) {
		BigDecimal oldLabourPerHour = labourPerHour;
		labourPerHour = newLabourPerHour;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRICE_BOOK__LABOUR_PER_HOUR, oldLabourPerHour, labourPerHour));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getEnergyPerKwh() {
		return energyPerKwh;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEnergyPerKwh(BigDecimal newEnergyPerKwh) {
		BigDecimal oldEnergyPerKwh = energyPerKwh;
		energyPerKwh = newEnergyPerKwh;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRICE_BOOK__ENERGY_PER_KWH, oldEnergyPerKwh, energyPerKwh));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getOverheadShare() {
		return overheadShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOverheadShare(Double newOverheadShare) {
		Double oldOverheadShare = overheadShare;
		overheadShare = newOverheadShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRICE_BOOK__OVERHEAD_SHARE, oldOverheadShare, overheadShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMarginShare() {
		return marginShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMarginShare(Double newMarginShare) {
		Double oldMarginShare = marginShare;
		marginShare = newMarginShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRICE_BOOK__MARGIN_SHARE, oldMarginShare, marginShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getTaxShare() {
		return taxShare;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTaxShare(Double newTaxShare) {
		Double oldTaxShare = taxShare;
		taxShare = newTaxShare;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRICE_BOOK__TAX_SHARE, oldTaxShare, taxShare));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<PriceItem> getItems() {
		if (items == null) {
			items = new EObjectContainmentWithInverseEList<PriceItem>(PriceItem.class, this, CommissionPackage.PRICE_BOOK__ITEMS, CommissionPackage.PRICE_ITEM__BOOK);
		}
		return items;
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
			case CommissionPackage.PRICE_BOOK__STUDIO:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetStudio((Studio)otherEnd, msgs);
			case CommissionPackage.PRICE_BOOK__ITEMS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getItems()).basicAdd(otherEnd, msgs);
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
			case CommissionPackage.PRICE_BOOK__STUDIO:
				return basicSetStudio(null, msgs);
			case CommissionPackage.PRICE_BOOK__ITEMS:
				return ((InternalEList<?>)getItems()).basicRemove(otherEnd, msgs);
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
			case CommissionPackage.PRICE_BOOK__STUDIO:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.STUDIO__PRICE_BOOK, Studio.class, msgs);
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
			case CommissionPackage.PRICE_BOOK__STUDIO:
				return getStudio();
			case CommissionPackage.PRICE_BOOK__LABOUR_PER_HOUR:
				return getLabourPerHour();
			case CommissionPackage.PRICE_BOOK__ENERGY_PER_KWH:
				return getEnergyPerKwh();
			case CommissionPackage.PRICE_BOOK__OVERHEAD_SHARE:
				return getOverheadShare();
			case CommissionPackage.PRICE_BOOK__MARGIN_SHARE:
				return getMarginShare();
			case CommissionPackage.PRICE_BOOK__TAX_SHARE:
				return getTaxShare();
			case CommissionPackage.PRICE_BOOK__ITEMS:
				return getItems();
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
			case CommissionPackage.PRICE_BOOK__STUDIO:
				setStudio((Studio)newValue);
				return;
			case CommissionPackage.PRICE_BOOK__LABOUR_PER_HOUR:
				setLabourPerHour((BigDecimal)newValue);
				return;
			case CommissionPackage.PRICE_BOOK__ENERGY_PER_KWH:
				setEnergyPerKwh((BigDecimal)newValue);
				return;
			case CommissionPackage.PRICE_BOOK__OVERHEAD_SHARE:
				setOverheadShare((Double)newValue);
				return;
			case CommissionPackage.PRICE_BOOK__MARGIN_SHARE:
				setMarginShare((Double)newValue);
				return;
			case CommissionPackage.PRICE_BOOK__TAX_SHARE:
				setTaxShare((Double)newValue);
				return;
			case CommissionPackage.PRICE_BOOK__ITEMS:
				getItems().clear();
				getItems().addAll((Collection<? extends PriceItem>)newValue);
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
			case CommissionPackage.PRICE_BOOK__STUDIO:
				setStudio((Studio)null);
				return;
			case CommissionPackage.PRICE_BOOK__LABOUR_PER_HOUR:
				setLabourPerHour(LABOUR_PER_HOUR_EDEFAULT);
				return;
			case CommissionPackage.PRICE_BOOK__ENERGY_PER_KWH:
				setEnergyPerKwh(ENERGY_PER_KWH_EDEFAULT);
				return;
			case CommissionPackage.PRICE_BOOK__OVERHEAD_SHARE:
				setOverheadShare(OVERHEAD_SHARE_EDEFAULT);
				return;
			case CommissionPackage.PRICE_BOOK__MARGIN_SHARE:
				setMarginShare(MARGIN_SHARE_EDEFAULT);
				return;
			case CommissionPackage.PRICE_BOOK__TAX_SHARE:
				setTaxShare(TAX_SHARE_EDEFAULT);
				return;
			case CommissionPackage.PRICE_BOOK__ITEMS:
				getItems().clear();
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
			case CommissionPackage.PRICE_BOOK__STUDIO:
				return getStudio() != null;
			case CommissionPackage.PRICE_BOOK__LABOUR_PER_HOUR:
				return LABOUR_PER_HOUR_EDEFAULT == null ? labourPerHour != null : !LABOUR_PER_HOUR_EDEFAULT.equals(labourPerHour);
			case CommissionPackage.PRICE_BOOK__ENERGY_PER_KWH:
				return ENERGY_PER_KWH_EDEFAULT == null ? energyPerKwh != null : !ENERGY_PER_KWH_EDEFAULT.equals(energyPerKwh);
			case CommissionPackage.PRICE_BOOK__OVERHEAD_SHARE:
				return OVERHEAD_SHARE_EDEFAULT == null ? overheadShare != null : !OVERHEAD_SHARE_EDEFAULT.equals(overheadShare);
			case CommissionPackage.PRICE_BOOK__MARGIN_SHARE:
				return MARGIN_SHARE_EDEFAULT == null ? marginShare != null : !MARGIN_SHARE_EDEFAULT.equals(marginShare);
			case CommissionPackage.PRICE_BOOK__TAX_SHARE:
				return TAX_SHARE_EDEFAULT == null ? taxShare != null : !TAX_SHARE_EDEFAULT.equals(taxShare);
			case CommissionPackage.PRICE_BOOK__ITEMS:
				return items != null && !items.isEmpty();
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
		result.append(" (labourPerHour: ");
		result.append(labourPerHour);
		result.append(", energyPerKwh: ");
		result.append(energyPerKwh);
		result.append(", overheadShare: ");
		result.append(overheadShare);
		result.append(", marginShare: ");
		result.append(marginShare);
		result.append(", taxShare: ");
		result.append(taxShare);
		result.append(')');
		return result.toString();
	}

} //PriceBookImpl
