/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Document Made</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * kind document
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.DocumentMade#getWhat <em>What</em>}</li>
 *   <li>{@link saddlebar.model.commission.DocumentMade#getFiles <em>Files</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getDocumentMade()
 * @model
 * @generated
 */
public interface DocumentMade extends MakingRecord {
	/**
	 * Returns the value of the '<em><b>What</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>What</em>' attribute.
	 * @see #setWhat(String)
	 * @see saddlebar.model.commission.CommissionPackage#getDocumentMade_What()
	 * @model
	 * @generated
	 */
	String getWhat();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.DocumentMade#getWhat <em>What</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>What</em>' attribute.
	 * @see #getWhat()
	 * @generated
	 */
	void setWhat(String value);

	/**
	 * Returns the value of the '<em><b>Files</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.MadeFile}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Files</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getDocumentMade_Files()
	 * @model containment="true"
	 * @generated
	 */
	EList<MadeFile> getFiles();

} // DocumentMade
