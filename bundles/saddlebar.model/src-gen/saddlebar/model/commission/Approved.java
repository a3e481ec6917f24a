/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Approved</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * kind approve
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Approved#getApprovalId <em>Approval Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.Approved#getQuoteId <em>Quote Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.Approved#getColourwayId <em>Colourway Id</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getApproved()
 * @model
 * @generated
 */
public interface Approved extends MakingRecord {
	/**
	 * Returns the value of the '<em><b>Approval Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Approval Id</em>' attribute.
	 * @see #setApprovalId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getApproved_ApprovalId()
	 * @model
	 * @generated
	 */
	String getApprovalId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Approved#getApprovalId <em>Approval Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Approval Id</em>' attribute.
	 * @see #getApprovalId()
	 * @generated
	 */
	void setApprovalId(String value);

	/**
	 * Returns the value of the '<em><b>Quote Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Quote Id</em>' attribute.
	 * @see #setQuoteId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getApproved_QuoteId()
	 * @model
	 * @generated
	 */
	String getQuoteId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Approved#getQuoteId <em>Quote Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Quote Id</em>' attribute.
	 * @see #getQuoteId()
	 * @generated
	 */
	void setQuoteId(String value);

	/**
	 * Returns the value of the '<em><b>Colourway Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Colourway Id</em>' attribute.
	 * @see #setColourwayId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getApproved_ColourwayId()
	 * @model
	 * @generated
	 */
	String getColourwayId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Approved#getColourwayId <em>Colourway Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Colourway Id</em>' attribute.
	 * @see #getColourwayId()
	 * @generated
	 */
	void setColourwayId(String value);

} // Approved
