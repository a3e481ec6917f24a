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

import org.eclipse.emf.ecore.util.EObjectContainmentWithInverseEList;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.InternalEList;

import saddlebar.model.art.OutlineMm;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.GlassFlaw;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.StockSheet;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Stock Sheet</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.StockSheetImpl#getGlass <em>Glass</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StockSheetImpl#getWidthMm <em>Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StockSheetImpl#getHeightMm <em>Height Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StockSheetImpl#getOutline <em>Outline</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StockSheetImpl#getGrainDeg <em>Grain Deg</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StockSheetImpl#isOffcut <em>Offcut</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StockSheetImpl#getCutFrom <em>Cut From</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StockSheetImpl#isUsedUp <em>Used Up</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StockSheetImpl#getFlaws <em>Flaws</em>}</li>
 * </ul>
 *
 * @generated
 */
public class StockSheetImpl extends NamedImpl implements StockSheet {
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
	 * The default value of the '{@link #getHeightMm() <em>Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeightMm()
	 * @generated
	 * @ordered
	 */
	protected static final double HEIGHT_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getHeightMm() <em>Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeightMm()
	 * @generated
	 * @ordered
	 */
	protected double heightMm = HEIGHT_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getOutline() <em>Outline</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutline()
	 * @generated
	 * @ordered
	 */
	protected static final OutlineMm OUTLINE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOutline() <em>Outline</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutline()
	 * @generated
	 * @ordered
	 */
	protected OutlineMm outline = OUTLINE_EDEFAULT;

	/**
	 * The default value of the '{@link #getGrainDeg() <em>Grain Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGrainDeg()
	 * @generated
	 * @ordered
	 */
	protected static final double GRAIN_DEG_EDEFAULT = 90.0;

	/**
	 * The cached value of the '{@link #getGrainDeg() <em>Grain Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGrainDeg()
	 * @generated
	 * @ordered
	 */
	protected double grainDeg = GRAIN_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #isOffcut() <em>Offcut</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isOffcut()
	 * @generated
	 * @ordered
	 */
	protected static final boolean OFFCUT_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isOffcut() <em>Offcut</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isOffcut()
	 * @generated
	 * @ordered
	 */
	protected boolean offcut = OFFCUT_EDEFAULT;

	/**
	 * The default value of the '{@link #getCutFrom() <em>Cut From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCutFrom()
	 * @generated
	 * @ordered
	 */
	protected static final String CUT_FROM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCutFrom() <em>Cut From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCutFrom()
	 * @generated
	 * @ordered
	 */
	protected String cutFrom = CUT_FROM_EDEFAULT;

	/**
	 * The default value of the '{@link #isUsedUp() <em>Used Up</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isUsedUp()
	 * @generated
	 * @ordered
	 */
	protected static final boolean USED_UP_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isUsedUp() <em>Used Up</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isUsedUp()
	 * @generated
	 * @ordered
	 */
	protected boolean usedUp = USED_UP_EDEFAULT;

