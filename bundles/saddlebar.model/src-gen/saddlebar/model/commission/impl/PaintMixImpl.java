/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.PaintMix;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Paint Mix</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.PaintMixImpl#getName <em>Name</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintMixImpl#getPaintId <em>Paint Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintMixImpl#getLotId <em>Lot Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintMixImpl#getMediumId <em>Medium Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintMixImpl#getPowderG <em>Powder G</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PaintMixImpl#getMediumG <em>Medium G</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PaintMixImpl extends MakingRecordImpl implements PaintMix {
	/**
	 * The default value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected static final String NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected String name = NAME_EDEFAULT;

	/**
	 * The default value of the '{@link #getPaintId() <em>Paint Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPaintId()
	 * @generated
	 * @ordered
	 */
	protected static final String PAINT_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPaintId() <em>Paint Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPaintId()
	 * @generated
	 * @ordered
	 */
	protected String paintId = PAINT_ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getLotId() <em>Lot Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLotId()
	 * @generated
	 * @ordered
	 */
	protected static final String LOT_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLotId() <em>Lot Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLotId()
	 * @generated
	 * @ordered
	 */
	protected String lotId = LOT_ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getMediumId() <em>Medium Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMediumId()
	 * @generated
	 * @ordered
	 */
	protected static final String MEDIUM_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMediumId() <em>Medium Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMediumId()
	 * @generated
	 * @ordered
	 */
	protected String mediumId = MEDIUM_ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getPowderG() <em>Powder G</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPowderG()
	 * @generated
	 * @ordered
	 */
	protected static final Double POWDER_G_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPowderG() <em>Powder G</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPowderG()
	 * @generated
	 * @ordered
	 */
	protected Double powderG = POWDER_G_EDEFAULT;

	/**
	 * The default value of the '{@link #getMediumG() <em>Medium G</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMediumG()
	 * @generated
	 * @ordered
	 */
	protected static final Double MEDIUM_G_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMediumG() <em>Medium G</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMediumG()
	 * @generated
	 * @ordered
	 */
	protected Double mediumG = MEDIUM_G_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PaintMixImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.PAINT_MIX;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
		return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName) {
		String oldName = name;
		name = newName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT_MIX__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPaintId() {
		return paintId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPaintId(String newPaintId) {
		String oldPaintId = paintId;
		paintId = newPaintId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT_MIX__PAINT_ID, oldPaintId, paintId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLotId() {
		return lotId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLotId(String newLotId) {
		String oldLotId = lotId;
		lotId = newLotId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT_MIX__LOT_ID, oldLotId, lotId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMediumId() {
		return mediumId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMediumId(String newMediumId) {
		String oldMediumId = mediumId;
		mediumId = newMediumId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT_MIX__MEDIUM_ID, oldMediumId, mediumId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getPowderG() {
		return powderG;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPowderG(Double newPowderG) {
		Double oldPowderG = powderG;
		powderG = newPowderG;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT_MIX__POWDER_G, oldPowderG, powderG));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getMediumG() {
		return mediumG;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMediumG(Double newMediumG) {
		Double oldMediumG = mediumG;
		mediumG = newMediumG;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PAINT_MIX__MEDIUM_G, oldMediumG, mediumG));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CommissionPackage.PAINT_MIX__NAME:
				return getName();
			case CommissionPackage.PAINT_MIX__PAINT_ID:
				return getPaintId();
			case CommissionPackage.PAINT_MIX__LOT_ID:
				return getLotId();
			case CommissionPackage.PAINT_MIX__MEDIUM_ID:
				return getMediumId();
			case CommissionPackage.PAINT_MIX__POWDER_G:
				return getPowderG();
			case CommissionPackage.PAINT_MIX__MEDIUM_G:
				return getMediumG();
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
			case CommissionPackage.PAINT_MIX__NAME:
				setName((String)newValue);
				return;
			case CommissionPackage.PAINT_MIX__PAINT_ID:
				setPaintId((String)newValue);
				return;
			case CommissionPackage.PAINT_MIX__LOT_ID:
				setLotId((String)newValue);
				return;
			case CommissionPackage.PAINT_MIX__MEDIUM_ID:
				setMediumId((String)newValue);
				return;
			case CommissionPackage.PAINT_MIX__POWDER_G:
				setPowderG((Double)newValue);
				return;
			case CommissionPackage.PAINT_MIX__MEDIUM_G:
				setMediumG((Double)newValue);
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
			case CommissionPackage.PAINT_MIX__NAME:
				setName(NAME_EDEFAULT);
				return;
			case CommissionPackage.PAINT_MIX__PAINT_ID:
				setPaintId(PAINT_ID_EDEFAULT);
				return;
			case CommissionPackage.PAINT_MIX__LOT_ID:
				setLotId(LOT_ID_EDEFAULT);
				return;
			case CommissionPackage.PAINT_MIX__MEDIUM_ID:
				setMediumId(MEDIUM_ID_EDEFAULT);
				return;
			case CommissionPackage.PAINT_MIX__POWDER_G:
				setPowderG(POWDER_G_EDEFAULT);
				return;
			case CommissionPackage.PAINT_MIX__MEDIUM_G:
				setMediumG(MEDIUM_G_EDEFAULT);
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
			case CommissionPackage.PAINT_MIX__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case CommissionPackage.PAINT_MIX__PAINT_ID:
				return PAINT_ID_EDEFAULT == null ? paintId != null : !PAINT_ID_EDEFAULT.equals(paintId);
			case CommissionPackage.PAINT_MIX__LOT_ID:
				return LOT_ID_EDEFAULT == null ? lotId != null : !LOT_ID_EDEFAULT.equals(lotId);
			case CommissionPackage.PAINT_MIX__MEDIUM_ID:
				return MEDIUM_ID_EDEFAULT == null ? mediumId != null : !MEDIUM_ID_EDEFAULT.equals(mediumId);
			case CommissionPackage.PAINT_MIX__POWDER_G:
				return POWDER_G_EDEFAULT == null ? powderG != null : !POWDER_G_EDEFAULT.equals(powderG);
			case CommissionPackage.PAINT_MIX__MEDIUM_G:
				return MEDIUM_G_EDEFAULT == null ? mediumG != null : !MEDIUM_G_EDEFAULT.equals(mediumG);
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
		result.append(" (name: ");
		result.append(name);
		result.append(", paintId: ");
		result.append(paintId);
		result.append(", lotId: ");
		result.append(lotId);
		result.append(", mediumId: ");
		result.append(mediumId);
		result.append(", powderG: ");
		result.append(powderG);
		result.append(", mediumG: ");
		result.append(mediumG);
		result.append(')');
		return result.toString();
	}

} //PaintMixImpl
