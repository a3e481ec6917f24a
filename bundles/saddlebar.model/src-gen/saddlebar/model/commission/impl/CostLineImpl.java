/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import java.math.BigDecimal;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.CostLine;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Cost Line</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.CostLineImpl#getSourceKey <em>Source Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CostLineImpl#getWhat <em>What</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CostLineImpl#getWindowId <em>Window Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CostLineImpl#isEstimate <em>Estimate</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CostLineImpl#getQuantity <em>Quantity</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CostLineImpl#getUnit <em>Unit</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CostLineImpl#getUnitPrice <em>Unit Price</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CostLineImpl#getAmount <em>Amount</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CostLineImpl#getCurrency <em>Currency</em>}</li>
 * </ul>
 *
 * @generated
 */
public class CostLineImpl extends MakingRecordImpl implements CostLine {
	/**
	 * The default value of the '{@link #getSourceKey() <em>Source Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSourceKey()
	 * @generated
	 * @ordered
	 */
	protected static final String SOURCE_KEY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSourceKey() <em>Source Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSourceKey()
	 * @generated
	 * @ordered
	 */
	protected String sourceKey = SOURCE_KEY_EDEFAULT;

	/**
	 * The default value of the '{@link #getWhat() <em>What</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWhat()
	 * @generated
	 * @ordered
	 */
	protected static final String WHAT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWhat() <em>What</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWhat()
	 * @generated
	 * @ordered
	 */
	protected String what = WHAT_EDEFAULT;

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
	 * The default value of the '{@link #isEstimate() <em>Estimate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isEstimate()
	 * @generated
	 * @ordered
	 */
	protected static final boolean ESTIMATE_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isEstimate() <em>Estimate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isEstimate()
	 * @generated
	 * @ordered
	 */
	protected boolean estimate = ESTIMATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getQuantity() <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuantity()
	 * @generated
	 * @ordered
	 */
	protected static final Double QUANTITY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getQuantity() <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuantity()
	 * @generated
	 * @ordered
	 */
	protected Double quantity = QUANTITY_EDEFAULT;

	/**
	 * The default value of the '{@link #getUnit() <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnit()
	 * @generated
	 * @ordered
	 */
	protected static final String UNIT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getUnit() <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnit()
	 * @generated
	 * @ordered
	 */
	protected String unit = UNIT_EDEFAULT;

