/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Sheet</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One sheet of film or paper with the stencils ganged on it.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Sheet#getCommission <em>Commission</em>}</li>
 *   <li>{@link saddlebar.model.commission.Sheet#getNumber <em>Number</em>}</li>
 *   <li>{@link saddlebar.model.commission.Sheet#getPaper <em>Paper</em>}</li>
 *   <li>{@link saddlebar.model.commission.Sheet#getWidthMm <em>Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Sheet#getHeightMm <em>Height Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Sheet#getMarginMm <em>Margin Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Sheet#getProcessKey <em>Process Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.Sheet#getTonerSide <em>Toner Side</em>}</li>
 *   <li>{@link saddlebar.model.commission.Sheet#getDpi <em>Dpi</em>}</li>
 *   <li>{@link saddlebar.model.commission.Sheet#getPlacements <em>Placements</em>}</li>
 *   <li>{@link saddlebar.model.commission.Sheet#getFiles <em>Files</em>}</li>
 *   <li>{@link saddlebar.model.commission.Sheet#getContentKey <em>Content Key</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getSheet()
 * @model
 * @generated
 */
public interface Sheet extends Identified {
	/**
	 * Returns the value of the '<em><b>Commission</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Commission#getSheets <em>Sheets</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Commission</em>' container reference.
	 * @see #setCommission(Commission)
	 * @see saddlebar.model.commission.CommissionPackage#getSheet_Commission()
	 * @see saddlebar.model.commission.Commission#getSheets
	 * @model opposite="sheets" resolveProxies="false" transient="false"
	 * @generated
	 */
	Commission getCommission();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Sheet#getCommission <em>Commission</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Commission</em>' container reference.
	 * @see #getCommission()
	 * @generated
	 */
	void setCommission(Commission value);

	/**
	 * Returns the value of the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Number</em>' attribute.
	 * @see #setNumber(int)
	 * @see saddlebar.model.commission.CommissionPackage#getSheet_Number()
	 * @model
	 * @generated
	 */
	int getNumber();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Sheet#getNumber <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Number</em>' attribute.
	 * @see #getNumber()
	 * @generated
	 */
	void setNumber(int value);

	/**
	 * Returns the value of the '<em><b>Paper</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Name of the paper size.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Paper</em>' attribute.
	 * @see #setPaper(String)
	 * @see saddlebar.model.commission.CommissionPackage#getSheet_Paper()
	 * @model
	 * @generated
	 */
	String getPaper();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Sheet#getPaper <em>Paper</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Paper</em>' attribute.
	 * @see #getPaper()
	 * @generated
	 */
	void setPaper(String value);

	/**
	 * Returns the value of the '<em><b>Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Width Mm</em>' attribute.
	 * @see #setWidthMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getSheet_WidthMm()
	 * @model
	 * @generated
	 */
	double getWidthMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Sheet#getWidthMm <em>Width Mm</em>}' attribute.
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
	 * @see saddlebar.model.commission.CommissionPackage#getSheet_HeightMm()
	 * @model
	 * @generated
	 */
	double getHeightMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Sheet#getHeightMm <em>Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height Mm</em>' attribute.
	 * @see #getHeightMm()
	 * @generated
	 */
	void setHeightMm(double value);

	/**
	 * Returns the value of the '<em><b>Margin Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Margin Mm</em>' attribute.
	 * @see #setMarginMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getSheet_MarginMm()
	 * @model
	 * @generated
	 */
	double getMarginMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Sheet#getMarginMm <em>Margin Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Margin Mm</em>' attribute.
	 * @see #getMarginMm()
	 * @generated
	 */
	void setMarginMm(double value);

	/**
	 * Returns the value of the '<em><b>Process Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Process Key</em>' attribute.
	 * @see #setProcessKey(String)
	 * @see saddlebar.model.commission.CommissionPackage#getSheet_ProcessKey()
	 * @model
	 * @generated
	 */
	String getProcessKey();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Sheet#getProcessKey <em>Process Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Process Key</em>' attribute.
	 * @see #getProcessKey()
	 * @generated
	 */
	void setProcessKey(String value);

	/**
	 * Returns the value of the '<em><b>Toner Side</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.TonerSide}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Toner Side</em>' attribute.
	 * @see saddlebar.model.commission.TonerSide
	 * @see #setTonerSide(TonerSide)
	 * @see saddlebar.model.commission.CommissionPackage#getSheet_TonerSide()
	 * @model
	 * @generated
	 */
	TonerSide getTonerSide();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Sheet#getTonerSide <em>Toner Side</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Toner Side</em>' attribute.
	 * @see saddlebar.model.commission.TonerSide
	 * @see #getTonerSide()
	 * @generated
	 */
	void setTonerSide(TonerSide value);

	/**
	 * Returns the value of the '<em><b>Dpi</b></em>' attribute.
	 * The default value is <code>"1200"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Dpi</em>' attribute.
	 * @see #setDpi(int)
	 * @see saddlebar.model.commission.CommissionPackage#getSheet_Dpi()
	 * @model default="1200"
	 * @generated
	 */
	int getDpi();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Sheet#getDpi <em>Dpi</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dpi</em>' attribute.
	 * @see #getDpi()
	 * @generated
	 */
	void setDpi(int value);

	/**
	 * Returns the value of the '<em><b>Placements</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.Placement}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Placement#getSheet <em>Sheet</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Placements</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getSheet_Placements()
	 * @see saddlebar.model.commission.Placement#getSheet
	 * @model opposite="sheet" containment="true"
	 * @generated
	 */
	EList<Placement> getPlacements();

	/**
	 * Returns the value of the '<em><b>Files</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.MadeFile}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Files</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getSheet_Files()
	 * @model containment="true"
	 * @generated
	 */
	EList<MadeFile> getFiles();

	/**
	 * Returns the value of the '<em><b>Content Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Hash of all it was made from.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Content Key</em>' attribute.
	 * @see #setContentKey(String)
	 * @see saddlebar.model.commission.CommissionPackage#getSheet_ContentKey()
	 * @model
	 * @generated
	 */
	String getContentKey();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Sheet#getContentKey <em>Content Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Content Key</em>' attribute.
	 * @see #getContentKey()
	 * @generated
	 */
	void setContentKey(String value);

} // Sheet
