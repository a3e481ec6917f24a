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
import org.eclipse.emf.ecore.util.EObjectContainmentWithInverseEList;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.InternalEList;

import saddlebar.model.commission.Commission;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.MadeFile;
import saddlebar.model.commission.Placement;
import saddlebar.model.commission.Sheet;
import saddlebar.model.commission.TonerSide;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Sheet</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.SheetImpl#getCommission <em>Commission</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SheetImpl#getNumber <em>Number</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SheetImpl#getPaper <em>Paper</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SheetImpl#getWidthMm <em>Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SheetImpl#getHeightMm <em>Height Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SheetImpl#getMarginMm <em>Margin Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SheetImpl#getProcessKey <em>Process Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SheetImpl#getTonerSide <em>Toner Side</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SheetImpl#getDpi <em>Dpi</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SheetImpl#getPlacements <em>Placements</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SheetImpl#getFiles <em>Files</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.SheetImpl#getContentKey <em>Content Key</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SheetImpl extends IdentifiedImpl implements Sheet {
	/**
	 * The default value of the '{@link #getNumber() <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNumber()
	 * @generated
	 * @ordered
	 */
	protected static final int NUMBER_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getNumber() <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNumber()
	 * @generated
	 * @ordered
	 */
	protected int number = NUMBER_EDEFAULT;

	/**
	 * The default value of the '{@link #getPaper() <em>Paper</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPaper()
	 * @generated
	 * @ordered
	 */
	protected static final String PAPER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPaper() <em>Paper</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPaper()
	 * @generated
	 * @ordered
	 */
	protected String paper = PAPER_EDEFAULT;

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
	 * The default value of the '{@link #getMarginMm() <em>Margin Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMarginMm()
	 * @generated
	 * @ordered
	 */
	protected static final double MARGIN_MM_EDEFAULT = 0.0;

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
	 * The default value of the '{@link #getProcessKey() <em>Process Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProcessKey()
	 * @generated
	 * @ordered
	 */
	protected static final String PROCESS_KEY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getProcessKey() <em>Process Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProcessKey()
	 * @generated
	 * @ordered
	 */
	protected String processKey = PROCESS_KEY_EDEFAULT;

	/**
	 * The default value of the '{@link #getTonerSide() <em>Toner Side</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTonerSide()
	 * @generated
	 * @ordered
	 */
	protected static final TonerSide TONER_SIDE_EDEFAULT = TonerSide.PRINT;

	/**
	 * The cached value of the '{@link #getTonerSide() <em>Toner Side</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTonerSide()
	 * @generated
	 * @ordered
	 */
	protected TonerSide tonerSide = TONER_SIDE_EDEFAULT;

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
	 * The cached value of the '{@link #getPlacements() <em>Placements</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlacements()
	 * @generated
	 * @ordered
	 */
	protected EList<Placement> placements;

	/**
	 * The cached value of the '{@link #getFiles() <em>Files</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFiles()
	 * @generated
	 * @ordered
	 */
	protected EList<MadeFile> files;

	/**
	 * The default value of the '{@link #getContentKey() <em>Content Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getContentKey()
	 * @generated
	 * @ordered
	 */
	protected static final String CONTENT_KEY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getContentKey() <em>Content Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getContentKey()
	 * @generated
	 * @ordered
	 */
	protected String contentKey = CONTENT_KEY_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SheetImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.SHEET;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Commission getCommission() {
		if (eContainerFeatureID() != CommissionPackage.SHEET__COMMISSION) return null;
		return (Commission)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetCommission(Commission newCommission, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newCommission, CommissionPackage.SHEET__COMMISSION, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCommission(Commission newCommission) {
		if (newCommission != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.SHEET__COMMISSION && newCommission != null)) {
			if (EcoreUtil.isAncestor(this, newCommission))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newCommission != null)
				msgs = ((InternalEObject)newCommission).eInverseAdd(this, CommissionPackage.COMMISSION__SHEETS, Commission.class, msgs);
			msgs = basicSetCommission(newCommission, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHEET__COMMISSION, newCommission, newCommission));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getNumber() {
		return number;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNumber(int newNumber) {
		int oldNumber = number;
		number = newNumber;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHEET__NUMBER, oldNumber, number));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPaper() {
		return paper;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPaper(String newPaper) {
		String oldPaper = paper;
		paper = newPaper;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHEET__PAPER, oldPaper, paper));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHEET__WIDTH_MM, oldWidthMm, widthMm));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHEET__HEIGHT_MM, oldHeightMm, heightMm));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHEET__MARGIN_MM, oldMarginMm, marginMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getProcessKey() {
		return processKey;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProcessKey(String newProcessKey) {
		String oldProcessKey = processKey;
		processKey = newProcessKey;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHEET__PROCESS_KEY, oldProcessKey, processKey));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TonerSide getTonerSide() {
		return tonerSide;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTonerSide(TonerSide newTonerSide) {
		TonerSide oldTonerSide = tonerSide;
		tonerSide = newTonerSide == null ? TONER_SIDE_EDEFAULT : newTonerSide;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHEET__TONER_SIDE, oldTonerSide, tonerSide));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHEET__DPI, oldDpi, dpi));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Placement> getPlacements() {
		if (placements == null) {
			placements = new EObjectContainmentWithInverseEList<Placement>(Placement.class, this, CommissionPackage.SHEET__PLACEMENTS, CommissionPackage.PLACEMENT__SHEET);
		}
		return placements;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<MadeFile> getFiles() {
		if (files == null) {
			files = new EObjectContainmentEList<MadeFile>(MadeFile.class, this, CommissionPackage.SHEET__FILES);
		}
		return files;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getContentKey() {
		return contentKey;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setContentKey(String newContentKey) {
		String oldContentKey = contentKey;
		contentKey = newContentKey;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHEET__CONTENT_KEY, oldContentKey, contentKey));
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
			case CommissionPackage.SHEET__COMMISSION:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetCommission((Commission)otherEnd, msgs);
			case CommissionPackage.SHEET__PLACEMENTS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getPlacements()).basicAdd(otherEnd, msgs);
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
			case CommissionPackage.SHEET__COMMISSION:
				return basicSetCommission(null, msgs);
			case CommissionPackage.SHEET__PLACEMENTS:
				return ((InternalEList<?>)getPlacements()).basicRemove(otherEnd, msgs);
			case CommissionPackage.SHEET__FILES:
				return ((InternalEList<?>)getFiles()).basicRemove(otherEnd, msgs);
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
			case CommissionPackage.SHEET__COMMISSION:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.COMMISSION__SHEETS, Commission.class, msgs);
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
			case CommissionPackage.SHEET__COMMISSION:
				return getCommission();
			case CommissionPackage.SHEET__NUMBER:
				return getNumber();
			case CommissionPackage.SHEET__PAPER:
				return getPaper();
			case CommissionPackage.SHEET__WIDTH_MM:
				return getWidthMm();
			case CommissionPackage.SHEET__HEIGHT_MM:
				return getHeightMm();
			case CommissionPackage.SHEET__MARGIN_MM:
				return getMarginMm();
			case CommissionPackage.SHEET__PROCESS_KEY:
				return getProcessKey();
			case CommissionPackage.SHEET__TONER_SIDE:
				return getTonerSide();
			case CommissionPackage.SHEET__DPI:
				return getDpi();
			case CommissionPackage.SHEET__PLACEMENTS:
				return getPlacements();
			case CommissionPackage.SHEET__FILES:
				return getFiles();
			case CommissionPackage.SHEET__CONTENT_KEY:
				return getContentKey();
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
			case CommissionPackage.SHEET__COMMISSION:
				setCommission((Commission)newValue);
				return;
			case CommissionPackage.SHEET__NUMBER:
				setNumber((Integer)newValue);
				return;
			case CommissionPackage.SHEET__PAPER:
				setPaper((String)newValue);
				return;
			case CommissionPackage.SHEET__WIDTH_MM:
				setWidthMm((Double)newValue);
				return;
			case CommissionPackage.SHEET__HEIGHT_MM:
				setHeightMm((Double)newValue);
				return;
			case CommissionPackage.SHEET__MARGIN_MM:
				setMarginMm((Double)newValue);
				return;
			case CommissionPackage.SHEET__PROCESS_KEY:
				setProcessKey((String)newValue);
				return;
			case CommissionPackage.SHEET__TONER_SIDE:
				setTonerSide((TonerSide)newValue);
				return;
			case CommissionPackage.SHEET__DPI:
				setDpi((Integer)newValue);
				return;
			case CommissionPackage.SHEET__PLACEMENTS:
				getPlacements().clear();
				getPlacements().addAll((Collection<? extends Placement>)newValue);
				return;
			case CommissionPackage.SHEET__FILES:
				getFiles().clear();
				getFiles().addAll((Collection<? extends MadeFile>)newValue);
				return;
			case CommissionPackage.SHEET__CONTENT_KEY:
				setContentKey((String)newValue);
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
			case CommissionPackage.SHEET__COMMISSION:
				setCommission((Commission)null);
				return;
			case CommissionPackage.SHEET__NUMBER:
				setNumber(NUMBER_EDEFAULT);
				return;
			case CommissionPackage.SHEET__PAPER:
				setPaper(PAPER_EDEFAULT);
				return;
			case CommissionPackage.SHEET__WIDTH_MM:
				setWidthMm(WIDTH_MM_EDEFAULT);
				return;
			case CommissionPackage.SHEET__HEIGHT_MM:
				setHeightMm(HEIGHT_MM_EDEFAULT);
				return;
			case CommissionPackage.SHEET__MARGIN_MM:
				setMarginMm(MARGIN_MM_EDEFAULT);
				return;
			case CommissionPackage.SHEET__PROCESS_KEY:
				setProcessKey(PROCESS_KEY_EDEFAULT);
				return;
			case CommissionPackage.SHEET__TONER_SIDE:
				setTonerSide(TONER_SIDE_EDEFAULT);
				return;
			case CommissionPackage.SHEET__DPI:
				setDpi(DPI_EDEFAULT);
				return;
			case CommissionPackage.SHEET__PLACEMENTS:
				getPlacements().clear();
				return;
			case CommissionPackage.SHEET__FILES:
				getFiles().clear();
				return;
			case CommissionPackage.SHEET__CONTENT_KEY:
				setContentKey(CONTENT_KEY_EDEFAULT);
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
			case CommissionPackage.SHEET__COMMISSION:
				return getCommission() != null;
			case CommissionPackage.SHEET__NUMBER:
				return number != NUMBER_EDEFAULT;
			case CommissionPackage.SHEET__PAPER:
				return PAPER_EDEFAULT == null ? paper != null : !PAPER_EDEFAULT.equals(paper);
			case CommissionPackage.SHEET__WIDTH_MM:
				return widthMm != WIDTH_MM_EDEFAULT;
			case CommissionPackage.SHEET__HEIGHT_MM:
				return heightMm != HEIGHT_MM_EDEFAULT;
			case CommissionPackage.SHEET__MARGIN_MM:
				return marginMm != MARGIN_MM_EDEFAULT;
			case CommissionPackage.SHEET__PROCESS_KEY:
				return PROCESS_KEY_EDEFAULT == null ? processKey != null : !PROCESS_KEY_EDEFAULT.equals(processKey);
			case CommissionPackage.SHEET__TONER_SIDE:
				return tonerSide != TONER_SIDE_EDEFAULT;
			case CommissionPackage.SHEET__DPI:
				return dpi != DPI_EDEFAULT;
			case CommissionPackage.SHEET__PLACEMENTS:
				return placements != null && !placements.isEmpty();
			case CommissionPackage.SHEET__FILES:
				return files != null && !files.isEmpty();
			case CommissionPackage.SHEET__CONTENT_KEY:
				return CONTENT_KEY_EDEFAULT == null ? contentKey != null : !CONTENT_KEY_EDEFAULT.equals(contentKey);
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
		result.append(" (number: ");
		result.append(number);
		result.append(", paper: ");
		result.append(paper);
		result.append(", widthMm: ");
		result.append(widthMm);
		result.append(", heightMm: ");
		result.append(heightMm);
		result.append(", marginMm: ");
		result.append(marginMm);
		result.append(", processKey: ");
		result.append(processKey);
		result.append(", tonerSide: ");
		result.append(tonerSide);
		result.append(", dpi: ");
		result.append(dpi);
		result.append(", contentKey: ");
		result.append(contentKey);
		result.append(')');
		return result.toString();
	}

} //SheetImpl
