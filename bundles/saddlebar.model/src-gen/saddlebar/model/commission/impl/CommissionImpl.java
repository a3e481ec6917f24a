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
import org.eclipse.emf.ecore.util.EObjectContainmentWithInverseEList;
import org.eclipse.emf.ecore.util.EObjectWithInverseResolvingEList;
import org.eclipse.emf.ecore.util.InternalEList;

import saddlebar.model.commission.Approval;
import saddlebar.model.commission.Client;
import saddlebar.model.commission.Commission;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.JoinKind;
import saddlebar.model.commission.Milestone;
import saddlebar.model.commission.Quote;
import saddlebar.model.commission.Sheet;
import saddlebar.model.commission.Site;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.UnitSystem;
import saddlebar.model.commission.Window;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Commission</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.CommissionImpl#getFormatVersion <em>Format Version</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CommissionImpl#getTitle <em>Title</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CommissionImpl#getNumber <em>Number</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CommissionImpl#getNote <em>Note</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CommissionImpl#getUnits <em>Units</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CommissionImpl#getPapers <em>Papers</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CommissionImpl#getJoin <em>Join</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CommissionImpl#getGapMm <em>Gap Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CommissionImpl#getSheetGapMm <em>Sheet Gap Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CommissionImpl#getClient <em>Client</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CommissionImpl#getSite <em>Site</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CommissionImpl#getMilestones <em>Milestones</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CommissionImpl#getQuotes <em>Quotes</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CommissionImpl#getApprovals <em>Approvals</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CommissionImpl#getSheets <em>Sheets</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CommissionImpl#getWindows <em>Windows</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.CommissionImpl#getStudio <em>Studio</em>}</li>
 * </ul>
 *
 * @generated
 */
public class CommissionImpl extends IdentifiedImpl implements Commission {
	/**
	 * The default value of the '{@link #getFormatVersion() <em>Format Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFormatVersion()
	 * @generated
	 * @ordered
	 */
	protected static final String FORMAT_VERSION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFormatVersion() <em>Format Version</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFormatVersion()
	 * @generated
	 * @ordered
	 */
	protected String formatVersion = FORMAT_VERSION_EDEFAULT;

	/**
	 * The default value of the '{@link #getTitle() <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTitle()
	 * @generated
	 * @ordered
	 */
	protected static final String TITLE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTitle() <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTitle()
	 * @generated
	 * @ordered
	 */
	protected String title = TITLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getNumber() <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNumber()
	 * @generated
	 * @ordered
	 */
	protected static final String NUMBER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getNumber() <em>Number</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getNumber()
	 * @generated
	 * @ordered
	 */
	protected String number = NUMBER_EDEFAULT;

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
	 * The default value of the '{@link #getUnits() <em>Units</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnits()
	 * @generated
	 * @ordered
	 */
	protected static final UnitSystem UNITS_EDEFAULT = UnitSystem.MM;

	/**
	 * The cached value of the '{@link #getUnits() <em>Units</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnits()
	 * @generated
	 * @ordered
	 */
	protected UnitSystem units = UNITS_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPapers() <em>Papers</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPapers()
	 * @generated
	 * @ordered
	 */
	protected EList<String> papers;

	/**
	 * The default value of the '{@link #getJoin() <em>Join</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getJoin()
	 * @generated
	 * @ordered
	 */
	protected static final JoinKind JOIN_EDEFAULT = JoinKind.FOIL;

	/**
	 * The cached value of the '{@link #getJoin() <em>Join</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getJoin()
	 * @generated
	 * @ordered
	 */
	protected JoinKind join = JOIN_EDEFAULT;

	/**
	 * The default value of the '{@link #getGapMm() <em>Gap Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGapMm()
	 * @generated
	 * @ordered
	 */
	protected static final double GAP_MM_EDEFAULT = 0.8;

	/**
	 * The cached value of the '{@link #getGapMm() <em>Gap Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGapMm()
	 * @generated
	 * @ordered
	 */
	protected double gapMm = GAP_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getSheetGapMm() <em>Sheet Gap Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetGapMm()
	 * @generated
	 * @ordered
	 */
	protected static final double SHEET_GAP_MM_EDEFAULT = 5.0;

