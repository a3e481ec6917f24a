/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Paint Mix</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * kind mix
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.PaintMix#getName <em>Name</em>}</li>
 *   <li>{@link saddlebar.model.commission.PaintMix#getPaintId <em>Paint Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.PaintMix#getLotId <em>Lot Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.PaintMix#getMediumId <em>Medium Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.PaintMix#getPowderG <em>Powder G</em>}</li>
 *   <li>{@link saddlebar.model.commission.PaintMix#getMediumG <em>Medium G</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getPaintMix()
 * @model
 * @generated
 */
public interface PaintMix extends MakingRecord {
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPaintMix_Name()
	 * @model
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PaintMix#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Paint Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Paint Id</em>' attribute.
	 * @see #setPaintId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPaintMix_PaintId()
	 * @model
	 * @generated
	 */
	String getPaintId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PaintMix#getPaintId <em>Paint Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Paint Id</em>' attribute.
	 * @see #getPaintId()
	 * @generated
	 */
	void setPaintId(String value);

	/**
	 * Returns the value of the '<em><b>Lot Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lot Id</em>' attribute.
	 * @see #setLotId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPaintMix_LotId()
	 * @model
	 * @generated
	 */
	String getLotId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PaintMix#getLotId <em>Lot Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lot Id</em>' attribute.
	 * @see #getLotId()
	 * @generated
	 */
	void setLotId(String value);

	/**
	 * Returns the value of the '<em><b>Medium Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Medium Id</em>' attribute.
	 * @see #setMediumId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPaintMix_MediumId()
	 * @model
	 * @generated
	 */
	String getMediumId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PaintMix#getMediumId <em>Medium Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Medium Id</em>' attribute.
	 * @see #getMediumId()
	 * @generated
	 */
	void setMediumId(String value);

	/**
	 * Returns the value of the '<em><b>Powder G</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Powder G</em>' attribute.
	 * @see #setPowderG(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getPaintMix_PowderG()
	 * @model
	 * @generated
	 */
	Double getPowderG();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PaintMix#getPowderG <em>Powder G</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Powder G</em>' attribute.
	 * @see #getPowderG()
	 * @generated
	 */
	void setPowderG(Double value);

	/**
	 * Returns the value of the '<em><b>Medium G</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Medium G</em>' attribute.
	 * @see #setMediumG(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getPaintMix_MediumG()
	 * @model
	 * @generated
	 */
	Double getMediumG();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PaintMix#getMediumG <em>Medium G</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Medium G</em>' attribute.
	 * @see #getMediumG()
	 * @generated
	 */
	void setMediumG(Double value);

} // PaintMix
