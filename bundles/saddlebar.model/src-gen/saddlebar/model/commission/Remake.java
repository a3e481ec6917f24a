/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Remake</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * kind remake
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Remake#getWindowId <em>Window Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.Remake#getPieceId <em>Piece Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.Remake#getLayerIds <em>Layer Ids</em>}</li>
 *   <li>{@link saddlebar.model.commission.Remake#getDefectId <em>Defect Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.Remake#getReason <em>Reason</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getRemake()
 * @model
 * @generated
 */
public interface Remake extends MakingRecord {
	/**
	 * Returns the value of the '<em><b>Window Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Window Id</em>' attribute.
	 * @see #setWindowId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getRemake_WindowId()
	 * @model
	 * @generated
	 */
	String getWindowId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Remake#getWindowId <em>Window Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Window Id</em>' attribute.
	 * @see #getWindowId()
	 * @generated
	 */
	void setWindowId(String value);

	/**
	 * Returns the value of the '<em><b>Piece Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Piece Id</em>' attribute.
	 * @see #setPieceId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getRemake_PieceId()
	 * @model
	 * @generated
	 */
	String getPieceId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Remake#getPieceId <em>Piece Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Piece Id</em>' attribute.
	 * @see #getPieceId()
	 * @generated
	 */
	void setPieceId(String value);

	/**
	 * Returns the value of the '<em><b>Layer Ids</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Layer Ids</em>' attribute list.
	 * @see saddlebar.model.commission.CommissionPackage#getRemake_LayerIds()
	 * @model
	 * @generated
	 */
	EList<String> getLayerIds();

	/**
	 * Returns the value of the '<em><b>Defect Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Defect Id</em>' attribute.
	 * @see #setDefectId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getRemake_DefectId()
	 * @model
	 * @generated
	 */
	String getDefectId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Remake#getDefectId <em>Defect Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Defect Id</em>' attribute.
	 * @see #getDefectId()
	 * @generated
	 */
	void setDefectId(String value);

	/**
	 * Returns the value of the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Reason</em>' attribute.
	 * @see #setReason(String)
	 * @see saddlebar.model.commission.CommissionPackage#getRemake_Reason()
	 * @model
	 * @generated
	 */
	String getReason();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Remake#getReason <em>Reason</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reason</em>' attribute.
	 * @see #getReason()
	 * @generated
	 */
	void setReason(String value);

} // Remake
