/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Supplier</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Supplier#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.Supplier#getContact <em>Contact</em>}</li>
 *   <li>{@link saddlebar.model.commission.Supplier#getPaints <em>Paints</em>}</li>
 *   <li>{@link saddlebar.model.commission.Supplier#getGlass <em>Glass</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getSupplier()
 * @model
 * @generated
 */
public interface Supplier extends Named {
	/**
	 * Returns the value of the '<em><b>Studio</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Studio#getSuppliers <em>Suppliers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Studio</em>' container reference.
	 * @see #setStudio(Studio)
	 * @see saddlebar.model.commission.CommissionPackage#getSupplier_Studio()
	 * @see saddlebar.model.commission.Studio#getSuppliers
	 * @model opposite="suppliers" resolveProxies="false" transient="false"
	 * @generated
	 */
	Studio getStudio();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Supplier#getStudio <em>Studio</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Studio</em>' container reference.
	 * @see #getStudio()
	 * @generated
	 */
	void setStudio(Studio value);

	/**
	 * Returns the value of the '<em><b>Contact</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Contact</em>' attribute.
	 * @see #setContact(String)
	 * @see saddlebar.model.commission.CommissionPackage#getSupplier_Contact()
	 * @model
	 * @generated
	 */
	String getContact();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Supplier#getContact <em>Contact</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Contact</em>' attribute.
	 * @see #getContact()
	 * @generated
	 */
	void setContact(String value);

	/**
	 * Returns the value of the '<em><b>Paints</b></em>' reference list.
	 * The list contents are of type {@link saddlebar.model.commission.Paint}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Paint#getSupplier <em>Supplier</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Paints</em>' reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getSupplier_Paints()
	 * @see saddlebar.model.commission.Paint#getSupplier
	 * @model opposite="supplier"
	 * @generated
	 */
	EList<Paint> getPaints();

	/**
	 * Returns the value of the '<em><b>Glass</b></em>' reference list.
	 * The list contents are of type {@link saddlebar.model.commission.GlassStock}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.GlassStock#getSupplier <em>Supplier</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Glass</em>' reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getSupplier_Glass()
	 * @see saddlebar.model.commission.GlassStock#getSupplier
	 * @model opposite="supplier"
	 * @generated
	 */
	EList<GlassStock> getGlass();

} // Supplier
