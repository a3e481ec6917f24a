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
import org.eclipse.emf.ecore.util.InternalEList;

import saddlebar.model.commission.BarStock;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.FiringSchedule;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.JoinStock;
import saddlebar.model.commission.JoinedCommission;
import saddlebar.model.commission.Kiln;
import saddlebar.model.commission.Medium;
import saddlebar.model.commission.Mesh;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.PaperSize;
import saddlebar.model.commission.Person;
import saddlebar.model.commission.PriceBook;
import saddlebar.model.commission.Printer;
import saddlebar.model.commission.ProcessSetting;
import saddlebar.model.commission.ScreenFrame;
import saddlebar.model.commission.SheetStock;
import saddlebar.model.commission.SolderStock;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.Supplier;
import saddlebar.model.commission.ToneCalibration;
import saddlebar.model.commission.UnitSystem;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Studio</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getFormatVersion <em>Format Version</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getUnits <em>Units</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getCurrency <em>Currency</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getPapers <em>Papers</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getMeshes <em>Meshes</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getFrames <em>Frames</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getPaints <em>Paints</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getMedia <em>Media</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getGlass <em>Glass</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getJoins <em>Joins</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getSolders <em>Solders</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getBars <em>Bars</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getKilns <em>Kilns</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getSchedules <em>Schedules</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getPriceBook <em>Price Book</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getPrinters <em>Printers</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getSheetStock <em>Sheet Stock</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getCalibrations <em>Calibrations</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getProcesses <em>Processes</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getPeople <em>People</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getSuppliers <em>Suppliers</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getCommissions <em>Commissions</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getAddress <em>Address</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getContact <em>Contact</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getMarkFile <em>Mark File</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getAccent <em>Accent</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.StudioImpl#getTerms <em>Terms</em>}</li>
 * </ul>
 *
 * @generated
 */
public class StudioImpl extends NamedImpl implements Studio {
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
	 * The default value of the '{@link #getCurrency() <em>Currency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurrency()
	 * @generated
	 * @ordered
	 */
	protected static final String CURRENCY_EDEFAULT = "EUR";

	/**
	 * The cached value of the '{@link #getCurrency() <em>Currency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCurrency()
	 * @generated
	 * @ordered
	 */
	protected String currency = CURRENCY_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPapers() <em>Papers</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPapers()
	 * @generated
	 * @ordered
	 */
	protected EList<PaperSize> papers;

	/**
	 * The cached value of the '{@link #getMeshes() <em>Meshes</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeshes()
	 * @generated
	 * @ordered
	 */
	protected EList<Mesh> meshes;

	/**
	 * The cached value of the '{@link #getFrames() <em>Frames</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrames()
	 * @generated
	 * @ordered
	 */
	protected EList<ScreenFrame> frames;

	/**
	 * The cached value of the '{@link #getPaints() <em>Paints</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPaints()
	 * @generated
	 * @ordered
	 */
	protected EList<Paint> paints;

	/**
	 * The cached value of the '{@link #getMedia() <em>Media</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMedia()
	 * @generated
	 * @ordered
	 */
	protected EList<Medium> media;

	/**
	 * The cached value of the '{@link #getGlass() <em>Glass</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGlass()
	 * @generated
	 * @ordered
	 */
	protected EList<GlassStock> glass;

	/**
	 * The cached value of the '{@link #getJoins() <em>Joins</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getJoins()
	 * @generated
	 * @ordered
	 */
	protected EList<JoinStock> joins;

	/**
	 * The cached value of the '{@link #getSolders() <em>Solders</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSolders()
	 * @generated
	 * @ordered
	 */
	protected EList<SolderStock> solders;

	/**
	 * The cached value of the '{@link #getBars() <em>Bars</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBars()
	 * @generated
	 * @ordered
	 */
	protected EList<BarStock> bars;

	/**
	 * The cached value of the '{@link #getKilns() <em>Kilns</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKilns()
	 * @generated
	 * @ordered
	 */
	protected EList<Kiln> kilns;

	/**
	 * The cached value of the '{@link #getSchedules() <em>Schedules</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSchedules()
	 * @generated
	 * @ordered
	 */
	protected EList<FiringSchedule> schedules;

