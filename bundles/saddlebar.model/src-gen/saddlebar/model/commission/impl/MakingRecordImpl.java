/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import java.time.Instant;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.common.util.EMap;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EDataTypeUniqueEList;
import org.eclipse.emf.ecore.util.EcoreEMap;
import org.eclipse.emf.ecore.util.InternalEList;

import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.MakingRecord;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Making Record</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.MakingRecordImpl#getId <em>Id</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MakingRecordImpl#getTime <em>Time</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MakingRecordImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MakingRecordImpl#getWho <em>Who</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MakingRecordImpl#getWriter <em>Writer</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MakingRecordImpl#getUsed <em>Used</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MakingRecordImpl#getMade <em>Made</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MakingRecordImpl#getSettings <em>Settings</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MakingRecordImpl#getSupersedes <em>Supersedes</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MakingRecordImpl#getNote <em>Note</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MakingRecordImpl#getFile <em>File</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.MakingRecordImpl#getLine <em>Line</em>}</li>
 * </ul>
 *
 * @generated
 */
public abstract class MakingRecordImpl extends MinimalEObjectImpl.Container implements MakingRecord {
	/**
	 * The default value of the '{@link #getId() <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getId()
	 * @generated
	 * @ordered
	 */
	protected static final String ID_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getId() <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getId()
	 * @generated
	 * @ordered
	 */
	protected String id = ID_EDEFAULT;

	/**
	 * The default value of the '{@link #getTime() <em>Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTime()
	 * @generated
	 * @ordered
	 */
	protected static final Instant TIME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTime() <em>Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTime()
	 * @generated
	 * @ordered
	 */
	protected Instant time = TIME_EDEFAULT;

	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final String KIND_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected String kind = KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getWho() <em>Who</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWho()
	 * @generated
	 * @ordered
	 */
	protected static final String WHO_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWho() <em>Who</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWho()
	 * @generated
	 * @ordered
	 */
	protected String who = WHO_EDEFAULT;

	/**
	 * The default value of the '{@link #getWriter() <em>Writer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWriter()
	 * @generated
	 * @ordered
	 */
	protected static final String WRITER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getWriter() <em>Writer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWriter()
	 * @generated
	 * @ordered
	 */
	protected String writer = WRITER_EDEFAULT;

	/**
	 * The cached value of the '{@link #getUsed() <em>Used</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUsed()
	 * @generated
	 * @ordered
	 */
	protected EList<String> used;

	/**
	 * The cached value of the '{@link #getMade() <em>Made</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMade()
	 * @generated
	 * @ordered
	 */
	protected EList<String> made;

	/**
	 * The cached value of the '{@link #getSettings() <em>Settings</em>}' map.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSettings()
	 * @generated
	 * @ordered
	 */
	protected EMap<String, String> settings;

	/**
	 * The cached value of the '{@link #getSupersedes() <em>Supersedes</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupersedes()
	 * @generated
	 * @ordered
	 */
	protected EList<String> supersedes;

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
	 * The default value of the '{@link #getFile() <em>File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFile()
	 * @generated
	 * @ordered
	 */
	protected static final String FILE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFile() <em>File</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFile()
	 * @generated
	 * @ordered
	 */
	protected String file = FILE_EDEFAULT;

	/**
	 * The default value of the '{@link #getLine() <em>Line</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLine()
	 * @generated
	 * @ordered
	 */
	protected static final int LINE_EDEFAULT = 0;

