/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Reclaim</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * kind reclaim
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Reclaim#getFrameIds <em>Frame Ids</em>}</li>
 *   <li>{@link saddlebar.model.commission.Reclaim#getScreenLoadIds <em>Screen Load Ids</em>}</li>
 *   <li>{@link saddlebar.model.commission.Reclaim#getCleaner <em>Cleaner</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getReclaim()
 * @model
 * @generated
 */
public interface Reclaim extends MakingRecord {
	/**
	 * Returns the value of the '<em><b>Frame Ids</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Frame Ids</em>' attribute list.
	 * @see saddlebar.model.commission.CommissionPackage#getReclaim_FrameIds()
	 * @model
	 * @generated
	 */
	EList<String> getFrameIds();

	/**
	 * Returns the value of the '<em><b>Screen Load Ids</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Screen Load Ids</em>' attribute list.
	 * @see saddlebar.model.commission.CommissionPackage#getReclaim_ScreenLoadIds()
	 * @model
	 * @generated
	 */
	EList<String> getScreenLoadIds();

	/**
	 * Returns the value of the '<em><b>Cleaner</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Cleaner</em>' attribute.
	 * @see #setCleaner(String)
	 * @see saddlebar.model.commission.CommissionPackage#getReclaim_Cleaner()
	 * @model
	 * @generated
	 */
	String getCleaner();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Reclaim#getCleaner <em>Cleaner</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cleaner</em>' attribute.
	 * @see #getCleaner()
	 * @generated
	 */
	void setCleaner(String value);

} // Reclaim
