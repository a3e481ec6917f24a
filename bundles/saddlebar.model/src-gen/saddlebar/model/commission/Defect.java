/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Defect</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * kind defect
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Defect#getWindowId <em>Window Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.Defect#getPieceId <em>Piece Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.Defect#getLayerId <em>Layer Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.Defect#getDefectKind <em>Defect Kind</em>}</li>
 *   <li>{@link saddlebar.model.commission.Defect#getFoundAt <em>Found At</em>}</li>
 *   <li>{@link saddlebar.model.commission.Defect#getSeverity <em>Severity</em>}</li>
 *   <li>{@link saddlebar.model.commission.Defect#getXMm <em>XMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Defect#getYMm <em>YMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Defect#getPhoto <em>Photo</em>}</li>
 *   <li>{@link saddlebar.model.commission.Defect#getSuspectedCause <em>Suspected Cause</em>}</li>
 *   <li>{@link saddlebar.model.commission.Defect#getDisposition <em>Disposition</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getDefect()
 * @model
 * @generated
 */
public interface Defect extends MakingRecord {
	/**
	 * Returns the value of the '<em><b>Window Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Window Id</em>' attribute.
	 * @see #setWindowId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getDefect_WindowId()
	 * @model
	 * @generated
	 */
	String getWindowId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Defect#getWindowId <em>Window Id</em>}' attribute.
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
	 * @see saddlebar.model.commission.CommissionPackage#getDefect_PieceId()
	 * @model
	 * @generated
	 */
	String getPieceId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Defect#getPieceId <em>Piece Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Piece Id</em>' attribute.
	 * @see #getPieceId()
	 * @generated
	 */
	void setPieceId(String value);

	/**
	 * Returns the value of the '<em><b>Layer Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Layer Id</em>' attribute.
	 * @see #setLayerId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getDefect_LayerId()
	 * @model
	 * @generated
	 */
	String getLayerId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Defect#getLayerId <em>Layer Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Layer Id</em>' attribute.
	 * @see #getLayerId()
	 * @generated
	 */
	void setLayerId(String value);

	/**
	 * Returns the value of the '<em><b>Defect Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Key in the catalogue of defects.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Defect Kind</em>' attribute.
	 * @see #setDefectKind(String)
	 * @see saddlebar.model.commission.CommissionPackage#getDefect_DefectKind()
	 * @model
	 * @generated
	 */
	String getDefectKind();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Defect#getDefectKind <em>Defect Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Defect Kind</em>' attribute.
	 * @see #getDefectKind()
	 * @generated
	 */
	void setDefectKind(String value);

	/**
	 * Returns the value of the '<em><b>Found At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Stage at which it was seen.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Found At</em>' attribute.
	 * @see #setFoundAt(String)
	 * @see saddlebar.model.commission.CommissionPackage#getDefect_FoundAt()
	 * @model
	 * @generated
	 */
	String getFoundAt();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Defect#getFoundAt <em>Found At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Found At</em>' attribute.
	 * @see #getFoundAt()
	 * @generated
	 */
	void setFoundAt(String value);

	/**
	 * Returns the value of the '<em><b>Severity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Severity</em>' attribute.
	 * @see #setSeverity(String)
	 * @see saddlebar.model.commission.CommissionPackage#getDefect_Severity()
	 * @model
	 * @generated
	 */
	String getSeverity();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Defect#getSeverity <em>Severity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Severity</em>' attribute.
	 * @see #getSeverity()
	 * @generated
	 */
	void setSeverity(String value);

	/**
	 * Returns the value of the '<em><b>XMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>XMm</em>' attribute.
	 * @see #setXMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getDefect_XMm()
	 * @model
	 * @generated
	 */
	Double getXMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Defect#getXMm <em>XMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>XMm</em>' attribute.
	 * @see #getXMm()
	 * @generated
	 */
	void setXMm(Double value);

	/**
	 * Returns the value of the '<em><b>YMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>YMm</em>' attribute.
	 * @see #setYMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getDefect_YMm()
	 * @model
	 * @generated
	 */
	Double getYMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Defect#getYMm <em>YMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>YMm</em>' attribute.
	 * @see #getYMm()
	 * @generated
	 */
	void setYMm(Double value);

	/**
	 * Returns the value of the '<em><b>Photo</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Photo</em>' attribute.
	 * @see #setPhoto(String)
	 * @see saddlebar.model.commission.CommissionPackage#getDefect_Photo()
	 * @model
	 * @generated
	 */
	String getPhoto();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Defect#getPhoto <em>Photo</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Photo</em>' attribute.
	 * @see #getPhoto()
	 * @generated
	 */
	void setPhoto(String value);

	/**
	 * Returns the value of the '<em><b>Suspected Cause</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Suspected Cause</em>' attribute.
	 * @see #setSuspectedCause(String)
	 * @see saddlebar.model.commission.CommissionPackage#getDefect_SuspectedCause()
	 * @model
	 * @generated
	 */
	String getSuspectedCause();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Defect#getSuspectedCause <em>Suspected Cause</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Suspected Cause</em>' attribute.
	 * @see #getSuspectedCause()
	 * @generated
	 */
	void setSuspectedCause(String value);

	/**
	 * Returns the value of the '<em><b>Disposition</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.Disposition}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Disposition</em>' attribute.
	 * @see saddlebar.model.commission.Disposition
	 * @see #setDisposition(Disposition)
	 * @see saddlebar.model.commission.CommissionPackage#getDefect_Disposition()
	 * @model
	 * @generated
	 */
	Disposition getDisposition();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Defect#getDisposition <em>Disposition</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Disposition</em>' attribute.
	 * @see saddlebar.model.commission.Disposition
	 * @see #getDisposition()
	 * @generated
	 */
	void setDisposition(Disposition value);

} // Defect
