/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Screen Load</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * kind fuse: a sheet's stencils on a frame, from this time to the reclaim that names it
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.ScreenLoad#getFrameId <em>Frame Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.ScreenLoad#getSheetId <em>Sheet Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.ScreenLoad#getStencilIds <em>Stencil Ids</em>}</li>
 *   <li>{@link saddlebar.model.commission.ScreenLoad#getProcessKey <em>Process Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.ScreenLoad#getPressC <em>Press C</em>}</li>
 *   <li>{@link saddlebar.model.commission.ScreenLoad#getPressMin <em>Press Min</em>}</li>
 *   <li>{@link saddlebar.model.commission.ScreenLoad#getCoolMin <em>Cool Min</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getScreenLoad()
 * @model
 * @generated
 */
public interface ScreenLoad extends MakingRecord {
	/**
	 * Returns the value of the '<em><b>Frame Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Frame Id</em>' attribute.
	 * @see #setFrameId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getScreenLoad_FrameId()
	 * @model
	 * @generated
	 */
	String getFrameId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ScreenLoad#getFrameId <em>Frame Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Frame Id</em>' attribute.
	 * @see #getFrameId()
	 * @generated
	 */
	void setFrameId(String value);

	/**
	 * Returns the value of the '<em><b>Sheet Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sheet Id</em>' attribute.
	 * @see #setSheetId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getScreenLoad_SheetId()
	 * @model
	 * @generated
	 */
	String getSheetId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ScreenLoad#getSheetId <em>Sheet Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sheet Id</em>' attribute.
	 * @see #getSheetId()
	 * @generated
	 */
	void setSheetId(String value);

	/**
	 * Returns the value of the '<em><b>Stencil Ids</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stencil Ids</em>' attribute list.
	 * @see saddlebar.model.commission.CommissionPackage#getScreenLoad_StencilIds()
	 * @model
	 * @generated
	 */
	EList<String> getStencilIds();

	/**
	 * Returns the value of the '<em><b>Process Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Process Key</em>' attribute.
	 * @see #setProcessKey(String)
	 * @see saddlebar.model.commission.CommissionPackage#getScreenLoad_ProcessKey()
	 * @model
	 * @generated
	 */
	String getProcessKey();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ScreenLoad#getProcessKey <em>Process Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Process Key</em>' attribute.
	 * @see #getProcessKey()
	 * @generated
	 */
	void setProcessKey(String value);

	/**
	 * Returns the value of the '<em><b>Press C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Press C</em>' attribute.
	 * @see #setPressC(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getScreenLoad_PressC()
	 * @model
	 * @generated
	 */
	Double getPressC();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ScreenLoad#getPressC <em>Press C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Press C</em>' attribute.
	 * @see #getPressC()
	 * @generated
	 */
	void setPressC(Double value);

	/**
	 * Returns the value of the '<em><b>Press Min</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Press Min</em>' attribute.
	 * @see #setPressMin(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getScreenLoad_PressMin()
	 * @model
	 * @generated
	 */
	Double getPressMin();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ScreenLoad#getPressMin <em>Press Min</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Press Min</em>' attribute.
	 * @see #getPressMin()
	 * @generated
	 */
	void setPressMin(Double value);

	/**
	 * Returns the value of the '<em><b>Cool Min</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Cool Min</em>' attribute.
	 * @see #setCoolMin(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getScreenLoad_CoolMin()
	 * @model
	 * @generated
	 */
	Double getCoolMin();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ScreenLoad#getCoolMin <em>Cool Min</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cool Min</em>' attribute.
	 * @see #getCoolMin()
	 * @generated
	 */
	void setCoolMin(Double value);

} // ScreenLoad
