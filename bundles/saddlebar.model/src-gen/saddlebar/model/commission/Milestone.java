/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.time.LocalDate;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Milestone</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Milestone#getCommission <em>Commission</em>}</li>
 *   <li>{@link saddlebar.model.commission.Milestone#getDue <em>Due</em>}</li>
 *   <li>{@link saddlebar.model.commission.Milestone#getDone <em>Done</em>}</li>
 *   <li>{@link saddlebar.model.commission.Milestone#getWorkShare <em>Work Share</em>}</li>
 *   <li>{@link saddlebar.model.commission.Milestone#getPayShare <em>Pay Share</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getMilestone()
 * @model
 * @generated
 */
public interface Milestone extends Named {
	/**
	 * Returns the value of the '<em><b>Commission</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Commission#getMilestones <em>Milestones</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Commission</em>' container reference.
	 * @see #setCommission(Commission)
	 * @see saddlebar.model.commission.CommissionPackage#getMilestone_Commission()
	 * @see saddlebar.model.commission.Commission#getMilestones
	 * @model opposite="milestones" resolveProxies="false" transient="false"
	 * @generated
	 */
	Commission getCommission();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Milestone#getCommission <em>Commission</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Commission</em>' container reference.
	 * @see #getCommission()
	 * @generated
	 */
	void setCommission(Commission value);

	/**
	 * Returns the value of the '<em><b>Due</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Due</em>' attribute.
	 * @see #setDue(LocalDate)
	 * @see saddlebar.model.commission.CommissionPackage#getMilestone_Due()
	 * @model dataType="saddlebar.model.commission.Day"
	 * @generated
	 */
	LocalDate getDue();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Milestone#getDue <em>Due</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Due</em>' attribute.
	 * @see #getDue()
	 * @generated
	 */
	void setDue(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Done</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Done</em>' attribute.
	 * @see #setDone(LocalDate)
	 * @see saddlebar.model.commission.CommissionPackage#getMilestone_Done()
	 * @model dataType="saddlebar.model.commission.Day"
	 * @generated
	 */
	LocalDate getDone();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Milestone#getDone <em>Done</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Done</em>' attribute.
	 * @see #getDone()
	 * @generated
	 */
	void setDone(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Work Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of all work that is done when it is reached, 0 to 1: for earned value.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Work Share</em>' attribute.
	 * @see #setWorkShare(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getMilestone_WorkShare()
	 * @model
	 * @generated
	 */
	Double getWorkShare();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Milestone#getWorkShare <em>Work Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Work Share</em>' attribute.
	 * @see #getWorkShare()
	 * @generated
	 */
	void setWorkShare(Double value);

	/**
	 * Returns the value of the '<em><b>Pay Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of the price that falls due, 0 to 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Pay Share</em>' attribute.
	 * @see #setPayShare(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getMilestone_PayShare()
	 * @model
	 * @generated
	 */
	Double getPayShare();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Milestone#getPayShare <em>Pay Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pay Share</em>' attribute.
	 * @see #getPayShare()
	 * @generated
	 */
	void setPayShare(Double value);

} // Milestone
