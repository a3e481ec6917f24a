/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Mesh</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A plain-weave mesh as woven.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Mesh#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.Mesh#getThreadsPerInch <em>Threads Per Inch</em>}</li>
 *   <li>{@link saddlebar.model.commission.Mesh#getThreadUm <em>Thread Um</em>}</li>
 *   <li>{@link saddlebar.model.commission.Mesh#getSource <em>Source</em>}</li>
 *   <li>{@link saddlebar.model.commission.Mesh#getFrames <em>Frames</em>}</li>
 *   <li>{@link saddlebar.model.commission.Mesh#getCalibrations <em>Calibrations</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getMesh()
 * @model
 * @generated
 */
public interface Mesh extends Named {
	/**
	 * Returns the value of the '<em><b>Studio</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Studio#getMeshes <em>Meshes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Studio</em>' container reference.
	 * @see #setStudio(Studio)
	 * @see saddlebar.model.commission.CommissionPackage#getMesh_Studio()
	 * @see saddlebar.model.commission.Studio#getMeshes
	 * @model opposite="meshes" resolveProxies="false" transient="false"
	 * @generated
	 */
	Studio getStudio();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Mesh#getStudio <em>Studio</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Studio</em>' container reference.
	 * @see #getStudio()
	 * @generated
	 */
	void setStudio(Studio value);

	/**
	 * Returns the value of the '<em><b>Threads Per Inch</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Threads Per Inch</em>' attribute.
	 * @see #setThreadsPerInch(double)
	 * @see saddlebar.model.commission.CommissionPackage#getMesh_ThreadsPerInch()
	 * @model
	 * @generated
	 */
	double getThreadsPerInch();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Mesh#getThreadsPerInch <em>Threads Per Inch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Threads Per Inch</em>' attribute.
	 * @see #getThreadsPerInch()
	 * @generated
	 */
	void setThreadsPerInch(double value);

	/**
	 * Returns the value of the '<em><b>Thread Um</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Thread Um</em>' attribute.
	 * @see #setThreadUm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getMesh_ThreadUm()
	 * @model
	 * @generated
	 */
	double getThreadUm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Mesh#getThreadUm <em>Thread Um</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Thread Um</em>' attribute.
	 * @see #getThreadUm()
	 * @generated
	 */
	void setThreadUm(double value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see saddlebar.model.commission.CommissionPackage#getMesh_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Mesh#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

	/**
	 * Returns the value of the '<em><b>Frames</b></em>' reference list.
	 * The list contents are of type {@link saddlebar.model.commission.ScreenFrame}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.ScreenFrame#getMesh <em>Mesh</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Frames</em>' reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getMesh_Frames()
	 * @see saddlebar.model.commission.ScreenFrame#getMesh
	 * @model opposite="mesh"
	 * @generated
	 */
	EList<ScreenFrame> getFrames();

	/**
	 * Returns the value of the '<em><b>Calibrations</b></em>' reference list.
	 * The list contents are of type {@link saddlebar.model.commission.ToneCalibration}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.ToneCalibration#getMesh <em>Mesh</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Calibrations</em>' reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getMesh_Calibrations()
	 * @see saddlebar.model.commission.ToneCalibration#getMesh
	 * @model opposite="mesh"
	 * @generated
	 */
	EList<ToneCalibration> getCalibrations();

} // Mesh
