/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import java.math.BigDecimal;

import java.util.Collection;
import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentWithInverseEList;
import org.eclipse.emf.ecore.util.EcoreUtil;

import org.eclipse.emf.ecore.util.InternalEList;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.StockSheet;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.Supplier;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Glass Stock</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getFamily <em>Family</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getColour <em>Colour</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getThicknessMm <em>Thickness Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#isTextured <em>Textured</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#isGrained <em>Grained</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#isOpal <em>Opal</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getDensityKgPerM3 <em>Density Kg Per M3</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getHeatModel <em>Heat Model</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getSheetWidthMm <em>Sheet Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getSheetHeightMm <em>Sheet Height Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getStockM2 <em>Stock M2</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getPricePerM2 <em>Price Per M2</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getSource <em>Source</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getSupplier <em>Supplier</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getViscosityA <em>Viscosity A</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getViscosityBK <em>Viscosity BK</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getViscosityT0C <em>Viscosity T0C</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getExpansionPerMillionK <em>Expansion Per Million K</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getMeasuredMm <em>Measured Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getTransmittance <em>Transmittance</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getSheets <em>Sheets</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getNarrowMm <em>Narrow Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getNeedleDeg <em>Needle Deg</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getInsideCurve <em>Inside Curve</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.GlassStockImpl#getInsideRadiusMm <em>Inside Radius Mm</em>}</li>
 * </ul>
 *
 * @generated
 */
public class GlassStockImpl extends NamedImpl implements GlassStock {
	/**
	 * The default value of the '{@link #getFamily() <em>Family</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFamily()
	 * @generated
	 * @ordered
	 */
	protected static final String FAMILY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFamily() <em>Family</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFamily()
	 * @generated
	 * @ordered
	 */
	protected String family = FAMILY_EDEFAULT;

	/**
	 * The default value of the '{@link #getColour() <em>Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getColour()
	 * @generated
	 * @ordered
	 */
	protected static final String COLOUR_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getColour() <em>Colour</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getColour()
	 * @generated
	 * @ordered
	 */
	protected String colour = COLOUR_EDEFAULT;

	/**
	 * The default value of the '{@link #getThicknessMm() <em>Thickness Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThicknessMm()
	 * @generated
	 * @ordered
	 */
	protected static final double THICKNESS_MM_EDEFAULT = 3.0;

	/**
	 * The cached value of the '{@link #getThicknessMm() <em>Thickness Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThicknessMm()
	 * @generated
	 * @ordered
	 */
	protected double thicknessMm = THICKNESS_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #isTextured() <em>Textured</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isTextured()
	 * @generated
	 * @ordered
	 */
	protected static final boolean TEXTURED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isTextured() <em>Textured</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isTextured()
	 * @generated
	 * @ordered
	 */
	protected boolean textured = TEXTURED_EDEFAULT;

	/**
	 * The default value of the '{@link #isGrained() <em>Grained</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isGrained()
	 * @generated
	 * @ordered
	 */
	protected static final boolean GRAINED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isGrained() <em>Grained</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isGrained()
	 * @generated
	 * @ordered
	 */
	protected boolean grained = GRAINED_EDEFAULT;

	/**
	 * The default value of the '{@link #isOpal() <em>Opal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isOpal()
	 * @generated
	 * @ordered
	 */
	protected static final boolean OPAL_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isOpal() <em>Opal</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isOpal()
	 * @generated
	 * @ordered
	 */
	protected boolean opal = OPAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getDensityKgPerM3() <em>Density Kg Per M3</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDensityKgPerM3()
	 * @generated
	 * @ordered
	 */
	protected static final double DENSITY_KG_PER_M3_EDEFAULT = 2500.0;

	/**
	 * The cached value of the '{@link #getDensityKgPerM3() <em>Density Kg Per M3</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDensityKgPerM3()
	 * @generated
	 * @ordered
	 */
	protected double densityKgPerM3 = DENSITY_KG_PER_M3_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeatModel() <em>Heat Model</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeatModel()
	 * @generated
	 * @ordered
	 */
	protected static final String HEAT_MODEL_EDEFAULT = "float";

