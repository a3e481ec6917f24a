/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Accepted Mend</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A mend of the cutline that a person agreed to; done again each time pieces are made.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.AcceptedMend#getPanel <em>Panel</em>}</li>
 *   <li>{@link saddlebar.model.commission.AcceptedMend#getKey <em>Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.AcceptedMend#getWords <em>Words</em>}</li>
 *   <li>{@link saddlebar.model.commission.AcceptedMend#getXMm <em>XMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.AcceptedMend#getYMm <em>YMm</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getAcceptedMend()
 * @model
 * @generated
 */
public interface AcceptedMend extends EObject {
	/**
	 * Returns the value of the '<em><b>Panel</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Panel#getMendings <em>Mendings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Panel</em>' container reference.
	 * @see #setPanel(Panel)
	 * @see saddlebar.model.commission.CommissionPackage#getAcceptedMend_Panel()
	 * @see saddlebar.model.commission.Panel#getMendings
	 * @model opposite="mendings" resolveProxies="false" transient="false"
	 * @generated
	 */
	Panel getPanel();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.AcceptedMend#getPanel <em>Panel</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Panel</em>' container reference.
	 * @see #getPanel()
	 * @generated
	 */
	void setPanel(Panel value);

	/**
	 * Returns the value of the '<em><b>Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * By which the proposal is known again: kind, element and place.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Key</em>' attribute.
	 * @see #setKey(String)
	 * @see saddlebar.model.commission.CommissionPackage#getAcceptedMend_Key()
	 * @model
	 * @generated
	 */
	String getKey();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.AcceptedMend#getKey <em>Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Key</em>' attribute.
	 * @see #getKey()
	 * @generated
	 */
	void setKey(String value);

	/**
	 * Returns the value of the '<em><b>Words</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it does, in a sentence.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Words</em>' attribute.
	 * @see #setWords(String)
	 * @see saddlebar.model.commission.CommissionPackage#getAcceptedMend_Words()
	 * @model
	 * @generated
	 */
	String getWords();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.AcceptedMend#getWords <em>Words</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Words</em>' attribute.
	 * @see #getWords()
	 * @generated
	 */
	void setWords(String value);

	/**
	 * Returns the value of the '<em><b>XMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>XMm</em>' attribute.
	 * @see #setXMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getAcceptedMend_XMm()
	 * @model
	 * @generated
	 */
	double getXMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.AcceptedMend#getXMm <em>XMm</em>}' attribute.
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
	 * @see saddlebar.model.commission.CommissionPackage#getAcceptedMend_YMm()
	 * @model
	 * @generated
	 */
	double getYMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.AcceptedMend#getYMm <em>YMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>YMm</em>' attribute.
	 * @see #getYMm()
	 * @generated
	 */
	void setYMm(double value);

} // AcceptedMend
