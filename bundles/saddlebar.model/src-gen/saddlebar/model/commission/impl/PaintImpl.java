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
import saddlebar.model.commission.Medium;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.PaintKind;
import saddlebar.model.commission.PaintLot;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.Supplier;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Paint</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.PaintImpl#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintImpl#getFamily <em>Family</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintImpl#getColour <em>Colour</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintImpl#getSolidTransmittance <em>Solid Transmittance</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintImpl#getDensityGPerCm3 <em>Density GPer Cm3</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintImpl#getMaturingFromC <em>Maturing From C</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintImpl#getMaturingToC <em>Maturing To C</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintImpl#getPowderToMedium <em>Powder To Medium</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintImpl#isContainsLead <em>Contains Lead</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintImpl#isContainsCadmium <em>Contains Cadmium</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintImpl#isGoldBearing <em>Gold Bearing</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintImpl#getPricePerKg <em>Price Per Kg</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintImpl#getSource <em>Source</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintImpl#getMedium <em>Medium</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintImpl#getSupplier <em>Supplier</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintImpl#getLots <em>Lots</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintImpl#getTransmittance <em>Transmittance</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PaintImpl extends NamedImpl implements Paint {
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
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final PaintKind KIND_EDEFAULT = PaintKind.TRACE;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected PaintKind kind = KIND_EDEFAULT;

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
	 * The default value of the '{@link #getSolidTransmittance() <em>Solid Transmittance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSolidTransmittance()
	 * @generated
	 * @ordered
	 */
	protected static final Double SOLID_TRANSMITTANCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSolidTransmittance() <em>Solid Transmittance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSolidTransmittance()
	 * @generated
	 * @ordered
	 */
	protected Double solidTransmittance = SOLID_TRANSMITTANCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getDensityGPerCm3() <em>Density GPer Cm3</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDensityGPerCm3()
	 * @generated
	 * @ordered
	 */
	protected static final double DENSITY_GPER_CM3_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getDensityGPerCm3() <em>Density GPer Cm3</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDensityGPerCm3()
	 * @generated
	 * @ordered
	 */
	protected double densityGPerCm3 = DENSITY_GPER_CM3_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaturingFromC() <em>Maturing From C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaturingFromC()
	 * @generated
	 * @ordered
	 */
	protected static final double MATURING_FROM_C_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getMaturingFromC() <em>Maturing From C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaturingFromC()
	 * @generated
	 * @ordered
	 */
	protected double maturingFromC = MATURING_FROM_C_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaturingToC() <em>Maturing To C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaturingToC()
	 * @generated
	 * @ordered
	 */
	protected static final double MATURING_TO_C_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getMaturingToC() <em>Maturing To C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaturingToC()
	 * @generated
	 * @ordered
	 */
	protected double maturingToC = MATURING_TO_C_EDEFAULT;

	/**
	 * The default value of the '{@link #getPowderToMedium() <em>Powder To Medium</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPowderToMedium()
	 * @generated
	 * @ordered
	 */
	protected static final double POWDER_TO_MEDIUM_EDEFAULT = 2.5;

	/**
	 * The cached value of the '{@link #getPowderToMedium() <em>Powder To Medium</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPowderToMedium()
	 * @generated
	 * @ordered
	 */
	protected double powderToMedium = POWDER_TO_MEDIUM_EDEFAULT;

	/**
	 * The default value of the '{@link #isContainsLead() <em>Contains Lead</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isContainsLead()
	 * @generated
	 * @ordered
	 */
	protected static final boolean CONTAINS_LEAD_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isContainsLead() <em>Contains Lead</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isContainsLead()
	 * @generated
	 * @ordered
	 */
	protected boolean containsLead = CONTAINS_LEAD_EDEFAULT;

	/**
	 * The default value of the '{@link #isContainsCadmium() <em>Contains Cadmium</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isContainsCadmium()
	 * @generated
	 * @ordered
	 */
	protected static final boolean CONTAINS_CADMIUM_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isContainsCadmium() <em>Contains Cadmium</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isContainsCadmium()
	 * @generated
	 * @ordered
	 */
	protected boolean containsCadmium = CONTAINS_CADMIUM_EDEFAULT;

	/**
	 * The default value of the '{@link #isGoldBearing() <em>Gold Bearing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isGoldBearing()
	 * @generated
	 * @ordered
	 */
	protected static final boolean GOLD_BEARING_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isGoldBearing() <em>Gold Bearing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isGoldBearing()
	 * @generated
	 * @ordered
	 */
	protected boolean goldBearing = GOLD_BEARING_EDEFAULT;

	/**
	 * The default value of the '{@link #getPricePerKg() <em>Price Per Kg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPricePerKg()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal PRICE_PER_KG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPricePerKg() <em>Price Per Kg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPricePerKg()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal pricePerKg = PRICE_PER_KG_EDEFAULT;

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
	 * The cached value of the '{@link #getMedium() <em>Medium</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMedium()
	 * @generated
	 * @ordered
	 */
	protected Medium medium;

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
	 * The cached value of the '{@link #getLots() <em>Lots</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLots()
	 * @generated
	 * @ordered
	 */
	protected EList<PaintLot> lots;

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
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PaintImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.PAINT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Studio getStudio() {
		if (eContainerFeatureID() != CommissionPackage.PAINT__STUDIO) return null;
		return (Studio)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetStudio(Studio newStudio, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newStudio, CommissionPackage.PAINT__STUDIO, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStudio(Studio newStudio) {
		if (newStudio != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.PAINT__STUDIO && newStudio != null)) {
			if (EcoreUtil.isAncestor(this, newStudio))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newStudio != null)
				msgs = ((InternalEObject)newStudio).eInverseAdd(this, CommissionPackage.STUDIO__PAINTS, Studio.class, msgs);
			msgs = basicSetStudio(newStudio, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT__STUDIO, newStudio, newStudio));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT__FAMILY, oldFamily, family));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PaintKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(PaintKind newKind) {
		PaintKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT__KIND, oldKind, kind));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT__COLOUR, oldColour, colour));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSolidTransmittance() {
		return solidTransmittance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSolidTransmittance(Double newSolidTransmittance) {
		Double oldSolidTransmittance = solidTransmittance;
		solidTransmittance = newSolidTransmittance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT__SOLID_TRANSMITTANCE, oldSolidTransmittance, solidTransmittance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getDensityGPerCm3() {
		return densityGPerCm3;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDensityGPerCm3(double newDensityGPerCm3) {
		double oldDensityGPerCm3 = densityGPerCm3;
		densityGPerCm3 = newDensityGPerCm3;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT__DENSITY_GPER_CM3, oldDensityGPerCm3, densityGPerCm3));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getMaturingFromC() {
		return maturingFromC;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaturingFromC(double newMaturingFromC) {
		double oldMaturingFromC = maturingFromC;
		maturingFromC = newMaturingFromC;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT__MATURING_FROM_C, oldMaturingFromC, maturingFromC));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getMaturingToC() {
		return maturingToC;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaturingToC(double newMaturingToC) {
		double oldMaturingToC = maturingToC;
		maturingToC = newMaturingToC;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT__MATURING_TO_C, oldMaturingToC, maturingToC));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getPowderToMedium() {
		return powderToMedium;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPowderToMedium(double newPowderToMedium) {
		double oldPowderToMedium = powderToMedium;
		powderToMedium = newPowderToMedium;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT__POWDER_TO_MEDIUM, oldPowderToMedium, powderToMedium));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isContainsLead() {
		return containsLead;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setContainsLead(boolean newContainsLead) {
		boolean oldContainsLead = containsLead;
		containsLead = newContainsLead;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT__CONTAINS_LEAD, oldContainsLead, containsLead));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isContainsCadmium() {
		return containsCadmium;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setContainsCadmium(boolean newContainsCadmium) {
		boolean oldContainsCadmium = containsCadmium;
		containsCadmium = newContainsCadmium;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT__CONTAINS_CADMIUM, oldContainsCadmium, containsCadmium));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isGoldBearing() {
		return goldBearing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGoldBearing(boolean newGoldBearing) {
		boolean oldGoldBearing = goldBearing;
		goldBearing = newGoldBearing;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT__GOLD_BEARING, oldGoldBearing, goldBearing));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getPricePerKg() {
		return pricePerKg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPricePerKg(BigDecimal newPricePerKg) {
		BigDecimal oldPricePerKg = pricePerKg;
		pricePerKg = newPricePerKg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT__PRICE_PER_KG, oldPricePerKg, pricePerKg));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT__SOURCE, oldSource, source));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Medium getMedium() {
		if (medium != null && medium.eIsProxy()) {
			InternalEObject oldMedium = (InternalEObject)medium;
			medium = (Medium)eResolveProxy(oldMedium);
			if (medium != oldMedium) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.PAINT__MEDIUM, oldMedium, medium));
			}
		}
		return medium;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Medium basicGetMedium() {
		return medium;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMedium(Medium newMedium) {
		Medium oldMedium = medium;
		medium = newMedium;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT__MEDIUM, oldMedium, medium));
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.PAINT__SUPPLIER, oldSupplier, supplier));
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
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT__SUPPLIER, oldSupplier, newSupplier);
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
				msgs = ((InternalEObject)supplier).eInverseRemove(this, CommissionPackage.SUPPLIER__PAINTS, Supplier.class, msgs);
			if (newSupplier != null)
				msgs = ((InternalEObject)newSupplier).eInverseAdd(this, CommissionPackage.SUPPLIER__PAINTS, Supplier.class, msgs);
			msgs = basicSetSupplier(newSupplier, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT__SUPPLIER, newSupplier, newSupplier));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<PaintLot> getLots() {
		if (lots == null) {
			lots = new EObjectContainmentWithInverseEList<PaintLot>(PaintLot.class, this, CommissionPackage.PAINT__LOTS, CommissionPackage.PAINT_LOT__PAINT);
		}
		return lots;
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT__TRANSMITTANCE, oldTransmittance, transmittance));
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
			case CommissionPackage.PAINT__STUDIO:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetStudio((Studio)otherEnd, msgs);
			case CommissionPackage.PAINT__SUPPLIER:
				if (supplier != null)
					msgs = ((InternalEObject)supplier).eInverseRemove(this, CommissionPackage.SUPPLIER__PAINTS, Supplier.class, msgs);
				return basicSetSupplier((Supplier)otherEnd, msgs);
			case CommissionPackage.PAINT__LOTS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getLots()).basicAdd(otherEnd, msgs);
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
			case CommissionPackage.PAINT__STUDIO:
				return basicSetStudio(null, msgs);
			case CommissionPackage.PAINT__SUPPLIER:
				return basicSetSupplier(null, msgs);
			case CommissionPackage.PAINT__LOTS:
				return ((InternalEList<?>)getLots()).basicRemove(otherEnd, msgs);
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
			case CommissionPackage.PAINT__STUDIO:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.STUDIO__PAINTS, Studio.class, msgs);
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
			case CommissionPackage.PAINT__STUDIO:
				return getStudio();
			case CommissionPackage.PAINT__FAMILY:
				return getFamily();
			case CommissionPackage.PAINT__KIND:
				return getKind();
			case CommissionPackage.PAINT__COLOUR:
				return getColour();
			case CommissionPackage.PAINT__SOLID_TRANSMITTANCE:
				return getSolidTransmittance();
			case CommissionPackage.PAINT__DENSITY_GPER_CM3:
				return getDensityGPerCm3();
			case CommissionPackage.PAINT__MATURING_FROM_C:
				return getMaturingFromC();
			case CommissionPackage.PAINT__MATURING_TO_C:
				return getMaturingToC();
			case CommissionPackage.PAINT__POWDER_TO_MEDIUM:
				return getPowderToMedium();
			case CommissionPackage.PAINT__CONTAINS_LEAD:
				return isContainsLead();
			case CommissionPackage.PAINT__CONTAINS_CADMIUM:
				return isContainsCadmium();
			case CommissionPackage.PAINT__GOLD_BEARING:
				return isGoldBearing();
			case CommissionPackage.PAINT__PRICE_PER_KG:
				return getPricePerKg();
			case CommissionPackage.PAINT__SOURCE:
				return getSource();
			case CommissionPackage.PAINT__MEDIUM:
				if (resolve) return getMedium();
				return basicGetMedium();
			case CommissionPackage.PAINT__SUPPLIER:
				if (resolve) return getSupplier();
				return basicGetSupplier();
			case CommissionPackage.PAINT__LOTS:
				return getLots();
			case CommissionPackage.PAINT__TRANSMITTANCE:
				return getTransmittance();
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
			case CommissionPackage.PAINT__STUDIO:
				setStudio((Studio)newValue);
				return;
			case CommissionPackage.PAINT__FAMILY:
				setFamily((String)newValue);
				return;
			case CommissionPackage.PAINT__KIND:
				setKind((PaintKind)newValue);
				return;
			case CommissionPackage.PAINT__COLOUR:
				setColour((String)newValue);
				return;
			case CommissionPackage.PAINT__SOLID_TRANSMITTANCE:
				setSolidTransmittance((Double)newValue);
				return;
			case CommissionPackage.PAINT__DENSITY_GPER_CM3:
				setDensityGPerCm3((Double)newValue);
				return;
			case CommissionPackage.PAINT__MATURING_FROM_C:
				setMaturingFromC((Double)newValue);
				return;
			case CommissionPackage.PAINT__MATURING_TO_C:
				setMaturingToC((Double)newValue);
				return;
			case CommissionPackage.PAINT__POWDER_TO_MEDIUM:
				setPowderToMedium((Double)newValue);
				return;
			case CommissionPackage.PAINT__CONTAINS_LEAD:
				setContainsLead((Boolean)newValue);
				return;
			case CommissionPackage.PAINT__CONTAINS_CADMIUM:
				setContainsCadmium((Boolean)newValue);
				return;
			case CommissionPackage.PAINT__GOLD_BEARING:
				setGoldBearing((Boolean)newValue);
				return;
			case CommissionPackage.PAINT__PRICE_PER_KG:
				setPricePerKg((BigDecimal)newValue);
				return;
			case CommissionPackage.PAINT__SOURCE:
				setSource((String)newValue);
				return;
			case CommissionPackage.PAINT__MEDIUM:
				setMedium((Medium)newValue);
				return;
			case CommissionPackage.PAINT__SUPPLIER:
				setSupplier((Supplier)newValue);
				return;
			case CommissionPackage.PAINT__LOTS:
				getLots().clear();
				getLots().addAll((Collection<? extends PaintLot>)newValue);
				return;
			case CommissionPackage.PAINT__TRANSMITTANCE:
				setTransmittance((String)newValue);
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
			case CommissionPackage.PAINT__STUDIO:
				setStudio((Studio)null);
				return;
			case CommissionPackage.PAINT__FAMILY:
				setFamily(FAMILY_EDEFAULT);
				return;
			case CommissionPackage.PAINT__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case CommissionPackage.PAINT__COLOUR:
				setColour(COLOUR_EDEFAULT);
				return;
			case CommissionPackage.PAINT__SOLID_TRANSMITTANCE:
				setSolidTransmittance(SOLID_TRANSMITTANCE_EDEFAULT);
				return;
			case CommissionPackage.PAINT__DENSITY_GPER_CM3:
				setDensityGPerCm3(DENSITY_GPER_CM3_EDEFAULT);
				return;
			case CommissionPackage.PAINT__MATURING_FROM_C:
				setMaturingFromC(MATURING_FROM_C_EDEFAULT);
				return;
			case CommissionPackage.PAINT__MATURING_TO_C:
				setMaturingToC(MATURING_TO_C_EDEFAULT);
				return;
			case CommissionPackage.PAINT__POWDER_TO_MEDIUM:
				setPowderToMedium(POWDER_TO_MEDIUM_EDEFAULT);
				return;
			case CommissionPackage.PAINT__CONTAINS_LEAD:
				setContainsLead(CONTAINS_LEAD_EDEFAULT);
				return;
			case CommissionPackage.PAINT__CONTAINS_CADMIUM:
				setContainsCadmium(CONTAINS_CADMIUM_EDEFAULT);
				return;
			case CommissionPackage.PAINT__GOLD_BEARING:
				setGoldBearing(GOLD_BEARING_EDEFAULT);
				return;
			case CommissionPackage.PAINT__PRICE_PER_KG:
				setPricePerKg(PRICE_PER_KG_EDEFAULT);
				return;
			case CommissionPackage.PAINT__SOURCE:
				setSource(SOURCE_EDEFAULT);
				return;
			case CommissionPackage.PAINT__MEDIUM:
				setMedium((Medium)null);
				return;
			case CommissionPackage.PAINT__SUPPLIER:
				setSupplier((Supplier)null);
				return;
			case CommissionPackage.PAINT__LOTS:
				getLots().clear();
				return;
			case CommissionPackage.PAINT__TRANSMITTANCE:
				setTransmittance(TRANSMITTANCE_EDEFAULT);
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
			case CommissionPackage.PAINT__STUDIO:
				return getStudio() != null;
			case CommissionPackage.PAINT__FAMILY:
				return FAMILY_EDEFAULT == null ? family != null : !FAMILY_EDEFAULT.equals(family);
			case CommissionPackage.PAINT__KIND:
				return kind != KIND_EDEFAULT;
			case CommissionPackage.PAINT__COLOUR:
				return COLOUR_EDEFAULT == null ? colour != null : !COLOUR_EDEFAULT.equals(colour);
			case CommissionPackage.PAINT__SOLID_TRANSMITTANCE:
				return SOLID_TRANSMITTANCE_EDEFAULT == null ? solidTransmittance != null : !SOLID_TRANSMITTANCE_EDEFAULT.equals(solidTransmittance);
			case CommissionPackage.PAINT__DENSITY_GPER_CM3:
				return densityGPerCm3 != DENSITY_GPER_CM3_EDEFAULT;
			case CommissionPackage.PAINT__MATURING_FROM_C:
				return maturingFromC != MATURING_FROM_C_EDEFAULT;
			case CommissionPackage.PAINT__MATURING_TO_C:
				return maturingToC != MATURING_TO_C_EDEFAULT;
			case CommissionPackage.PAINT__POWDER_TO_MEDIUM:
				return powderToMedium != POWDER_TO_MEDIUM_EDEFAULT;
			case CommissionPackage.PAINT__CONTAINS_LEAD:
				return containsLead != CONTAINS_LEAD_EDEFAULT;
			case CommissionPackage.PAINT__CONTAINS_CADMIUM:
				return containsCadmium != CONTAINS_CADMIUM_EDEFAULT;
			case CommissionPackage.PAINT__GOLD_BEARING:
				return goldBearing != GOLD_BEARING_EDEFAULT;
			case CommissionPackage.PAINT__PRICE_PER_KG:
				return PRICE_PER_KG_EDEFAULT == null ? pricePerKg != null : !PRICE_PER_KG_EDEFAULT.equals(pricePerKg);
			case CommissionPackage.PAINT__SOURCE:
				return SOURCE_EDEFAULT == null ? source != null : !SOURCE_EDEFAULT.equals(source);
			case CommissionPackage.PAINT__MEDIUM:
				return medium != null;
			case CommissionPackage.PAINT__SUPPLIER:
				return supplier != null;
			case CommissionPackage.PAINT__LOTS:
				return lots != null && !lots.isEmpty();
			case CommissionPackage.PAINT__TRANSMITTANCE:
				return TRANSMITTANCE_EDEFAULT == null ? transmittance != null : !TRANSMITTANCE_EDEFAULT.equals(transmittance);
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
		result.append(", kind: ");
		result.append(kind);
		result.append(", colour: ");
		result.append(colour);
		result.append(", solidTransmittance: ");
		result.append(solidTransmittance);
		result.append(", densityGPerCm3: ");
		result.append(densityGPerCm3);
		result.append(", maturingFromC: ");
		result.append(maturingFromC);
		result.append(", maturingToC: ");
		result.append(maturingToC);
		result.append(", powderToMedium: ");
		result.append(powderToMedium);
		result.append(", containsLead: ");
		result.append(containsLead);
		result.append(", containsCadmium: ");
		result.append(containsCadmium);
		result.append(", goldBearing: ");
		result.append(goldBearing);
		result.append(", pricePerKg: ");
		result.append(pricePerKg);
		result.append(", source: ");
		result.append(source);
		result.append(", transmittance: ");
		result.append(transmittance);
		result.append(')');
		return result.toString();
	}

} //PaintImpl
