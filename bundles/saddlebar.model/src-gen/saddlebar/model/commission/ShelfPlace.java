/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Shelf Place</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.ShelfPlace#getWindowId <em>Window Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.ShelfPlace#getPieceId <em>Piece Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.ShelfPlace#getLayerIds <em>Layer Ids</em>}</li>
 *   <li>{@link saddlebar.model.commission.ShelfPlace#getPlace <em>Place</em>}</li>
 *   <li>{@link saddlebar.model.commission.ShelfPlace#getShelf <em>Shelf</em>}</li>
 *   <li>{@link saddlebar.model.commission.ShelfPlace#getXMm <em>XMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.ShelfPlace#getYMm <em>YMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.ShelfPlace#getRotationDeg <em>Rotation Deg</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getShelfPlace()
 * @model
 * @generated
 */
public interface ShelfPlace extends EObject {
	/**
	 * Returns the value of the '<em><b>Window Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Window Id</em>' attribute.
	 * @see #setWindowId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getShelfPlace_WindowId()
	 * @model
	 * @generated
	 */
	String getWindowId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ShelfPlace#getWindowId <em>Window Id</em>}' attribute.
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
	 * @see saddlebar.model.commission.CommissionPackage#getShelfPlace_PieceId()
	 * @model
	 * @generated
	 */
	String getPieceId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ShelfPlace#getPieceId <em>Piece Id</em>}' attribute.
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
	 * @see saddlebar.model.commission.CommissionPackage#getShelfPlace_LayerIds()
	 * @model
	 * @generated
	 */
	EList<String> getLayerIds();

	/**
	 * Returns the value of the '<em><b>Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * As written on the load card, such as 2C.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Place</em>' attribute.
	 * @see #setPlace(String)
	 * @see saddlebar.model.commission.CommissionPackage#getShelfPlace_Place()
	 * @model
	 * @generated
	 */
	String getPlace();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ShelfPlace#getPlace <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Place</em>' attribute.
	 * @see #getPlace()
	 * @generated
	 */
	void setPlace(String value);

	/**
	 * Returns the value of the '<em><b>Shelf</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Shelf</em>' attribute.
	 * @see #setShelf(int)
	 * @see saddlebar.model.commission.CommissionPackage#getShelfPlace_Shelf()
	 * @model default="1"
	 * @generated
	 */
	int getShelf();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ShelfPlace#getShelf <em>Shelf</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shelf</em>' attribute.
	 * @see #getShelf()
	 * @generated
	 */
	void setShelf(int value);

	/**
	 * Returns the value of the '<em><b>XMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>XMm</em>' attribute.
	 * @see #setXMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getShelfPlace_XMm()
	 * @model
	 * @generated
	 */
	Double getXMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ShelfPlace#getXMm <em>XMm</em>}' attribute.
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
	 * @see saddlebar.model.commission.CommissionPackage#getShelfPlace_YMm()
	 * @model
	 * @generated
	 */
	Double getYMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ShelfPlace#getYMm <em>YMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>YMm</em>' attribute.
	 * @see #getYMm()
	 * @generated
	 */
	void setYMm(Double value);

	/**
	 * Returns the value of the '<em><b>Rotation Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rotation Deg</em>' attribute.
	 * @see #setRotationDeg(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getShelfPlace_RotationDeg()
	 * @model
	 * @generated
	 */
	Double getRotationDeg();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ShelfPlace#getRotationDeg <em>Rotation Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rotation Deg</em>' attribute.
	 * @see #getRotationDeg()
	 * @generated
	 */
	void setRotationDeg(Double value);

} // ShelfPlace
