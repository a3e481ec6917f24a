/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.math.BigDecimal;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Solder Stock</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.SolderStock#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.SolderStock#getTinShare <em>Tin Share</em>}</li>
 *   <li>{@link saddlebar.model.commission.SolderStock#isContainsLead <em>Contains Lead</em>}</li>
 *   <li>{@link saddlebar.model.commission.SolderStock#getDensityGPerCm3 <em>Density GPer Cm3</em>}</li>
 *   <li>{@link saddlebar.model.commission.SolderStock#getPricePerKg <em>Price Per Kg</em>}</li>
 *   <li>{@link saddlebar.model.commission.SolderStock#getSource <em>Source</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getSolderStock()
 * @model
 * @generated
 */
public interface SolderStock extends Named {
	/**
	 * Returns the value of the '<em><b>Studio</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Studio#getSolders <em>Solders</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Studio</em>' container reference.
	 * @see #setStudio(Studio)
	 * @see saddlebar.model.commission.CommissionPackage#getSolderStock_Studio()
	 * @see saddlebar.model.commission.Studio#getSolders
	 * @model opposite="solders" resolveProxies="false" transient="false"
	 * @generated
	 */
	Studio getStudio();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.SolderStock#getStudio <em>Studio</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Studio</em>' container reference.
	 * @see #getStudio()
	 * @generated
	 */
	void setStudio(Studio value);

	/**
	 * Returns the value of the '<em><b>Tin Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mass share of tin, 0 to 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tin Share</em>' attribute.
	 * @see #setTinShare(double)
	 * @see saddlebar.model.commission.CommissionPackage#getSolderStock_TinShare()
	 * @model
	 * @generated
	 */
	double getTinShare();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.SolderStock#getTinShare <em>Tin Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tin Share</em>' attribute.
	 * @see #getTinShare()
	 * @generated
	 */
	void setTinShare(double value);

	/**
	 * Returns the value of the '<em><b>Contains Lead</b></em>' attribute.
	 * The default value is <code>"true"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Contains Lead</em>' attribute.
	 * @see #setContainsLead(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getSolderStock_ContainsLead()
	 * @model default="true"
	 * @generated
	 */
	boolean isContainsLead();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.SolderStock#isContainsLead <em>Contains Lead</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Contains Lead</em>' attribute.
	 * @see #isContainsLead()
	 * @generated
	 */
	void setContainsLead(boolean value);

	/**
	 * Returns the value of the '<em><b>Density GPer Cm3</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Density GPer Cm3</em>' attribute.
	 * @see #setDensityGPerCm3(double)
	 * @see saddlebar.model.commission.CommissionPackage#getSolderStock_DensityGPerCm3()
	 * @model
	 * @generated
	 */
	double getDensityGPerCm3();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.SolderStock#getDensityGPerCm3 <em>Density GPer Cm3</em>}' attribute.
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
	 * @see saddlebar.model.commission.CommissionPackage#getSolderStock_PricePerKg()
	 * @model
	 * @generated
	 */
	BigDecimal getPricePerKg();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.SolderStock#getPricePerKg <em>Price Per Kg</em>}' attribute.
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
	 * @see saddlebar.model.commission.CommissionPackage#getSolderStock_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.SolderStock#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

} // SolderStock
