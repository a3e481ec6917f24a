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
		result.append(')');
		return result.toString();
	}

} //KilnImpl
