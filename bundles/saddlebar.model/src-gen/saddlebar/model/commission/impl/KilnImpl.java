/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EcoreUtil;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.Kiln;
import saddlebar.model.commission.Studio;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Kiln</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.KilnImpl#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.KilnImpl#getShelfWidthMm <em>Shelf Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.KilnImpl#getShelfDepthMm <em>Shelf Depth Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.KilnImpl#getShelves <em>Shelves</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.KilnImpl#getMaxC <em>Max C</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.KilnImpl#getMaxRateKPerH <em>Max Rate KPer H</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.KilnImpl#getNaturalFallKPerH <em>Natural Fall KPer H</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.KilnImpl#getPowerKw <em>Power Kw</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.KilnImpl#getOffsetK <em>Offset K</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.KilnImpl#getSource <em>Source</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.KilnImpl#getChamberJPerK <em>Chamber JPer K</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.KilnImpl#getLiningJPerK <em>Lining JPer K</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.KilnImpl#getToLiningWPerK <em>To Lining WPer K</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.KilnImpl#getToRoomWPerK <em>To Room WPer K</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.KilnImpl#getLearntFirings <em>Learnt Firings</em>}</li>
 * </ul>
 *
 * @generated
 */
public class KilnImpl extends NamedImpl implements Kiln {
	/**
	 * The default value of the '{@link #getShelfWidthMm() <em>Shelf Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShelfWidthMm()
	 * @generated
	 * @ordered
	 */
	protected static final double SHELF_WIDTH_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getShelfWidthMm() <em>Shelf Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShelfWidthMm()
	 * @generated
	 * @ordered
	 */
	protected double shelfWidthMm = SHELF_WIDTH_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getShelfDepthMm() <em>Shelf Depth Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShelfDepthMm()
	 * @generated
	 * @ordered
	 */
	protected static final double SHELF_DEPTH_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getShelfDepthMm() <em>Shelf Depth Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShelfDepthMm()
	 * @generated
	 * @ordered
	 */
	protected double shelfDepthMm = SHELF_DEPTH_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getShelves() <em>Shelves</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShelves()
	 * @generated
	 * @ordered
	 */
	protected static final int SHELVES_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getShelves() <em>Shelves</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShelves()
	 * @generated
	 * @ordered
	 */
	protected int shelves = SHELVES_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaxC() <em>Max C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaxC()
	 * @generated
	 * @ordered
	 */
	protected static final double MAX_C_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getMaxC() <em>Max C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaxC()
	 * @generated
	 * @ordered
	 */
	protected double maxC = MAX_C_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaxRateKPerH() <em>Max Rate KPer H</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaxRateKPerH()
	 * @generated
	 * @ordered
	 */
	protected static final double MAX_RATE_KPER_H_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getMaxRateKPerH() <em>Max Rate KPer H</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaxRateKPerH()
	 * @generated
	 * @ordered
	 */
	protected double maxRateKPerH = MAX_RATE_KPER_H_EDEFAULT;

	/**
	 * The default value of the '{@link #getNaturalFallKPerH() <em>Natural Fall KPer H</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNaturalFallKPerH()
	 * @generated
	 * @ordered
	 */
	protected static final double NATURAL_FALL_KPER_H_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getNaturalFallKPerH() <em>Natural Fall KPer H</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNaturalFallKPerH()
	 * @generated
	 * @ordered
	 */
	protected double naturalFallKPerH = NATURAL_FALL_KPER_H_EDEFAULT;

	/**
	 * The default value of the '{@link #getPowerKw() <em>Power Kw</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPowerKw()
	 * @generated
	 * @ordered
	 */
	protected static final double POWER_KW_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getPowerKw() <em>Power Kw</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPowerKw()
	 * @generated
	 * @ordered
	 */
	protected double powerKw = POWER_KW_EDEFAULT;

