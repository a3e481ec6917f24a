/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Design Layer</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What is drawn over the cutline with one paint on one face.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.DesignLayer#getPanel <em>Panel</em>}</li>
 *   <li>{@link saddlebar.model.commission.DesignLayer#getRole <em>Role</em>}</li>
 *   <li>{@link saddlebar.model.commission.DesignLayer#getArtLayer <em>Art Layer</em>}</li>
 *   <li>{@link saddlebar.model.commission.DesignLayer#getFace <em>Face</em>}</li>
 *   <li>{@link saddlebar.model.commission.DesignLayer#getPaint <em>Paint</em>}</li>
 *   <li>{@link saddlebar.model.commission.DesignLayer#getMedium <em>Medium</em>}</li>
 *   <li>{@link saddlebar.model.commission.DesignLayer#getMesh <em>Mesh</em>}</li>
 *   <li>{@link saddlebar.model.commission.DesignLayer#getSchedule <em>Schedule</em>}</li>
 *   <li>{@link saddlebar.model.commission.DesignLayer#getFiringOrder <em>Firing Order</em>}</li>
 *   <li>{@link saddlebar.model.commission.DesignLayer#getBleedMm <em>Bleed Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.DesignLayer#getSightLine <em>Sight Line</em>}</li>
 *   <li>{@link saddlebar.model.commission.DesignLayer#getSightLineMm <em>Sight Line Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.DesignLayer#isByHand <em>By Hand</em>}</li>
 *   <li>{@link saddlebar.model.commission.DesignLayer#getRecipe <em>Recipe</em>}</li>
 *   <li>{@link saddlebar.model.commission.DesignLayer#getStencils <em>Stencils</em>}</li>
 *   <li>{@link saddlebar.model.commission.DesignLayer#getState <em>State</em>}</li>
 *   <li>{@link saddlebar.model.commission.DesignLayer#getContentKey <em>Content Key</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getDesignLayer()
 * @model
 * @generated
 */
public interface DesignLayer extends Named {
	/**
	 * Returns the value of the '<em><b>Panel</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Panel#getLayers <em>Layers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Panel</em>' container reference.
	 * @see #setPanel(Panel)
	 * @see saddlebar.model.commission.CommissionPackage#getDesignLayer_Panel()
	 * @see saddlebar.model.commission.Panel#getLayers
	 * @model opposite="layers" resolveProxies="false" transient="false"
	 * @generated
	 */
	Panel getPanel();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.DesignLayer#getPanel <em>Panel</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Panel</em>' container reference.
	 * @see #getPanel()
	 * @generated
	 */
	void setPanel(Panel value);

	/**
	 * Returns the value of the '<em><b>Role</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.LayerRole}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Role</em>' attribute.
	 * @see saddlebar.model.commission.LayerRole
	 * @see #setRole(LayerRole)
	 * @see saddlebar.model.commission.CommissionPackage#getDesignLayer_Role()
	 * @model
	 * @generated
	 */
	LayerRole getRole();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.DesignLayer#getRole <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Role</em>' attribute.
	 * @see saddlebar.model.commission.LayerRole
	 * @see #getRole()
	 * @generated
	 */
	void setRole(LayerRole value);

	/**
	 * Returns the value of the '<em><b>Art Layer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Id or label of the layer in the artwork.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Art Layer</em>' attribute.
	 * @see #setArtLayer(String)
	 * @see saddlebar.model.commission.CommissionPackage#getDesignLayer_ArtLayer()
	 * @model
	 * @generated
	 */
	String getArtLayer();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.DesignLayer#getArtLayer <em>Art Layer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Art Layer</em>' attribute.
	 * @see #getArtLayer()
	 * @generated
	 */
	void setArtLayer(String value);

	/**
	 * Returns the value of the '<em><b>Face</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.Face}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Face</em>' attribute.
	 * @see saddlebar.model.commission.Face
	 * @see #setFace(Face)
	 * @see saddlebar.model.commission.CommissionPackage#getDesignLayer_Face()
	 * @model
	 * @generated
	 */
	Face getFace();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.DesignLayer#getFace <em>Face</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Face</em>' attribute.
	 * @see saddlebar.model.commission.Face
	 * @see #getFace()
	 * @generated
	 */
	void setFace(Face value);

	/**
	 * Returns the value of the '<em><b>Paint</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Paint</em>' reference.
	 * @see #setPaint(Paint)
	 * @see saddlebar.model.commission.CommissionPackage#getDesignLayer_Paint()
	 * @model
	 * @generated
	 */
	Paint getPaint();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.DesignLayer#getPaint <em>Paint</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Paint</em>' reference.
	 * @see #getPaint()
	 * @generated
	 */
	void setPaint(Paint value);

	/**
	 * Returns the value of the '<em><b>Medium</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Medium</em>' reference.
	 * @see #setMedium(Medium)
	 * @see saddlebar.model.commission.CommissionPackage#getDesignLayer_Medium()
	 * @model
	 * @generated
	 */
	Medium getMedium();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.DesignLayer#getMedium <em>Medium</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Medium</em>' reference.
	 * @see #getMedium()
	 * @generated
	 */
	void setMedium(Medium value);

	/**
	 * Returns the value of the '<em><b>Mesh</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mesh</em>' reference.
	 * @see #setMesh(Mesh)
	 * @see saddlebar.model.commission.CommissionPackage#getDesignLayer_Mesh()
	 * @model
	 * @generated
	 */
	Mesh getMesh();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.DesignLayer#getMesh <em>Mesh</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mesh</em>' reference.
	 * @see #getMesh()
	 * @generated
	 */
	void setMesh(Mesh value);

	/**
	 * Returns the value of the '<em><b>Schedule</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Schedule</em>' reference.
	 * @see #setSchedule(FiringSchedule)
	 * @see saddlebar.model.commission.CommissionPackage#getDesignLayer_Schedule()
	 * @model
	 * @generated
	 */
	FiringSchedule getSchedule();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.DesignLayer#getSchedule <em>Schedule</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Schedule</em>' reference.
	 * @see #getSchedule()
	 * @generated
	 */
	void setSchedule(FiringSchedule value);

	/**
	 * Returns the value of the '<em><b>Firing Order</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Layers of one number share a firing; lower numbers first.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Firing Order</em>' attribute.
	 * @see #setFiringOrder(int)
	 * @see saddlebar.model.commission.CommissionPackage#getDesignLayer_FiringOrder()
	 * @model default="1"
	 * @generated
	 */
	int getFiringOrder();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.DesignLayer#getFiringOrder <em>Firing Order</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Firing Order</em>' attribute.
	 * @see #getFiringOrder()
	 * @generated
	 */
	void setFiringOrder(int value);

	/**
	 * Returns the value of the '<em><b>Bleed Mm</b></em>' attribute.
	 * The default value is <code>"1.5"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Painted past the cut edge.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bleed Mm</em>' attribute.
	 * @see #setBleedMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getDesignLayer_BleedMm()
	 * @model default="1.5"
	 * @generated
	 */
	double getBleedMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.DesignLayer#getBleedMm <em>Bleed Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bleed Mm</em>' attribute.
	 * @see #getBleedMm()
	 * @generated
	 */
	void setBleedMm(double value);

	/**
	 * Returns the value of the '<em><b>Sight Line</b></em>' attribute.
	 * The default value is <code>"print under"</code>.
	 * The literals are from the enumeration {@link saddlebar.model.commission.SightLineRule}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sight Line</em>' attribute.
	 * @see saddlebar.model.commission.SightLineRule
	 * @see #setSightLine(SightLineRule)
	 * @see saddlebar.model.commission.CommissionPackage#getDesignLayer_SightLine()
	 * @model default="print under"
	 * @generated
	 */
	SightLineRule getSightLine();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.DesignLayer#getSightLine <em>Sight Line</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sight Line</em>' attribute.
	 * @see saddlebar.model.commission.SightLineRule
	 * @see #getSightLine()
	 * @generated
	 */
	void setSightLine(SightLineRule value);

	/**
	 * Returns the value of the '<em><b>Sight Line Mm</b></em>' attribute.
	 * The default value is <code>"2.5"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Covered by foil or came, from the cut edge.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sight Line Mm</em>' attribute.
	 * @see #setSightLineMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getDesignLayer_SightLineMm()
	 * @model default="2.5"
	 * @generated
	 */
	double getSightLineMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.DesignLayer#getSightLineMm <em>Sight Line Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sight Line Mm</em>' attribute.
	 * @see #getSightLineMm()
	 * @generated
	 */
	void setSightLineMm(double value);

	/**
	 * Returns the value of the '<em><b>By Hand</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Painted by hand: no stencil, but paint, firing, cost and record.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>By Hand</em>' attribute.
	 * @see #setByHand(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getDesignLayer_ByHand()
	 * @model
	 * @generated
	 */
	boolean isByHand();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.DesignLayer#isByHand <em>By Hand</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>By Hand</em>' attribute.
	 * @see #isByHand()
	 * @generated
	 */
	void setByHand(boolean value);

	/**
	 * Returns the value of the '<em><b>Recipe</b></em>' containment reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.StencilRecipe#getLayer <em>Layer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Recipe</em>' containment reference.
	 * @see #setRecipe(StencilRecipe)
	 * @see saddlebar.model.commission.CommissionPackage#getDesignLayer_Recipe()
	 * @see saddlebar.model.commission.StencilRecipe#getLayer
	 * @model opposite="layer" containment="true"
	 * @generated
	 */
	StencilRecipe getRecipe();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.DesignLayer#getRecipe <em>Recipe</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Recipe</em>' containment reference.
	 * @see #getRecipe()
	 * @generated
	 */
	void setRecipe(StencilRecipe value);

	/**
	 * Returns the value of the '<em><b>Stencils</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.Stencil}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Stencil#getLayer <em>Layer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stencils</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getDesignLayer_Stencils()
	 * @see saddlebar.model.commission.Stencil#getLayer
	 * @model opposite="layer" containment="true"
	 * @generated
	 */
	EList<Stencil> getStencils();

	/**
	 * Returns the value of the '<em><b>State</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.MakingState}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>State</em>' attribute.
	 * @see saddlebar.model.commission.MakingState
	 * @see #setState(MakingState)
	 * @see saddlebar.model.commission.CommissionPackage#getDesignLayer_State()
	 * @model
	 * @generated
	 */
	MakingState getState();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.DesignLayer#getState <em>State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>State</em>' attribute.
	 * @see saddlebar.model.commission.MakingState
	 * @see #getState()
	 * @generated
	 */
	void setState(MakingState value);

	/**
	 * Returns the value of the '<em><b>Content Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Hash of all that its stencils were made from.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Content Key</em>' attribute.
	 * @see #setContentKey(String)
	 * @see saddlebar.model.commission.CommissionPackage#getDesignLayer_ContentKey()
	 * @model
	 * @generated
	 */
	String getContentKey();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.DesignLayer#getContentKey <em>Content Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Content Key</em>' attribute.
	 * @see #getContentKey()
	 * @generated
	 */
	void setContentKey(String value);

} // DesignLayer