	/**
	 * The cached value of the '{@link #getFlaws() <em>Flaws</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFlaws()
	 * @generated
	 * @ordered
	 */
	protected EList<GlassFlaw> flaws;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected StockSheetImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.STOCK_SHEET;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GlassStock getGlass() {
		if (eContainerFeatureID() != CommissionPackage.STOCK_SHEET__GLASS) return null;
		return (GlassStock)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetGlass(GlassStock newGlass, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newGlass, CommissionPackage.STOCK_SHEET__GLASS, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGlass(GlassStock newGlass) {
		if (newGlass != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.STOCK_SHEET__GLASS && newGlass != null)) {
			if (EcoreUtil.isAncestor(this, newGlass))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newGlass != null)
				msgs = ((InternalEObject)newGlass).eInverseAdd(this, CommissionPackage.GLASS_STOCK__SHEETS, GlassStock.class, msgs);
			msgs = basicSetGlass(newGlass, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STOCK_SHEET__GLASS, newGlass, newGlass));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STOCK_SHEET__WIDTH_MM, oldWidthMm, widthMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getHeightMm() {
		return heightMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeightMm(double newHeightMm) {
		double oldHeightMm = heightMm;
		heightMm = newHeightMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STOCK_SHEET__HEIGHT_MM, oldHeightMm, heightMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public OutlineMm getOutline() {
		return outline;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOutline(OutlineMm newOutline) {
		OutlineMm oldOutline = outline;
		outline = newOutline;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STOCK_SHEET__OUTLINE, oldOutline, outline));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getGrainDeg() {
		return grainDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGrainDeg(double newGrainDeg) {
		double oldGrainDeg = grainDeg;
		grainDeg = newGrainDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STOCK_SHEET__GRAIN_DEG, oldGrainDeg, grainDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isOffcut() {
		return offcut;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOffcut(boolean newOffcut) {
		boolean oldOffcut = offcut;
		offcut = newOffcut;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STOCK_SHEET__OFFCUT, oldOffcut, offcut));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCutFrom() {
		return cutFrom;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCutFrom(String newCutFrom) {
		String oldCutFrom = cutFrom;
		cutFrom = newCutFrom;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STOCK_SHEET__CUT_FROM, oldCutFrom, cutFrom));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isUsedUp() {
		return usedUp;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUsedUp(boolean newUsedUp) {
		boolean oldUsedUp = usedUp;
		usedUp = newUsedUp;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STOCK_SHEET__USED_UP, oldUsedUp, usedUp));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<GlassFlaw> getFlaws() {
		if (flaws == null) {
			flaws = new EObjectContainmentWithInverseEList<GlassFlaw>(GlassFlaw.class, this, CommissionPackage.STOCK_SHEET__FLAWS, CommissionPackage.GLASS_FLAW__SHEET);
		}
		return flaws;
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
			case CommissionPackage.STOCK_SHEET__GLASS:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetGlass((GlassStock)otherEnd, msgs);
			case CommissionPackage.STOCK_SHEET__FLAWS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getFlaws()).basicAdd(otherEnd, msgs);
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
			case CommissionPackage.STOCK_SHEET__GLASS:
				return basicSetGlass(null, msgs);
			case CommissionPackage.STOCK_SHEET__FLAWS:
				return ((InternalEList<?>)getFlaws()).basicRemove(otherEnd, msgs);
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
			case CommissionPackage.STOCK_SHEET__GLASS:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.GLASS_STOCK__SHEETS, GlassStock.class, msgs);
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
			case CommissionPackage.STOCK_SHEET__GLASS:
				return getGlass();
			case CommissionPackage.STOCK_SHEET__WIDTH_MM:
				return getWidthMm();
			case CommissionPackage.STOCK_SHEET__HEIGHT_MM:
				return getHeightMm();
			case CommissionPackage.STOCK_SHEET__OUTLINE:
				return getOutline();
			case CommissionPackage.STOCK_SHEET__GRAIN_DEG:
				return getGrainDeg();
			case CommissionPackage.STOCK_SHEET__OFFCUT:
				return isOffcut();
			case CommissionPackage.STOCK_SHEET__CUT_FROM:
				return getCutFrom();
			case CommissionPackage.STOCK_SHEET__USED_UP:
				return isUsedUp();
			case CommissionPackage.STOCK_SHEET__FLAWS:
				return getFlaws();
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
			case CommissionPackage.STOCK_SHEET__GLASS:
				setGlass((GlassStock)newValue);
				return;
			case CommissionPackage.STOCK_SHEET__WIDTH_MM:
				setWidthMm((Double)newValue);
				return;
			case CommissionPackage.STOCK_SHEET__HEIGHT_MM:
				setHeightMm((Double)newValue);
				return;
			case CommissionPackage.STOCK_SHEET__OUTLINE:
				setOutline((OutlineMm)newValue);
				return;
			case CommissionPackage.STOCK_SHEET__GRAIN_DEG:
				setGrainDeg((Double)newValue);
				return;
			case CommissionPackage.STOCK_SHEET__OFFCUT:
				setOffcut((Boolean)newValue);
				return;
			case CommissionPackage.STOCK_SHEET__CUT_FROM:
				setCutFrom((String)newValue);
				return;
			case CommissionPackage.STOCK_SHEET__USED_UP:
				setUsedUp((Boolean)newValue);
				return;
			case CommissionPackage.STOCK_SHEET__FLAWS:
				getFlaws().clear();
				getFlaws().addAll((Collection<? extends GlassFlaw>)newValue);
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
			case CommissionPackage.STOCK_SHEET__GLASS:
				setGlass((GlassStock)null);
				return;
			case CommissionPackage.STOCK_SHEET__WIDTH_MM:
				setWidthMm(WIDTH_MM_EDEFAULT);
				return;
			case CommissionPackage.STOCK_SHEET__HEIGHT_MM:
				setHeightMm(HEIGHT_MM_EDEFAULT);
				return;
			case CommissionPackage.STOCK_SHEET__OUTLINE:
				setOutline(OUTLINE_EDEFAULT);
				return;
			case CommissionPackage.STOCK_SHEET__GRAIN_DEG:
				setGrainDeg(GRAIN_DEG_EDEFAULT);
				return;
			case CommissionPackage.STOCK_SHEET__OFFCUT:
				setOffcut(OFFCUT_EDEFAULT);
				return;
			case CommissionPackage.STOCK_SHEET__CUT_FROM:
				setCutFrom(CUT_FROM_EDEFAULT);
				return;
			case CommissionPackage.STOCK_SHEET__USED_UP:
				setUsedUp(USED_UP_EDEFAULT);
				return;
			case CommissionPackage.STOCK_SHEET__FLAWS:
				getFlaws().clear();
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
			case CommissionPackage.STOCK_SHEET__GLASS:
				return getGlass() != null;
			case CommissionPackage.STOCK_SHEET__WIDTH_MM:
				return widthMm != WIDTH_MM_EDEFAULT;
			case CommissionPackage.STOCK_SHEET__HEIGHT_MM:
				return heightMm != HEIGHT_MM_EDEFAULT;
			case CommissionPackage.STOCK_SHEET__OUTLINE:
				return OUTLINE_EDEFAULT == null ? outline != null : !OUTLINE_EDEFAULT.equals(outline);
			case CommissionPackage.STOCK_SHEET__GRAIN_DEG:
				return grainDeg != GRAIN_DEG_EDEFAULT;
			case CommissionPackage.STOCK_SHEET__OFFCUT:
				return offcut != OFFCUT_EDEFAULT;
			case CommissionPackage.STOCK_SHEET__CUT_FROM:
				return CUT_FROM_EDEFAULT == null ? cutFrom != null : !CUT_FROM_EDEFAULT.equals(cutFrom);
			case CommissionPackage.STOCK_SHEET__USED_UP:
				return usedUp != USED_UP_EDEFAULT;
			case CommissionPackage.STOCK_SHEET__FLAWS:
				return flaws != null && !flaws.isEmpty();
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
		result.append(" (widthMm: ");
		result.append(widthMm);
		result.append(", heightMm: ");
		result.append(heightMm);
		result.append(", outline: ");
		result.append(outline);
		result.append(", grainDeg: ");
		result.append(grainDeg);
		result.append(", offcut: ");
		result.append(offcut);
		result.append(", cutFrom: ");
		result.append(cutFrom);
		result.append(", usedUp: ");
		result.append(usedUp);
		result.append(')');
		return result.toString();
	}

} //StockSheetImpl