	/**
	 * The cached value of the '{@link #getPriceBook() <em>Price Book</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPriceBook()
	 * @generated
	 * @ordered
	 */
	protected PriceBook priceBook;

	/**
	 * The cached value of the '{@link #getPrinters() <em>Printers</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrinters()
	 * @generated
	 * @ordered
	 */
	protected EList<Printer> printers;

	/**
	 * The cached value of the '{@link #getSheetStock() <em>Sheet Stock</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSheetStock()
	 * @generated
	 * @ordered
	 */
	protected EList<SheetStock> sheetStock;

	/**
	 * The cached value of the '{@link #getCalibrations() <em>Calibrations</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCalibrations()
	 * @generated
	 * @ordered
	 */
	protected EList<ToneCalibration> calibrations;

	/**
	 * The cached value of the '{@link #getProcesses() <em>Processes</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProcesses()
	 * @generated
	 * @ordered
	 */
	protected EList<ProcessSetting> processes;

	/**
	 * The cached value of the '{@link #getPeople() <em>People</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPeople()
	 * @generated
	 * @ordered
	 */
	protected EList<Person> people;

	/**
	 * The cached value of the '{@link #getSuppliers() <em>Suppliers</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSuppliers()
	 * @generated
	 * @ordered
	 */
	protected EList<Supplier> suppliers;

	/**
	 * The cached value of the '{@link #getCommissions() <em>Commissions</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCommissions()
	 * @generated
	 * @ordered
	 */
	protected EList<JoinedCommission> commissions;

	/**
	 * The default value of the '{@link #getAddress() <em>Address</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAddress()
	 * @generated
	 * @ordered
	 */
	protected static final String ADDRESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAddress() <em>Address</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAddress()
	 * @generated
	 * @ordered
	 */
	protected String address = ADDRESS_EDEFAULT;

	/**
	 * The default value of the '{@link #getContact() <em>Contact</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getContact()
	 * @generated
	 * @ordered
	 */
	protected static final String CONTACT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getContact() <em>Contact</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getContact()
	 * @generated
	 * @ordered
	 */
	protected String contact = CONTACT_EDEFAULT;

	/**
	 * The default value of the '{@link #getMarkFile() <em>Mark File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMarkFile()
	 * @generated
	 * @ordered
	 */
	protected static final String MARK_FILE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMarkFile() <em>Mark File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMarkFile()
	 * @generated
	 * @ordered
	 */
	protected String markFile = MARK_FILE_EDEFAULT;

	/**
	 * The default value of the '{@link #getAccent() <em>Accent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAccent()
	 * @generated
	 * @ordered
	 */
	protected static final String ACCENT_EDEFAULT = "#2f4b5c";

