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

import saddlebar.model.commission.Colourway;
import saddlebar.model.commission.Commission;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.Opening;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Window;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Window</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.WindowImpl#getFormatVersion <em>Format Version</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.WindowImpl#getName <em>Name</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.WindowImpl#getTitle <em>Title</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.WindowImpl#getNote <em>Note</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.WindowImpl#getCommission <em>Commission</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.WindowImpl#getOpening <em>Opening</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.WindowImpl#getColourways <em>Colourways</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.WindowImpl#getChosen <em>Chosen</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.WindowImpl#getPanels <em>Panels</em>}</li>
 * </ul>
 *
 * @generated
 */
public class WindowImpl extends IdentifiedImpl implements Window {
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
	 * The cached value of the '{@link #getCommission() <em>Commission</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCommission()
	 * @generated
	 * @ordered
	 */
	protected Commission commission;

	/**
	 * The cached value of the '{@link #getOpening() <em>Opening</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpening()
	 * @generated
	 * @ordered
	 */
	protected Opening opening;

	/**
	 * The cached value of the '{@link #getColourways() <em>Colourways</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getColourways()
	 * @generated
	 * @ordered
	 */
	protected EList<Colourway> colourways;

	/**
	 * The cached value of the '{@link #getChosen() <em>Chosen</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChosen()
	 * @generated
	 * @ordered
	 */
	protected Colourway chosen;

