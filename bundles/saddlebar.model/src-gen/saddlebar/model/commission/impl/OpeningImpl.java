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
import saddlebar.model.commission.Opening;
import saddlebar.model.commission.OpeningKind;
import saddlebar.model.commission.Window;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Opening</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#getWindow <em>Window</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#getSightWidthMm <em>Sight Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#getSightHeightMm <em>Sight Height Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#getTightWidthMm <em>Tight Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#getTightHeightMm <em>Tight Height Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#getCount <em>Count</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#isOverhead <em>Overhead</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#isInDoor <em>In Door</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#getTemplateFile <em>Template File</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#getNote <em>Note</em>}</li>
 * </ul>
 *
 * @generated
 */
public class OpeningImpl extends IdentifiedImpl implements Opening {
	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final OpeningKind KIND_EDEFAULT = OpeningKind.RECTANGLE;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected OpeningKind kind = KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getSightWidthMm() <em>Sight Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSightWidthMm()
	 * @generated
	 * @ordered
	 */
	protected static final double SIGHT_WIDTH_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getSightWidthMm() <em>Sight Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSightWidthMm()
	 * @generated
	 * @ordered
	 */
	protected double sightWidthMm = SIGHT_WIDTH_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getSightHeightMm() <em>Sight Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSightHeightMm()
	 * @generated
	 * @ordered
	 */
	protected static final double SIGHT_HEIGHT_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getSightHeightMm() <em>Sight Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSightHeightMm()
	 * @generated
	 * @ordered
	 */
	protected double sightHeightMm = SIGHT_HEIGHT_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getTightWidthMm() <em>Tight Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTightWidthMm()
	 * @generated
	 * @ordered
	 */
	protected static final double TIGHT_WIDTH_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getTightWidthMm() <em>Tight Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTightWidthMm()
	 * @generated
	 * @ordered
	 */
	protected double tightWidthMm = TIGHT_WIDTH_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getTightHeightMm() <em>Tight Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTightHeightMm()
	 * @generated
	 * @ordered
	 */
	protected static final double TIGHT_HEIGHT_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getTightHeightMm() <em>Tight Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTightHeightMm()
	 * @generated
	 * @ordered
	 */
	protected double tightHeightMm = TIGHT_HEIGHT_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getCount() <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCount()
	 * @generated
	 * @ordered
	 */
	protected static final int COUNT_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getCount() <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCount()
	 * @generated
	 * @ordered
	 */
	protected int count = COUNT_EDEFAULT;

	/**
	 * The default value of the '{@link #isOverhead() <em>Overhead</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isOverhead()
	 * @generated
	 * @ordered
	 */
	protected static final boolean OVERHEAD_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isOverhead() <em>Overhead</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isOverhead()
	 * @generated
	 * @ordered
	 */
	protected boolean overhead = OVERHEAD_EDEFAULT;

	/**
	 * The default value of the '{@link #isInDoor() <em>In Door</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isInDoor()
	 * @generated
	 * @ordered
	 */
	protected static final boolean IN_DOOR_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isInDoor() <em>In Door</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isInDoor()
	 * @generated
	 * @ordered
	 */
	protected boolean inDoor = IN_DOOR_EDEFAULT;

	/**
	 * The default value of the '{@link #getTemplateFile() <em>Template File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTemplateFile()
	 * @generated
	 * @ordered
	 */
	protected static final String TEMPLATE_FILE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTemplateFile() <em>Template File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTemplateFile()
	 * @generated
	 * @ordered
	 */
	protected String templateFile = TEMPLATE_FILE_EDEFAULT;

