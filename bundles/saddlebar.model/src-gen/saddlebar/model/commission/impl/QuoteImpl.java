/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import java.math.BigDecimal;

import java.time.LocalDate;

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

import saddlebar.model.commission.Commission;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.Quote;
import saddlebar.model.commission.QuoteLine;
import saddlebar.model.commission.QuoteState;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Quote</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.QuoteImpl#getCommission <em>Commission</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.QuoteImpl#getNumber <em>Number</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.QuoteImpl#getState <em>State</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.QuoteImpl#getDated <em>Dated</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.QuoteImpl#getValidUntil <em>Valid Until</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.QuoteImpl#getCurrency <em>Currency</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.QuoteImpl#getTotal <em>Total</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.QuoteImpl#getLines <em>Lines</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.QuoteImpl#getChanges <em>Changes</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.QuoteImpl#getReason <em>Reason</em>}</li>
 * </ul>
 *
 * @generated
 */
public class QuoteImpl extends NamedImpl implements Quote {
	/**
	 * The default value of the '{@link #getNumber() <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNumber()
	 * @generated
	 * @ordered
	 */
	protected static final String NUMBER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNumber() <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNumber()
	 * @generated
	 * @ordered
	 */
	protected String number = NUMBER_EDEFAULT;

	/**
	 * The default value of the '{@link #getState() <em>State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getState()
	 * @generated
	 * @ordered
	 */
	protected static final QuoteState STATE_EDEFAULT = QuoteState.DRAFT;

	/**
	 * The cached value of the '{@link #getState() <em>State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getState()
	 * @generated
	 * @ordered
	 */
	protected QuoteState state = STATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getDated() <em>Dated</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDated()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate DATED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDated() <em>Dated</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDated()
	 * @generated
	 * @ordered
	 */
	protected LocalDate dated = DATED_EDEFAULT;

	/**
	 * The default value of the '{@link #getValidUntil() <em>Valid Until</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValidUntil()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate VALID_UNTIL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getValidUntil() <em>Valid Until</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValidUntil()
	 * @generated
	 * @ordered
	 */
	protected LocalDate validUntil = VALID_UNTIL_EDEFAULT;

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
	 * The default value of the '{@link #getTotal() <em>Total</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTotal()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal TOTAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTotal() <em>Total</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTotal()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal total = TOTAL_EDEFAULT;

	/**
	 * The cached value of the '{@link #getLines() <em>Lines</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLines()
	 * @generated
	 * @ordered
	 */
	protected EList<QuoteLine> lines;

	/**
	 * The default value of the '{@link #getChanges() <em>Changes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChanges()
	 * @generated
	 * @ordered
	 */
	protected static final String CHANGES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getChanges() <em>Changes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChanges()
	 * @generated
	 * @ordered
	 */
	protected String changes = CHANGES_EDEFAULT;

