/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Stencil</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What one screen prints in one pull: one paint, one mesh, whole pieces.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Stencil#getLayer <em>Layer</em>}</li>
 *   <li>{@link saddlebar.model.commission.Stencil#getNumber <em>Number</em>}</li>
 *   <li>{@link saddlebar.model.commission.Stencil#getFrame <em>Frame</em>}</li>
 *   <li>{@link saddlebar.model.commission.Stencil#getWidthMm <em>Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Stencil#getHeightMm <em>Height Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Stencil#getOriginXMm <em>Origin XMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Stencil#getOriginYMm <em>Origin YMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Stencil#getWidthPx <em>Width Px</em>}</li>
 *   <li>{@link saddlebar.model.commission.Stencil#getHeightPx <em>Height Px</em>}</li>
 *   <li>{@link saddlebar.model.commission.Stencil#getPrints <em>Prints</em>}</li>
 *   <li>{@link saddlebar.model.commission.Stencil#getPieces <em>Pieces</em>}</li>
 *   <li>{@link saddlebar.model.commission.Stencil#getFiles <em>Files</em>}</li>
 *   <li>{@link saddlebar.model.commission.Stencil#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link saddlebar.model.commission.Stencil#getContentKey <em>Content Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.Stencil#getCoverage <em>Coverage</em>}</li>
 *   <li>{@link saddlebar.model.commission.Stencil#getTooFine <em>Too Fine</em>}</li>
 *   <li>{@link saddlebar.model.commission.Stencil#getBridgesLost <em>Bridges Lost</em>}</li>
 *   <li>{@link saddlebar.model.commission.Stencil#isRetired <em>Retired</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getStencil()
 * @model
 * @generated
 */
public interface Stencil extends Identified {
	/**
	 * Returns the value of the '<em><b>Layer</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.DesignLayer#getStencils <em>Stencils</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Layer</em>' container reference.
	 * @see #setLayer(DesignLayer)
	 * @see saddlebar.model.commission.CommissionPackage#getStencil_Layer()
	 * @see saddlebar.model.commission.DesignLayer#getStencils
	 * @model opposite="stencils" resolveProxies="false" transient="false"
	 * @generated
	 */
	DesignLayer getLayer();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Stencil#getLayer <em>Layer</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Layer</em>' container reference.
	 * @see #getLayer()
	 * @generated
	 */
	void setLayer(DesignLayer value);

	/**
	 * Returns the value of the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Number</em>' attribute.
	 * @see #setNumber(int)
	 * @see saddlebar.model.commission.CommissionPackage#getStencil_Number()
	 * @model
	 * @generated
	 */
	int getNumber();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Stencil#getNumber <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Number</em>' attribute.
	 * @see #getNumber()
	 * @generated
	 */
	void setNumber(int value);

	/**
	 * Returns the value of the '<em><b>Frame</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The frame it was sized for.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Frame</em>' reference.
	 * @see #setFrame(ScreenFrame)
	 * @see saddlebar.model.commission.CommissionPackage#getStencil_Frame()
	 * @model
	 * @generated
	 */
	ScreenFrame getFrame();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Stencil#getFrame <em>Frame</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Frame</em>' reference.
	 * @see #getFrame()
	 * @generated
	 */
	void setFrame(ScreenFrame value);

	/**
	 * Returns the value of the '<em><b>Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Width Mm</em>' attribute.
	 * @see #setWidthMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getStencil_WidthMm()
	 * @model
	 * @generated
	 */
	double getWidthMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Stencil#getWidthMm <em>Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width Mm</em>' attribute.
	 * @see #getWidthMm()
	 * @generated
	 */
	void setWidthMm(double value);

	/**
	 * Returns the value of the '<em><b>Height Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Height Mm</em>' attribute.
	 * @see #setHeightMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getStencil_HeightMm()
	 * @model
	 * @generated
	 */
	double getHeightMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Stencil#getHeightMm <em>Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height Mm</em>' attribute.
	 * @see #getHeightMm()
	 * @generated
	 */
	void setHeightMm(double value);

	/**
	 * Returns the value of the '<em><b>Origin XMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Its top left in the panel's page, where it is one part of it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Origin XMm</em>' attribute.
	 * @see #setOriginXMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getStencil_OriginXMm()
	 * @model
	 * @generated
	 */
	double getOriginXMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Stencil#getOriginXMm <em>Origin XMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Origin XMm</em>' attribute.
	 * @see #getOriginXMm()
	 * @generated
	 */
	void setOriginXMm(double value);

	/**
	 * Returns the value of the '<em><b>Origin YMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Origin YMm</em>' attribute.
	 * @see #setOriginYMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getStencil_OriginYMm()
	 * @model
	 * @generated
	 */
	double getOriginYMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Stencil#getOriginYMm <em>Origin YMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Origin YMm</em>' attribute.
	 * @see #getOriginYMm()
	 * @generated
	 */
	void setOriginYMm(double value);

	/**
	 * Returns the value of the '<em><b>Width Px</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Width Px</em>' attribute.
	 * @see #setWidthPx(int)
	 * @see saddlebar.model.commission.CommissionPackage#getStencil_WidthPx()
	 * @model
	 * @generated
	 */
	int getWidthPx();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Stencil#getWidthPx <em>Width Px</em>}' attribute.
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
	 * @see saddlebar.model.commission.CommissionPackage#getStencil_HeightPx()
	 * @model
	 * @generated
	 */
	int getHeightPx();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Stencil#getHeightPx <em>Height Px</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height Px</em>' attribute.
	 * @see #getHeightPx()
	 * @generated
	 */
	void setHeightPx(int value);

	/**
	 * Returns the value of the '<em><b>Prints</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Pulls for all its pieces.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Prints</em>' attribute.
	 * @see #setPrints(int)
	 * @see saddlebar.model.commission.CommissionPackage#getStencil_Prints()
	 * @model default="1"
	 * @generated
	 */
	int getPrints();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Stencil#getPrints <em>Prints</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Prints</em>' attribute.
	 * @see #getPrints()
	 * @generated
	 */
	void setPrints(int value);

	/**
	 * Returns the value of the '<em><b>Pieces</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.StencilPiece}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.StencilPiece#getStencil <em>Stencil</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Pieces</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStencil_Pieces()
	 * @see saddlebar.model.commission.StencilPiece#getStencil
	 * @model opposite="stencil" containment="true"
	 * @generated
	 */
	EList<StencilPiece> getPieces();

	/**
	 * Returns the value of the '<em><b>Files</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.MadeFile}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Files</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStencil_Files()
	 * @model containment="true"
	 * @generated
	 */
	EList<MadeFile> getFiles();

	/**
	 * Returns the value of the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of its bits, without marks.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sha256</em>' attribute.
	 * @see #setSha256(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStencil_Sha256()
	 * @model
	 * @generated
	 */
	String getSha256();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Stencil#getSha256 <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sha256</em>' attribute.
	 * @see #getSha256()
	 * @generated
	 */
	void setSha256(String value);

	/**
	 * Returns the value of the '<em><b>Content Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Hash of all it was made from.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Content Key</em>' attribute.
	 * @see #setContentKey(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStencil_ContentKey()
	 * @model
	 * @generated
	 */
	String getContentKey();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Stencil#getContentKey <em>Content Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Content Key</em>' attribute.
	 * @see #getContentKey()
	 * @generated
	 */
	void setContentKey(String value);

	/**
	 * Returns the value of the '<em><b>Coverage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share that prints paint.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Coverage</em>' attribute.
	 * @see #setCoverage(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getStencil_Coverage()
	 * @model
	 * @generated
	 */
	Double getCoverage();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Stencil#getCoverage <em>Coverage</em>}' attribute.
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
	 * @see saddlebar.model.commission.CommissionPackage#getStencil_TooFine()
	 * @model
	 * @generated
	 */
	int getTooFine();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Stencil#getTooFine <em>Too Fine</em>}' attribute.
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
	 * @see saddlebar.model.commission.CommissionPackage#getStencil_BridgesLost()
	 * @model
	 * @generated
	 */
	int getBridgesLost();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Stencil#getBridgesLost <em>Bridges Lost</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bridges Lost</em>' attribute.
	 * @see #getBridgesLost()
	 * @generated
	 */
	void setBridgesLost(int value);

	/**
	 * Returns the value of the '<em><b>Retired</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * No longer wanted; kept because records name it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Retired</em>' attribute.
	 * @see #setRetired(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getStencil_Retired()
	 * @model
	 * @generated
	 */
	boolean isRetired();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Stencil#isRetired <em>Retired</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Retired</em>' attribute.
	 * @see #isRetired()
	 * @generated
	 */
	void setRetired(boolean value);

} // Stencil
