/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.math.BigDecimal;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Quote</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Frozen when sent.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Quote#getCommission <em>Commission</em>}</li>
 *   <li>{@link saddlebar.model.commission.Quote#getNumber <em>Number</em>}</li>
 *   <li>{@link saddlebar.model.commission.Quote#getState <em>State</em>}</li>
 *   <li>{@link saddlebar.model.commission.Quote#getDated <em>Dated</em>}</li>
 *   <li>{@link saddlebar.model.commission.Quote#getValidUntil <em>Valid Until</em>}</li>
 *   <li>{@link saddlebar.model.commission.Quote#getCurrency <em>Currency</em>}</li>
 *   <li>{@link saddlebar.model.commission.Quote#getTotal <em>Total</em>}</li>
 *   <li>{@link saddlebar.model.commission.Quote#getLines <em>Lines</em>}</li>
 *   <li>{@link saddlebar.model.commission.Quote#getChanges <em>Changes</em>}</li>
 *   <li>{@link saddlebar.model.commission.Quote#getReason <em>Reason</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getQuote()
 * @model
 * @generated
 */
public interface Quote extends Named {
	/**
	 * Returns the value of the '<em><b>Commission</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Commission#getQuotes <em>Quotes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Commission</em>' container reference.
	 * @see #setCommission(Commission)
	 * @see saddlebar.model.commission.CommissionPackage#getQuote_Commission()
	 * @see saddlebar.model.commission.Commission#getQuotes
	 * @model opposite="quotes" resolveProxies="false" transient="false"
	 * @generated
	 */
	Commission getCommission();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Quote#getCommission <em>Commission</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Commission</em>' container reference.
	 * @see #getCommission()
	 * @generated
	 */
	void setCommission(Commission value);

	/**
	 * Returns the value of the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Number</em>' attribute.
	 * @see #setNumber(String)
	 * @see saddlebar.model.commission.CommissionPackage#getQuote_Number()
	 * @model
	 * @generated
	 */
	String getNumber();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Quote#getNumber <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Number</em>' attribute.
	 * @see #getNumber()
	 * @generated
	 */
	void setNumber(String value);

	/**
	 * Returns the value of the '<em><b>State</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.QuoteState}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>State</em>' attribute.
	 * @see saddlebar.model.commission.QuoteState
	 * @see #setState(QuoteState)
	 * @see saddlebar.model.commission.CommissionPackage#getQuote_State()
	 * @model
	 * @generated
	 */
	QuoteState getState();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Quote#getState <em>State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>State</em>' attribute.
	 * @see saddlebar.model.commission.QuoteState
	 * @see #getState()
	 * @generated
	 */
	void setState(QuoteState value);

	/**
	 * Returns the value of the '<em><b>Dated</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Dated</em>' attribute.
	 * @see #setDated(LocalDate)
	 * @see saddlebar.model.commission.CommissionPackage#getQuote_Dated()
	 * @model dataType="saddlebar.model.commission.Day"
	 * @generated
	 */
	LocalDate getDated();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Quote#getDated <em>Dated</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dated</em>' attribute.
	 * @see #getDated()
	 * @generated
	 */
	void setDated(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Valid Until</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Valid Until</em>' attribute.
	 * @see #setValidUntil(LocalDate)
	 * @see saddlebar.model.commission.CommissionPackage#getQuote_ValidUntil()
	 * @model dataType="saddlebar.model.commission.Day"
	 * @generated
	 */
	LocalDate getValidUntil();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Quote#getValidUntil <em>Valid Until</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Valid Until</em>' attribute.
	 * @see #getValidUntil()
	 * @generated
	 */
	void setValidUntil(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Currency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Currency</em>' attribute.
	 * @see #setCurrency(String)
	 * @see saddlebar.model.commission.CommissionPackage#getQuote_Currency()
	 * @model
	 * @generated
	 */
	String getCurrency();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Quote#getCurrency <em>Currency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Currency</em>' attribute.
	 * @see #getCurrency()
	 * @generated
	 */
	void setCurrency(String value);

	/**
	 * Returns the value of the '<em><b>Total</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Total</em>' attribute.
	 * @see #setTotal(BigDecimal)
	 * @see saddlebar.model.commission.CommissionPackage#getQuote_Total()
	 * @model
	 * @generated
	 */
	BigDecimal getTotal();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Quote#getTotal <em>Total</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Total</em>' attribute.
	 * @see #getTotal()
	 * @generated
	 */
	void setTotal(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Lines</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.QuoteLine}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.QuoteLine#getQuote <em>Quote</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lines</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getQuote_Lines()
	 * @see saddlebar.model.commission.QuoteLine#getQuote
	 * @model opposite="quote" containment="true"
	 * @generated
	 */
	EList<QuoteLine> getLines();

	/**
	 * Returns the value of the '<em><b>Changes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Number of the quote that this one follows: a change order.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Changes</em>' attribute.
	 * @see #setChanges(String)
	 * @see saddlebar.model.commission.CommissionPackage#getQuote_Changes()
	 * @model
	 * @generated
	 */
	String getChanges();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Quote#getChanges <em>Changes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Changes</em>' attribute.
	 * @see #getChanges()
	 * @generated
	 */
	void setChanges(String value);

	/**
	 * Returns the value of the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Why it was changed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reason</em>' attribute.
	 * @see #setReason(String)
	 * @see saddlebar.model.commission.CommissionPackage#getQuote_Reason()
	 * @model
	 * @generated
	 */
	String getReason();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Quote#getReason <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reason</em>' attribute.
	 * @see #getReason()
	 * @generated
	 */
	void setReason(String value);

} // Quote
