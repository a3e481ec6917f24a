/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Tone Point</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.TonePoint#getCalibration <em>Calibration</em>}</li>
 *   <li>{@link saddlebar.model.commission.TonePoint#getNominal <em>Nominal</em>}</li>
 *   <li>{@link saddlebar.model.commission.TonePoint#getEffective <em>Effective</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getTonePoint()
 * @model
 * @generated
 */
public interface TonePoint extends EObject {
	/**
	 * Returns the value of the '<em><b>Calibration</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.ToneCalibration#getPoints <em>Points</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Calibration</em>' container reference.
	 * @see #setCalibration(ToneCalibration)
	 * @see saddlebar.model.commission.CommissionPackage#getTonePoint_Calibration()
	 * @see saddlebar.model.commission.ToneCalibration#getPoints
	 * @model opposite="points" resolveProxies="false" transient="false"
	 * @generated
	 */
	ToneCalibration getCalibration();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.TonePoint#getCalibration <em>Calibration</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Calibration</em>' container reference.
	 * @see #getCalibration()
	 * @generated
	 */
	void setCalibration(ToneCalibration value);

	/**
	 * Returns the value of the '<em><b>Nominal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * 0 to 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Nominal</em>' attribute.
	 * @see #setNominal(double)
	 * @see saddlebar.model.commission.CommissionPackage#getTonePoint_Nominal()
	 * @model
	 * @generated
	 */
	double getNominal();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.TonePoint#getNominal <em>Nominal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Nominal</em>' attribute.
	 * @see #getNominal()
	 * @generated
	 */
	void setNominal(double value);

	/**
	 * Returns the value of the '<em><b>Effective</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * 0 to 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Effective</em>' attribute.
	 * @see #setEffective(double)
	 * @see saddlebar.model.commission.CommissionPackage#getTonePoint_Effective()
	 * @model
	 * @generated
	 */
	double getEffective();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.TonePoint#getEffective <em>Effective</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Effective</em>' attribute.
	 * @see #getEffective()
	 * @generated
	 */
	void setEffective(double value);

} // TonePoint