	/**
	 * The cached value of the '{@link #getSheetGapMm() <em>Sheet Gap Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetGapMm()
	 * @generated
	 * @ordered
	 */
	protected double sheetGapMm = SHEET_GAP_MM_EDEFAULT;

	/**
	 * The cached value of the '{@link #getClient() <em>Client</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClient()
	 * @generated
	 * @ordered
	 */
	protected Client client;

	/**
	 * The cached value of the '{@link #getSite() <em>Site</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSite()
	 * @generated
	 * @ordered
	 */
	protected Site site;

	/**
	 * The cached value of the '{@link #getMilestones() <em>Milestones</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMilestones()
	 * @generated
	 * @ordered
	 */
	protected EList<Milestone> milestones;

	/**
	 * The cached value of the '{@link #getQuotes() <em>Quotes</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuotes()
	 * @generated
	 * @ordered
	 */
	protected EList<Quote> quotes;

	/**
	 * The cached value of the '{@link #getApprovals() <em>Approvals</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getApprovals()
	 * @generated
	 * @ordered
	 */
	protected EList<Approval> approvals;

	/**
	 * The cached value of the '{@link #getSheets() <em>Sheets</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheets()
	 * @generated
	 * @ordered
	 */
	protected EList<Sheet> sheets;

	/**
	 * The cached value of the '{@link #getWindows() <em>Windows</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWindows()
	 * @generated
	 * @ordered
	 */
	protected EList<Window> windows;

