/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission;

import java.math.BigDecimal;
import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Glass Stock</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Sheet glass as bought.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.GlassStock#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#getFamily <em>Family</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#getColour <em>Colour</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#getThicknessMm <em>Thickness Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#isTextured <em>Textured</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#isGrained <em>Grained</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#isOpal <em>Opal</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#getDensityKgPerM3 <em>Density Kg Per M3</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#getHeatModel <em>Heat Model</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#getSheetWidthMm <em>Sheet Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#getSheetHeightMm <em>Sheet Height Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#getStockM2 <em>Stock M2</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#getPricePerM2 <em>Price Per M2</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#getSource <em>Source</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#getSupplier <em>Supplier</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#getViscosityA <em>Viscosity A</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#getViscosityBK <em>Viscosity BK</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#getViscosityT0C <em>Viscosity T0C</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#getExpansionPerMillionK <em>Expansion Per Million K</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#getMeasuredMm <em>Measured Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#getTransmittance <em>Transmittance</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#getSheets <em>Sheets</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#getNarrowMm <em>Narrow Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#getNeedleDeg <em>Needle Deg</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#getInsideCurve <em>Inside Curve</em>}</li>
 *   <li>{@link saddlebar.model.commission.GlassStock#getInsideRadiusMm <em>Inside Radius Mm</em>}</li>
 * </ul>
 *
 * @see saddlebar.model.commission.CommissionPackage#getGlassStock()
 * @model
 * @generated
 */
public interface GlassStock extends Named {
	/**
	 * Returns the value of the '<em><b>Studio</b></em>' container reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Studio#getGlass <em>Glass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Studio</em>' container reference.
	 * @see #setStudio(Studio)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_Studio()
	 * @see saddlebar.model.commission.Studio#getGlass
	 * @model opposite="glass" resolveProxies="false" transient="false"
	 * @generated
	 */
	Studio getStudio();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#getStudio <em>Studio</em>}' container reference.
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
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_Family()
	 * @model
	 * @generated
	 */
	String getFamily();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#getFamily <em>Family</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Family</em>' attribute.
	 * @see #getFamily()
	 * @generated
	 */
	void setFamily(String value);

	/**
	 * Returns the value of the '<em><b>Colour</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * sRGB of daylight through it, as #rrggbb.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Colour</em>' attribute.
	 * @see #setColour(String)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_Colour()
	 * @model
	 * @generated
	 */
	String getColour();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#getColour <em>Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Colour</em>' attribute.
	 * @see #getColour()
	 * @generated
	 */
	void setColour(String value);

	/**
	 * Returns the value of the '<em><b>Thickness Mm</b></em>' attribute.
	 * The default value is <code>"3"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Thickness Mm</em>' attribute.
	 * @see #setThicknessMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_ThicknessMm()
	 * @model default="3"
	 * @generated
	 */
	double getThicknessMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#getThicknessMm <em>Thickness Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Thickness Mm</em>' attribute.
	 * @see #getThicknessMm()
	 * @generated
	 */
	void setThicknessMm(double value);

	/**
	 * Returns the value of the '<em><b>Textured</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Textured</em>' attribute.
	 * @see #setTextured(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_Textured()
	 * @model
	 * @generated
	 */
	boolean isTextured();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#isTextured <em>Textured</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Textured</em>' attribute.
	 * @see #isTextured()
	 * @generated
	 */
	void setTextured(boolean value);

	/**
	 * Returns the value of the '<em><b>Grained</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Has a direction that matters in cutting.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Grained</em>' attribute.
	 * @see #setGrained(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_Grained()
	 * @model
	 * @generated
	 */
	boolean isGrained();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#isGrained <em>Grained</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Grained</em>' attribute.
	 * @see #isGrained()
	 * @generated
	 */
	void setGrained(boolean value);

	/**
	 * Returns the value of the '<em><b>Opal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Scatters light.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Opal</em>' attribute.
	 * @see #setOpal(boolean)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_Opal()
	 * @model
	 * @generated
	 */
	boolean isOpal();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#isOpal <em>Opal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Opal</em>' attribute.
	 * @see #isOpal()
	 * @generated
	 */
	void setOpal(boolean value);

	/**
	 * Returns the value of the '<em><b>Density Kg Per M3</b></em>' attribute.
	 * The default value is <code>"2500"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Density Kg Per M3</em>' attribute.
	 * @see #setDensityKgPerM3(double)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_DensityKgPerM3()
	 * @model default="2500"
	 * @generated
	 */
	double getDensityKgPerM3();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#getDensityKgPerM3 <em>Density Kg Per M3</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Density Kg Per M3</em>' attribute.
	 * @see #getDensityKgPerM3()
	 * @generated
	 */
	void setDensityKgPerM3(double value);

	/**
	 * Returns the value of the '<em><b>Heat Model</b></em>' attribute.
	 * The default value is <code>"float"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Name of the glass in the kiln's tables of viscosity.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Heat Model</em>' attribute.
	 * @see #setHeatModel(String)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_HeatModel()
	 * @model default="float"
	 * @generated
	 */
	String getHeatModel();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#getHeatModel <em>Heat Model</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Heat Model</em>' attribute.
	 * @see #getHeatModel()
	 * @generated
	 */
	void setHeatModel(String value);

	/**
	 * Returns the value of the '<em><b>Sheet Width Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sheet Width Mm</em>' attribute.
	 * @see #setSheetWidthMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_SheetWidthMm()
	 * @model
	 * @generated
	 */
	double getSheetWidthMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#getSheetWidthMm <em>Sheet Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sheet Width Mm</em>' attribute.
	 * @see #getSheetWidthMm()
	 * @generated
	 */
	void setSheetWidthMm(double value);

	/**
	 * Returns the value of the '<em><b>Sheet Height Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sheet Height Mm</em>' attribute.
	 * @see #setSheetHeightMm(double)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_SheetHeightMm()
	 * @model
	 * @generated
	 */
	double getSheetHeightMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#getSheetHeightMm <em>Sheet Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sheet Height Mm</em>' attribute.
	 * @see #getSheetHeightMm()
	 * @generated
	 */
	void setSheetHeightMm(double value);

	/**
	 * Returns the value of the '<em><b>Stock M2</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Stock M2</em>' attribute.
	 * @see #setStockM2(double)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_StockM2()
	 * @model
	 * @generated
	 */
	double getStockM2();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#getStockM2 <em>Stock M2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stock M2</em>' attribute.
	 * @see #getStockM2()
	 * @generated
	 */
	void setStockM2(double value);

	/**
	 * Returns the value of the '<em><b>Price Per M2</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Price Per M2</em>' attribute.
	 * @see #setPricePerM2(BigDecimal)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_PricePerM2()
	 * @model
	 * @generated
	 */
	BigDecimal getPricePerM2();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#getPricePerM2 <em>Price Per M2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Price Per M2</em>' attribute.
	 * @see #getPricePerM2()
	 * @generated
	 */
	void setPricePerM2(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

	/**
	 * Returns the value of the '<em><b>Supplier</b></em>' reference.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.Supplier#getGlass <em>Glass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Supplier</em>' reference.
	 * @see #setSupplier(Supplier)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_Supplier()
	 * @see saddlebar.model.commission.Supplier#getGlass
	 * @model opposite="glass"
	 * @generated
	 */
	Supplier getSupplier();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#getSupplier <em>Supplier</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Supplier</em>' reference.
	 * @see #getSupplier()
	 * @generated
	 */
	void setSupplier(Supplier value);

	/**
	 * Returns the value of the '<em><b>Viscosity A</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A of log10 eta[Pa s] = A + B/(T - T0); absent: that of heatModel.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Viscosity A</em>' attribute.
	 * @see #setViscosityA(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_ViscosityA()
	 * @model
	 * @generated
	 */
	Double getViscosityA();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#getViscosityA <em>Viscosity A</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Viscosity A</em>' attribute.
	 * @see #getViscosityA()
	 * @generated
	 */
	void setViscosityA(Double value);

	/**
	 * Returns the value of the '<em><b>Viscosity BK</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * B in K.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Viscosity BK</em>' attribute.
	 * @see #setViscosityBK(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_ViscosityBK()
	 * @model
	 * @generated
	 */
	Double getViscosityBK();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#getViscosityBK <em>Viscosity BK</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Viscosity BK</em>' attribute.
	 * @see #getViscosityBK()
	 * @generated
	 */
	void setViscosityBK(Double value);

	/**
	 * Returns the value of the '<em><b>Viscosity T0C</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * T0 in degC.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Viscosity T0C</em>' attribute.
	 * @see #setViscosityT0C(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_ViscosityT0C()
	 * @model
	 * @generated
	 */
	Double getViscosityT0C();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#getViscosityT0C <em>Viscosity T0C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Viscosity T0C</em>' attribute.
	 * @see #getViscosityT0C()
	 * @generated
	 */
	void setViscosityT0C(Double value);

	/**
	 * Returns the value of the '<em><b>Expansion Per Million K</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mean of 20 to 300 degC; absent: that of heatModel.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Expansion Per Million K</em>' attribute.
	 * @see #setExpansionPerMillionK(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_ExpansionPerMillionK()
	 * @model
	 * @generated
	 */
	Double getExpansionPerMillionK();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#getExpansionPerMillionK <em>Expansion Per Million K</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Expansion Per Million K</em>' attribute.
	 * @see #getExpansionPerMillionK()
	 * @generated
	 */
	void setExpansionPerMillionK(Double value);

	/**
	 * Returns the value of the '<em><b>Measured Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Thickness at which colour and transmittance were measured; absent: thicknessMm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Measured Mm</em>' attribute.
	 * @see #setMeasuredMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_MeasuredMm()
	 * @model
	 * @generated
	 */
	Double getMeasuredMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#getMeasuredMm <em>Measured Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Measured Mm</em>' attribute.
	 * @see #getMeasuredMm()
	 * @generated
	 */
	void setMeasuredMm(Double value);

	/**
	 * Returns the value of the '<em><b>Transmittance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Measured spectrum of a sheet, faces included, as nm:share with spaces between; absent: a plausible one of the colour.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Transmittance</em>' attribute.
	 * @see #setTransmittance(String)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_Transmittance()
	 * @model
	 * @generated
	 */
	String getTransmittance();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#getTransmittance <em>Transmittance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Transmittance</em>' attribute.
	 * @see #getTransmittance()
	 * @generated
	 */
	void setTransmittance(String value);

	/**
	 * Returns the value of the '<em><b>Sheets</b></em>' containment reference list.
	 * The list contents are of type {@link saddlebar.model.commission.StockSheet}.
	 * It is bidirectional and its opposite is '{@link saddlebar.model.commission.StockSheet#getGlass <em>Glass</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Sheets and off-cuts at hand, each by itself; those used up are kept because records name them.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sheets</em>' containment reference list.
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_Sheets()
	 * @see saddlebar.model.commission.StockSheet#getGlass
	 * @model opposite="glass" containment="true"
	 * @generated
	 */
	EList<StockSheet> getSheets();

	/**
	 * Returns the value of the '<em><b>Narrow Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Narrowest piece that is cut from it with ease; absent: common practice.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Narrow Mm</em>' attribute.
	 * @see #setNarrowMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_NarrowMm()
	 * @model
	 * @generated
	 */
	Double getNarrowMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#getNarrowMm <em>Narrow Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Narrow Mm</em>' attribute.
	 * @see #getNarrowMm()
	 * @generated
	 */
	void setNarrowMm(Double value);

	/**
	 * Returns the value of the '<em><b>Needle Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Sharpest corner that is cut from it with ease; absent: common practice.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Needle Deg</em>' attribute.
	 * @see #setNeedleDeg(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_NeedleDeg()
	 * @model
	 * @generated
	 */
	Double getNeedleDeg();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#getNeedleDeg <em>Needle Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Needle Deg</em>' attribute.
	 * @see #getNeedleDeg()
	 * @generated
	 */
	void setNeedleDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Inside Curve</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Deepest inside curve, depth over chord, that is cut from it with ease; absent: common practice.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Inside Curve</em>' attribute.
	 * @see #setInsideCurve(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_InsideCurve()
	 * @model
	 * @generated
	 */
	Double getInsideCurve();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#getInsideCurve <em>Inside Curve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Inside Curve</em>' attribute.
	 * @see #getInsideCurve()
	 * @generated
	 */
	void setInsideCurve(Double value);

	/**
	 * Returns the value of the '<em><b>Inside Radius Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Least radius of an inside curve that is cut from it with ease; absent: common practice.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Inside Radius Mm</em>' attribute.
	 * @see #setInsideRadiusMm(Double)
	 * @see saddlebar.model.commission.CommissionPackage#getGlassStock_InsideRadiusMm()
	 * @model
	 * @generated
	 */
	Double getInsideRadiusMm();

	/**
	 * Sets the value of the '{@link saddlebar.model.commission.GlassStock#getInsideRadiusMm <em>Inside Radius Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Inside Radius Mm</em>' attribute.
	 * @see #getInsideRadiusMm()
	 * @generated
	 */
	void setInsideRadiusMm(Double value);

} // GlassStock
