/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Run Segment</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.RunSegment#getName <em>Name</em>}</li>
 *   <li>{@link saddlebar.model.commission.RunSegment#getRateKPerH <em>Rate KPer H</em>}</li>
 *   <li>{@link saddlebar.model.commission.RunSegment#getTargetC <em>Target C</em>}</li>
 *   <li>{@link saddlebar.model.commission.RunSegment#getSoakMin <em>Soak Min</em>}</li>
 *   <li>{@link saddlebar.model.commission.RunSegment#isVent <em>Vent</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getRunSegment()
 * @model
 * @generated
 */
public interface RunSegment extends EObject {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see saddlebar.model.commission.CommissionPackage#getRunSegment_Name()
	 * @model
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.RunSegment#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Rate KPer H</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rate KPer H</em>' attribute.
	 * @see #setRateKPerH(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getRunSegment_RateKPerH()
	 * @model
	 * @generated
	 */
	Double getRateKPerH();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.RunSegment#getRateKPerH <em>Rate KPer H</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rate KPer H</em>' attribute.
	 * @see #getRateKPerH()
	 * @generated
	 */
	void setRateKPerH(Double value);

	/**
	 * Returns the value of the '<em><b>Target C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Target C</em>' attribute.
	 * @see #setTargetC(double)
	 * @see saddlebar.model.commission.CommissionPackage#getRunSegment_TargetC()
	 * @model
	 * @generated
	 */
	double getTargetC();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.RunSegment#getTargetC <em>Target C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Target C</em>' attribute.
	 * @see #getTargetC()
	 * @generated
	 */
	void setTargetC(double value);

	/**
	 * Returns the value of the '<em><b>Soak Min</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Soak Min</em>' attribute.
	 * @see #setSoakMin(double)
	 * @see saddlebar.model.commission.CommissionPackage#getRunSegment_SoakMin()
	 * @model
	 * @generated
	 */
	double getSoakMin();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.RunSegment#getSoakMin <em>Soak Min</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Soak Min</em>' attribute.
	 * @see #getSoakMin()
	 * @generated
	 */
	void setSoakMin(double value);

	/**
	 * Returns the value of the '<em><b>Vent</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Vent</em>' attribute.
	 * @see #setVent(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getRunSegment_Vent()
	 * @model
	 * @generated
	 */
	boolean isVent();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.RunSegment#isVent <em>Vent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vent</em>' attribute.
	 * @see #isVent()
	 * @generated
	 */
	void setVent(boolean value);

} // RunSegment
