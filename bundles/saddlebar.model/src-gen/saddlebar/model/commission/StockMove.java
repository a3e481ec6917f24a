/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Stock Move</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * kind stock: received, used up, counted
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.StockMove#getItemId <em>Item Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.StockMove#getQuantity <em>Quantity</em>}</li>
 *   <li>{@link saddlebar.model.commission.StockMove#getUnit <em>Unit</em>}</li>
 *   <li>{@link saddlebar.model.commission.StockMove#getReason <em>Reason</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getStockMove()
 * @model
 * @generated
 */
public interface StockMove extends MakingRecord {
	/**
	 * Returns the value of the '<em><b>Item Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Item Id</em>' attribute.
	 * @see #setItemId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStockMove_ItemId()
	 * @model
	 * @generated
	 */
	String getItemId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StockMove#getItemId <em>Item Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Item Id</em>' attribute.
	 * @see #getItemId()
	 * @generated
	 */
	void setItemId(String value);

	/**
	 * Returns the value of the '<em><b>Quantity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Quantity</em>' attribute.
	 * @see #setQuantity(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getStockMove_Quantity()
	 * @model
	 * @generated
	 */
	Double getQuantity();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StockMove#getQuantity <em>Quantity</em>}' attribute.
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
	 * @see saddlebar.model.commission.CommissionPackage#getStockMove_Unit()
	 * @model
	 * @generated
	 */
	String getUnit();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StockMove#getUnit <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit</em>' attribute.
	 * @see #getUnit()
	 * @generated
	 */
	void setUnit(String value);

	/**
	 * Returns the value of the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Reason</em>' attribute.
	 * @see #setReason(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStockMove_Reason()
	 * @model
	 * @generated
	 */
	String getReason();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StockMove#getReason <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reason</em>' attribute.
	 * @see #getReason()
	 * @generated
	 */
	void setReason(String value);

} // StockMove
