/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Stencil Made</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * kind stencil
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.StencilMade#getWindowId <em>Window Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilMade#getLayerId <em>Layer Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilMade#getStencilId <em>Stencil Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilMade#getPaintId <em>Paint Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilMade#getPieceIds <em>Piece Ids</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilMade#getInputSha256 <em>Input Sha256</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilMade#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilMade#getCoverage <em>Coverage</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilMade#getTooFine <em>Too Fine</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilMade#getBridgesLost <em>Bridges Lost</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilMade#getWidthPx <em>Width Px</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilMade#getHeightPx <em>Height Px</em>}</li>
 *   <li>{@link saddlebar.model.commission.StencilMade#getFiles <em>Files</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getStencilMade()
 * @model
 * @generated
 */
public interface StencilMade extends MakingRecord {
	/**
	 * Returns the value of the '<em><b>Window Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Window Id</em>' attribute.
	 * @see #setWindowId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilMade_WindowId()
	 * @model
	 * @generated
	 */
	String getWindowId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilMade#getWindowId <em>Window Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Window Id</em>' attribute.
	 * @see #getWindowId()
	 * @generated
	 */
	void setWindowId(String value);

	/**
	 * Returns the value of the '<em><b>Layer Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Layer Id</em>' attribute.
	 * @see #setLayerId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilMade_LayerId()
	 * @model
	 * @generated
	 */
	String getLayerId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilMade#getLayerId <em>Layer Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Layer Id</em>' attribute.
	 * @see #getLayerId()
	 * @generated
	 */
	void setLayerId(String value);

	/**
	 * Returns the value of the '<em><b>Stencil Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stencil Id</em>' attribute.
	 * @see #setStencilId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilMade_StencilId()
	 * @model
	 * @generated
	 */
	String getStencilId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilMade#getStencilId <em>Stencil Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stencil Id</em>' attribute.
	 * @see #getStencilId()
	 * @generated
	 */
	void setStencilId(String value);

	/**
	 * Returns the value of the '<em><b>Paint Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Paint Id</em>' attribute.
	 * @see #setPaintId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilMade_PaintId()
	 * @model
	 * @generated
	 */
	String getPaintId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilMade#getPaintId <em>Paint Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Paint Id</em>' attribute.
	 * @see #getPaintId()
	 * @generated
	 */
	void setPaintId(String value);

	/**
	 * Returns the value of the '<em><b>Piece Ids</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Piece Ids</em>' attribute list.
	 * @see saddlebar.model.commission.CommissionPackage#getStencilMade_PieceIds()
	 * @model
	 * @generated
	 */
	EList<String> getPieceIds();

	/**
	 * Returns the value of the '<em><b>Input Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Input Sha256</em>' attribute.
	 * @see #setInputSha256(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilMade_InputSha256()
	 * @model
	 * @generated
	 */
	String getInputSha256();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilMade#getInputSha256 <em>Input Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Input Sha256</em>' attribute.
	 * @see #getInputSha256()
	 * @generated
	 */
	void setInputSha256(String value);

	/**
	 * Returns the value of the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sha256</em>' attribute.
	 * @see #setSha256(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilMade_Sha256()
	 * @model
	 * @generated
	 */
	String getSha256();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilMade#getSha256 <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sha256</em>' attribute.
	 * @see #getSha256()
	 * @generated
	 */
	void setSha256(String value);

	/**
	 * Returns the value of the '<em><b>Coverage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Coverage</em>' attribute.
	 * @see #setCoverage(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilMade_Coverage()
	 * @model
	 * @generated
	 */
	Double getCoverage();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilMade#getCoverage <em>Coverage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Coverage</em>' attribute.
	 * @see #getCoverage()
	 * @generated
	 */
	void setCoverage(Double value);

	/**
	 * Returns the value of the '<em><b>Too Fine</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Too Fine</em>' attribute.
	 * @see #setTooFine(int)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilMade_TooFine()
	 * @model
	 * @generated
	 */
	int getTooFine();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilMade#getTooFine <em>Too Fine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Too Fine</em>' attribute.
	 * @see #getTooFine()
	 * @generated
	 */
	void setTooFine(int value);

	/**
	 * Returns the value of the '<em><b>Bridges Lost</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bridges Lost</em>' attribute.
	 * @see #setBridgesLost(int)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilMade_BridgesLost()
	 * @model
	 * @generated
	 */
	int getBridgesLost();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilMade#getBridgesLost <em>Bridges Lost</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bridges Lost</em>' attribute.
	 * @see #getBridgesLost()
	 * @generated
	 */
	void setBridgesLost(int value);

	/**
	 * Returns the value of the '<em><b>Width Px</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Width Px</em>' attribute.
	 * @see #setWidthPx(int)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilMade_WidthPx()
	 * @model
	 * @generated
	 */
	int getWidthPx();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilMade#getWidthPx <em>Width Px</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width Px</em>' attribute.
	 * @see #getWidthPx()
	 * @generated
	 */
	void setWidthPx(int value);

	/**
	 * Returns the value of the '<em><b>Height Px</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Height Px</em>' attribute.
	 * @see #setHeightPx(int)
	 * @see saddlebar.model.commission.CommissionPackage#getStencilMade_HeightPx()
	 * @model
	 * @generated
	 */
	int getHeightPx();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.StencilMade#getHeightPx <em>Height Px</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height Px</em>' attribute.
	 * @see #getHeightPx()
	 * @generated
	 */
	void setHeightPx(int value);

	/**
	 * Returns the value of the '<em><b>Files</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.MadeFile}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Files</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStencilMade_Files()
	 * @model containment="true"
	 * @generated
	 */
	EList<MadeFile> getFiles();

} // StencilMade
