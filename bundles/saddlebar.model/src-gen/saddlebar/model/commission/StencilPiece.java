/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Stencil Piece</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A piece printed through this stencil: the panel's page turned by rotationDeg, then moved by xMm, yMm, is the stencil.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.StencilPiece#getStencil <em>Stencil</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilPiece#getPiece <em>Piece</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilPiece#getXMm <em>XMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilPiece#getYMm <em>YMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilPiece#getRotationDeg <em>Rotation Deg</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilPiece#getSpot <em>Spot</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilPiece#getPrints <em>Prints</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getStencilPiece()
 * @model
 * @generated
 */
public interface StencilPiece extends EObject {
	/**
	 * Returns the value of the '<em><b>Stencil</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Stencil#getPieces <em>Pieces</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stencil</em>' container reference.
	 * @see #setStencil(Stencil)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilPiece_Stencil()
	 * @see saddlebar.model.commission.Stencil#getPieces
	 * @model opposite="pieces" resolveProxies="false" transient="false"
	 * @generated
	 */
	Stencil getStencil();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilPiece#getStencil <em>Stencil</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stencil</em>' container reference.
	 * @see #getStencil()
	 * @generated
	 */
	void setStencil(Stencil value);

	/**
	 * Returns the value of the '<em><b>Piece</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Piece</em>' reference.
	 * @see #setPiece(Piece)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilPiece_Piece()
	 * @model
	 * @generated
	 */
	Piece getPiece();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilPiece#getPiece <em>Piece</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Piece</em>' reference.
	 * @see #getPiece()
	 * @generated
	 */
	void setPiece(Piece value);

	/**
	 * Returns the value of the '<em><b>XMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>XMm</em>' attribute.
	 * @see #setXMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilPiece_XMm()
	 * @model
	 * @generated
	 */
	double getXMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilPiece#getXMm <em>XMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>XMm</em>' attribute.
	 * @see #getXMm()
	 * @generated
	 */
	void setXMm(double value);

	/**
	 * Returns the value of the '<em><b>YMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>YMm</em>' attribute.
	 * @see #setYMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilPiece_YMm()
	 * @model
	 * @generated
	 */
	double getYMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilPiece#getYMm <em>YMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>YMm</em>' attribute.
	 * @see #getYMm()
	 * @generated
	 */
	void setYMm(double value);

	/**
	 * Returns the value of the '<em><b>Rotation Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Rotation Deg</em>' attribute.
	 * @see #setRotationDeg(double)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilPiece_RotationDeg()
	 * @model
	 * @generated
	 */
	double getRotationDeg();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilPiece#getRotationDeg <em>Rotation Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rotation Deg</em>' attribute.
	 * @see #getRotationDeg()
	 * @generated
	 */
	void setRotationDeg(double value);

	/**
	 * Returns the value of the '<em><b>Spot</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Place in the stencil; pieces alike share one.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Spot</em>' attribute.
	 * @see #setSpot(int)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilPiece_Spot()
	 * @model
	 * @generated
	 */
	int getSpot();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilPiece#getSpot <em>Spot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Spot</em>' attribute.
	 * @see #getSpot()
	 * @generated
	 */
	void setSpot(int value);

	/**
	 * Returns the value of the '<em><b>Prints</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Prints</em>' attribute.
	 * @see #setPrints(int)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilPiece_Prints()
	 * @model default="1"
	 * @generated
	 */
	int getPrints();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilPiece#getPrints <em>Prints</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Prints</em>' attribute.
	 * @see #getPrints()
	 * @generated
	 */
	void setPrints(int value);

} // StencilPiece
