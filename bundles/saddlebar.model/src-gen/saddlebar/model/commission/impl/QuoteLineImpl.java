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
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EcoreUtil;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.Quote;
import saddlebar.model.commission.QuoteLine;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Quote Line</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.QuoteLineImpl#getQuote <em>Quote</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.QuoteLineImpl#getText <em>Text</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.QuoteLineImpl#getSourceKey <em>Source Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.QuoteLineImpl#getWindowName <em>Window Name</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.QuoteLineImpl#getQuantity <em>Quantity</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.QuoteLineImpl#getUnit <em>Unit</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.QuoteLineImpl#getUnitPrice <em>Unit Price</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.QuoteLineImpl#getAmount <em>Amount</em>}</li>
 * </ul>
 *
 * @generated
 */
public class QuoteLineImpl extends MinimalEObjectImpl.Container implements QuoteLine {
	/**
	 * The default value of the '{@link #getText() <em>Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getText()
	 * @generated
	 * @ordered
	 */
	protected static final String TEXT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getText() <em>Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getText()
	 * @generated
	 * @ordered
	 */
	protected String text = TEXT_EDEFAULT;

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
	 * The default value of the '{@link #getWindowName() <em>Window Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWindowName()
	 * @generated
	 * @ordered
	 */
	protected static final String WINDOW_NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWindowName() <em>Window Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWindowName()
	 * @generated
	 * @ordered
	 */
	protected String windowName = WINDOW_NAME_EDEFAULT;

