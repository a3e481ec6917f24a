/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.math.BigDecimal;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Bar Stock</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Saddle bars, flat bars, rebars.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.BarStock#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.BarStock#getWidthMm <em>Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.BarStock#getDepthMm <em>Depth Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.BarStock#isRound <em>Round</em>}</li>
 *   <li>{@link saddlebar.model.commission.BarStock#getPricePerM <em>Price Per M</em>}</li>
 *   <li>{@link saddlebar.model.commission.BarStock#getSource <em>Source</em>}</li>
 *   <li>{@link saddlebar.model.commission.BarStock#getSoldLengthMm <em>Sold Length Mm</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getBarStock()
 * @model
 * @generated
 */
public interface BarStock extends Named {
	/**
	 * Returns the value of the '<em><b>Studio</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Studio#getBars <em>Bars</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Studio</em>' container reference.
	 * @see #setStudio(Studio)
	 * @see saddlebar.model.commission.CommissionPackage#getBarStock_Studio()
	 * @see saddlebar.model.commission.Studio#getBars
	 * @model opposite="bars" resolveProxies="false" transient="false"
	 * @generated
	 */
	Studio getStudio();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.BarStock#getStudio <em>Studio</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Studio</em>' container reference.
	 * @see #getStudio()
	 * @generated
	 */
	void setStudio(Studio value);

	/**
	 * Returns the value of the '<em><b>Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Width Mm</em>' attribute.
	 * @see #setWidthMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getBarStock_WidthMm()
	 * @model
	 * @generated
	 */
	double getWidthMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.BarStock#getWidthMm <em>Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width Mm</em>' attribute.
	 * @see #getWidthMm()
	 * @generated
	 */
	void setWidthMm(double value);

	/**
	 * Returns the value of the '<em><b>Depth Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Depth Mm</em>' attribute.
	 * @see #setDepthMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getBarStock_DepthMm()
	 * @model
	 * @generated
	 */
	double getDepthMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.BarStock#getDepthMm <em>Depth Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Depth Mm</em>' attribute.
	 * @see #getDepthMm()
	 * @generated
	 */
	void setDepthMm(double value);

	/**
	 * Returns the value of the '<em><b>Round</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Round</em>' attribute.
	 * @see #setRound(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getBarStock_Round()
	 * @model
	 * @generated
	 */
	boolean isRound();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.BarStock#isRound <em>Round</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Round</em>' attribute.
	 * @see #isRound()
	 * @generated
	 */
	void setRound(boolean value);

	/**
	 * Returns the value of the '<em><b>Price Per M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Price Per M</em>' attribute.
	 * @see #setPricePerM(BigDecimal)
	 * @see saddlebar.model.commission.CommissionPackage#getBarStock_PricePerM()
	 * @model
	 * @generated
	 */
	BigDecimal getPricePerM();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.BarStock#getPricePerM <em>Price Per M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Price Per M</em>' attribute.
	 * @see #getPricePerM()
	 * @generated
	 */
	void setPricePerM(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see saddlebar.model.commission.CommissionPackage#getBarStock_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.BarStock#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

	/**
	 * Returns the value of the '<em><b>Sold Length Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Length in which it is sold.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sold Length Mm</em>' attribute.
	 * @see #setSoldLengthMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getBarStock_SoldLengthMm()
	 * @model
	 * @generated
	 */
	Double getSoldLengthMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.BarStock#getSoldLengthMm <em>Sold Length Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sold Length Mm</em>' attribute.
	 * @see #getSoldLengthMm()
	 * @generated
	 */
	void setSoldLengthMm(Double value);

} // BarStock
