/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Artwork Brought</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * kind bring
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.ArtworkBrought#getWindowId <em>Window Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.ArtworkBrought#getPanelId <em>Panel Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.ArtworkBrought#getArtworkFile <em>Artwork File</em>}</li>
 *   <li>{@link saddlebar.model.commission.ArtworkBrought#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link saddlebar.model.commission.ArtworkBrought#getRevision <em>Revision</em>}</li>
 *   <li>{@link saddlebar.model.commission.ArtworkBrought#getWidthMm <em>Width Mm</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getArtworkBrought()
 * @model
 * @generated
 */
public interface ArtworkBrought extends MakingRecord {
	/**
	 * Returns the value of the '<em><b>Window Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Window Id</em>' attribute.
	 * @see #setWindowId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getArtworkBrought_WindowId()
	 * @model
	 * @generated
	 */
	String getWindowId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ArtworkBrought#getWindowId <em>Window Id</em>}' attribute.
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
	 * @see saddlebar.model.commission.CommissionPackage#getArtworkBrought_PanelId()
	 * @model
	 * @generated
	 */
	String getPanelId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ArtworkBrought#getPanelId <em>Panel Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Panel Id</em>' attribute.
	 * @see #getPanelId()
	 * @generated
	 */
	void setPanelId(String value);

	/**
	 * Returns the value of the '<em><b>Artwork File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Artwork File</em>' attribute.
	 * @see #setArtworkFile(String)
	 * @see saddlebar.model.commission.CommissionPackage#getArtworkBrought_ArtworkFile()
	 * @model
	 * @generated
	 */
	String getArtworkFile();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ArtworkBrought#getArtworkFile <em>Artwork File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Artwork File</em>' attribute.
	 * @see #getArtworkFile()
	 * @generated
	 */
	void setArtworkFile(String value);

	/**
	 * Returns the value of the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sha256</em>' attribute.
	 * @see #setSha256(String)
	 * @see saddlebar.model.commission.CommissionPackage#getArtworkBrought_Sha256()
	 * @model
	 * @generated
	 */
	String getSha256();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ArtworkBrought#getSha256 <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sha256</em>' attribute.
	 * @see #getSha256()
	 * @generated
	 */
	void setSha256(String value);

	/**
	 * Returns the value of the '<em><b>Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Revision</em>' attribute.
	 * @see #setRevision(int)
	 * @see saddlebar.model.commission.CommissionPackage#getArtworkBrought_Revision()
	 * @model
	 * @generated
	 */
	int getRevision();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ArtworkBrought#getRevision <em>Revision</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Revision</em>' attribute.
	 * @see #getRevision()
	 * @generated
	 */
	void setRevision(int value);

	/**
	 * Returns the value of the '<em><b>Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Width Mm</em>' attribute.
	 * @see #setWidthMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getArtworkBrought_WidthMm()
	 * @model
	 * @generated
	 */
	double getWidthMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ArtworkBrought#getWidthMm <em>Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width Mm</em>' attribute.
	 * @see #getWidthMm()
	 * @generated
	 */
	void setWidthMm(double value);

} // ArtworkBrought
