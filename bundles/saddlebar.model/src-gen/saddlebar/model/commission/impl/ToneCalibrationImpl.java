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

import org.eclipse.emf.ecore.util.EObjectContainmentWithInverseEList;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.InternalEList;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.Mesh;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.Printer;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.ToneCalibration;
import saddlebar.model.commission.TonePoint;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Tone Calibration</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.ToneCalibrationImpl#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ToneCalibrationImpl#getMesh <em>Mesh</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ToneCalibrationImpl#getPaint <em>Paint</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ToneCalibrationImpl#getPrinter <em>Printer</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ToneCalibrationImpl#getMethod <em>Method</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ToneCalibrationImpl#getProcessKey <em>Process Key</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ToneCalibrationImpl#getLpi <em>Lpi</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ToneCalibrationImpl#getDotMm <em>Dot Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ToneCalibrationImpl#getMeasured <em>Measured</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ToneCalibrationImpl#getReadingsFile <em>Readings File</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ToneCalibrationImpl#getPoints <em>Points</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ToneCalibrationImpl#getSupersededBy <em>Superseded By</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ToneCalibrationImpl#getYuleNielsen <em>Yule Nielsen</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ToneCalibrationImpl extends NamedImpl implements ToneCalibration {
	/**
	 * The cached value of the '{@link #getMesh() <em>Mesh</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMesh()
	 * @generated
	 * @ordered
	 */
	protected Mesh mesh;

	/**
	 * The cached value of the '{@link #getPaint() <em>Paint</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPaint()
	 * @generated
	 * @ordered
	 */
	protected Paint paint;

	/**
	 * The cached value of the '{@link #getPrinter() <em>Printer</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrinter()
	 * @generated
	 * @ordered
	 */
	protected Printer printer;

	/**
	 * The default value of the '{@link #getMethod() <em>Method</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMethod()
	 * @generated
	 * @ordered
	 */
	protected static final String METHOD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMethod() <em>Method</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMethod()
	 * @generated
	 * @ordered
	 */
	protected String method = METHOD_EDEFAULT;

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
	 * The default value of the '{@link #getLpi() <em>Lpi</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLpi()
	 * @generated
	 * @ordered
	 */
	protected static final Double LPI_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLpi() <em>Lpi</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLpi()
	 * @generated
	 * @ordered
	 */
	protected Double lpi = LPI_EDEFAULT;

	/**
	 * The default value of the '{@link #getDotMm() <em>Dot Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDotMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double DOT_MM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDotMm() <em>Dot Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDotMm()
	 * @generated
	 * @ordered
	 */
	protected Double dotMm = DOT_MM_EDEFAULT;

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
	 * The default value of the '{@link #getReadingsFile() <em>Readings File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReadingsFile()
	 * @generated
	 * @ordered
	 */
	protected static final String READINGS_FILE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getReadingsFile() <em>Readings File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReadingsFile()
	 * @generated
	 * @ordered
	 */
	protected String readingsFile = READINGS_FILE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPoints() <em>Points</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPoints()
	 * @generated
	 * @ordered
	 */
	protected EList<TonePoint> points;

	/**
	 * The cached value of the '{@link #getSupersededBy() <em>Superseded By</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupersededBy()
	 * @generated
	 * @ordered
	 */
	protected ToneCalibration supersededBy;

	/**
	 * The default value of the '{@link #getYuleNielsen() <em>Yule Nielsen</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getYuleNielsen()
	 * @generated
	 * @ordered
	 */
	protected static final double YULE_NIELSEN_EDEFAULT = 1.0;

	/**
	 * The cached value of the '{@link #getYuleNielsen() <em>Yule Nielsen</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getYuleNielsen()
	 * @generated
	 * @ordered
	 */
	protected double yuleNielsen = YULE_NIELSEN_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ToneCalibrationImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.TONE_CALIBRATION;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Studio getStudio() {
		if (eContainerFeatureID() != CommissionPackage.TONE_CALIBRATION__STUDIO) return null;
		return (Studio)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetStudio(Studio newStudio, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newStudio, CommissionPackage.TONE_CALIBRATION__STUDIO, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStudio(Studio newStudio) {
		if (newStudio != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.TONE_CALIBRATION__STUDIO && newStudio != null)) {
			if (EcoreUtil.isAncestor(this, newStudio))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newStudio != null)
				msgs = ((InternalEObject)newStudio).eInverseAdd(this, CommissionPackage.STUDIO__CALIBRATIONS, Studio.class, msgs);
			msgs = basicSetStudio(newStudio, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.TONE_CALIBRATION__STUDIO, newStudio, newStudio));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Mesh getMesh() {
		if (mesh != null && mesh.eIsProxy()) {
			InternalEObject oldMesh = (InternalEObject)mesh;
			mesh = (Mesh)eResolveProxy(oldMesh);
			if (mesh != oldMesh) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.TONE_CALIBRATION__MESH, oldMesh, mesh));
			}
		}
		return mesh;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Mesh basicGetMesh() {
		return mesh;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetMesh(Mesh newMesh, NotificationChain msgs) {
		Mesh oldMesh = mesh;
		mesh = newMesh;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, CommissionPackage.TONE_CALIBRATION__MESH, oldMesh, newMesh);
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
	public void setMesh(Mesh newMesh) {
		if (newMesh != mesh) {
			NotificationChain msgs = null;
			if (mesh != null)
				msgs = ((InternalEObject)mesh).eInverseRemove(this, CommissionPackage.MESH__CALIBRATIONS, Mesh.class, msgs);
			if (newMesh != null)
				msgs = ((InternalEObject)newMesh).eInverseAdd(this, CommissionPackage.MESH__CALIBRATIONS, Mesh.class, msgs);
			msgs = basicSetMesh(newMesh, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.TONE_CALIBRATION__MESH, newMesh, newMesh));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Paint getPaint() {
		if (paint != null && paint.eIsProxy()) {
			InternalEObject oldPaint = (InternalEObject)paint;
			paint = (Paint)eResolveProxy(oldPaint);
			if (paint != oldPaint) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.TONE_CALIBRATION__PAINT, oldPaint, paint));
			}
		}
		return paint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Paint basicGetPaint() {
		return paint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPaint(Paint newPaint) {
		Paint oldPaint = paint;
		paint = newPaint;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.TONE_CALIBRATION__PAINT, oldPaint, paint));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Printer getPrinter() {
		if (printer != null && printer.eIsProxy()) {
			InternalEObject oldPrinter = (InternalEObject)printer;
			printer = (Printer)eResolveProxy(oldPrinter);
			if (printer != oldPrinter) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.TONE_CALIBRATION__PRINTER, oldPrinter, printer));
			}
		}
		return printer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Printer basicGetPrinter() {
		return printer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPrinter(Printer newPrinter) {
		Printer oldPrinter = printer;
		printer = newPrinter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.TONE_CALIBRATION__PRINTER, oldPrinter, printer));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMethod() {
		return method;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMethod(String newMethod) {
		String oldMethod = method;
		method = newMethod;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.TONE_CALIBRATION__METHOD, oldMethod, method));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.TONE_CALIBRATION__PROCESS_KEY, oldProcessKey, processKey));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getLpi() {
		return lpi;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLpi(Double newLpi) {
		Double oldLpi = lpi;
		lpi = newLpi;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.TONE_CALIBRATION__LPI, oldLpi, lpi));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDotMm() {
		return dotMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDotMm(Double newDotMm) {
		Double oldDotMm = dotMm;
		dotMm = newDotMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.TONE_CALIBRATION__DOT_MM, oldDotMm, dotMm));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.TONE_CALIBRATION__MEASURED, oldMeasured, measured));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getReadingsFile() {
		return readingsFile;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReadingsFile(String newReadingsFile) {
		String oldReadingsFile = readingsFile;
		readingsFile = newReadingsFile;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.TONE_CALIBRATION__READINGS_FILE, oldReadingsFile, readingsFile));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<TonePoint> getPoints() {
		if (points == null) {
			points = new EObjectContainmentWithInverseEList<TonePoint>(TonePoint.class, this, CommissionPackage.TONE_CALIBRATION__POINTS, CommissionPackage.TONE_POINT__CALIBRATION);
		}
		return points;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ToneCalibration getSupersededBy() {
		if (supersededBy != null && supersededBy.eIsProxy()) {
			InternalEObject oldSupersededBy = (InternalEObject)supersededBy;
			supersededBy = (ToneCalibration)eResolveProxy(oldSupersededBy);
			if (supersededBy != oldSupersededBy) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.TONE_CALIBRATION__SUPERSEDED_BY, oldSupersededBy, supersededBy));
			}
		}
		return supersededBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ToneCalibration basicGetSupersededBy() {
		return supersededBy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSupersededBy(ToneCalibration newSupersededBy) {
		ToneCalibration oldSupersededBy = supersededBy;
		supersededBy = newSupersededBy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.TONE_CALIBRATION__SUPERSEDED_BY, oldSupersededBy, supersededBy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getYuleNielsen() {
		return yuleNielsen;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setYuleNielsen(double newYuleNielsen) {
		double oldYuleNielsen = yuleNielsen;
		yuleNielsen = newYuleNielsen;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.TONE_CALIBRATION__YULE_NIELSEN, oldYuleNielsen, yuleNielsen));
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
			case CommissionPackage.TONE_CALIBRATION__STUDIO:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetStudio((Studio)otherEnd, msgs);
			case CommissionPackage.TONE_CALIBRATION__MESH:
				if (mesh != null)
					msgs = ((InternalEObject)mesh).eInverseRemove(this, CommissionPackage.MESH__CALIBRATIONS, Mesh.class, msgs);
				return basicSetMesh((Mesh)otherEnd, msgs);
			case CommissionPackage.TONE_CALIBRATION__POINTS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getPoints()).basicAdd(otherEnd, msgs);
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
			case CommissionPackage.TONE_CALIBRATION__STUDIO:
				return basicSetStudio(null, msgs);
			case CommissionPackage.TONE_CALIBRATION__MESH:
				return basicSetMesh(null, msgs);
			case CommissionPackage.TONE_CALIBRATION__POINTS:
				return ((InternalEList<?>)getPoints()).basicRemove(otherEnd, msgs);
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
			case CommissionPackage.TONE_CALIBRATION__STUDIO:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.STUDIO__CALIBRATIONS, Studio.class, msgs);
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
			case CommissionPackage.TONE_CALIBRATION__STUDIO:
				return getStudio();
			case CommissionPackage.TONE_CALIBRATION__MESH:
				if (resolve) return getMesh();
				return basicGetMesh();
			case CommissionPackage.TONE_CALIBRATION__PAINT:
				if (resolve) return getPaint();
				return basicGetPaint();
			case CommissionPackage.TONE_CALIBRATION__PRINTER:
				if (resolve) return getPrinter();
				return basicGetPrinter();
			case CommissionPackage.TONE_CALIBRATION__METHOD:
				return getMethod();
			case CommissionPackage.TONE_CALIBRATION__PROCESS_KEY:
				return getProcessKey();
			case CommissionPackage.TONE_CALIBRATION__LPI:
				return getLpi();
			case CommissionPackage.TONE_CALIBRATION__DOT_MM:
				return getDotMm();
			case CommissionPackage.TONE_CALIBRATION__MEASURED:
				return getMeasured();
			case CommissionPackage.TONE_CALIBRATION__READINGS_FILE:
				return getReadingsFile();
			case CommissionPackage.TONE_CALIBRATION__POINTS:
				return getPoints();
			case CommissionPackage.TONE_CALIBRATION__SUPERSEDED_BY:
				if (resolve) return getSupersededBy();
				return basicGetSupersededBy();
			case CommissionPackage.TONE_CALIBRATION__YULE_NIELSEN:
				return getYuleNielsen();
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
			case CommissionPackage.TONE_CALIBRATION__STUDIO:
				setStudio((Studio)newValue);
				return;
			case CommissionPackage.TONE_CALIBRATION__MESH:
				setMesh((Mesh)newValue);
				return;
			case CommissionPackage.TONE_CALIBRATION__PAINT:
				setPaint((Paint)newValue);
				return;
			case CommissionPackage.TONE_CALIBRATION__PRINTER:
				setPrinter((Printer)newValue);
				return;
			case CommissionPackage.TONE_CALIBRATION__METHOD:
				setMethod((String)newValue);
				return;
			case CommissionPackage.TONE_CALIBRATION__PROCESS_KEY:
				setProcessKey((String)newValue);
				return;
			case CommissionPackage.TONE_CALIBRATION__LPI:
				setLpi((Double)newValue);
				return;
			case CommissionPackage.TONE_CALIBRATION__DOT_MM:
				setDotMm((Double)newValue);
				return;
			case CommissionPackage.TONE_CALIBRATION__MEASURED:
				setMeasured((LocalDate)newValue);
				return;
			case CommissionPackage.TONE_CALIBRATION__READINGS_FILE:
				setReadingsFile((String)newValue);
				return;
			case CommissionPackage.TONE_CALIBRATION__POINTS:
				getPoints().clear();
				getPoints().addAll((Collection<? extends TonePoint>)newValue);
				return;
			case CommissionPackage.TONE_CALIBRATION__SUPERSEDED_BY:
				setSupersededBy((ToneCalibration)newValue);
				return;
			case CommissionPackage.TONE_CALIBRATION__YULE_NIELSEN:
				setYuleNielsen((Double)newValue);
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
			case CommissionPackage.TONE_CALIBRATION__STUDIO:
				setStudio((Studio)null);
				return;
			case CommissionPackage.TONE_CALIBRATION__MESH:
				setMesh((Mesh)null);
				return;
			case CommissionPackage.TONE_CALIBRATION__PAINT:
				setPaint((Paint)null);
				return;
			case CommissionPackage.TONE_CALIBRATION__PRINTER:
				setPrinter((Printer)null);
				return;
			case CommissionPackage.TONE_CALIBRATION__METHOD:
				setMethod(METHOD_EDEFAULT);
				return;
			case CommissionPackage.TONE_CALIBRATION__PROCESS_KEY:
				setProcessKey(PROCESS_KEY_EDEFAULT);
				return;
			case CommissionPackage.TONE_CALIBRATION__LPI:
				setLpi(LPI_EDEFAULT);
				return;
			case CommissionPackage.TONE_CALIBRATION__DOT_MM:
				setDotMm(DOT_MM_EDEFAULT);
				return;
			case CommissionPackage.TONE_CALIBRATION__MEASURED:
				setMeasured(MEASURED_EDEFAULT);
				return;
			case CommissionPackage.TONE_CALIBRATION__READINGS_FILE:
				setReadingsFile(READINGS_FILE_EDEFAULT);
				return;
			case CommissionPackage.TONE_CALIBRATION__POINTS:
				getPoints().clear();
				return;
			case CommissionPackage.TONE_CALIBRATION__SUPERSEDED_BY:
				setSupersededBy((ToneCalibration)null);
				return;
			case CommissionPackage.TONE_CALIBRATION__YULE_NIELSEN:
				setYuleNielsen(YULE_NIELSEN_EDEFAULT);
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
			case CommissionPackage.TONE_CALIBRATION__STUDIO:
				return getStudio() != null;
			case CommissionPackage.TONE_CALIBRATION__MESH:
				return mesh != null;
			case CommissionPackage.TONE_CALIBRATION__PAINT:
				return paint != null;
			case CommissionPackage.TONE_CALIBRATION__PRINTER:
				return printer != null;
			case CommissionPackage.TONE_CALIBRATION__METHOD:
				return METHOD_EDEFAULT == null ? method != null : !METHOD_EDEFAULT.equals(method);
			case CommissionPackage.TONE_CALIBRATION__PROCESS_KEY:
				return PROCESS_KEY_EDEFAULT == null ? processKey != null : !PROCESS_KEY_EDEFAULT.equals(processKey);
			case CommissionPackage.TONE_CALIBRATION__LPI:
				return LPI_EDEFAULT == null ? lpi != null : !LPI_EDEFAULT.equals(lpi);
			case CommissionPackage.TONE_CALIBRATION__DOT_MM:
				return DOT_MM_EDEFAULT == null ? dotMm != null : !DOT_MM_EDEFAULT.equals(dotMm);
			case CommissionPackage.TONE_CALIBRATION__MEASURED:
				return MEASURED_EDEFAULT == null ? measured != null : !MEASURED_EDEFAULT.equals(measured);
			case CommissionPackage.TONE_CALIBRATION__READINGS_FILE:
				return READINGS_FILE_EDEFAULT == null ? readingsFile != null : !READINGS_FILE_EDEFAULT.equals(readingsFile);
			case CommissionPackage.TONE_CALIBRATION__POINTS:
				return points != null && !points.isEmpty();
			case CommissionPackage.TONE_CALIBRATION__SUPERSEDED_BY:
				return supersededBy != null;
			case CommissionPackage.TONE_CALIBRATION__YULE_NIELSEN:
				return yuleNielsen != YULE_NIELSEN_EDEFAULT;
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
		result.append(" (method: ");
		result.append(method);
		result.append(", processKey: ");
		result.append(processKey);
		result.append(", lpi: ");
		result.append(lpi);
		result.append(", dotMm: ");
		result.append(dotMm);
		result.append(", measured: ");
		result.append(measured);
		result.append(", readingsFile: ");
		result.append(readingsFile);
		result.append(", yuleNielsen: ");
		result.append(yuleNielsen);
		result.append(')');
		return result.toString();
	}

} //ToneCalibrationImpl
