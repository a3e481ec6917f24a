/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.time.Instant;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.common.util.EMap;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Making Record</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One thing that happened. Appended, never changed; a correction supersedes. Links are ids.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.MakingRecord#getId <em>Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.MakingRecord#getTime <em>Time</em>}</li>
 *   <li>{@link saddlebar.model.commission.MakingRecord#getKind <em>Kind</em>}</li>
 *   <li>{@link saddlebar.model.commission.MakingRecord#getWho <em>Who</em>}</li>
 *   <li>{@link saddlebar.model.commission.MakingRecord#getWriter <em>Writer</em>}</li>
 *   <li>{@link saddlebar.model.commission.MakingRecord#getUsed <em>Used</em>}</li>
 *   <li>{@link saddlebar.model.commission.MakingRecord#getMade <em>Made</em>}</li>
 *   <li>{@link saddlebar.model.commission.MakingRecord#getSettings <em>Settings</em>}</li>
 *   <li>{@link saddlebar.model.commission.MakingRecord#getSupersedes <em>Supersedes</em>}</li>
 *   <li>{@link saddlebar.model.commission.MakingRecord#getNote <em>Note</em>}</li>
 *   <li>{@link saddlebar.model.commission.MakingRecord#getFile <em>File</em>}</li>
 *   <li>{@link saddlebar.model.commission.MakingRecord#getLine <em>Line</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getMakingRecord()
 * @model abstract="true"
 * @generated
 */
public interface MakingRecord extends EObject {
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @see saddlebar.model.commission.CommissionPackage#getMakingRecord_Id()
	 * @model id="true"
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.MakingRecord#getId <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id</em>' attribute.
	 * @see #getId()
	 * @generated
	 */
	void setId(String value);

	/**
	 * Returns the value of the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Time</em>' attribute.
	 * @see #setTime(Instant)
	 * @see saddlebar.model.commission.CommissionPackage#getMakingRecord_Time()
	 * @model dataType="saddlebar.model.commission.Moment"
	 * @generated
	 */
	Instant getTime();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.MakingRecord#getTime <em>Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Time</em>' attribute.
	 * @see #getTime()
	 * @generated
	 */
	void setTime(Instant value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see #setKind(String)
	 * @see saddlebar.model.commission.CommissionPackage#getMakingRecord_Kind()
	 * @model
	 * @generated
	 */
	String getKind();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.MakingRecord#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see #getKind()
	 * @generated
	 */
	void setKind(String value);

	/**
	 * Returns the value of the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Who</em>' attribute.
	 * @see #setWho(String)
	 * @see saddlebar.model.commission.CommissionPackage#getMakingRecord_Who()
	 * @model
	 * @generated
	 */
	String getWho();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.MakingRecord#getWho <em>Who</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Who</em>' attribute.
	 * @see #getWho()
	 * @generated
	 */
	void setWho(String value);

	/**
	 * Returns the value of the '<em><b>Writer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Writer</em>' attribute.
	 * @see #setWriter(String)
	 * @see saddlebar.model.commission.CommissionPackage#getMakingRecord_Writer()
	 * @model
	 * @generated
	 */
	String getWriter();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.MakingRecord#getWriter <em>Writer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Writer</em>' attribute.
	 * @see #getWriter()
	 * @generated
	 */
	void setWriter(String value);

	/**
	 * Returns the value of the '<em><b>Used</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Used</em>' attribute list.
	 * @see saddlebar.model.commission.CommissionPackage#getMakingRecord_Used()
	 * @model
	 * @generated
	 */
	EList<String> getUsed();

	/**
	 * Returns the value of the '<em><b>Made</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Made</em>' attribute list.
	 * @see saddlebar.model.commission.CommissionPackage#getMakingRecord_Made()
	 * @model
	 * @generated
	 */
	EList<String> getMade();

	/**
	 * Returns the value of the '<em><b>Settings</b></em>' map.
	 * The key is of type {@link java.lang.String},
	 * and the value is of type {@link java.lang.String},
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Settings</em>' map.
	 * @see saddlebar.model.commission.CommissionPackage#getMakingRecord_Settings()
	 * @model mapType="saddlebar.model.commission.Setting&lt;org.eclipse.emf.ecore.EString, org.eclipse.emf.ecore.EString&gt;"
	 * @generated
	 */
	EMap<String, String> getSettings();

	/**
	 * Returns the value of the '<em><b>Supersedes</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Supersedes</em>' attribute list.
	 * @see saddlebar.model.commission.CommissionPackage#getMakingRecord_Supersedes()
	 * @model
	 * @generated
	 */
	EList<String> getSupersedes();

	/**
	 * Returns the value of the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Note</em>' attribute.
	 * @see #setNote(String)
	 * @see saddlebar.model.commission.CommissionPackage#getMakingRecord_Note()
	 * @model
	 * @generated
	 */
	String getNote();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.MakingRecord#getNote <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Note</em>' attribute.
	 * @see #getNote()
	 * @generated
	 */
	void setNote(String value);

	/**
	 * Returns the value of the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The record file it was read from.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>File</em>' attribute.
	 * @see #setFile(String)
	 * @see saddlebar.model.commission.CommissionPackage#getMakingRecord_File()
	 * @model transient="true"
	 * @generated
	 */
	String getFile();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.MakingRecord#getFile <em>File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>File</em>' attribute.
	 * @see #getFile()
	 * @generated
	 */
	void setFile(String value);

	/**
	 * Returns the value of the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Line</em>' attribute.
	 * @see #setLine(int)
	 * @see saddlebar.model.commission.CommissionPackage#getMakingRecord_Line()
	 * @model transient="true"
	 * @generated
	 */
	int getLine();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.MakingRecord#getLine <em>Line</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Line</em>' attribute.
	 * @see #getLine()
	 * @generated
	 */
	void setLine(int value);

} // MakingRecord