	/**
	 * The default value of the '{@link #getQuantity() <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuantity()
	 * @generated
	 * @ordered
	 */
	protected static final double QUANTITY_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getQuantity() <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuantity()
	 * @generated
	 * @ordered
	 */
	protected double quantity = QUANTITY_EDEFAULT;

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
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected QuoteLineImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.QUOTE_LINE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quote getQuote() {
		if (eContainerFeatureID() != CommissionPackage.QUOTE_LINE__QUOTE) return null;
		return (Quote)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetQuote(Quote newQuote, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newQuote, CommissionPackage.QUOTE_LINE__QUOTE, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setQuote(Quote newQuote) {
		if (newQuote != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.QUOTE_LINE__QUOTE && newQuote != null)) {
			if (EcoreUtil.isAncestor(this, newQuote))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newQuote != null)
				msgs = ((InternalEObject)newQuote).eInverseAdd(this, CommissionPackage.QUOTE__LINES, Quote.class, msgs);
			msgs = basicSetQuote(newQuote, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.QUOTE_LINE__QUOTE, newQuote, newQuote));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getText() {
		return text;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setText(String newText) {
		String oldText = text;
		text = newText;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.QUOTE_LINE__TEXT, oldText, text));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.QUOTE_LINE__SOURCE_KEY, oldSourceKey, sourceKey));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWindowName() {
		return windowName;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWindowName(String newWindowName) {
		String oldWindowName = windowName;
		windowName = newWindowName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.QUOTE_LINE__WINDOW_NAME, oldWindowName, windowName));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getQuantity() {
		return quantity;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setQuantity(double newQuantity) {
		double oldQuantity = quantity;
		quantity = newQuantity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.QUOTE_LINE__QUANTITY, oldQuantity, quantity));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.QUOTE_LINE__UNIT, oldUnit, unit));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.QUOTE_LINE__UNIT_PRICE, oldUnitPrice, unitPrice));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.QUOTE_LINE__AMOUNT, oldAmount, amount));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.QUOTE_LINE__QUOTE:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetQuote((Quote)otherEnd, msgs);
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
			case CommissionPackage.QUOTE_LINE__QUOTE:
				return basicSetQuote(null, msgs);
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
			case CommissionPackage.QUOTE_LINE__QUOTE:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.QUOTE__LINES, Quote.class, msgs);
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
			case CommissionPackage.QUOTE_LINE__QUOTE:
				return getQuote();
			case CommissionPackage.QUOTE_LINE__TEXT:
				return getText();
			case CommissionPackage.QUOTE_LINE__SOURCE_KEY:
				return getSourceKey();
			case CommissionPackage.QUOTE_LINE__WINDOW_NAME:
				return getWindowName();
			case CommissionPackage.QUOTE_LINE__QUANTITY:
				return getQuantity();
			case CommissionPackage.QUOTE_LINE__UNIT:
				return getUnit();
			case CommissionPackage.QUOTE_LINE__UNIT_PRICE:
				return getUnitPrice();
			case CommissionPackage.QUOTE_LINE__AMOUNT:
				return getAmount();
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
			case CommissionPackage.QUOTE_LINE__QUOTE:
				setQuote((Quote)newValue);
				return;
			case CommissionPackage.QUOTE_LINE__TEXT:
				setText((String)newValue);
				return;
			case CommissionPackage.QUOTE_LINE__SOURCE_KEY:
				setSourceKey((String)newValue);
				return;
			case CommissionPackage.QUOTE_LINE__WINDOW_NAME:
				setWindowName((String)newValue);
				return;
			case CommissionPackage.QUOTE_LINE__QUANTITY:
				setQuantity((Double)newValue);
				return;
			case CommissionPackage.QUOTE_LINE__UNIT:
				setUnit((String)newValue);
				return;
			case CommissionPackage.QUOTE_LINE__UNIT_PRICE:
				setUnitPrice((BigDecimal)newValue);
				return;
			case CommissionPackage.QUOTE_LINE__AMOUNT:
				setAmount((BigDecimal)newValue);
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
			case CommissionPackage.QUOTE_LINE__QUOTE:
				setQuote((Quote)null);
				return;
			case CommissionPackage.QUOTE_LINE__TEXT:
				setText(TEXT_EDEFAULT);
				return;
			case CommissionPackage.QUOTE_LINE__SOURCE_KEY:
				setSourceKey(SOURCE_KEY_EDEFAULT);
				return;
			case CommissionPackage.QUOTE_LINE__WINDOW_NAME:
				setWindowName(WINDOW_NAME_EDEFAULT);
				return;
			case CommissionPackage.QUOTE_LINE__QUANTITY:
				setQuantity(QUANTITY_EDEFAULT);
				return;
			case CommissionPackage.QUOTE_LINE__UNIT:
				setUnit(UNIT_EDEFAULT);
				return;
			case CommissionPackage.QUOTE_LINE__UNIT_PRICE:
				setUnitPrice(UNIT_PRICE_EDEFAULT);
				return;
			case CommissionPackage.QUOTE_LINE__AMOUNT:
				setAmount(AMOUNT_EDEFAULT);
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
			case CommissionPackage.QUOTE_LINE__QUOTE:
				return getQuote() != null;
			case CommissionPackage.QUOTE_LINE__TEXT:
				return TEXT_EDEFAULT == null ? text != null : !TEXT_EDEFAULT.equals(text);
			case CommissionPackage.QUOTE_LINE__SOURCE_KEY:
				return SOURCE_KEY_EDEFAULT == null ? sourceKey != null : !SOURCE_KEY_EDEFAULT.equals(sourceKey);
			case CommissionPackage.QUOTE_LINE__WINDOW_NAME:
				return WINDOW_NAME_EDEFAULT == null ? windowName != null : !WINDOW_NAME_EDEFAULT.equals(windowName);
			case CommissionPackage.QUOTE_LINE__QUANTITY:
				return quantity != QUANTITY_EDEFAULT;
			case CommissionPackage.QUOTE_LINE__UNIT:
				return UNIT_EDEFAULT == null ? unit != null : !UNIT_EDEFAULT.equals(unit);
			case CommissionPackage.QUOTE_LINE__UNIT_PRICE:
				return UNIT_PRICE_EDEFAULT == null ? unitPrice != null : !UNIT_PRICE_EDEFAULT.equals(unitPrice);
			case CommissionPackage.QUOTE_LINE__AMOUNT:
				return AMOUNT_EDEFAULT == null ? amount != null : !AMOUNT_EDEFAULT.equals(amount);
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
		result.append(" (text: ");
		result.append(text);
		result.append(", sourceKey: ");
		result.append(sourceKey);
		result.append(", windowName: ");
		result.append(windowName);
		result.append(", quantity: ");
		result.append(quantity);
		result.append(", unit: ");
		result.append(unit);
		result.append(", unitPrice: ");
		result.append(unitPrice);
		result.append(", amount: ");
		result.append(amount);
		result.append(')');
		return result.toString();
	}

} //QuoteLineImpl
