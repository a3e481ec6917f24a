/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Print Run</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * kind pull
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.PrintRun#getScreenLoadId <em>Screen Load Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.PrintRun#getStencilId <em>Stencil Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.PrintRun#getMixId <em>Mix Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.PrintRun#getWindowId <em>Window Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.PrintRun#getLayerId <em>Layer Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.PrintRun#getPieceIds <em>Piece Ids</em>}</li>
 *   <li>{@link saddlebar.model.commission.PrintRun#getPulls <em>Pulls</em>}</li>
 *   <li>{@link saddlebar.model.commission.PrintRun#getTemperatureC <em>Temperature C</em>}</li>
 *   <li>{@link saddlebar.model.commission.PrintRun#getHumidity <em>Humidity</em>}</li>
 *   <li>{@link saddlebar.model.commission.PrintRun#getBed <em>Bed</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getPrintRun()
 * @model
 * @generated
 */
public interface PrintRun extends MakingRecord {
	/**
	 * Returns the value of the '<em><b>Screen Load Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Screen Load Id</em>' attribute.
	 * @see #setScreenLoadId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPrintRun_ScreenLoadId()
	 * @model
	 * @generated
	 */
	String getScreenLoadId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PrintRun#getScreenLoadId <em>Screen Load Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Screen Load Id</em>' attribute.
	 * @see #getScreenLoadId()
	 * @generated
	 */
	void setScreenLoadId(String value);

	/**
	 * Returns the value of the '<em><b>Stencil Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stencil Id</em>' attribute.
	 * @see #setStencilId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPrintRun_StencilId()
	 * @model
	 * @generated
	 */
	String getStencilId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PrintRun#getStencilId <em>Stencil Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stencil Id</em>' attribute.
	 * @see #getStencilId()
	 * @generated
	 */
	void setStencilId(String value);

	/**
	 * Returns the value of the '<em><b>Mix Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Mix Id</em>' attribute.
	 * @see #setMixId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPrintRun_MixId()
	 * @model
	 * @generated
	 */
	String getMixId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PrintRun#getMixId <em>Mix Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mix Id</em>' attribute.
	 * @see #getMixId()
	 * @generated
	 */
	void setMixId(String value);

	/**
	 * Returns the value of the '<em><b>Window Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Window Id</em>' attribute.
	 * @see #setWindowId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPrintRun_WindowId()
	 * @model
	 * @generated
	 */
	String getWindowId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PrintRun#getWindowId <em>Window Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Window Id</em>' attribute.
	 * @see #getWindowId()
	 * @generated
	 */
	void setWindowId(String value);

	/**
	 * Returns the value of the '<em><b>Layer Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Layer Id</em>' attribute.
	 * @see #setLayerId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPrintRun_LayerId()
	 * @model
	 * @generated
	 */
	String getLayerId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PrintRun#getLayerId <em>Layer Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Layer Id</em>' attribute.
	 * @see #getLayerId()
	 * @generated
	 */
	void setLayerId(String value);

	/**
	 * Returns the value of the '<em><b>Piece Ids</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Piece Ids</em>' attribute list.
	 * @see saddlebar.model.commission.CommissionPackage#getPrintRun_PieceIds()
	 * @model
	 * @generated
	 */
	EList<String> getPieceIds();

	/**
	 * Returns the value of the '<em><b>Pulls</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Pulls</em>' attribute.
	 * @see #setPulls(int)
	 * @see saddlebar.model.commission.CommissionPackage#getPrintRun_Pulls()
	 * @model default="1"
	 * @generated
	 */
	int getPulls();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PrintRun#getPulls <em>Pulls</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pulls</em>' attribute.
	 * @see #getPulls()
	 * @generated
	 */
	void setPulls(int value);

	/**
	 * Returns the value of the '<em><b>Temperature C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Temperature C</em>' attribute.
	 * @see #setTemperatureC(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getPrintRun_TemperatureC()
	 * @model
	 * @generated
	 */
	Double getTemperatureC();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PrintRun#getTemperatureC <em>Temperature C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Temperature C</em>' attribute.
	 * @see #getTemperatureC()
	 * @generated
	 */
	void setTemperatureC(Double value);

	/**
	 * Returns the value of the '<em><b>Humidity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Relative, 0 to 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Humidity</em>' attribute.
	 * @see #setHumidity(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getPrintRun_Humidity()
	 * @model
	 * @generated
	 */
	Double getHumidity();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PrintRun#getHumidity <em>Humidity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Humidity</em>' attribute.
	 * @see #getHumidity()
	 * @generated
	 */
	void setHumidity(Double value);

	/**
	 * Returns the value of the '<em><b>Bed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bed</em>' attribute.
	 * @see #setBed(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPrintRun_Bed()
	 * @model
	 * @generated
	 */
	String getBed();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.PrintRun#getBed <em>Bed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bed</em>' attribute.
	 * @see #getBed()
	 * @generated
	 */
	void setBed(String value);

} // PrintRun