	/**
	 * The cached value of the '{@link #getHeatModel() <em>Heat Model</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeatModel()
	 * @generated
	 * @ordered
	 */
	protected String heatModel = HEAT_MODEL_EDEFAULT;

	/**
	 * The default value of the '{@link #getSheetWidthMm() <em>Sheet Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetWidthMm()
	 * @generated
	 * @ordered
	 */
	protected static final double SHEET_WIDTH_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getSheetWidthMm() <em>Sheet Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetWidthMm()
	 * @generated
	 * @ordered
	 */
	protected double sheetWidthMm = SHEET_WIDTH_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getSheetHeightMm() <em>Sheet Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetHeightMm()
	 * @generated
	 * @ordered
	 */
	protected static final double SHEET_HEIGHT_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getSheetHeightMm() <em>Sheet Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetHeightMm()
	 * @generated
	 * @ordered
	 */
	protected double sheetHeightMm = SHEET_HEIGHT_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getStockM2() <em>Stock M2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStockM2()
	 * @generated
	 * @ordered
	 */
	protected static final double STOCK_M2_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getStockM2() <em>Stock M2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStockM2()
	 * @generated
	 * @ordered
	 */
	protected double stockM2 = STOCK_M2_EDEFAULT;

	/**
	 * The default value of the '{@link #getPricePerM2() <em>Price Per M2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPricePerM2()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal PRICE_PER_M2_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPricePerM2() <em>Price Per M2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPricePerM2()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal pricePerM2 = PRICE_PER_M2_EDEFAULT;

	/**
	 * The default value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected static final String SOURCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected String source = SOURCE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getSupplier() <em>Supplier</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupplier()
	 * @generated
	 * @ordered
	 */
	protected Supplier supplier;

	/**
	 * The default value of the '{@link #getViscosityA() <em>Viscosity A</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getViscosityA()
	 * @generated
	 * @ordered
	 */
	protected static final Double VISCOSITY_A_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getViscosityA() <em>Viscosity A</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getViscosityA()
	 * @generated
	 * @ordered
	 */
	protected Double viscosityA = VISCOSITY_A_EDEFAULT;

	/**
	 * The default value of the '{@link #getViscosityBK() <em>Viscosity BK</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getViscosityBK()
	 * @generated
	 * @ordered
	 */
	protected static final Double VISCOSITY_BK_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getViscosityBK() <em>Viscosity BK</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getViscosityBK()
	 * @generated
	 * @ordered
	 */
	protected Double viscosityBK = VISCOSITY_BK_EDEFAULT;

	/**
	 * The default value of the '{@link #getViscosityT0C() <em>Viscosity T0C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getViscosityT0C()
	 * @generated
	 * @ordered
	 */
	protected static final Double VISCOSITY_T0C_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getViscosityT0C() <em>Viscosity T0C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getViscosityT0C()
	 * @generated
	 * @ordered
	 */
	protected Double viscosityT0C = VISCOSITY_T0C_EDEFAULT;

	/**
	 * The default value of the '{@link #getExpansionPerMillionK() <em>Expansion Per Million K</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExpansionPerMillionK()
	 * @generated
	 * @ordered
	 */
	protected static final Double EXPANSION_PER_MILLION_K_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getExpansionPerMillionK() <em>Expansion Per Million K</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExpansionPerMillionK()
	 * @generated
	 * @ordered
	 */
	protected Double expansionPerMillionK = EXPANSION_PER_MILLION_K_EDEFAULT;

	/**
	 * The default value of the '{@link #getMeasuredMm() <em>Measured Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasuredMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double MEASURED_MM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMeasuredMm() <em>Measured Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasuredMm()
	 * @generated
	 * @ordered
	 */
	protected Double measuredMm = MEASURED_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getTransmittance() <em>Transmittance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTransmittance()
	 * @generated
	 * @ordered
	 */
	protected static final String TRANSMITTANCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTransmittance() <em>Transmittance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTransmittance()
	 * @generated
	 * @ordered
	 */
	protected String transmittance = TRANSMITTANCE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getSheets() <em>Sheets</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheets()
	 * @generated
	 * @ordered
	 */
	protected EList<StockSheet> sheets;