	/**
	 * The cached value of the '{@link #getPanels() <em>Panels</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPanels()
	 * @generated
	 * @ordered
	 */
	protected EList<Panel> panels;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected WindowImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.WINDOW;
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.WINDOW__FORMAT_VERSION, oldFormatVersion, formatVersion));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.WINDOW__NAME, oldName, name));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.WINDOW__TITLE, oldTitle, title));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.WINDOW__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Commission getCommission() {
		if (commission != null && commission.eIsProxy()) {
			InternalEObject oldCommission = (InternalEObject)commission;
			commission = (Commission)eResolveProxy(oldCommission);
			if (commission != oldCommission) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.WINDOW__COMMISSION, oldCommission, commission));
			}
		}
		return commission;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Commission basicGetCommission() {
		return commission;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetCommission(Commission newCommission, NotificationChain msgs) {
		Commission oldCommission = commission;
		commission = newCommission;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, CommissionPackage.WINDOW__COMMISSION, oldCommission, newCommission);
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
	public void setCommission(Commission newCommission) {
		if (newCommission != commission) {
			NotificationChain msgs = null;
			if (commission != null)
				msgs = ((InternalEObject)commission).eInverseRemove(this, CommissionPackage.COMMISSION__WINDOWS, Commission.class, msgs);
			if (newCommission != null)
				msgs = ((InternalEObject)newCommission).eInverseAdd(this, CommissionPackage.COMMISSION__WINDOWS, Commission.class, msgs);
			msgs = basicSetCommission(newCommission, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.WINDOW__COMMISSION, newCommission, newCommission));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Opening getOpening() {
		return opening;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetOpening(Opening newOpening, NotificationChain msgs) {
		Opening oldOpening = opening;
		opening = newOpening;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, CommissionPackage.WINDOW__OPENING, oldOpening, newOpening);
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
	public void setOpening(Opening newOpening) {
		if (newOpening != opening) {
			NotificationChain msgs = null;
			if (opening != null)
				msgs = ((InternalEObject)opening).eInverseRemove(this, CommissionPackage.OPENING__WINDOW, Opening.class, msgs);
			if (newOpening != null)
				msgs = ((InternalEObject)newOpening).eInverseAdd(this, CommissionPackage.OPENING__WINDOW, Opening.class, msgs);
			msgs = basicSetOpening(newOpening, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.WINDOW__OPENING, newOpening, newOpening));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Colourway> getColourways() {
		if (colourways == null) {
			colourways = new EObjectContainmentWithInverseEList<Colourway>(Colourway.class, this, CommissionPackage.WINDOW__COLOURWAYS, CommissionPackage.COLOURWAY__WINDOW);
		}
		return colourways;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Colourway getChosen() {
		if (chosen != null && chosen.eIsProxy()) {
			InternalEObject oldChosen = (InternalEObject)chosen;
			chosen = (Colourway)eResolveProxy(oldChosen);
			if (chosen != oldChosen) {
				if (eNotificationRequired())
					eNotify(new ENotificationImpl(this, Notification.RESOLVE, CommissionPackage.WINDOW__CHOSEN, oldChosen, chosen));
			}
		}
		return chosen;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public Colourway basicGetChosen() {
		return chosen;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setChosen(Colourway newChosen) {
		Colourway oldChosen = chosen;
		chosen = newChosen;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.WINDOW__CHOSEN, oldChosen, chosen));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Panel> getPanels() {
		if (panels == null) {
			panels = new EObjectContainmentWithInverseEList<Panel>(Panel.class, this, CommissionPackage.WINDOW__PANELS, CommissionPackage.PANEL__WINDOW);
		}
		return panels;
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
			case CommissionPackage.WINDOW__COMMISSION:
				if (commission != null)
					msgs = ((InternalEObject)commission).eInverseRemove(this, CommissionPackage.COMMISSION__WINDOWS, Commission.class, msgs);
				return basicSetCommission((Commission)otherEnd, msgs);
			case CommissionPackage.WINDOW__OPENING:
				if (opening != null)
					msgs = ((InternalEObject)opening).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - CommissionPackage.WINDOW__OPENING, null, msgs);
				return basicSetOpening((Opening)otherEnd, msgs);
			case CommissionPackage.WINDOW__COLOURWAYS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getColourways()).basicAdd(otherEnd, msgs);
			case CommissionPackage.WINDOW__PANELS:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getPanels()).basicAdd(otherEnd, msgs);
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
			case CommissionPackage.WINDOW__COMMISSION:
				return basicSetCommission(null, msgs);
			case CommissionPackage.WINDOW__OPENING:
				return basicSetOpening(null, msgs);
			case CommissionPackage.WINDOW__COLOURWAYS:
				return ((InternalEList<?>)getColourways()).basicRemove(otherEnd, msgs);
			case CommissionPackage.WINDOW__PANELS:
				return ((InternalEList<?>)getPanels()).basicRemove(otherEnd, msgs);
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
			case CommissionPackage.WINDOW__FORMAT_VERSION:
				return getFormatVersion();
			case CommissionPackage.WINDOW__NAME:
				return getName();
			case CommissionPackage.WINDOW__TITLE:
				return getTitle();
			case CommissionPackage.WINDOW__NOTE:
				return getNote();
			case CommissionPackage.WINDOW__COMMISSION:
				if (resolve) return getCommission();
				return basicGetCommission();
			case CommissionPackage.WINDOW__OPENING:
				return getOpening();
			case CommissionPackage.WINDOW__COLOURWAYS:
				return getColourways();
			case CommissionPackage.WINDOW__CHOSEN:
				if (resolve) return getChosen();
				return basicGetChosen();
			case CommissionPackage.WINDOW__PANELS:
				return getPanels();
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
			case CommissionPackage.WINDOW__FORMAT_VERSION:
				setFormatVersion((String)newValue);
				return;
			case CommissionPackage.WINDOW__NAME:
				setName((String)newValue);
				return;
			case CommissionPackage.WINDOW__TITLE:
				setTitle((String)newValue);
				return;
			case CommissionPackage.WINDOW__NOTE:
				setNote((String)newValue);
				return;
			case CommissionPackage.WINDOW__COMMISSION:
				setCommission((Commission)newValue);
				return;
			case CommissionPackage.WINDOW__OPENING:
				setOpening((Opening)newValue);
				return;
			case CommissionPackage.WINDOW__COLOURWAYS:
				getColourways().clear();
				getColourways().addAll((Collection<? extends Colourway>)newValue);
				return;
			case CommissionPackage.WINDOW__CHOSEN:
				setChosen((Colourway)newValue);
				return;
			case CommissionPackage.WINDOW__PANELS:
				getPanels().clear();
				getPanels().addAll((Collection<? extends Panel>)newValue);
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
			case CommissionPackage.WINDOW__FORMAT_VERSION:
				setFormatVersion(FORMAT_VERSION_EDEFAULT);
				return;
			case CommissionPackage.WINDOW__NAME:
				setName(NAME_EDEFAULT);
				return;
			case CommissionPackage.WINDOW__TITLE:
				setTitle(TITLE_EDEFAULT);
				return;
			case CommissionPackage.WINDOW__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case CommissionPackage.WINDOW__COMMISSION:
				setCommission((Commission)null);
				return;
			case CommissionPackage.WINDOW__OPENING:
				setOpening((Opening)null);
				return;
			case CommissionPackage.WINDOW__COLOURWAYS:
				getColourways().clear();
				return;
			case CommissionPackage.WINDOW__CHOSEN:
				setChosen((Colourway)null);
				return;
			case CommissionPackage.WINDOW__PANELS:
				getPanels().clear();
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
			case CommissionPackage.WINDOW__FORMAT_VERSION:
				return FORMAT_VERSION_EDEFAULT == null ? formatVersion != null : !FORMAT_VERSION_EDEFAULT.equals(formatVersion);
			case CommissionPackage.WINDOW__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case CommissionPackage.WINDOW__TITLE:
				return TITLE_EDEFAULT == null ? title != null : !TITLE_EDEFAULT.equals(title);
			case CommissionPackage.WINDOW__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case CommissionPackage.WINDOW__COMMISSION:
				return commission != null;
			case CommissionPackage.WINDOW__OPENING:
				return opening != null;
			case CommissionPackage.WINDOW__COLOURWAYS:
				return colourways != null && !colourways.isEmpty();
			case CommissionPackage.WINDOW__CHOSEN:
				return chosen != null;
			case CommissionPackage.WINDOW__PANELS:
				return panels != null && !panels.isEmpty();
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
		result.append(", name: ");
		result.append(name);
		result.append(", title: ");
		result.append(title);
		result.append(", note: ");
		result.append(note);
		result.append(')');
		return result.toString();
	}

} //WindowImpl
