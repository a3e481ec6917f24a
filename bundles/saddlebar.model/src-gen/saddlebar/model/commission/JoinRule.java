/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Join Rule</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Joined otherwise than the panel: along the lines of a layer of the artwork, or between two pieces. The joint between two pieces counts before a layer.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.JoinRule#getPanel <em>Panel</em>}</li>
 *   <li>{@link saddlebar.model.commission.JoinRule#getArtLayer <em>Art Layer</em>}</li>
 *   <li>{@link saddlebar.model.commission.JoinRule#getFirst <em>First</em>}</li>
 *   <li>{@link saddlebar.model.commission.JoinRule#getSecond <em>Second</em>}</li>
 *   <li>{@link saddlebar.model.commission.JoinRule#getJoin <em>Join</em>}</li>
 *   <li>{@link saddlebar.model.commission.JoinRule#getJoinStock <em>Join Stock</em>}</li>
 *   <li>{@link saddlebar.model.commission.JoinRule#getGapMm <em>Gap Mm</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getJoinRule()
 * @model
 * @generated
 */
public interface JoinRule extends EObject {
	/**
	 * Returns the value of the '<em><b>Panel</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Panel#getJoinRules <em>Join Rules</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Panel</em>' container reference.
	 * @see #setPanel(Panel)
	 * @see saddlebar.model.commission.CommissionPackage#getJoinRule_Panel()
	 * @see saddlebar.model.commission.Panel#getJoinRules
	 * @model opposite="joinRules" resolveProxies="false" transient="false"
	 * @generated
	 */
	Panel getPanel();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.JoinRule#getPanel <em>Panel</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Panel</em>' container reference.
	 * @see #getPanel()
	 * @generated
	 */
	void setPanel(Panel value);

	/**
	 * Returns the value of the '<em><b>Art Layer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Layer of the artwork whose lines are joined so; its lines are cutlines too.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Art Layer</em>' attribute.
	 * @see #setArtLayer(String)
	 * @see saddlebar.model.commission.CommissionPackage#getJoinRule_ArtLayer()
	 * @model
	 * @generated
	 */
	String getArtLayer();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.JoinRule#getArtLayer <em>Art Layer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Art Layer</em>' attribute.
	 * @see #getArtLayer()
	 * @generated
	 */
	void setArtLayer(String value);

	/**
	 * Returns the value of the '<em><b>First</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>First</em>' reference.
	 * @see #setFirst(Piece)
	 * @see saddlebar.model.commission.CommissionPackage#getJoinRule_First()
	 * @model
	 * @generated
	 */
	Piece getFirst();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.JoinRule#getFirst <em>First</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>First</em>' reference.
	 * @see #getFirst()
	 * @generated
	 */
	void setFirst(Piece value);

	/**
	 * Returns the value of the '<em><b>Second</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The other piece; absent with first given: all joints of first.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Second</em>' reference.
	 * @see #setSecond(Piece)
	 * @see saddlebar.model.commission.CommissionPackage#getJoinRule_Second()
	 * @model
	 * @generated
	 */
	Piece getSecond();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.JoinRule#getSecond <em>Second</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Second</em>' reference.
	 * @see #getSecond()
	 * @generated
	 */
	void setSecond(Piece value);

	/**
	 * Returns the value of the '<em><b>Join</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.JoinKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Join</em>' attribute.
	 * @see saddlebar.model.commission.JoinKind
	 * @see #setJoin(JoinKind)
	 * @see saddlebar.model.commission.CommissionPackage#getJoinRule_Join()
	 * @model
	 * @generated
	 */
	JoinKind getJoin();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.JoinRule#getJoin <em>Join</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Join</em>' attribute.
	 * @see saddlebar.model.commission.JoinKind
	 * @see #getJoin()
	 * @generated
	 */
	void setJoin(JoinKind value);

	/**
	 * Returns the value of the '<em><b>Join Stock</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Foil or came section; absent: only the gap counts.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Join Stock</em>' reference.
	 * @see #setJoinStock(JoinStock)
	 * @see saddlebar.model.commission.CommissionPackage#getJoinRule_JoinStock()
	 * @model
	 * @generated
	 */
	JoinStock getJoinStock();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.JoinRule#getJoinStock <em>Join Stock</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Join Stock</em>' reference.
	 * @see #getJoinStock()
	 * @generated
	 */
	void setJoinStock(JoinStock value);

	/**
	 * Returns the value of the '<em><b>Gap Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Between glasses, all in; absent: as the foil or came needs.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Gap Mm</em>' attribute.
	 * @see #setGapMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getJoinRule_GapMm()
	 * @model
	 * @generated
	 */
	Double getGapMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.JoinRule#getGapMm <em>Gap Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gap Mm</em>' attribute.
	 * @see #getGapMm()
	 * @generated
	 */
	void setGapMm(Double value);

} // JoinRule
