/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Client</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Client#getCommission <em>Commission</em>}</li>
 *   <li>{@link saddlebar.model.commission.Client#getContact <em>Contact</em>}</li>
 *   <li>{@link saddlebar.model.commission.Client#getAddress <em>Address</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getClient()
 * @model
 * @generated
 */
public interface Client extends Named {
	/**
	 * Returns the value of the '<em><b>Commission</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Commission#getClient <em>Client</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Commission</em>' container reference.
	 * @see #setCommission(Commission)
	 * @see saddlebar.model.commission.CommissionPackage#getClient_Commission()
	 * @see saddlebar.model.commission.Commission#getClient
	 * @model opposite="client" resolveProxies="false" transient="false"
	 * @generated
	 */
	Commission getCommission();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Client#getCommission <em>Commission</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Commission</em>' container reference.
	 * @see #getCommission()
	 * @generated
	 */
	void setCommission(Commission value);

	/**
	 * Returns the value of the '<em><b>Contact</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Contact</em>' attribute.
	 * @see #setContact(String)
	 * @see saddlebar.model.commission.CommissionPackage#getClient_Contact()
	 * @model
	 * @generated
	 */
	String getContact();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Client#getContact <em>Contact</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Contact</em>' attribute.
	 * @see #getContact()
	 * @generated
	 */
	void setContact(String value);

	/**
	 * Returns the value of the '<em><b>Address</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Address</em>' attribute.
	 * @see #setAddress(String)
	 * @see saddlebar.model.commission.CommissionPackage#getClient_Address()
	 * @model
	 * @generated
	 */
	String getAddress();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Client#getAddress <em>Address</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Address</em>' attribute.
	 * @see #getAddress()
	 * @generated
	 */
	void setAddress(String value);

} // Client
