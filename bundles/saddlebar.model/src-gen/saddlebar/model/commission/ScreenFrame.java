/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Screen Frame</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A frame of the rack; what it carries now is read from the records.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.ScreenFrame#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.ScreenFrame#getMesh <em>Mesh</em>}</li>
 *   <li>{@link saddlebar.model.commission.ScreenFrame#getImageWidthMm <em>Image Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.ScreenFrame#getImageHeightMm <em>Image Height Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.ScreenFrame#getSqueegeeMarginMm <em>Squeegee Margin Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.ScreenFrame#getMeshTurnDeg <em>Mesh Turn Deg</em>}</li>
 *   <li>{@link saddlebar.model.commission.ScreenFrame#isOutOfUse <em>Out Of Use</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getScreenFrame()
 * @model
 * @generated
 */
public interface ScreenFrame extends Named {
	/**
	 * Returns the value of the '<em><b>Studio</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Studio#getFrames <em>Frames</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Studio</em>' container reference.
	 * @see #setStudio(Studio)
	 * @see saddlebar.model.commission.CommissionPackage#getScreenFrame_Studio()
	 * @see saddlebar.model.commission.Studio#getFrames
	 * @model opposite="frames" resolveProxies="false" transient="false"
	 * @generated
	 */
	Studio getStudio();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ScreenFrame#getStudio <em>Studio</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Studio</em>' container reference.
	 * @see #getStudio()
	 * @generated
	 */
	void setStudio(Studio value);

	/**
	 * Returns the value of the '<em><b>Mesh</b></em>' reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Mesh#getFrames <em>Frames</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mesh</em>' reference.
	 * @see #setMesh(Mesh)
	 * @see saddlebar.model.commission.CommissionPackage#getScreenFrame_Mesh()
	 * @see saddlebar.model.commission.Mesh#getFrames
	 * @model opposite="frames"
	 * @generated
	 */
	Mesh getMesh();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ScreenFrame#getMesh <em>Mesh</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mesh</em>' reference.
	 * @see #getMesh()
	 * @generated
	 */
	void setMesh(Mesh value);

	/**
	 * Returns the value of the '<em><b>Image Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mesh inside the frame, across.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Image Width Mm</em>' attribute.
	 * @see #setImageWidthMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getScreenFrame_ImageWidthMm()
	 * @model
	 * @generated
	 */
	double getImageWidthMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ScreenFrame#getImageWidthMm <em>Image Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Image Width Mm</em>' attribute.
	 * @see #getImageWidthMm()
	 * @generated
	 */
	void setImageWidthMm(double value);

	/**
	 * Returns the value of the '<em><b>Image Height Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mesh inside the frame, along the pull.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Image Height Mm</em>' attribute.
	 * @see #setImageHeightMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getScreenFrame_ImageHeightMm()
	 * @model
	 * @generated
	 */
	double getImageHeightMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ScreenFrame#getImageHeightMm <em>Image Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Image Height Mm</em>' attribute.
	 * @see #getImageHeightMm()
	 * @generated
	 */
	void setImageHeightMm(double value);

	/**
	 * Returns the value of the '<em><b>Squeegee Margin Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Kept free on each side for the squeegee.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Squeegee Margin Mm</em>' attribute.
	 * @see #setSqueegeeMarginMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getScreenFrame_SqueegeeMarginMm()
	 * @model
	 * @generated
	 */
	double getSqueegeeMarginMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ScreenFrame#getSqueegeeMarginMm <em>Squeegee Margin Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Squeegee Margin Mm</em>' attribute.
	 * @see #getSqueegeeMarginMm()
	 * @generated
	 */
	void setSqueegeeMarginMm(double value);

	/**
	 * Returns the value of the '<em><b>Mesh Turn Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mesh turned in the frame.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Mesh Turn Deg</em>' attribute.
	 * @see #setMeshTurnDeg(double)
	 * @see saddlebar.model.commission.CommissionPackage#getScreenFrame_MeshTurnDeg()
	 * @model
	 * @generated
	 */
	double getMeshTurnDeg();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ScreenFrame#getMeshTurnDeg <em>Mesh Turn Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mesh Turn Deg</em>' attribute.
	 * @see #getMeshTurnDeg()
	 * @generated
	 */
	void setMeshTurnDeg(double value);

	/**
	 * Returns the value of the '<em><b>Out Of Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Out Of Use</em>' attribute.
	 * @see #setOutOfUse(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getScreenFrame_OutOfUse()
	 * @model
	 * @generated
	 */
	boolean isOutOfUse();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ScreenFrame#isOutOfUse <em>Out Of Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Out Of Use</em>' attribute.
	 * @see #isOutOfUse()
	 * @generated
	 */
	void setOutOfUse(boolean value);

} // ScreenFrame
