/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Opening</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Opening#getWindow <em>Window</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getKind <em>Kind</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getSightWidthMm <em>Sight Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getSightHeightMm <em>Sight Height Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getTightWidthMm <em>Tight Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getTightHeightMm <em>Tight Height Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getCount <em>Count</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#isOverhead <em>Overhead</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#isInDoor <em>In Door</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getTemplateFile <em>Template File</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getNote <em>Note</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getOpening()
 * @model
 * @generated
 */
public interface Opening extends Identified {
	/**
	 * Returns the value of the '<em><b>Window</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Window#getOpening <em>Opening</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Window</em>' container reference.
	 * @see #setWindow(Window)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_Window()
	 * @see saddlebar.model.commission.Window#getOpening
	 * @model opposite="opening" resolveProxies="false" transient="false"
	 * @generated
	 */
	Window getWindow();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getWindow <em>Window</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Window</em>' container reference.
	 * @see #getWindow()
	 * @generated
	 */
	void setWindow(Window value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.OpeningKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see saddlebar.model.commission.OpeningKind
	 * @see #setKind(OpeningKind)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_Kind()
	 * @model
	 * @generated
	 */
	OpeningKind getKind();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see saddlebar.model.commission.OpeningKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(OpeningKind value);

	/**
	 * Returns the value of the '<em><b>Sight Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What shows.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sight Width Mm</em>' attribute.
	 * @see #setSightWidthMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_SightWidthMm()
	 * @model
	 * @generated
	 */
	double getSightWidthMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getSightWidthMm <em>Sight Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sight Width Mm</em>' attribute.
	 * @see #getSightWidthMm()
	 * @generated
	 */
	void setSightWidthMm(double value);

	/**
	 * Returns the value of the '<em><b>Sight Height Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sight Height Mm</em>' attribute.
	 * @see #setSightHeightMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_SightHeightMm()
	 * @model
	 * @generated
	 */
	double getSightHeightMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getSightHeightMm <em>Sight Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sight Height Mm</em>' attribute.
	 * @see #getSightHeightMm()
	 * @generated
	 */
	void setSightHeightMm(double value);

	/**
	 * Returns the value of the '<em><b>Tight Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * To the ground of the rebate.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tight Width Mm</em>' attribute.
	 * @see #setTightWidthMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_TightWidthMm()
	 * @model
	 * @generated
	 */
	double getTightWidthMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getTightWidthMm <em>Tight Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tight Width Mm</em>' attribute.
	 * @see #getTightWidthMm()
	 * @generated
	 */
	void setTightWidthMm(double value);

	/**
	 * Returns the value of the '<em><b>Tight Height Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Tight Height Mm</em>' attribute.
	 * @see #setTightHeightMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_TightHeightMm()
	 * @model
	 * @generated
	 */
	double getTightHeightMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getTightHeightMm <em>Tight Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tight Height Mm</em>' attribute.
	 * @see #getTightHeightMm()
	 * @generated
	 */
	void setTightHeightMm(double value);

	/**
	 * Returns the value of the '<em><b>Count</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Openings alike.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Count</em>' attribute.
	 * @see #setCount(int)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_Count()
	 * @model default="1"
	 * @generated
	 */
	int getCount();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getCount <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Count</em>' attribute.
	 * @see #getCount()
	 * @generated
	 */
	void setCount(int value);

	/**
	 * Returns the value of the '<em><b>Overhead</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Overhead</em>' attribute.
	 * @see #setOverhead(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_Overhead()
	 * @model
	 * @generated
	 */
	boolean isOverhead();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#isOverhead <em>Overhead</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Overhead</em>' attribute.
	 * @see #isOverhead()
	 * @generated
	 */
	void setOverhead(boolean value);

	/**
	 * Returns the value of the '<em><b>In Door</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>In Door</em>' attribute.
	 * @see #setInDoor(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_InDoor()
	 * @model
	 * @generated
	 */
	boolean isInDoor();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#isInDoor <em>In Door</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>In Door</em>' attribute.
	 * @see #isInDoor()
	 * @generated
	 */
	void setInDoor(boolean value);

	/**
	 * Returns the value of the '<em><b>Template File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Template File</em>' attribute.
	 * @see #setTemplateFile(String)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_TemplateFile()
	 * @model
	 * @generated
	 */
	String getTemplateFile();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getTemplateFile <em>Template File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Template File</em>' attribute.
	 * @see #getTemplateFile()
	 * @generated
	 */
	void setTemplateFile(String value);

	/**
	 * Returns the value of the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Note</em>' attribute.
	 * @see #setNote(String)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_Note()
	 * @model
	 * @generated
	 */
	String getNote();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getNote <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Note</em>' attribute.
	 * @see #getNote()
	 * @generated
	 */
	void setNote(String value);

} // Opening