	/**
	 * The cached value of the '{@link #getLine() <em>Line</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLine()
	 * @generated
	 * @ordered
	 */
	protected int line = LINE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MakingRecordImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.MAKING_RECORD;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getId() {
		return id;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setId(String newId) {
		String oldId = id;
		id = newId;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MAKING_RECORD__ID, oldId, id));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getTime() {
		return time;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTime(Instant newTime) {
		Instant oldTime = time;
		time = newTime;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MAKING_RECORD__TIME, oldTime, time));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(String newKind) {
		String oldKind = kind;
		kind = newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MAKING_RECORD__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWho() {
		return who;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWho(String newWho) {
		String oldWho = who;
		who = newWho;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MAKING_RECORD__WHO, oldWho, who));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWriter() {
		return writer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWriter(String newWriter) {
		String oldWriter = writer;
		writer = newWriter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MAKING_RECORD__WRITER, oldWriter, writer));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getUsed() {
		if (used == null) {
			used = new EDataTypeUniqueEList<String>(String.class, this, CommissionPackage.MAKING_RECORD__USED);
		}
		return used;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getMade() {
		if (made == null) {
			made = new EDataTypeUniqueEList<String>(String.class, this, CommissionPackage.MAKING_RECORD__MADE);
		}
		return made;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EMap<String, String> getSettings() {
		if (settings == null) {
			settings = new EcoreEMap<String,String>(CommissionPackage.Literals.SETTING, SettingImpl.class, this, CommissionPackage.MAKING_RECORD__SETTINGS);
		}
		return settings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getSupersedes() {
		if (supersedes == null) {
			supersedes = new EDataTypeUniqueEList<String>(String.class, this, CommissionPackage.MAKING_RECORD__SUPERSEDES);
		}
		return supersedes;
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MAKING_RECORD__NOTE, oldNote, note));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFile() {
		return file;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFile(String newFile) {
		String oldFile = file;
		file = newFile;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MAKING_RECORD__FILE, oldFile, file));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getLine() {
		return line;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLine(int newLine) {
		int oldLine = line;
		line = newLine;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.MAKING_RECORD__LINE, oldLine, line));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case CommissionPackage.MAKING_RECORD__SETTINGS:
				return ((InternalEList<?>)getSettings()).basicRemove(otherEnd, msgs);
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
			case CommissionPackage.MAKING_RECORD__ID:
				return getId();
			case CommissionPackage.MAKING_RECORD__TIME:
				return getTime();
			case CommissionPackage.MAKING_RECORD__KIND:
				return getKind();
			case CommissionPackage.MAKING_RECORD__WHO:
				return getWho();
			case CommissionPackage.MAKING_RECORD__WRITER:
				return getWriter();
			case CommissionPackage.MAKING_RECORD__USED:
				return getUsed();
			case CommissionPackage.MAKING_RECORD__MADE:
				return getMade();
			case CommissionPackage.MAKING_RECORD__SETTINGS:
				if (coreType) return getSettings();
				else return getSettings().map();
			case CommissionPackage.MAKING_RECORD__SUPERSEDES:
				return getSupersedes();
			case CommissionPackage.MAKING_RECORD__NOTE:
				return getNote();
			case CommissionPackage.MAKING_RECORD__FILE:
				return getFile();
			case CommissionPackage.MAKING_RECORD__LINE:
				return getLine();
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
			case CommissionPackage.MAKING_RECORD__ID:
				setId((String)newValue);
				return;
			case CommissionPackage.MAKING_RECORD__TIME:
				setTime((Instant)newValue);
				return;
			case CommissionPackage.MAKING_RECORD__KIND:
				setKind((String)newValue);
				return;
			case CommissionPackage.MAKING_RECORD__WHO:
				setWho((String)newValue);
				return;
			case CommissionPackage.MAKING_RECORD__WRITER:
				setWriter((String)newValue);
				return;
			case CommissionPackage.MAKING_RECORD__USED:
				getUsed().clear();
				getUsed().addAll((Collection<? extends String>)newValue);
				return;
			case CommissionPackage.MAKING_RECORD__MADE:
				getMade().clear();
				getMade().addAll((Collection<? extends String>)newValue);
				return;
			case CommissionPackage.MAKING_RECORD__SETTINGS:
				((EStructuralFeature.Setting)getSettings()).set(newValue);
				return;
			case CommissionPackage.MAKING_RECORD__SUPERSEDES:
				getSupersedes().clear();
				getSupersedes().addAll((Collection<? extends String>)newValue);
				return;
			case CommissionPackage.MAKING_RECORD__NOTE:
				setNote((String)newValue);
				return;
			case CommissionPackage.MAKING_RECORD__FILE:
				setFile((String)newValue);
				return;
			case CommissionPackage.MAKING_RECORD__LINE:
				setLine((Integer)newValue);
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
			case CommissionPackage.MAKING_RECORD__ID:
				setId(ID_EDEFAULT);
				return;
			case CommissionPackage.MAKING_RECORD__TIME:
				setTime(TIME_EDEFAULT);
				return;
			case CommissionPackage.MAKING_RECORD__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case CommissionPackage.MAKING_RECORD__WHO:
				setWho(WHO_EDEFAULT);
				return;
			case CommissionPackage.MAKING_RECORD__WRITER:
				setWriter(WRITER_EDEFAULT);
				return;
			case CommissionPackage.MAKING_RECORD__USED:
				getUsed().clear();
				return;
			case CommissionPackage.MAKING_RECORD__MADE:
				getMade().clear();
				return;
			case CommissionPackage.MAKING_RECORD__SETTINGS:
				getSettings().clear();
				return;
			case CommissionPackage.MAKING_RECORD__SUPERSEDES:
				getSupersedes().clear();
				return;
			case CommissionPackage.MAKING_RECORD__NOTE:
				setNote(NOTE_EDEFAULT);
				return;
			case CommissionPackage.MAKING_RECORD__FILE:
				setFile(FILE_EDEFAULT);
				return;
			case CommissionPackage.MAKING_RECORD__LINE:
				setLine(LINE_EDEFAULT);
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
			case CommissionPackage.MAKING_RECORD__ID:
				return ID_EDEFAULT == null ? id != null : !ID_EDEFAULT.equals(id);
			case CommissionPackage.MAKING_RECORD__TIME:
				return TIME_EDEFAULT == null ? time != null : !TIME_EDEFAULT.equals(time);
			case CommissionPackage.MAKING_RECORD__KIND:
				return KIND_EDEFAULT == null ? kind != null : !KIND_EDEFAULT.equals(kind);
			case CommissionPackage.MAKING_RECORD__WHO:
				return WHO_EDEFAULT == null ? who != null : !WHO_EDEFAULT.equals(who);
			case CommissionPackage.MAKING_RECORD__WRITER:
				return WRITER_EDEFAULT == null ? writer != null : !WRITER_EDEFAULT.equals(writer);
			case CommissionPackage.MAKING_RECORD__USED:
				return used != null && !used.isEmpty();
			case CommissionPackage.MAKING_RECORD__MADE:
				return made != null && !made.isEmpty();
			case CommissionPackage.MAKING_RECORD__SETTINGS:
				return settings != null && !settings.isEmpty();
			case CommissionPackage.MAKING_RECORD__SUPERSEDES:
				return supersedes != null && !supersedes.isEmpty();
			case CommissionPackage.MAKING_RECORD__NOTE:
				return NOTE_EDEFAULT == null ? note != null : !NOTE_EDEFAULT.equals(note);
			case CommissionPackage.MAKING_RECORD__FILE:
				return FILE_EDEFAULT == null ? file != null : !FILE_EDEFAULT.equals(file);
			case CommissionPackage.MAKING_RECORD__LINE:
				return line != LINE_EDEFAULT;
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
		result.append(" (id: ");
		result.append(id);
		result.append(", time: ");
		result.append(time);
		result.append(", kind: ");
		result.append(kind);
		result.append(", who: ");
		result.append(who);
		result.append(", writer: ");
		result.append(writer);
		result.append(", used: ");
		result.append(used);
		result.append(", made: ");
		result.append(made);
		result.append(", supersedes: ");
		result.append(supersedes);
		result.append(", note: ");
		result.append(note);
		result.append(", file: ");
		result.append(file);
		result.append(", line: ");
		result.append(line);
		result.append(')');
		return result.toString();
	}

} //MakingRecordImpl
