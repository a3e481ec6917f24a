/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Window</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Window#getFormatVersion <em>Format Version</em>}</li>
 *   <li>{@link saddlebar.model.commission.Window#getName <em>Name</em>}</li>
 *   <li>{@link saddlebar.model.commission.Window#getTitle <em>Title</em>}</li>
 *   <li>{@link saddlebar.model.commission.Window#getNote <em>Note</em>}</li>
 *   <li>{@link saddlebar.model.commission.Window#getCommission <em>Commission</em>}</li>
 *   <li>{@link saddlebar.model.commission.Window#getOpening <em>Opening</em>}</li>
 *   <li>{@link saddlebar.model.commission.Window#getColourways <em>Colourways</em>}</li>
 *   <li>{@link saddlebar.model.commission.Window#getChosen <em>Chosen</em>}</li>
 *   <li>{@link saddlebar.model.commission.Window#getPanels <em>Panels</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getWindow()
 * @model
 * @generated
 */
public interface Window extends Identified {
	/**
	 * Returns the value of the '<em><b>Format Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Version of the file format that wrote this file.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Format Version</em>' attribute.
	 * @see #setFormatVersion(String)
	 * @see saddlebar.model.commission.CommissionPackage#getWindow_FormatVersion()
	 * @model
	 * @generated
	 */
	String getFormatVersion();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Window#getFormatVersion <em>Format Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Format Version</em>' attribute.
	 * @see #getFormatVersion()
	 * @generated
	 */
	void setFormatVersion(String value);

	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Short name in the commission, such as W01; also the file's name.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see saddlebar.model.commission.CommissionPackage#getWindow_Name()
	 * @model
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Window#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Title</em>' attribute.
	 * @see #setTitle(String)
	 * @see saddlebar.model.commission.CommissionPackage#getWindow_Title()
	 * @model
	 * @generated
	 */
	String getTitle();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Window#getTitle <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Title</em>' attribute.
	 * @see #getTitle()
	 * @generated
	 */
	void setTitle(String value);

	/**
	 * Returns the value of the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Note</em>' attribute.
	 * @see #setNote(String)
	 * @see saddlebar.model.commission.CommissionPackage#getWindow_Note()
	 * @model
	 * @generated
	 */
	String getNote();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Window#getNote <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Note</em>' attribute.
	 * @see #getNote()
	 * @generated
	 */
	void setNote(String value);

	/**
	 * Returns the value of the '<em><b>Commission</b></em>' reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Commission#getWindows <em>Windows</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Commission</em>' reference.
	 * @see #setCommission(Commission)
	 * @see saddlebar.model.commission.CommissionPackage#getWindow_Commission()
	 * @see saddlebar.model.commission.Commission#getWindows
	 * @model opposite="windows"
	 * @generated
	 */
	Commission getCommission();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Window#getCommission <em>Commission</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Commission</em>' reference.
	 * @see #getCommission()
	 * @generated
	 */
	void setCommission(Commission value);

	/**
	 * Returns the value of the '<em><b>Opening</b></em>' containment reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Opening#getWindow <em>Window</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Opening</em>' containment reference.
	 * @see #setOpening(Opening)
	 * @see saddlebar.model.commission.CommissionPackage#getWindow_Opening()
	 * @see saddlebar.model.commission.Opening#getWindow
	 * @model opposite="window" containment="true"
	 * @generated
	 */
	Opening getOpening();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Window#getOpening <em>Opening</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Opening</em>' containment reference.
	 * @see #getOpening()
	 * @generated
	 */
	void setOpening(Opening value);

	/**
	 * Returns the value of the '<em><b>Colourways</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.Colourway}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Colourway#getWindow <em>Window</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Colourways</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getWindow_Colourways()
	 * @see saddlebar.model.commission.Colourway#getWindow
	 * @model opposite="window" containment="true"
	 * @generated
	 */
	EList<Colourway> getColourways();

	/**
	 * Returns the value of the '<em><b>Chosen</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The colourway that is made.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Chosen</em>' reference.
	 * @see #setChosen(Colourway)
	 * @see saddlebar.model.commission.CommissionPackage#getWindow_Chosen()
	 * @model
	 * @generated
	 */
	Colourway getChosen();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Window#getChosen <em>Chosen</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Chosen</em>' reference.
	 * @see #getChosen()
	 * @generated
	 */
	void setChosen(Colourway value);

	/**
	 * Returns the value of the '<em><b>Panels</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.Panel}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Panel#getWindow <em>Window</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Panels</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getWindow_Panels()
	 * @see saddlebar.model.commission.Panel#getWindow
	 * @model opposite="window" containment="true"
	 * @generated
	 */
	EList<Panel> getPanels();

} // Window
