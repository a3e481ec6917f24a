/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.time.LocalDate;
import org.eclipse.emf.common.util.EList;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Printer</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A laser printer for sheets.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Printer#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.Printer#getDpi <em>Dpi</em>}</li>
 *   <li>{@link saddlebar.model.commission.Printer#getMarginMm <em>Margin Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Printer#getScaleX <em>Scale X</em>}</li>
 *   <li>{@link saddlebar.model.commission.Printer#getScaleY <em>Scale Y</em>}</li>
 *   <li>{@link saddlebar.model.commission.Printer#getSource <em>Source</em>}</li>
 *   <li>{@link saddlebar.model.commission.Printer#getSkew <em>Skew</em>}</li>
 *   <li>{@link saddlebar.model.commission.Printer#getMeasured <em>Measured</em>}</li>
 *   <li>{@link saddlebar.model.commission.Printer#getBandPeriodsMm <em>Band Periods Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Printer#getSolidTransmittance <em>Solid Transmittance</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getPrinter()
 * @model
 * @generated
 */
public interface Printer extends Named {
	/**
	 * Returns the value of the '<em><b>Studio</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Studio#getPrinters <em>Printers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Studio</em>' container reference.
	 * @see #setStudio(Studio)
	 * @see saddlebar.model.commission.CommissionPackage#getPrinter_Studio()
	 * @see saddlebar.model.commission.Studio#getPrinters
	 * @model opposite="printers" resolveProxies="false" transient="false"
	 * @generated
	 */
	Studio getStudio();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Printer#getStudio <em>Studio</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Studio</em>' container reference.
	 * @see #getStudio()
	 * @generated
	 */
	void setStudio(Studio value);

	/**
	 * Returns the value of the '<em><b>Dpi</b></em>' attribute.
	 * The default value is <code>"1200"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Dpi</em>' attribute.
	 * @see #setDpi(int)
	 * @see saddlebar.model.commission.CommissionPackage#getPrinter_Dpi()
	 * @model default="1200"
	 * @generated
	 */
	int getDpi();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Printer#getDpi <em>Dpi</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dpi</em>' attribute.
	 * @see #getDpi()
	 * @generated
	 */
	void setDpi(int value);

	/**
	 * Returns the value of the '<em><b>Margin Mm</b></em>' attribute.
	 * The default value is <code>"4.3"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Unprintable on each side.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Margin Mm</em>' attribute.
	 * @see #setMarginMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getPrinter_MarginMm()
	 * @model default="4.3"
	 * @generated
	 */
	double getMarginMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Printer#getMarginMm <em>Margin Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Margin Mm</em>' attribute.
	 * @see #getMarginMm()
	 * @generated
	 */
	void setMarginMm(double value);

	/**
	 * Returns the value of the '<em><b>Scale X</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Measured length over true length, across.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Scale X</em>' attribute.
	 * @see #setScaleX(double)
	 * @see saddlebar.model.commission.CommissionPackage#getPrinter_ScaleX()
	 * @model default="1"
	 * @generated
	 */
	double getScaleX();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Printer#getScaleX <em>Scale X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Scale X</em>' attribute.
	 * @see #getScaleX()
	 * @generated
	 */
	void setScaleX(double value);

	/**
	 * Returns the value of the '<em><b>Scale Y</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Measured length over true length, along the feed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Scale Y</em>' attribute.
	 * @see #setScaleY(double)
	 * @see saddlebar.model.commission.CommissionPackage#getPrinter_ScaleY()
	 * @model default="1"
	 * @generated
	 */
	double getScaleY();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Printer#getScaleY <em>Scale Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Scale Y</em>' attribute.
	 * @see #getScaleY()
	 * @generated
	 */
	void setScaleY(double value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPrinter_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Printer#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

	/**
	 * Returns the value of the '<em><b>Skew</b></em>' attribute.
	 * The default value is <code>"0"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How far a line that should run down leans to the right, in mm a mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Skew</em>' attribute.
	 * @see #setSkew(double)
	 * @see saddlebar.model.commission.CommissionPackage#getPrinter_Skew()
	 * @model default="0"
	 * @generated
	 */
	double getSkew();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Printer#getSkew <em>Skew</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Skew</em>' attribute.
	 * @see #getSkew()
	 * @generated
	 */
	void setSkew(double value);

	/**
	 * Returns the value of the '<em><b>Measured</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When scale and skew were last measured on a test page.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Measured</em>' attribute.
	 * @see #setMeasured(LocalDate)
	 * @see saddlebar.model.commission.CommissionPackage#getPrinter_Measured()
	 * @model dataType="saddlebar.model.commission.Day"
	 * @generated
	 */
	LocalDate getMeasured();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Printer#getMeasured <em>Measured</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Measured</em>' attribute.
	 * @see #getMeasured()
	 * @generated
	 */
	void setMeasured(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Band Periods Mm</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.Double}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Distances of bands along the feed that were seen on a flat tone: periods of the engine.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Band Periods Mm</em>' attribute list.
	 * @see saddlebar.model.commission.CommissionPackage#getPrinter_BandPeriodsMm()
	 * @model
	 * @generated
	 */
	EList<Double> getBandPeriodsMm();

	/**
	 * Returns the value of the '<em><b>Solid Transmittance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of the light that a solid of toner lets through, as last judged.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Solid Transmittance</em>' attribute.
	 * @see #setSolidTransmittance(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getPrinter_SolidTransmittance()
	 * @model
	 * @generated
	 */
	Double getSolidTransmittance();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Printer#getSolidTransmittance <em>Solid Transmittance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Solid Transmittance</em>' attribute.
	 * @see #getSolidTransmittance()
	 * @generated
	 */
	void setSolidTransmittance(Double value);

} // Printer
