/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Commission</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What a client asked for: windows, dates, money, sheets.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Commission#getFormatVersion <em>Format Version</em>}</li>
 *   <li>{@link saddlebar.model.commission.Commission#getTitle <em>Title</em>}</li>
 *   <li>{@link saddlebar.model.commission.Commission#getNumber <em>Number</em>}</li>
 *   <li>{@link saddlebar.model.commission.Commission#getNote <em>Note</em>}</li>
 *   <li>{@link saddlebar.model.commission.Commission#getUnits <em>Units</em>}</li>
 *   <li>{@link saddlebar.model.commission.Commission#getPapers <em>Papers</em>}</li>
 *   <li>{@link saddlebar.model.commission.Commission#getJoin <em>Join</em>}</li>
 *   <li>{@link saddlebar.model.commission.Commission#getGapMm <em>Gap Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Commission#getSheetGapMm <em>Sheet Gap Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Commission#getClient <em>Client</em>}</li>
 *   <li>{@link saddlebar.model.commission.Commission#getSite <em>Site</em>}</li>
 *   <li>{@link saddlebar.model.commission.Commission#getMilestones <em>Milestones</em>}</li>
 *   <li>{@link saddlebar.model.commission.Commission#getQuotes <em>Quotes</em>}</li>
 *   <li>{@link saddlebar.model.commission.Commission#getApprovals <em>Approvals</em>}</li>
 *   <li>{@link saddlebar.model.commission.Commission#getSheets <em>Sheets</em>}</li>
 *   <li>{@link saddlebar.model.commission.Commission#getWindows <em>Windows</em>}</li>
 *   <li>{@link saddlebar.model.commission.Commission#getStudio <em>Studio</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getCommission()
 * @model
 * @generated
 */
public interface Commission extends Identified {
	/**
	 * Returns the value of the '<em><b>Format Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Version of the file format that wrote this file.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Format Version</em>' attribute.
	 * @see #setFormatVersion(String)
	 * @see saddlebar.model.commission.CommissionPackage#getCommission_FormatVersion()
	 * @model
	 * @generated
	 */
	String getFormatVersion();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Commission#getFormatVersion <em>Format Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Format Version</em>' attribute.
	 * @see #getFormatVersion()
	 * @generated
	 */
	void setFormatVersion(String value);

	/**
	 * Returns the value of the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Title</em>' attribute.
	 * @see #setTitle(String)
	 * @see saddlebar.model.commission.CommissionPackage#getCommission_Title()
	 * @model
	 * @generated
	 */
	String getTitle();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Commission#getTitle <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Title</em>' attribute.
	 * @see #getTitle()
	 * @generated
	 */
	void setTitle(String value);

	/**
	 * Returns the value of the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Number</em>' attribute.
	 * @see #setNumber(String)
	 * @see saddlebar.model.commission.CommissionPackage#getCommission_Number()
	 * @model
	 * @generated
	 */
	String getNumber();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Commission#getNumber <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Number</em>' attribute.
	 * @see #getNumber()
	 * @generated
	 */
	void setNumber(String value);

	/**
	 * Returns the value of the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Note</em>' attribute.
	 * @see #setNote(String)
	 * @see saddlebar.model.commission.CommissionPackage#getCommission_Note()
	 * @model
	 * @generated
	 */
	String getNote();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Commission#getNote <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Note</em>' attribute.
	 * @see #getNote()
	 * @generated
	 */
	void setNote(String value);

	/**
	 * Returns the value of the '<em><b>Units</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.UnitSystem}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Units</em>' attribute.
	 * @see saddlebar.model.commission.UnitSystem
	 * @see #setUnits(UnitSystem)
	 * @see saddlebar.model.commission.CommissionPackage#getCommission_Units()
	 * @model
	 * @generated
	 */
	UnitSystem getUnits();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Commission#getUnits <em>Units</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Units</em>' attribute.
	 * @see saddlebar.model.commission.UnitSystem
	 * @see #getUnits()
	 * @generated
	 */
	void setUnits(UnitSystem value);

	/**
	 * Returns the value of the '<em><b>Papers</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Names of the paper sizes that sheets may use, in order of liking.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Papers</em>' attribute list.
	 * @see saddlebar.model.commission.CommissionPackage#getCommission_Papers()
	 * @model
	 * @generated
	 */
	EList<String> getPapers();

	/**
	 * Returns the value of the '<em><b>Join</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.JoinKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Join</em>' attribute.
	 * @see saddlebar.model.commission.JoinKind
	 * @see #setJoin(JoinKind)
	 * @see saddlebar.model.commission.CommissionPackage#getCommission_Join()
	 * @model
	 * @generated
	 */
	JoinKind getJoin();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Commission#getJoin <em>Join</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Join</em>' attribute.
	 * @see saddlebar.model.commission.JoinKind
	 * @see #getJoin()
	 * @generated
	 */
	void setJoin(JoinKind value);

	/**
	 * Returns the value of the '<em><b>Gap Mm</b></em>' attribute.
	 * The default value is <code>"0.8"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Between pieces, all in, where a panel says nothing else.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Gap Mm</em>' attribute.
	 * @see #setGapMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getCommission_GapMm()
	 * @model default="0.8"
	 * @generated
	 */
	double getGapMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Commission#getGapMm <em>Gap Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gap Mm</em>' attribute.
	 * @see #getGapMm()
	 * @generated
	 */
	void setGapMm(double value);

	/**
	 * Returns the value of the '<em><b>Sheet Gap Mm</b></em>' attribute.
	 * The default value is <code>"5"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Between stencils on a sheet.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sheet Gap Mm</em>' attribute.
	 * @see #setSheetGapMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getCommission_SheetGapMm()
	 * @model default="5"
	 * @generated
	 */
	double getSheetGapMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Commission#getSheetGapMm <em>Sheet Gap Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sheet Gap Mm</em>' attribute.
	 * @see #getSheetGapMm()
	 * @generated
	 */
	void setSheetGapMm(double value);

	/**
	 * Returns the value of the '<em><b>Client</b></em>' containment reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Client#getCommission <em>Commission</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Client</em>' containment reference.
	 * @see #setClient(Client)
	 * @see saddlebar.model.commission.CommissionPackage#getCommission_Client()
	 * @see saddlebar.model.commission.Client#getCommission
	 * @model opposite="commission" containment="true"
	 * @generated
	 */
	Client getClient();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Commission#getClient <em>Client</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Client</em>' containment reference.
	 * @see #getClient()
	 * @generated
	 */
	void setClient(Client value);

	/**
	 * Returns the value of the '<em><b>Site</b></em>' containment reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Site#getCommission <em>Commission</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Site</em>' containment reference.
	 * @see #setSite(Site)
	 * @see saddlebar.model.commission.CommissionPackage#getCommission_Site()
	 * @see saddlebar.model.commission.Site#getCommission
	 * @model opposite="commission" containment="true"
	 * @generated
	 */
	Site getSite();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Commission#getSite <em>Site</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Site</em>' containment reference.
	 * @see #getSite()
	 * @generated
	 */
	void setSite(Site value);

	/**
	 * Returns the value of the '<em><b>Milestones</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.Milestone}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Milestone#getCommission <em>Commission</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Milestones</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getCommission_Milestones()
	 * @see saddlebar.model.commission.Milestone#getCommission
	 * @model opposite="commission" containment="true"
	 * @generated
	 */
	EList<Milestone> getMilestones();

	/**
	 * Returns the value of the '<em><b>Quotes</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.Quote}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Quote#getCommission <em>Commission</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Quotes</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getCommission_Quotes()
	 * @see saddlebar.model.commission.Quote#getCommission
	 * @model opposite="commission" containment="true"
	 * @generated
	 */
	EList<Quote> getQuotes();

	/**
	 * Returns the value of the '<em><b>Approvals</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.Approval}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Approval#getCommission <em>Commission</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Approvals</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getCommission_Approvals()
	 * @see saddlebar.model.commission.Approval#getCommission
	 * @model opposite="commission" containment="true"
	 * @generated
	 */
	EList<Approval> getApprovals();

	/**
	 * Returns the value of the '<em><b>Sheets</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.Sheet}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Sheet#getCommission <em>Commission</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sheets</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getCommission_Sheets()
	 * @see saddlebar.model.commission.Sheet#getCommission
	 * @model opposite="commission" containment="true"
	 * @generated
	 */
	EList<Sheet> getSheets();

	/**
	 * Returns the value of the '<em><b>Windows</b></em>' reference list.
	 * The list contents are of type {@link saddlebar.model.commission.Window}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Window#getCommission <em>Commission</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Each in a file of its own, loaded when asked for.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Windows</em>' reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getCommission_Windows()
	 * @see saddlebar.model.commission.Window#getCommission
	 * @model opposite="commission"
	 * @generated
	 */
	EList<Window> getWindows();

	/**
	 * Returns the value of the '<em><b>Studio</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Studio</em>' reference.
	 * @see #setStudio(Studio)
	 * @see saddlebar.model.commission.CommissionPackage#getCommission_Studio()
	 * @model
	 * @generated
	 */
	Studio getStudio();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Commission#getStudio <em>Studio</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Studio</em>' reference.
	 * @see #getStudio()
	 * @generated
	 */
	void setStudio(Studio value);

} // Commission
