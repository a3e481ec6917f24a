/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Glazing</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * kind glaze
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Glazing#getWindowId <em>Window Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.Glazing#getPanelId <em>Panel Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.Glazing#getPieceIds <em>Piece Ids</em>}</li>
 *   <li>{@link saddlebar.model.commission.Glazing#getJoin <em>Join</em>}</li>
 *   <li>{@link saddlebar.model.commission.Glazing#getMassKg <em>Mass Kg</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getGlazing()
 * @model
 * @generated
 */
public interface Glazing extends MakingRecord {
	/**
	 * Returns the value of the '<em><b>Window Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Window Id</em>' attribute.
	 * @see #setWindowId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getGlazing_WindowId()
	 * @model
	 * @generated
	 */
	String getWindowId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Glazing#getWindowId <em>Window Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Window Id</em>' attribute.
	 * @see #getWindowId()
	 * @generated
	 */
	void setWindowId(String value);

	/**
	 * Returns the value of the '<em><b>Panel Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Panel Id</em>' attribute.
	 * @see #setPanelId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getGlazing_PanelId()
	 * @model
	 * @generated
	 */
	String getPanelId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Glazing#getPanelId <em>Panel Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Panel Id</em>' attribute.
	 * @see #getPanelId()
	 * @generated
	 */
	void setPanelId(String value);

	/**
	 * Returns the value of the '<em><b>Piece Ids</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Piece Ids</em>' attribute list.
	 * @see saddlebar.model.commission.CommissionPackage#getGlazing_PieceIds()
	 * @model
	 * @generated
	 */
	EList<String> getPieceIds();

	/**
	 * Returns the value of the '<em><b>Join</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.JoinKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Join</em>' attribute.
	 * @see saddlebar.model.commission.JoinKind
	 * @see #setJoin(JoinKind)
	 * @see saddlebar.model.commission.CommissionPackage#getGlazing_Join()
	 * @model
	 * @generated
	 */
	JoinKind getJoin();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Glazing#getJoin <em>Join</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Join</em>' attribute.
	 * @see saddlebar.model.commission.JoinKind
	 * @see #getJoin()
	 * @generated
	 */
	void setJoin(JoinKind value);

	/**
	 * Returns the value of the '<em><b>Mass Kg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mass Kg</em>' attribute.
	 * @see #setMassKg(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getGlazing_MassKg()
	 * @model
	 * @generated
	 */
	Double getMassKg();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Glazing#getMassKg <em>Mass Kg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mass Kg</em>' attribute.
	 * @see #getMassKg()
	 * @generated
	 */
	void setMassKg(Double value);

} // Glazing
