/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Kiln</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Kiln#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.Kiln#getShelfWidthMm <em>Shelf Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Kiln#getShelfDepthMm <em>Shelf Depth Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Kiln#getShelves <em>Shelves</em>}</li>
 *   <li>{@link saddlebar.model.commission.Kiln#getMaxC <em>Max C</em>}</li>
 *   <li>{@link saddlebar.model.commission.Kiln#getMaxRateKPerH <em>Max Rate KPer H</em>}</li>
 *   <li>{@link saddlebar.model.commission.Kiln#getNaturalFallKPerH <em>Natural Fall KPer H</em>}</li>
 *   <li>{@link saddlebar.model.commission.Kiln#getPowerKw <em>Power Kw</em>}</li>
 *   <li>{@link saddlebar.model.commission.Kiln#getOffsetK <em>Offset K</em>}</li>
 *   <li>{@link saddlebar.model.commission.Kiln#getSource <em>Source</em>}</li>
 *   <li>{@link saddlebar.model.commission.Kiln#getChamberJPerK <em>Chamber JPer K</em>}</li>
 *   <li>{@link saddlebar.model.commission.Kiln#getLiningJPerK <em>Lining JPer K</em>}</li>
 *   <li>{@link saddlebar.model.commission.Kiln#getToLiningWPerK <em>To Lining WPer K</em>}</li>
 *   <li>{@link saddlebar.model.commission.Kiln#getToRoomWPerK <em>To Room WPer K</em>}</li>
 *   <li>{@link saddlebar.model.commission.Kiln#getLearntFirings <em>Learnt Firings</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getKiln()
 * @model
 * @generated
 */
public interface Kiln extends Named {
	/**
	 * Returns the value of the '<em><b>Studio</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Studio#getKilns <em>Kilns</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Studio</em>' container reference.
	 * @see #setStudio(Studio)
	 * @see saddlebar.model.commission.CommissionPackage#getKiln_Studio()
	 * @see saddlebar.model.commission.Studio#getKilns
	 * @model opposite="kilns" resolveProxies="false" transient="false"
	 * @generated
	 */
	Studio getStudio();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Kiln#getStudio <em>Studio</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Studio</em>' container reference.
	 * @see #getStudio()
	 * @generated
	 */
	void setStudio(Studio value);

	/**
	 * Returns the value of the '<em><b>Shelf Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Shelf Width Mm</em>' attribute.
	 * @see #setShelfWidthMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getKiln_ShelfWidthMm()
	 * @model
	 * @generated
	 */
	double getShelfWidthMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Kiln#getShelfWidthMm <em>Shelf Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shelf Width Mm</em>' attribute.
	 * @see #getShelfWidthMm()
	 * @generated
	 */
	void setShelfWidthMm(double value);

	/**
	 * Returns the value of the '<em><b>Shelf Depth Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Shelf Depth Mm</em>' attribute.
	 * @see #setShelfDepthMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getKiln_ShelfDepthMm()
	 * @model
	 * @generated
	 */
	double getShelfDepthMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Kiln#getShelfDepthMm <em>Shelf Depth Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shelf Depth Mm</em>' attribute.
	 * @see #getShelfDepthMm()
	 * @generated
	 */
	void setShelfDepthMm(double value);

	/**
	 * Returns the value of the '<em><b>Shelves</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Shelves</em>' attribute.
	 * @see #setShelves(int)
	 * @see saddlebar.model.commission.CommissionPackage#getKiln_Shelves()
	 * @model default="1"
	 * @generated
	 */
	int getShelves();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Kiln#getShelves <em>Shelves</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shelves</em>' attribute.
	 * @see #getShelves()
	 * @generated
	 */
	void setShelves(int value);

	/**
	 * Returns the value of the '<em><b>Max C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Max C</em>' attribute.
	 * @see #setMaxC(double)
	 * @see saddlebar.model.commission.CommissionPackage#getKiln_MaxC()
	 * @model
	 * @generated
	 */
	double getMaxC();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Kiln#getMaxC <em>Max C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Max C</em>' attribute.
	 * @see #getMaxC()
	 * @generated
	 */
	void setMaxC(double value);

	/**
	 * Returns the value of the '<em><b>Max Rate KPer H</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Max Rate KPer H</em>' attribute.
	 * @see #setMaxRateKPerH(double)
	 * @see saddlebar.model.commission.CommissionPackage#getKiln_MaxRateKPerH()
	 * @model
	 * @generated
	 */
	double getMaxRateKPerH();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Kiln#getMaxRateKPerH <em>Max Rate KPer H</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Max Rate KPer H</em>' attribute.
	 * @see #getMaxRateKPerH()
	 * @generated
	 */
	void setMaxRateKPerH(double value);

	/**
	 * Returns the value of the '<em><b>Natural Fall KPer H</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Natural Fall KPer H</em>' attribute.
	 * @see #setNaturalFallKPerH(double)
	 * @see saddlebar.model.commission.CommissionPackage#getKiln_NaturalFallKPerH()
	 * @model
	 * @generated
	 */
	double getNaturalFallKPerH();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Kiln#getNaturalFallKPerH <em>Natural Fall KPer H</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Natural Fall KPer H</em>' attribute.
	 * @see #getNaturalFallKPerH()
	 * @generated
	 */
	void setNaturalFallKPerH(double value);

	/**
	 * Returns the value of the '<em><b>Power Kw</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Power Kw</em>' attribute.
	 * @see #setPowerKw(double)
	 * @see saddlebar.model.commission.CommissionPackage#getKiln_PowerKw()
	 * @model
	 * @generated
	 */
	double getPowerKw();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Kiln#getPowerKw <em>Power Kw</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Power Kw</em>' attribute.
	 * @see #getPowerKw()
	 * @generated
	 */
	void setPowerKw(double value);

	/**
	 * Returns the value of the '<em><b>Offset K</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Added to what its controller shows.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Offset K</em>' attribute.
	 * @see #setOffsetK(double)
	 * @see saddlebar.model.commission.CommissionPackage#getKiln_OffsetK()
	 * @model
	 * @generated
	 */
	double getOffsetK();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Kiln#getOffsetK <em>Offset K</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Offset K</em>' attribute.
	 * @see #getOffsetK()
	 * @generated
	 */
	void setOffsetK(double value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see saddlebar.model.commission.CommissionPackage#getKiln_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Kiln#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

	/**
	 * Returns the value of the '<em><b>Chamber JPer K</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Heat that chamber and usual load take up a K, learnt from logs; absent: from the table.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Chamber JPer K</em>' attribute.
	 * @see #setChamberJPerK(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getKiln_ChamberJPerK()
	 * @model
	 * @generated
	 */
	Double getChamberJPerK();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Kiln#getChamberJPerK <em>Chamber JPer K</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Chamber JPer K</em>' attribute.
	 * @see #getChamberJPerK()
	 * @generated
	 */
	void setChamberJPerK(Double value);

	/**
	 * Returns the value of the '<em><b>Lining JPer K</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Heat that the lining takes up a K, learnt from logs.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lining JPer K</em>' attribute.
	 * @see #setLiningJPerK(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getKiln_LiningJPerK()
	 * @model
	 * @generated
	 */
	Double getLiningJPerK();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Kiln#getLiningJPerK <em>Lining JPer K</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lining JPer K</em>' attribute.
	 * @see #getLiningJPerK()
	 * @generated
	 */
	void setLiningJPerK(Double value);

	/**
	 * Returns the value of the '<em><b>To Lining WPer K</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Conductance from chamber to lining, learnt from logs.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>To Lining WPer K</em>' attribute.
	 * @see #setToLiningWPerK(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getKiln_ToLiningWPerK()
	 * @model
	 * @generated
	 */
	Double getToLiningWPerK();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Kiln#getToLiningWPerK <em>To Lining WPer K</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To Lining WPer K</em>' attribute.
	 * @see #getToLiningWPerK()
	 * @generated
	 */
	void setToLiningWPerK(Double value);

	/**
	 * Returns the value of the '<em><b>To Room WPer K</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Conductance from lining to room, learnt from logs.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>To Room WPer K</em>' attribute.
	 * @see #setToRoomWPerK(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getKiln_ToRoomWPerK()
	 * @model
	 * @generated
	 */
	Double getToRoomWPerK();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Kiln#getToRoomWPerK <em>To Room WPer K</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To Room WPer K</em>' attribute.
	 * @see #getToRoomWPerK()
	 * @generated
	 */
	void setToRoomWPerK(Double value);

	/**
	 * Returns the value of the '<em><b>Learnt Firings</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From how many logs.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Learnt Firings</em>' attribute.
	 * @see #setLearntFirings(int)
	 * @see saddlebar.model.commission.CommissionPackage#getKiln_LearntFirings()
	 * @model
	 * @generated
	 */
	int getLearntFirings();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Kiln#getLearntFirings <em>Learnt Firings</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Learnt Firings</em>' attribute.
	 * @see #getLearntFirings()
	 * @generated
	 */
	void setLearntFirings(int value);

} // Kiln
