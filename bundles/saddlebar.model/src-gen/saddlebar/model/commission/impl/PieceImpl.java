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
import org.eclipse.emf.ecore.util.EObjectResolvingEList;
import org.eclipse.emf.ecore.util.EObjectWithInverseResolvingEList;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.InternalEList;

import saddlebar.model.art.OutlineMm;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.GlassChoice;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.MakingState;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Piece</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#getPanel <em>Panel</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#getNumber <em>Number</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#getFace <em>Face</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#getNet <em>Net</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#getLabelXMm <em>Label XMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#getLabelYMm <em>Label YMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#getInradiusMm <em>Inradius Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#getAreaMm2 <em>Area Mm2</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#getNetAreaMm2 <em>Net Area Mm2</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#getPerimeterMm <em>Perimeter Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#getShapeKey <em>Shape Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#getProblems <em>Problems</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#getNeighbours <em>Neighbours</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#getGlass <em>Glass</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#getChoices <em>Choices</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#getState <em>State</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#isRetired <em>Retired</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#getNote <em>Note</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#getGroup <em>Group</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#isLocked <em>Locked</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#isNumberedByHand <em>Numbered By Hand</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#getCameFrom <em>Came From</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PieceImpl#getBecame <em>Became</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PieceImpl extends IdentifiedImpl implements Piece {
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
	 * The default value of the '{@link #getFace() <em>Face</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFace()
	 * @generated
	 * @ordered
	 */
	protected static final OutlineMm FACE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFace() <em>Face</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFace()
	 * @generated
	 * @ordered
	 */
	protected OutlineMm face = FACE_EDEFAULT;

	/**
	 * The default value of the '{@link #getNet() <em>Net</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNet()
	 * @generated
	 * @ordered
	 */
	protected static final OutlineMm NET_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNet() <em>Net</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNet()
	 * @generated
	 * @ordered
	 */
	protected OutlineMm net = NET_EDEFAULT;

	/**
	 * The default value of the '{@link #getLabelXMm() <em>Label XMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLabelXMm()
	 * @generated
	 * @ordered
	 */
	protected static final double LABEL_XMM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getLabelXMm() <em>Label XMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLabelXMm()
	 * @generated
	 * @ordered
	 */
	protected double labelXMm = LABEL_XMM_EDEFAULT;

	/**
	 * The default value of the '{@link #getLabelYMm() <em>Label YMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLabelYMm()
	 * @generated
	 * @ordered
	 */
	protected static final double LABEL_YMM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getLabelYMm() <em>Label YMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLabelYMm()
	 * @generated
	 * @ordered
	 */
	protected double labelYMm = LABEL_YMM_EDEFAULT;

	/**
	 * The default value of the '{@link #getInradiusMm() <em>Inradius Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInradiusMm()
	 * @generated
	 * @ordered
	 */
	protected static final double INRADIUS_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getInradiusMm() <em>Inradius Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInradiusMm()
	 * @generated
	 * @ordered
	 */
	protected double inradiusMm = INRADIUS_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getAreaMm2() <em>Area Mm2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAreaMm2()
	 * @generated
	 * @ordered
	 */
	protected static final double AREA_MM2_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getAreaMm2() <em>Area Mm2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAreaMm2()
	 * @generated
	 * @ordered
	 */
	protected double areaMm2 = AREA_MM2_EDEFAULT;

	/**
	 * The default value of the '{@link #getNetAreaMm2() <em>Net Area Mm2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNetAreaMm2()
	 * @generated
	 * @ordered
	 */
	protected static final double NET_AREA_MM2_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getNetAreaMm2() <em>Net Area Mm2</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNetAreaMm2()
	 * @generated
	 * @ordered
	 */
	protected double netAreaMm2 = NET_AREA_MM2_EDEFAULT;

	/**
	 * The default value of the '{@link #getPerimeterMm() <em>Perimeter Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPerimeterMm()
	 * @generated
	 * @ordered
	 */
	protected static final double PERIMETER_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getPerimeterMm() <em>Perimeter Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPerimeterMm()
	 * @generated
	 * @ordered
	 */
	protected double perimeterMm = PERIMETER_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getShapeKey() <em>Shape Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShapeKey()
	 * @generated
	 * @ordered
	 */
	protected static final String SHAPE_KEY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getShapeKey() <em>Shape Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShapeKey()
	 * @generated
	 * @ordered
	 */
	protected String shapeKey = SHAPE_KEY_EDEFAULT;

	/**
	 * The cached value of the '{@link #getProblems() <em>Problems</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProblems()
	 * @generated
	 * @ordered
	 */
	protected EList<String> problems;

	/**
	 * The cached value of the '{@link #getNeighbours() <em>Neighbours</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNeighbours()
	 * @generated
	 * @ordered
	 */
	protected EList<Piece> neighbours;

	/**
	 * The cached value of the '{@link #getGlass() <em>Glass</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGlass()
	 * @generated
	 * @ordered
	 */
	protected GlassStock glass;

	/**
	 * The cached value of the '{@link #getChoices() <em>Choices</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChoices()
	 * @generated
	 * @ordered
	 */
	protected EList<GlassChoice> choices;

	/**
	 * The default value of the '{@link #getState() <em>State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getState()
	 * @generated
	 * @ordered
	 */
	protected static final MakingState STATE_EDEFAULT = MakingState.DRAWN;

	/**
	 * The cached value of the '{@link #getState() <em>State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getState()
	 * @generated
	 * @ordered
	 */
	protected MakingState state = STATE_EDEFAULT;

	/**
	 * The default value of the '{@link #isRetired() <em>Retired</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isRetired()
	 * @generated
	 * @ordered
	 */
	protected static final boolean RETIRED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isRetired() <em>Retired</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isRetired()
	 * @generated
	 * @ordered
	 */
	protected boolean retired = RETIRED_EDEFAULT;

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
	 * The default value of the '{@link #getGroup() <em>Group</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGroup()
	 * @generated
	 * @ordered
	 */
	protected static final String GROUP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGroup() <em>Group</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGroup()
	 * @generated
	 * @ordered
	 */
	protected String group = GROUP_EDEFAULT;

	/**
	 * The default value of the '{@link #isLocked() <em>Locked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isLocked()
	 * @generated
	 * @ordered
	 */
	protected static final boolean LOCKED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isLocked() <em>Locked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isLocked()
	 * @generated
	 * @ordered
	 */
	protected boolean locked = LOCKED_EDEFAULT;

	/**
	 * The default value of the '{@link #isNumberedByHand() <em>Numbered By Hand</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isNumberedByHand()
	 * @generated
	 * @ordered
	 */
	protected static final boolean NUMBERED_BY_HAND_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isNumberedByHand() <em>Numbered By Hand</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isNumberedByHand()
	 * @generated
	 * @ordered
	 */
	protected boolean numberedByHand = NUMBERED_BY_HAND_EDEFAULT;

	/**
	 * The cached value of the '{@link #getCameFrom() <em>Came From</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCameFrom()
	 * @generated
	 * @ordered
	 */
	protected EList<Piece> cameFrom;

	/**
	 * The cached value of the '{@link #getBecame() <em>Became</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBecame()
	 * @generated
	 * @ordered
	 */
	protected EList<Piece> became;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PieceImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.PIECE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Panel getPanel() {
		if (eContainerFeatureID() != CommissionPackage.PIECE__PANEL) return null;
		return (Panel)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetPanel(Panel newPanel, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newPanel, CommissionPackage.PIECE__PANEL, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPanel(Panel newPanel) {
		if (newPanel != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.PIECE__PANEL && newPanel != null)) {
			if (EcoreUtil.isAncestor(this, newPanel))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newPanel != null)
				msgs = ((InternalEObject)newPanel).eInverseAdd(this, CommissionPackage.PANEL__PIECES, Panel.class, msgs);
			msgs = basicSetPanel(newPanel, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECE__PANEL, newPanel, newPanel));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECE__NUMBER, oldNumber, number));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public OutlineMm getFace() {
		return face;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFace(OutlineMm newFace) {
		OutlineMm oldFace = face;
		face = newFace;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECE__FACE, oldFace, face));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public OutlineMm getNet() {
		return net;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNet(OutlineMm newNet) {
		OutlineMm oldNet = net;
		net = newNet;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECE__NET, oldNet, net));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getLabelXMm() {
		return labelXMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLabelXMm(double newLabelXMm) {
		double oldLabelXMm = labelXMm;
		labelXMm = newLabelXMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECE__LABEL_XMM, oldLabelXMm, labelXMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getLabelYMm() {
		return labelYMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLabelYMm(double newLabelYMm) {
		double oldLabelYMm = labelYMm;
		labelYMm = newLabelYMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECE__LABEL_YMM, oldLabelYMm, labelYMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getInradiusMm() {
		return inradiusMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInradiusMm(double newInradiusMm) {
		double oldInradiusMm = inradiusMm;
		inradiusMm = newInradiusMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECE__INRADIUS_MM, oldInradiusMm, inradiusMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getAreaMm2() {
		return areaMm2;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAreaMm2(double newAreaMm2) {
		double oldAreaMm2 = areaMm2;
		areaMm2 = newAreaMm2;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECE__AREA_MM2, oldAreaMm2, areaMm2));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getNetAreaMm2() {
		return netAreaMm2;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNetAreaMm2(double newNetAreaMm2) {
		double oldNetAreaMm2 = netAreaMm2;
		netAreaMm2 = newNetAreaMm2;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECE__NET_AREA_MM2, oldNetAreaMm2, netAreaMm2));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getPerimeterMm() {
		return perimeterMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPerimeterMm(double newPerimeterMm) {
		double oldPerimeterMm = perimeterMm;
		perimeterMm = newPerimeterMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECE__PERIMETER_MM, oldPerimeterMm, perimeterMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getShapeKey() {
		return shapeKey;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShapeKey(String newShapeKey) {
		String oldShapeKey = shapeKey;
		shapeKey = newShapeKey;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECE__SHAPE_KEY, oldShapeKey, shapeKey));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getProblems() {
		if (problems == null) {
			problems = new EDataTypeUniqueEList<String>(String.class, this, CommissionPackage.PIECE__PROBLEMS);
		}
		return problems;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Piece> getNeighbours() {
		if (neighbours == null) {
			neighbours = new EObjectResolvingEList<Piece>(Piece.class, this, CommissionPackage.PIECE__NEIGHBOURS);
		}
		return neighbours;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GlassStock getGlass() {
		if (glass != null && glass.eIsProxy()) {
			InternalEObject oldGlass = (InternalEObject)glass;
			glass = (GlassStock)eResolveProxy(oldGlass);
			if (glass != oldGlass) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.PIECE__GLASS, oldGlass, glass));
			}
		}
		return glass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public GlassStock basicGetGlass() {
		return glass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGlass(GlassStock newGlass) {
		GlassStock oldGlass = glass;
		glass = newGlass;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECE__GLASS, oldGlass, glass));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<GlassChoice> getChoices() {
		if (choices == null) {
			choices = new EObjectWithInverseResolvingEList<GlassChoice>(GlassChoice.class, this, CommissionPackage.PIECE__CHOICES, CommissionPackage.GLASS_CHOICE__PIECE);
		}
		return choices;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MakingState getState() {
		return state;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setState(MakingState newState) {
		MakingState oldState = state;
		state = newState == null ? STATE_EDEFAULT : newState;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECE__STATE, oldState, state));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isRetired() {
		return retired;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRetired(boolean newRetired) {
		boolean oldRetired = retired;
		retired = newRetired;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECE__RETIRED, oldRetired, retired));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECE__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getGroup() {
		return group;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGroup(String newGroup) {
		String oldGroup = group;
		group = newGroup;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECE__GROUP, oldGroup, group));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isLocked() {
		return locked;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLocked(boolean newLocked) {
		boolean oldLocked = locked;
		locked = newLocked;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECE__LOCKED, oldLocked, locked));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isNumberedByHand() {
		return numberedByHand;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNumberedByHand(boolean newNumberedByHand) {
		boolean oldNumberedByHand = numberedByHand;
		numberedByHand = newNumberedByHand;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PIECE__NUMBERED_BY_HAND, oldNumberedByHand, numberedByHand));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Piece> getCameFrom() {
		if (cameFrom == null) {
			cameFrom = new EObjectWithInverseResolvingEList.ManyInverse<Piece>(Piece.class, this, CommissionPackage.PIECE__CAME_FROM, CommissionPackage.PIECE__BECAME);
		}
		return cameFrom;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Piece> getBecame() {
		if (became == null) {
			became = new EObjectWithInverseResolvingEList.ManyInverse<Piece>(Piece.class, this, CommissionPackage.PIECE__BECAME, CommissionPackage.PIECE__CAME_FROM);
		}
		return became;
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
			case CommissionPackage.PIECE__PANEL:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetPanel((Panel)otherEnd, msgs);
			case CommissionPackage.PIECE__CHOICES:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getChoices()).basicAdd(otherEnd, msgs);
			case CommissionPackage.PIECE__CAME_FROM:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getCameFrom()).basicAdd(otherEnd, msgs);
			case CommissionPackage.PIECE__BECAME:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getBecame()).basicAdd(otherEnd, msgs);
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
			case CommissionPackage.PIECE__PANEL:
				return basicSetPanel(null, msgs);
			case CommissionPackage.PIECE__CHOICES:
				return ((InternalEList<?>)getChoices()).basicRemove(otherEnd, msgs);
			case CommissionPackage.PIECE__CAME_FROM:
				return ((InternalEList<?>)getCameFrom()).basicRemove(otherEnd, msgs);
			case CommissionPackage.PIECE__BECAME:
				return ((InternalEList<?>)getBecame()).basicRemove(otherEnd, msgs);
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
			case CommissionPackage.PIECE__PANEL:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.PANEL__PIECES, Panel.class, msgs);
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
			case CommissionPackage.PIECE__PANEL:
				return getPanel();
			case CommissionPackage.PIECE__NUMBER:
				return getNumber();
			case CommissionPackage.PIECE__FACE:
				return getFace();
			case CommissionPackage.PIECE__NET:
				return getNet();
			case CommissionPackage.PIECE__LABEL_XMM:
				return getLabelXMm();
			case CommissionPackage.PIECE__LABEL_YMM:
				return getLabelYMm();
			case CommissionPackage.PIECE__INRADIUS_MM:
				return getInradiusMm();
			case CommissionPackage.PIECE__AREA_MM2:
				return getAreaMm2();
			case CommissionPackage.PIECE__NET_AREA_MM2:
				return getNetAreaMm2();
			case CommissionPackage.PIECE__PERIMETER_MM:
				return getPerimeterMm();
			case CommissionPackage.PIECE__SHAPE_KEY:
				return getShapeKey();
			case CommissionPackage.PIECE__PROBLEMS:
				return getProblems();
			case CommissionPackage.PIECE__NEIGHBOURS:
				return getNeighbours();
			case CommissionPackage.PIECE__GLASS:
				if (resolve) return getGlass();
				return basicGetGlass();
			case CommissionPackage.PIECE__CHOICES:
				return getChoices();
			case CommissionPackage.PIECE__STATE:
				return getState();
			case CommissionPackage.PIECE__RETIRED:
				return isRetired();
			case CommissionPackage.PIECE__NOTE:
				return getNote();
			case CommissionPackage.PIECE__GROUP:
				return getGroup();
			case CommissionPackage.PIECE__LOCKED:
				return isLocked();
			case CommissionPackage.PIECE__NUMBERED_BY_HAND:
				return isNumberedByHand();
			case CommissionPackage.PIECE__CAME_FROM:
				return getCameFrom();
			case CommissionPackage.PIECE__BECAME:
				return getBecame();
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
			case CommissionPackage.PIECE__PANEL:
				setPanel((Panel)newValue);
				return;
			case CommissionPackage.PIECE__NUMBER:
				setNumber((Integer)newValue);
				return;
			case CommissionPackage.PIECE__FACE:
				setFace((OutlineMm)newValue);
				return;
			case CommissionPackage.PIECE__NET:
				setNet((OutlineMm)newValue);
				return;
			case CommissionPackage.PIECE__LABEL_XMM:
				setLabelXMm((Double)newValue);
				return;
			case CommissionPackage.PIECE__LABEL_YMM:
				setLabelYMm((Double)newValue);
				return;
			case CommissionPackage.PIECE__INRADIUS_MM:
				setInradiusMm((Double)newValue);
				return;
			case CommissionPackage.PIECE__AREA_MM2:
				setAreaMm2((Double)newValue);
				return;
			case CommissionPackage.PIECE__NET_AREA_MM2:
				setNetAreaMm2((Double)newValue);
				return;
			case CommissionPackage.PIECE__PERIMETER_MM:
				setPerimeterMm((Double)newValue);
				return;
			case CommissionPackage.PIECE__SHAPE_KEY:
				setShapeKey((String)newValue);
				return;
			case CommissionPackage.PIECE__PROBLEMS:
				getProblems().clear();
				getProblems().addAll((Collection<? extends String>)newValue);
				return;
			case CommissionPackage.PIECE__NEIGHBOURS:
				getNeighbours().clear();
				getNeighbours().addAll((Collection<? extends Piece>)newValue);
				return;
			case CommissionPackage.PIECE__GLASS:
				setGlass((GlassStock)newValue);
				return;
			case CommissionPackage.PIECE__CHOICES:
				getChoices().clear();
				getChoices().addAll((Collection<? extends GlassChoice>)newValue);
				return;
			case CommissionPackage.PIECE__STATE:
				setState((MakingState)newValue);
				return;
			case CommissionPackage.PIECE__RETIRED:
				setRetired((Boolean)newValue);
				return;
			case CommissionPackage.PIECE__NOTE:
				setNote((String)newValue);
				return;
			case CommissionPackage.PIECE__GROUP:
				setGroup((String)newValue);
				return;
			case CommissionPackage.PIECE__LOCKED:
				setLocked((Boolean)newValue);
				return;
			case CommissionPackage.PIECE__NUMBERED_BY_HAND:
				setNumberedByHand((Boolean)newValue);
				return;
			case CommissionPackage.PIECE__CAME_FROM:
				getCameFrom().clear();
				getCameFrom().addAll((Collection<? extends Piece>)newValue);
				return;
			case CommissionPackage.PIECE__BECAME:
				getBecame().clear();
				getBecame().addAll((Collection<? extends Piece>)newValue);
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
			case CommissionPackage.PIECE__PANEL:
				setPanel((Panel)null);
				return;
			case CommissionPackage.PIECE__NUMBER:
				setNumber(NUMBER_EDEFAULT);
				return;
			case CommissionPackage.PIECE__FACE:
				setFace(FACE_EDEFAULT);
				return;
			case CommissionPackage.PIECE__NET:
				setNet(NET_EDEFAULT);
				return;
			case CommissionPackage.PIECE__LABEL_XMM:
				setLabelXMm(LABEL_XMM_EDEFAULT);
				return;
			case CommissionPackage.PIECE__LABEL_YMM:
				setLabelYMm(LABEL_YMM_EDEFAULT);
				return;
			case CommissionPackage.PIECE__INRADIUS_MM:
				setInradiusMm(INRADIUS_MM_EDEFAULT);
				return;
			case CommissionPackage.PIECE__AREA_MM2:
				setAreaMm2(AREA_MM2_EDEFAULT);
				return;
			case CommissionPackage.PIECE__NET_AREA_MM2:
				setNetAreaMm2(NET_AREA_MM2_EDEFAULT);
				return;
			case CommissionPackage.PIECE__PERIMETER_MM:
				setPerimeterMm(PERIMETER_MM_EDEFAULT);
				return;
			case CommissionPackage.PIECE__SHAPE_KEY:
				setShapeKey(SHAPE_KEY_EDEFAULT);
				return;
			case CommissionPackage.PIECE__PROBLEMS:
				getProblems().clear();
				return;
			case CommissionPackage.PIECE__NEIGHBOURS:
				getNeighbours().clear();
				return;
			case CommissionPackage.PIECE__GLASS:
				setGlass((GlassStock)null);
				return;
			case CommissionPackage.PIECE__CHOICES:
				getChoices().clear();
				return;
			case CommissionPackage.PIECE__STATE:
				setState(STATE_EDEFAULT);
				return;
			case CommissionPackage.PIECE__RETIRED:
				setRetired(RETIRED_EDEFAULT);
				return;
			case CommissionPackage.PIECE__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case CommissionPackage.PIECE__GROUP:
				setGroup(GROUP_EDEFAULT);
				return;
			case CommissionPackage.PIECE__LOCKED:
				setLocked(LOCKED_EDEFAULT);
				return;
			case CommissionPackage.PIECE__NUMBERED_BY_HAND:
				setNumberedByHand(NUMBERED_BY_HAND_EDEFAULT);
				return;
			case CommissionPackage.PIECE__CAME_FROM:
				getCameFrom().clear();
				return;
			case CommissionPackage.PIECE__BECAME:
				getBecame().clear();
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
			case CommissionPackage.PIECE__PANEL:
				return getPanel() != null;
			case CommissionPackage.PIECE__NUMBER:
				return number != NUMBER_EDEFAULT;
			case CommissionPackage.PIECE__FACE:
				return FACE_EDEFAULT == null ? face != null : !FACE_EDEFAULT.equals(face);
			case CommissionPackage.PIECE__NET:
				return NET_EDEFAULT == null ? net != null : !NET_EDEFAULT.equals(net);
			case CommissionPackage.PIECE__LABEL_XMM:
				return labelXMm != LABEL_XMM_EDEFAULT;
			case CommissionPackage.PIECE__LABEL_YMM:
				return labelYMm != LABEL_YMM_EDEFAULT;
			case CommissionPackage.PIECE__INRADIUS_MM:
				return inradiusMm != INRADIUS_MM_EDEFAULT;
			case CommissionPackage.PIECE__AREA_MM2:
				return areaMm2 != AREA_MM2_EDEFAULT;
			case CommissionPackage.PIECE__NET_AREA_MM2:
				return netAreaMm2 != NET_AREA_MM2_EDEFAULT;
			case CommissionPackage.PIECE__PERIMETER_MM:
				return perimeterMm != PERIMETER_MM_EDEFAULT;
			case CommissionPackage.PIECE__SHAPE_KEY:
				return SHAPE_KEY_EDEFAULT == null ? shapeKey != null : !SHAPE_KEY_EDEFAULT.equals(shapeKey);
			case CommissionPackage.PIECE__PROBLEMS:
				return problems != null && !problems.isEmpty();
			case CommissionPackage.PIECE__NEIGHBOURS:
				return neighbours != null && !neighbours.isEmpty();
			case CommissionPackage.PIECE__GLASS:
				return glass != null;
			case CommissionPackage.PIECE__CHOICES:
				return choices != null && !choices.isEmpty();
			case CommissionPackage.PIECE__STATE:
				return state != STATE_EDEFAULT;
			case CommissionPackage.PIECE__RETIRED:
				return retired != RETIRED_EDEFAULT;
			case CommissionPackage.PIECE__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case CommissionPackage.PIECE__GROUP:
				return GROUP_EDEFAULT == null ? group != null : !GROUP_EDEFAULT.equals(group);
			case CommissionPackage.PIECE__LOCKED:
				return locked != LOCKED_EDEFAULT;
			case CommissionPackage.PIECE__NUMBERED_BY_HAND:
				return numberedByHand != NUMBERED_BY_HAND_EDEFAULT;
			case CommissionPackage.PIECE__CAME_FROM:
				return cameFrom != null && !cameFrom.isEmpty();
			case CommissionPackage.PIECE__BECAME:
				return became != null && !became.isEmpty();
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
		result.append(", face: ");
		result.append(face);
		result.append(", net: ");
		result.append(net);
		result.append(", labelXMm: ");
		result.append(labelXMm);
		result.append(", labelYMm: ");
		result.append(labelYMm);
		result.append(", inradiusMm: ");
		result.append(inradiusMm);
		result.append(", areaMm2: ");
		result.append(areaMm2);
		result.append(", netAreaMm2: ");
		result.append(netAreaMm2);
		result.append(", perimeterMm: ");
		result.append(perimeterMm);
		result.append(", shapeKey: ");
		result.append(shapeKey);
		result.append(", problems: ");
		result.append(problems);
		result.append(", state: ");
		result.append(state);
		result.append(", retired: ");
		result.append(retired);
		result.append(", note: ");
		result.append(note);
		result.append(", group: ");
		result.append(group);
		result.append(", locked: ");
		result.append(locked);
		result.append(", numberedByHand: ");
		result.append(numberedByHand);
		result.append(')');
		return result.toString();
	}

} //PieceImpl