	/**
	 * The default value of the '{@link #getReason() <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReason()
	 * @generated
	 * @ordered
	 */
	protected static final String REASON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReason() <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReason()
	 * @generated
	 * @ordered
	 */
	protected String reason = REASON_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected QuoteImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.QUOTE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Commission getCommission() {
		if (eContainerFeatureID() != CommissionPackage.QUOTE__COMMISSION) return null;
		return (Commission)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetCommission(Commission newCommission, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newCommission, CommissionPackage.QUOTE__COMMISSION, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCommission(Commission newCommission) {
		if (newCommission != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.QUOTE__COMMISSION && newCommission != null)) {
			if (EcoreUtil.isAncestor(this, newCommission))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newCommission != null)
				msgs = ((InternalEObject)newCommission).eInverseAdd(this, CommissionPackage.COMMISSION__QUOTES, Commission.class, msgs);
			msgs = basicSetCommission(newCommission, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.QUOTE__COMMISSION, newCommission, newCommission));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNumber() {
		return number;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNumber(String newNumber) {
		String oldNumber = number;
		number = newNumber;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.QUOTE__NUMBER, oldNumber, number));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public QuoteState getState() {
		return state;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setState(QuoteState newState) {
		QuoteState oldState = state;
		state = newState == null ? STATE_EDEFAULT : newState;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.QUOTE__STATE, oldState, state));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getDated() {
		return dated;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDated(LocalDate newDated) {
		LocalDate oldDated = dated;
		dated = newDated;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.QUOTE__DATED, oldDated, dated));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getValidUntil() {
		return validUntil;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setValidUntil(LocalDate newValidUntil) {
		LocalDate oldValidUntil = validUntil;
		validUntil = newValidUntil;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.QUOTE__VALID_UNTIL, oldValidUntil, validUntil));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.QUOTE__CURRENCY, oldCurrency, currency));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getTotal() {
		return total;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTotal(BigDecimal newTotal) {
		BigDecimal oldTotal = total;
		total = newTotal;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.QUOTE__TOTAL, oldTotal, total));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<QuoteLine> getLines() {
		if (lines == null) {
			lines = new EObjectContainmentWithInverseEList<QuoteLine>(QuoteLine.class, this, CommissionPackage.QUOTE__LINES, CommissionPackage.QUOTE_LINE__QUOTE);
		}
		return lines;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getChanges() {
		return changes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setChanges(String newChanges) {
		String oldChanges = changes;
		changes = newChanges;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.QUOTE__CHANGES, oldChanges, changes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getReason() {
		return reason;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReason(String newReason) {
		String oldReason = reason;
		reason = newReason;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.QUOTE__REASON, oldReason, reason));
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
			case CommissionPackage.QUOTE__COMMISSION:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetCommission((Commission)otherEnd, msgs);
			case CommissionPackage.QUOTE__LINES:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getLines()).basicAdd(otherEnd, msgs);
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
			case CommissionPackage.QUOTE__COMMISSION:
				return basicSetCommission(null, msgs);
			case CommissionPackage.QUOTE__LINES:
				return ((InternalEList<?>)getLines()).basicRemove(otherEnd, msgs);
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
			case CommissionPackage.QUOTE__COMMISSION:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.COMMISSION__QUOTES, Commission.class, msgs);
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
			case CommissionPackage.QUOTE__COMMISSION:
				return getCommission();
			case CommissionPackage.QUOTE__NUMBER:
				return getNumber();
			case CommissionPackage.QUOTE__STATE:
				return getState();
			case CommissionPackage.QUOTE__DATED:
				return getDated();
			case CommissionPackage.QUOTE__VALID_UNTIL:
				return getValidUntil();
			case CommissionPackage.QUOTE__CURRENCY:
				return getCurrency();
			case CommissionPackage.QUOTE__TOTAL:
				return getTotal();
			case CommissionPackage.QUOTE__LINES:
				return getLines();
			case CommissionPackage.QUOTE__CHANGES:
				return getChanges();
			case CommissionPackage.QUOTE__REASON:
				return getReason();
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
			case CommissionPackage.QUOTE__COMMISSION:
				setCommission((Commission)newValue);
				return;
			case CommissionPackage.QUOTE__NUMBER:
				setNumber((String)newValue);
				return;
			case CommissionPackage.QUOTE__STATE:
				setState((QuoteState)newValue);
				return;
			case CommissionPackage.QUOTE__DATED:
				setDated((LocalDate)newValue);
				return;
			case CommissionPackage.QUOTE__VALID_UNTIL:
				setValidUntil((LocalDate)newValue);
				return;
			case CommissionPackage.QUOTE__CURRENCY:
				setCurrency((String)newValue);
				return;
			case CommissionPackage.QUOTE__TOTAL:
				setTotal((BigDecimal)newValue);
				return;
			case CommissionPackage.QUOTE__LINES:
				getLines().clear();
				getLines().addAll((Collection<? extends QuoteLine>)newValue);
				return;
			case CommissionPackage.QUOTE__CHANGES:
				setChanges((String)newValue);
				return;
			case CommissionPackage.QUOTE__REASON:
				setReason((String)newValue);
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
			case CommissionPackage.QUOTE__COMMISSION:
				setCommission((Commission)null);
				return;
			case CommissionPackage.QUOTE__NUMBER:
				setNumber(NUMBER_EDEFAULT);
				return;
			case CommissionPackage.QUOTE__STATE:
				setState(STATE_EDEFAULT);
				return;
			case CommissionPackage.QUOTE__DATED:
				setDated(DATED_EDEFAULT);
				return;
			case CommissionPackage.QUOTE__VALID_UNTIL:
				setValidUntil(VALID_UNTIL_EDEFAULT);
				return;
			case CommissionPackage.QUOTE__CURRENCY:
				setCurrency(CURRENCY_EDEFAULT);
				return;
			case CommissionPackage.QUOTE__TOTAL:
				setTotal(TOTAL_EDEFAULT);
				return;
			case CommissionPackage.QUOTE__LINES:
				getLines().clear();
				return;
			case CommissionPackage.QUOTE__CHANGES:
				setChanges(CHANGES_EDEFAULT);
				return;
			case CommissionPackage.QUOTE__REASON:
				setReason(REASON_EDEFAULT);
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
			case CommissionPackage.QUOTE__COMMISSION:
				return getCommission() != null;
			case CommissionPackage.QUOTE__NUMBER:
				return NUMBER_EDEFAULT == null ? number != null : !NUMBER_EDEFAULT.equals(number);
			case CommissionPackage.QUOTE__STATE:
				return state != STATE_EDEFAULT;
			case CommissionPackage.QUOTE__DATED:
				return DATED_EDEFAULT == null ? dated != null : !DATED_EDEFAULT.equals(dated);
			case CommissionPackage.QUOTE__VALID_UNTIL:
				return VALID_UNTIL_EDEFAULT == null ? validUntil != null : !VALID_UNTIL_EDEFAULT.equals(validUntil);
			case CommissionPackage.QUOTE__CURRENCY:
				return CURRENCY_EDEFAULT == null ? currency != null : !CURRENCY_EDEFAULT.equals(currency);
			case CommissionPackage.QUOTE__TOTAL:
				return TOTAL_EDEFAULT == null ? total != null : !TOTAL_EDEFAULT.equals(total);
			case CommissionPackage.QUOTE__LINES:
				return lines != null && !lines.isEmpty();
			case CommissionPackage.QUOTE__CHANGES:
				return CHANGES_EDEFAULT == null ? changes != null : !CHANGES_EDEFAULT.equals(changes);
			case CommissionPackage.QUOTE__REASON:
				return REASON_EDEFAULT == null ? reason != null : !REASON_EDEFAULT.equals(reason);
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
		result.append(" (number: ");
		result.append(number);
		result.append(", state: ");
		result.append(state);
		result.append(", dated: ");
		result.append(dated);
		result.append(", validUntil: ");
		result.append(validUntil);
		result.append(", currency: ");
		result.append(currency);
		result.append(", total: ");
		result.append(total);
		result.append(", changes: ");
		result.append(changes);
		result.append(", reason: ");
		result.append(reason);
		result.append(')');
		return result.toString();
	}

} //QuoteImpl
