/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Role Assignment</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * This layer of the artwork plays this role.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.RoleAssignment#getArtwork <em>Artwork</em>}</li>
 *   <li>{@link saddlebar.model.commission.RoleAssignment#getRole <em>Role</em>}</li>
 *   <li>{@link saddlebar.model.commission.RoleAssignment#getArtLayer <em>Art Layer</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getRoleAssignment()
 * @model
 * @generated
 */
public interface RoleAssignment extends EObject {
	/**
	 * Returns the value of the '<em><b>Artwork</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.ArtworkReference#getRoles <em>Roles</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Artwork</em>' container reference.
	 * @see #setArtwork(ArtworkReference)
	 * @see saddlebar.model.commission.CommissionPackage#getRoleAssignment_Artwork()
	 * @see saddlebar.model.commission.ArtworkReference#getRoles
	 * @model opposite="roles" resolveProxies="false" transient="false"
	 * @generated
	 */
	ArtworkReference getArtwork();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.RoleAssignment#getArtwork <em>Artwork</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Artwork</em>' container reference.
	 * @see #getArtwork()
	 * @generated
	 */
	void setArtwork(ArtworkReference value);

	/**
	 * Returns the value of the '<em><b>Role</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.LayerRole}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Role</em>' attribute.
	 * @see saddlebar.model.commission.LayerRole
	 * @see #setRole(LayerRole)
	 * @see saddlebar.model.commission.CommissionPackage#getRoleAssignment_Role()
	 * @model
	 * @generated
	 */
	LayerRole getRole();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.RoleAssignment#getRole <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Role</em>' attribute.
	 * @see saddlebar.model.commission.LayerRole
	 * @see #getRole()
	 * @generated
	 */
	void setRole(LayerRole value);

	/**
	 * Returns the value of the '<em><b>Art Layer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Id or label of the layer in the artwork.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Art Layer</em>' attribute.
	 * @see #setArtLayer(String)
	 * @see saddlebar.model.commission.CommissionPackage#getRoleAssignment_ArtLayer()
	 * @model
	 * @generated
	 */
	String getArtLayer();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.RoleAssignment#getArtLayer <em>Art Layer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Art Layer</em>' attribute.
	 * @see #getArtLayer()
	 * @generated
	 */
	void setArtLayer(String value);

} // RoleAssignment
