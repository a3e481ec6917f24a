/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Studio</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What several commissions may share: frames, paints, glass, kilns, prices, people.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Studio#getFormatVersion <em>Format Version</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getUnits <em>Units</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getCurrency <em>Currency</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getPapers <em>Papers</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getMeshes <em>Meshes</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getFrames <em>Frames</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getPaints <em>Paints</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getMedia <em>Media</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getGlass <em>Glass</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getJoins <em>Joins</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getSolders <em>Solders</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getBars <em>Bars</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getKilns <em>Kilns</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getSchedules <em>Schedules</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getPriceBook <em>Price Book</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getPrinters <em>Printers</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getSheetStock <em>Sheet Stock</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getCalibrations <em>Calibrations</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getProcesses <em>Processes</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getPeople <em>People</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getSuppliers <em>Suppliers</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getCommissions <em>Commissions</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getAddress <em>Address</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getContact <em>Contact</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getMarkFile <em>Mark File</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getAccent <em>Accent</em>}</li>
 *   <li>{@link saddlebar.model.commission.Studio#getTerms <em>Terms</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getStudio()
 * @model
 * @generated
 */
public interface Studio extends Named {
	/**
	 * Returns the value of the '<em><b>Format Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Version of the file format that wrote this file.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Format Version</em>' attribute.
	 * @see #setFormatVersion(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_FormatVersion()
	 * @model
	 * @generated
	 */
	String getFormatVersion();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Studio#getFormatVersion <em>Format Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Format Version</em>' attribute.
	 * @see #getFormatVersion()
	 * @generated
	 */
	void setFormatVersion(String value);

	/**
	 * Returns the value of the '<em><b>Units</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.UnitSystem}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Units</em>' attribute.
	 * @see saddlebar.model.commission.UnitSystem
	 * @see #setUnits(UnitSystem)
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_Units()
	 * @model
	 * @generated
	 */
	UnitSystem getUnits();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Studio#getUnits <em>Units</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Units</em>' attribute.
	 * @see saddlebar.model.commission.UnitSystem
	 * @see #getUnits()
	 * @generated
	 */
	void setUnits(UnitSystem value);

	/**
	 * Returns the value of the '<em><b>Currency</b></em>' attribute.
	 * The default value is <code>"EUR"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * ISO 4217.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Currency</em>' attribute.
	 * @see #setCurrency(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_Currency()
	 * @model default="EUR"
	 * @generated
	 */
	String getCurrency();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Studio#getCurrency <em>Currency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Currency</em>' attribute.
	 * @see #getCurrency()
	 * @generated
	 */
	void setCurrency(String value);

	/**
	 * Returns the value of the '<em><b>Papers</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.PaperSize}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.PaperSize#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Papers</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_Papers()
	 * @see saddlebar.model.commission.PaperSize#getStudio
	 * @model opposite="studio" containment="true"
	 * @generated
	 */
	EList<PaperSize> getPapers();

	/**
	 * Returns the value of the '<em><b>Meshes</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.Mesh}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Mesh#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Meshes</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_Meshes()
	 * @see saddlebar.model.commission.Mesh#getStudio
	 * @model opposite="studio" containment="true"
	 * @generated
	 */
	EList<Mesh> getMeshes();

	/**
	 * Returns the value of the '<em><b>Frames</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.ScreenFrame}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.ScreenFrame#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Frames</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_Frames()
	 * @see saddlebar.model.commission.ScreenFrame#getStudio
	 * @model opposite="studio" containment="true"
	 * @generated
	 */
	EList<ScreenFrame> getFrames();

	/**
	 * Returns the value of the '<em><b>Paints</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.Paint}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Paint#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Paints</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_Paints()
	 * @see saddlebar.model.commission.Paint#getStudio
	 * @model opposite="studio" containment="true"
	 * @generated
	 */
	EList<Paint> getPaints();

	/**
	 * Returns the value of the '<em><b>Media</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.Medium}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Medium#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Media</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_Media()
	 * @see saddlebar.model.commission.Medium#getStudio
	 * @model opposite="studio" containment="true"
	 * @generated
	 */
	EList<Medium> getMedia();

	/**
	 * Returns the value of the '<em><b>Glass</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.GlassStock}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.GlassStock#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Glass</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_Glass()
	 * @see saddlebar.model.commission.GlassStock#getStudio
	 * @model opposite="studio" containment="true"
	 * @generated
	 */
	EList<GlassStock> getGlass();

	/**
	 * Returns the value of the '<em><b>Joins</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.JoinStock}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.JoinStock#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Joins</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_Joins()
	 * @see saddlebar.model.commission.JoinStock#getStudio
	 * @model opposite="studio" containment="true"
	 * @generated
	 */
	EList<JoinStock> getJoins();

	/**
	 * Returns the value of the '<em><b>Solders</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.SolderStock}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.SolderStock#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Solders</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_Solders()
	 * @see saddlebar.model.commission.SolderStock#getStudio
	 * @model opposite="studio" containment="true"
	 * @generated
	 */
	EList<SolderStock> getSolders();

	/**
	 * Returns the value of the '<em><b>Bars</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.BarStock}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.BarStock#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bars</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_Bars()
	 * @see saddlebar.model.commission.BarStock#getStudio
	 * @model opposite="studio" containment="true"
	 * @generated
	 */
	EList<BarStock> getBars();

	/**
	 * Returns the value of the '<em><b>Kilns</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.Kiln}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Kiln#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kilns</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_Kilns()
	 * @see saddlebar.model.commission.Kiln#getStudio
	 * @model opposite="studio" containment="true"
	 * @generated
	 */
	EList<Kiln> getKilns();

	/**
	 * Returns the value of the '<em><b>Schedules</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.FiringSchedule}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.FiringSchedule#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Schedules</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_Schedules()
	 * @see saddlebar.model.commission.FiringSchedule#getStudio
	 * @model opposite="studio" containment="true"
	 * @generated
	 */
	EList<FiringSchedule> getSchedules();

	/**
	 * Returns the value of the '<em><b>Price Book</b></em>' containment reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.PriceBook#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Price Book</em>' containment reference.
	 * @see #setPriceBook(PriceBook)
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_PriceBook()
	 * @see saddlebar.model.commission.PriceBook#getStudio
	 * @model opposite="studio" containment="true"
	 * @generated
	 */
	PriceBook getPriceBook();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Studio#getPriceBook <em>Price Book</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Price Book</em>' containment reference.
	 * @see #getPriceBook()
	 * @generated
	 */
	void setPriceBook(PriceBook value);

	/**
	 * Returns the value of the '<em><b>Printers</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.Printer}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Printer#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Printers</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_Printers()
	 * @see saddlebar.model.commission.Printer#getStudio
	 * @model opposite="studio" containment="true"
	 * @generated
	 */
	EList<Printer> getPrinters();

	/**
	 * Returns the value of the '<em><b>Sheet Stock</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.SheetStock}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.SheetStock#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sheet Stock</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_SheetStock()
	 * @see saddlebar.model.commission.SheetStock#getStudio
	 * @model opposite="studio" containment="true"
	 * @generated
	 */
	EList<SheetStock> getSheetStock();

	/**
	 * Returns the value of the '<em><b>Calibrations</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.ToneCalibration}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.ToneCalibration#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Calibrations</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_Calibrations()
	 * @see saddlebar.model.commission.ToneCalibration#getStudio
	 * @model opposite="studio" containment="true"
	 * @generated
	 */
	EList<ToneCalibration> getCalibrations();

	/**
	 * Returns the value of the '<em><b>Processes</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.ProcessSetting}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.ProcessSetting#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Processes</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_Processes()
	 * @see saddlebar.model.commission.ProcessSetting#getStudio
	 * @model opposite="studio" containment="true"
	 * @generated
	 */
	EList<ProcessSetting> getProcesses();

	/**
	 * Returns the value of the '<em><b>People</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.Person}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Person#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>People</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_People()
	 * @see saddlebar.model.commission.Person#getStudio
	 * @model opposite="studio" containment="true"
	 * @generated
	 */
	EList<Person> getPeople();

	/**
	 * Returns the value of the '<em><b>Suppliers</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.Supplier}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Supplier#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Suppliers</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_Suppliers()
	 * @see saddlebar.model.commission.Supplier#getStudio
	 * @model opposite="studio" containment="true"
	 * @generated
	 */
	EList<Supplier> getSuppliers();

	/**
	 * Returns the value of the '<em><b>Commissions</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.JoinedCommission}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.JoinedCommission#getStudio <em>Studio</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The commissions that joined this studio.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Commissions</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_Commissions()
	 * @see saddlebar.model.commission.JoinedCommission#getStudio
	 * @model opposite="studio" containment="true"
	 * @generated
	 */
	EList<JoinedCommission> getCommissions();

	/**
	 * Returns the value of the '<em><b>Address</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of the studio, for its papers; lines as they are printed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Address</em>' attribute.
	 * @see #setAddress(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_Address()
	 * @model
	 * @generated
	 */
	String getAddress();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Studio#getAddress <em>Address</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Address</em>' attribute.
	 * @see #getAddress()
	 * @generated
	 */
	void setAddress(String value);

	/**
	 * Returns the value of the '<em><b>Contact</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of the studio, for its papers.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Contact</em>' attribute.
	 * @see #setContact(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_Contact()
	 * @model
	 * @generated
	 */
	String getContact();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Studio#getContact <em>Contact</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Contact</em>' attribute.
	 * @see #getContact()
	 * @generated
	 */
	void setContact(String value);

	/**
	 * Returns the value of the '<em><b>Mark File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Picture of the studio's mark (PNG or JPEG), path relative to the studio's folder.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Mark File</em>' attribute.
	 * @see #setMarkFile(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_MarkFile()
	 * @model
	 * @generated
	 */
	String getMarkFile();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Studio#getMarkFile <em>Mark File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mark File</em>' attribute.
	 * @see #getMarkFile()
	 * @generated
	 */
	void setMarkFile(String value);

	/**
	 * Returns the value of the '<em><b>Accent</b></em>' attribute.
	 * The default value is <code>"#2f4b5c"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Colour of headings on its papers, as #rrggbb.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Accent</em>' attribute.
	 * @see #setAccent(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_Accent()
	 * @model default="#2f4b5c"
	 * @generated
	 */
	String getAccent();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Studio#getAccent <em>Accent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Accent</em>' attribute.
	 * @see #getAccent()
	 * @generated
	 */
	void setAccent(String value);

	/**
	 * Returns the value of the '<em><b>Terms</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Its terms of business, a paragraph a line; absent: plain ones.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Terms</em>' attribute.
	 * @see #setTerms(String)
	 * @see saddlebar.model.commission.CommissionPackage#getStudio_Terms()
	 * @model
	 * @generated
	 */
	String getTerms();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Studio#getTerms <em>Terms</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Terms</em>' attribute.
	 * @see #getTerms()
	 * @generated
	 */
	void setTerms(String value);

} // Studio
