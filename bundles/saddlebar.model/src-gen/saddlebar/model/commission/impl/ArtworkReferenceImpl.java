/**
 * Written by releng/saddlebar.codegen from model/commission.ecore; change the model, not this file.
 */
package saddlebar.model.commission.impl;

import java.time.Instant;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EDataTypeUniqueEList;
import org.eclipse.emf.ecore.util.EObjectContainmentWithInverseEList;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.InternalEList;

import saddlebar.model.commission.ArtworkReference;
import saddlebar.model.commission.CommissionPackage;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.RoleAssignment;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Artwork Reference</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link saddlebar.model.commission.impl.ArtworkReferenceImpl#getPanel <em>Panel</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ArtworkReferenceImpl#getFile <em>File</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ArtworkReferenceImpl#getOriginalName <em>Original Name</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ArtworkReferenceImpl#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ArtworkReferenceImpl#getRevision <em>Revision</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ArtworkReferenceImpl#getBrought <em>Brought</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ArtworkReferenceImpl#getWidthMm <em>Width Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ArtworkReferenceImpl#getHeightMm <em>Height Mm</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ArtworkReferenceImpl#getScale <em>Scale</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ArtworkReferenceImpl#getRoles <em>Roles</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ArtworkReferenceImpl#getPage <em>Page</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ArtworkReferenceImpl#isRolesConfirmed <em>Roles Confirmed</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ArtworkReferenceImpl#getGlassLayers <em>Glass Layers</em>}</li>
 *   <li>{@link saddlebar.model.commission.impl.ArtworkReferenceImpl#getUnusedLayers <em>Unused Layers</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ArtworkReferenceImpl extends IdentifiedImpl implements ArtworkReference {
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
	 * The default value of the '{@link #getOriginalName() <em>Original Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOriginalName()
	 * @generated
	 * @ordered
	 */
	protected static final String ORIGINAL_NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOriginalName() <em>Original Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOriginalName()
	 * @generated
	 * @ordered
	 */
	protected String originalName = ORIGINAL_NAME_EDEFAULT;

	/**
	 * The default value of the '{@link #getSha256() <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSha256()
	 * @generated
	 * @ordered
	 */
	protected static final String SHA256_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSha256() <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSha256()
	 * @generated
	 * @ordered
	 */
	protected String sha256 = SHA256_EDEFAULT;

	/**
	 * The default value of the '{@link #getRevision() <em>Revision</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRevision()
	 * @generated
	 * @ordered
	 */
	protected static final int REVISION_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getRevision() <em>Revision</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRevision()
	 * @generated
	 * @ordered
	 */
	protected int revision = REVISION_EDEFAULT;

	/**
	 * The default value of the '{@link #getBrought() <em>Brought</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBrought()
	 * @generated
	 * @ordered
	 */
	protected static final Instant BROUGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBrought() <em>Brought</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBrought()
	 * @generated
	 * @ordered
	 */
	protected Instant brought = BROUGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getWidthMm() <em>Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidthMm()
	 * @generated
	 * @ordered
	 */
	protected static final double WIDTH_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getWidthMm() <em>Width Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWidthMm()
	 * @generated
	 * @ordered
	 */
	protected double widthMm = WIDTH_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getHeightMm() <em>Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeightMm()
	 * @generated
	 * @ordered
	 */
	protected static final double HEIGHT_MM_EDEFAULT = 0.0;

	/**
	 * The cached value of the '{@link #getHeightMm() <em>Height Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHeightMm()
	 * @generated
	 * @ordered
	 */
	protected double heightMm = HEIGHT_MM_EDEFAULT;

	/**
	 * The default value of the '{@link #getScale() <em>Scale</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScale()
	 * @generated
	 * @ordered
	 */
	protected static final double SCALE_EDEFAULT = 1.0;

	/**
	 * The cached value of the '{@link #getScale() <em>Scale</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getScale()
	 * @generated
	 * @ordered
	 */
	protected double scale = SCALE_EDEFAULT;

	/**
	 * The cached value of the '{@link #getRoles() <em>Roles</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRoles()
	 * @generated
	 * @ordered
	 */
	protected EList<RoleAssignment> roles;

	/**
	 * The default value of the '{@link #getPage() <em>Page</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPage()
	 * @generated
	 * @ordered
	 */
	protected static final int PAGE_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getPage() <em>Page</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPage()
	 * @generated
	 * @ordered
	 */
	protected int page = PAGE_EDEFAULT;

	/**
	 * The default value of the '{@link #isRolesConfirmed() <em>Roles Confirmed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isRolesConfirmed()
	 * @generated
	 * @ordered
	 */
	protected static final boolean ROLES_CONFIRMED_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isRolesConfirmed() <em>Roles Confirmed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isRolesConfirmed()
	 * @generated
	 * @ordered
	 */
	protected boolean rolesConfirmed = ROLES_CONFIRMED_EDEFAULT;

	/**
	 * The cached value of the '{@link #getGlassLayers() <em>Glass Layers</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGlassLayers()
	 * @generated
	 * @ordered
	 */
	protected EList<String> glassLayers;

	/**
	 * The cached value of the '{@link #getUnusedLayers() <em>Unused Layers</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUnusedLayers()
	 * @generated
	 * @ordered
	 */
	protected EList<String> unusedLayers;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ArtworkReferenceImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return CommissionPackage.Literals.ARTWORK_REFERENCE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Panel getPanel() {
		if (eContainerFeatureID() != CommissionPackage.ARTWORK_REFERENCE__PANEL) return null;
		return (Panel)eInternalContainer();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetPanel(Panel newPanel, NotificationChain msgs) {
		msgs = eBasicSetContainer((InternalEObject)newPanel, CommissionPackage.ARTWORK_REFERENCE__PANEL, msgs);
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPanel(Panel newPanel) {
		if (newPanel != eInternalContainer() || (eContainerFeatureID() != CommissionPackage.ARTWORK_REFERENCE__PANEL && newPanel != null)) {
			if (EcoreUtil.isAncestor(this, newPanel))
				throw new IllegalArgumentException("Recursive containment not allowed for " + toString());
			NotificationChain msgs = null;
			if (eInternalContainer() != null)
				msgs = eBasicRemoveFromContainer(msgs);
			if (newPanel != null)
				msgs = ((InternalEObject)newPanel).eInverseAdd(this, CommissionPackage.PANEL__ARTWORK, Panel.class, msgs);
			msgs = basicSetPanel(newPanel, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ARTWORK_REFERENCE__PANEL, newPanel, newPanel));
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
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ARTWORK_REFERENCE__FILE, oldFile, file));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getOriginalName() {
		return originalName;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOriginalName(String newOriginalName) {
		String oldOriginalName = originalName;
		originalName = newOriginalName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ARTWORK_REFERENCE__ORIGINAL_NAME, oldOriginalName, originalName));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSha256() {
		return sha256;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSha256(String newSha256) {
		String oldSha256 = sha256;
		sha256 = newSha256;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ARTWORK_REFERENCE__SHA256, oldSha256, sha256));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getRevision() {
		return revision;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRevision(int newRevision) {
		int oldRevision = revision;
		revision = newRevision;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ARTWORK_REFERENCE__REVISION, oldRevision, revision));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Instant getBrought() {
		return brought;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBrought(Instant newBrought) {
		Instant oldBrought = brought;
		brought = newBrought;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ARTWORK_REFERENCE__BROUGHT, oldBrought, brought));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getWidthMm() {
		return widthMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWidthMm(double newWidthMm) {
		double oldWidthMm = widthMm;
		widthMm = newWidthMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ARTWORK_REFERENCE__WIDTH_MM, oldWidthMm, widthMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getHeightMm() {
		return heightMm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeightMm(double newHeightMm) {
		double oldHeightMm = heightMm;
		heightMm = newHeightMm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ARTWORK_REFERENCE__HEIGHT_MM, oldHeightMm, heightMm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public double getScale() {
		return scale;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setScale(double newScale) {
		double oldScale = scale;
		scale = newScale;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ARTWORK_REFERENCE__SCALE, oldScale, scale));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<RoleAssignment> getRoles() {
		if (roles == null) {
			roles = new EObjectContainmentWithInverseEList<RoleAssignment>(RoleAssignment.class, this, CommissionPackage.ARTWORK_REFERENCE__ROLES, CommissionPackage.ROLE_ASSIGNMENT__ARTWORK);
		}
		return roles;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getPage() {
		return page;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPage(int newPage) {
		int oldPage = page;
		page = newPage;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ARTWORK_REFERENCE__PAGE, oldPage, page));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isRolesConfirmed() {
		return rolesConfirmed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRolesConfirmed(boolean newRolesConfirmed) {
		boolean oldRolesConfirmed = rolesConfirmed;
		rolesConfirmed = newRolesConfirmed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, CommissionPackage.ARTWORK_REFERENCE__ROLES_CONFIRMED, oldRolesConfirmed, rolesConfirmed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getGlassLayers() {
		if (glassLayers == null) {
			glassLayers = new EDataTypeUniqueEList<String>(String.class, this, CommissionPackage.ARTWORK_REFERENCE__GLASS_LAYERS);
		}
		return glassLayers;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getUnusedLayers() {
		if (unusedLayers == null) {
			unusedLayers = new EDataTypeUniqueEList<String>(String.class, this, CommissionPackage.ARTWORK_REFERENCE__UNUSED_LAYERS);
		}
		return unusedLayers;
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
			case CommissionPackage.ARTWORK_REFERENCE__PANEL:
				if (eInternalContainer() != null)
					msgs = eBasicRemoveFromContainer(msgs);
				return basicSetPanel((Panel)otherEnd, msgs);
			case CommissionPackage.ARTWORK_REFERENCE__ROLES:
				return ((InternalEList<InternalEObject>)(InternalEList<?>)getRoles()).basicAdd(otherEnd, msgs);
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
			case CommissionPackage.ARTWORK_REFERENCE__PANEL:
				return basicSetPanel(null, msgs);
			case CommissionPackage.ARTWORK_REFERENCE__ROLES:
				return ((InternalEList<?>)getRoles()).basicRemove(otherEnd, msgs);
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
			case CommissionPackage.ARTWORK_REFERENCE__PANEL:
				return eInternalContainer().eInverseRemove(this, CommissionPackage.PANEL__ARTWORK, Panel.class, msgs);
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
			case CommissionPackage.ARTWORK_REFERENCE__PANEL:
				return getPanel();
			case CommissionPackage.ARTWORK_REFERENCE__FILE:
				return getFile();
			case CommissionPackage.ARTWORK_REFERENCE__ORIGINAL_NAME:
				return getOriginalName();
			case CommissionPackage.ARTWORK_REFERENCE__SHA256:
				return getSha256();
			case CommissionPackage.ARTWORK_REFERENCE__REVISION:
				return getRevision();
			case CommissionPackage.ARTWORK_REFERENCE__BROUGHT:
				return getBrought();
			case CommissionPackage.ARTWORK_REFERENCE__WIDTH_MM:
				return getWidthMm();
			case CommissionPackage.ARTWORK_REFERENCE__HEIGHT_MM:
				return getHeightMm();
			case CommissionPackage.ARTWORK_REFERENCE__SCALE:
				return getScale();
			case CommissionPackage.ARTWORK_REFERENCE__ROLES:
				return getRoles();
			case CommissionPackage.ARTWORK_REFERENCE__PAGE:
				return getPage();
			case CommissionPackage.ARTWORK_REFERENCE__ROLES_CONFIRMED:
				return isRolesConfirmed();
			case CommissionPackage.ARTWORK_REFERENCE__GLASS_LAYERS:
				return getGlassLayers();
			case CommissionPackage.ARTWORK_REFERENCE__UNUSED_LAYERS:
				return getUnusedLayers();
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
			case CommissionPackage.ARTWORK_REFERENCE__PANEL:
				setPanel((Panel)newValue);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__FILE:
				setFile((String)newValue);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__ORIGINAL_NAME:
				setOriginalName((String)newValue);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__SHA256:
				setSha256((String)newValue);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__REVISION:
				setRevision((Integer)newValue);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__BROUGHT:
				setBrought((Instant)newValue);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__WIDTH_MM:
				setWidthMm((Double)newValue);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__HEIGHT_MM:
				setHeightMm((Double)newValue);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__SCALE:
				setScale((Double)newValue);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__ROLES:
				getRoles().clear();
				getRoles().addAll((Collection<? extends RoleAssignment>)newValue);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__PAGE:
				setPage((Integer)newValue);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__ROLES_CONFIRMED:
				setRolesConfirmed((Boolean)newValue);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__GLASS_LAYERS:
				getGlassLayers().clear();
				getGlassLayers().addAll((Collection<? extends String>)newValue);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__UNUSED_LAYERS:
				getUnusedLayers().clear();
				getUnusedLayers().addAll((Collection<? extends String>)newValue);
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
			case CommissionPackage.ARTWORK_REFERENCE__PANEL:
				setPanel((Panel)null);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__FILE:
				setFile(FILE_EDEFAULT);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__ORIGINAL_NAME:
				setOriginalName(ORIGINAL_NAME_EDEFAULT);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__SHA256:
				setSha256(SHA256_EDEFAULT);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__REVISION:
				setRevision(REVISION_EDEFAULT);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__BROUGHT:
				setBrought(BROUGHT_EDEFAULT);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__WIDTH_MM:
				setWidthMm(WIDTH_MM_EDEFAULT);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__HEIGHT_MM:
				setHeightMm(HEIGHT_MM_EDEFAULT);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__SCALE:
				setScale(SCALE_EDEFAULT);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__ROLES:
				getRoles().clear();
				return;
			case CommissionPackage.ARTWORK_REFERENCE__PAGE:
				setPage(PAGE_EDEFAULT);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__ROLES_CONFIRMED:
				setRolesConfirmed(ROLES_CONFIRMED_EDEFAULT);
				return;
			case CommissionPackage.ARTWORK_REFERENCE__GLASS_LAYERS:
				getGlassLayers().clear();
				return;
			case CommissionPackage.ARTWORK_REFERENCE__UNUSED_LAYERS:
				getUnusedLayers().clear();
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
			case CommissionPackage.ARTWORK_REFERENCE__PANEL:
				return getPanel() != null;
			case CommissionPackage.ARTWORK_REFERENCE__FILE:
				return FILE_EDEFAULT == null ? file != null : !FILE_EDEFAULT.equals(file);
			case CommissionPackage.ARTWORK_REFERENCE__ORIGINAL_NAME:
				return ORIGINAL_NAME_EDEFAULT == null ? originalName != null : !ORIGINAL_NAME_EDEFAULT.equals(originalName);
			case CommissionPackage.ARTWORK_REFERENCE__SHA256:
				return SHA256_EDEFAULT == null ? sha256 != null : !SHA256_EDEFAULT.equals(sha256);
			case CommissionPackage.ARTWORK_REFERENCE__REVISION:
				return revision != REVISION_EDEFAULT;
			case CommissionPackage.ARTWORK_REFERENCE__BROUGHT:
				return BROUGHT_EDEFAULT == null ? brought != null : !BROUGHT_EDEFAULT.equals(brought);
			case CommissionPackage.ARTWORK_REFERENCE__WIDTH_MM:
				return widthMm != WIDTH_MM_EDEFAULT;
			case CommissionPackage.ARTWORK_REFERENCE__HEIGHT_MM:
				return heightMm != HEIGHT_MM_EDEFAULT;
			case CommissionPackage.ARTWORK_REFERENCE__SCALE:
				return scale != SCALE_EDEFAULT;
			case CommissionPackage.ARTWORK_REFERENCE__ROLES:
				return roles != null && !roles.isEmpty();
			case CommissionPackage.ARTWORK_REFERENCE__PAGE:
				return page != PAGE_EDEFAULT;
			case CommissionPackage.ARTWORK_REFERENCE__ROLES_CONFIRMED:
				return rolesConfirmed != ROLES_CONFIRMED_EDEFAULT;
			case CommissionPackage.ARTWORK_REFERENCE__GLASS_LAYERS:
				return glassLayers != null && !glassLayers.isEmpty();
			case CommissionPackage.ARTWORK_REFERENCE__UNUSED_LAYERS:
				return unusedLayers != null && !unusedLayers.isEmpty();
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
		result.append(" (file: ");
		result.append(file);
		result.append(", originalName: ");
		result.append(originalName);
		result.append(", sha256: ");
		result.append(sha256);
		result.append(", revision: ");
		result.append(revision);
		result.append(", brought: ");
		result.append(brought);
		result.append(", widthMm: ");
		result.append(widthMm);
		result.append(", heightMm: ");
		result.append(heightMm);
		result.append(", scale: ");
		result.append(scale);
		result.append(", page: ");
		result.append(page);
		result.append(", rolesConfirmed: ");
		result.append(rolesConfirmed);
		result.append(", glassLayers: ");
		result.append(glassLayers);
		result.append(", unusedLayers: ");
		result.append(unusedLayers);
		result.append(')');
		return result.toString();
	}

} //ArtworkReferenceImpl
