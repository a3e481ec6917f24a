/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;
import saddlebar.model.art.OutlineMm;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Opening</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Opening#getWindow <em>Window</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getKind <em>Kind</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getSightWidthMm <em>Sight Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getSightHeightMm <em>Sight Height Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getTightWidthMm <em>Tight Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getTightHeightMm <em>Tight Height Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getCount <em>Count</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#isOverhead <em>Overhead</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#isInDoor <em>In Door</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getTemplateFile <em>Template File</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getNote <em>Note</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getJambMm <em>Jamb Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getRiseMm <em>Rise Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getTopMm <em>Top Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getRightMm <em>Right Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getBottomMm <em>Bottom Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getLeftMm <em>Left Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getDiagonalDownMm <em>Diagonal Down Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getDiagonalUpMm <em>Diagonal Up Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getRebateMm <em>Rebate Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getClearanceMm <em>Clearance Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getOutline <em>Outline</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getBarsMm <em>Bars Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Opening#getDivisionsMm <em>Divisions Mm</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getOpening()
 * @model
 * @generated
 */
public interface Opening extends Identified {
	/**
	 * Returns the value of the '<em><b>Window</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Window#getOpening <em>Opening</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Window</em>' container reference.
	 * @see #setWindow(Window)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_Window()
	 * @see saddlebar.model.commission.Window#getOpening
	 * @model opposite="opening" resolveProxies="false" transient="false"
	 * @generated
	 */
	Window getWindow();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getWindow <em>Window</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Window</em>' container reference.
	 * @see #getWindow()
	 * @generated
	 */
	void setWindow(Window value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.OpeningKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see saddlebar.model.commission.OpeningKind
	 * @see #setKind(OpeningKind)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_Kind()
	 * @model
	 * @generated
	 */
	OpeningKind getKind();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see saddlebar.model.commission.OpeningKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(OpeningKind value);

	/**
	 * Returns the value of the '<em><b>Sight Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What shows.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sight Width Mm</em>' attribute.
	 * @see #setSightWidthMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_SightWidthMm()
	 * @model
	 * @generated
	 */
	double getSightWidthMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getSightWidthMm <em>Sight Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sight Width Mm</em>' attribute.
	 * @see #getSightWidthMm()
	 * @generated
	 */
	void setSightWidthMm(double value);

	/**
	 * Returns the value of the '<em><b>Sight Height Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sight Height Mm</em>' attribute.
	 * @see #setSightHeightMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_SightHeightMm()
	 * @model
	 * @generated
	 */
	double getSightHeightMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getSightHeightMm <em>Sight Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sight Height Mm</em>' attribute.
	 * @see #getSightHeightMm()
	 * @generated
	 */
	void setSightHeightMm(double value);

	/**
	 * Returns the value of the '<em><b>Tight Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * To the ground of the rebate.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tight Width Mm</em>' attribute.
	 * @see #setTightWidthMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_TightWidthMm()
	 * @model
	 * @generated
	 */
	double getTightWidthMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getTightWidthMm <em>Tight Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tight Width Mm</em>' attribute.
	 * @see #getTightWidthMm()
	 * @generated
	 */
	void setTightWidthMm(double value);

	/**
	 * Returns the value of the '<em><b>Tight Height Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Tight Height Mm</em>' attribute.
	 * @see #setTightHeightMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_TightHeightMm()
	 * @model
	 * @generated
	 */
	double getTightHeightMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getTightHeightMm <em>Tight Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tight Height Mm</em>' attribute.
	 * @see #getTightHeightMm()
	 * @generated
	 */
	void setTightHeightMm(double value);

	/**
	 * Returns the value of the '<em><b>Count</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Openings alike.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Count</em>' attribute.
	 * @see #setCount(int)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_Count()
	 * @model default="1"
	 * @generated
	 */
	int getCount();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getCount <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Count</em>' attribute.
	 * @see #getCount()
	 * @generated
	 */
	void setCount(int value);

	/**
	 * Returns the value of the '<em><b>Overhead</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Overhead</em>' attribute.
	 * @see #setOverhead(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_Overhead()
	 * @model
	 * @generated
	 */
	boolean isOverhead();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#isOverhead <em>Overhead</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Overhead</em>' attribute.
	 * @see #isOverhead()
	 * @generated
	 */
	void setOverhead(boolean value);

	/**
	 * Returns the value of the '<em><b>In Door</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>In Door</em>' attribute.
	 * @see #setInDoor(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_InDoor()
	 * @model
	 * @generated
	 */
	boolean isInDoor();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#isInDoor <em>In Door</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>In Door</em>' attribute.
	 * @see #isInDoor()
	 * @generated
	 */
	void setInDoor(boolean value);

	/**
	 * Returns the value of the '<em><b>Template File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Template File</em>' attribute.
	 * @see #setTemplateFile(String)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_TemplateFile()
	 * @model
	 * @generated
	 */
	String getTemplateFile();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getTemplateFile <em>Template File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Template File</em>' attribute.
	 * @see #getTemplateFile()
	 * @generated
	 */
	void setTemplateFile(String value);

	/**
	 * Returns the value of the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Note</em>' attribute.
	 * @see #setNote(String)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_Note()
	 * @model
	 * @generated
	 */
	String getNote();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getNote <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Note</em>' attribute.
	 * @see #getNote()
	 * @generated
	 */
	void setNote(String value);

	/**
	 * Returns the value of the '<em><b>Jamb Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From the sill to the springing line, where the head is curved.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Jamb Mm</em>' attribute.
	 * @see #setJambMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_JambMm()
	 * @model
	 * @generated
	 */
	Double getJambMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getJambMm <em>Jamb Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Jamb Mm</em>' attribute.
	 * @see #getJambMm()
	 * @generated
	 */
	void setJambMm(Double value);

	/**
	 * Returns the value of the '<em><b>Rise Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From the springing line to the crown.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rise Mm</em>' attribute.
	 * @see #setRiseMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_RiseMm()
	 * @model
	 * @generated
	 */
	Double getRiseMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getRiseMm <em>Rise Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rise Mm</em>' attribute.
	 * @see #getRiseMm()
	 * @generated
	 */
	void setRiseMm(Double value);

	/**
	 * Returns the value of the '<em><b>Top Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Side of a frame as measured; with the other sides and both diagonals the frame is solved.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Top Mm</em>' attribute.
	 * @see #setTopMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_TopMm()
	 * @model
	 * @generated
	 */
	Double getTopMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getTopMm <em>Top Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Top Mm</em>' attribute.
	 * @see #getTopMm()
	 * @generated
	 */
	void setTopMm(Double value);

	/**
	 * Returns the value of the '<em><b>Right Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Right Mm</em>' attribute.
	 * @see #setRightMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_RightMm()
	 * @model
	 * @generated
	 */
	Double getRightMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getRightMm <em>Right Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Right Mm</em>' attribute.
	 * @see #getRightMm()
	 * @generated
	 */
	void setRightMm(Double value);

	/**
	 * Returns the value of the '<em><b>Bottom Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bottom Mm</em>' attribute.
	 * @see #setBottomMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_BottomMm()
	 * @model
	 * @generated
	 */
	Double getBottomMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getBottomMm <em>Bottom Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bottom Mm</em>' attribute.
	 * @see #getBottomMm()
	 * @generated
	 */
	void setBottomMm(Double value);

	/**
	 * Returns the value of the '<em><b>Left Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Left Mm</em>' attribute.
	 * @see #setLeftMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_LeftMm()
	 * @model
	 * @generated
	 */
	Double getLeftMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getLeftMm <em>Left Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Left Mm</em>' attribute.
	 * @see #getLeftMm()
	 * @generated
	 */
	void setLeftMm(Double value);

	/**
	 * Returns the value of the '<em><b>Diagonal Down Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From the top left to the bottom right.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Diagonal Down Mm</em>' attribute.
	 * @see #setDiagonalDownMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_DiagonalDownMm()
	 * @model
	 * @generated
	 */
	Double getDiagonalDownMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getDiagonalDownMm <em>Diagonal Down Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Diagonal Down Mm</em>' attribute.
	 * @see #getDiagonalDownMm()
	 * @generated
	 */
	void setDiagonalDownMm(Double value);

	/**
	 * Returns the value of the '<em><b>Diagonal Up Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From the bottom left to the top right.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Diagonal Up Mm</em>' attribute.
	 * @see #setDiagonalUpMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_DiagonalUpMm()
	 * @model
	 * @generated
	 */
	Double getDiagonalUpMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getDiagonalUpMm <em>Diagonal Up Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Diagonal Up Mm</em>' attribute.
	 * @see #getDiagonalUpMm()
	 * @generated
	 */
	void setDiagonalUpMm(Double value);

	/**
	 * Returns the value of the '<em><b>Rebate Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Depth of the rebate behind what shows.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rebate Mm</em>' attribute.
	 * @see #setRebateMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_RebateMm()
	 * @model
	 * @generated
	 */
	Double getRebateMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getRebateMm <em>Rebate Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rebate Mm</em>' attribute.
	 * @see #getRebateMm()
	 * @generated
	 */
	void setRebateMm(Double value);

	/**
	 * Returns the value of the '<em><b>Clearance Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the panel is smaller than the tight size, each side.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Clearance Mm</em>' attribute.
	 * @see #setClearanceMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_ClearanceMm()
	 * @model
	 * @generated
	 */
	Double getClearanceMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getClearanceMm <em>Clearance Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Clearance Mm</em>' attribute.
	 * @see #getClearanceMm()
	 * @generated
	 */
	void setClearanceMm(Double value);

	/**
	 * Returns the value of the '<em><b>Outline</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of what shows, in mm of the window.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Outline</em>' attribute.
	 * @see #setOutline(OutlineMm)
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_Outline()
	 * @model dataType="saddlebar.model.commission.Outline"
	 * @generated
	 */
	OutlineMm getOutline();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Opening#getOutline <em>Outline</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Outline</em>' attribute.
	 * @see #getOutline()
	 * @generated
	 */
	void setOutline(OutlineMm value);

	/**
	 * Returns the value of the '<em><b>Bars Mm</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.Double}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Heights of saddle bars below the top of the panel.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bars Mm</em>' attribute list.
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_BarsMm()
	 * @model
	 * @generated
	 */
	EList<Double> getBarsMm();

	/**
	 * Returns the value of the '<em><b>Divisions Mm</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.Double}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Those of the bars at which the panel is divided.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Divisions Mm</em>' attribute list.
	 * @see saddlebar.model.commission.CommissionPackage#getOpening_DivisionsMm()
	 * @model
	 * @generated
	 */
	EList<Double> getDivisionsMm();

} // Opening
