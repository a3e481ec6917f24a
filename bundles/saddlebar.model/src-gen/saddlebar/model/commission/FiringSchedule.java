/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Firing Schedule</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Segments to be fired; what a kiln really did is a Firing record.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.FiringSchedule#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.FiringSchedule#getPurpose <em>Purpose</em>}</li>
 *   <li>{@link saddlebar.model.commission.FiringSchedule#getSegments <em>Segments</em>}</li>
 *   <li>{@link saddlebar.model.commission.FiringSchedule#getSource <em>Source</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getFiringSchedule()
 * @model
 * @generated
 */
public interface FiringSchedule extends Named {
	/**
	 * Returns the value of the '<em><b>Studio</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Studio#getSchedules <em>Schedules</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Studio</em>' container reference.
	 * @see #setStudio(Studio)
	 * @see saddlebar.model.commission.CommissionPackage#getFiringSchedule_Studio()
	 * @see saddlebar.model.commission.Studio#getSchedules
	 * @model opposite="schedules" resolveProxies="false" transient="false"
	 * @generated
	 */
	Studio getStudio();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.FiringSchedule#getStudio <em>Studio</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Studio</em>' container reference.
	 * @see #getStudio()
	 * @generated
	 */
	void setStudio(Studio value);

	/**
	 * Returns the value of the '<em><b>Purpose</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.PaintKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Purpose</em>' attribute.
	 * @see saddlebar.model.commission.PaintKind
	 * @see #setPurpose(PaintKind)
	 * @see saddlebar.model.commission.CommissionPackage#getFiringSchedule_Purpose()
	 * @model
	 * @generated
	 */
	PaintKind getPurpose();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.FiringSchedule#getPurpose <em>Purpose</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Purpose</em>' attribute.
	 * @see saddlebar.model.commission.PaintKind
	 * @see #getPurpose()
	 * @generated
	 */
	void setPurpose(PaintKind value);

	/**
	 * Returns the value of the '<em><b>Segments</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.FiringSegment}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.FiringSegment#getSchedule <em>Schedule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Segments</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getFiringSchedule_Segments()
	 * @see saddlebar.model.commission.FiringSegment#getSchedule
	 * @model opposite="schedule" containment="true"
	 * @generated
	 */
	EList<FiringSegment> getSegments();

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see saddlebar.model.commission.CommissionPackage#getFiringSchedule_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.FiringSchedule#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

} // FiringSchedule
