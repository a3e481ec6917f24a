/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.math.BigDecimal;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Price Book</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.PriceBook#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.PriceBook#getLabourPerHour <em>Labour Per Hour</em>}</li>
 *   <li>{@link saddlebar.model.commission.PriceBook#getEnergyPerKwh <em>Energy Per Kwh</em>}</li>
 *   <li>{@link saddlebar.model.commission.PriceBook#getOverheadShare <em>Overhead Share</em>}</li>
 *   <li>{@link saddlebar.model.commission.PriceBook#getMarginShare <em>Margin Share</em>}</li>
 *   <li>{@link saddlebar.model.commission.PriceBook#getTaxShare <em>Tax Share</em>}</li>
 *   <li>{@link saddlebar.model.commission.PriceBook#getItems <em>Items</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getPriceBook()
 * @model
 * @generated
 */
public interface PriceBook extends Identified {
	/**
	 * Returns the value of the '<em><b>Studio</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Studio#getPriceBook <em>Price Book</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Studio</em>' container reference.
	 * @see #setStudio(Studio)
	 * @see saddlebar.model.commission.CommissionPackage#getPriceBook_Studio()
	 * @see saddlebar.model.commission.Studio#getPriceBook
	 * @model opposite="priceBook" resolveProxies="false" transient="false"
	 * @generated
	 */
	Studio getStudio();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PriceBook#getStudio <em>Studio</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Studio</em>' container reference.
	 * @see #getStudio()
	 * @generated
	 */
	void setStudio(Studio value);

	/**
	 * Returns the value of the '<em><b>Labour Per Hour</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Labour Per Hour</em>' attribute.
	 * @see #setLabourPerHour(BigDecimal)
	 * @see saddlebar.model.commission.CommissionPackage#getPriceBook_LabourPerHour()
	 * @model
	 * @generated
	 */
	BigDecimal getLabourPerHour();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PriceBook#getLabourPerHour <em>Labour Per Hour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Labour Per Hour</em>' attribute.
	 * @see #getLabourPerHour()
	 * @generated
	 */
	void setLabourPerHour(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Energy Per Kwh</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Energy Per Kwh</em>' attribute.
	 * @see #setEnergyPerKwh(BigDecimal)
	 * @see saddlebar.model.commission.CommissionPackage#getPriceBook_EnergyPerKwh()
	 * @model
	 * @generated
	 */
	BigDecimal getEnergyPerKwh();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PriceBook#getEnergyPerKwh <em>Energy Per Kwh</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Energy Per Kwh</em>' attribute.
	 * @see #getEnergyPerKwh()
	 * @generated
	 */
	void setEnergyPerKwh(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Overhead Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Overhead Share</em>' attribute.
	 * @see #setOverheadShare(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getPriceBook_OverheadShare()
	 * @model
	 * @generated
	 */
	Double getOverheadShare();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PriceBook#getOverheadShare <em>Overhead Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Overhead Share</em>' attribute.
	 * @see #getOverheadShare()
	 * @generated
	 */
	void setOverheadShare(Double value);

	/**
	 * Returns the value of the '<em><b>Margin Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Margin Share</em>' attribute.
	 * @see #setMarginShare(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getPriceBook_MarginShare()
	 * @model
	 * @generated
	 */
	Double getMarginShare();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PriceBook#getMarginShare <em>Margin Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Margin Share</em>' attribute.
	 * @see #getMarginShare()
	 * @generated
	 */
	void setMarginShare(Double value);

	/**
	 * Returns the value of the '<em><b>Tax Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Tax Share</em>' attribute.
	 * @see #setTaxShare(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getPriceBook_TaxShare()
	 * @model
	 * @generated
	 */
	Double getTaxShare();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PriceBook#getTaxShare <em>Tax Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tax Share</em>' attribute.
	 * @see #getTaxShare()
	 * @generated
	 */
	void setTaxShare(Double value);

	/**
	 * Returns the value of the '<em><b>Items</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.PriceItem}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.PriceItem#getBook <em>Book</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Items</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getPriceBook_Items()
	 * @see saddlebar.model.commission.PriceItem#getBook
	 * @model opposite="book" containment="true"
	 * @generated
	 */
	EList<PriceItem> getItems();

} // PriceBook
