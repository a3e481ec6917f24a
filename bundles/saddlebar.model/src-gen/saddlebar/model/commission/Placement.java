/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Placement</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A stencil on a sheet: turned by rotationDeg about its own (0,0), then moved by xMm, yMm.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Placement#getSheet <em>Sheet</em>}</li>
 *   <li>{@link saddlebar.model.commission.Placement#getStencil <em>Stencil</em>}</li>
 *   <li>{@link saddlebar.model.commission.Placement#getXMm <em>XMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Placement#getYMm <em>YMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Placement#getRotationDeg <em>Rotation Deg</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getPlacement()
 * @model
 * @generated
 */
public interface Placement extends EObject {
	/**
	 * Returns the value of the '<em><b>Sheet</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Sheet#getPlacements <em>Placements</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sheet</em>' container reference.
	 * @see #setSheet(Sheet)
	 * @see saddlebar.model.commission.CommissionPackage#getPlacement_Sheet()
	 * @see saddlebar.model.commission.Sheet#getPlacements
	 * @model opposite="placements" resolveProxies="false" transient="false"
	 * @generated
	 */
	Sheet getSheet();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Placement#getSheet <em>Sheet</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sheet</em>' container reference.
	 * @see #getSheet()
	 * @generated
	 */
	void setSheet(Sheet value);

	/**
	 * Returns the value of the '<em><b>Stencil</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stencil</em>' reference.
	 * @see #setStencil(Stencil)
	 * @see saddlebar.model.commission.CommissionPackage#getPlacement_Stencil()
	 * @model
	 * @generated
	 */
	Stencil getStencil();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Placement#getStencil <em>Stencil</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stencil</em>' reference.
	 * @see #getStencil()
	 * @generated
	 */
	void setStencil(Stencil value);

	/**
	 * Returns the value of the '<em><b>XMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>XMm</em>' attribute.
	 * @see #setXMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getPlacement_XMm()
	 * @model
	 * @generated
	 */
	double getXMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Placement#getXMm <em>XMm</em>}' attribute.
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
	 * @see saddlebar.model.commission.CommissionPackage#getPlacement_YMm()
	 * @model
	 * @generated
	 */
	double getYMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Placement#getYMm <em>YMm</em>}' attribute.
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
	 * @see saddlebar.model.commission.CommissionPackage#getPlacement_RotationDeg()
	 * @model
	 * @generated
	 */
	double getRotationDeg();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Placement#getRotationDeg <em>Rotation Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rotation Deg</em>' attribute.
	 * @see #getRotationDeg()
	 * @generated
	 */
	void setRotationDeg(double value);

} // Placement
