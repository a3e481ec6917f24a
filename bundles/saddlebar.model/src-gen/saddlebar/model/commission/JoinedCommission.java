/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.time.Instant;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Joined Commission</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A commission that shares this studio; name is its title.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.JoinedCommission#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.JoinedCommission#getFolder <em>Folder</em>}</li>
 *   <li>{@link saddlebar.model.commission.JoinedCommission#getCommissionId <em>Commission Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.JoinedCommission#getJoined <em>Joined</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getJoinedCommission()
 * @model
 * @generated
 */
public interface JoinedCommission extends Named {
	/**
	 * Returns the value of the '<em><b>Studio</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Studio#getCommissions <em>Commissions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Studio</em>' container reference.
	 * @see #setStudio(Studio)
	 * @see saddlebar.model.commission.CommissionPackage#getJoinedCommission_Studio()
	 * @see saddlebar.model.commission.Studio#getCommissions
	 * @model opposite="commissions" resolveProxies="false" transient="false"
	 * @generated
	 */
	Studio getStudio();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.JoinedCommission#getStudio <em>Studio</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Studio</em>' container reference.
	 * @see #getStudio()
	 * @generated
	 */
	void setStudio(Studio value);

	/**
	 * Returns the value of the '<em><b>Folder</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Path of its folder, relative to the studio's.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Folder</em>' attribute.
	 * @see #setFolder(String)
	 * @see saddlebar.model.commission.CommissionPackage#getJoinedCommission_Folder()
	 * @model
	 * @generated
	 */
	String getFolder();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.JoinedCommission#getFolder <em>Folder</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Folder</em>' attribute.
	 * @see #getFolder()
	 * @generated
	 */
	void setFolder(String value);

	/**
	 * Returns the value of the '<em><b>Commission Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Commission Id</em>' attribute.
	 * @see #setCommissionId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getJoinedCommission_CommissionId()
	 * @model
	 * @generated
	 */
	String getCommissionId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.JoinedCommission#getCommissionId <em>Commission Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Commission Id</em>' attribute.
	 * @see #getCommissionId()
	 * @generated
	 */
	void setCommissionId(String value);

	/**
	 * Returns the value of the '<em><b>Joined</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Joined</em>' attribute.
	 * @see #setJoined(Instant)
	 * @see saddlebar.model.commission.CommissionPackage#getJoinedCommission_Joined()
	 * @model dataType="saddlebar.model.commission.Moment"
	 * @generated
	 */
	Instant getJoined();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.JoinedCommission#getJoined <em>Joined</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Joined</em>' attribute.
	 * @see #getJoined()
	 * @generated
	 */
	void setJoined(Instant value);

} // JoinedCommission
