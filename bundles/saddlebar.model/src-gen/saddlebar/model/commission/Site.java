/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Site</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Site#getCommission <em>Commission</em>}</li>
 *   <li>{@link saddlebar.model.commission.Site#getAddress <em>Address</em>}</li>
 *   <li>{@link saddlebar.model.commission.Site#getAccess <em>Access</em>}</li>
 *   <li>{@link saddlebar.model.commission.Site#getDistanceKm <em>Distance Km</em>}</li>
 *   <li>{@link saddlebar.model.commission.Site#getTrips <em>Trips</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getSite()
 * @model
 * @generated
 */
public interface Site extends Named {
	/**
	 * Returns the value of the '<em><b>Commission</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Commission#getSite <em>Site</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Commission</em>' container reference.
	 * @see #setCommission(Commission)
	 * @see saddlebar.model.commission.CommissionPackage#getSite_Commission()
	 * @see saddlebar.model.commission.Commission#getSite
	 * @model opposite="site" resolveProxies="false" transient="false"
	 * @generated
	 */
	Commission getCommission();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Site#getCommission <em>Commission</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Commission</em>' container reference.
	 * @see #getCommission()
	 * @generated
	 */
	void setCommission(Commission value);

	/**
	 * Returns the value of the '<em><b>Address</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Address</em>' attribute.
	 * @see #setAddress(String)
	 * @see saddlebar.model.commission.CommissionPackage#getSite_Address()
	 * @model
	 * @generated
	 */
	String getAddress();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Site#getAddress <em>Address</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Address</em>' attribute.
	 * @see #getAddress()
	 * @generated
	 */
	void setAddress(String value);

	/**
	 * Returns the value of the '<em><b>Access</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How the place is reached, what scaffold it needs.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Access</em>' attribute.
	 * @see #setAccess(String)
	 * @see saddlebar.model.commission.CommissionPackage#getSite_Access()
	 * @model
	 * @generated
	 */
	String getAccess();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Site#getAccess <em>Access</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Access</em>' attribute.
	 * @see #getAccess()
	 * @generated
	 */
	void setAccess(String value);

	/**
	 * Returns the value of the '<em><b>Distance Km</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From the studio to the site, one way.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Distance Km</em>' attribute.
	 * @see #setDistanceKm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getSite_DistanceKm()
	 * @model
	 * @generated
	 */
	Double getDistanceKm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Site#getDistanceKm <em>Distance Km</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Distance Km</em>' attribute.
	 * @see #getDistanceKm()
	 * @generated
	 */
	void setDistanceKm(Double value);

	/**
	 * Returns the value of the '<em><b>Trips</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Journeys there and back: measuring, fixing.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Trips</em>' attribute.
	 * @see #setTrips(int)
	 * @see saddlebar.model.commission.CommissionPackage#getSite_Trips()
	 * @model
	 * @generated
	 */
	int getTrips();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Site#getTrips <em>Trips</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Trips</em>' attribute.
	 * @see #getTrips()
	 * @generated
	 */
	void setTrips(int value);

} // Site
