/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Tone Calibration</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What coverage a nominal coverage prints, measured on a step wedge.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.ToneCalibration#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.ToneCalibration#getMesh <em>Mesh</em>}</li>
 *   <li>{@link saddlebar.model.commission.ToneCalibration#getPaint <em>Paint</em>}</li>
 *   <li>{@link saddlebar.model.commission.ToneCalibration#getPrinter <em>Printer</em>}</li>
 *   <li>{@link saddlebar.model.commission.ToneCalibration#getMethod <em>Method</em>}</li>
 *   <li>{@link saddlebar.model.commission.ToneCalibration#getProcessKey <em>Process Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.ToneCalibration#getLpi <em>Lpi</em>}</li>
 *   <li>{@link saddlebar.model.commission.ToneCalibration#getDotMm <em>Dot Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.ToneCalibration#getMeasured <em>Measured</em>}</li>
 *   <li>{@link saddlebar.model.commission.ToneCalibration#getReadingsFile <em>Readings File</em>}</li>
 *   <li>{@link saddlebar.model.commission.ToneCalibration#getPoints <em>Points</em>}</li>
 *   <li>{@link saddlebar.model.commission.ToneCalibration#getSupersededBy <em>Superseded By</em>}</li>
 *   <li>{@link saddlebar.model.commission.ToneCalibration#getYuleNielsen <em>Yule Nielsen</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getToneCalibration()
 * @model
 * @generated
 */
public interface ToneCalibration extends Named {
	/**
	 * Returns the value of the '<em><b>Studio</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Studio#getCalibrations <em>Calibrations</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Studio</em>' container reference.
	 * @see #setStudio(Studio)
	 * @see saddlebar.model.commission.CommissionPackage#getToneCalibration_Studio()
	 * @see saddlebar.model.commission.Studio#getCalibrations
	 * @model opposite="calibrations" resolveProxies="false" transient="false"
	 * @generated
	 */
	Studio getStudio();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ToneCalibration#getStudio <em>Studio</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Studio</em>' container reference.
	 * @see #getStudio()
	 * @generated
	 */
	void setStudio(Studio value);

	/**
	 * Returns the value of the '<em><b>Mesh</b></em>' reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Mesh#getCalibrations <em>Calibrations</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mesh</em>' reference.
	 * @see #setMesh(Mesh)
	 * @see saddlebar.model.commission.CommissionPackage#getToneCalibration_Mesh()
	 * @see saddlebar.model.commission.Mesh#getCalibrations
	 * @model opposite="calibrations"
	 * @generated
	 */
	Mesh getMesh();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ToneCalibration#getMesh <em>Mesh</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mesh</em>' reference.
	 * @see #getMesh()
	 * @generated
	 */
	void setMesh(Mesh value);

	/**
	 * Returns the value of the '<em><b>Paint</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Paint</em>' reference.
	 * @see #setPaint(Paint)
	 * @see saddlebar.model.commission.CommissionPackage#getToneCalibration_Paint()
	 * @model
	 * @generated
	 */
	Paint getPaint();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ToneCalibration#getPaint <em>Paint</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Paint</em>' reference.
	 * @see #getPaint()
	 * @generated
	 */
	void setPaint(Paint value);

	/**
	 * Returns the value of the '<em><b>Printer</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Printer</em>' reference.
	 * @see #setPrinter(Printer)
	 * @see saddlebar.model.commission.CommissionPackage#getToneCalibration_Printer()
	 * @model
	 * @generated
	 */
	Printer getPrinter();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ToneCalibration#getPrinter <em>Printer</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Printer</em>' reference.
	 * @see #getPrinter()
	 * @generated
	 */
	void setPrinter(Printer value);

	/**
	 * Returns the value of the '<em><b>Method</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Method</em>' attribute.
	 * @see #setMethod(String)
	 * @see saddlebar.model.commission.CommissionPackage#getToneCalibration_Method()
	 * @model
	 * @generated
	 */
	String getMethod();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ToneCalibration#getMethod <em>Method</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Method</em>' attribute.
	 * @see #getMethod()
	 * @generated
	 */
	void setMethod(String value);

	/**
	 * Returns the value of the '<em><b>Process Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Process Key</em>' attribute.
	 * @see #setProcessKey(String)
	 * @see saddlebar.model.commission.CommissionPackage#getToneCalibration_ProcessKey()
	 * @model
	 * @generated
	 */
	String getProcessKey();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ToneCalibration#getProcessKey <em>Process Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Process Key</em>' attribute.
	 * @see #getProcessKey()
	 * @generated
	 */
	void setProcessKey(String value);

	/**
	 * Returns the value of the '<em><b>Lpi</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lpi</em>' attribute.
	 * @see #setLpi(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getToneCalibration_Lpi()
	 * @model
	 * @generated
	 */
	Double getLpi();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ToneCalibration#getLpi <em>Lpi</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lpi</em>' attribute.
	 * @see #getLpi()
	 * @generated
	 */
	void setLpi(Double value);

	/**
	 * Returns the value of the '<em><b>Dot Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Dot Mm</em>' attribute.
	 * @see #setDotMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getToneCalibration_DotMm()
	 * @model
	 * @generated
	 */
	Double getDotMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ToneCalibration#getDotMm <em>Dot Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dot Mm</em>' attribute.
	 * @see #getDotMm()
	 * @generated
	 */
	void setDotMm(Double value);

	/**
	 * Returns the value of the '<em><b>Measured</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Measured</em>' attribute.
	 * @see #setMeasured(LocalDate)
	 * @see saddlebar.model.commission.CommissionPackage#getToneCalibration_Measured()
	 * @model dataType="saddlebar.model.commission.Day"
	 * @generated
	 */
	LocalDate getMeasured();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ToneCalibration#getMeasured <em>Measured</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Measured</em>' attribute.
	 * @see #getMeasured()
	 * @generated
	 */
	void setMeasured(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Readings File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Readings File</em>' attribute.
	 * @see #setReadingsFile(String)
	 * @see saddlebar.model.commission.CommissionPackage#getToneCalibration_ReadingsFile()
	 * @model
	 * @generated
	 */
	String getReadingsFile();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ToneCalibration#getReadingsFile <em>Readings File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Readings File</em>' attribute.
	 * @see #getReadingsFile()
	 * @generated
	 */
	void setReadingsFile(String value);

	/**
	 * Returns the value of the '<em><b>Points</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.TonePoint}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.TonePoint#getCalibration <em>Calibration</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Points</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getToneCalibration_Points()
	 * @see saddlebar.model.commission.TonePoint#getCalibration
	 * @model opposite="calibration" containment="true"
	 * @generated
	 */
	EList<TonePoint> getPoints();

	/**
	 * Returns the value of the '<em><b>Superseded By</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The newer one that recipes use instead of it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Superseded By</em>' reference.
	 * @see #setSupersededBy(ToneCalibration)
	 * @see saddlebar.model.commission.CommissionPackage#getToneCalibration_SupersededBy()
	 * @model
	 * @generated
	 */
	ToneCalibration getSupersededBy();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ToneCalibration#getSupersededBy <em>Superseded By</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Superseded By</em>' reference.
	 * @see #getSupersededBy()
	 * @generated
	 */
	void setSupersededBy(ToneCalibration value);

	/**
	 * Returns the value of the '<em><b>Yule Nielsen</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Yule-Nielsen factor with which densities were read: 1 for paint seen through glass.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Yule Nielsen</em>' attribute.
	 * @see #setYuleNielsen(double)
	 * @see saddlebar.model.commission.CommissionPackage#getToneCalibration_YuleNielsen()
	 * @model default="1"
	 * @generated
	 */
	double getYuleNielsen();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ToneCalibration#getYuleNielsen <em>Yule Nielsen</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Yule Nielsen</em>' attribute.
	 * @see #getYuleNielsen()
	 * @generated
	 */
	void setYuleNielsen(double value);

} // ToneCalibration
