/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Process Setting</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * How this studio works one stencil process.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.ProcessSetting#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.ProcessSetting#getProcessKey <em>Process Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.ProcessSetting#getTonerSide <em>Toner Side</em>}</li>
 *   <li>{@link saddlebar.model.commission.ProcessSetting#isConfirmed <em>Confirmed</em>}</li>
 *   <li>{@link saddlebar.model.commission.ProcessSetting#getPressC <em>Press C</em>}</li>
 *   <li>{@link saddlebar.model.commission.ProcessSetting#getPressMin <em>Press Min</em>}</li>
 *   <li>{@link saddlebar.model.commission.ProcessSetting#getCoolMin <em>Cool Min</em>}</li>
 *   <li>{@link saddlebar.model.commission.ProcessSetting#getSource <em>Source</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getProcessSetting()
 * @model
 * @generated
 */
public interface ProcessSetting extends Named {
	/**
	 * Returns the value of the '<em><b>Studio</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Studio#getProcesses <em>Processes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Studio</em>' container reference.
	 * @see #setStudio(Studio)
	 * @see saddlebar.model.commission.CommissionPackage#getProcessSetting_Studio()
	 * @see saddlebar.model.commission.Studio#getProcesses
	 * @model opposite="processes" resolveProxies="false" transient="false"
	 * @generated
	 */
	Studio getStudio();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ProcessSetting#getStudio <em>Studio</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Studio</em>' container reference.
	 * @see #getStudio()
	 * @generated
	 */
	void setStudio(Studio value);

	/**
	 * Returns the value of the '<em><b>Process Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Such as fused-sheet or film-positive.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Process Key</em>' attribute.
	 * @see #setProcessKey(String)
	 * @see saddlebar.model.commission.CommissionPackage#getProcessSetting_ProcessKey()
	 * @model
	 * @generated
	 */
	String getProcessKey();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ProcessSetting#getProcessKey <em>Process Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Process Key</em>' attribute.
	 * @see #getProcessKey()
	 * @generated
	 */
	void setProcessKey(String value);

	/**
	 * Returns the value of the '<em><b>Toner Side</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.TonerSide}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Toner Side</em>' attribute.
	 * @see saddlebar.model.commission.TonerSide
	 * @see #setTonerSide(TonerSide)
	 * @see saddlebar.model.commission.CommissionPackage#getProcessSetting_TonerSide()
	 * @model
	 * @generated
	 */
	TonerSide getTonerSide();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ProcessSetting#getTonerSide <em>Toner Side</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Toner Side</em>' attribute.
	 * @see saddlebar.model.commission.TonerSide
	 * @see #getTonerSide()
	 * @generated
	 */
	void setTonerSide(TonerSide value);

	/**
	 * Returns the value of the '<em><b>Confirmed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The studio has been asked which side its sheets touch.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Confirmed</em>' attribute.
	 * @see #setConfirmed(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getProcessSetting_Confirmed()
	 * @model
	 * @generated
	 */
	boolean isConfirmed();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ProcessSetting#isConfirmed <em>Confirmed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Confirmed</em>' attribute.
	 * @see #isConfirmed()
	 * @generated
	 */
	void setConfirmed(boolean value);

	/**
	 * Returns the value of the '<em><b>Press C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Press C</em>' attribute.
	 * @see #setPressC(double)
	 * @see saddlebar.model.commission.CommissionPackage#getProcessSetting_PressC()
	 * @model
	 * @generated
	 */
	double getPressC();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ProcessSetting#getPressC <em>Press C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Press C</em>' attribute.
	 * @see #getPressC()
	 * @generated
	 */
	void setPressC(double value);

	/**
	 * Returns the value of the '<em><b>Press Min</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Press Min</em>' attribute.
	 * @see #setPressMin(double)
	 * @see saddlebar.model.commission.CommissionPackage#getProcessSetting_PressMin()
	 * @model
	 * @generated
	 */
	double getPressMin();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ProcessSetting#getPressMin <em>Press Min</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Press Min</em>' attribute.
	 * @see #getPressMin()
	 * @generated
	 */
	void setPressMin(double value);

	/**
	 * Returns the value of the '<em><b>Cool Min</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Cool Min</em>' attribute.
	 * @see #setCoolMin(double)
	 * @see saddlebar.model.commission.CommissionPackage#getProcessSetting_CoolMin()
	 * @model
	 * @generated
	 */
	double getCoolMin();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ProcessSetting#getCoolMin <em>Cool Min</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cool Min</em>' attribute.
	 * @see #getCoolMin()
	 * @generated
	 */
	void setCoolMin(double value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see saddlebar.model.commission.CommissionPackage#getProcessSetting_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ProcessSetting#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

} // ProcessSetting
