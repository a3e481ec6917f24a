/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.math.BigDecimal;

import java.time.LocalDate;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Paint Lot</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One bought batch; name is the batch's number.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.PaintLot#getPaint <em>Paint</em>}</li>
 *   <li>{@link saddlebar.model.commission.PaintLot#getReceived <em>Received</em>}</li>
 *   <li>{@link saddlebar.model.commission.PaintLot#getMassG <em>Mass G</em>}</li>
 *   <li>{@link saddlebar.model.commission.PaintLot#getPricePerKg <em>Price Per Kg</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getPaintLot()
 * @model
 * @generated
 */
public interface PaintLot extends Named {
	/**
	 * Returns the value of the '<em><b>Paint</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Paint#getLots <em>Lots</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Paint</em>' container reference.
	 * @see #setPaint(Paint)
	 * @see saddlebar.model.commission.CommissionPackage#getPaintLot_Paint()
	 * @see saddlebar.model.commission.Paint#getLots
	 * @model opposite="lots" resolveProxies="false" transient="false"
	 * @generated
	 */
	Paint getPaint();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PaintLot#getPaint <em>Paint</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Paint</em>' container reference.
	 * @see #getPaint()
	 * @generated
	 */
	void setPaint(Paint value);

	/**
	 * Returns the value of the '<em><b>Received</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Received</em>' attribute.
	 * @see #setReceived(LocalDate)
	 * @see saddlebar.model.commission.CommissionPackage#getPaintLot_Received()
	 * @model dataType="saddlebar.model.commission.Day"
	 * @generated
	 */
	LocalDate getReceived();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PaintLot#getReceived <em>Received</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Received</em>' attribute.
	 * @see #getReceived()
	 * @generated
	 */
	void setReceived(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Mass G</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mass G</em>' attribute.
	 * @see #setMassG(double)
	 * @see saddlebar.model.commission.CommissionPackage#getPaintLot_MassG()
	 * @model
	 * @generated
	 */
	double getMassG();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PaintLot#getMassG <em>Mass G</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mass G</em>' attribute.
	 * @see #getMassG()
	 * @generated
	 */
	void setMassG(double value);

	/**
	 * Returns the value of the '<em><b>Price Per Kg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Price Per Kg</em>' attribute.
	 * @see #setPricePerKg(BigDecimal)
	 * @see saddlebar.model.commission.CommissionPackage#getPaintLot_PricePerKg()
	 * @model
	 * @generated
	 */
	BigDecimal getPricePerKg();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PaintLot#getPricePerKg <em>Price Per Kg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Price Per Kg</em>' attribute.
	 * @see #getPricePerKg()
	 * @generated
	 */
	void setPricePerKg(BigDecimal value);

} // PaintLot
