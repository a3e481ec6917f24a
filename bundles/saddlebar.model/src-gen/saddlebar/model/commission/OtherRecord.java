/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Other Record</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A kind that this version does not know; kept whole.
 * <!-- end-model-doc -->
 *
 *
 * @see saddlebar.model.commission.CommissionPackage#getOtherRecord()
 * @model
 * @generated
 */
public interface OtherRecord extends MakingRecord {
} // OtherRecord
