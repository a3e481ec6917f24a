/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import org.eclipse.emf.common.util.EList;

import saddlebar.model.art.OutlineMm;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Piece</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One piece of glass.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Piece#getPanel <em>Panel</em>}</li>
 *   <li>{@link saddlebar.model.commission.Piece#getNumber <em>Number</em>}</li>
 *   <li>{@link saddlebar.model.commission.Piece#getFace <em>Face</em>}</li>
 *   <li>{@link saddlebar.model.commission.Piece#getNet <em>Net</em>}</li>
 *   <li>{@link saddlebar.model.commission.Piece#getLabelXMm <em>Label XMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Piece#getLabelYMm <em>Label YMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Piece#getInradiusMm <em>Inradius Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Piece#getAreaMm2 <em>Area Mm2</em>}</li>
 *   <li>{@link saddlebar.model.commission.Piece#getNetAreaMm2 <em>Net Area Mm2</em>}</li>
 *   <li>{@link saddlebar.model.commission.Piece#getPerimeterMm <em>Perimeter Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.Piece#getShapeKey <em>Shape Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.Piece#getProblems <em>Problems</em>}</li>
 *   <li>{@link saddlebar.model.commission.Piece#getNeighbours <em>Neighbours</em>}</li>
 *   <li>{@link saddlebar.model.commission.Piece#getGlass <em>Glass</em>}</li>
 *   <li>{@link saddlebar.model.commission.Piece#getChoices <em>Choices</em>}</li>
 *   <li>{@link saddlebar.model.commission.Piece#getState <em>State</em>}</li>
 *   <li>{@link saddlebar.model.commission.Piece#isRetired <em>Retired</em>}</li>
 *   <li>{@link saddlebar.model.commission.Piece#getNote <em>Note</em>}</li>
 *   <li>{@link saddlebar.model.commission.Piece#getGroup <em>Group</em>}</li>
 *   <li>{@link saddlebar.model.commission.Piece#isLocked <em>Locked</em>}</li>
 *   <li>{@link saddlebar.model.commission.Piece#isNumberedByHand <em>Numbered By Hand</em>}</li>
 *   <li>{@link saddlebar.model.commission.Piece#getCameFrom <em>Came From</em>}</li>
 *   <li>{@link saddlebar.model.commission.Piece#getBecame <em>Became</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getPiece()
 * @model
 * @generated
 */
public interface Piece extends Identified {
	/**
	 * Returns the value of the '<em><b>Panel</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Panel#getPieces <em>Pieces</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Panel</em>' container reference.
	 * @see #setPanel(Panel)
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_Panel()
	 * @see saddlebar.model.commission.Panel#getPieces
	 * @model opposite="pieces" resolveProxies="false" transient="false"
	 * @generated
	 */
	Panel getPanel();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Piece#getPanel <em>Panel</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Panel</em>' container reference.
	 * @see #getPanel()
	 * @generated
	 */
	void setPanel(Panel value);

	/**
	 * Returns the value of the '<em><b>Number</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Number</em>' attribute.
	 * @see #setNumber(int)
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_Number()
	 * @model
	 * @generated
	 */
	int getNumber();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Piece#getNumber <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Number</em>' attribute.
	 * @see #getNumber()
	 * @generated
	 */
	void setNumber(int value);

	/**
	 * Returns the value of the '<em><b>Face</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * To the middle of the gaps.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Face</em>' attribute.
	 * @see #setFace(OutlineMm)
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_Face()
	 * @model dataType="saddlebar.model.commission.Outline"
	 * @generated
	 */
	OutlineMm getFace();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Piece#getFace <em>Face</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Face</em>' attribute.
	 * @see #getFace()
	 * @generated
	 */
	void setFace(OutlineMm value);

	/**
	 * Returns the value of the '<em><b>Net</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The glass itself, gap taken off.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Net</em>' attribute.
	 * @see #setNet(OutlineMm)
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_Net()
	 * @model dataType="saddlebar.model.commission.Outline"
	 * @generated
	 */
	OutlineMm getNet();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Piece#getNet <em>Net</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Net</em>' attribute.
	 * @see #getNet()
	 * @generated
	 */
	void setNet(OutlineMm value);

	/**
	 * Returns the value of the '<em><b>Label XMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Label XMm</em>' attribute.
	 * @see #setLabelXMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_LabelXMm()
	 * @model
	 * @generated
	 */
	double getLabelXMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Piece#getLabelXMm <em>Label XMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Label XMm</em>' attribute.
	 * @see #getLabelXMm()
	 * @generated
	 */
	void setLabelXMm(double value);

	/**
	 * Returns the value of the '<em><b>Label YMm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Label YMm</em>' attribute.
	 * @see #setLabelYMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_LabelYMm()
	 * @model
	 * @generated
	 */
	double getLabelYMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Piece#getLabelYMm <em>Label YMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Label YMm</em>' attribute.
	 * @see #getLabelYMm()
	 * @generated
	 */
	void setLabelYMm(double value);

	/**
	 * Returns the value of the '<em><b>Inradius Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Inradius Mm</em>' attribute.
	 * @see #setInradiusMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_InradiusMm()
	 * @model
	 * @generated
	 */
	double getInradiusMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Piece#getInradiusMm <em>Inradius Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Inradius Mm</em>' attribute.
	 * @see #getInradiusMm()
	 * @generated
	 */
	void setInradiusMm(double value);

	/**
	 * Returns the value of the '<em><b>Area Mm2</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Area Mm2</em>' attribute.
	 * @see #setAreaMm2(double)
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_AreaMm2()
	 * @model
	 * @generated
	 */
	double getAreaMm2();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Piece#getAreaMm2 <em>Area Mm2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Area Mm2</em>' attribute.
	 * @see #getAreaMm2()
	 * @generated
	 */
	void setAreaMm2(double value);

	/**
	 * Returns the value of the '<em><b>Net Area Mm2</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Net Area Mm2</em>' attribute.
	 * @see #setNetAreaMm2(double)
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_NetAreaMm2()
	 * @model
	 * @generated
	 */
	double getNetAreaMm2();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Piece#getNetAreaMm2 <em>Net Area Mm2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Net Area Mm2</em>' attribute.
	 * @see #getNetAreaMm2()
	 * @generated
	 */
	void setNetAreaMm2(double value);

	/**
	 * Returns the value of the '<em><b>Perimeter Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Perimeter Mm</em>' attribute.
	 * @see #setPerimeterMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_PerimeterMm()
	 * @model
	 * @generated
	 */
	double getPerimeterMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Piece#getPerimeterMm <em>Perimeter Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Perimeter Mm</em>' attribute.
	 * @see #getPerimeterMm()
	 * @generated
	 */
	void setPerimeterMm(double value);

	/**
	 * Returns the value of the '<em><b>Shape Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Equal for pieces that are congruent without turning over.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Shape Key</em>' attribute.
	 * @see #setShapeKey(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_ShapeKey()
	 * @model
	 * @generated
	 */
	String getShapeKey();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Piece#getShapeKey <em>Shape Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shape Key</em>' attribute.
	 * @see #getShapeKey()
	 * @generated
	 */
	void setShapeKey(String value);

	/**
	 * Returns the value of the '<em><b>Problems</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Codes of problems with its cut.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Problems</em>' attribute list.
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_Problems()
	 * @model
	 * @generated
	 */
	EList<String> getProblems();

	/**
	 * Returns the value of the '<em><b>Neighbours</b></em>' reference list.
	 * The list contents are of type {@link saddlebar.model.commission.Piece}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Across a cutline; set on both sides.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Neighbours</em>' reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_Neighbours()
	 * @model
	 * @generated
	 */
	EList<Piece> getNeighbours();

	/**
	 * Returns the value of the '<em><b>Glass</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where the colourway says nothing else.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Glass</em>' reference.
	 * @see #setGlass(GlassStock)
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_Glass()
	 * @model
	 * @generated
	 */
	GlassStock getGlass();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Piece#getGlass <em>Glass</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Glass</em>' reference.
	 * @see #getGlass()
	 * @generated
	 */
	void setGlass(GlassStock value);

	/**
	 * Returns the value of the '<em><b>Choices</b></em>' reference list.
	 * The list contents are of type {@link saddlebar.model.commission.GlassChoice}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.GlassChoice#getPiece <em>Piece</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Choices</em>' reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_Choices()
	 * @see saddlebar.model.commission.GlassChoice#getPiece
	 * @model opposite="piece"
	 * @generated
	 */
	EList<GlassChoice> getChoices();

	/**
	 * Returns the value of the '<em><b>State</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.MakingState}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>State</em>' attribute.
	 * @see saddlebar.model.commission.MakingState
	 * @see #setState(MakingState)
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_State()
	 * @model
	 * @generated
	 */
	MakingState getState();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Piece#getState <em>State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>State</em>' attribute.
	 * @see saddlebar.model.commission.MakingState
	 * @see #getState()
	 * @generated
	 */
	void setState(MakingState value);

	/**
	 * Returns the value of the '<em><b>Retired</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * No longer in the artwork; kept because records name it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Retired</em>' attribute.
	 * @see #setRetired(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_Retired()
	 * @model
	 * @generated
	 */
	boolean isRetired();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Piece#isRetired <em>Retired</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Retired</em>' attribute.
	 * @see #isRetired()
	 * @generated
	 */
	void setRetired(boolean value);

	/**
	 * Returns the value of the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Note</em>' attribute.
	 * @see #setNote(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_Note()
	 * @model
	 * @generated
	 */
	String getNote();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Piece#getNote <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Note</em>' attribute.
	 * @see #getNote()
	 * @generated
	 */
	void setNote(String value);

	/**
	 * Returns the value of the '<em><b>Group</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Name of the group of pieces to which a person counts it; absent: none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Group</em>' attribute.
	 * @see #setGroup(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_Group()
	 * @model
	 * @generated
	 */
	String getGroup();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Piece#getGroup <em>Group</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Group</em>' attribute.
	 * @see #getGroup()
	 * @generated
	 */
	void setGroup(String value);

	/**
	 * Returns the value of the '<em><b>Locked</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Its number, its glass and what it is matched by are not changed by anything that is done to many pieces.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Locked</em>' attribute.
	 * @see #setLocked(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_Locked()
	 * @model
	 * @generated
	 */
	boolean isLocked();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Piece#isLocked <em>Locked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Locked</em>' attribute.
	 * @see #isLocked()
	 * @generated
	 */
	void setLocked(boolean value);

	/**
	 * Returns the value of the '<em><b>Numbered By Hand</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A person gave it its number: numbering anew leaves it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Numbered By Hand</em>' attribute.
	 * @see #setNumberedByHand(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_NumberedByHand()
	 * @model
	 * @generated
	 */
	boolean isNumberedByHand();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Piece#isNumberedByHand <em>Numbered By Hand</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Numbered By Hand</em>' attribute.
	 * @see #isNumberedByHand()
	 * @generated
	 */
	void setNumberedByHand(boolean value);

	/**
	 * Returns the value of the '<em><b>Came From</b></em>' reference list.
	 * The list contents are of type {@link saddlebar.model.commission.Piece}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Piece#getBecame <em>Became</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Pieces of an earlier revision of the drawing, of which it took a part of the glass: their records are its own.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Came From</em>' reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_CameFrom()
	 * @see saddlebar.model.commission.Piece#getBecame
	 * @model opposite="became"
	 * @generated
	 */
	EList<Piece> getCameFrom();

	/**
	 * Returns the value of the '<em><b>Became</b></em>' reference list.
	 * The list contents are of type {@link saddlebar.model.commission.Piece}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Piece#getCameFrom <em>Came From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What took its place when the drawing was revised.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Became</em>' reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getPiece_Became()
	 * @see saddlebar.model.commission.Piece#getCameFrom
	 * @model opposite="cameFrom"
	 * @generated
	 */
	EList<Piece> getBecame();

} // Piece
