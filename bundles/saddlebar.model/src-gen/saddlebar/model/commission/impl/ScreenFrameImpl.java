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
import saddlebar.model.commission.Mesh;
import saddlebar.model.commission.ScreenFrame;
import saddlebar.model.commission.Studio;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Screen Frame</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.ScreenFrameImpl#getStudio <em>Studio</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ScreenFrameImpl#getMesh <em>Mesh</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ScreenFrameImpl#getImageWidthMm <em>Image Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ScreenFrameImpl#getImageHeightMm <em>Image Height Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ScreenFrameImpl#getSqueegeeMarginMm <em>Squeegee Margin Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ScreenFrameImpl#getMeshTurnDeg <em>Mesh Turn Deg</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ScreenFrameImpl#isOutOfUse <em>Out Of Use</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ScreenFrameImpl extends NamedImpl implements ScreenFrame {
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
	 * The default value of the '{@link #getImageWidthMm() <em>Image Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getImageWidthMm()
	 * @generated
	 * @ordered
	 */
	protected static final double IMAGE_WIDTH_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getImageWidthMm() <em>Image Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getImageWidthMm()
	 * @generated
	 * @ordered
	 */
	protected double imageWidthMm = IMAGE_WIDTH_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getImageHeightMm() <em>Image Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getImageHeightMm()
	 * @generated
	 * @ordered
	 */
	protected static final double IMAGE_HEIGHT_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getImageHeightMm() <em>Image Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getImageHeightMm()
	 * @generated
	 * @ordered
	 */
	protected double imageHeightMm = IMAGE_HEIGHT_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getSqueegeeMarginMm() <em>Squeegee Margin Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSqueegeeMarginMm()
	 * @generated
	 * @ordered
	 */
	protected static final double SQUEEGEE_MARGIN_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getSqueegeeMarginMm() <em>Squeegee Margin Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSqueegeeMarginMm()
	 * @generated
	 * @ordered
	 */
	protected double squeegeeMarginMm = SQUEEGEE_MARGIN_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getMeshTurnDeg() <em>Mesh Turn Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeshTurnDeg()
	 * @generated
	 * @ordered
	 */
	protected static final double MESH_TURN_DEG_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getMeshTurnDeg() <em>Mesh Turn Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeshTurnDeg()
	 * @generated
	 * @ordered
	 */
	protected double meshTurnDeg = MESH_TURN_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #isOutOfUse() <em>Out Of Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isOutOfUse()
	 * @generated
	 * @ordered
	 */
	protected static final boolean OUT_OF_USE_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isOutOfUse() <em>Out Of Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isOutOfUse()
	 * @generated
	 * @ordered
	 */
	protected boolean outOfUse = OUT_OF_USE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ScreenFrameImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.SCREEN_FRAME;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Studio getStudio() {
		if (eContainerFeatureID() != CommissionPackage.SCREEN_FRAME__STUDIO) return null;
		return (Studio)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetStudio(Studio newStudio, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newStudio, CommissionPackage.SCREEN_FRAME__STUDIO, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStudio(Studio newStudio) {
		if (newStudio != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.SCREEN_FRAME__STUDIO && newStudio != null)) {
			if (EcoreUtil.isAncestor(this, newStudio))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newStudio != null)
				msgs = ((InternalEObject)newStudio).eInverseAdd(this, CommissionPackage.STUDIO__FRAMES, Studio.class, msgs);
			msgs = basicSetStudio(newStudio, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SCREEN_FRAME__STUDIO, newStudio, newStudio));
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
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.SCREEN_FRAME__MESH, oldMesh, mesh));
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
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, CommissionPackage.SCREEN_FRAME__MESH, oldMesh, newMesh);
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
				msgs = ((InternalEObject)mesh).eInverseRemove(this, CommissionPackage.MESH__FRAMES, Mesh.class, msgs);
			if (newMesh != null)
				msgs = ((InternalEObject)newMesh).eInverseAdd(this, CommissionPackage.MESH__FRAMES, Mesh.class, msgs);
			msgs = basicSetMesh(newMesh, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SCREEN_FRAME__MESH, newMesh, newMesh));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getImageWidthMm() {
		return imageWidthMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setImageWidthMm(double newImageWidthMm) {
		double oldImageWidthMm = imageWidthMm;
		imageWidthMm = newImageWidthMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SCREEN_FRAME__IMAGE_WIDTH_MM, oldImageWidthMm, imageWidthMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getImageHeightMm() {
		return imageHeightMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setImageHeightMm(double newImageHeightMm) {
		double oldImageHeightMm = imageHeightMm;
		imageHeightMm = newImageHeightMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SCREEN_FRAME__IMAGE_HEIGHT_MM, oldImageHeightMm, imageHeightMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getSqueegeeMarginMm() {
		return squeegeeMarginMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSqueegeeMarginMm(double newSqueegeeMarginMm) {
		double oldSqueegeeMarginMm = squeegeeMarginMm;
		squeegeeMarginMm = newSqueegeeMarginMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SCREEN_FRAME__SQUEEGEE_MARGIN_MM, oldSqueegeeMarginMm, squeegeeMarginMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getMeshTurnDeg() {
		return meshTurnDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMeshTurnDeg(double newMeshTurnDeg) {
		double oldMeshTurnDeg = meshTurnDeg;
		meshTurnDeg = newMeshTurnDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SCREEN_FRAME__MESH_TURN_DEG, oldMeshTurnDeg, meshTurnDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isOutOfUse() {
		return outOfUse;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOutOfUse(boolean newOutOfUse) {
		boolean oldOutOfUse = outOfUse;
		outOfUse = newOutOfUse;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SCREEN_FRAME__OUT_OF_USE, oldOutOfUse, outOfUse));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseAdd(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.SCREEN_FRAME__STUDIO:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetStudio((Studio)otherEnd, msgs);
			case CommissionPackage.SCREEN_FRAME__MESH:
				if (mesh != null)
					msgs = ((InternalEObject)mesh).eInverseRemove(this, CommissionPackage.MESH__FRAMES, Mesh.class, msgs);
				return basicSetMesh((Mesh)otherEnd, msgs);
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
			case CommissionPackage.SCREEN_FRAME__STUDIO:
				return basicSetStudio(null, msgs);
			case CommissionPackage.SCREEN_FRAME__MESH:
				return basicSetMesh(null, msgs);
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
			case CommissionPackage.SCREEN_FRAME__STUDIO:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.STUDIO__FRAMES, Studio.class, msgs);
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
			case CommissionPackage.SCREEN_FRAME__STUDIO:
				return getStudio();
			case CommissionPackage.SCREEN_FRAME__MESH:
				if (resolve) return getMesh();
				return basicGetMesh();
			case CommissionPackage.SCREEN_FRAME__IMAGE_WIDTH_MM:
				return getImageWidthMm();
			case CommissionPackage.SCREEN_FRAME__IMAGE_HEIGHT_MM:
				return getImageHeightMm();
			case CommissionPackage.SCREEN_FRAME__SQUEEGEE_MARGIN_MM:
				return getSqueegeeMarginMm();
			case CommissionPackage.SCREEN_FRAME__MESH_TURN_DEG:
				return getMeshTurnDeg();
			case CommissionPackage.SCREEN_FRAME__OUT_OF_USE:
				return isOutOfUse();
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
			case CommissionPackage.SCREEN_FRAME__STUDIO:
				setStudio((Studio)newValue);
				return;
			case CommissionPackage.SCREEN_FRAME__MESH:
				setMesh((Mesh)newValue);
				return;
			case CommissionPackage.SCREEN_FRAME__IMAGE_WIDTH_MM:
				setImageWidthMm((Double)newValue);
				return;
			case CommissionPackage.SCREEN_FRAME__IMAGE_HEIGHT_MM:
				setImageHeightMm((Double)newValue);
				return;
			case CommissionPackage.SCREEN_FRAME__SQUEEGEE_MARGIN_MM:
				setSqueegeeMarginMm((Double)newValue);
				return;
			case CommissionPackage.SCREEN_FRAME__MESH_TURN_DEG:
				setMeshTurnDeg((Double)newValue);
				return;
			case CommissionPackage.SCREEN_FRAME__OUT_OF_USE:
				setOutOfUse((Boolean)newValue);
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
			case CommissionPackage.SCREEN_FRAME__STUDIO:
				setStudio((Studio)null);
				return;
			case CommissionPackage.SCREEN_FRAME__MESH:
				setMesh((Mesh)null);
				return;
			case CommissionPackage.SCREEN_FRAME__IMAGE_WIDTH_MM:
				setImageWidthMm(IMAGE_WIDTH_MM_EDEFAULT);
				return;
			case CommissionPackage.SCREEN_FRAME__IMAGE_HEIGHT_MM:
				setImageHeightMm(IMAGE_HEIGHT_MM_EDEFAULT);
				return;
			case CommissionPackage.SCREEN_FRAME__SQUEEGEE_MARGIN_MM:
				setSqueegeeMarginMm(SQUEEGEE_MARGIN_MM_EDEFAULT);
				return;
			case CommissionPackage.SCREEN_FRAME__MESH_TURN_DEG:
				setMeshTurnDeg(MESH_TURN_DEG_EDEFAULT);
				return;
			case CommissionPackage.SCREEN_FRAME__OUT_OF_USE:
				setOutOfUse(OUT_OF_USE_EDEFAULT);
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
			case CommissionPackage.SCREEN_FRAME__STUDIO:
				return getStudio() != null;
			case CommissionPackage.SCREEN_FRAME__MESH:
				return mesh != null;
			case CommissionPackage.SCREEN_FRAME__IMAGE_WIDTH_MM:
				return imageWidthMm != IMAGE_WIDTH_MM_EDEFAULT;
			case CommissionPackage.SCREEN_FRAME__IMAGE_HEIGHT_MM:
				return imageHeightMm != IMAGE_HEIGHT_MM_EDEFAULT;
			case CommissionPackage.SCREEN_FRAME__SQUEEGEE_MARGIN_MM:
				return squeegeeMarginMm != SQUEEGEE_MARGIN_MM_EDEFAULT;
			case CommissionPackage.SCREEN_FRAME__MESH_TURN_DEG:
				return meshTurnDeg != MESH_TURN_DEG_EDEFAULT;
			case CommissionPackage.SCREEN_FRAME__OUT_OF_USE:
				return outOfUse != OUT_OF_USE_EDEFAULT;
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
		result.append(" (imageWidthMm: ");
		result.append(imageWidthMm);
		result.append(", imageHeightMm: ");
		result.append(imageHeightMm);
		result.append(", squeegeeMarginMm: ");
		result.append(squeegeeMarginMm);
		result.append(", meshTurnDeg: ");
		result.append(meshTurnDeg);
		result.append(", outOfUse: ");
		result.append(outOfUse);
		result.append(')');
		return result.toString();
	}

} //ScreenFrameImpl
