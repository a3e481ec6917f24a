/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.Firing;
import saddlebar.model.commission.RunSegment;
import saddlebar.model.commission.ShelfPlace;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Firing</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.FiringImpl#getName <em>Name</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.FiringImpl#getKilnId <em>Kiln Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.FiringImpl#getScheduleId <em>Schedule Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.FiringImpl#getSegments <em>Segments</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.FiringImpl#getLoad <em>Load</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.FiringImpl#getCurveFile <em>Curve File</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.FiringImpl#getCurveSha256 <em>Curve Sha256</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.FiringImpl#getPeakC <em>Peak C</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.FiringImpl#getEnergyKwh <em>Energy Kwh</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FiringImpl extends MakingRecordImpl implements Firing {
	/**
	 * The default value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected static final String NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected String name = NAME_EDEFAULT;

	/**
	 * The default value of the '{@link #getKilnId() <em>Kiln Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKilnId()
	 * @generated
	 * @ordered
	 */
	protected static final String KILN_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getKilnId() <em>Kiln Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKilnId()
	 * @generated
	 * @ordered
	 */
	protected String kilnId = KILN_ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getScheduleId() <em>Schedule Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScheduleId()
	 * @generated
	 * @ordered
	 */
	protected static final String SCHEDULE_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getScheduleId() <em>Schedule Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScheduleId()
	 * @generated
	 * @ordered
	 */
	protected String scheduleId = SCHEDULE_ID_EDEFAULT;

	/**
	 * The cached value of the '{@link #getSegments() <em>Segments</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSegments()
	 * @generated
	 * @ordered
	 */
	protected EList<RunSegment> segments;

	/**
	 * The cached value of the '{@link #getLoad() <em>Load</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLoad()
	 * @generated
	 * @ordered
	 */
	protected EList<ShelfPlace> load;

	/**
	 * The default value of the '{@link #getCurveFile() <em>Curve File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurveFile()
	 * @generated
	 * @ordered
	 */
	protected static final String CURVE_FILE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCurveFile() <em>Curve File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurveFile()
	 * @generated
	 * @ordered
	 */
	protected String curveFile = CURVE_FILE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCurveSha256() <em>Curve Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurveSha256()
	 * @generated
	 * @ordered
	 */
	protected static final String CURVE_SHA256_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCurveSha256() <em>Curve Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurveSha256()
	 * @generated
	 * @ordered
	 */
	protected String curveSha256 = CURVE_SHA256_EDEFAULT;

	/**
	 * The default value of the '{@link #getPeakC() <em>Peak C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPeakC()
	 * @generated
	 * @ordered
	 */
	protected static final Double PEAK_C_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPeakC() <em>Peak C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPeakC()
	 * @generated
	 * @ordered
	 */
	protected Double peakC = PEAK_C_EDEFAULT;

	/**
	 * The default value of the '{@link #getEnergyKwh() <em>Energy Kwh</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEnergyKwh()
	 * @generated
	 * @ordered
	 */
	protected static final Double ENERGY_KWH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getEnergyKwh() <em>Energy Kwh</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEnergyKwh()
	 * @generated
	 * @ordered
	 */
	protected Double energyKwh = ENERGY_KWH_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FiringImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.FIRING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
		return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName) {
		String oldName = name;
		name = newName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.FIRING__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getKilnId() {
		return kilnId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKilnId(String newKilnId) {
		String oldKilnId = kilnId;
		kilnId = newKilnId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.FIRING__KILN_ID, oldKilnId, kilnId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getScheduleId() {
		return scheduleId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setScheduleId(String newScheduleId) {
		String oldScheduleId = scheduleId;
		scheduleId = newScheduleId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.FIRING__SCHEDULE_ID, oldScheduleId, scheduleId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<RunSegment> getSegments() {
		if (segments == null) {
			segments = new EObjectContainmentEList<RunSegment>(RunSegment.class, this, CommissionPackage.FIRING__SEGMENTS);
		}
		return segments;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ShelfPlace> getLoad() {
		if (load == null) {
			load = new EObjectContainmentEList<ShelfPlace>(ShelfPlace.class, this, CommissionPackage.FIRING__LOAD);
		}
		return load;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCurveFile() {
		return curveFile;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCurveFile(String newCurveFile) {
		String oldCurveFile = curveFile;
		curveFile = newCurveFile;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.FIRING__CURVE_FILE, oldCurveFile, curveFile));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCurveSha256() {
		return curveSha256;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCurveSha256(String newCurveSha256) {
		String oldCurveSha256 = curveSha256;
		curveSha256 = newCurveSha256;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.FIRING__CURVE_SHA256, oldCurveSha256, curveSha256));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPeakC() {
		return peakC;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPeakC(Double newPeakC) {
		Double oldPeakC = peakC;
		peakC = newPeakC;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.FIRING__PEAK_C, oldPeakC, peakC));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getEnergyKwh() {
		return energyKwh;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEnergyKwh(Double newEnergyKwh) {
		Double oldEnergyKwh = energyKwh;
		energyKwh = newEnergyKwh;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.FIRING__ENERGY_KWH, oldEnergyKwh, energyKwh));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.FIRING__SEGMENTS:
				return ((InternalEList<?>)getSegments()).basicRemove(otherEnd, msgs);
			case CommissionPackage.FIRING__LOAD:
				return ((InternalEList<?>)getLoad()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CommissionPackage.FIRING__NAME:
				return getName();
			case CommissionPackage.FIRING__KILN_ID:
				return getKilnId();
			case CommissionPackage.FIRING__SCHEDULE_ID:
				return getScheduleId();
			case CommissionPackage.FIRING__SEGMENTS:
				return getSegments();
			case CommissionPackage.FIRING__LOAD:
				return getLoad();
			case CommissionPackage.FIRING__CURVE_FILE:
				return getCurveFile();
			case CommissionPackage.FIRING__CURVE_SHA256:
				return getCurveSha256();
			case CommissionPackage.FIRING__PEAK_C:
				return getPeakC();
			case CommissionPackage.FIRING__ENERGY_KWH:
				return getEnergyKwh();
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
			case CommissionPackage.FIRING__NAME:
				setName((String)newValue);
				return;
			case CommissionPackage.FIRING__KILN_ID:
				setKilnId((String)newValue);
				return;
			case CommissionPackage.FIRING__SCHEDULE_ID:
				setScheduleId((String)newValue);
				return;
			case CommissionPackage.FIRING__SEGMENTS:
				getSegments().clear();
				getSegments().addAll((Collection<? extends RunSegment>)newValue);
				return;
			case CommissionPackage.FIRING__LOAD:
				getLoad().clear();
				getLoad().addAll((Collection<? extends ShelfPlace>)newValue);
				return;
			case CommissionPackage.FIRING__CURVE_FILE:
				setCurveFile((String)newValue);
				return;
			case CommissionPackage.FIRING__CURVE_SHA256:
				setCurveSha256((String)newValue);
				return;
			case CommissionPackage.FIRING__PEAK_C:
				setPeakC((Double)newValue);
				return;
			case CommissionPackage.FIRING__ENERGY_KWH:
				setEnergyKwh((Double)newValue);
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
			case CommissionPackage.FIRING__NAME:
				setName(NAME_EDEFAULT);
				return;
			case CommissionPackage.FIRING__KILN_ID:
				setKilnId(KILN_ID_EDEFAULT);
				return;
			case CommissionPackage.FIRING__SCHEDULE_ID:
				setScheduleId(SCHEDULE_ID_EDEFAULT);
				return;
			case CommissionPackage.FIRING__SEGMENTS:
				getSegments().clear();
				return;
			case CommissionPackage.FIRING__LOAD:
				getLoad().clear();
				return;
			case CommissionPackage.FIRING__CURVE_FILE:
				setCurveFile(CURVE_FILE_EDEFAULT);
				return;
			case CommissionPackage.FIRING__CURVE_SHA256:
				setCurveSha256(CURVE_SHA256_EDEFAULT);
				return;
			case CommissionPackage.FIRING__PEAK_C:
				setPeakC(PEAK_C_EDEFAULT);
				return;
			case CommissionPackage.FIRING__ENERGY_KWH:
				setEnergyKwh(ENERGY_KWH_EDEFAULT);
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
			case CommissionPackage.FIRING__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case CommissionPackage.FIRING__KILN_ID:
				return KILN_ID_EDEFAULT == null ? kilnId != null : !KILN_ID_EDEFAULT.equals(kilnId);
			case CommissionPackage.FIRING__SCHEDULE_ID:
				return SCHEDULE_ID_EDEFAULT == null ? scheduleId != null : !SCHEDULE_ID_EDEFAULT.equals(scheduleId);
			case CommissionPackage.FIRING__SEGMENTS:
				return segments != null && !segments.isEmpty();
			case CommissionPackage.FIRING__LOAD:
				return load != null && !load.isEmpty();
			case CommissionPackage.FIRING__CURVE_FILE:
				return CURVE_FILE_EDEFAULT == null ? curveFile != null : !CURVE_FILE_EDEFAULT.equals(curveFile);
			case CommissionPackage.FIRING__CURVE_SHA256:
				return CURVE_SHA256_EDEFAULT == null ? curveSha256 != null : !CURVE_SHA256_EDEFAULT.equals(curveSha256);
			case CommissionPackage.FIRING__PEAK_C:
				return PEAK_C_EDEFAULT == null ? peakC != null : !PEAK_C_EDEFAULT.equals(peakC);
			case CommissionPackage.FIRING__ENERGY_KWH:
				return ENERGY_KWH_EDEFAULT == null ? energyKwh != null : !ENERGY_KWH_EDEFAULT.equals(energyKwh);
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
		result.append(" (name: ");
		result.append(name);
		result.append(", kilnId: ");
		result.append(kilnId);
		result.append(", scheduleId: ");
		result.append(scheduleId);
		result.append(", curveFile: ");
		result.append(curveFile);
		result.append(", curveSha256: ");
		result.append(curveSha256);
		result.append(", peakC: ");
		result.append(peakC);
		result.append(", energyKwh: ");
		result.append(energyKwh);
		result.append(')');
		return result.toString();
	}

} //FiringImpl
