/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.math.BigDecimal;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Cost Line</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * kind cost
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.CostLine#getSourceKey <em>Source Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.CostLine#getWhat <em>What</em>}</li>
 *   <li>{@link saddlebar.model.commission.CostLine#getWindowId <em>Window Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.CostLine#isEstimate <em>Estimate</em>}</li>
 *   <li>{@link saddlebar.model.commission.CostLine#getQuantity <em>Quantity</em>}</li>
 *   <li>{@link saddlebar.model.commission.CostLine#getUnit <em>Unit</em>}</li>
 *   <li>{@link saddlebar.model.commission.CostLine#getUnitPrice <em>Unit Price</em>}</li>
 *   <li>{@link saddlebar.model.commission.CostLine#getAmount <em>Amount</em>}</li>
 *   <li>{@link saddlebar.model.commission.CostLine#getCurrency <em>Currency</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getCostLine()
 * @model
 * @generated
 */
public interface CostLine extends MakingRecord {
	/**
	 * Returns the value of the '<em><b>Source Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Source Key</em>' attribute.
	 * @see #setSourceKey(String)
	 * @see saddlebar.model.commission.CommissionPackage#getCostLine_SourceKey()
	 * @model
	 * @generated
	 */
	String getSourceKey();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.CostLine#getSourceKey <em>Source Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source Key</em>' attribute.
	 * @see #getSourceKey()
	 * @generated
	 */
	void setSourceKey(String value);

	/**
	 * Returns the value of the '<em><b>What</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>What</em>' attribute.
	 * @see #setWhat(String)
	 * @see saddlebar.model.commission.CommissionPackage#getCostLine_What()
	 * @model
	 * @generated
	 */
	String getWhat();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.CostLine#getWhat <em>What</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>What</em>' attribute.
	 * @see #getWhat()
	 * @generated
	 */
	void setWhat(String value);

	/**
	 * Returns the value of the '<em><b>Window Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Window Id</em>' attribute.
	 * @see #setWindowId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getCostLine_WindowId()
	 * @model
	 * @generated
	 */
	String getWindowId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.CostLine#getWindowId <em>Window Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Window Id</em>' attribute.
	 * @see #getWindowId()
	 * @generated
	 */
	void setWindowId(String value);

	/**
	 * Returns the value of the '<em><b>Estimate</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Estimate</em>' attribute.
	 * @see #setEstimate(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getCostLine_Estimate()
	 * @model
	 * @generated
	 */
	boolean isEstimate();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.CostLine#isEstimate <em>Estimate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Estimate</em>' attribute.
	 * @see #isEstimate()
	 * @generated
	 */
	void setEstimate(boolean value);

	/**
	 * Returns the value of the '<em><b>Quantity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Quantity</em>' attribute.
	 * @see #setQuantity(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getCostLine_Quantity()
	 * @model
	 * @generated
	 */
	Double getQuantity();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.CostLine#getQuantity <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Quantity</em>' attribute.
	 * @see #getQuantity()
	 * @generated
	 */
	void setQuantity(Double value);

	/**
	 * Returns the value of the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Unit</em>' attribute.
	 * @see #setUnit(String)
	 * @see saddlebar.model.commission.CommissionPackage#getCostLine_Unit()
	 * @model
	 * @generated
	 */
	String getUnit();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.CostLine#getUnit <em>Unit</em>}' attribute.
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
	 * @see saddlebar.model.commission.CommissionPackage#getCostLine_UnitPrice()
	 * @model
	 * @generated
	 */
	BigDecimal getUnitPrice();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.CostLine#getUnitPrice <em>Unit Price</em>}' attribute.
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
	 * @see saddlebar.model.commission.CommissionPackage#getCostLine_Amount()
	 * @model
	 * @generated
	 */
	BigDecimal getAmount();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.CostLine#getAmount <em>Amount</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Amount</em>' attribute.
	 * @see #getAmount()
	 * @generated
	 */
	void setAmount(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Currency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Currency</em>' attribute.
	 * @see #setCurrency(String)
	 * @see saddlebar.model.commission.CommissionPackage#getCostLine_Currency()
	 * @model
	 * @generated
	 */
	String getCurrency();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.CostLine#getCurrency <em>Currency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Currency</em>' attribute.
	 * @see #getCurrency()
	 * @generated
	 */
	void setCurrency(String value);

} // CostLine
