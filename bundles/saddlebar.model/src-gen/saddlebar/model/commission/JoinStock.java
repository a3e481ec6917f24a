/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.math.BigDecimal;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Join Stock</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Foil or came as bought.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.JoinStock#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.JoinStock#getKind <em>Kind</em>}</li>
 *   <li>{@link saddlebar.model.commission.JoinStock#getThicknessUm <em>Thickness Um</em>}</li>
 *   <li>{@link saddlebar.model.commission.JoinStock#getWidthMm <em>Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.JoinStock#getHeartMm <em>Heart Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.JoinStock#getFaceMm <em>Face Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.JoinStock#getMassGPerM <em>Mass GPer M</em>}</li>
 *   <li>{@link saddlebar.model.commission.JoinStock#getPricePerM <em>Price Per M</em>}</li>
 *   <li>{@link saddlebar.model.commission.JoinStock#getSource <em>Source</em>}</li>
 *   <li>{@link saddlebar.model.commission.JoinStock#getSoldLengthMm <em>Sold Length Mm</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getJoinStock()
 * @model
 * @generated
 */
public interface JoinStock extends Named {
	/**
	 * Returns the value of the '<em><b>Studio</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Studio#getJoins <em>Joins</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Studio</em>' container reference.
	 * @see #setStudio(Studio)
	 * @see saddlebar.model.commission.CommissionPackage#getJoinStock_Studio()
	 * @see saddlebar.model.commission.Studio#getJoins
	 * @model opposite="joins" resolveProxies="false" transient="false"
	 * @generated
	 */
	Studio getStudio();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.JoinStock#getStudio <em>Studio</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Studio</em>' container reference.
	 * @see #getStudio()
	 * @generated
	 */
	void setStudio(Studio value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.JoinKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see saddlebar.model.commission.JoinKind
	 * @see #setKind(JoinKind)
	 * @see saddlebar.model.commission.CommissionPackage#getJoinStock_Kind()
	 * @model
	 * @generated
	 */
	JoinKind getKind();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.JoinStock#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see saddlebar.model.commission.JoinKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(JoinKind value);

	/**
	 * Returns the value of the '<em><b>Thickness Um</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of foil.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Thickness Um</em>' attribute.
	 * @see #setThicknessUm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getJoinStock_ThicknessUm()
	 * @model
	 * @generated
	 */
	double getThicknessUm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.JoinStock#getThicknessUm <em>Thickness Um</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Thickness Um</em>' attribute.
	 * @see #getThicknessUm()
	 * @generated
	 */
	void setThicknessUm(double value);

	/**
	 * Returns the value of the '<em><b>Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of foil before folding.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Width Mm</em>' attribute.
	 * @see #setWidthMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getJoinStock_WidthMm()
	 * @model
	 * @generated
	 */
	double getWidthMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.JoinStock#getWidthMm <em>Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width Mm</em>' attribute.
	 * @see #getWidthMm()
	 * @generated
	 */
	void setWidthMm(double value);

	/**
	 * Returns the value of the '<em><b>Heart Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of came.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Heart Mm</em>' attribute.
	 * @see #setHeartMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getJoinStock_HeartMm()
	 * @model
	 * @generated
	 */
	double getHeartMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.JoinStock#getHeartMm <em>Heart Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Heart Mm</em>' attribute.
	 * @see #getHeartMm()
	 * @generated
	 */
	void setHeartMm(double value);

	/**
	 * Returns the value of the '<em><b>Face Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Width of the line it shows.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Face Mm</em>' attribute.
	 * @see #setFaceMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getJoinStock_FaceMm()
	 * @model
	 * @generated
	 */
	double getFaceMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.JoinStock#getFaceMm <em>Face Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Face Mm</em>' attribute.
	 * @see #getFaceMm()
	 * @generated
	 */
	void setFaceMm(double value);

	/**
	 * Returns the value of the '<em><b>Mass GPer M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mass GPer M</em>' attribute.
	 * @see #setMassGPerM(double)
	 * @see saddlebar.model.commission.CommissionPackage#getJoinStock_MassGPerM()
	 * @model
	 * @generated
	 */
	double getMassGPerM();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.JoinStock#getMassGPerM <em>Mass GPer M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mass GPer M</em>' attribute.
	 * @see #getMassGPerM()
	 * @generated
	 */
	void setMassGPerM(double value);

	/**
	 * Returns the value of the '<em><b>Price Per M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Price Per M</em>' attribute.
	 * @see #setPricePerM(BigDecimal)
	 * @see saddlebar.model.commission.CommissionPackage#getJoinStock_PricePerM()
	 * @model
	 * @generated
	 */
	BigDecimal getPricePerM();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.JoinStock#getPricePerM <em>Price Per M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Price Per M</em>' attribute.
	 * @see #getPricePerM()
	 * @generated
	 */
	void setPricePerM(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see saddlebar.model.commission.CommissionPackage#getJoinStock_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.JoinStock#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

	/**
	 * Returns the value of the '<em><b>Sold Length Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Length in which it is sold: a rod of came, a roll of foil.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sold Length Mm</em>' attribute.
	 * @see #setSoldLengthMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getJoinStock_SoldLengthMm()
	 * @model
	 * @generated
	 */
	Double getSoldLengthMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.JoinStock#getSoldLengthMm <em>Sold Length Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sold Length Mm</em>' attribute.
	 * @see #getSoldLengthMm()
	 * @generated
	 */
	void setSoldLengthMm(Double value);

} // JoinStock
