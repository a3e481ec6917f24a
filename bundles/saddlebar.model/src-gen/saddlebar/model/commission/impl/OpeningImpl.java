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

import org.eclipse.emf.ecore.util.EDataTypeUniqueEList;
import org.eclipse.emf.ecore.util.EcoreUtil;

import saddlebar.model.art.OutlineMm;
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
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#getJambMm <em>Jamb Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#getRiseMm <em>Rise Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#getTopMm <em>Top Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#getRightMm <em>Right Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#getBottomMm <em>Bottom Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#getLeftMm <em>Left Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#getDiagonalDownMm <em>Diagonal Down Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#getDiagonalUpMm <em>Diagonal Up Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#getRebateMm <em>Rebate Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#getClearanceMm <em>Clearance Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#getOutline <em>Outline</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#getBarsMm <em>Bars Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.OpeningImpl#getDivisionsMm <em>Divisions Mm</em>}</li>
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
	 * The default value of the '{@link #getJambMm() <em>Jamb Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getJambMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double JAMB_MM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getJambMm() <em>Jamb Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getJambMm()
	 * @generated
	 * @ordered
	 */
	protected Double jambMm = JAMB_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getRiseMm() <em>Rise Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRiseMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double RISE_MM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRiseMm() <em>Rise Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRiseMm()
	 * @generated
	 * @ordered
	 */
	protected Double riseMm = RISE_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getTopMm() <em>Top Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTopMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double TOP_MM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTopMm() <em>Top Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTopMm()
	 * @generated
	 * @ordered
	 */
	protected Double topMm = TOP_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getRightMm() <em>Right Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRightMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double RIGHT_MM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRightMm() <em>Right Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRightMm()
	 * @generated
	 * @ordered
	 */
	protected Double rightMm = RIGHT_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getBottomMm() <em>Bottom Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBottomMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double BOTTOM_MM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBottomMm() <em>Bottom Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBottomMm()
	 * @generated
	 * @ordered
	 */
	protected Double bottomMm = BOTTOM_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getLeftMm() <em>Left Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeftMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double LEFT_MM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLeftMm() <em>Left Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeftMm()
	 * @generated
	 * @ordered
	 */
	protected Double leftMm = LEFT_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getDiagonalDownMm() <em>Diagonal Down Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDiagonalDownMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double DIAGONAL_DOWN_MM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDiagonalDownMm() <em>Diagonal Down Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDiagonalDownMm()
	 * @generated
	 * @ordered
	 */
	protected Double diagonalDownMm = DIAGONAL_DOWN_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getDiagonalUpMm() <em>Diagonal Up Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDiagonalUpMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double DIAGONAL_UP_MM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDiagonalUpMm() <em>Diagonal Up Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDiagonalUpMm()
	 * @generated
	 * @ordered
	 */
	protected Double diagonalUpMm = DIAGONAL_UP_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getRebateMm() <em>Rebate Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRebateMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double REBATE_MM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRebateMm() <em>Rebate Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRebateMm()
	 * @generated
	 * @ordered
	 */
	protected Double rebateMm = REBATE_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getClearanceMm() <em>Clearance Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClearanceMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double CLEARANCE_MM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getClearanceMm() <em>Clearance Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClearanceMm()
	 * @generated
	 * @ordered
	 */
	protected Double clearanceMm = CLEARANCE_MM_EDEFAULT;

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
	 * The cached value of the '{@link #getBarsMm() <em>Bars Mm</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBarsMm()
	 * @generated
	 * @ordered
	 */
	protected EList<Double> barsMm;

	/**
	 * The cached value of the '{@link #getDivisionsMm() <em>Divisions Mm</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDivisionsMm()
	 * @generated
	 * @ordered
	 */
	protected EList<Double> divisionsMm;

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
	public Double getJambMm() {
		return jambMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setJambMm(Double newJambMm) {
		Double oldJambMm = jambMm;
		jambMm = newJambMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.OPENING__JAMB_MM, oldJambMm, jambMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getRiseMm() {
		return riseMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRiseMm(Double newRiseMm) {
		Double oldRiseMm = riseMm;
		riseMm = newRiseMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.OPENING__RISE_MM, oldRiseMm, riseMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getTopMm() {
		return topMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTopMm(Double newTopMm) {
		Double oldTopMm = topMm;
		topMm = newTopMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.OPENING__TOP_MM, oldTopMm, topMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getRightMm() {
		return rightMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRightMm(Double newRightMm) {
		Double oldRightMm = rightMm;
		rightMm = newRightMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.OPENING__RIGHT_MM, oldRightMm, rightMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getBottomMm() {
		return bottomMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBottomMm(Double newBottomMm) {
		Double oldBottomMm = bottomMm;
		bottomMm = newBottomMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.OPENING__BOTTOM_MM, oldBottomMm, bottomMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getLeftMm() {
		return leftMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLeftMm(Double newLeftMm) {
		Double oldLeftMm = leftMm;
		leftMm = newLeftMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.OPENING__LEFT_MM, oldLeftMm, leftMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDiagonalDownMm() {
		return diagonalDownMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDiagonalDownMm(Double newDiagonalDownMm) {
		Double oldDiagonalDownMm = diagonalDownMm;
		diagonalDownMm = newDiagonalDownMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.OPENING__DIAGONAL_DOWN_MM, oldDiagonalDownMm, diagonalDownMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDiagonalUpMm() {
		return diagonalUpMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDiagonalUpMm(Double newDiagonalUpMm) {
		Double oldDiagonalUpMm = diagonalUpMm;
		diagonalUpMm = newDiagonalUpMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.OPENING__DIAGONAL_UP_MM, oldDiagonalUpMm, diagonalUpMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getRebateMm() {
		return rebateMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRebateMm(Double newRebateMm) {
		Double oldRebateMm = rebateMm;
		rebateMm = newRebateMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.OPENING__REBATE_MM, oldRebateMm, rebateMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getClearanceMm() {
		return clearanceMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setClearanceMm(Double newClearanceMm) {
		Double oldClearanceMm = clearanceMm;
		clearanceMm = newClearanceMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.OPENING__CLEARANCE_MM, oldClearanceMm, clearanceMm));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.OPENING__OUTLINE, oldOutline, outline));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Double> getBarsMm() {
		if (barsMm == null) {
			barsMm = new EDataTypeUniqueEList<Double>(Double.class, this, CommissionPackage.OPENING__BARS_MM);
		}
		return barsMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Double> getDivisionsMm() {
		if (divisionsMm == null) {
			divisionsMm = new EDataTypeUniqueEList<Double>(Double.class, this, CommissionPackage.OPENING__DIVISIONS_MM);
		}
		return divisionsMm;
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
			case CommissionPackage.OPENING__JAMB_MM:
				return getJambMm();
			case CommissionPackage.OPENING__RISE_MM:
				return getRiseMm();
			case CommissionPackage.OPENING__TOP_MM:
				return getTopMm();
			case CommissionPackage.OPENING__RIGHT_MM:
				return getRightMm();
			case CommissionPackage.OPENING__BOTTOM_MM:
				return getBottomMm();
			case CommissionPackage.OPENING__LEFT_MM:
				return getLeftMm();
			case CommissionPackage.OPENING__DIAGONAL_DOWN_MM:
				return getDiagonalDownMm();
			case CommissionPackage.OPENING__DIAGONAL_UP_MM:
				return getDiagonalUpMm();
			case CommissionPackage.OPENING__REBATE_MM:
				return getRebateMm();
			case CommissionPackage.OPENING__CLEARANCE_MM:
				return getClearanceMm();
			case CommissionPackage.OPENING__OUTLINE:
				return getOutline();
			case CommissionPackage.OPENING__BARS_MM:
				return getBarsMm();
			case CommissionPackage.OPENING__DIVISIONS_MM:
				return getDivisionsMm();
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
			case CommissionPackage.OPENING__JAMB_MM:
				setJambMm((Double)newValue);
				return;
			case CommissionPackage.OPENING__RISE_MM:
				setRiseMm((Double)newValue);
				return;
			case CommissionPackage.OPENING__TOP_MM:
				setTopMm((Double)newValue);
				return;
			case CommissionPackage.OPENING__RIGHT_MM:
				setRightMm((Double)newValue);
				return;
			case CommissionPackage.OPENING__BOTTOM_MM:
				setBottomMm((Double)newValue);
				return;
			case CommissionPackage.OPENING__LEFT_MM:
				setLeftMm((Double)newValue);
				return;
			case CommissionPackage.OPENING__DIAGONAL_DOWN_MM:
				setDiagonalDownMm((Double)newValue);
				return;
			case CommissionPackage.OPENING__DIAGONAL_UP_MM:
				setDiagonalUpMm((Double)newValue);
				return;
			case CommissionPackage.OPENING__REBATE_MM:
				setRebateMm((Double)newValue);
				return;
			case CommissionPackage.OPENING__CLEARANCE_MM:
				setClearanceMm((Double)newValue);
				return;
			case CommissionPackage.OPENING__OUTLINE:
				setOutline((OutlineMm)newValue);
				return;
			case CommissionPackage.OPENING__BARS_MM:
				getBarsMm().clear();
				getBarsMm().addAll((Collection<? extends Double>)newValue);
				return;
			case CommissionPackage.OPENING__DIVISIONS_MM:
				getDivisionsMm().clear();
				getDivisionsMm().addAll((Collection<? extends Double>)newValue);
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
			case CommissionPackage.OPENING__JAMB_MM:
				setJambMm(JAMB_MM_EDEFAULT);
				return;
			case CommissionPackage.OPENING__RISE_MM:
				setRiseMm(RISE_MM_EDEFAULT);
				return;
			case CommissionPackage.OPENING__TOP_MM:
				setTopMm(TOP_MM_EDEFAULT);
				return;
			case CommissionPackage.OPENING__RIGHT_MM:
				setRightMm(RIGHT_MM_EDEFAULT);
				return;
			case CommissionPackage.OPENING__BOTTOM_MM:
				setBottomMm(BOTTOM_MM_EDEFAULT);
				return;
			case CommissionPackage.OPENING__LEFT_MM:
				setLeftMm(LEFT_MM_EDEFAULT);
				return;
			case CommissionPackage.OPENING__DIAGONAL_DOWN_MM:
				setDiagonalDownMm(DIAGONAL_DOWN_MM_EDEFAULT);
				return;
			case CommissionPackage.OPENING__DIAGONAL_UP_MM:
				setDiagonalUpMm(DIAGONAL_UP_MM_EDEFAULT);
				return;
			case CommissionPackage.OPENING__REBATE_MM:
				setRebateMm(REBATE_MM_EDEFAULT);
				return;
			case CommissionPackage.OPENING__CLEARANCE_MM:
				setClearanceMm(CLEARANCE_MM_EDEFAULT);
				return;
			case CommissionPackage.OPENING__OUTLINE:
				setOutline(OUTLINE_EDEFAULT);
				return;
			case CommissionPackage.OPENING__BARS_MM:
				getBarsMm().clear();
				return;
			case CommissionPackage.OPENING__DIVISIONS_MM:
				getDivisionsMm().clear();
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
			case CommissionPackage.OPENING__JAMB_MM:
				return JAMB_MM_EDEFAULT == null ? jambMm != null : !JAMB_MM_EDEFAULT.equals(jambMm);
			case CommissionPackage.OPENING__RISE_MM:
				return RISE_MM_EDEFAULT == null ? riseMm != null : !RISE_MM_EDEFAULT.equals(riseMm);
			case CommissionPackage.OPENING__TOP_MM:
				return TOP_MM_EDEFAULT == null ? topMm != null : !TOP_MM_EDEFAULT.equals(topMm);
			case CommissionPackage.OPENING__RIGHT_MM:
				return RIGHT_MM_EDEFAULT == null ? rightMm != null : !RIGHT_MM_EDEFAULT.equals(rightMm);
			case CommissionPackage.OPENING__BOTTOM_MM:
				return BOTTOM_MM_EDEFAULT == null ? bottomMm != null : !BOTTOM_MM_EDEFAULT.equals(bottomMm);
			case CommissionPackage.OPENING__LEFT_MM:
				return LEFT_MM_EDEFAULT == null ? leftMm != null : !LEFT_MM_EDEFAULT.equals(leftMm);
			case CommissionPackage.OPENING__DIAGONAL_DOWN_MM:
				return DIAGONAL_DOWN_MM_EDEFAULT == null ? diagonalDownMm != null : !DIAGONAL_DOWN_MM_EDEFAULT.equals(diagonalDownMm);
			case CommissionPackage.OPENING__DIAGONAL_UP_MM:
				return DIAGONAL_UP_MM_EDEFAULT == null ? diagonalUpMm != null : !DIAGONAL_UP_MM_EDEFAULT.equals(diagonalUpMm);
			case CommissionPackage.OPENING__REBATE_MM:
				return REBATE_MM_EDEFAULT == null ? rebateMm != null : !REBATE_MM_EDEFAULT.equals(rebateMm);
			case CommissionPackage.OPENING__CLEARANCE_MM:
				return CLEARANCE_MM_EDEFAULT == null ? clearanceMm != null : !CLEARANCE_MM_EDEFAULT.equals(clearanceMm);
			case CommissionPackage.OPENING__OUTLINE:
				return OUTLINE_EDEFAULT == null ? outline != null : !OUTLINE_EDEFAULT.equals(outline);
			case CommissionPackage.OPENING__BARS_MM:
				return barsMm != null && !barsMm.isEmpty();
			case CommissionPackage.OPENING__DIVISIONS_MM:
				return divisionsMm != null && !divisionsMm.isEmpty();
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
		result.append(", jambMm: ");
		result.append(jambMm);
		result.append(", riseMm: ");
		result.append(riseMm);
		result.append(", topMm: ");
		result.append(topMm);
		result.append(", rightMm: ");
		result.append(rightMm);
		result.append(", bottomMm: ");
		result.append(bottomMm);
		result.append(", leftMm: ");
		result.append(leftMm);
		result.append(", diagonalDownMm: ");
		result.append(diagonalDownMm);
		result.append(", diagonalUpMm: ");
		result.append(diagonalUpMm);
		result.append(", rebateMm: ");
		result.append(rebateMm);
		result.append(", clearanceMm: ");
		result.append(clearanceMm);
		result.append(", outline: ");
		result.append(outline);
		result.append(", barsMm: ");
		result.append(barsMm);
		result.append(", divisionsMm: ");
		result.append(divisionsMm);
		result.append(')');
		return result.toString();
	}

} //OpeningImpl