	/**
	 * The default value of the '{@link #getUnitPrice() <em>Unit Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnitPrice()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal UNIT_PRICE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getUnitPrice() <em>Unit Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnitPrice()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal unitPrice = UNIT_PRICE_EDEFAULT;

	/**
	 * The default value of the '{@link #getAmount() <em>Amount</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAmount()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal AMOUNT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAmount() <em>Amount</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAmount()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal amount = AMOUNT_EDEFAULT;

	/**
	 * The default value of the '{@link #getCurrency() <em>Currency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurrency()
	 * @generated
	 * @ordered
	 */
	protected static final String CURRENCY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCurrency() <em>Currency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurrency()
	 * @generated
	 * @ordered
	 */
	protected String currency = CURRENCY_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CostLineImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.COST_LINE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSourceKey() {
		return sourceKey;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSourceKey(String newSourceKey) {
		String oldSourceKey = sourceKey;
		sourceKey = newSourceKey;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COST_LINE__SOURCE_KEY, oldSourceKey, sourceKey));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWhat() {
		return what;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWhat(String newWhat) {
		String oldWhat = what;
		what = newWhat;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COST_LINE__WHAT, oldWhat, what));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COST_LINE__WINDOW_ID, oldWindowId, windowId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isEstimate() {
		return estimate;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEstimate(boolean newEstimate) {
		boolean oldEstimate = estimate;
		estimate = newEstimate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COST_LINE__ESTIMATE, oldEstimate, estimate));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getQuantity() {
		return quantity;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setQuantity(Double newQuantity) {
		Double oldQuantity = quantity;
		quantity = newQuantity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COST_LINE__QUANTITY, oldQuantity, quantity));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getUnit() {
		return unit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUnit(String newUnit) {
		String oldUnit = unit;
		unit = newUnit;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COST_LINE__UNIT, oldUnit, unit));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getUnitPrice() {
		return unitPrice;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUnitPrice(BigDecimal newUnitPrice) {
		BigDecimal oldUnitPrice = unitPrice;
		unitPrice = newUnitPrice;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COST_LINE__UNIT_PRICE, oldUnitPrice, unitPrice));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getAmount() {
		return amount;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAmount(BigDecimal newAmount) {
		BigDecimal oldAmount = amount;
		amount = newAmount;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COST_LINE__AMOUNT, oldAmount, amount));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCurrency() {
		return currency;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCurrency(String newCurrency) {
		String oldCurrency = currency;
		currency = newCurrency;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COST_LINE__CURRENCY, oldCurrency, currency));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CommissionPackage.COST_LINE__SOURCE_KEY:
				return getSourceKey();
			case CommissionPackage.COST_LINE__WHAT:
				return getWhat();
			case CommissionPackage.COST_LINE__WINDOW_ID:
				return getWindowId();
			case CommissionPackage.COST_LINE__ESTIMATE:
				return isEstimate();
			case CommissionPackage.COST_LINE__QUANTITY:
				return getQuantity();
			case CommissionPackage.COST_LINE__UNIT:
				return getUnit();
			case CommissionPackage.COST_LINE__UNIT_PRICE:
				return getUnitPrice();
			case CommissionPackage.COST_LINE__AMOUNT:
				return getAmount();
			case CommissionPackage.COST_LINE__CURRENCY:
				return getCurrency();
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
			case CommissionPackage.COST_LINE__SOURCE_KEY:
				setSourceKey((String)newValue);
				return;
			case CommissionPackage.COST_LINE__WHAT:
				setWhat((String)newValue);
				return;
			case CommissionPackage.COST_LINE__WINDOW_ID:
				setWindowId((String)newValue);
				return;
			case CommissionPackage.COST_LINE__ESTIMATE:
				setEstimate((Boolean)newValue);
				return;
			case CommissionPackage.COST_LINE__QUANTITY:
				setQuantity((Double)newValue);
				return;
			case CommissionPackage.COST_LINE__UNIT:
				setUnit((String)newValue);
				return;
			case CommissionPackage.COST_LINE__UNIT_PRICE:
				setUnitPrice((BigDecimal)newValue);
				return;
			case CommissionPackage.COST_LINE__AMOUNT:
				setAmount((BigDecimal)newValue);
				return;
			case CommissionPackage.COST_LINE__CURRENCY:
				setCurrency((String)newValue);
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
			case CommissionPackage.COST_LINE__SOURCE_KEY:
				setSourceKey(SOURCE_KEY_EDEFAULT);
				return;
			case CommissionPackage.COST_LINE__WHAT:
				setWhat(WHAT_EDEFAULT);
				return;
			case CommissionPackage.COST_LINE__WINDOW_ID:
				setWindowId(WINDOW_ID_EDEFAULT);
				return;
			case CommissionPackage.COST_LINE__ESTIMATE:
				setEstimate(ESTIMATE_EDEFAULT);
				return;
			case CommissionPackage.COST_LINE__QUANTITY:
				setQuantity(QUANTITY_EDEFAULT);
				return;
			case CommissionPackage.COST_LINE__UNIT:
				setUnit(UNIT_EDEFAULT);
				return;
			case CommissionPackage.COST_LINE__UNIT_PRICE:
				setUnitPrice(UNIT_PRICE_EDEFAULT);
				return;
			case CommissionPackage.COST_LINE__AMOUNT:
				setAmount(AMOUNT_EDEFAULT);
				return;
			case CommissionPackage.COST_LINE__CURRENCY:
				setCurrency(CURRENCY_EDEFAULT);
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
			case CommissionPackage.COST_LINE__SOURCE_KEY:
				return SOURCE_KEY_EDEFAULT == null ? sourceKey != null : !SOURCE_KEY_EDEFAULT.equals(sourceKey);
			case CommissionPackage.COST_LINE__WHAT:
				return WHAT_EDEFAULT == null ? what != null : !WHAT_EDEFAULT.equals(what);
			case CommissionPackage.COST_LINE__WINDOW_ID:
				return WINDOW_ID_EDEFAULT == null ? windowId != null : !WINDOW_ID_EDEFAULT.equals(windowId);
			case CommissionPackage.COST_LINE__ESTIMATE:
				return estimate != ESTIMATE_EDEFAULT;
			case CommissionPackage.COST_LINE__QUANTITY:
				return QUANTITY_EDEFAULT == null ? quantity != null : !QUANTITY_EDEFAULT.equals(quantity);
			case CommissionPackage.COST_LINE__UNIT:
				return UNIT_EDEFAULT == null ? unit != null : !UNIT_EDEFAULT.equals(unit);
			case CommissionPackage.COST_LINE__UNIT_PRICE:
				return UNIT_PRICE_EDEFAULT == null ? unitPrice != null : !UNIT_PRICE_EDEFAULT.equals(unitPrice);
			case CommissionPackage.COST_LINE__AMOUNT:
				return AMOUNT_EDEFAULT == null ? amount != null : !AMOUNT_EDEFAULT.equals(amount);
			case CommissionPackage.COST_LINE__CURRENCY:
				return CURRENCY_EDEFAULT == null ? currency != null : !CURRENCY_EDEFAULT.equals(currency);
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
		result.append(" (sourceKey: ");
		result.append(sourceKey);
		result.append(", what: ");
		result.append(what);
		result.append(", windowId: ");
		result.append(windowId);
		result.append(", estimate: ");
		result.append(estimate);
		result.append(", quantity: ");
		result.append(quantity);
		result.append(", unit: ");
		result.append(unit);
		result.append(", unitPrice: ");
		result.append(unitPrice);
		result.append(", amount: ");
		result.append(amount);
		result.append(", currency: ");
		result.append(currency);
		result.append(')');
		return result.toString();
	}

} //CostLineImpl
