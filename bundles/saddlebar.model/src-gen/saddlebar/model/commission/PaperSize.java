/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Paper Size</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.PaperSize#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.PaperSize#getWidthMm <em>Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.PaperSize#getHeightMm <em>Height Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.PaperSize#isInUse <em>In Use</em>}</li>
 *   <li>{@link saddlebar.model.commission.PaperSize#getSource <em>Source</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getPaperSize()
 * @model
 * @generated
 */
public interface PaperSize extends Named {
	/**
	 * Returns the value of the '<em><b>Studio</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Studio#getPapers <em>Papers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Studio</em>' container reference.
	 * @see #setStudio(Studio)
	 * @see saddlebar.model.commission.CommissionPackage#getPaperSize_Studio()
	 * @see saddlebar.model.commission.Studio#getPapers
	 * @model opposite="papers" resolveProxies="false" transient="false"
	 * @generated
	 */
	Studio getStudio();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PaperSize#getStudio <em>Studio</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Studio</em>' container reference.
	 * @see #getStudio()
	 * @generated
	 */
	void setStudio(Studio value);

	/**
	 * Returns the value of the '<em><b>Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Width Mm</em>' attribute.
	 * @see #setWidthMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getPaperSize_WidthMm()
	 * @model
	 * @generated
	 */
	double getWidthMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PaperSize#getWidthMm <em>Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width Mm</em>' attribute.
	 * @see #getWidthMm()
	 * @generated
	 */
	void setWidthMm(double value);

	/**
	 * Returns the value of the '<em><b>Height Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Height Mm</em>' attribute.
	 * @see #setHeightMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getPaperSize_HeightMm()
	 * @model
	 * @generated
	 */
	double getHeightMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PaperSize#getHeightMm <em>Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height Mm</em>' attribute.
	 * @see #getHeightMm()
	 * @generated
	 */
	void setHeightMm(double value);

	/**
	 * Returns the value of the '<em><b>In Use</b></em>' attribute.
	 * The default value is <code>"true"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>In Use</em>' attribute.
	 * @see #setInUse(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getPaperSize_InUse()
	 * @model default="true"
	 * @generated
	 */
	boolean isInUse();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PaperSize#isInUse <em>In Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>In Use</em>' attribute.
	 * @see #isInUse()
	 * @generated
	 */
	void setInUse(boolean value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPaperSize_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PaperSize#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

} // PaperSize
