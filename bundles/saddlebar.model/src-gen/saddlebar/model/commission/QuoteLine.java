/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.math.BigDecimal;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Quote Line</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.QuoteLine#getQuote <em>Quote</em>}</li>
 *   <li>{@link saddlebar.model.commission.QuoteLine#getText <em>Text</em>}</li>
 *   <li>{@link saddlebar.model.commission.QuoteLine#getSourceKey <em>Source Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.QuoteLine#getWindowName <em>Window Name</em>}</li>
 *   <li>{@link saddlebar.model.commission.QuoteLine#getQuantity <em>Quantity</em>}</li>
 *   <li>{@link saddlebar.model.commission.QuoteLine#getUnit <em>Unit</em>}</li>
 *   <li>{@link saddlebar.model.commission.QuoteLine#getUnitPrice <em>Unit Price</em>}</li>
 *   <li>{@link saddlebar.model.commission.QuoteLine#getAmount <em>Amount</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getQuoteLine()
 * @model
 * @generated
 */
public interface QuoteLine extends EObject {
	/**
	 * Returns the value of the '<em><b>Quote</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Quote#getLines <em>Lines</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Quote</em>' container reference.
	 * @see #setQuote(Quote)
	 * @see saddlebar.model.commission.CommissionPackage#getQuoteLine_Quote()
	 * @see saddlebar.model.commission.Quote#getLines
	 * @model opposite="lines" resolveProxies="false" transient="false"
	 * @generated
	 */
	Quote getQuote();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.QuoteLine#getQuote <em>Quote</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Quote</em>' container reference.
	 * @see #getQuote()
	 * @generated
	 */
	void setQuote(Quote value);

	/**
	 * Returns the value of the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Text</em>' attribute.
	 * @see #setText(String)
	 * @see saddlebar.model.commission.CommissionPackage#getQuoteLine_Text()
	 * @model
	 * @generated
	 */
	String getText();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.QuoteLine#getText <em>Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Text</em>' attribute.
	 * @see #getText()
	 * @generated
	 */
	void setText(String value);

	/**
	 * Returns the value of the '<em><b>Source Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The cost source that reckoned it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Source Key</em>' attribute.
	 * @see #setSourceKey(String)
	 * @see saddlebar.model.commission.CommissionPackage#getQuoteLine_SourceKey()
	 * @model
	 * @generated
	 */
	String getSourceKey();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.QuoteLine#getSourceKey <em>Source Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source Key</em>' attribute.
	 * @see #getSourceKey()
	 * @generated
	 */
	void setSourceKey(String value);

	/**
	 * Returns the value of the '<em><b>Window Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Window Name</em>' attribute.
	 * @see #setWindowName(String)
	 * @see saddlebar.model.commission.CommissionPackage#getQuoteLine_WindowName()
	 * @model
	 * @generated
	 */
	String getWindowName();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.QuoteLine#getWindowName <em>Window Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Window Name</em>' attribute.
	 * @see #getWindowName()
	 * @generated
	 */
	void setWindowName(String value);

	/**
	 * Returns the value of the '<em><b>Quantity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Quantity</em>' attribute.
	 * @see #setQuantity(double)
	 * @see saddlebar.model.commission.CommissionPackage#getQuoteLine_Quantity()
	 * @model
	 * @generated
	 */
	double getQuantity();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.QuoteLine#getQuantity <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Quantity</em>' attribute.
	 * @see #getQuantity()
	 * @generated
	 */
	void setQuantity(double value);

	/**
	 * Returns the value of the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Unit</em>' attribute.
	 * @see #setUnit(String)
	 * @see saddlebar.model.commission.CommissionPackage#getQuoteLine_Unit()
	 * @model
	 * @generated
	 */
	String getUnit();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.QuoteLine#getUnit <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit</em>' attribute.
	 * @see #getUnit()
	 * @generated
	 */
	void setUnit(String value);

	/**
	 * Returns the value of the '<em><b>Unit Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Unit Price</em>' attribute.
	 * @see #setUnitPrice(BigDecimal)
	 * @see saddlebar.model.commission.CommissionPackage#getQuoteLine_UnitPrice()
	 * @model
	 * @generated
	 */
	BigDecimal getUnitPrice();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.QuoteLine#getUnitPrice <em>Unit Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit Price</em>' attribute.
	 * @see #getUnitPrice()
	 * @generated
	 */
	void setUnitPrice(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Amount</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Amount</em>' attribute.
	 * @see #setAmount(BigDecimal)
	 * @see saddlebar.model.commission.CommissionPackage#getQuoteLine_Amount()
	 * @model
	 * @generated
	 */
	BigDecimal getAmount();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.QuoteLine#getAmount <em>Amount</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Amount</em>' attribute.
	 * @see #getAmount()
	 * @generated
	 */
	void setAmount(BigDecimal value);

} // QuoteLine
