/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import java.time.LocalDate;
import java.util.Collection;
import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EDataTypeUniqueEList;
import org.eclipse.emf.ecore.util.EcoreUtil;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.Printer;
import saddlebar.model.commission.Studio;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Printer</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.PrinterImpl#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PrinterImpl#getDpi <em>Dpi</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PrinterImpl#getMarginMm <em>Margin Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PrinterImpl#getScaleX <em>Scale X</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PrinterImpl#getScaleY <em>Scale Y</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PrinterImpl#getSource <em>Source</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PrinterImpl#getSkew <em>Skew</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PrinterImpl#getMeasured <em>Measured</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PrinterImpl#getBandPeriodsMm <em>Band Periods Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PrinterImpl#getSolidTransmittance <em>Solid Transmittance</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PrinterImpl extends NamedImpl implements Printer {
	/**
	 * The default value of the '{@link #getDpi() <em>Dpi</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDpi()
	 * @generated
	 * @ordered
	 */
	protected static final int DPI_EDEFAULT = 1200;

	/**
	 * The cached value of the '{@link #getDpi() <em>Dpi</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDpi()
	 * @generated
	 * @ordered
	 */
	protected int dpi = DPI_EDEFAULT;

	/**
	 * The default value of the '{@link #getMarginMm() <em>Margin Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMarginMm()
	 * @generated
	 * @ordered
	 */
	protected static final double MARGIN_MM_EDEFAULT = 4.3;

	/**
	 * The cached value of the '{@link #getMarginMm() <em>Margin Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMarginMm()
	 * @generated
	 * @ordered
	 */
	protected double marginMm = MARGIN_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getScaleX() <em>Scale X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScaleX()
	 * @generated
	 * @ordered
	 */
	protected static final double SCALE_X_EDEFAULT = 1.0;

	/**
	 * The cached value of the '{@link #getScaleX() <em>Scale X</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScaleX()
	 * @generated
	 * @ordered
	 */
	protected double scaleX = SCALE_X_EDEFAULT;

	/**
	 * The default value of the '{@link #getScaleY() <em>Scale Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScaleY()
	 * @generated
	 * @ordered
	 */
	protected static final double SCALE_Y_EDEFAULT = 1.0;

	/**
	 * The cached value of the '{@link #getScaleY() <em>Scale Y</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScaleY()
	 * @generated
	 * @ordered
	 */
	protected double scaleY = SCALE_Y_EDEFAULT;

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
	 * The default value of the '{@link #getSkew() <em>Skew</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSkew()
	 * @generated
	 * @ordered
	 */
	protected static final double SKEW_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getSkew() <em>Skew</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSkew()
	 * @generated
	 * @ordered
	 */
	protected double skew = SKEW_EDEFAULT;

	/**
	 * The default value of the '{@link #getMeasured() <em>Measured</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasured()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate MEASURED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMeasured() <em>Measured</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasured()
	 * @generated
	 * @ordered
	 */
	protected LocalDate measured = MEASURED_EDEFAULT;

	/**
	 * The cached value of the '{@link #getBandPeriodsMm() <em>Band Periods Mm</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBandPeriodsMm()
	 * @generated
	 * @ordered
	 */
	protected EList<Double> bandPeriodsMm;

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
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PrinterImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.PRINTER;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Studio getStudio() {
		if (eContainerFeatureID() != CommissionPackage.PRINTER__STUDIO) return null;
		return (Studio)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetStudio(Studio newStudio, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newStudio, CommissionPackage.PRINTER__STUDIO, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStudio(Studio newStudio) {
		if (newStudio != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.PRINTER__STUDIO && newStudio != null)) {
			if (EcoreUtil.isAncestor(this, newStudio))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newStudio != null)
				msgs = ((InternalEObject)newStudio).eInverseAdd(this, CommissionPackage.STUDIO__PRINTERS, Studio.class, msgs);
			msgs = basicSetStudio(newStudio, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRINTER__STUDIO, newStudio, newStudio));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getDpi() {
		return dpi;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDpi(int newDpi) {
		int oldDpi = dpi;
		dpi = newDpi;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRINTER__DPI, oldDpi, dpi));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getMarginMm() {
		return marginMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMarginMm(double newMarginMm) {
		double oldMarginMm = marginMm;
		marginMm = newMarginMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRINTER__MARGIN_MM, oldMarginMm, marginMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getScaleX() {
		return scaleX;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setScaleX(double newScaleX) {
		double oldScaleX = scaleX;
		scaleX = newScaleX;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRINTER__SCALE_X, oldScaleX, scaleX));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getScaleY() {
		return scaleY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setScaleY(double newScaleY) {
		double oldScaleY = scaleY;
		scaleY = newScaleY;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRINTER__SCALE_Y, oldScaleY, scaleY));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRINTER__SOURCE, oldSource, source));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getSkew() {
		return skew;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSkew(double newSkew) {
		double oldSkew = skew;
		skew = newSkew;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRINTER__SKEW, oldSkew, skew));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getMeasured() {
		return measured;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMeasured(LocalDate newMeasured) {
		LocalDate oldMeasured = measured;
		measured = newMeasured;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRINTER__MEASURED, oldMeasured, measured));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Double> getBandPeriodsMm() {
		if (bandPeriodsMm == null) {
			bandPeriodsMm = new EDataTypeUniqueEList<Double>(Double.class, this, CommissionPackage.PRINTER__BAND_PERIODS_MM);
		}
		return bandPeriodsMm;
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRINTER__SOLID_TRANSMITTANCE, oldSolidTransmittance, solidTransmittance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.PRINTER__STUDIO:
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
			case CommissionPackage.PRINTER__STUDIO:
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
			case CommissionPackage.PRINTER__STUDIO:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.STUDIO__PRINTERS, Studio.class, msgs);
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
			case CommissionPackage.PRINTER__STUDIO:
				return getStudio();
			case CommissionPackage.PRINTER__DPI:
				return getDpi();
			case CommissionPackage.PRINTER__MARGIN_MM:
				return getMarginMm();
			case CommissionPackage.PRINTER__SCALE_X:
				return getScaleX();
			case CommissionPackage.PRINTER__SCALE_Y:
				return getScaleY();
			case CommissionPackage.PRINTER__SOURCE:
				return getSource();
			case CommissionPackage.PRINTER__SKEW:
				return getSkew();
			case CommissionPackage.PRINTER__MEASURED:
				return getMeasured();
			case CommissionPackage.PRINTER__BAND_PERIODS_MM:
				return getBandPeriodsMm();
			case CommissionPackage.PRINTER__SOLID_TRANSMITTANCE:
				return getSolidTransmittance();
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
			case CommissionPackage.PRINTER__STUDIO:
				setStudio((Studio)newValue);
				return;
			case CommissionPackage.PRINTER__DPI:
				setDpi((Integer)newValue);
				return;
			case CommissionPackage.PRINTER__MARGIN_MM:
				setMarginMm((Double)newValue);
				return;
			case CommissionPackage.PRINTER__SCALE_X:
				setScaleX((Double)newValue);
				return;
			case CommissionPackage.PRINTER__SCALE_Y:
				setScaleY((Double)newValue);
				return;
			case CommissionPackage.PRINTER__SOURCE:
				setSource((String)newValue);
				return;
			case CommissionPackage.PRINTER__SKEW:
				setSkew((Double)newValue);
				return;
			case CommissionPackage.PRINTER__MEASURED:
				setMeasured((LocalDate)newValue);
				return;
			case CommissionPackage.PRINTER__BAND_PERIODS_MM:
				getBandPeriodsMm().clear();
				getBandPeriodsMm().addAll((Collection<? extends Double>)newValue);
				return;
			case CommissionPackage.PRINTER__SOLID_TRANSMITTANCE:
				setSolidTransmittance((Double)newValue);
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
			case CommissionPackage.PRINTER__STUDIO:
				setStudio((Studio)null);
				return;
			case CommissionPackage.PRINTER__DPI:
				setDpi(DPI_EDEFAULT);
				return;
			case CommissionPackage.PRINTER__MARGIN_MM:
				setMarginMm(MARGIN_MM_EDEFAULT);
				return;
			case CommissionPackage.PRINTER__SCALE_X:
				setScaleX(SCALE_X_EDEFAULT);
				return;
			case CommissionPackage.PRINTER__SCALE_Y:
				setScaleY(SCALE_Y_EDEFAULT);
				return;
			case CommissionPackage.PRINTER__SOURCE:
				setSource(SOURCE_EDEFAULT);
				return;
			case CommissionPackage.PRINTER__SKEW:
				setSkew(SKEW_EDEFAULT);
				return;
			case CommissionPackage.PRINTER__MEASURED:
				setMeasured(MEASURED_EDEFAULT);
				return;
			case CommissionPackage.PRINTER__BAND_PERIODS_MM:
				getBandPeriodsMm().clear();
				return;
			case CommissionPackage.PRINTER__SOLID_TRANSMITTANCE:
				setSolidTransmittance(SOLID_TRANSMITTANCE_EDEFAULT);
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
			case CommissionPackage.PRINTER__STUDIO:
				return getStudio() != null;
			case CommissionPackage.PRINTER__DPI:
				return dpi != DPI_EDEFAULT;
			case CommissionPackage.PRINTER__MARGIN_MM:
				return marginMm != MARGIN_MM_EDEFAULT;
			case CommissionPackage.PRINTER__SCALE_X:
				return scaleX != SCALE_X_EDEFAULT;
			case CommissionPackage.PRINTER__SCALE_Y:
				return scaleY != SCALE_Y_EDEFAULT;
			case CommissionPackage.PRINTER__SOURCE:
				return SOURCE_EDEFAULT == null ? source != null : !SOURCE_EDEFAULT.equals(source);
			case CommissionPackage.PRINTER__SKEW:
				return skew != SKEW_EDEFAULT;
			case CommissionPackage.PRINTER__MEASURED:
				return MEASURED_EDEFAULT == null ? measured != null : !MEASURED_EDEFAULT.equals(measured);
			case CommissionPackage.PRINTER__BAND_PERIODS_MM:
				return bandPeriodsMm != null && !bandPeriodsMm.isEmpty();
			case CommissionPackage.PRINTER__SOLID_TRANSMITTANCE:
				return SOLID_TRANSMITTANCE_EDEFAULT == null ? solidTransmittance != null : !SOLID_TRANSMITTANCE_EDEFAULT.equals(solidTransmittance);
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
		result.append(" (dpi: ");
		result.append(dpi);
		result.append(", marginMm: ");
		result.append(marginMm);
		result.append(", scaleX: ");
		result.append(scaleX);
		result.append(", scaleY: ");
		result.append(scaleY);
		result.append(", source: ");
		result.append(source);
		result.append(", skew: ");
		result.append(skew);
		result.append(", measured: ");
		result.append(measured);
		result.append(", bandPeriodsMm: ");
		result.append(bandPeriodsMm);
		result.append(", solidTransmittance: ");
		result.append(solidTransmittance);
		result.append(')');
		return result.toString();
	}

} //PrinterImpl
