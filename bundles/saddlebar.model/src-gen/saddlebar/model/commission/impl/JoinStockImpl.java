/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import java.math.BigDecimal;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EcoreUtil;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.JoinKind;
import saddlebar.model.commission.JoinStock;
import saddlebar.model.commission.Studio;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Join Stock</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.JoinStockImpl#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.JoinStockImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.JoinStockImpl#getThicknessUm <em>Thickness Um</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.JoinStockImpl#getWidthMm <em>Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.JoinStockImpl#getHeartMm <em>Heart Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.JoinStockImpl#getFaceMm <em>Face Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.JoinStockImpl#getMassGPerM <em>Mass GPer M</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.JoinStockImpl#getPricePerM <em>Price Per M</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.JoinStockImpl#getSource <em>Source</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.JoinStockImpl#getSoldLengthMm <em>Sold Length Mm</em>}</li>
 * </ul>
 *
 * @generated
 */
public class JoinStockImpl extends NamedImpl implements JoinStock {
	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final JoinKind KIND_EDEFAULT = JoinKind.FOIL;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected JoinKind kind = KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getThicknessUm() <em>Thickness Um</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThicknessUm()
	 * @generated
	 * @ordered
	 */
	protected static final double THICKNESS_UM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getThicknessUm() <em>Thickness Um</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThicknessUm()
	 * @generated
	 * @ordered
	 */
	protected double thicknessUm = THICKNESS_UM_EDEFAULT;