	/**
	 * The default value of the '{@link #getNarrowMm() <em>Narrow Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNarrowMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double NARROW_MM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNarrowMm() <em>Narrow Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNarrowMm()
	 * @generated
	 * @ordered
	 */
	protected Double narrowMm = NARROW_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getNeedleDeg() <em>Needle Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNeedleDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double NEEDLE_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNeedleDeg() <em>Needle Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNeedleDeg()
	 * @generated
	 * @ordered
	 */
	protected Double needleDeg = NEEDLE_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getInsideCurve() <em>Inside Curve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInsideCurve()
	 * @generated
	 * @ordered
	 */
	protected static final Double INSIDE_CURVE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getInsideCurve() <em>Inside Curve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInsideCurve()
	 * @generated
	 * @ordered
	 */
	protected Double insideCurve = INSIDE_CURVE_EDEFAULT;

	/**
	 * The default value of the '{@link #getInsideRadiusMm() <em>Inside Radius Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInsideRadiusMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double INSIDE_RADIUS_MM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getInsideRadiusMm() <em>Inside Radius Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInsideRadiusMm()
	 * @generated
	 * @ordered
	 */
	protected Double insideRadiusMm = INSIDE_RADIUS_MM_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected GlassStockImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.GLASS_STOCK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Studio getStudio() {
		if (eContainerFeatureID() != CommissionPackage.GLASS_STOCK__STUDIO) return null;
		return (Studio)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetStudio(Studio newStudio, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newStudio, CommissionPackage.GLASS_STOCK__STUDIO, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStudio(Studio newStudio) {
		if (newStudio != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.GLASS_STOCK__STUDIO && newStudio != null)) {
			if (EcoreUtil.isAncestor(this, newStudio))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newStudio != null)
				msgs = ((InternalEObject)newStudio).eInverseAdd(this, CommissionPackage.STUDIO__GLASS, Studio.class, msgs);
			msgs = basicSetStudio(newStudio, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__STUDIO, newStudio, newStudio));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFamily() {
		return family;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFamily(String newFamily) {
		String oldFamily = family;
		family = newFamily;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__FAMILY, oldFamily, family));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getColour() {
		return colour;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setColour(String newColour) {
		String oldColour = colour;
		colour = newColour;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__COLOUR, oldColour, colour));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getThicknessMm() {
		return thicknessMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setThicknessMm(double newThicknessMm) {
		double oldThicknessMm = thicknessMm;
		thicknessMm = newThicknessMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__THICKNESS_MM, oldThicknessMm, thicknessMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isTextured() {
		return textured;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTextured(boolean newTextured) {
		boolean oldTextured = textured;
		textured = newTextured;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__TEXTURED, oldTextured, textured));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isGrained() {
		return grained;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGrained(boolean newGrained) {
		boolean oldGrained = grained;
		grained = newGrained;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__GRAINED, oldGrained, grained));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isOpal() {
		return opal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOpal(boolean newOpal) {
		boolean oldOpal = opal;
		opal = newOpal;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__OPAL, oldOpal, opal));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getDensityKgPerM3() {
		return densityKgPerM3;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDensityKgPerM3(double newDensityKgPerM3) {
		double oldDensityKgPerM3 = densityKgPerM3;
		densityKgPerM3 = newDensityKgPerM3;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__DENSITY_KG_PER_M3, oldDensityKgPerM3, densityKgPerM3));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getHeatModel() {
		return heatModel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeatModel(String newHeatModel) {
		String oldHeatModel = heatModel;
		heatModel = newHeatModel;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__HEAT_MODEL, oldHeatModel, heatModel));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getSheetWidthMm() {
		return sheetWidthMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSheetWidthMm(double newSheetWidthMm) {
		double oldSheetWidthMm = sheetWidthMm;
		sheetWidthMm = newSheetWidthMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__SHEET_WIDTH_MM, oldSheetWidthMm, sheetWidthMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getSheetHeightMm() {
		return sheetHeightMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSheetHeightMm(double newSheetHeightMm) {
		double oldSheetHeightMm = sheetHeightMm;
		sheetHeightMm = newSheetHeightMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__SHEET_HEIGHT_MM, oldSheetHeightMm, sheetHeightMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getStockM2() {
		return stockM2;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStockM2(double newStockM2) {
		double oldStockM2 = stockM2;
		stockM2 = newStockM2;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__STOCK_M2, oldStockM2, stockM2));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getPricePerM2() {
		return pricePerM2;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPricePerM2(BigDecimal newPricePerM2) {
		BigDecimal oldPricePerM2 = pricePerM2;
		pricePerM2 = newPricePerM2;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__PRICE_PER_M2, oldPricePerM2, pricePerM2));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSource() {
		return source;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSource(String newSource) {
		String oldSource = source;
		source = newSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__SOURCE, oldSource, source));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Supplier getSupplier() {
		if (supplier != null && supplier.eIsProxy()) {
			InternalEObject oldSupplier = (InternalEObject)supplier;
			supplier = (Supplier)eResolveProxy(oldSupplier);
			if (supplier != oldSupplier) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.GLASS_STOCK__SUPPLIER, oldSupplier, supplier));
			}
		}
		return supplier;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Supplier basicGetSupplier() {
		return supplier;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetSupplier(Supplier newSupplier, NotificationChain msgs) {
		Supplier oldSupplier = supplier;
		supplier = newSupplier;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__SUPPLIER, oldSupplier, newSupplier);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSupplier(Supplier newSupplier) {
		if (newSupplier != supplier) {
			NotificationChain msgs = null;
			if (supplier != null)
				msgs = ((InternalEObject)supplier).eInverseRemove(this, CommissionPackage.SUPPLIER__GLASS, Supplier.class, msgs);
			if (newSupplier != null)
				msgs = ((InternalEObject)newSupplier).eInverseAdd(this, CommissionPackage.SUPPLIER__GLASS, Supplier.class, msgs);
			msgs = basicSetSupplier(newSupplier, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__SUPPLIER, newSupplier, newSupplier));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getViscosityA() {
		return viscosityA;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setViscosityA(Double newViscosityA) {
		Double oldViscosityA = viscosityA;
		viscosityA = newViscosityA;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__VISCOSITY_A, oldViscosityA, viscosityA));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getViscosityBK() {
		return viscosityBK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setViscosityBK(Double newViscosityBK) {
		Double oldViscosityBK = viscosityBK;
		viscosityBK = newViscosityBK;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__VISCOSITY_BK, oldViscosityBK, viscosityBK));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getViscosityT0C() {
		return viscosityT0C;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setViscosityT0C(Double newViscosityT0C) {
		Double oldViscosityT0C = viscosityT0C;
		viscosityT0C = newViscosityT0C;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__VISCOSITY_T0C, oldViscosityT0C, viscosityT0C));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getExpansionPerMillionK() {
		return expansionPerMillionK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setExpansionPerMillionK(Double newExpansionPerMillionK) {
		Double oldExpansionPerMillionK = expansionPerMillionK;
		expansionPerMillionK = newExpansionPerMillionK;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__EXPANSION_PER_MILLION_K, oldExpansionPerMillionK, expansionPerMillionK));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMeasuredMm() {
		return measuredMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMeasuredMm(Double newMeasuredMm) {
		Double oldMeasuredMm = measuredMm;
		measuredMm = newMeasuredMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__MEASURED_MM, oldMeasuredMm, measuredMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTransmittance() {
		return transmittance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTransmittance(String newTransmittance) {
		String oldTransmittance = transmittance;
		transmittance = newTransmittance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__TRANSMITTANCE, oldTransmittance, transmittance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<StockSheet> getSheets() {
		if (sheets == null) {
			sheets = new EObjectContainmentWithInverseEList<StockSheet>(StockSheet.class, this, CommissionPackage.GLASS_STOCK__SHEETS, CommissionPackage.STOCK_SHEET__GLASS);
		}
		return sheets;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getNarrowMm() {
		return narrowMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNarrowMm(Double newNarrowMm) {
		Double oldNarrowMm = narrowMm;
		narrowMm = newNarrowMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__NARROW_MM, oldNarrowMm, narrowMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getNeedleDeg() {
		return needleDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNeedleDeg(Double newNeedleDeg) {
		Double oldNeedleDeg = needleDeg;
		needleDeg = newNeedleDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__NEEDLE_DEG, oldNeedleDeg, needleDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getInsideCurve() {
		return insideCurve;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInsideCurve(Double newInsideCurve) {
		Double oldInsideCurve = insideCurve;
		insideCurve = newInsideCurve;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__INSIDE_CURVE, oldInsideCurve, insideCurve));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getInsideRadiusMm() {
		return insideRadiusMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInsideRadiusMm(Double newInsideRadiusMm) {
		Double oldInsideRadiusMm = insideRadiusMm;
		insideRadiusMm = newInsideRadiusMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.GLASS_STOCK__INSIDE_RADIUS_MM, oldInsideRadiusMm, insideRadiusMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.GLASS_STOCK__STUDIO:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetStudio((Studio)otherEnd, msgs);
			case CommissionPackage.GLASS_STOCK__SUPPLIER:
				if (supplier != null)
					msgs = ((InternalEObject)supplier).eInverseRemove(this, CommissionPackage.SUPPLIER__GLASS, Supplier.class, msgs);
				return basicSetSupplier((Supplier)otherEnd, msgs);
			case CommissionPackage.GLASS_STOCK__SHEETS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getSheets()).basicAdd(otherEnd, msgs);
		}
		return super.eInverseAdd(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.GLASS_STOCK__STUDIO:
				return basicSetStudio(null, msgs);
			case CommissionPackage.GLASS_STOCK__SUPPLIER:
				return basicSetSupplier(null, msgs);
			case CommissionPackage.GLASS_STOCK__SHEETS:
				return ((InternalEList<?>)getSheets()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eBasicRemoveFromContainerFeature(NotificationChain msgs) {
		switch (eContainerFeatureID()) {
			case CommissionPackage.GLASS_STOCK__STUDIO:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.STUDIO__GLASS, Studio.class, msgs);
		}
		return super.eBasicRemoveFromContainerFeature(msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CommissionPackage.GLASS_STOCK__STUDIO:
				return getStudio();
			case CommissionPackage.GLASS_STOCK__FAMILY:
				return getFamily();
			case CommissionPackage.GLASS_STOCK__COLOUR:
				return getColour();
			case CommissionPackage.GLASS_STOCK__THICKNESS_MM:
				return getThicknessMm();
			case CommissionPackage.GLASS_STOCK__TEXTURED:
				return isTextured();
			case CommissionPackage.GLASS_STOCK__GRAINED:
				return isGrained();
			case CommissionPackage.GLASS_STOCK__OPAL:
				return isOpal();
			case CommissionPackage.GLASS_STOCK__DENSITY_KG_PER_M3:
				return getDensityKgPerM3();
			case CommissionPackage.GLASS_STOCK__HEAT_MODEL:
				return getHeatModel();
			case CommissionPackage.GLASS_STOCK__SHEET_WIDTH_MM:
				return getSheetWidthMm();
			case CommissionPackage.GLASS_STOCK__SHEET_HEIGHT_MM:
				return getSheetHeightMm();
			case CommissionPackage.GLASS_STOCK__STOCK_M2:
				return getStockM2();
			case CommissionPackage.GLASS_STOCK__PRICE_PER_M2:
				return getPricePerM2();
			case CommissionPackage.GLASS_STOCK__SOURCE:
				return getSource();
			case CommissionPackage.GLASS_STOCK__SUPPLIER:
				if (resolve) return getSupplier();
				return basicGetSupplier();
			case CommissionPackage.GLASS_STOCK__VISCOSITY_A:
				return getViscosityA();
			case CommissionPackage.GLASS_STOCK__VISCOSITY_BK:
				return getViscosityBK();
			case CommissionPackage.GLASS_STOCK__VISCOSITY_T0C:
				return getViscosityT0C();
			case CommissionPackage.GLASS_STOCK__EXPANSION_PER_MILLION_K:
				return getExpansionPerMillionK();
			case CommissionPackage.GLASS_STOCK__MEASURED_MM:
				return getMeasuredMm();
			case CommissionPackage.GLASS_STOCK__TRANSMITTANCE:
				return getTransmittance();
			case CommissionPackage.GLASS_STOCK__SHEETS:
				return getSheets();
			case CommissionPackage.GLASS_STOCK__NARROW_MM:
				return getNarrowMm();
			case CommissionPackage.GLASS_STOCK__NEEDLE_DEG:
				return getNeedleDeg();
			case CommissionPackage.GLASS_STOCK__INSIDE_CURVE:
				return getInsideCurve();
			case CommissionPackage.GLASS_STOCK__INSIDE_RADIUS_MM:
				return getInsideRadiusMm();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case CommissionPackage.GLASS_STOCK__STUDIO:
				setStudio((Studio)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__FAMILY:
				setFamily((String)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__COLOUR:
				setColour((String)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__THICKNESS_MM:
				setThicknessMm((Double)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__TEXTURED:
				setTextured((Boolean)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__GRAINED:
				setGrained((Boolean)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__OPAL:
				setOpal((Boolean)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__DENSITY_KG_PER_M3:
				setDensityKgPerM3((Double)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__HEAT_MODEL:
				setHeatModel((String)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__SHEET_WIDTH_MM:
				setSheetWidthMm((Double)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__SHEET_HEIGHT_MM:
				setSheetHeightMm((Double)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__STOCK_M2:
				setStockM2((Double)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__PRICE_PER_M2:
				setPricePerM2((BigDecimal)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__SOURCE:
				setSource((String)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__SUPPLIER:
				setSupplier((Supplier)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__VISCOSITY_A:
				setViscosityA((Double)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__VISCOSITY_BK:
				setViscosityBK((Double)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__VISCOSITY_T0C:
				setViscosityT0C((Double)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__EXPANSION_PER_MILLION_K:
				setExpansionPerMillionK((Double)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__MEASURED_MM:
				setMeasuredMm((Double)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__TRANSMITTANCE:
				setTransmittance((String)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__SHEETS:
				getSheets().clear();
				getSheets().addAll((Collection<? extends StockSheet>)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__NARROW_MM:
				setNarrowMm((Double)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__NEEDLE_DEG:
				setNeedleDeg((Double)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__INSIDE_CURVE:
				setInsideCurve((Double)newValue);
				return;
			case CommissionPackage.GLASS_STOCK__INSIDE_RADIUS_MM:
				setInsideRadiusMm((Double)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case CommissionPackage.GLASS_STOCK__STUDIO:
				setStudio((Studio)null);
				return;
			case CommissionPackage.GLASS_STOCK__FAMILY:
				setFamily(FAMILY_EDEFAULT);
				return;
			case CommissionPackage.GLASS_STOCK__COLOUR:
				setColour(COLOUR_EDEFAULT);
				return;
			case CommissionPackage.GLASS_STOCK__THICKNESS_MM:
				setThicknessMm(THICKNESS_MM_EDEFAULT);
				return;
			case CommissionPackage.GLASS_STOCK__TEXTURED:
				setTextured(TEXTURED_EDEFAULT);
				return;
			case CommissionPackage.GLASS_STOCK__GRAINED:
				setGrained(GRAINED_EDEFAULT);
				return;
			case CommissionPackage.GLASS_STOCK__OPAL:
				setOpal(OPAL_EDEFAULT);
				return;
			case CommissionPackage.GLASS_STOCK__DENSITY_KG_PER_M3:
				setDensityKgPerM3(DENSITY_KG_PER_M3_EDEFAULT);
				return;
			case CommissionPackage.GLASS_STOCK__HEAT_MODEL:
				setHeatModel(HEAT_MODEL_EDEFAULT);
				return;
			case CommissionPackage.GLASS_STOCK__SHEET_WIDTH_MM:
				setSheetWidthMm(SHEET_WIDTH_MM_EDEFAULT);
				return;
			case CommissionPackage.GLASS_STOCK__SHEET_HEIGHT_MM:
				setSheetHeightMm(SHEET_HEIGHT_MM_EDEFAULT);
				return;
			case CommissionPackage.GLASS_STOCK__STOCK_M2:
				setStockM2(STOCK_M2_EDEFAULT);
				return;
			case CommissionPackage.GLASS_STOCK__PRICE_PER_M2:
				setPricePerM2(PRICE_PER_M2_EDEFAULT);
				return;
			case CommissionPackage.GLASS_STOCK__SOURCE:
				setSource(SOURCE_EDEFAULT);
				return;
			case CommissionPackage.GLASS_STOCK__SUPPLIER:
				setSupplier((Supplier)null);
				return;
			case CommissionPackage.GLASS_STOCK__VISCOSITY_A:
				setViscosityA(VISCOSITY_A_EDEFAULT);
				return;
			case CommissionPackage.GLASS_STOCK__VISCOSITY_BK:
				setViscosityBK(VISCOSITY_BK_EDEFAULT);
				return;
			case CommissionPackage.GLASS_STOCK__VISCOSITY_T0C:
				setViscosityT0C(VISCOSITY_T0C_EDEFAULT);
				return;
			case CommissionPackage.GLASS_STOCK__EXPANSION_PER_MILLION_K:
				setExpansionPerMillionK(EXPANSION_PER_MILLION_K_EDEFAULT);
				return;
			case CommissionPackage.GLASS_STOCK__MEASURED_MM:
				setMeasuredMm(MEASURED_MM_EDEFAULT);
				return;
			case CommissionPackage.GLASS_STOCK__TRANSMITTANCE:
				setTransmittance(TRANSMITTANCE_EDEFAULT);
				return;
			case CommissionPackage.GLASS_STOCK__SHEETS:
				getSheets().clear();
				return;
			case CommissionPackage.GLASS_STOCK__NARROW_MM:
				setNarrowMm(NARROW_MM_EDEFAULT);
				return;
			case CommissionPackage.GLASS_STOCK__NEEDLE_DEG:
				setNeedleDeg(NEEDLE_DEG_EDEFAULT);
				return;
			case CommissionPackage.GLASS_STOCK__INSIDE_CURVE:
				setInsideCurve(INSIDE_CURVE_EDEFAULT);
				return;
			case CommissionPackage.GLASS_STOCK__INSIDE_RADIUS_MM:
				setInsideRadiusMm(INSIDE_RADIUS_MM_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case CommissionPackage.GLASS_STOCK__STUDIO:
				return getStudio() != null;
			case CommissionPackage.GLASS_STOCK__FAMILY:
				return FAMILY_EDEFAULT == null ? family != null : !FAMILY_EDEFAULT.equals(family);
			case CommissionPackage.GLASS_STOCK__COLOUR:
				return COLOUR_EDEFAULT == null ? colour != null : !COLOUR_EDEFAULT.equals(colour);
			case CommissionPackage.GLASS_STOCK__THICKNESS_MM:
				return thicknessMm != THICKNESS_MM_EDEFAULT;
			case CommissionPackage.GLASS_STOCK__TEXTURED:
				return textured != TEXTURED_EDEFAULT;
			case CommissionPackage.GLASS_STOCK__GRAINED:
				return grained != GRAINED_EDEFAULT;
			case CommissionPackage.GLASS_STOCK__OPAL:
				return opal != OPAL_EDEFAULT;
			case CommissionPackage.GLASS_STOCK__DENSITY_KG_PER_M3:
				return densityKgPerM3 != DENSITY_KG_PER_M3_EDEFAULT;
			case CommissionPackage.GLASS_STOCK__HEAT_MODEL:
				return HEAT_MODEL_EDEFAULT == null ? heatModel != null : !HEAT_MODEL_EDEFAULT.equals(heatModel);
			case CommissionPackage.GLASS_STOCK__SHEET_WIDTH_MM:
				return sheetWidthMm != SHEET_WIDTH_MM_EDEFAULT;
			case CommissionPackage.GLASS_STOCK__SHEET_HEIGHT_MM:
				return sheetHeightMm != SHEET_HEIGHT_MM_EDEFAULT;
			case CommissionPackage.GLASS_STOCK__STOCK_M2:
				return stockM2 != STOCK_M2_EDEFAULT;
			case CommissionPackage.GLASS_STOCK__PRICE_PER_M2:
				return PRICE_PER_M2_EDEFAULT == null ? pricePerM2 != null : !PRICE_PER_M2_EDEFAULT.equals(pricePerM2);
			case CommissionPackage.GLASS_STOCK__SOURCE:
				return SOURCE_EDEFAULT == null ? source != null : !SOURCE_EDEFAULT.equals(source);
			case CommissionPackage.GLASS_STOCK__SUPPLIER:
				return supplier != null;
			case CommissionPackage.GLASS_STOCK__VISCOSITY_A:
				return VISCOSITY_A_EDEFAULT == null ? viscosityA != null : !VISCOSITY_A_EDEFAULT.equals(viscosityA);
			case CommissionPackage.GLASS_STOCK__VISCOSITY_BK:
				return VISCOSITY_BK_EDEFAULT == null ? viscosityBK != null : !VISCOSITY_BK_EDEFAULT.equals(viscosityBK);
			case CommissionPackage.GLASS_STOCK__VISCOSITY_T0C:
				return VISCOSITY_T0C_EDEFAULT == null ? viscosityT0C != null : !VISCOSITY_T0C_EDEFAULT.equals(viscosityT0C);
			case CommissionPackage.GLASS_STOCK__EXPANSION_PER_MILLION_K:
				return EXPANSION_PER_MILLION_K_EDEFAULT == null ? expansionPerMillionK != null : !EXPANSION_PER_MILLION_K_EDEFAULT.equals(expansionPerMillionK);
			case CommissionPackage.GLASS_STOCK__MEASURED_MM:
				return MEASURED_MM_EDEFAULT == null ? measuredMm != null : !MEASURED_MM_EDEFAULT.equals(measuredMm);
			case CommissionPackage.GLASS_STOCK__TRANSMITTANCE:
				return TRANSMITTANCE_EDEFAULT == null ? transmittance != null : !TRANSMITTANCE_EDEFAULT.equals(transmittance);
			case CommissionPackage.GLASS_STOCK__SHEETS:
				return sheets != null && !sheets.isEmpty();
			case CommissionPackage.GLASS_STOCK__NARROW_MM:
				return NARROW_MM_EDEFAULT == null ? narrowMm != null : !NARROW_MM_EDEFAULT.equals(narrowMm);
			case CommissionPackage.GLASS_STOCK__NEEDLE_DEG:
				return NEEDLE_DEG_EDEFAULT == null ? needleDeg != null : !NEEDLE_DEG_EDEFAULT.equals(needleDeg);
			case CommissionPackage.GLASS_STOCK__INSIDE_CURVE:
				return INSIDE_CURVE_EDEFAULT == null ? insideCurve != null : !INSIDE_CURVE_EDEFAULT.equals(insideCurve);
			case CommissionPackage.GLASS_STOCK__INSIDE_RADIUS_MM:
				return INSIDE_RADIUS_MM_EDEFAULT == null ? insideRadiusMm != null : !INSIDE_RADIUS_MM_EDEFAULT.equals(insideRadiusMm);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (family: ");
		result.append(family);
		result.append(", colour: ");
		result.append(colour);
		result.append(", thicknessMm: ");
		result.append(thicknessMm);
		result.append(", textured: ");
		result.append(textured);
		result.append(", grained: ");
		result.append(grained);
		result.append(", opal: ");
		result.append(opal);
		result.append(", densityKgPerM3: ");
		result.append(densityKgPerM3);
		result.append(", heatModel: ");
		result.append(heatModel);
		result.append(", sheetWidthMm: ");
		result.append(sheetWidthMm);
		result.append(", sheetHeightMm: ");
		result.append(sheetHeightMm);
		result.append(", stockM2: ");
		result.append(stockM2);
		result.append(", pricePerM2: ");
		result.append(pricePerM2);
		result.append(", source: ");
		result.append(source);
		result.append(", viscosityA: ");
		result.append(viscosityA);
		result.append(", viscosityBK: ");
		result.append(viscosityBK);
		result.append(", viscosityT0C: ");
		result.append(viscosityT0C);
		result.append(", expansionPerMillionK: ");
		result.append(expansionPerMillionK);
		result.append(", measuredMm: ");
		result.append(measuredMm);
		result.append(", transmittance: ");
		result.append(transmittance);
		result.append(", narrowMm: ");
		result.append(narrowMm);
		result.append(", needleDeg: ");
		result.append(needleDeg);
		result.append(", insideCurve: ");
		result.append(insideCurve);
		result.append(", insideRadiusMm: ");
		result.append(insideRadiusMm);
		result.append(')');
		return result.toString();
	}

} //GlassStockImpl
