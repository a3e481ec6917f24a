/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Made File</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A file that was derived, under made/.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.MadeFile#getWhat <em>What</em>}</li>
 *   <li>{@link saddlebar.model.commission.MadeFile#getFile <em>File</em>}</li>
 *   <li>{@link saddlebar.model.commission.MadeFile#getSha256 <em>Sha256</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getMadeFile()
 * @model
 * @generated
 */
public interface MadeFile extends EObject {
	/**
	 * Returns the value of the '<em><b>What</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Such as stencil, proof, sheet, cutting list.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>What</em>' attribute.
	 * @see #setWhat(String)
	 * @see saddlebar.model.commission.CommissionPackage#getMadeFile_What()
	 * @model
	 * @generated
	 */
	String getWhat();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.MadeFile#getWhat <em>What</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>What</em>' attribute.
	 * @see #getWhat()
	 * @generated
	 */
	void setWhat(String value);

	/**
	 * Returns the value of the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Path relative to the commission's folder.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>File</em>' attribute.
	 * @see #setFile(String)
	 * @see saddlebar.model.commission.CommissionPackage#getMadeFile_File()
	 * @model
	 * @generated
	 */
	String getFile();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.MadeFile#getFile <em>File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>File</em>' attribute.
	 * @see #getFile()
	 * @generated
	 */
	void setFile(String value);

	/**
	 * Returns the value of the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sha256</em>' attribute.
	 * @see #setSha256(String)
	 * @see saddlebar.model.commission.CommissionPackage#getMadeFile_Sha256()
	 * @model
	 * @generated
	 */
	String getSha256();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.MadeFile#getSha256 <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sha256</em>' attribute.
	 * @see #getSha256()
	 * @generated
	 */
	void setSha256(String value);

} // MadeFile
