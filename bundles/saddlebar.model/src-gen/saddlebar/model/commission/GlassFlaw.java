/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.ecore.EObject;

import saddlebar.model.art.OutlineMm;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Glass Flaw</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A place on a sheet that no piece may have: bubble, scratch, stone, chipped corner.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.GlassFlaw#getSheet <em>Sheet</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassFlaw#getKind <em>Kind</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassFlaw#getOutline <em>Outline</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getGlassFlaw()
 * @model
 * @generated
 */
public interface GlassFlaw extends EObject {
	/**
	 * Returns the value of the '<em><b>Sheet</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.StockSheet#getFlaws <em>Flaws</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sheet</em>' container reference.
	 * @see #setSheet(StockSheet)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassFlaw_Sheet()
	 * @see saddlebar.model.commission.StockSheet#getFlaws
	 * @model opposite="flaws" resolveProxies="false" transient="false"
	 * @generated
	 */
	StockSheet getSheet();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassFlaw#getSheet <em>Sheet</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sheet</em>' container reference.
	 * @see #getSheet()
	 * @generated
	 */
	void setSheet(StockSheet value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see #setKind(String)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassFlaw_Kind()
	 * @model
	 * @generated
	 */
	String getKind();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassFlaw#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see #getKind()
	 * @generated
	 */
	void setKind(String value);

	/**
	 * Returns the value of the '<em><b>Outline</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * On the sheet.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Outline</em>' attribute.
	 * @see #setOutline(OutlineMm)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassFlaw_Outline()
	 * @model dataType="saddlebar.model.commission.Outline"
	 * @generated
	 */
	OutlineMm getOutline();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassFlaw#getOutline <em>Outline</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Outline</em>' attribute.
	 * @see #getOutline()
	 * @generated
	 */
	void setOutline(OutlineMm value);

} // GlassFlaw
