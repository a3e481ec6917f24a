/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.time.Instant;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Artwork Reference</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One revision of the panel's artwork, as brought; the file is never changed.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.ArtworkReference#getPanel <em>Panel</em>}</li>
 *   <li>{@link saddlebar.model.commission.ArtworkReference#getFile <em>File</em>}</li>
 *   <li>{@link saddlebar.model.commission.ArtworkReference#getOriginalName <em>Original Name</em>}</li>
 *   <li>{@link saddlebar.model.commission.ArtworkReference#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link saddlebar.model.commission.ArtworkReference#getRevision <em>Revision</em>}</li>
 *   <li>{@link saddlebar.model.commission.ArtworkReference#getBrought <em>Brought</em>}</li>
 *   <li>{@link saddlebar.model.commission.ArtworkReference#getWidthMm <em>Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.ArtworkReference#getHeightMm <em>Height Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.ArtworkReference#getScale <em>Scale</em>}</li>
 *   <li>{@link saddlebar.model.commission.ArtworkReference#getRoles <em>Roles</em>}</li>
 *   <li>{@link saddlebar.model.commission.ArtworkReference#getPage <em>Page</em>}</li>
 *   <li>{@link saddlebar.model.commission.ArtworkReference#isRolesConfirmed <em>Roles Confirmed</em>}</li>
 *   <li>{@link saddlebar.model.commission.ArtworkReference#getGlassLayers <em>Glass Layers</em>}</li>
 *   <li>{@link saddlebar.model.commission.ArtworkReference#getUnusedLayers <em>Unused Layers</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getArtworkReference()
 * @model
 * @generated
 */
public interface ArtworkReference extends Identified {
	/**
	 * Returns the value of the '<em><b>Panel</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Panel#getArtwork <em>Artwork</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Panel</em>' container reference.
	 * @see #setPanel(Panel)
	 * @see saddlebar.model.commission.CommissionPackage#getArtworkReference_Panel()
	 * @see saddlebar.model.commission.Panel#getArtwork
	 * @model opposite="artwork" resolveProxies="false" transient="false"
	 * @generated
	 */
	Panel getPanel();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ArtworkReference#getPanel <em>Panel</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Panel</em>' container reference.
	 * @see #getPanel()
	 * @generated
	 */
	void setPanel(Panel value);

	/**
	 * Returns the value of the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Path relative to the commission's folder.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>File</em>' attribute.
	 * @see #setFile(String)
	 * @see saddlebar.model.commission.CommissionPackage#getArtworkReference_File()
	 * @model
	 * @generated
	 */
	String getFile();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ArtworkReference#getFile <em>File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>File</em>' attribute.
	 * @see #getFile()
	 * @generated
	 */
	void setFile(String value);

	/**
	 * Returns the value of the '<em><b>Original Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Original Name</em>' attribute.
	 * @see #setOriginalName(String)
	 * @see saddlebar.model.commission.CommissionPackage#getArtworkReference_OriginalName()
	 * @model
	 * @generated
	 */
	String getOriginalName();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ArtworkReference#getOriginalName <em>Original Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Original Name</em>' attribute.
	 * @see #getOriginalName()
	 * @generated
	 */
	void setOriginalName(String value);

	/**
	 * Returns the value of the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sha256</em>' attribute.
	 * @see #setSha256(String)
	 * @see saddlebar.model.commission.CommissionPackage#getArtworkReference_Sha256()
	 * @model
	 * @generated
	 */
	String getSha256();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ArtworkReference#getSha256 <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sha256</em>' attribute.
	 * @see #getSha256()
	 * @generated
	 */
	void setSha256(String value);

	/**
	 * Returns the value of the '<em><b>Revision</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Revision</em>' attribute.
	 * @see #setRevision(int)
	 * @see saddlebar.model.commission.CommissionPackage#getArtworkReference_Revision()
	 * @model default="1"
	 * @generated
	 */
	int getRevision();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ArtworkReference#getRevision <em>Revision</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Revision</em>' attribute.
	 * @see #getRevision()
	 * @generated
	 */
	void setRevision(int value);

	/**
	 * Returns the value of the '<em><b>Brought</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Brought</em>' attribute.
	 * @see #setBrought(Instant)
	 * @see saddlebar.model.commission.CommissionPackage#getArtworkReference_Brought()
	 * @model dataType="saddlebar.model.commission.Moment"
	 * @generated
	 */
	Instant getBrought();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ArtworkReference#getBrought <em>Brought</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Brought</em>' attribute.
	 * @see #getBrought()
	 * @generated
	 */
	void setBrought(Instant value);

	/**
	 * Returns the value of the '<em><b>Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of the page at full size.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Width Mm</em>' attribute.
	 * @see #setWidthMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getArtworkReference_WidthMm()
	 * @model
	 * @generated
	 */
	double getWidthMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ArtworkReference#getWidthMm <em>Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width Mm</em>' attribute.
	 * @see #getWidthMm()
	 * @generated
	 */
	void setWidthMm(double value);

	/**
	 * Returns the value of the '<em><b>Height Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Height Mm</em>' attribute.
	 * @see #setHeightMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getArtworkReference_HeightMm()
	 * @model
	 * @generated
	 */
	double getHeightMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ArtworkReference#getHeightMm <em>Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height Mm</em>' attribute.
	 * @see #getHeightMm()
	 * @generated
	 */
	void setHeightMm(double value);

	/**
	 * Returns the value of the '<em><b>Scale</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Full size over drawn size.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Scale</em>' attribute.
	 * @see #setScale(double)
	 * @see saddlebar.model.commission.CommissionPackage#getArtworkReference_Scale()
	 * @model default="1"
	 * @generated
	 */
	double getScale();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ArtworkReference#getScale <em>Scale</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Scale</em>' attribute.
	 * @see #getScale()
	 * @generated
	 */
	void setScale(double value);

	/**
	 * Returns the value of the '<em><b>Roles</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.RoleAssignment}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.RoleAssignment#getArtwork <em>Artwork</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Roles</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getArtworkReference_Roles()
	 * @see saddlebar.model.commission.RoleAssignment#getArtwork
	 * @model opposite="artwork" containment="true"
	 * @generated
	 */
	EList<RoleAssignment> getRoles();

	/**
	 * Returns the value of the '<em><b>Page</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Page of a file of several, from 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Page</em>' attribute.
	 * @see #setPage(int)
	 * @see saddlebar.model.commission.CommissionPackage#getArtworkReference_Page()
	 * @model default="1"
	 * @generated
	 */
	int getPage();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ArtworkReference#getPage <em>Page</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Page</em>' attribute.
	 * @see #getPage()
	 * @generated
	 */
	void setPage(int value);

	/**
	 * Returns the value of the '<em><b>Roles Confirmed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether somebody said what the layers are for; else it was guessed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Roles Confirmed</em>' attribute.
	 * @see #setRolesConfirmed(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getArtworkReference_RolesConfirmed()
	 * @model
	 * @generated
	 */
	boolean isRolesConfirmed();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.ArtworkReference#isRolesConfirmed <em>Roles Confirmed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Roles Confirmed</em>' attribute.
	 * @see #isRolesConfirmed()
	 * @generated
	 */
	void setRolesConfirmed(boolean value);

	/**
	 * Returns the value of the '<em><b>Glass Layers</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Layers of the artwork that show a colourway's glass.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Glass Layers</em>' attribute list.
	 * @see saddlebar.model.commission.CommissionPackage#getArtworkReference_GlassLayers()
	 * @model
	 * @generated
	 */
	EList<String> getGlassLayers();

	/**
	 * Returns the value of the '<em><b>Unused Layers</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Layers of the artwork that somebody said are for nothing here.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Unused Layers</em>' attribute list.
	 * @see saddlebar.model.commission.CommissionPackage#getArtworkReference_UnusedLayers()
	 * @model
	 * @generated
	 */
	EList<String> getUnusedLayers();

} // ArtworkReference
