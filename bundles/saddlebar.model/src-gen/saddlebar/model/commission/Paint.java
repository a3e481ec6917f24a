/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.math.BigDecimal;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Paint</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A vitreous paint, silver stain or enamel, as a family.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.Paint#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.Paint#getFamily <em>Family</em>}</li>
 *   <li>{@link saddlebar.model.commission.Paint#getKind <em>Kind</em>}</li>
 *   <li>{@link saddlebar.model.commission.Paint#getColour <em>Colour</em>}</li>
 *   <li>{@link saddlebar.model.commission.Paint#getSolidTransmittance <em>Solid Transmittance</em>}</li>
 *   <li>{@link saddlebar.model.commission.Paint#getDensityGPerCm3 <em>Density GPer Cm3</em>}</li>
 *   <li>{@link saddlebar.model.commission.Paint#getMaturingFromC <em>Maturing From C</em>}</li>
 *   <li>{@link saddlebar.model.commission.Paint#getMaturingToC <em>Maturing To C</em>}</li>
 *   <li>{@link saddlebar.model.commission.Paint#getPowderToMedium <em>Powder To Medium</em>}</li>
 *   <li>{@link saddlebar.model.commission.Paint#isContainsLead <em>Contains Lead</em>}</li>
 *   <li>{@link saddlebar.model.commission.Paint#isContainsCadmium <em>Contains Cadmium</em>}</li>
 *   <li>{@link saddlebar.model.commission.Paint#isGoldBearing <em>Gold Bearing</em>}</li>
 *   <li>{@link saddlebar.model.commission.Paint#getPricePerKg <em>Price Per Kg</em>}</li>
 *   <li>{@link saddlebar.model.commission.Paint#getSource <em>Source</em>}</li>
 *   <li>{@link saddlebar.model.commission.Paint#getMedium <em>Medium</em>}</li>
 *   <li>{@link saddlebar.model.commission.Paint#getSupplier <em>Supplier</em>}</li>
 *   <li>{@link saddlebar.model.commission.Paint#getLots <em>Lots</em>}</li>
 *   <li>{@link saddlebar.model.commission.Paint#getTransmittance <em>Transmittance</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getPaint()
 * @model
 * @generated
 */
public interface Paint extends Named {
	/**
	 * Returns the value of the '<em><b>Studio</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Studio#getPaints <em>Paints</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Studio</em>' container reference.
	 * @see #setStudio(Studio)
	 * @see saddlebar.model.commission.CommissionPackage#getPaint_Studio()
	 * @see saddlebar.model.commission.Studio#getPaints
	 * @model opposite="paints" resolveProxies="false" transient="false"
	 * @generated
	 */
	Studio getStudio();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Paint#getStudio <em>Studio</em>}' container reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Studio</em>' container reference.
	 * @see #getStudio()
	 * @generated
	 */
	void setStudio(Studio value);

	/**
	 * Returns the value of the '<em><b>Family</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Family</em>' attribute.
	 * @see #setFamily(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPaint_Family()
	 * @model
	 * @generated
	 */
	String getFamily();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Paint#getFamily <em>Family</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Family</em>' attribute.
	 * @see #getFamily()
	 * @generated
	 */
	void setFamily(String value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link saddlebar.model.commission.PaintKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see saddlebar.model.commission.PaintKind
	 * @see #setKind(PaintKind)
	 * @see saddlebar.model.commission.CommissionPackage#getPaint_Kind()
	 * @model
	 * @generated
	 */
	PaintKind getKind();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Paint#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see saddlebar.model.commission.PaintKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(PaintKind value);

	/**
	 * Returns the value of the '<em><b>Colour</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * sRGB of a solid, fired, seen against white light, as #rrggbb.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Colour</em>' attribute.
	 * @see #setColour(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPaint_Colour()
	 * @model
	 * @generated
	 */
	String getColour();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Paint#getColour <em>Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Colour</em>' attribute.
	 * @see #getColour()
	 * @generated
	 */
	void setColour(String value);

	/**
	 * Returns the value of the '<em><b>Solid Transmittance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of light that a solid lets through, 0 to 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Solid Transmittance</em>' attribute.
	 * @see #setSolidTransmittance(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getPaint_SolidTransmittance()
	 * @model
	 * @generated
	 */
	Double getSolidTransmittance();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Paint#getSolidTransmittance <em>Solid Transmittance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Solid Transmittance</em>' attribute.
	 * @see #getSolidTransmittance()
	 * @generated
	 */
	void setSolidTransmittance(Double value);

	/**
	 * Returns the value of the '<em><b>Density GPer Cm3</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of the powder.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Density GPer Cm3</em>' attribute.
	 * @see #setDensityGPerCm3(double)
	 * @see saddlebar.model.commission.CommissionPackage#getPaint_DensityGPerCm3()
	 * @model
	 * @generated
	 */
	double getDensityGPerCm3();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Paint#getDensityGPerCm3 <em>Density GPer Cm3</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Density GPer Cm3</em>' attribute.
	 * @see #getDensityGPerCm3()
	 * @generated
	 */
	void setDensityGPerCm3(double value);

	/**
	 * Returns the value of the '<em><b>Maturing From C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maturing From C</em>' attribute.
	 * @see #setMaturingFromC(double)
	 * @see saddlebar.model.commission.CommissionPackage#getPaint_MaturingFromC()
	 * @model
	 * @generated
	 */
	double getMaturingFromC();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Paint#getMaturingFromC <em>Maturing From C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maturing From C</em>' attribute.
	 * @see #getMaturingFromC()
	 * @generated
	 */
	void setMaturingFromC(double value);

	/**
	 * Returns the value of the '<em><b>Maturing To C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Maturing To C</em>' attribute.
	 * @see #setMaturingToC(double)
	 * @see saddlebar.model.commission.CommissionPackage#getPaint_MaturingToC()
	 * @model
	 * @generated
	 */
	double getMaturingToC();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Paint#getMaturingToC <em>Maturing To C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Maturing To C</em>' attribute.
	 * @see #getMaturingToC()
	 * @generated
	 */
	void setMaturingToC(double value);

	/**
	 * Returns the value of the '<em><b>Powder To Medium</b></em>' attribute.
	 * The default value is <code>"2.5"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mass of powder for one mass of medium.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Powder To Medium</em>' attribute.
	 * @see #setPowderToMedium(double)
	 * @see saddlebar.model.commission.CommissionPackage#getPaint_PowderToMedium()
	 * @model default="2.5"
	 * @generated
	 */
	double getPowderToMedium();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Paint#getPowderToMedium <em>Powder To Medium</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Powder To Medium</em>' attribute.
	 * @see #getPowderToMedium()
	 * @generated
	 */
	void setPowderToMedium(double value);

	/**
	 * Returns the value of the '<em><b>Contains Lead</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Contains Lead</em>' attribute.
	 * @see #setContainsLead(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getPaint_ContainsLead()
	 * @model
	 * @generated
	 */
	boolean isContainsLead();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Paint#isContainsLead <em>Contains Lead</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Contains Lead</em>' attribute.
	 * @see #isContainsLead()
	 * @generated
	 */
	void setContainsLead(boolean value);

	/**
	 * Returns the value of the '<em><b>Contains Cadmium</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Contains Cadmium</em>' attribute.
	 * @see #setContainsCadmium(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getPaint_ContainsCadmium()
	 * @model
	 * @generated
	 */
	boolean isContainsCadmium();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Paint#isContainsCadmium <em>Contains Cadmium</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Contains Cadmium</em>' attribute.
	 * @see #isContainsCadmium()
	 * @generated
	 */
	void setContainsCadmium(boolean value);

	/**
	 * Returns the value of the '<em><b>Gold Bearing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Gold Bearing</em>' attribute.
	 * @see #setGoldBearing(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getPaint_GoldBearing()
	 * @model
	 * @generated
	 */
	boolean isGoldBearing();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Paint#isGoldBearing <em>Gold Bearing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gold Bearing</em>' attribute.
	 * @see #isGoldBearing()
	 * @generated
	 */
	void setGoldBearing(boolean value);

	/**
	 * Returns the value of the '<em><b>Price Per Kg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Price Per Kg</em>' attribute.
	 * @see #setPricePerKg(BigDecimal)
	 * @see saddlebar.model.commission.CommissionPackage#getPaint_PricePerKg()
	 * @model
	 * @generated
	 */
	BigDecimal getPricePerKg();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Paint#getPricePerKg <em>Price Per Kg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Price Per Kg</em>' attribute.
	 * @see #getPricePerKg()
	 * @generated
	 */
	void setPricePerKg(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPaint_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Paint#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

	/**
	 * Returns the value of the '<em><b>Medium</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The medium it is usually mixed with.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Medium</em>' reference.
	 * @see #setMedium(Medium)
	 * @see saddlebar.model.commission.CommissionPackage#getPaint_Medium()
	 * @model
	 * @generated
	 */
	Medium getMedium();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Paint#getMedium <em>Medium</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Medium</em>' reference.
	 * @see #getMedium()
	 * @generated
	 */
	void setMedium(Medium value);

	/**
	 * Returns the value of the '<em><b>Supplier</b></em>' reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Supplier#getPaints <em>Paints</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Supplier</em>' reference.
	 * @see #setSupplier(Supplier)
	 * @see saddlebar.model.commission.CommissionPackage#getPaint_Supplier()
	 * @see saddlebar.model.commission.Supplier#getPaints
	 * @model opposite="paints"
	 * @generated
	 */
	Supplier getSupplier();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Paint#getSupplier <em>Supplier</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Supplier</em>' reference.
	 * @see #getSupplier()
	 * @generated
	 */
	void setSupplier(Supplier value);

	/**
	 * Returns the value of the '<em><b>Lots</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.PaintLot}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.PaintLot#getPaint <em>Paint</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lots</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getPaint_Lots()
	 * @see saddlebar.model.commission.PaintLot#getPaint
	 * @model opposite="paint" containment="true"
	 * @generated
	 */
	EList<PaintLot> getLots();

	/**
	 * Returns the value of the '<em><b>Transmittance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Measured spectrum of a fired solid over that of the bare glass, as nm:share with spaces between; absent: a plausible one of the colour.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Transmittance</em>' attribute.
	 * @see #setTransmittance(String)
	 * @see saddlebar.model.commission.CommissionPackage#getPaint_Transmittance()
	 * @model
	 * @generated
	 */
	String getTransmittance();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.Paint#getTransmittance <em>Transmittance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Transmittance</em>' attribute.
	 * @see #getTransmittance()
	 * @generated
	 */
	void setTransmittance(String value);

} // Paint
