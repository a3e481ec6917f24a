/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.math.BigDecimal;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Sheet Stock</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.SheetStock#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.SheetStock#getMaterial <em>Material</em>}</li>
 *   <li>{@link saddlebar.model.commission.SheetStock#getPaper <em>Paper</em>}</li>
 *   <li>{@link saddlebar.model.commission.SheetStock#getInStock <em>In Stock</em>}</li>
 *   <li>{@link saddlebar.model.commission.SheetStock#getPricePerSheet <em>Price Per Sheet</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getSheetStock()
 * @model
 * @generated
 */
public interface SheetStock extends Named {
	/**
	 * Returns the value of the '<em><b>Studio</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Studio#getSheetStock <em>Sheet Stock</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Studio</em>' container reference.
	 * @see #setStudio(Studio)
	 * @see saddlebar.model.commission.CommissionPackage#getSheetStock_Studio()
	 * @see saddlebar.model.commission.Studio#getSheetStock
	 * @model opposite="sheetStock" resolveProxies="false" transient="false"
	 * @generated
	 */
	Studio getStudio();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.SheetStock#getStudio <em>Studio</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Studio</em>' container reference.
	 * @see #getStudio()
	 * @generated
	 */
	void setStudio(Studio value);

	/**
	 * Returns the value of the '<em><b>Material</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.SheetMaterial}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Material</em>' attribute.
	 * @see saddlebar.model.commission.SheetMaterial
	 * @see #setMaterial(SheetMaterial)
	 * @see saddlebar.model.commission.CommissionPackage#getSheetStock_Material()
	 * @model
	 * @generated
	 */
	SheetMaterial getMaterial();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.SheetStock#getMaterial <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' attribute.
	 * @see saddlebar.model.commission.SheetMaterial
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(SheetMaterial value);

	/**
	 * Returns the value of the '<em><b>Paper</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Name of the paper size.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Paper</em>' attribute.
	 * @see #setPaper(String)
	 * @see saddlebar.model.commission.CommissionPackage#getSheetStock_Paper()
	 * @model
	 * @generated
	 */
	String getPaper();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.SheetStock#getPaper <em>Paper</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Paper</em>' attribute.
	 * @see #getPaper()
	 * @generated
	 */
	void setPaper(String value);

	/**
	 * Returns the value of the '<em><b>In Stock</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>In Stock</em>' attribute.
	 * @see #setInStock(int)
	 * @see saddlebar.model.commission.CommissionPackage#getSheetStock_InStock()
	 * @model
	 * @generated
	 */
	int getInStock();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.SheetStock#getInStock <em>In Stock</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>In Stock</em>' attribute.
	 * @see #getInStock()
	 * @generated
	 */
	void setInStock(int value);

	/**
	 * Returns the value of the '<em><b>Price Per Sheet</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Price Per Sheet</em>' attribute.
	 * @see #setPricePerSheet(BigDecimal)
	 * @see saddlebar.model.commission.CommissionPackage#getSheetStock_PricePerSheet()
	 * @model
	 * @generated
	 */
	BigDecimal getPricePerSheet();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.SheetStock#getPricePerSheet <em>Price Per Sheet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Price Per Sheet</em>' attribute.
	 * @see #getPricePerSheet()
	 * @generated
	 */
	void setPricePerSheet(BigDecimal value);

} // SheetStock
