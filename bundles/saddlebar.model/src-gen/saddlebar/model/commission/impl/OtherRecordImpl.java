/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import org.eclipse.emf.ecore.EClass;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.OtherRecord;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Other Record</b></em>'.
 * <!-- end-user-doc -->
 *
 * @generated
 */
public class OtherRecordImpl extends MakingRecordImpl implements OtherRecord {
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected OtherRecordImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.OTHER_RECORD;
	}

} //OtherRecordImpl
