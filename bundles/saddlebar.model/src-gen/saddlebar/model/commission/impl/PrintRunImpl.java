/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EDataTypeUniqueEList;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.PrintRun;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Print Run</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.PrintRunImpl#getScreenLoadId <em>Screen Load Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PrintRunImpl#getStencilId <em>Stencil Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PrintRunImpl#getMixId <em>Mix Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PrintRunImpl#getWindowId <em>Window Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PrintRunImpl#getLayerId <em>Layer Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PrintRunImpl#getPieceIds <em>Piece Ids</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PrintRunImpl#getPulls <em>Pulls</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PrintRunImpl#getTemperatureC <em>Temperature C</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PrintRunImpl#getHumidity <em>Humidity</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.PrintRunImpl#getBed <em>Bed</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PrintRunImpl extends MakingRecordImpl implements PrintRun {
	/**
	 * The default value of the '{@link #getScreenLoadId() <em>Screen Load Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScreenLoadId()
	 * @generated
	 * @ordered
	 */
	protected static final String SCREEN_LOAD_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getScreenLoadId() <em>Screen Load Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScreenLoadId()
	 * @generated
	 * @ordered
	 */
	protected String screenLoadId = SCREEN_LOAD_ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getStencilId() <em>Stencil Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStencilId()
	 * @generated
	 * @ordered
	 */
	protected static final String STENCIL_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStencilId() <em>Stencil Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStencilId()
	 * @generated
	 * @ordered
	 */
	protected String stencilId = STENCIL_ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getMixId() <em>Mix Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMixId()
	 * @generated
	 * @ordered
	 */
	protected static final String MIX_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMixId() <em>Mix Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMixId()
	 * @generated
	 * @ordered
	 */
	protected String mixId = MIX_ID_EDEFAULT;

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
	 * The default value of the '{@link #getLayerId() <em>Layer Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLayerId()
	 * @generated
	 * @ordered
	 */
	protected static final String LAYER_ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLayerId() <em>Layer Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLayerId()
	 * @generated
	 * @ordered
	 */
	protected String layerId = LAYER_ID_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPieceIds() <em>Piece Ids</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPieceIds()
	 * @generated
	 * @ordered
	 */
	protected EList<String> pieceIds;

	/**
	 * The default value of the '{@link #getPulls() <em>Pulls</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPulls()
	 * @generated
	 * @ordered
	 */
	protected static final int PULLS_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getPulls() <em>Pulls</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPulls()
	 * @generated
	 * @ordered
	 */
	protected int pulls = PULLS_EDEFAULT;

	/**
	 * The default value of the '{@link #getTemperatureC() <em>Temperature C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTemperatureC()
	 * @generated
	 * @ordered
	 */
	protected static final Double TEMPERATURE_C_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTemperatureC() <em>Temperature C</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTemperatureC()
	 * @generated
	 * @ordered
	 */
	protected Double temperatureC = TEMPERATURE_C_EDEFAULT;

	/**
	 * The default value of the '{@link #getHumidity() <em>Humidity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHumidity()
	 * @generated
	 * @ordered
	 */
	protected static final Double HUMIDITY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHumidity() <em>Humidity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHumidity()
	 * @generated
	 * @ordered
	 */
	protected Double humidity = HUMIDITY_EDEFAULT;

	/**
	 * The default value of the '{@link #getBed() <em>Bed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBed()
	 * @generated
	 * @ordered
	 */
	protected static final String BED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBed() <em>Bed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBed()
	 * @generated
	 * @ordered
	 */
	protected String bed = BED_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PrintRunImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.PRINT_RUN;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getScreenLoadId() {
		return screenLoadId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setScreenLoadId(String newScreenLoadId) {
		String oldScreenLoadId = screenLoadId;
		screenLoadId = newScreenLoadId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRINT_RUN__SCREEN_LOAD_ID, oldScreenLoadId, screenLoadId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getStencilId() {
		return stencilId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStencilId(String newStencilId) {
		String oldStencilId = stencilId;
		stencilId = newStencilId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRINT_RUN__STENCIL_ID, oldStencilId, stencilId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getMixId() {
		return mixId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMixId(String newMixId) {
		String oldMixId = mixId;
		mixId = newMixId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRINT_RUN__MIX_ID, oldMixId, mixId));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRINT_RUN__WINDOW_ID, oldWindowId, windowId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLayerId() {
		return layerId;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLayerId(String newLayerId) {
		String oldLayerId = layerId;
		layerId = newLayerId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRINT_RUN__LAYER_ID, oldLayerId, layerId));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getPieceIds() {
		if (pieceIds == null) {
			pieceIds = new EDataTypeUniqueEList<String>(String.class, this, CommissionPackage.PRINT_RUN__PIECE_IDS);
		}
		return pieceIds;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getPulls() {
		return pulls;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPulls(int newPulls) {
		int oldPulls = pulls;
		pulls = newPulls;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRINT_RUN__PULLS, oldPulls, pulls));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getTemperatureC() {
		return temperatureC;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTemperatureC(Double newTemperatureC) {
		Double oldTemperatureC = temperatureC;
		temperatureC = newTemperatureC;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRINT_RUN__TEMPERATURE_C, oldTemperatureC, temperatureC));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getHumidity() {
		return humidity;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHumidity(Double newHumidity) {
		Double oldHumidity = humidity;
		humidity = newHumidity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRINT_RUN__HUMIDITY, oldHumidity, humidity));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getBed() {
		return bed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBed(String newBed) {
		String oldBed = bed;
		bed = newBed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.PRINT_RUN__BED, oldBed, bed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case CommissionPackage.PRINT_RUN__SCREEN_LOAD_ID:
				return getScreenLoadId();
			case CommissionPackage.PRINT_RUN__STENCIL_ID:
				return getStencilId();
			case CommissionPackage.PRINT_RUN__MIX_ID:
				return getMixId();
			case CommissionPackage.PRINT_RUN__WINDOW_ID:
				return getWindowId();
			case CommissionPackage.PRINT_RUN__LAYER_ID:
				return getLayerId();
			case CommissionPackage.PRINT_RUN__PIECE_IDS:
				return getPieceIds();
			case CommissionPackage.PRINT_RUN__PULLS:
				return getPulls();
			case CommissionPackage.PRINT_RUN__TEMPERATURE_C:
				return getTemperatureC();
			case CommissionPackage.PRINT_RUN__HUMIDITY:
				return getHumidity();
			case CommissionPackage.PRINT_RUN__BED:
				return getBed();
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
			case CommissionPackage.PRINT_RUN__SCREEN_LOAD_ID:
				setScreenLoadId((String)newValue);
				return;
			case CommissionPackage.PRINT_RUN__STENCIL_ID:
				setStencilId((String)newValue);
				return;
			case CommissionPackage.PRINT_RUN__MIX_ID:
				setMixId((String)newValue);
				return;
			case CommissionPackage.PRINT_RUN__WINDOW_ID:
				setWindowId((String)newValue);
				return;
			case CommissionPackage.PRINT_RUN__LAYER_ID:
				setLayerId((String)newValue);
				return;
			case CommissionPackage.PRINT_RUN__PIECE_IDS:
				getPieceIds().clear();
				getPieceIds().addAll((Collection<? extends String>)newValue);
				return;
			case CommissionPackage.PRINT_RUN__PULLS:
				setPulls((Integer)newValue);
				return;
			case CommissionPackage.PRINT_RUN__TEMPERATURE_C:
				setTemperatureC((Double)newValue);
				return;
			case CommissionPackage.PRINT_RUN__HUMIDITY:
				setHumidity((Double)newValue);
				return;
			case CommissionPackage.PRINT_RUN__BED:
				setBed((String)newValue);
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
			case CommissionPackage.PRINT_RUN__SCREEN_LOAD_ID:
				setScreenLoadId(SCREEN_LOAD_ID_EDEFAULT);
				return;
			case CommissionPackage.PRINT_RUN__STENCIL_ID:
				setStencilId(STENCIL_ID_EDEFAULT);
				return;
			case CommissionPackage.PRINT_RUN__MIX_ID:
				setMixId(MIX_ID_EDEFAULT);
				return;
			case CommissionPackage.PRINT_RUN__WINDOW_ID:
				setWindowId(WINDOW_ID_EDEFAULT);
				return;
			case CommissionPackage.PRINT_RUN__LAYER_ID:
				setLayerId(LAYER_ID_EDEFAULT);
				return;
			case CommissionPackage.PRINT_RUN__PIECE_IDS:
				getPieceIds().clear();
				return;
			case CommissionPackage.PRINT_RUN__PULLS:
				setPulls(PULLS_EDEFAULT);
				return;
			case CommissionPackage.PRINT_RUN__TEMPERATURE_C:
				setTemperatureC(TEMPERATURE_C_EDEFAULT);
				return;
			case CommissionPackage.PRINT_RUN__HUMIDITY:
				setHumidity(HUMIDITY_EDEFAULT);
				return;
			case CommissionPackage.PRINT_RUN__BED:
				setBed(BED_EDEFAULT);
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
			case CommissionPackage.PRINT_RUN__SCREEN_LOAD_ID:
				return SCREEN_LOAD_ID_EDEFAULT == null ? screenLoadId != null : !SCREEN_LOAD_ID_EDEFAULT.equals(screenLoadId);
			case CommissionPackage.PRINT_RUN__STENCIL_ID:
				return STENCIL_ID_EDEFAULT == null ? stencilId != null : !STENCIL_ID_EDEFAULT.equals(stencilId);
			case CommissionPackage.PRINT_RUN__MIX_ID:
				return MIX_ID_EDEFAULT == null ? mixId != null : !MIX_ID_EDEFAULT.equals(mixId);
			case CommissionPackage.PRINT_RUN__WINDOW_ID:
				return WINDOW_ID_EDEFAULT == null ? windowId != null : !WINDOW_ID_EDEFAULT.equals(windowId);
			case CommissionPackage.PRINT_RUN__LAYER_ID:
				return LAYER_ID_EDEFAULT == null ? layerId != null : !LAYER_ID_EDEFAULT.equals(layerId);
			case CommissionPackage.PRINT_RUN__PIECE_IDS:
				return pieceIds != null && !pieceIds.isEmpty();
			case CommissionPackage.PRINT_RUN__PULLS:
				return pulls != PULLS_EDEFAULT;
			case CommissionPackage.PRINT_RUN__TEMPERATURE_C:
				return TEMPERATURE_C_EDEFAULT == null ? temperatureC != null : !TEMPERATURE_C_EDEFAULT.equals(temperatureC);
			case CommissionPackage.PRINT_RUN__HUMIDITY:
				return HUMIDITY_EDEFAULT == null ? humidity != null : !HUMIDITY_EDEFAULT.equals(humidity);
			case CommissionPackage.PRINT_RUN__BED:
				return BED_EDEFAULT == null ? bed != null : !BED_EDEFAULT.equals(bed);
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
		result.append(" (screenLoadId: ");
		result.append(screenLoadId);
		result.append(", stencilId: ");
		result.append(stencilId);
		result.append(", mixId: ");
		result.append(mixId);
		result.append(", windowId: ");
		result.append(windowId);
		result.append(", layerId: ");
		result.append(layerId);
		result.append(", pieceIds: ");
		result.append(pieceIds);
		result.append(", pulls: ");
		result.append(pulls);
		result.append(", temperatureC: ");
		result.append(temperatureC);
		result.append(", humidity: ");
		result.append(humidity);
		result.append(", bed: ");
		result.append(bed);
		result.append(')');
		return result.toString();
	}

} //PrintRunImpl
