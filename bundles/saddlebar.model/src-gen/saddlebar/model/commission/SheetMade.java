/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Sheet Made</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * kind sheet
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.SheetMade#getSheetId <em>Sheet Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.SheetMade#getNumber <em>Number</em>}</li>
 *   <li>{@link saddlebar.model.commission.SheetMade#getStencilIds <em>Stencil Ids</em>}</li>
 *   <li>{@link saddlebar.model.commission.SheetMade#getInputSha256 <em>Input Sha256</em>}</li>
 *   <li>{@link saddlebar.model.commission.SheetMade#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link saddlebar.model.commission.SheetMade#getFiles <em>Files</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getSheetMade()
 * @model
 * @generated
 */
public interface SheetMade extends MakingRecord {
	/**
	 * Returns the value of the '<em><b>Sheet Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sheet Id</em>' attribute.
	 * @see #setSheetId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getSheetMade_SheetId()
	 * @model
	 * @generated
	 */
	String getSheetId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.SheetMade#getSheetId <em>Sheet Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sheet Id</em>' attribute.
	 * @see #getSheetId()
	 * @generated
	 */
	void setSheetId(String value);

	/**
	 * Returns the value of the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Number</em>' attribute.
	 * @see #setNumber(int)
	 * @see saddlebar.model.commission.CommissionPackage#getSheetMade_Number()
	 * @model
	 * @generated
	 */
	int getNumber();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.SheetMade#getNumber <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Number</em>' attribute.
	 * @see #getNumber()
	 * @generated
	 */
	void setNumber(int value);

	/**
	 * Returns the value of the '<em><b>Stencil Ids</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stencil Ids</em>' attribute list.
	 * @see saddlebar.model.commission.CommissionPackage#getSheetMade_StencilIds()
	 * @model
	 * @generated
	 */
	EList<String> getStencilIds();

	/**
	 * Returns the value of the '<em><b>Input Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Input Sha256</em>' attribute.
	 * @see #setInputSha256(String)
	 * @see saddlebar.model.commission.CommissionPackage#getSheetMade_InputSha256()
	 * @model
	 * @generated
	 */
	String getInputSha256();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.SheetMade#getInputSha256 <em>Input Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Input Sha256</em>' attribute.
	 * @see #getInputSha256()
	 * @generated
	 */
	void setInputSha256(String value);

	/**
	 * Returns the value of the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sha256</em>' attribute.
	 * @see #setSha256(String)
	 * @see saddlebar.model.commission.CommissionPackage#getSheetMade_Sha256()
	 * @model
	 * @generated
	 */
	String getSha256();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.SheetMade#getSha256 <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sha256</em>' attribute.
	 * @see #getSha256()
	 * @generated
	 */
	void setSha256(String value);

	/**
	 * Returns the value of the '<em><b>Files</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.MadeFile}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Files</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getSheetMade_Files()
	 * @model containment="true"
	 * @generated
	 */
	EList<MadeFile> getFiles();

} // SheetMade
