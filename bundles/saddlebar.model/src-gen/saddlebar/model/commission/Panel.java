/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

import saddlebar.model.art.OutlineMm;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Panel</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Panel#getWindow <em>Window</em>}</li>
 *   <li>{@link saddlebar.model.commission.Panel#getXMm <em>XMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Panel#getYMm <em>YMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Panel#getOutline <em>Outline</em>}</li>
 *   <li>{@link saddlebar.model.commission.Panel#getJoin <em>Join</em>}</li>
 *   <li>{@link saddlebar.model.commission.Panel#getGapMm <em>Gap Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Panel#getJoinStock <em>Join Stock</em>}</li>
 *   <li>{@link saddlebar.model.commission.Panel#getArtwork <em>Artwork</em>}</li>
 *   <li>{@link saddlebar.model.commission.Panel#getPieces <em>Pieces</em>}</li>
 *   <li>{@link saddlebar.model.commission.Panel#getLayers <em>Layers</em>}</li>
 *   <li>{@link saddlebar.model.commission.Panel#getContentKey <em>Content Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.Panel#getEdgeAllowanceMm <em>Edge Allowance Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Panel#getOutlineElement <em>Outline Element</em>}</li>
 *   <li>{@link saddlebar.model.commission.Panel#getMendings <em>Mendings</em>}</li>
 *   <li>{@link saddlebar.model.commission.Panel#getJoinRules <em>Join Rules</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getPanel()
 * @model
 * @generated
 */
public interface Panel extends Named {
	/**
	 * Returns the value of the '<em><b>Window</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Window#getPanels <em>Panels</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Window</em>' container reference.
	 * @see #setWindow(Window)
	 * @see saddlebar.model.commission.CommissionPackage#getPanel_Window()
	 * @see saddlebar.model.commission.Window#getPanels
	 * @model opposite="panels" resolveProxies="false" transient="false"
	 * @generated
	 */
	Window getWindow();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Panel#getWindow <em>Window</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Window</em>' container reference.
	 * @see #getWindow()
	 * @generated
	 */
	void setWindow(Window value);

	/**
	 * Returns the value of the '<em><b>XMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of its page's top left in the window.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>XMm</em>' attribute.
	 * @see #setXMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getPanel_XMm()
	 * @model
	 * @generated
	 */
	double getXMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Panel#getXMm <em>XMm</em>}' attribute.
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
	 * @see saddlebar.model.commission.CommissionPackage#getPanel_YMm()
	 * @model
	 * @generated
	 */
	double getYMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Panel#getYMm <em>YMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>YMm</em>' attribute.
	 * @see #getYMm()
	 * @generated
	 */
	void setYMm(double value);

	/**
	 * Returns the value of the '<em><b>Outline</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Outline</em>' attribute.
	 * @see #setOutline(OutlineMm)
	 * @see saddlebar.model.commission.CommissionPackage#getPanel_Outline()
	 * @model dataType="saddlebar.model.commission.Outline"
	 * @generated
	 */
	OutlineMm getOutline();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Panel#getOutline <em>Outline</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Outline</em>' attribute.
	 * @see #getOutline()
	 * @generated
	 */
	void setOutline(OutlineMm value);

	/**
	 * Returns the value of the '<em><b>Join</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.JoinKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Join</em>' attribute.
	 * @see saddlebar.model.commission.JoinKind
	 * @see #setJoin(JoinKind)
	 * @see saddlebar.model.commission.CommissionPackage#getPanel_Join()
	 * @model
	 * @generated
	 */
	JoinKind getJoin();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Panel#getJoin <em>Join</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Join</em>' attribute.
	 * @see saddlebar.model.commission.JoinKind
	 * @see #getJoin()
	 * @generated
	 */
	void setJoin(JoinKind value);

	/**
	 * Returns the value of the '<em><b>Gap Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Absent: the commission's.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Gap Mm</em>' attribute.
	 * @see #setGapMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getPanel_GapMm()
	 * @model
	 * @generated
	 */
	Double getGapMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Panel#getGapMm <em>Gap Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gap Mm</em>' attribute.
	 * @see #getGapMm()
	 * @generated
	 */
	void setGapMm(Double value);

	/**
	 * Returns the value of the '<em><b>Join Stock</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Join Stock</em>' reference.
	 * @see #setJoinStock(JoinStock)
	 * @see saddlebar.model.commission.CommissionPackage#getPanel_JoinStock()
	 * @model
	 * @generated
	 */
	JoinStock getJoinStock();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Panel#getJoinStock <em>Join Stock</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Join Stock</em>' reference.
	 * @see #getJoinStock()
	 * @generated
	 */
	void setJoinStock(JoinStock value);

	/**
	 * Returns the value of the '<em><b>Artwork</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.ArtworkReference}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.ArtworkReference#getPanel <em>Panel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Every revision, the latest last.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Artwork</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getPanel_Artwork()
	 * @see saddlebar.model.commission.ArtworkReference#getPanel
	 * @model opposite="panel" containment="true"
	 * @generated
	 */
	EList<ArtworkReference> getArtwork();

	/**
	 * Returns the value of the '<em><b>Pieces</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.Piece}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Piece#getPanel <em>Panel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Pieces</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getPanel_Pieces()
	 * @see saddlebar.model.commission.Piece#getPanel
	 * @model opposite="panel" containment="true"
	 * @generated
	 */
	EList<Piece> getPieces();

	/**
	 * Returns the value of the '<em><b>Layers</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.DesignLayer}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.DesignLayer#getPanel <em>Panel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Layers</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getPanel_Layers()
	 * @see saddlebar.model.commission.DesignLayer#getPanel
	 * @model opposite="panel" containment="true"
	 * @generated
	 */
	EList<DesignLayer> getLayers();

	/**
	 * Returns the value of the '<em><b>Content Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Hash of all that the pieces were made from.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Content Key</em>' attribute.
	 * @see #setContentKey(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPanel_ContentKey()
	 * @model
	 * @generated
	 */
	String getContentKey();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Panel#getContentKey <em>Content Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Content Key</em>' attribute.
	 * @see #getContentKey()
	 * @generated
	 */
	void setContentKey(String value);

	/**
	 * Returns the value of the '<em><b>Edge Allowance Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Comes off the glass at the outer edge; absent: nothing.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Edge Allowance Mm</em>' attribute.
	 * @see #setEdgeAllowanceMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getPanel_EdgeAllowanceMm()
	 * @model
	 * @generated
	 */
	Double getEdgeAllowanceMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Panel#getEdgeAllowanceMm <em>Edge Allowance Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Edge Allowance Mm</em>' attribute.
	 * @see #getEdgeAllowanceMm()
	 * @generated
	 */
	void setEdgeAllowanceMm(Double value);

	/**
	 * Returns the value of the '<em><b>Outline Element</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Element of the artwork that is the outer edge; absent: the outer edge of all pieces.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Outline Element</em>' attribute.
	 * @see #setOutlineElement(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPanel_OutlineElement()
	 * @model
	 * @generated
	 */
	String getOutlineElement();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Panel#getOutlineElement <em>Outline Element</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Outline Element</em>' attribute.
	 * @see #getOutlineElement()
	 * @generated
	 */
	void setOutlineElement(String value);

	/**
	 * Returns the value of the '<em><b>Mendings</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.AcceptedMend}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.AcceptedMend#getPanel <em>Panel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mends of the cutline that a person agreed to; the artwork is never changed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Mendings</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getPanel_Mendings()
	 * @see saddlebar.model.commission.AcceptedMend#getPanel
	 * @model opposite="panel" containment="true"
	 * @generated
	 */
	EList<AcceptedMend> getMendings();

	/**
	 * Returns the value of the '<em><b>Join Rules</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.JoinRule}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.JoinRule#getPanel <em>Panel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where the panel is joined otherwise than as a whole.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Join Rules</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getPanel_JoinRules()
	 * @see saddlebar.model.commission.JoinRule#getPanel
	 * @model opposite="panel" containment="true"
	 * @generated
	 */
	EList<JoinRule> getJoinRules();

} // Panel
