/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Mended Place</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One narrow place of a layer that somebody decided to widen: a proposal taken.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.MendedPlace#getRecipe <em>Recipe</em>}</li>
 *   <li>{@link saddlebar.model.commission.MendedPlace#getKind <em>Kind</em>}</li>
 *   <li>{@link saddlebar.model.commission.MendedPlace#getXMm <em>XMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.MendedPlace#getYMm <em>YMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.MendedPlace#getWidthMm <em>Width Mm</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getMendedPlace()
 * @model
 * @generated
 */
public interface MendedPlace extends EObject {
	/**
	 * Returns the value of the '<em><b>Recipe</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.StencilRecipe#getMends <em>Mends</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Recipe</em>' container reference.
	 * @see #setRecipe(StencilRecipe)
	 * @see saddlebar.model.commission.CommissionPackage#getMendedPlace_Recipe()
	 * @see saddlebar.model.commission.StencilRecipe#getMends
	 * @model opposite="mends" resolveProxies="false" transient="false"
	 * @generated
	 */
	StencilRecipe getRecipe();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.MendedPlace#getRecipe <em>Recipe</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Recipe</em>' container reference.
	 * @see #getRecipe()
	 * @generated
	 */
	void setRecipe(StencilRecipe value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.MendKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see saddlebar.model.commission.MendKind
	 * @see #setKind(MendKind)
	 * @see saddlebar.model.commission.CommissionPackage#getMendedPlace_Kind()
	 * @model
	 * @generated
	 */
	MendKind getKind();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.MendedPlace#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see saddlebar.model.commission.MendKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(MendKind value);

	/**
	 * Returns the value of the '<em><b>XMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Place on the page of the panel.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>XMm</em>' attribute.
	 * @see #setXMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getMendedPlace_XMm()
	 * @model
	 * @generated
	 */
	double getXMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.MendedPlace#getXMm <em>XMm</em>}' attribute.
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
	 * <!-- begin-model-doc -->
	 * Place on the page of the panel.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>YMm</em>' attribute.
	 * @see #setYMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getMendedPlace_YMm()
	 * @model
	 * @generated
	 */
	double getYMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.MendedPlace#getYMm <em>YMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>YMm</em>' attribute.
	 * @see #getYMm()
	 * @generated
	 */
	void setYMm(double value);

	/**
	 * Returns the value of the '<em><b>Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Width that it is brought to.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Width Mm</em>' attribute.
	 * @see #setWidthMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getMendedPlace_WidthMm()
	 * @model
	 * @generated
	 */
	double getWidthMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.MendedPlace#getWidthMm <em>Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width Mm</em>' attribute.
	 * @see #getWidthMm()
	 * @generated
	 */
	void setWidthMm(double value);

} // MendedPlace
