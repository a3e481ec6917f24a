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

import org.eclipse.emf.ecore.util.EObjectWithInverseResolvingEList;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.InternalEList;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.Mesh;
import saddlebar.model.commission.ScreenFrame;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.ToneCalibration;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Mesh</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.MeshImpl#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MeshImpl#getThreadsPerInch <em>Threads Per Inch</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MeshImpl#getThreadUm <em>Thread Um</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MeshImpl#getSource <em>Source</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MeshImpl#getFrames <em>Frames</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MeshImpl#getCalibrations <em>Calibrations</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MeshImpl extends NamedImpl implements Mesh {
	/**
	 * The default value of the '{@link #getThreadsPerInch() <em>Threads Per Inch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThreadsPerInch()
	 * @generated
	 * @ordered
	 */
	protected static final double THREADS_PER_INCH_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getThreadsPerInch() <em>Threads Per Inch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThreadsPerInch()
	 * @generated
	 * @ordered
	 */
	protected double threadsPerInch = THREADS_PER_INCH_EDEFAULT;

	/**
	 * The default value of the '{@link #getThreadUm() <em>Thread Um</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThreadUm()
	 * @generated
	 * @ordered
	 */
	protected static final double THREAD_UM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getThreadUm() <em>Thread Um</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThreadUm()
	 * @generated
	 * @ordered
	 */
	protected double threadUm = THREAD_UM_EDEFAULT;

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
	 * The cached value of the '{@link #getFrames() <em>Frames</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFrames()
	 * @generated
	 * @ordered
	 */
	protected EList<ScreenFrame> frames;

	/**
	 * The cached value of the '{@link #getCalibrations() <em>Calibrations</em>}' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCalibrations()
	 * @generated
	 * @ordered
	 */
	protected EList<ToneCalibration> calibrations;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MeshImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.MESH;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Studio getStudio() {
		if (eContainerFeatureID() != CommissionPackage.MESH__STUDIO) return null;
		return (Studio)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetStudio(Studio newStudio, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newStudio, CommissionPackage.MESH__STUDIO, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStudio(Studio newStudio) {
		if (newStudio != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.MESH__STUDIO && newStudio != null)) {
			if (EcoreUtil.isAncestor(this, newStudio))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newStudio != null)
				msgs = ((InternalEObject)newStudio).eInverseAdd(this, CommissionPackage.STUDIO__MESHES, Studio.class, msgs);
			msgs = basicSetStudio(newStudio, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MESH__STUDIO, newStudio, newStudio));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getThreadsPerInch() {
		return threadsPerInch;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setThreadsPerInch(double newThreadsPerInch) {
		double oldThreadsPerInch = threadsPerInch;
		threadsPerInch = newThreadsPerInch;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MESH__THREADS_PER_INCH, oldThreadsPerInch, threadsPerInch));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getThreadUm() {
		return threadUm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setThreadUm(double newThreadUm) {
		double oldThreadUm = threadUm;
		threadUm = newThreadUm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MESH__THREAD_UM, oldThreadUm, threadUm));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MESH__SOURCE, oldSource, source));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ScreenFrame> getFrames() {
		if (frames == null) {
			frames = new EObjectWithInverseResolvingEList<ScreenFrame>(ScreenFrame.class, this, CommissionPackage.MESH__FRAMES, CommissionPackage.SCREEN_FRAME__MESH);
		}
		return frames;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ToneCalibration> getCalibrations() {
		if (calibrations == null) {
			calibrations = new EObjectWithInverseResolvingEList<ToneCalibration>(ToneCalibration.class, this, CommissionPackage.MESH__CALIBRATIONS, CommissionPackage.TONE_CALIBRATION__MESH);
		}
		return calibrations;
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
			case CommissionPackage.MESH__STUDIO:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetStudio((Studio)otherEnd, msgs);
			case CommissionPackage.MESH__FRAMES:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getFrames()).basicAdd(otherEnd, msgs);
			case CommissionPackage.MESH__CALIBRATIONS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getCalibrations()).basicAdd(otherEnd, msgs);
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
			case CommissionPackage.MESH__STUDIO:
				return basicSetStudio(null, msgs);
			case CommissionPackage.MESH__FRAMES:
				return ((InternalEList<?>)getFrames()).basicRemove(otherEnd, msgs);
			case CommissionPackage.MESH__CALIBRATIONS:
				return ((InternalEList<?>)getCalibrations()).basicRemove(otherEnd, msgs);
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
			case CommissionPackage.MESH__STUDIO:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.STUDIO__MESHES, Studio.class, msgs);
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
			case CommissionPackage.MESH__STUDIO:
				return getStudio();
			case CommissionPackage.MESH__THREADS_PER_INCH:
				return getThreadsPerInch();
			case CommissionPackage.MESH__THREAD_UM:
				return getThreadUm();
			case CommissionPackage.MESH__SOURCE:
				return getSource();
			case CommissionPackage.MESH__FRAMES:
				return getFrames();
			case CommissionPackage.MESH__CALIBRATIONS:
				return getCalibrations();
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
			case CommissionPackage.MESH__STUDIO:
				setStudio((Studio)newValue);
				return;
			case CommissionPackage.MESH__THREADS_PER_INCH:
				setThreadsPerInch((Double)newValue);
				return;
			case CommissionPackage.MESH__THREAD_UM:
				setThreadUm((Double)newValue);
				return;
			case CommissionPackage.MESH__SOURCE:
				setSource((String)newValue);
				return;
			case CommissionPackage.MESH__FRAMES:
				getFrames().clear();
				getFrames().addAll((Collection<? extends ScreenFrame>)newValue);
				return;
			case CommissionPackage.MESH__CALIBRATIONS:
				getCalibrations().clear();
				getCalibrations().addAll((Collection<? extends ToneCalibration>)newValue);
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
			case CommissionPackage.MESH__STUDIO:
				setStudio((Studio)null);
				return;
			case CommissionPackage.MESH__THREADS_PER_INCH:
				setThreadsPerInch(THREADS_PER_INCH_EDEFAULT);
				return;
			case CommissionPackage.MESH__THREAD_UM:
				setThreadUm(THREAD_UM_EDEFAULT);
				return;
			case CommissionPackage.MESH__SOURCE:
				setSource(SOURCE_EDEFAULT);
				return;
			case CommissionPackage.MESH__FRAMES:
				getFrames().clear();
				return;
			case CommissionPackage.MESH__CALIBRATIONS:
				getCalibrations().clear();
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
			case CommissionPackage.MESH__STUDIO:
				return getStudio() != null;
			case CommissionPackage.MESH__THREADS_PER_INCH:
				return threadsPerInch != THREADS_PER_INCH_EDEFAULT;
			case CommissionPackage.MESH__THREAD_UM:
				return threadUm != THREAD_UM_EDEFAULT;
			case CommissionPackage.MESH__SOURCE:
				return SOURCE_EDEFAULT == null ? source != null : !SOURCE_EDEFAULT.equals(source);
			case CommissionPackage.MESH__FRAMES:
				return frames != null && !frames.isEmpty();
			case CommissionPackage.MESH__CALIBRATIONS:
				return calibrations != null && !calibrations.isEmpty();
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
		result.append(" (threadsPerInch: ");
		result.append(threadsPerInch);
		result.append(", threadUm: ");
		result.append(threadUm);
		result.append(", source: ");
		result.append(source);
		result.append(')');
		return result.toString();
	}

} //MeshImpl
