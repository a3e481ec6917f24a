/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

import saddlebar.model.art.OutlineMm;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Stock Sheet</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One sheet or off-cut of glass on the shelf; name is what is chalked on it. Its own page: x right, y down from its top left.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.StockSheet#getGlass <em>Glass</em>}</li>
 *   <li>{@link saddlebar.model.commission.StockSheet#getWidthMm <em>Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.StockSheet#getHeightMm <em>Height Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.StockSheet#getOutline <em>Outline</em>}</li>
 *   <li>{@link saddlebar.model.commission.StockSheet#getGrainDeg <em>Grain Deg</em>}</li>
 *   <li>{@link saddlebar.model.commission.StockSheet#isOffcut <em>Offcut</em>}</li>
 *   <li>{@link saddlebar.model.commission.StockSheet#getCutFrom <em>Cut From</em>}</li>
 *   <li>{@link saddlebar.model.commission.StockSheet#isUsedUp <em>Used Up</em>}</li>
 *   <li>{@link saddlebar.model.commission.StockSheet#getFlaws <em>Flaws</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getStockSheet()
 * @model
 * @generated
 */
public interface StockSheet extends Named {
	/**
	 * Returns the value of the '<em><b>Glass</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.GlassStock#getSheets <em>Sheets</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Glass</em>' container reference.
	 * @see #setGlass(GlassStock)
	 * @see saddlebar.model.commission.CommissionPackage#getStockSheet_Glass()
	 * @see saddlebar.model.commission.GlassStock#getSheets
	 * @model opposite="sheets" resolveProxies="false" transient="false"
	 * @generated
	 */
	GlassStock getGlass();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StockSheet#getGlass <em>Glass</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Glass</em>' container reference.
	 * @see #getGlass()
	 * @generated
	 */
	void setGlass(GlassStock value);

	/**
	 * Returns the value of the '<em><b>Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Width Mm</em>' attribute.
	 * @see #setWidthMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getStockSheet_WidthMm()
	 * @model
	 * @generated
	 */
	double getWidthMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StockSheet#getWidthMm <em>Width Mm</em>}' attribute.
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
	 * @see saddlebar.model.commission.CommissionPackage#getStockSheet_HeightMm()
	 * @model
	 * @generated
	 */
	double getHeightMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StockSheet#getHeightMm <em>Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height Mm</em>' attribute.
	 * @see #getHeightMm()
	 * @generated
	 */
	void setHeightMm(double value);

	/**
	 * Returns the value of the '<em><b>Outline</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of an off-cut that is no rectangle; absent: the whole rectangle.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Outline</em>' attribute.
	 * @see #setOutline(OutlineMm)
	 * @see saddlebar.model.commission.CommissionPackage#getStockSheet_Outline()
	 * @model dataType="saddlebar.model.commission.Outline"
	 * @generated
	 */
	OutlineMm getOutline();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StockSheet#getOutline <em>Outline</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Outline</em>' attribute.
	 * @see #getOutline()
	 * @generated
	 */
	void setOutline(OutlineMm value);

	/**
	 * Returns the value of the '<em><b>Grain Deg</b></em>' attribute.
	 * The default value is <code>"90"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Direction of the grain on it, from x towards y.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Grain Deg</em>' attribute.
	 * @see #setGrainDeg(double)
	 * @see saddlebar.model.commission.CommissionPackage#getStockSheet_GrainDeg()
	 * @model default="90"
	 * @generated
	 */
	double getGrainDeg();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StockSheet#getGrainDeg <em>Grain Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Grain Deg</em>' attribute.
	 * @see #getGrainDeg()
	 * @generated
	 */
	void setGrainDeg(double value);

	/**
	 * Returns the value of the '<em><b>Offcut</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Left over from another sheet.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Offcut</em>' attribute.
	 * @see #setOffcut(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getStockSheet_Offcut()
	 * @model
	 * @generated
	 */
	boolean isOffcut();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StockSheet#isOffcut <em>Offcut</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Offcut</em>' attribute.
	 * @see #isOffcut()
	 * @generated
	 */
	void setOffcut(boolean value);

	/**
	 * Returns the value of the '<em><b>Cut From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Id of the sheet that it was left of.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Cut From</em>' attribute.
	 * @see #setCutFrom(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStockSheet_CutFrom()
	 * @model
	 * @generated
	 */
	String getCutFrom();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StockSheet#getCutFrom <em>Cut From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cut From</em>' attribute.
	 * @see #getCutFrom()
	 * @generated
	 */
	void setCutFrom(String value);

	/**
	 * Returns the value of the '<em><b>Used Up</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Cut up: no longer at hand.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Used Up</em>' attribute.
	 * @see #setUsedUp(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getStockSheet_UsedUp()
	 * @model
	 * @generated
	 */
	boolean isUsedUp();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StockSheet#isUsedUp <em>Used Up</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Used Up</em>' attribute.
	 * @see #isUsedUp()
	 * @generated
	 */
	void setUsedUp(boolean value);

	/**
	 * Returns the value of the '<em><b>Flaws</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.GlassFlaw}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.GlassFlaw#getSheet <em>Sheet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Flaws</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStockSheet_Flaws()
	 * @see saddlebar.model.commission.GlassFlaw#getSheet
	 * @model opposite="sheet" containment="true"
	 * @generated
	 */
	EList<GlassFlaw> getFlaws();

} // StockSheet
