/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Glass Choice</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * In this colourway, this piece is cut from this glass.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.GlassChoice#getColourway <em>Colourway</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassChoice#getPiece <em>Piece</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassChoice#getGlass <em>Glass</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getGlassChoice()
 * @model
 * @generated
 */
public interface GlassChoice extends EObject {
	/**
	 * Returns the value of the '<em><b>Colourway</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Colourway#getChoices <em>Choices</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Colourway</em>' container reference.
	 * @see #setColourway(Colourway)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassChoice_Colourway()
	 * @see saddlebar.model.commission.Colourway#getChoices
	 * @model opposite="choices" resolveProxies="false" transient="false"
	 * @generated
	 */
	Colourway getColourway();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassChoice#getColourway <em>Colourway</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Colourway</em>' container reference.
	 * @see #getColourway()
	 * @generated
	 */
	void setColourway(Colourway value);

	/**
	 * Returns the value of the '<em><b>Piece</b></em>' reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Piece#getChoices <em>Choices</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Piece</em>' reference.
	 * @see #setPiece(Piece)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassChoice_Piece()
	 * @see saddlebar.model.commission.Piece#getChoices
	 * @model opposite="choices"
	 * @generated
	 */
	Piece getPiece();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassChoice#getPiece <em>Piece</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Piece</em>' reference.
	 * @see #getPiece()
	 * @generated
	 */
	void setPiece(Piece value);

	/**
	 * Returns the value of the '<em><b>Glass</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Glass</em>' reference.
	 * @see #setGlass(GlassStock)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassChoice_Glass()
	 * @model
	 * @generated
	 */
	GlassStock getGlass();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassChoice#getGlass <em>Glass</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Glass</em>' reference.
	 * @see #getGlass()
	 * @generated
	 */
	void setGlass(GlassStock value);

} // GlassChoice
