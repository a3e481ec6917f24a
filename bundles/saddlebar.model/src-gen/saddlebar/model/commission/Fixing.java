/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Fixing</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * kind fix: a panel set in its opening
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Fixing#getWindowId <em>Window Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.Fixing#getPanelId <em>Panel Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.Fixing#getPlace <em>Place</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getFixing()
 * @model
 * @generated
 */
public interface Fixing extends MakingRecord {
	/**
	 * Returns the value of the '<em><b>Window Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Window Id</em>' attribute.
	 * @see #setWindowId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getFixing_WindowId()
	 * @model
	 * @generated
	 */
	String getWindowId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Fixing#getWindowId <em>Window Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Window Id</em>' attribute.
	 * @see #getWindowId()
	 * @generated
	 */
	void setWindowId(String value);

	/**
	 * Returns the value of the '<em><b>Panel Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Panel Id</em>' attribute.
	 * @see #setPanelId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getFixing_PanelId()
	 * @model
	 * @generated
	 */
	String getPanelId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Fixing#getPanelId <em>Panel Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Panel Id</em>' attribute.
	 * @see #getPanelId()
	 * @generated
	 */
	void setPanelId(String value);

	/**
	 * Returns the value of the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Place</em>' attribute.
	 * @see #setPlace(String)
	 * @see saddlebar.model.commission.CommissionPackage#getFixing_Place()
	 * @model
	 * @generated
	 */
	String getPlace();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Fixing#getPlace <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Place</em>' attribute.
	 * @see #getPlace()
	 * @generated
	 */
	void setPlace(String value);

} // Fixing
