/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Firing</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * kind fire: what the kiln did
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Firing#getName <em>Name</em>}</li>
 *   <li>{@link saddlebar.model.commission.Firing#getKilnId <em>Kiln Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.Firing#getScheduleId <em>Schedule Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.Firing#getSegments <em>Segments</em>}</li>
 *   <li>{@link saddlebar.model.commission.Firing#getLoad <em>Load</em>}</li>
 *   <li>{@link saddlebar.model.commission.Firing#getCurveFile <em>Curve File</em>}</li>
 *   <li>{@link saddlebar.model.commission.Firing#getCurveSha256 <em>Curve Sha256</em>}</li>
 *   <li>{@link saddlebar.model.commission.Firing#getPeakC <em>Peak C</em>}</li>
 *   <li>{@link saddlebar.model.commission.Firing#getEnergyKwh <em>Energy Kwh</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getFiring()
 * @model
 * @generated
 */
public interface Firing extends MakingRecord {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see saddlebar.model.commission.CommissionPackage#getFiring_Name()
	 * @model
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Firing#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Kiln Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kiln Id</em>' attribute.
	 * @see #setKilnId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getFiring_KilnId()
	 * @model
	 * @generated
	 */
	String getKilnId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Firing#getKilnId <em>Kiln Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kiln Id</em>' attribute.
	 * @see #getKilnId()
	 * @generated
	 */
	void setKilnId(String value);

	/**
	 * Returns the value of the '<em><b>Schedule Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Schedule Id</em>' attribute.
	 * @see #setScheduleId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getFiring_ScheduleId()
	 * @model
	 * @generated
	 */
	String getScheduleId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Firing#getScheduleId <em>Schedule Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Schedule Id</em>' attribute.
	 * @see #getScheduleId()
	 * @generated
	 */
	void setScheduleId(String value);

	/**
	 * Returns the value of the '<em><b>Segments</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.RunSegment}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The schedule as run.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Segments</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getFiring_Segments()
	 * @model containment="true"
	 * @generated
	 */
	EList<RunSegment> getSegments();

	/**
	 * Returns the value of the '<em><b>Load</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.ShelfPlace}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Load</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getFiring_Load()
	 * @model containment="true"
	 * @generated
	 */
	EList<ShelfPlace> getLoad();

	/**
	 * Returns the value of the '<em><b>Curve File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Curve File</em>' attribute.
	 * @see #setCurveFile(String)
	 * @see saddlebar.model.commission.CommissionPackage#getFiring_CurveFile()
	 * @model
	 * @generated
	 */
	String getCurveFile();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Firing#getCurveFile <em>Curve File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Curve File</em>' attribute.
	 * @see #getCurveFile()
	 * @generated
	 */
	void setCurveFile(String value);

	/**
	 * Returns the value of the '<em><b>Curve Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Curve Sha256</em>' attribute.
	 * @see #setCurveSha256(String)
	 * @see saddlebar.model.commission.CommissionPackage#getFiring_CurveSha256()
	 * @model
	 * @generated
	 */
	String getCurveSha256();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Firing#getCurveSha256 <em>Curve Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Curve Sha256</em>' attribute.
	 * @see #getCurveSha256()
	 * @generated
	 */
	void setCurveSha256(String value);

	/**
	 * Returns the value of the '<em><b>Peak C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Peak C</em>' attribute.
	 * @see #setPeakC(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getFiring_PeakC()
	 * @model
	 * @generated
	 */
	Double getPeakC();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Firing#getPeakC <em>Peak C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Peak C</em>' attribute.
	 * @see #getPeakC()
	 * @generated
	 */
	void setPeakC(Double value);

	/**
	 * Returns the value of the '<em><b>Energy Kwh</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Energy Kwh</em>' attribute.
	 * @see #setEnergyKwh(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getFiring_EnergyKwh()
	 * @model
	 * @generated
	 */
	Double getEnergyKwh();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Firing#getEnergyKwh <em>Energy Kwh</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Energy Kwh</em>' attribute.
	 * @see #getEnergyKwh()
	 * @generated
	 */
	void setEnergyKwh(Double value);

} // Firing
