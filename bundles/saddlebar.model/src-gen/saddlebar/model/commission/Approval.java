/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.time.LocalDate;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Approval</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What the client agreed to; name says what.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Approval#getCommission <em>Commission</em>}</li>
 *   <li>{@link saddlebar.model.commission.Approval#getOn <em>On</em>}</li>
 *   <li>{@link saddlebar.model.commission.Approval#getBy <em>By</em>}</li>
 *   <li>{@link saddlebar.model.commission.Approval#getQuote <em>Quote</em>}</li>
 *   <li>{@link saddlebar.model.commission.Approval#getColourway <em>Colourway</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getApproval()
 * @model
 * @generated
 */
public interface Approval extends Named {
	/**
	 * Returns the value of the '<em><b>Commission</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Commission#getApprovals <em>Approvals</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Commission</em>' container reference.
	 * @see #setCommission(Commission)
	 * @see saddlebar.model.commission.CommissionPackage#getApproval_Commission()
	 * @see saddlebar.model.commission.Commission#getApprovals
	 * @model opposite="approvals" resolveProxies="false" transient="false"
	 * @generated
	 */
	Commission getCommission();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Approval#getCommission <em>Commission</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Commission</em>' container reference.
	 * @see #getCommission()
	 * @generated
	 */
	void setCommission(Commission value);

	/**
	 * Returns the value of the '<em><b>On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>On</em>' attribute.
	 * @see #setOn(LocalDate)
	 * @see saddlebar.model.commission.CommissionPackage#getApproval_On()
	 * @model dataType="saddlebar.model.commission.Day"
	 * @generated
	 */
	LocalDate getOn();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Approval#getOn <em>On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>On</em>' attribute.
	 * @see #getOn()
	 * @generated
	 */
	void setOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>By</em>' attribute.
	 * @see #setBy(String)
	 * @see saddlebar.model.commission.CommissionPackage#getApproval_By()
	 * @model
	 * @generated
	 */
	String getBy();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Approval#getBy <em>By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>By</em>' attribute.
	 * @see #getBy()
	 * @generated
	 */
	void setBy(String value);

	/**
	 * Returns the value of the '<em><b>Quote</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Quote</em>' reference.
	 * @see #setQuote(Quote)
	 * @see saddlebar.model.commission.CommissionPackage#getApproval_Quote()
	 * @model
	 * @generated
	 */
	Quote getQuote();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Approval#getQuote <em>Quote</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Quote</em>' reference.
	 * @see #getQuote()
	 * @generated
	 */
	void setQuote(Quote value);

	/**
	 * Returns the value of the '<em><b>Colourway</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Colourway</em>' reference.
	 * @see #setColourway(Colourway)
	 * @see saddlebar.model.commission.CommissionPackage#getApproval_Colourway()
	 * @model
	 * @generated
	 */
	Colourway getColourway();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Approval#getColourway <em>Colourway</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Colourway</em>' reference.
	 * @see #getColourway()
	 * @generated
	 */
	void setColourway(Colourway value);

} // Approval
