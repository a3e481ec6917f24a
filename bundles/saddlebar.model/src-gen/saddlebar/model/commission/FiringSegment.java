/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Firing Segment</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.FiringSegment#getSchedule <em>Schedule</em>}</li>
 *   <li>{@link saddlebar.model.commission.FiringSegment#getName <em>Name</em>}</li>
 *   <li>{@link saddlebar.model.commission.FiringSegment#getRateKPerH <em>Rate KPer H</em>}</li>
 *   <li>{@link saddlebar.model.commission.FiringSegment#getTargetC <em>Target C</em>}</li>
 *   <li>{@link saddlebar.model.commission.FiringSegment#getSoakMin <em>Soak Min</em>}</li>
 *   <li>{@link saddlebar.model.commission.FiringSegment#isVent <em>Vent</em>}</li>
 *   <li>{@link saddlebar.model.commission.FiringSegment#getNote <em>Note</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getFiringSegment()
 * @model
 * @generated
 */
public interface FiringSegment extends EObject {
	/**
	 * Returns the value of the '<em><b>Schedule</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.FiringSchedule#getSegments <em>Segments</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Schedule</em>' container reference.
	 * @see #setSchedule(FiringSchedule)
	 * @see saddlebar.model.commission.CommissionPackage#getFiringSegment_Schedule()
	 * @see saddlebar.model.commission.FiringSchedule#getSegments
	 * @model opposite="segments" resolveProxies="false" transient="false"
	 * @generated
	 */
	FiringSchedule getSchedule();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.FiringSegment#getSchedule <em>Schedule</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Schedule</em>' container reference.
	 * @see #getSchedule()
	 * @generated
	 */
	void setSchedule(FiringSchedule value);

	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see saddlebar.model.commission.CommissionPackage#getFiringSegment_Name()
	 * @model
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.FiringSegment#getName <em>Name</em>}' attribute.
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
	 * <!-- begin-model-doc -->
	 * Without a sign; absent or 0 is as fast as the kiln goes.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rate KPer H</em>' attribute.
	 * @see #setRateKPerH(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getFiringSegment_RateKPerH()
	 * @model
	 * @generated
	 */
	Double getRateKPerH();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.FiringSegment#getRateKPerH <em>Rate KPer H</em>}' attribute.
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
	 * @see saddlebar.model.commission.CommissionPackage#getFiringSegment_TargetC()
	 * @model
	 * @generated
	 */
	double getTargetC();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.FiringSegment#getTargetC <em>Target C</em>}' attribute.
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
	 * @see saddlebar.model.commission.CommissionPackage#getFiringSegment_SoakMin()
	 * @model
	 * @generated
	 */
	double getSoakMin();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.FiringSegment#getSoakMin <em>Soak Min</em>}' attribute.
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
	 * <!-- begin-model-doc -->
	 * Vent open.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Vent</em>' attribute.
	 * @see #setVent(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getFiringSegment_Vent()
	 * @model
	 * @generated
	 */
	boolean isVent();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.FiringSegment#isVent <em>Vent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vent</em>' attribute.
	 * @see #isVent()
	 * @generated
	 */
	void setVent(boolean value);

	/**
	 * Returns the value of the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Note</em>' attribute.
	 * @see #setNote(String)
	 * @see saddlebar.model.commission.CommissionPackage#getFiringSegment_Note()
	 * @model
	 * @generated
	 */
	String getNote();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.FiringSegment#getNote <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Note</em>' attribute.
	 * @see #getNote()
	 * @generated
	 */
	void setNote(String value);

} // FiringSegment