	/**
	 * The default value of the '{@link #getOffsetK() <em>Offset K</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOffsetK()
	 * @generated
	 * @ordered
	 */
	protected static final double OFFSET_K_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getOffsetK() <em>Offset K</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOffsetK()
	 * @generated
	 * @ordered
	 */
	protected double offsetK = OFFSET_K_EDEFAULT;

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
	 * The default value of the '{@link #getChamberJPerK() <em>Chamber JPer K</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChamberJPerK()
	 * @generated
	 * @ordered
	 */
	protected static final Double CHAMBER_JPER_K_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getChamberJPerK() <em>Chamber JPer K</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChamberJPerK()
	 * @generated
	 * @ordered
	 */
	protected Double chamberJPerK = CHAMBER_JPER_K_EDEFAULT;

	/**
	 * The default value of the '{@link #getLiningJPerK() <em>Lining JPer K</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLiningJPerK()
	 * @generated
	 * @ordered
	 */
	protected static final Double LINING_JPER_K_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLiningJPerK() <em>Lining JPer K</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLiningJPerK()
	 * @generated
	 * @ordered
	 */
	protected Double liningJPerK = LINING_JPER_K_EDEFAULT;

	/**
	 * The default value of the '{@link #getToLiningWPerK() <em>To Lining WPer K</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToLiningWPerK()
	 * @generated
	 * @ordered
	 */
	protected static final Double TO_LINING_WPER_K_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getToLiningWPerK() <em>To Lining WPer K</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToLiningWPerK()
	 * @generated
	 * @ordered
	 */
	protected Double toLiningWPerK = TO_LINING_WPER_K_EDEFAULT;

	/**
	 * The default value of the '{@link #getToRoomWPerK() <em>To Room WPer K</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToRoomWPerK()
	 * @generated
	 * @ordered
	 */
	protected static final Double TO_ROOM_WPER_K_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getToRoomWPerK() <em>To Room WPer K</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getToRoomWPerK()
	 * @generated
	 * @ordered
	 */
	protected Double toRoomWPerK = TO_ROOM_WPER_K_EDEFAULT;