	/**
	 * The cached value of the '{@link #getStudio() <em>Studio</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStudio()
	 * @generated
	 * @ordered
	 */
	protected Studio studio;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CommissionImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.COMMISSION;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFormatVersion() {
		return formatVersion;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFormatVersion(String newFormatVersion) {
		String oldFormatVersion = formatVersion;
		formatVersion = newFormatVersion;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COMMISSION__FORMAT_VERSION, oldFormatVersion, formatVersion));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTitle() {
		return title;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTitle(String newTitle) {
		String oldTitle = title;
		title = newTitle;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COMMISSION__TITLE, oldTitle, title));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getNumber() {
		return number;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNumber(String newNumber) {
		String oldNumber = number;
		number = newNumber;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COMMISSION__NUMBER, oldNumber, number));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COMMISSION__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public UnitSystem getUnits() {
		return units;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUnits(UnitSystem newUnits) {
		UnitSystem oldUnits = units;
		units = newUnits == null ? UNITS_EDEFAULT : newUnits;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COMMISSION__UNITS, oldUnits, units));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getPapers() {
		if (papers == null) {
			papers = new EDataTypeUniqueEList<String>(String.class, this, CommissionPackage.COMMISSION__PAPERS);
		}
		return papers;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public JoinKind getJoin() {
		return join;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setJoin(JoinKind newJoin) {
		JoinKind oldJoin = join;
		join = newJoin == null ? JOIN_EDEFAULT : newJoin;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COMMISSION__JOIN, oldJoin, join));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getGapMm() {
		return gapMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGapMm(double newGapMm) {
		double oldGapMm = gapMm;
		gapMm = newGapMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COMMISSION__GAP_MM, oldGapMm, gapMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getSheetGapMm() {
		return sheetGapMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSheetGapMm(double newSheetGapMm) {
		double oldSheetGapMm = sheetGapMm;
		sheetGapMm = newSheetGapMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COMMISSION__SHEET_GAP_MM, oldSheetGapMm, sheetGapMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Client getClient() {
		return client;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetClient(Client newClient, NotificationChain msgs) {
		Client oldClient = client;
		client = newClient;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, CommissionPackage.COMMISSION__CLIENT, oldClient, newClient);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setClient(Client newClient) {
		if (newClient != client) {
			NotificationChain msgs = null;
			if (client != null)
				msgs = ((InternalEObject)client).eInverseRemove(this, CommissionPackage.CLIENT__COMMISSION, Client.class, msgs);
			if (newClient != null)
				msgs = ((InternalEObject)newClient).eInverseAdd(this, CommissionPackage.CLIENT__COMMISSION, Client.class, msgs);
			msgs = basicSetClient(newClient, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COMMISSION__CLIENT, newClient, newClient));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Site getSite() {
		return site;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetSite(Site newSite, NotificationChain msgs) {
		Site oldSite = site;
		site = newSite;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, CommissionPackage.COMMISSION__SITE, oldSite, newSite);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSite(Site newSite) {
		if (newSite != site) {
			NotificationChain msgs = null;
			if (site != null)
				msgs = ((InternalEObject)site).eInverseRemove(this, CommissionPackage.SITE__COMMISSION, Site.class, msgs);
			if (newSite != null)
				msgs = ((InternalEObject)newSite).eInverseAdd(this, CommissionPackage.SITE__COMMISSION, Site.class, msgs);
			msgs = basicSetSite(newSite, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COMMISSION__SITE, newSite, newSite));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Milestone> getMilestones() {
		if (milestones == null) {
			milestones = new EObjectContainmentWithInverseEList<Milestone>(Milestone.class, this, CommissionPackage.COMMISSION__MILESTONES, CommissionPackage.MILESTONE__COMMISSION);
		}
		return milestones;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Quote> getQuotes() {
		if (quotes == null) {
			quotes = new EObjectContainmentWithInverseEList<Quote>(Quote.class, this, CommissionPackage.COMMISSION__QUOTES, CommissionPackage.QUOTE__COMMISSION);
		}
		return quotes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Approval> getApprovals() {
		if (approvals == null) {
			approvals = new EObjectContainmentWithInverseEList<Approval>(Approval.class, this, CommissionPackage.COMMISSION__APPROVALS, CommissionPackage.APPROVAL__COMMISSION);
		}
		return approvals;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Sheet> getSheets() {
		if (sheets == null) {
			sheets = new EObjectContainmentWithInverseEList<Sheet>(Sheet.class, this, CommissionPackage.COMMISSION__SHEETS, CommissionPackage.SHEET__COMMISSION);
		}
		return sheets;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Window> getWindows() {
		if (windows == null) {
			windows = new EObjectWithInverseResolvingEList<Window>(Window.class, this, CommissionPackage.COMMISSION__WINDOWS, CommissionPackage.WINDOW__COMMISSION);
		}
		return windows;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Studio getStudio() {
		if (studio != null && studio.eIsProxy()) {
			InternalEObject oldStudio = (InternalEObject)studio;
			studio = (Studio)eResolveProxy(oldStudio);
			if (studio != oldStudio) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.COMMISSION__STUDIO, oldStudio, studio));
			}
		}
		return studio;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Studio basicGetStudio() {
		return studio;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStudio(Studio newStudio) {
		Studio oldStudio = studio;
		studio = newStudio;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.COMMISSION__STUDIO, oldStudio, studio));
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
			case CommissionPackage.COMMISSION__CLIENT:
				if (client != null)
					msgs = ((InternalEObject)client).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - CommissionPackage.COMMISSION__CLIENT, null, msgs);
				return basicSetClient((Client)otherEnd, msgs);
			case CommissionPackage.COMMISSION__SITE:
				if (site != null)
					msgs = ((InternalEObject)site).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - CommissionPackage.COMMISSION__SITE, null, msgs);
				return basicSetSite((Site)otherEnd, msgs);
			case CommissionPackage.COMMISSION__MILESTONES:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getMilestones()).basicAdd(otherEnd, msgs);
			case CommissionPackage.COMMISSION__QUOTES:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getQuotes()).basicAdd(otherEnd, msgs);
			case CommissionPackage.COMMISSION__APPROVALS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getApprovals()).basicAdd(otherEnd, msgs);
			case CommissionPackage.COMMISSION__SHEETS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getSheets()).basicAdd(otherEnd, msgs);
			case CommissionPackage.COMMISSION__WINDOWS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getWindows()).basicAdd(otherEnd, msgs);
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
			case CommissionPackage.COMMISSION__CLIENT:
				return basicSetClient(null, msgs);
			case CommissionPackage.COMMISSION__SITE:
				return basicSetSite(null, msgs);
			case CommissionPackage.COMMISSION__MILESTONES:
				return ((InternalEList<?>)getMilestones()).basicRemove(otherEnd, msgs);
			case CommissionPackage.COMMISSION__QUOTES:
				return ((InternalEList<?>)getQuotes()).basicRemove(otherEnd, msgs);
			case CommissionPackage.COMMISSION__APPROVALS:
				return ((InternalEList<?>)getApprovals()).basicRemove(otherEnd, msgs);
			case CommissionPackage.COMMISSION__SHEETS:
				return ((InternalEList<?>)getSheets()).basicRemove(otherEnd, msgs);
			case CommissionPackage.COMMISSION__WINDOWS:
				return ((InternalEList<?>)getWindows()).basicRemove(otherEnd, msgs);
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
			case CommissionPackage.COMMISSION__FORMAT_VERSION:
				return getFormatVersion();
			case CommissionPackage.COMMISSION__TITLE:
				return getTitle();
			case CommissionPackage.COMMISSION__NUMBER:
				return getNumber();
			case CommissionPackage.COMMISSION__NOTE:
				return getNote();
			case CommissionPackage.COMMISSION__UNITS:
				return getUnits();
			case CommissionPackage.COMMISSION__PAPERS:
				return getPapers();
			case CommissionPackage.COMMISSION__JOIN:
				return getJoin();
			case CommissionPackage.COMMISSION__GAP_MM:
				return getGapMm();
			case CommissionPackage.COMMISSION__SHEET_GAP_MM:
				return getSheetGapMm();
			case CommissionPackage.COMMISSION__CLIENT:
				return getClient();
			case CommissionPackage.COMMISSION__SITE:
				return getSite();
			case CommissionPackage.COMMISSION__MILESTONES:
				return getMilestones();
			case CommissionPackage.COMMISSION__QUOTES:
				return getQuotes();
			case CommissionPackage.COMMISSION__APPROVALS:
				return getApprovals();
			case CommissionPackage.COMMISSION__SHEETS:
				return getSheets();
			case CommissionPackage.COMMISSION__WINDOWS:
				return getWindows();
			case CommissionPackage.COMMISSION__STUDIO:
				if (resolve) return getStudio();
				return basicGetStudio();
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
			case CommissionPackage.COMMISSION__FORMAT_VERSION:
				setFormatVersion((String)newValue);
				return;
			case CommissionPackage.COMMISSION__TITLE:
				setTitle((String)newValue);
				return;
			case CommissionPackage.COMMISSION__NUMBER:
				setNumber((String)newValue);
				return;
			case CommissionPackage.COMMISSION__NOTE:
				setNote((String)newValue);
				return;
			case CommissionPackage.COMMISSION__UNITS:
				setUnits((UnitSystem)newValue);
				return;
			case CommissionPackage.COMMISSION__PAPERS:
				getPapers().clear();
				getPapers().addAll((Collection<? extends String>)newValue);
				return;
			case CommissionPackage.COMMISSION__JOIN:
				setJoin((JoinKind)newValue);
				return;
			case CommissionPackage.COMMISSION__GAP_MM:
				setGapMm((Double)newValue);
				return;
			case CommissionPackage.COMMISSION__SHEET_GAP_MM:
				setSheetGapMm((Double)newValue);
				return;
			case CommissionPackage.COMMISSION__CLIENT:
				setClient((Client)newValue);
				return;
			case CommissionPackage.COMMISSION__SITE:
				setSite((Site)newValue);
				return;
			case CommissionPackage.COMMISSION__MILESTONES:
				getMilestones().clear();
				getMilestones().addAll((Collection<? extends Milestone>)newValue);
				return;
			case CommissionPackage.COMMISSION__QUOTES:
				getQuotes().clear();
				getQuotes().addAll((Collection<? extends Quote>)newValue);
				return;
			case CommissionPackage.COMMISSION__APPROVALS:
				getApprovals().clear();
				getApprovals().addAll((Collection<? extends Approval>)newValue);
				return;
			case CommissionPackage.COMMISSION__SHEETS:
				getSheets().clear();
				getSheets().addAll((Collection<? extends Sheet>)newValue);
				return;
			case CommissionPackage.COMMISSION__WINDOWS:
				getWindows().clear();
				getWindows().addAll((Collection<? extends Window>)newValue);
				return;
			case CommissionPackage.COMMISSION__STUDIO:
				setStudio((Studio)newValue);
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
			case CommissionPackage.COMMISSION__FORMAT_VERSION:
				setFormatVersion(FORMAT_VERSION_EDEFAULT);
				return;
			case CommissionPackage.COMMISSION__TITLE:
				setTitle(TITLE_EDEFAULT);
				return;
			case CommissionPackage.COMMISSION__NUMBER:
				setNumber(NUMBER_EDEFAULT);
				return;
			case CommissionPackage.COMMISSION__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case CommissionPackage.COMMISSION__UNITS:
				setUnits(UNITS_EDEFAULT);
				return;
			case CommissionPackage.COMMISSION__PAPERS:
				getPapers().clear();
				return;
			case CommissionPackage.COMMISSION__JOIN:
				setJoin(JOIN_EDEFAULT);
				return;
			case CommissionPackage.COMMISSION__GAP_MM:
				setGapMm(GAP_MM_EDEFAULT);
				return;
			case CommissionPackage.COMMISSION__SHEET_GAP_MM:
				setSheetGapMm(SHEET_GAP_MM_EDEFAULT);
				return;
			case CommissionPackage.COMMISSION__CLIENT:
				setClient((Client)null);
				return;
			case CommissionPackage.COMMISSION__SITE:
				setSite((Site)null);
				return;
			case CommissionPackage.COMMISSION__MILESTONES:
				getMilestones().clear();
				return;
			case CommissionPackage.COMMISSION__QUOTES:
				getQuotes().clear();
				return;
			case CommissionPackage.COMMISSION__APPROVALS:
				getApprovals().clear();
				return;
			case CommissionPackage.COMMISSION__SHEETS:
				getSheets().clear();
				return;
			case CommissionPackage.COMMISSION__WINDOWS:
				getWindows().clear();
				return;
			case CommissionPackage.COMMISSION__STUDIO:
				setStudio((Studio)null);
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
			case CommissionPackage.COMMISSION__FORMAT_VERSION:
				return FORMAT_VERSION_EDEFAULT == null ? formatVersion != null : !FORMAT_VERSION_EDEFAULT.equals(formatVersion);
			case CommissionPackage.COMMISSION__TITLE:
				return TITLE_EDEFAULT == null ? title != null : !TITLE_EDEFAULT.equals(title);
			case CommissionPackage.COMMISSION__NUMBER:
				return NUMBER_EDEFAULT == null ? number != null : !NUMBER_EDEFAULT.equals(number);
			case CommissionPackage.COMMISSION__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case CommissionPackage.COMMISSION__UNITS:
				return units != UNITS_EDEFAULT;
			case CommissionPackage.COMMISSION__PAPERS:
				return papers != null && !papers.isEmpty();
			case CommissionPackage.COMMISSION__JOIN:
				return join != JOIN_EDEFAULT;
			case CommissionPackage.COMMISSION__GAP_MM:
				return gapMm != GAP_MM_EDEFAULT;
			case CommissionPackage.COMMISSION__SHEET_GAP_MM:
				return sheetGapMm != SHEET_GAP_MM_EDEFAULT;
			case CommissionPackage.COMMISSION__CLIENT:
				return client != null;
			case CommissionPackage.COMMISSION__SITE:
				return site != null;
			case CommissionPackage.COMMISSION__MILESTONES:
				return milestones != null && !milestones.isEmpty();
			case CommissionPackage.COMMISSION__QUOTES:
				return quotes != null && !quotes.isEmpty();
			case CommissionPackage.COMMISSION__APPROVALS:
				return approvals != null && !approvals.isEmpty();
			case CommissionPackage.COMMISSION__SHEETS:
				return sheets != null && !sheets.isEmpty();
			case CommissionPackage.COMMISSION__WINDOWS:
				return windows != null && !windows.isEmpty();
			case CommissionPackage.COMMISSION__STUDIO:
				return studio != null;
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
		result.append(" (formatVersion: ");
		result.append(formatVersion);
		result.append(", title: ");
		result.append(title);
		result.append(", number: ");
		result.append(number);
		result.append(", note: ");
		result.append(note);
		result.append(", units: ");
		result.append(units);
		result.append(", papers: ");
		result.append(papers);
		result.append(", join: ");
		result.append(join);
		result.append(", gapMm: ");
		result.append(gapMm);
		result.append(", sheetGapMm: ");
		result.append(sheetGapMm);
		result.append(')');
		return result.toString();
	}

} //CommissionImpl
