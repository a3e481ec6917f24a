/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EDataTypeUniqueEList;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.ShelfPlace;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Shelf Place</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.ShelfPlaceImpl#getWindowId <em>Window Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ShelfPlaceImpl#getPieceId <em>Piece Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ShelfPlaceImpl#getLayerIds <em>Layer Ids</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ShelfPlaceImpl#getPlace <em>Place</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ShelfPlaceImpl#getShelf <em>Shelf</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ShelfPlaceImpl#getXMm <em>XMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ShelfPlaceImpl#getYMm <em>YMm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ShelfPlaceImpl#getRotationDeg <em>Rotation Deg</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ShelfPlaceImpl extends MinimalEObjectImpl.Container implements ShelfPlace {
	/**
	 * The default value of the '{@link #getWindowId() <em>Window Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWindowId()
	 * @generated
	 * @ordered
	 */
	protected static final String WINDOW_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWindowId() <em>Window Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWindowId()
	 * @generated
	 * @ordered
	 */
	protected String windowId = WINDOW_ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getPieceId() <em>Piece Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPieceId()
	 * @generated
	 * @ordered
	 */
	protected static final String PIECE_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPieceId() <em>Piece Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPieceId()
	 * @generated
	 * @ordered
	 */
	protected String pieceId = PIECE_ID_EDEFAULT;

	/**
	 * The cached value of the '{@link #getLayerIds() <em>Layer Ids</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLayerIds()
	 * @generated
	 * @ordered
	 */
	protected EList<String> layerIds;

	/**
	 * The default value of the '{@link #getPlace() <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected static final String PLACE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPlace() <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected String place = PLACE_EDEFAULT;

	/**
	 * The default value of the '{@link #getShelf() <em>Shelf</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShelf()
	 * @generated
	 * @ordered
	 */
	protected static final int SHELF_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getShelf() <em>Shelf</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShelf()
	 * @generated
	 * @ordered
	 */
	protected int shelf = SHELF_EDEFAULT;

	/**
	 * The default value of the '{@link #getXMm() <em>XMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getXMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double XMM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getXMm() <em>XMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getXMm()
	 * @generated
	 * @ordered
	 */
	protected Double xMm = XMM_EDEFAULT;

	/**
	 * The default value of the '{@link #getYMm() <em>YMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getYMm()
	 * @generated
	 * @ordered
	 */
	protected static final Double YMM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getYMm() <em>YMm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getYMm()
	 * @generated
	 * @ordered
	 */
	protected Double yMm = YMM_EDEFAULT;

	/**
	 * The default value of the '{@link #getRotationDeg() <em>Rotation Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRotationDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double ROTATION_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRotationDeg() <em>Rotation Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRotationDeg()
	 * @generated
	 * @ordered
	 */
	protected Double rotationDeg = ROTATION_DEG_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ShelfPlaceImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.SHELF_PLACE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWindowId() {
		return windowId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWindowId(String newWindowId) {
		String oldWindowId = windowId;
		windowId = newWindowId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHELF_PLACE__WINDOW_ID, oldWindowId, windowId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPieceId() {
		return pieceId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPieceId(String newPieceId) {
		String oldPieceId = pieceId;
		pieceId = newPieceId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHELF_PLACE__PIECE_ID, oldPieceId, pieceId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getLayerIds() {
		if (layerIds == null) {
			layerIds = new EDataTypeUniqueEList<String>(String.class, this, CommissionPackage.SHELF_PLACE__LAYER_IDS);
		}
		return layerIds;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPlace() {
		return place;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlace(String newPlace) {
		String oldPlace = place;
		place = newPlace;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHELF_PLACE__PLACE, oldPlace, place));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getShelf() {
		return shelf;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShelf(int newShelf) {
		int oldShelf = shelf;
		shelf = newShelf;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHELF_PLACE__SHELF, oldShelf, shelf));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getXMm() {
		return xMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setXMm(Double newXMm) {
		Double oldXMm = xMm;
		xMm = newXMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHELF_PLACE__XMM, oldXMm, xMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getYMm() {
		return yMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setYMm(Double newYMm) {
		Double oldYMm = yMm;
		yMm = newYMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHELF_PLACE__YMM, oldYMm, yMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getRotationDeg() {
		return rotationDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRotationDeg(Double newRotationDeg) {
		Double oldRotationDeg = rotationDeg;
		rotationDeg = newRotationDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.SHELF_PLACE__ROTATION_DEG, oldRotationDeg, rotationDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CommissionPackage.SHELF_PLACE__WINDOW_ID:
				return getWindowId();
			case CommissionPackage.SHELF_PLACE__PIECE_ID:
				return getPieceId();
			case CommissionPackage.SHELF_PLACE__LAYER_IDS:
				return getLayerIds();
			case CommissionPackage.SHELF_PLACE__PLACE:
				return getPlace();
			case CommissionPackage.SHELF_PLACE__SHELF:
				return getShelf();
			case CommissionPackage.SHELF_PLACE__XMM:
				return getXMm();
			case CommissionPackage.SHELF_PLACE__YMM:
				return getYMm();
			case CommissionPackage.SHELF_PLACE__ROTATION_DEG:
				return getRotationDeg();
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
			case CommissionPackage.SHELF_PLACE__WINDOW_ID:
				setWindowId((String)newValue);
				return;
			case CommissionPackage.SHELF_PLACE__PIECE_ID:
				setPieceId((String)newValue);
				return;
			case CommissionPackage.SHELF_PLACE__LAYER_IDS:
				getLayerIds().clear();
				getLayerIds().addAll((Collection<? extends String>)newValue);
				return;
			case CommissionPackage.SHELF_PLACE__PLACE:
				setPlace((String)newValue);
				return;
			case CommissionPackage.SHELF_PLACE__SHELF:
				setShelf((Integer)newValue);
				return;
			case CommissionPackage.SHELF_PLACE__XMM:
				setXMm((Double)newValue);
				return;
			case CommissionPackage.SHELF_PLACE__YMM:
				setYMm((Double)newValue);
				return;
			case CommissionPackage.SHELF_PLACE__ROTATION_DEG:
				setRotationDeg((Double)newValue);
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
			case CommissionPackage.SHELF_PLACE__WINDOW_ID:
				setWindowId(WINDOW_ID_EDEFAULT);
				return;
			case CommissionPackage.SHELF_PLACE__PIECE_ID:
				setPieceId(PIECE_ID_EDEFAULT);
				return;
			case CommissionPackage.SHELF_PLACE__LAYER_IDS:
				getLayerIds().clear();
				return;
			case CommissionPackage.SHELF_PLACE__PLACE:
				setPlace(PLACE_EDEFAULT);
				return;
			case CommissionPackage.SHELF_PLACE__SHELF:
				setShelf(SHELF_EDEFAULT);
				return;
			case CommissionPackage.SHELF_PLACE__XMM:
				setXMm(XMM_EDEFAULT);
				return;
			case CommissionPackage.SHELF_PLACE__YMM:
				setYMm(YMM_EDEFAULT);
				return;
			case CommissionPackage.SHELF_PLACE__ROTATION_DEG:
				setRotationDeg(ROTATION_DEG_EDEFAULT);
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
			case CommissionPackage.SHELF_PLACE__WINDOW_ID:
				return WINDOW_ID_EDEFAULT == null ? windowId != null : !WINDOW_ID_EDEFAULT.equals(windowId);
			case CommissionPackage.SHELF_PLACE__PIECE_ID:
				return PIECE_ID_EDEFAULT == null ? pieceId != null : !PIECE_ID_EDEFAULT.equals(pieceId);
			case CommissionPackage.SHELF_PLACE__LAYER_IDS:
				return layerIds != null && !layerIds.isEmpty();
			case CommissionPackage.SHELF_PLACE__PLACE:
				return PLACE_EDEFAULT == null ? place != null : !PLACE_EDEFAULT.equals(place);
			case CommissionPackage.SHELF_PLACE__SHELF:
				return shelf != SHELF_EDEFAULT;
			case CommissionPackage.SHELF_PLACE__XMM:
				return XMM_EDEFAULT == null ? xMm != null : !XMM_EDEFAULT.equals(xMm);
			case CommissionPackage.SHELF_PLACE__YMM:
				return YMM_EDEFAULT == null ? yMm != null : !YMM_EDEFAULT.equals(yMm);
			case CommissionPackage.SHELF_PLACE__ROTATION_DEG:
				return ROTATION_DEG_EDEFAULT == null ? rotationDeg != null : !ROTATION_DEG_EDEFAULT.equals(rotationDeg);
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
		result.append(" (windowId: ");
		result.append(windowId);
		result.append(", pieceId: ");
		result.append(pieceId);
		result.append(", layerIds: ");
		result.append(layerIds);
		result.append(", place: ");
		result.append(place);
		result.append(", shelf: ");
		result.append(shelf);
		result.append(", xMm: ");
		result.append(xMm);
		result.append(", yMm: ");
		result.append(yMm);
		result.append(", rotationDeg: ");
		result.append(rotationDeg);
		result.append(')');
		return result.toString();
	}

} //ShelfPlaceImpl