	/**
	 * The default value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected static final String NOTE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNote() <em>Note</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNote()
	 * @generated
	 * @ordered
	 */
	protected String note = NOTE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected OpeningImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.OPENING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Window getWindow() {
		if (eContainerFeatureID() != CommissionPackage.OPENING__WINDOW) return null;
		return (Window)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetWindow(Window newWindow, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newWindow, CommissionPackage.OPENING__WINDOW, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWindow(Window newWindow) {
		if (newWindow != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.OPENING__WINDOW && newWindow != null)) {
			if (EcoreUtil.isAncestor(this, newWindow))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newWindow != null)
				msgs = ((InternalEObject)newWindow).eInverseAdd(this, CommissionPackage.WINDOW__OPENING, Window.class, msgs);
			msgs = basicSetWindow(newWindow, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.OPENING__WINDOW, newWindow, newWindow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public OpeningKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(OpeningKind newKind) {
		OpeningKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.OPENING__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getSightWidthMm() {
		return sightWidthMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSightWidthMm(double newSightWidthMm) {
		double oldSightWidthMm = sightWidthMm;
		sightWidthMm = newSightWidthMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.OPENING__SIGHT_WIDTH_MM, oldSightWidthMm, sightWidthMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getSightHeightMm() {
		return sightHeightMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSightHeightMm(double newSightHeightMm) {
		double oldSightHeightMm = sightHeightMm;
		sightHeightMm = newSightHeightMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.OPENING__SIGHT_HEIGHT_MM, oldSightHeightMm, sightHeightMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getTightWidthMm() {
		return tightWidthMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTightWidthMm(double newTightWidthMm) {
		double oldTightWidthMm = tightWidthMm;
		tightWidthMm = newTightWidthMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.OPENING__TIGHT_WIDTH_MM, oldTightWidthMm, tightWidthMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getTightHeightMm() {
		return tightHeightMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTightHeightMm(double newTightHeightMm) {
		double oldTightHeightMm = tightHeightMm;
		tightHeightMm = newTightHeightMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.OPENING__TIGHT_HEIGHT_MM, oldTightHeightMm, tightHeightMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getCount() {
		return count;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCount(int newCount) {
		int oldCount = count;
		count = newCount;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.OPENING__COUNT, oldCount, count));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isOverhead() {
		return overhead;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOverhead(boolean newOverhead) {
		boolean oldOverhead = overhead;
		overhead = newOverhead;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.OPENING__OVERHEAD, oldOverhead, overhead));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isInDoor() {
		return inDoor;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInDoor(boolean newInDoor) {
		boolean oldInDoor = inDoor;
		inDoor = newInDoor;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.OPENING__IN_DOOR, oldInDoor, inDoor));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTemplateFile() {
		return templateFile;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTemplateFile(String newTemplateFile) {
		String oldTemplateFile = templateFile;
		templateFile = newTemplateFile;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.OPENING__TEMPLATE_FILE, oldTemplateFile, templateFile));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNote() {
		return note;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNote(String newNote) {
		String oldNote = note;
		note = newNote;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.OPENING__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.OPENING__WINDOW:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetWindow((Window)otherEnd, msgs);
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
			case CommissionPackage.OPENING__WINDOW:
				return basicSetWindow(null, msgs);
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
			case CommissionPackage.OPENING__WINDOW:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.WINDOW__OPENING, Window.class, msgs);
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
			case CommissionPackage.OPENING__WINDOW:
				return getWindow();
			case CommissionPackage.OPENING__KIND:
				return getKind();
			case CommissionPackage.OPENING__SIGHT_WIDTH_MM:
				return getSightWidthMm();
			case CommissionPackage.OPENING__SIGHT_HEIGHT_MM:
				return getSightHeightMm();
			case CommissionPackage.OPENING__TIGHT_WIDTH_MM:
				return getTightWidthMm();
			case CommissionPackage.OPENING__TIGHT_HEIGHT_MM:
				return getTightHeightMm();
			case CommissionPackage.OPENING__COUNT:
				return getCount();
			case CommissionPackage.OPENING__OVERHEAD:
				return isOverhead();
			case CommissionPackage.OPENING__IN_DOOR:
				return isInDoor();
			case CommissionPackage.OPENING__TEMPLATE_FILE:
				return getTemplateFile();
			case CommissionPackage.OPENING__NOTE:
				return getNote();
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
			case CommissionPackage.OPENING__WINDOW:
				setWindow((Window)newValue);
				return;
			case CommissionPackage.OPENING__KIND:
				setKind((OpeningKind)newValue);
				return;
			case CommissionPackage.OPENING__SIGHT_WIDTH_MM:
				setSightWidthMm((Double)newValue);
				return;
			case CommissionPackage.OPENING__SIGHT_HEIGHT_MM:
				setSightHeightMm((Double)newValue);
				return;
			case CommissionPackage.OPENING__TIGHT_WIDTH_MM:
				setTightWidthMm((Double)newValue);
				return;
			case CommissionPackage.OPENING__TIGHT_HEIGHT_MM:
				setTightHeightMm((Double)newValue);
				return;
			case CommissionPackage.OPENING__COUNT:
				setCount((Integer)newValue);
				return;
			case CommissionPackage.OPENING__OVERHEAD:
				setOverhead((Boolean)newValue);
				return;
			case CommissionPackage.OPENING__IN_DOOR:
				setInDoor((Boolean)newValue);
				return;
			case CommissionPackage.OPENING__TEMPLATE_FILE:
				setTemplateFile((String)newValue);
				return;
			case CommissionPackage.OPENING__NOTE:
				setNote((String)newValue);
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
			case CommissionPackage.OPENING__WINDOW:
				setWindow((Window)null);
				return;
			case CommissionPackage.OPENING__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case CommissionPackage.OPENING__SIGHT_WIDTH_MM:
				setSightWidthMm(SIGHT_WIDTH_MM_EDEFAULT);
				return;
			case CommissionPackage.OPENING__SIGHT_HEIGHT_MM:
				setSightHeightMm(SIGHT_HEIGHT_MM_EDEFAULT);
				return;
			case CommissionPackage.OPENING__TIGHT_WIDTH_MM:
				setTightWidthMm(TIGHT_WIDTH_MM_EDEFAULT);
				return;
			case CommissionPackage.OPENING__TIGHT_HEIGHT_MM:
				setTightHeightMm(TIGHT_HEIGHT_MM_EDEFAULT);
				return;
			case CommissionPackage.OPENING__COUNT:
				setCount(COUNT_EDEFAULT);
				return;
			case CommissionPackage.OPENING__OVERHEAD:
				setOverhead(OVERHEAD_EDEFAULT);
				return;
			case CommissionPackage.OPENING__IN_DOOR:
				setInDoor(IN_DOOR_EDEFAULT);
				return;
			case CommissionPackage.OPENING__TEMPLATE_FILE:
				setTemplateFile(TEMPLATE_FILE_EDEFAULT);
				return;
			case CommissionPackage.OPENING__NOTE:
				setNote(NOTE_EDEFAULT);
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
			case CommissionPackage.OPENING__WINDOW:
				return getWindow() != null;
			case CommissionPackage.OPENING__KIND:
				return kind != KIND_EDEFAULT;
			case CommissionPackage.OPENING__SIGHT_WIDTH_MM:
				return sightWidthMm != SIGHT_WIDTH_MM_EDEFAULT;
			case CommissionPackage.OPENING__SIGHT_HEIGHT_MM:
				return sightHeightMm != SIGHT_HEIGHT_MM_EDEFAULT;
			case CommissionPackage.OPENING__TIGHT_WIDTH_MM:
				return tightWidthMm != TIGHT_WIDTH_MM_EDEFAULT;
			case CommissionPackage.OPENING__TIGHT_HEIGHT_MM:
				return tightHeightMm != TIGHT_HEIGHT_MM_EDEFAULT;
			case CommissionPackage.OPENING__COUNT:
				return count != COUNT_EDEFAULT;
			case CommissionPackage.OPENING__OVERHEAD:
				return overhead != OVERHEAD_EDEFAULT;
			case CommissionPackage.OPENING__IN_DOOR:
				return inDoor != IN_DOOR_EDEFAULT;
			case CommissionPackage.OPENING__TEMPLATE_FILE:
				return TEMPLATE_FILE_EDEFAULT == null ? templateFile != null : !TEMPLATE_FILE_EDEFAULT.equals(templateFile);
			case CommissionPackage.OPENING__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
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
		result.append(", sightWidthMm: ");
		result.append(sightWidthMm);
		result.append(", sightHeightMm: ");
		result.append(sightHeightMm);
		result.append(", tightWidthMm: ");
		result.append(tightWidthMm);
		result.append(", tightHeightMm: ");
		result.append(tightHeightMm);
		result.append(", count: ");
		result.append(count);
		result.append(", overhead: ");
		result.append(overhead);
		result.append(", inDoor: ");
		result.append(inDoor);
		result.append(", templateFile: ");
		result.append(templateFile);
		result.append(", note: ");
		result.append(note);
		result.append(')');
		return result.toString();
	}

} //OpeningImpl