	/**
	 * The cached value of the '{@link #getAccent() <em>Accent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAccent()
	 * @generated
	 * @ordered
	 */
	protected String accent = ACCENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getTerms() <em>Terms</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTerms()
	 * @generated
	 * @ordered
	 */
	protected static final String TERMS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTerms() <em>Terms</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTerms()
	 * @generated
	 * @ordered
	 */
	protected String terms = TERMS_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected StudioImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.STUDIO;
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STUDIO__FORMAT_VERSION, oldFormatVersion, formatVersion));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STUDIO__UNITS, oldUnits, units));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCurrency() {
		return currency;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCurrency(String newCurrency) {
		String oldCurrency = currency;
		currency = newCurrency;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STUDIO__CURRENCY, oldCurrency, currency));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<PaperSize> getPapers() {
		if (papers == null) {
			papers = new EObjectContainmentWithInverseEList<PaperSize>(PaperSize.class, this, CommissionPackage.STUDIO__PAPERS, CommissionPackage.PAPER_SIZE__STUDIO);
		}
		return papers;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Mesh> getMeshes() {
		if (meshes == null) {
			meshes = new EObjectContainmentWithInverseEList<Mesh>(Mesh.class, this, CommissionPackage.STUDIO__MESHES, CommissionPackage.MESH__STUDIO);
		}
		return meshes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ScreenFrame> getFrames() {
		if (frames == null) {
			frames = new EObjectContainmentWithInverseEList<ScreenFrame>(ScreenFrame.class, this, CommissionPackage.STUDIO__FRAMES, CommissionPackage.SCREEN_FRAME__STUDIO);
		}
		return frames;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Paint> getPaints() {
		if (paints == null) {
			paints = new EObjectContainmentWithInverseEList<Paint>(Paint.class, this, CommissionPackage.STUDIO__PAINTS, CommissionPackage.PAINT__STUDIO);
		}
		return paints;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Medium> getMedia() {
		if (media == null) {
			media = new EObjectContainmentWithInverseEList<Medium>(Medium.class, this, CommissionPackage.STUDIO__MEDIA, CommissionPackage.MEDIUM__STUDIO);
		}
		return media;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<GlassStock> getGlass() {
		if (glass == null) {
			glass = new EObjectContainmentWithInverseEList<GlassStock>(GlassStock.class, this, CommissionPackage.STUDIO__GLASS, CommissionPackage.GLASS_STOCK__STUDIO);
		}
		return glass;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<JoinStock> getJoins() {
		if (joins == null) {
			joins = new EObjectContainmentWithInverseEList<JoinStock>(JoinStock.class, this, CommissionPackage.STUDIO__JOINS, CommissionPackage.JOIN_STOCK__STUDIO);
		}
		return joins;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<SolderStock> getSolders() {
		if (solders == null) {
			solders = new EObjectContainmentWithInverseEList<SolderStock>(SolderStock.class, this, CommissionPackage.STUDIO__SOLDERS, CommissionPackage.SOLDER_STOCK__STUDIO);
		}
		return solders;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<BarStock> getBars() {
		if (bars == null) {
			bars = new EObjectContainmentWithInverseEList<BarStock>(BarStock.class, this, CommissionPackage.STUDIO__BARS, CommissionPackage.BAR_STOCK__STUDIO);
		}
		return bars;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Kiln> getKilns() {
		if (kilns == null) {
			kilns = new EObjectContainmentWithInverseEList<Kiln>(Kiln.class, this, CommissionPackage.STUDIO__KILNS, CommissionPackage.KILN__STUDIO);
		}
		return kilns;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<FiringSchedule> getSchedules() {
		if (schedules == null) {
			schedules = new EObjectContainmentWithInverseEList<FiringSchedule>(FiringSchedule.class, this, CommissionPackage.STUDIO__SCHEDULES, CommissionPackage.FIRING_SCHEDULE__STUDIO);
		}
		return schedules;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PriceBook getPriceBook() {
		return priceBook;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetPriceBook(PriceBook newPriceBook, NotificationChain msgs) {
		PriceBook oldPriceBook = priceBook;
		priceBook = newPriceBook;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, CommissionPackage.STUDIO__PRICE_BOOK, oldPriceBook, newPriceBook);
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
	public void setPriceBook(PriceBook newPriceBook) {
		if (newPriceBook != priceBook) {
			NotificationChain msgs = null;
			if (priceBook != null)
				msgs = ((InternalEObject)priceBook).eInverseRemove(this, CommissionPackage.PRICE_BOOK__STUDIO, PriceBook.class, msgs);
			if (newPriceBook != null)
				msgs = ((InternalEObject)newPriceBook).eInverseAdd(this, CommissionPackage.PRICE_BOOK__STUDIO, PriceBook.class, msgs);
			msgs = basicSetPriceBook(newPriceBook, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STUDIO__PRICE_BOOK, newPriceBook, newPriceBook));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Printer> getPrinters() {
		if (printers == null) {
			printers = new EObjectContainmentWithInverseEList<Printer>(Printer.class, this, CommissionPackage.STUDIO__PRINTERS, CommissionPackage.PRINTER__STUDIO);
		}
		return printers;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<SheetStock> getSheetStock() {
		if (sheetStock == null) {
			sheetStock = new EObjectContainmentWithInverseEList<SheetStock>(SheetStock.class, this, CommissionPackage.STUDIO__SHEET_STOCK, CommissionPackage.SHEET_STOCK__STUDIO);
		}
		return sheetStock;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ToneCalibration> getCalibrations() {
		if (calibrations == null) {
			calibrations = new EObjectContainmentWithInverseEList<ToneCalibration>(ToneCalibration.class, this, CommissionPackage.STUDIO__CALIBRATIONS, CommissionPackage.TONE_CALIBRATION__STUDIO);
		}
		return calibrations;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ProcessSetting> getProcesses() {
		if (processes == null) {
			processes = new EObjectContainmentWithInverseEList<ProcessSetting>(ProcessSetting.class, this, CommissionPackage.STUDIO__PROCESSES, CommissionPackage.PROCESS_SETTING__STUDIO);
		}
		return processes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Person> getPeople() {
		if (people == null) {
			people = new EObjectContainmentWithInverseEList<Person>(Person.class, this, CommissionPackage.STUDIO__PEOPLE, CommissionPackage.PERSON__STUDIO);
		}
		return people;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Supplier> getSuppliers() {
		if (suppliers == null) {
			suppliers = new EObjectContainmentWithInverseEList<Supplier>(Supplier.class, this, CommissionPackage.STUDIO__SUPPLIERS, CommissionPackage.SUPPLIER__STUDIO);
		}
		return suppliers;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<JoinedCommission> getCommissions() {
		if (commissions == null) {
			commissions = new EObjectContainmentWithInverseEList<JoinedCommission>(JoinedCommission.class, this, CommissionPackage.STUDIO__COMMISSIONS, CommissionPackage.JOINED_COMMISSION__STUDIO);
		}
		return commissions;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAddress() {
		return address;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAddress(String newAddress) {
		String oldAddress = address;
		address = newAddress;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STUDIO__ADDRESS, oldAddress, address));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getContact() {
		return contact;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setContact(String newContact) {
		String oldContact = contact;
		contact = newContact;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STUDIO__CONTACT, oldContact, contact));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMarkFile() {
		return markFile;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMarkFile(String newMarkFile) {
		String oldMarkFile = markFile;
		markFile = newMarkFile;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STUDIO__MARK_FILE, oldMarkFile, markFile));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAccent() {
		return accent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAccent(String newAccent) {
		String oldAccent = accent;
		accent = newAccent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STUDIO__ACCENT, oldAccent, accent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTerms() {
		return terms;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTerms(String newTerms) {
		String oldTerms = terms;
		terms = newTerms;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.STUDIO__TERMS, oldTerms, terms));
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
			case CommissionPackage.STUDIO__PAPERS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getPapers()).basicAdd(otherEnd, msgs);
			case CommissionPackage.STUDIO__MESHES:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getMeshes()).basicAdd(otherEnd, msgs);
			case CommissionPackage.STUDIO__FRAMES:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getFrames()).basicAdd(otherEnd, msgs);
			case CommissionPackage.STUDIO__PAINTS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getPaints()).basicAdd(otherEnd, msgs);
			case CommissionPackage.STUDIO__MEDIA:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getMedia()).basicAdd(otherEnd, msgs);
			case CommissionPackage.STUDIO__GLASS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getGlass()).basicAdd(otherEnd, msgs);
			case CommissionPackage.STUDIO__JOINS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getJoins()).basicAdd(otherEnd, msgs);
			case CommissionPackage.STUDIO__SOLDERS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getSolders()).basicAdd(otherEnd, msgs);
			case CommissionPackage.STUDIO__BARS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getBars()).basicAdd(otherEnd, msgs);
			case CommissionPackage.STUDIO__KILNS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getKilns()).basicAdd(otherEnd, msgs);
			case CommissionPackage.STUDIO__SCHEDULES:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getSchedules()).basicAdd(otherEnd, msgs);
			case CommissionPackage.STUDIO__PRICE_BOOK:
				if (priceBook != null)
					msgs = ((InternalEObject)priceBook).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - CommissionPackage.STUDIO__PRICE_BOOK, null, msgs);
				return basicSetPriceBook((PriceBook)otherEnd, msgs);
			case CommissionPackage.STUDIO__PRINTERS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getPrinters()).basicAdd(otherEnd, msgs);
			case CommissionPackage.STUDIO__SHEET_STOCK:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getSheetStock()).basicAdd(otherEnd, msgs);
			case CommissionPackage.STUDIO__CALIBRATIONS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getCalibrations()).basicAdd(otherEnd, msgs);
			case CommissionPackage.STUDIO__PROCESSES:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getProcesses()).basicAdd(otherEnd, msgs);
			case CommissionPackage.STUDIO__PEOPLE:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getPeople()).basicAdd(otherEnd, msgs);
			case CommissionPackage.STUDIO__SUPPLIERS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getSuppliers()).basicAdd(otherEnd, msgs);
			case CommissionPackage.STUDIO__COMMISSIONS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getCommissions()).basicAdd(otherEnd, msgs);
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
			case CommissionPackage.STUDIO__PAPERS:
				return ((InternalEList<?>)getPapers()).basicRemove(otherEnd, msgs);
			case CommissionPackage.STUDIO__MESHES:
				return ((InternalEList<?>)getMeshes()).basicRemove(otherEnd, msgs);
			case CommissionPackage.STUDIO__FRAMES:
				return ((InternalEList<?>)getFrames()).basicRemove(otherEnd, msgs);
			case CommissionPackage.STUDIO__PAINTS:
				return ((InternalEList<?>)getPaints()).basicRemove(otherEnd, msgs);
			case CommissionPackage.STUDIO__MEDIA:
				return ((InternalEList<?>)getMedia()).basicRemove(otherEnd, msgs);
			case CommissionPackage.STUDIO__GLASS:
				return ((InternalEList<?>)getGlass()).basicRemove(otherEnd, msgs);
			case CommissionPackage.STUDIO__JOINS:
				return ((InternalEList<?>)getJoins()).basicRemove(otherEnd, msgs);
			case CommissionPackage.STUDIO__SOLDERS:
				return ((InternalEList<?>)getSolders()).basicRemove(otherEnd, msgs);
			case CommissionPackage.STUDIO__BARS:
				return ((InternalEList<?>)getBars()).basicRemove(otherEnd, msgs);
			case CommissionPackage.STUDIO__KILNS:
				return ((InternalEList<?>)getKilns()).basicRemove(otherEnd, msgs);
			case CommissionPackage.STUDIO__SCHEDULES:
				return ((InternalEList<?>)getSchedules()).basicRemove(otherEnd, msgs);
			case CommissionPackage.STUDIO__PRICE_BOOK:
				return basicSetPriceBook(null, msgs);
			case CommissionPackage.STUDIO__PRINTERS:
				return ((InternalEList<?>)getPrinters()).basicRemove(otherEnd, msgs);
			case CommissionPackage.STUDIO__SHEET_STOCK:
				return ((InternalEList<?>)getSheetStock()).basicRemove(otherEnd, msgs);
			case CommissionPackage.STUDIO__CALIBRATIONS:
				return ((InternalEList<?>)getCalibrations()).basicRemove(otherEnd, msgs);
			case CommissionPackage.STUDIO__PROCESSES:
				return ((InternalEList<?>)getProcesses()).basicRemove(otherEnd, msgs);
			case CommissionPackage.STUDIO__PEOPLE:
				return ((InternalEList<?>)getPeople()).basicRemove(otherEnd, msgs);
			case CommissionPackage.STUDIO__SUPPLIERS:
				return ((InternalEList<?>)getSuppliers()).basicRemove(otherEnd, msgs);
			case CommissionPackage.STUDIO__COMMISSIONS:
				return ((InternalEList<?>)getCommissions()).basicRemove(otherEnd, msgs);
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
			case CommissionPackage.STUDIO__FORMAT_VERSION:
				return getFormatVersion();
			case CommissionPackage.STUDIO__UNITS:
				return getUnits();
			case CommissionPackage.STUDIO__CURRENCY:
				return getCurrency();
			case CommissionPackage.STUDIO__PAPERS:
				return getPapers();
			case CommissionPackage.STUDIO__MESHES:
				return getMeshes();
			case CommissionPackage.STUDIO__FRAMES:
				return getFrames();
			case CommissionPackage.STUDIO__PAINTS:
				return getPaints();
			case CommissionPackage.STUDIO__MEDIA:
				return getMedia();
			case CommissionPackage.STUDIO__GLASS:
				return getGlass();
			case CommissionPackage.STUDIO__JOINS:
				return getJoins();
			case CommissionPackage.STUDIO__SOLDERS:
				return getSolders();
			case CommissionPackage.STUDIO__BARS:
				return getBars();
			case CommissionPackage.STUDIO__KILNS:
				return getKilns();
			case CommissionPackage.STUDIO__SCHEDULES:
				return getSchedules();
			case CommissionPackage.STUDIO__PRICE_BOOK:
				return getPriceBook();
			case CommissionPackage.STUDIO__PRINTERS:
				return getPrinters();
			case CommissionPackage.STUDIO__SHEET_STOCK:
				return getSheetStock();
			case CommissionPackage.STUDIO__CALIBRATIONS:
				return getCalibrations();
			case CommissionPackage.STUDIO__PROCESSES:
				return getProcesses();
			case CommissionPackage.STUDIO__PEOPLE:
				return getPeople();
			case CommissionPackage.STUDIO__SUPPLIERS:
				return getSuppliers();
			case CommissionPackage.STUDIO__COMMISSIONS:
				return getCommissions();
			case CommissionPackage.STUDIO__ADDRESS:
				return getAddress();
			case CommissionPackage.STUDIO__CONTACT:
				return getContact();
			case CommissionPackage.STUDIO__MARK_FILE:
				return getMarkFile();
			case CommissionPackage.STUDIO__ACCENT:
				return getAccent();
			case CommissionPackage.STUDIO__TERMS:
				return getTerms();
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
			case CommissionPackage.STUDIO__FORMAT_VERSION:
				setFormatVersion((String)newValue);
				return;
			case CommissionPackage.STUDIO__UNITS:
				setUnits((UnitSystem)newValue);
				return;
			case CommissionPackage.STUDIO__CURRENCY:
				setCurrency((String)newValue);
				return;
			case CommissionPackage.STUDIO__PAPERS:
				getPapers().clear();
				getPapers().addAll((Collection<? extends PaperSize>)newValue);
				return;
			case CommissionPackage.STUDIO__MESHES:
				getMeshes().clear();
				getMeshes().addAll((Collection<? extends Mesh>)newValue);
				return;
			case CommissionPackage.STUDIO__FRAMES:
				getFrames().clear();
				getFrames().addAll((Collection<? extends ScreenFrame>)newValue);
				return;
			case CommissionPackage.STUDIO__PAINTS:
				getPaints().clear();
				getPaints().addAll((Collection<? extends Paint>)newValue);
				return;
			case CommissionPackage.STUDIO__MEDIA:
				getMedia().clear();
				getMedia().addAll((Collection<? extends Medium>)newValue);
				return;
			case CommissionPackage.STUDIO__GLASS:
				getGlass().clear();
				getGlass().addAll((Collection<? extends GlassStock>)newValue);
				return;
			case CommissionPackage.STUDIO__JOINS:
				getJoins().clear();
				getJoins().addAll((Collection<? extends JoinStock>)newValue);
				return;
			case CommissionPackage.STUDIO__SOLDERS:
				getSolders().clear();
				getSolders().addAll((Collection<? extends SolderStock>)newValue);
				return;
			case CommissionPackage.STUDIO__BARS:
				getBars().clear();
				getBars().addAll((Collection<? extends BarStock>)newValue);
				return;
			case CommissionPackage.STUDIO__KILNS:
				getKilns().clear();
				getKilns().addAll((Collection<? extends Kiln>)newValue);
				return;
			case CommissionPackage.STUDIO__SCHEDULES:
				getSchedules().clear();
				getSchedules().addAll((Collection<? extends FiringSchedule>)newValue);
				return;
			case CommissionPackage.STUDIO__PRICE_BOOK:
				setPriceBook((PriceBook)newValue);
				return;
			case CommissionPackage.STUDIO__PRINTERS:
				getPrinters().clear();
				getPrinters().addAll((Collection<? extends Printer>)newValue);
				return;
			case CommissionPackage.STUDIO__SHEET_STOCK:
				getSheetStock().clear();
				getSheetStock().addAll((Collection<? extends SheetStock>)newValue);
				return;
			case CommissionPackage.STUDIO__CALIBRATIONS:
				getCalibrations().clear();
				getCalibrations().addAll((Collection<? extends ToneCalibration>)newValue);
				return;
			case CommissionPackage.STUDIO__PROCESSES:
				getProcesses().clear();
				getProcesses().addAll((Collection<? extends ProcessSetting>)newValue);
				return;
			case CommissionPackage.STUDIO__PEOPLE:
				getPeople().clear();
				getPeople().addAll((Collection<? extends Person>)newValue);
				return;
			case CommissionPackage.STUDIO__SUPPLIERS:
				getSuppliers().clear();
				getSuppliers().addAll((Collection<? extends Supplier>)newValue);
				return;
			case CommissionPackage.STUDIO__COMMISSIONS:
				getCommissions().clear();
				getCommissions().addAll((Collection<? extends JoinedCommission>)newValue);
				return;
			case CommissionPackage.STUDIO__ADDRESS:
				setAddress((String)newValue);
				return;
			case CommissionPackage.STUDIO__CONTACT:
				setContact((String)newValue);
				return;
			case CommissionPackage.STUDIO__MARK_FILE:
				setMarkFile((String)newValue);
				return;
			case CommissionPackage.STUDIO__ACCENT:
				setAccent((String)newValue);
				return;
			case CommissionPackage.STUDIO__TERMS:
				setTerms((String)newValue);
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
			case CommissionPackage.STUDIO__FORMAT_VERSION:
				setFormatVersion(FORMAT_VERSION_EDEFAULT);
				return;
			case CommissionPackage.STUDIO__UNITS:
				setUnits(UNITS_EDEFAULT);
				return;
			case CommissionPackage.STUDIO__CURRENCY:
				setCurrency(CURRENCY_EDEFAULT);
				return;
			case CommissionPackage.STUDIO__PAPERS:
				getPapers().clear();
				return;
			case CommissionPackage.STUDIO__MESHES:
				getMeshes().clear();
				return;
			case CommissionPackage.STUDIO__FRAMES:
				getFrames().clear();
				return;
			case CommissionPackage.STUDIO__PAINTS:
				getPaints().clear();
				return;
			case CommissionPackage.STUDIO__MEDIA:
				getMedia().clear();
				return;
			case CommissionPackage.STUDIO__GLASS:
				getGlass().clear();
				return;
			case CommissionPackage.STUDIO__JOINS:
				getJoins().clear();
				return;
			case CommissionPackage.STUDIO__SOLDERS:
				getSolders().clear();
				return;
			case CommissionPackage.STUDIO__BARS:
				getBars().clear();
				return;
			case CommissionPackage.STUDIO__KILNS:
				getKilns().clear();
				return;
			case CommissionPackage.STUDIO__SCHEDULES:
				getSchedules().clear();
				return;
			case CommissionPackage.STUDIO__PRICE_BOOK:
				setPriceBook((PriceBook)null);
				return;
			case CommissionPackage.STUDIO__PRINTERS:
				getPrinters().clear();
				return;
			case CommissionPackage.STUDIO__SHEET_STOCK:
				getSheetStock().clear();
				return;
			case CommissionPackage.STUDIO__CALIBRATIONS:
				getCalibrations().clear();
				return;
			case CommissionPackage.STUDIO__PROCESSES:
				getProcesses().clear();
				return;
			case CommissionPackage.STUDIO__PEOPLE:
				getPeople().clear();
				return;
			case CommissionPackage.STUDIO__SUPPLIERS:
				getSuppliers().clear();
				return;
			case CommissionPackage.STUDIO__COMMISSIONS:
				getCommissions().clear();
				return;
			case CommissionPackage.STUDIO__ADDRESS:
				setAddress(ADDRESS_EDEFAULT);
				return;
			case CommissionPackage.STUDIO__CONTACT:
				setContact(CONTACT_EDEFAULT);
				return;
			case CommissionPackage.STUDIO__MARK_FILE:
				setMarkFile(MARK_FILE_EDEFAULT);
				return;
			case CommissionPackage.STUDIO__ACCENT:
				setAccent(ACCENT_EDEFAULT);
				return;
			case CommissionPackage.STUDIO__TERMS:
				setTerms(TERMS_EDEFAULT);
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
			case CommissionPackage.STUDIO__FORMAT_VERSION:
				return FORMAT_VERSION_EDEFAULT == null ? formatVersion != null : !FORMAT_VERSION_EDEFAULT.equals(formatVersion);
			case CommissionPackage.STUDIO__UNITS:
				return units != UNITS_EDEFAULT;
			case CommissionPackage.STUDIO__CURRENCY:
				return CURRENCY_EDEFAULT == null ? currency != null : !CURRENCY_EDEFAULT.equals(currency);
			case CommissionPackage.STUDIO__PAPERS:
				return papers != null && !papers.isEmpty();
			case CommissionPackage.STUDIO__MESHES:
				return meshes != null && !meshes.isEmpty();
			case CommissionPackage.STUDIO__FRAMES:
				return frames != null && !frames.isEmpty();
			case CommissionPackage.STUDIO__PAINTS:
				return paints != null && !paints.isEmpty();
			case CommissionPackage.STUDIO__MEDIA:
				return media != null && !media.isEmpty();
			case CommissionPackage.STUDIO__GLASS:
				return glass != null && !glass.isEmpty();
			case CommissionPackage.STUDIO__JOINS:
				return joins != null && !joins.isEmpty();
			case CommissionPackage.STUDIO__SOLDERS:
				return solders != null && !solders.isEmpty();
			case CommissionPackage.STUDIO__BARS:
				return bars != null && !bars.isEmpty();
			case CommissionPackage.STUDIO__KILNS:
				return kilns != null && !kilns.isEmpty();
			case CommissionPackage.STUDIO__SCHEDULES:
				return schedules != null && !schedules.isEmpty();
			case CommissionPackage.STUDIO__PRICE_BOOK:
				return priceBook != null;
			case CommissionPackage.STUDIO__PRINTERS:
				return printers != null && !printers.isEmpty();
			case CommissionPackage.STUDIO__SHEET_STOCK:
				return sheetStock != null && !sheetStock.isEmpty();
			case CommissionPackage.STUDIO__CALIBRATIONS:
				return calibrations != null && !calibrations.isEmpty();
			case CommissionPackage.STUDIO__PROCESSES:
				return processes != null && !processes.isEmpty();
			case CommissionPackage.STUDIO__PEOPLE:
				return people != null && !people.isEmpty();
			case CommissionPackage.STUDIO__SUPPLIERS:
				return suppliers != null && !suppliers.isEmpty();
			case CommissionPackage.STUDIO__COMMISSIONS:
				return commissions != null && !commissions.isEmpty();
			case CommissionPackage.STUDIO__ADDRESS:
				return ADDRESS_EDEFAULT == null ? address != null : !ADDRESS_EDEFAULT.equals(address);
			case CommissionPackage.STUDIO__CONTACT:
				return CONTACT_EDEFAULT == null ? contact != null : !CONTACT_EDEFAULT.equals(contact);
			case CommissionPackage.STUDIO__MARK_FILE:
				return MARK_FILE_EDEFAULT == null ? markFile != null : !MARK_FILE_EDEFAULT.equals(markFile);
			case CommissionPackage.STUDIO__ACCENT:
				return ACCENT_EDEFAULT == null ? accent != null : !ACCENT_EDEFAULT.equals(accent);
			case CommissionPackage.STUDIO__TERMS:
				return TERMS_EDEFAULT == null ? terms != null : !TERMS_EDEFAULT.equals(terms);
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
		result.append(", units: ");
		result.append(units);
		result.append(", currency: ");
		result.append(currency);
		result.append(", address: ");
		result.append(address);
		result.append(", contact: ");
		result.append(contact);
		result.append(", markFile: ");
		result.append(markFile);
		result.append(", accent: ");
		result.append(accent);
		result.append(", terms: ");
		result.append(terms);
		result.append(')');
		return result.toString();
	}

} //StudioImpl
