/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Price Item</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.PriceItem#getBook <em>Book</em>}</li>
 *   <li>{@link saddlebar.model.commission.PriceItem#getKey <em>Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.PriceItem#getUnit <em>Unit</em>}</li>
 *   <li>{@link saddlebar.model.commission.PriceItem#getPrice <em>Price</em>}</li>
 *   <li>{@link saddlebar.model.commission.PriceItem#getFrom <em>From</em>}</li>
 *   <li>{@link saddlebar.model.commission.PriceItem#getCurrency <em>Currency</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getPriceItem()
 * @model
 * @generated
 */
public interface PriceItem extends Named {
	/**
	 * Returns the value of the '<em><b>Book</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.PriceBook#getItems <em>Items</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Book</em>' container reference.
	 * @see #setBook(PriceBook)
	 * @see saddlebar.model.commission.CommissionPackage#getPriceItem_Book()
	 * @see saddlebar.model.commission.PriceBook#getItems
	 * @model opposite="items" resolveProxies="false" transient="false"
	 * @generated
	 */
	PriceBook getBook();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PriceItem#getBook <em>Book</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Book</em>' container reference.
	 * @see #getBook()
	 * @generated
	 */
	void setBook(PriceBook value);

	/**
	 * Returns the value of the '<em><b>Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Stable word by which a cost source finds it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Key</em>' attribute.
	 * @see #setKey(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPriceItem_Key()
	 * @model
	 * @generated
	 */
	String getKey();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PriceItem#getKey <em>Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Key</em>' attribute.
	 * @see #getKey()
	 * @generated
	 */
	void setKey(String value);

	/**
	 * Returns the value of the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Unit</em>' attribute.
	 * @see #setUnit(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPriceItem_Unit()
	 * @model
	 * @generated
	 */
	String getUnit();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PriceItem#getUnit <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit</em>' attribute.
	 * @see #getUnit()
	 * @generated
	 */
	void setUnit(String value);

	/**
	 * Returns the value of the '<em><b>Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Price</em>' attribute.
	 * @see #setPrice(BigDecimal)
	 * @see saddlebar.model.commission.CommissionPackage#getPriceItem_Price()
	 * @model
	 * @generated
	 */
	BigDecimal getPrice();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PriceItem#getPrice <em>Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Price</em>' attribute.
	 * @see #getPrice()
	 * @generated
	 */
	void setPrice(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * First day on which it holds, until the next of its key; absent: always.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>From</em>' attribute.
	 * @see #setFrom(LocalDate)
	 * @see saddlebar.model.commission.CommissionPackage#getPriceItem_From()
	 * @model dataType="saddlebar.model.commission.Day"
	 * @generated
	 */
	LocalDate getFrom();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PriceItem#getFrom <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From</em>' attribute.
	 * @see #getFrom()
	 * @generated
	 */
	void setFrom(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Currency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * ISO 4217; absent: the currency of the studio.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Currency</em>' attribute.
	 * @see #setCurrency(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPriceItem_Currency()
	 * @model
	 * @generated
	 */
	String getCurrency();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PriceItem#getCurrency <em>Currency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Currency</em>' attribute.
	 * @see #getCurrency()
	 * @generated
	 */
	void setCurrency(String value);

} // PriceItem
