/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Pieces Made</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * kind pieces
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.PiecesMade#getWindowId <em>Window Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.PiecesMade#getPanelId <em>Panel Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.PiecesMade#getInputSha256 <em>Input Sha256</em>}</li>
 *   <li>{@link saddlebar.model.commission.PiecesMade#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link saddlebar.model.commission.PiecesMade#getPieces <em>Pieces</em>}</li>
 *   <li>{@link saddlebar.model.commission.PiecesMade#getFiles <em>Files</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getPiecesMade()
 * @model
 * @generated
 */
public interface PiecesMade extends MakingRecord {
	/**
	 * Returns the value of the '<em><b>Window Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Window Id</em>' attribute.
	 * @see #setWindowId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPiecesMade_WindowId()
	 * @model
	 * @generated
	 */
	String getWindowId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PiecesMade#getWindowId <em>Window Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Window Id</em>' attribute.
	 * @see #getWindowId()
	 * @generated
	 */
	void setWindowId(String value);

	/**
	 * Returns the value of the '<em><b>Panel Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Panel Id</em>' attribute.
	 * @see #setPanelId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPiecesMade_PanelId()
	 * @model
	 * @generated
	 */
	String getPanelId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PiecesMade#getPanelId <em>Panel Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Panel Id</em>' attribute.
	 * @see #getPanelId()
	 * @generated
	 */
	void setPanelId(String value);

	/**
	 * Returns the value of the '<em><b>Input Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Input Sha256</em>' attribute.
	 * @see #setInputSha256(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPiecesMade_InputSha256()
	 * @model
	 * @generated
	 */
	String getInputSha256();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PiecesMade#getInputSha256 <em>Input Sha256</em>}' attribute.
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
	 * @see saddlebar.model.commission.CommissionPackage#getPiecesMade_Sha256()
	 * @model
	 * @generated
	 */
	String getSha256();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PiecesMade#getSha256 <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sha256</em>' attribute.
	 * @see #getSha256()
	 * @generated
	 */
	void setSha256(String value);

	/**
	 * Returns the value of the '<em><b>Pieces</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Pieces</em>' attribute.
	 * @see #setPieces(int)
	 * @see saddlebar.model.commission.CommissionPackage#getPiecesMade_Pieces()
	 * @model
	 * @generated
	 */
	int getPieces();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PiecesMade#getPieces <em>Pieces</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pieces</em>' attribute.
	 * @see #getPieces()
	 * @generated
	 */
	void setPieces(int value);

	/**
	 * Returns the value of the '<em><b>Files</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.MadeFile}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Files</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getPiecesMade_Files()
	 * @model containment="true"
	 * @generated
	 */
	EList<MadeFile> getFiles();

} // PiecesMade