	/**
	 * The default value of the '{@link #getLearntFirings() <em>Learnt Firings</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLearntFirings()
	 * @generated
	 * @ordered
	 */
	protected static final int LEARNT_FIRINGS_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getLearntFirings() <em>Learnt Firings</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLearntFirings()
	 * @generated
	 * @ordered
	 */
	protected int learntFirings = LEARNT_FIRINGS_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected KilnImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.KILN;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Studio getStudio() {
		if (eContainerFeatureID() != CommissionPackage.KILN__STUDIO) return null;
		return (Studio)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetStudio(Studio newStudio, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newStudio, CommissionPackage.KILN__STUDIO, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStudio(Studio newStudio) {
		if (newStudio != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.KILN__STUDIO && newStudio != null)) {
			if (EcoreUtil.isAncestor(this, newStudio))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newStudio != null)
				msgs = ((InternalEObject)newStudio).eInverseAdd(this, CommissionPackage.STUDIO__KILNS, Studio.class, msgs);
			msgs = basicSetStudio(newStudio, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.KILN__STUDIO, newStudio, newStudio));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getShelfWidthMm() {
		return shelfWidthMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShelfWidthMm(double newShelfWidthMm) {
		double oldShelfWidthMm = shelfWidthMm;
		shelfWidthMm = newShelfWidthMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.KILN__SHELF_WIDTH_MM, oldShelfWidthMm, shelfWidthMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getShelfDepthMm() {
		return shelfDepthMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShelfDepthMm(double newShelfDepthMm) {
		double oldShelfDepthMm = shelfDepthMm;
		shelfDepthMm = newShelfDepthMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.KILN__SHELF_DEPTH_MM, oldShelfDepthMm, shelfDepthMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getShelves() {
		return shelves;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShelves(int newShelves) {
		int oldShelves = shelves;
		shelves = newShelves;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.KILN__SHELVES, oldShelves, shelves));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getMaxC() {
		return maxC;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaxC(double newMaxC) {
		double oldMaxC = maxC;
		maxC = newMaxC;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.KILN__MAX_C, oldMaxC, maxC));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getMaxRateKPerH() {
		return maxRateKPerH;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaxRateKPerH(double newMaxRateKPerH) {
		double oldMaxRateKPerH = maxRateKPerH;
		maxRateKPerH = newMaxRateKPerH;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.KILN__MAX_RATE_KPER_H, oldMaxRateKPerH, maxRateKPerH));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getNaturalFallKPerH() {
		return naturalFallKPerH;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNaturalFallKPerH(double newNaturalFallKPerH) {
		double oldNaturalFallKPerH = naturalFallKPerH;
		naturalFallKPerH = newNaturalFallKPerH;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.KILN__NATURAL_FALL_KPER_H, oldNaturalFallKPerH, naturalFallKPerH));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getPowerKw() {
		return powerKw;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPowerKw(double newPowerKw) {
		double oldPowerKw = powerKw;
		powerKw = newPowerKw;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.KILN__POWER_KW, oldPowerKw, powerKw));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getOffsetK() {
		return offsetK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOffsetK(double newOffsetK) {
		double oldOffsetK = offsetK;
		offsetK = newOffsetK;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.KILN__OFFSET_K, oldOffsetK, offsetK));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.KILN__SOURCE, oldSource, source));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getChamberJPerK() {
		return chamberJPerK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setChamberJPerK(Double newChamberJPerK) {
		Double oldChamberJPerK = chamberJPerK;
		chamberJPerK = newChamberJPerK;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.KILN__CHAMBER_JPER_K, oldChamberJPerK, chamberJPerK));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getLiningJPerK() {
		return liningJPerK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLiningJPerK(Double newLiningJPerK) {
		Double oldLiningJPerK = liningJPerK;
		liningJPerK = newLiningJPerK;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.KILN__LINING_JPER_K, oldLiningJPerK, liningJPerK));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getToLiningWPerK() {
		return toLiningWPerK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setToLiningWPerK(Double newToLiningWPerK) {
		Double oldToLiningWPerK = toLiningWPerK;
		toLiningWPerK = newToLiningWPerK;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.KILN__TO_LINING_WPER_K, oldToLiningWPerK, toLiningWPerK));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getToRoomWPerK() {
		return toRoomWPerK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setToRoomWPerK(Double newToRoomWPerK) {
		Double oldToRoomWPerK = toRoomWPerK;
		toRoomWPerK = newToRoomWPerK;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.KILN__TO_ROOM_WPER_K, oldToRoomWPerK, toRoomWPerK));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getLearntFirings() {
		return learntFirings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLearntFirings(int newLearntFirings) {
		int oldLearntFirings = learntFirings;
		learntFirings = newLearntFirings;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.KILN__LEARNT_FIRINGS, oldLearntFirings, learntFirings));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.KILN__STUDIO:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetStudio((Studio)otherEnd, msgs);
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
			case CommissionPackage.KILN__STUDIO:
				return basicSetStudio(null, msgs);
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
			case CommissionPackage.KILN__STUDIO:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.STUDIO__KILNS, Studio.class, msgs);
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
			case CommissionPackage.KILN__STUDIO:
				return getStudio();
			case CommissionPackage.KILN__SHELF_WIDTH_MM:
				return getShelfWidthMm();
			case CommissionPackage.KILN__SHELF_DEPTH_MM:
				return getShelfDepthMm();
			case CommissionPackage.KILN__SHELVES:
				return getShelves();
			case CommissionPackage.KILN__MAX_C:
				return getMaxC();
			case CommissionPackage.KILN__MAX_RATE_KPER_H:
				return getMaxRateKPerH();
			case CommissionPackage.KILN__NATURAL_FALL_KPER_H:
				return getNaturalFallKPerH();
			case CommissionPackage.KILN__POWER_KW:
				return getPowerKw();
			case CommissionPackage.KILN__OFFSET_K:
				return getOffsetK();
			case CommissionPackage.KILN__SOURCE:
				return getSource();
			case CommissionPackage.KILN__CHAMBER_JPER_K:
				return getChamberJPerK();
			case CommissionPackage.KILN__LINING_JPER_K:
				return getLiningJPerK();
			case CommissionPackage.KILN__TO_LINING_WPER_K:
				return getToLiningWPerK();
			case CommissionPackage.KILN__TO_ROOM_WPER_K:
				return getToRoomWPerK();
			case CommissionPackage.KILN__LEARNT_FIRINGS:
				return getLearntFirings();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case CommissionPackage.KILN__STUDIO:
				setStudio((Studio)newValue);
				return;
			case CommissionPackage.KILN__SHELF_WIDTH_MM:
				setShelfWidthMm((Double)newValue);
				return;
			case CommissionPackage.KILN__SHELF_DEPTH_MM:
				setShelfDepthMm((Double)newValue);
				return;
			case CommissionPackage.KILN__SHELVES:
				setShelves((Integer)newValue);
				return;
			case CommissionPackage.KILN__MAX_C:
				setMaxC((Double)newValue);
				return;
			case CommissionPackage.KILN__MAX_RATE_KPER_H:
				setMaxRateKPerH((Double)newValue);
				return;
			case CommissionPackage.KILN__NATURAL_FALL_KPER_H:
				setNaturalFallKPerH((Double)newValue);
				return;
			case CommissionPackage.KILN__POWER_KW:
				setPowerKw((Double)newValue);
				return;
			case CommissionPackage.KILN__OFFSET_K:
				setOffsetK((Double)newValue);
				return;
			case CommissionPackage.KILN__SOURCE:
				setSource((String)newValue);
				return;
			case CommissionPackage.KILN__CHAMBER_JPER_K:
				setChamberJPerK((Double)newValue);
				return;
			case CommissionPackage.KILN__LINING_JPER_K:
				setLiningJPerK((Double)newValue);
				return;
			case CommissionPackage.KILN__TO_LINING_WPER_K:
				setToLiningWPerK((Double)newValue);
				return;
			case CommissionPackage.KILN__TO_ROOM_WPER_K:
				setToRoomWPerK((Double)newValue);
				return;
			case CommissionPackage.KILN__LEARNT_FIRINGS:
				setLearntFirings((Integer)newValue);
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
			case CommissionPackage.KILN__STUDIO:
				setStudio((Studio)null);
				return;
			case CommissionPackage.KILN__SHELF_WIDTH_MM:
				setShelfWidthMm(SHELF_WIDTH_MM_EDEFAULT);
				return;
			case CommissionPackage.KILN__SHELF_DEPTH_MM:
				setShelfDepthMm(SHELF_DEPTH_MM_EDEFAULT);
				return;
			case CommissionPackage.KILN__SHELVES:
				setShelves(SHELVES_EDEFAULT);
				return;
			case CommissionPackage.KILN__MAX_C:
				setMaxC(MAX_C_EDEFAULT);
				return;
			case CommissionPackage.KILN__MAX_RATE_KPER_H:
				setMaxRateKPerH(MAX_RATE_KPER_H_EDEFAULT);
				return;
			case CommissionPackage.KILN__NATURAL_FALL_KPER_H:
				setNaturalFallKPerH(NATURAL_FALL_KPER_H_EDEFAULT);
				return;
			case CommissionPackage.KILN__POWER_KW:
				setPowerKw(POWER_KW_EDEFAULT);
				return;
			case CommissionPackage.KILN__OFFSET_K:
				setOffsetK(OFFSET_K_EDEFAULT);
				return;
			case CommissionPackage.KILN__SOURCE:
				setSource(SOURCE_EDEFAULT);
				return;
			case CommissionPackage.KILN__CHAMBER_JPER_K:
				setChamberJPerK(CHAMBER_JPER_K_EDEFAULT);
				return;
			case CommissionPackage.KILN__LINING_JPER_K:
				setLiningJPerK(LINING_JPER_K_EDEFAULT);
				return;
			case CommissionPackage.KILN__TO_LINING_WPER_K:
				setToLiningWPerK(TO_LINING_WPER_K_EDEFAULT);
				return;
			case CommissionPackage.KILN__TO_ROOM_WPER_K:
				setToRoomWPerK(TO_ROOM_WPER_K_EDEFAULT);
				return;
			case CommissionPackage.KILN__LEARNT_FIRINGS:
				setLearntFirings(LEARNT_FIRINGS_EDEFAULT);
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
			case CommissionPackage.KILN__STUDIO:
				return getStudio() != null;
			case CommissionPackage.KILN__SHELF_WIDTH_MM:
				return shelfWidthMm != SHELF_WIDTH_MM_EDEFAULT;
			case CommissionPackage.KILN__SHELF_DEPTH_MM:
				return shelfDepthMm != SHELF_DEPTH_MM_EDEFAULT;
			case CommissionPackage.KILN__SHELVES:
				return shelves != SHELVES_EDEFAULT;
			case CommissionPackage.KILN__MAX_C:
				return maxC != MAX_C_EDEFAULT;
			case CommissionPackage.KILN__MAX_RATE_KPER_H:
				return maxRateKPerH != MAX_RATE_KPER_H_EDEFAULT;
			case CommissionPackage.KILN__NATURAL_FALL_KPER_H:
				return naturalFallKPerH != NATURAL_FALL_KPER_H_EDEFAULT;
			case CommissionPackage.KILN__POWER_KW:
				return powerKw != POWER_KW_EDEFAULT;
			case CommissionPackage.KILN__OFFSET_K:
				return offsetK != OFFSET_K_EDEFAULT;
			case CommissionPackage.KILN__SOURCE:
				return SOURCE_EDEFAULT == null ? source != null : !SOURCE_EDEFAULT.equals(source);
			case CommissionPackage.KILN__CHAMBER_JPER_K:
				return CHAMBER_JPER_K_EDEFAULT == null ? chamberJPerK != null : !CHAMBER_JPER_K_EDEFAULT.equals(chamberJPerK);
			case CommissionPackage.KILN__LINING_JPER_K:
				return LINING_JPER_K_EDEFAULT == null ? liningJPerK != null : !LINING_JPER_K_EDEFAULT.equals(liningJPerK);
			case CommissionPackage.KILN__TO_LINING_WPER_K:
				return TO_LINING_WPER_K_EDEFAULT == null ? toLiningWPerK != null : !TO_LINING_WPER_K_EDEFAULT.equals(toLiningWPerK);
			case CommissionPackage.KILN__TO_ROOM_WPER_K:
				return TO_ROOM_WPER_K_EDEFAULT == null ? toRoomWPerK != null : !TO_ROOM_WPER_K_EDEFAULT.equals(toRoomWPerK);
			case CommissionPackage.KILN__LEARNT_FIRINGS:
				return learntFirings != LEARNT_FIRINGS_EDEFAULT;
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
		result.append(" (shelfWidthMm: ");
		result.append(shelfWidthMm);
		result.append(", shelfDepthMm: ");
		result.append(shelfDepthMm);
		result.append(", shelves: ");
		result.append(shelves);
		result.append(", maxC: ");
		result.append(maxC);
		result.append(", maxRateKPerH: ");
		result.append(maxRateKPerH);
		result.append(", naturalFallKPerH: ");
		result.append(naturalFallKPerH);
		result.append(", powerKw: ");
		result.append(powerKw);
		result.append(", offsetK: ");
		result.append(offsetK);
		result.append(", source: ");
		result.append(source);
		result.append(", chamberJPerK: ");
		result.append(chamberJPerK);
		result.append(", liningJPerK: ");
		result.append(liningJPerK);
		result.append(", toLiningWPerK: ");
		result.append(toLiningWPerK);
		result.append(", toRoomWPerK: ");
		result.append(toRoomWPerK);
		result.append(", learntFirings: ");
		result.append(learntFirings);
		result.append(')');
		return result.toString();
	}

} //KilnImpl