	/**
	 * The default value of the '{@link #getWidthMm() <em>Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidthMm()
	 * @generated
	 * @ordered
	 */
	protected static final double WIDTH_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getWidthMm() <em>Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidthMm()
	 * @generated
	 * @ordered
	 */
	protected double widthMm = WIDTH_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeartMm() <em>Heart Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeartMm()
	 * @generated
	 * @ordered
	 */
	protected static final double HEART_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getHeartMm() <em>Heart Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeartMm()
	 * @generated
	 * @ordered
	 */
	protected double heartMm = HEART_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getFaceMm() <em>Face Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFaceMm()
	 * @generated
	 * @ordered
	 */
	protected static final double FACE_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getFaceMm() <em>Face Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFaceMm()
	 * @generated
	 * @ordered
	 */
	protected double faceMm = FACE_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getMassGPerM() <em>Mass GPer M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMassGPerM()
	 * @generated
	 * @ordered
	 */
	protected static final double MASS_GPER_M_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getMassGPerM() <em>Mass GPer M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMassGPerM()
	 * @generated
	 * @ordered
	 */
	protected double massGPerM = MASS_GPER_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getPricePerM() <em>Price Per M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPricePerM()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal PRICE_PER_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPricePerM() <em>Price Per M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPricePerM()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal pricePerM = PRICE_PER_M_EDEFAULT;

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
	 * The default value of the '{@link #getSoldLengthMm() <em>Sold Length Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSoldLengthMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double SOLD_LENGTH_MM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSoldLengthMm() <em>Sold Length Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSoldLengthMm()
	 * @generated
	 * @ordered
	 */
	protected Double soldLengthMm = SOLD_LENGTH_MM_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected JoinStockImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.JOIN_STOCK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Studio getStudio() {
		if (eContainerFeatureID() != CommissionPackage.JOIN_STOCK__STUDIO) return null;
		return (Studio)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetStudio(Studio newStudio, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newStudio, CommissionPackage.JOIN_STOCK__STUDIO, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStudio(Studio newStudio) {
		if (newStudio != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.JOIN_STOCK__STUDIO && newStudio != null)) {
			if (EcoreUtil.isAncestor(this, newStudio))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newStudio != null)
				msgs = ((InternalEObject)newStudio).eInverseAdd(this, CommissionPackage.STUDIO__JOINS, Studio.class, msgs);
			msgs = basicSetStudio(newStudio, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.JOIN_STOCK__STUDIO, newStudio, newStudio));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public JoinKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(JoinKind newKind) {
		JoinKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.JOIN_STOCK__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getThicknessUm() {
		return thicknessUm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setThicknessUm(double newThicknessUm) {
		double oldThicknessUm = thicknessUm;
		thicknessUm = newThicknessUm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.JOIN_STOCK__THICKNESS_UM, oldThicknessUm, thicknessUm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getWidthMm() {
		return widthMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWidthMm(double newWidthMm) {
		double oldWidthMm = widthMm;
		widthMm = newWidthMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.JOIN_STOCK__WIDTH_MM, oldWidthMm, widthMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getHeartMm() {
		return heartMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeartMm(double newHeartMm) {
		double oldHeartMm = heartMm;
		heartMm = newHeartMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.JOIN_STOCK__HEART_MM, oldHeartMm, heartMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getFaceMm() {
		return faceMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFaceMm(double newFaceMm) {
		double oldFaceMm = faceMm;
		faceMm = newFaceMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.JOIN_STOCK__FACE_MM, oldFaceMm, faceMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getMassGPerM() {
		return massGPerM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMassGPerM(double newMassGPerM) {
		double oldMassGPerM = massGPerM;
		massGPerM = newMassGPerM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.JOIN_STOCK__MASS_GPER_M, oldMassGPerM, massGPerM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getPricePerM() {
		return pricePerM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPricePerM(BigDecimal newPricePerM) {
		BigDecimal oldPricePerM = pricePerM;
		pricePerM = newPricePerM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.JOIN_STOCK__PRICE_PER_M, oldPricePerM, pricePerM));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.JOIN_STOCK__SOURCE, oldSource, source));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSoldLengthMm() {
		return soldLengthMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSoldLengthMm(Double newSoldLengthMm) {
		Double oldSoldLengthMm = soldLengthMm;
		soldLengthMm = newSoldLengthMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.JOIN_STOCK__SOLD_LENGTH_MM, oldSoldLengthMm, soldLengthMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.JOIN_STOCK__STUDIO:
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
			case CommissionPackage.JOIN_STOCK__STUDIO:
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
			case CommissionPackage.JOIN_STOCK__STUDIO:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.STUDIO__JOINS, Studio.class, msgs);
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
			case CommissionPackage.JOIN_STOCK__STUDIO:
				return getStudio();
			case CommissionPackage.JOIN_STOCK__KIND:
				return getKind();
			case CommissionPackage.JOIN_STOCK__THICKNESS_UM:
				return getThicknessUm();
			case CommissionPackage.JOIN_STOCK__WIDTH_MM:
				return getWidthMm();
			case CommissionPackage.JOIN_STOCK__HEART_MM:
				return getHeartMm();
			case CommissionPackage.JOIN_STOCK__FACE_MM:
				return getFaceMm();
			case CommissionPackage.JOIN_STOCK__MASS_GPER_M:
				return getMassGPerM();
			case CommissionPackage.JOIN_STOCK__PRICE_PER_M:
				return getPricePerM();
			case CommissionPackage.JOIN_STOCK__SOURCE:
				return getSource();
			case CommissionPackage.JOIN_STOCK__SOLD_LENGTH_MM:
				return getSoldLengthMm();
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
			case CommissionPackage.JOIN_STOCK__STUDIO:
				setStudio((Studio)newValue);
				return;
			case CommissionPackage.JOIN_STOCK__KIND:
				setKind((JoinKind)newValue);
				return;
			case CommissionPackage.JOIN_STOCK__THICKNESS_UM:
				setThicknessUm((Double)newValue);
				return;
			case CommissionPackage.JOIN_STOCK__WIDTH_MM:
				setWidthMm((Double)newValue);
				return;
			case CommissionPackage.JOIN_STOCK__HEART_MM:
				setHeartMm((Double)newValue);
				return;
			case CommissionPackage.JOIN_STOCK__FACE_MM:
				setFaceMm((Double)newValue);
				return;
			case CommissionPackage.JOIN_STOCK__MASS_GPER_M:
				setMassGPerM((Double)newValue);
				return;
			case CommissionPackage.JOIN_STOCK__PRICE_PER_M:
				setPricePerM((BigDecimal)newValue);
				return;
			case CommissionPackage.JOIN_STOCK__SOURCE:
				setSource((String)newValue);
				return;
			case CommissionPackage.JOIN_STOCK__SOLD_LENGTH_MM:
				setSoldLengthMm((Double)newValue);
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
			case CommissionPackage.JOIN_STOCK__STUDIO:
				setStudio((Studio)null);
				return;
			case CommissionPackage.JOIN_STOCK__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case CommissionPackage.JOIN_STOCK__THICKNESS_UM:
				setThicknessUm(THICKNESS_UM_EDEFAULT);
				return;
			case CommissionPackage.JOIN_STOCK__WIDTH_MM:
				setWidthMm(WIDTH_MM_EDEFAULT);
				return;
			case CommissionPackage.JOIN_STOCK__HEART_MM:
				setHeartMm(HEART_MM_EDEFAULT);
				return;
			case CommissionPackage.JOIN_STOCK__FACE_MM:
				setFaceMm(FACE_MM_EDEFAULT);
				return;
			case CommissionPackage.JOIN_STOCK__MASS_GPER_M:
				setMassGPerM(MASS_GPER_M_EDEFAULT);
				return;
			case CommissionPackage.JOIN_STOCK__PRICE_PER_M:
				setPricePerM(PRICE_PER_M_EDEFAULT);
				return;
			case CommissionPackage.JOIN_STOCK__SOURCE:
				setSource(SOURCE_EDEFAULT);
				return;
			case CommissionPackage.JOIN_STOCK__SOLD_LENGTH_MM:
				setSoldLengthMm(SOLD_LENGTH_MM_EDEFAULT);
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
			case CommissionPackage.JOIN_STOCK__STUDIO:
				return getStudio() != null;
			case CommissionPackage.JOIN_STOCK__KIND:
				return kind != KIND_EDEFAULT;
			case CommissionPackage.JOIN_STOCK__THICKNESS_UM:
				return thicknessUm != THICKNESS_UM_EDEFAULT;
			case CommissionPackage.JOIN_STOCK__WIDTH_MM:
				return widthMm != WIDTH_MM_EDEFAULT;
			case CommissionPackage.JOIN_STOCK__HEART_MM:
				return heartMm != HEART_MM_EDEFAULT;
			case CommissionPackage.JOIN_STOCK__FACE_MM:
				return faceMm != FACE_MM_EDEFAULT;
			case CommissionPackage.JOIN_STOCK__MASS_GPER_M:
				return massGPerM != MASS_GPER_M_EDEFAULT;
			case CommissionPackage.JOIN_STOCK__PRICE_PER_M:
				return PRICE_PER_M_EDEFAULT == null ? pricePerM != null : !PRICE_PER_M_EDEFAULT.equals(pricePerM);
			case CommissionPackage.JOIN_STOCK__SOURCE:
				return SOURCE_EDEFAULT == null ? source != null : !SOURCE_EDEFAULT.equals(source);
			case CommissionPackage.JOIN_STOCK__SOLD_LENGTH_MM:
				return SOLD_LENGTH_MM_EDEFAULT == null ? soldLengthMm != null : !SOLD_LENGTH_MM_EDEFAULT.equals(soldLengthMm);
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
		result.append(" (kind: ");
		result.append(kind);
		result.append(", thicknessUm: ");
		result.append(thicknessUm);
		result.append(", widthMm: ");
		result.append(widthMm);
		result.append(", heartMm: ");
		result.append(heartMm);
		result.append(", faceMm: ");
		result.append(faceMm);
		result.append(", massGPerM: ");
		result.append(massGPerM);
		result.append(", pricePerM: ");
		result.append(pricePerM);
		result.append(", source: ");
		result.append(source);
		result.append(", soldLengthMm: ");
		result.append(soldLengthMm);
		result.append(')');
		return result.toString();
	}

} //JoinStockImpl
