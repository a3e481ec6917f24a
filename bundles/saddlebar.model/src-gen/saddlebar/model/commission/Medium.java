/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.math.BigDecimal;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Medium</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Medium#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.Medium#getBase <em>Base</em>}</li>
 *   <li>{@link saddlebar.model.commission.Medium#getDensityGPerCm3 <em>Density GPer Cm3</em>}</li>
 *   <li>{@link saddlebar.model.commission.Medium#getPricePerKg <em>Price Per Kg</em>}</li>
 *   <li>{@link saddlebar.model.commission.Medium#getSource <em>Source</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getMedium()
 * @model
 * @generated
 */
public interface Medium extends Named {
	/**
	 * Returns the value of the '<em><b>Studio</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Studio#getMedia <em>Media</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Studio</em>' container reference.
	 * @see #setStudio(Studio)
	 * @see saddlebar.model.commission.CommissionPackage#getMedium_Studio()
	 * @see saddlebar.model.commission.Studio#getMedia
	 * @model opposite="media" resolveProxies="false" transient="false"
	 * @generated
	 */
	Studio getStudio();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Medium#getStudio <em>Studio</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Studio</em>' container reference.
	 * @see #getStudio()
	 * @generated
	 */
	void setStudio(Studio value);

	/**
	 * Returns the value of the '<em><b>Base</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.MediumBase}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Base</em>' attribute.
	 * @see saddlebar.model.commission.MediumBase
	 * @see #setBase(MediumBase)
	 * @see saddlebar.model.commission.CommissionPackage#getMedium_Base()
	 * @model
	 * @generated
	 */
	MediumBase getBase();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Medium#getBase <em>Base</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Base</em>' attribute.
	 * @see saddlebar.model.commission.MediumBase
	 * @see #getBase()
	 * @generated
	 */
	void setBase(MediumBase value);

	/**
	 * Returns the value of the '<em><b>Density GPer Cm3</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Density GPer Cm3</em>' attribute.
	 * @see #setDensityGPerCm3(double)
	 * @see saddlebar.model.commission.CommissionPackage#getMedium_DensityGPerCm3()
	 * @model
	 * @generated
	 */
	double getDensityGPerCm3();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Medium#getDensityGPerCm3 <em>Density GPer Cm3</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Density GPer Cm3</em>' attribute.
	 * @see #getDensityGPerCm3()
	 * @generated
	 */
	void setDensityGPerCm3(double value);

	/**
	 * Returns the value of the '<em><b>Price Per Kg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Price Per Kg</em>' attribute.
	 * @see #setPricePerKg(BigDecimal)
	 * @see saddlebar.model.commission.CommissionPackage#getMedium_PricePerKg()
	 * @model
	 * @generated
	 */
	BigDecimal getPricePerKg();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Medium#getPricePerKg <em>Price Per Kg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Price Per Kg</em>' attribute.
	 * @see #getPricePerKg()
	 * @generated
	 */
	void setPricePerKg(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see saddlebar.model.commission.CommissionPackage#getMedium_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Medium#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

} // Medium
