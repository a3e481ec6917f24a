/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Colourway</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One colouring of a window.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Colourway#getWindow <em>Window</em>}</li>
 *   <li>{@link saddlebar.model.commission.Colourway#isApproved <em>Approved</em>}</li>
 *   <li>{@link saddlebar.model.commission.Colourway#getApprovedOn <em>Approved On</em>}</li>
 *   <li>{@link saddlebar.model.commission.Colourway#getChoices <em>Choices</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getColourway()
 * @model
 * @generated
 */
public interface Colourway extends Named {
	/**
	 * Returns the value of the '<em><b>Window</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Window#getColourways <em>Colourways</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Window</em>' container reference.
	 * @see #setWindow(Window)
	 * @see saddlebar.model.commission.CommissionPackage#getColourway_Window()
	 * @see saddlebar.model.commission.Window#getColourways
	 * @model opposite="colourways" resolveProxies="false" transient="false"
	 * @generated
	 */
	Window getWindow();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Colourway#getWindow <em>Window</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Window</em>' container reference.
	 * @see #getWindow()
	 * @generated
	 */
	void setWindow(Window value);

	/**
	 * Returns the value of the '<em><b>Approved</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Approved</em>' attribute.
	 * @see #setApproved(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getColourway_Approved()
	 * @model
	 * @generated
	 */
	boolean isApproved();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Colourway#isApproved <em>Approved</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Approved</em>' attribute.
	 * @see #isApproved()
	 * @generated
	 */
	void setApproved(boolean value);

	/**
	 * Returns the value of the '<em><b>Approved On</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Approved On</em>' attribute.
	 * @see #setApprovedOn(LocalDate)
	 * @see saddlebar.model.commission.CommissionPackage#getColourway_ApprovedOn()
	 * @model dataType="saddlebar.model.commission.Day"
	 * @generated
	 */
	LocalDate getApprovedOn();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Colourway#getApprovedOn <em>Approved On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Approved On</em>' attribute.
	 * @see #getApprovedOn()
	 * @generated
	 */
	void setApprovedOn(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Choices</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.GlassChoice}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.GlassChoice#getColourway <em>Colourway</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Choices</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getColourway_Choices()
	 * @see saddlebar.model.commission.GlassChoice#getColourway
	 * @model opposite="colourway" containment="true"
	 * @generated
	 */
	EList<GlassChoice> getChoices();

} // Colourway
